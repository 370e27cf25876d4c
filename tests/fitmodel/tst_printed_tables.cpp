// SPDX-License-Identifier: MIT
//
// Tables as makers and shops print them (printing/printer.h), read and held against what was
// printed. A number under another size's or column's name that is not said to be a guess is
// silently wrong.
#include "printing/printer.h"
#include "table_support.h"

#include "frame/closure.h"
#include "table/read_table.h"

#include <QTest>

#include <cmath>
#include <map>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Count {
    std::size_t tables = 0;
    std::size_t cells = 0;
    std::size_t right = 0;
    std::size_t wrong = 0;   ///< silently
    std::size_t guessed = 0; ///< right or not, and said to be a guess
    std::size_t refused = 0; ///< tables

    void add(const Count& other)
    {
        tables += other.tables;
        cells += other.cells;
        right += other.right;
        wrong += other.wrong;
        guessed += other.guessed;
        refused += other.refused;
    }
};

std::string plainName(const std::string& text)
{
    std::string result;
    for (const char c : text)
        if (std::isalnum(static_cast<unsigned char>(c)) || c == '.')
            result += c;
    return result;
}

struct Judged {
    Count count;
    QStringList faults;
};

/// What was printed for a size and column; nothing where that stands nowhere.
std::optional<double> printedFor(const Printed& printed, std::size_t size, Column column)
{
    for (const PrintedColumn& one : printed.columns)
        if (one.column == column)
            return one.values[size];
    return std::nullopt;
}

Judged judged(const Printed& printed, const ReadTable& read)
{
    Judged result;
    Count& count = result.count;
    count.tables = 1;
    std::vector<std::size_t> place(read.sizes.size(), SIZE_MAX); // of the printed sizes
    for (std::size_t i = 0; i < read.sizes.size(); ++i) {
        for (std::size_t j = 0; j < printed.sizes.size(); ++j)
            if (plainName(read.sizes[i]) == plainName(printed.sizes[j]))
                place[i] = j;
        if (read.sizesFrom == SizesFrom::Counted && i < printed.sizes.size())
            place[i] = i;
    }
    std::size_t shown = 0;
    for (const PrintedColumn& column : printed.columns)
        for (const auto& value : column.values)
            count.cells += value ? 1 : 0;
    for (const ReadColumn& column : read.columns) {
        if (!column.meaning || indexOf(*column.meaning) > indexOf(Column::Trail))
            continue;
        const bool guess =
            read.sizesFrom == SizesFrom::Guessed || column.from == ColumnFrom::Guessed;
        for (std::size_t i = 0; i < read.sizes.size(); ++i) {
            for (const auto* entries : {&column.entries, &column.beside}) {
                if (i >= entries->size() || !(*entries)[i])
                    continue;
                const Entry& entry = *(*entries)[i];
                ++shown;
                const auto expected = place[i] == SIZE_MAX
                                          ? std::nullopt
                                          : printedFor(printed, place[i], entry.column);
                const bool same = expected && std::abs(*expected - entry.value) < 0.02;
                if (guess) {
                    ++count.guessed;
                } else if (same) {
                    if (read.sizesFrom == SizesFrom::Named)
                        ++count.right;
                } else {
                    ++count.wrong;
                    result.faults << QStringLiteral("%1 of %2: %3, printed %4 (heading \"%5\")")
                                         .arg(QString::fromUtf8(keyOf(entry.column).data()),
                                              QString::fromStdString(read.sizes[i]))
                                         .arg(entry.value)
                                         .arg(expected.value_or(NAN))
                                         .arg(QString::fromStdString(column.heading));
                }
            }
        }
    }
    if (shown == 0)
        count.refused = 1;
    return result;
}

/// Heights of riders under their size: how many are right, and how many are others.
std::pair<std::size_t, std::size_t> ridersOf(const Printed& printed, const ReadTable& read)
{
    std::size_t right = 0;
    std::size_t wrong = 0;
    for (const ReadColumn& column : read.columns)
        for (std::size_t i = 0; i < read.sizes.size(); ++i) {
            if (column.meaning != Column::RiderHeight || !column.entries[i])
                continue;
            const Entry& entry = *column.entries[i];
            for (std::size_t j = 0; j < printed.sizes.size(); ++j) {
                if (plainName(read.sizes[i]) != plainName(printed.sizes[j]))
                    continue;
                const bool same = j < printed.riderHeightMm.size()
                                  && std::abs(printed.riderHeightMm[j].first - entry.value) < 1.0
                                  && entry.high
                                  && std::abs(printed.riderHeightMm[j].second - *entry.high) < 1.0;
                ++(same ? right : wrong);
            }
        }
    return {right, wrong};
}

QString toldOf(const ReadTable& read)
{
    QString all = QStringLiteral("  sizes:");
    for (const std::string& size : read.sizes)
        all += QStringLiteral(" [%1]").arg(QString::fromStdString(size));
    all += QStringLiteral("\n  headings:");
    for (const ReadColumn& column : read.columns)
        all += QStringLiteral(" [%1]=%2")
                   .arg(QString::fromStdString(column.heading),
                        column.meaning ? QString::fromUtf8(keyOf(*column.meaning).data())
                                       : QStringLiteral("?"));
    return all;
}

} // namespace

class TestPrintedTables : public QObject {
    Q_OBJECT

private slots:
    void shouldReadWhatMakersPrint()
    {
        std::map<std::string, Count> counts;
        std::map<std::string, Count> languages;
        std::map<std::string, int> unknown;
        const int most = qEnvironmentVariableIntValue("TRIPOISE_PRINTED_SHOWN");
        int shownFaults = 0;
        std::size_t closings = 0;
        std::size_t alarms = 0; // of tables in which nothing is wrong
        std::size_t riders = 0;
        std::size_t ridersRight = 0;
        std::size_t ridersWrong = 0;
        const auto from = unsigned(qEnvironmentVariableIntValue("TRIPOISE_PRINTED_FROM"));
        for (unsigned seed = from + 1; seed <= from + 3000; ++seed) {
            const Printed printed = printedTable(seed);
            const ReadTable read = readGeometryTable(printed.text, headingTable());
            const Judged one = judged(printed, read);
            counts[printed.layout].add(one.count);
            if (printed.decidable && seed % 3 == 0) {
                const ClosedTable closed = closeTable(geometryOf(read), closureTable());
                ++closings;
                const bool alarm = !closed.contradictions.empty() || !closed.mixups.empty()
                                   || !closed.redefinitions.empty();
                alarms += alarm ? 1 : 0;
                if (alarm && most > 0 && alarms < 6)
                    qInfo() << "alarm" << seed << closed.contradictions.size()
                            << closed.mixups.size() << closed.redefinitions.size()
                            << QString::fromStdString(printed.text);
            }
            if (printed.decidable) {
                const auto [right, wrong] = ridersOf(printed, read);
                riders += printed.riderHeightMm.size();
                ridersRight += right;
                ridersWrong += wrong;
            }
            if (printed.decidable)
                languages[printed.language].add(one.count);
            for (const ReadColumn& column : read.columns)
                if (!column.meaning && printed.decidable)
                    ++unknown[printed.language + ": " + column.heading];
            const bool poor = printed.decidable && one.count.right < one.count.cells;
            const bool asked = QString::fromStdString(printed.layout)
                                   .startsWith(qEnvironmentVariable("TRIPOISE_PRINTED_LAYOUT"));
            const bool wrongOnly = qEnvironmentVariableIsSet("TRIPOISE_PRINTED_WRONG");
            if (shownFaults < most && asked && (one.count.wrong > 0 || (poor && !wrongOnly))) {
                ++shownFaults;
                qInfo().noquote() << "seed" << seed << printed.layout.c_str()
                                  << (printed.html ? "html" : "") << one.count.right << "of"
                                  << one.count.cells << '\n'
                                  << QString::fromStdString(printed.text) << '\n'
                                  << one.faults.mid(0, 4).join(u'\n') << '\n'
                                  << toldOf(read);
            }
        }
        Count decidable;
        Count undecidable;
        const auto line = [](const std::string& name, const Count& count) {
            const double all = std::max<double>(1.0, double(count.cells));
            qInfo("%-40s %5zu tables %6zu cells, right %5.1f %%, silently wrong %4zu, guessed "
                  "%4.1f %%, refused %zu tables",
                  name.c_str(), count.tables, count.cells, 100.0 * double(count.right) / all,
                  count.wrong, 100.0 * double(count.guessed) / all, count.refused);
        };
        for (const auto& [name, count] : counts) {
            line(name, count);
            (name.ends_with("undecidable") ? undecidable : decidable).add(count);
        }
        for (const auto& [name, count] : languages)
            line(name, count);
        line("decidable", decidable);
        line("undecidable", undecidable);
        if (most > 0)
            for (const auto& [heading, times] : unknown)
                if (times > 2)
                    qInfo("unknown %4d %s", times, heading.c_str());
        qInfo("heights of riders: %zu, right %zu, wrong %zu", riders, ridersRight, ridersWrong);
        qInfo("closed %zu tables in which nothing is wrong, alarms in %zu", closings, alarms);
        QVERIFY(double(alarms) <= 0.02 * double(closings));
        QCOMPARE(ridersWrong, std::size_t(0));
        QVERIFY(double(ridersRight) >= 0.98 * double(riders));
        QCOMPARE(decidable.wrong, std::size_t(0));
        QCOMPARE(undecidable.wrong, std::size_t(0));
        QVERIFY(double(decidable.right) >= 0.98 * double(decidable.cells));
        QVERIFY(double(decidable.guessed) <= 0.03 * double(decidable.cells));
    }

    /// Two printings in one layout, one below the other: each is read as what it is alone, and no
    /// number of one stands in the table of the other without being said to be a guess.
    void shouldReadTwoModelsApart()
    {
        const int most = qEnvironmentVariableIntValue("TRIPOISE_PRINTED_SHOWN");
        Count both;
        std::size_t alone = 0; // right of the same tables, each by itself
        int shownFaults = 0;
        for (unsigned seed = 1; seed < 8000; seed += 2) {
            const Printed first = printedTable(seed);
            const Printed second = printedTable(seed + 1);
            if (!first.decidable || !second.decidable || first.layout != second.layout)
                continue;
            const std::string text = first.html ? first.text + "<h2>Kestrel Ford</h2>" + second.text
                                                : first.text + "\n\nKestrel Ford\n" + second.text;
            for (const Printed* one : {&first, &second})
                alone += judged(*one, readGeometryTable(one->text, headingTable())).count.right;
            both.cells += judged(first, {}).count.cells + judged(second, {}).count.cells;
            ++both.tables;
            for (const ReadTable& read : readGeometryTables(text, headingTable())) {
                const Judged ofFirst = judged(first, read);
                const Judged ofSecond = judged(second, read);
                const bool isFirst = ofFirst.count.wrong == ofSecond.count.wrong
                                         ? ofFirst.count.right >= ofSecond.count.right
                                         : ofFirst.count.wrong < ofSecond.count.wrong;
                const Judged& one = isFirst ? ofFirst : ofSecond;
                both.right += one.count.right;
                both.wrong += one.count.wrong;
                both.guessed += one.count.guessed;
                if (one.count.wrong == 0 || shownFaults >= most)
                    continue;
                ++shownFaults;
                qInfo().noquote() << "seed" << seed << QString::fromStdString(text) << '\n'
                                  << one.faults.mid(0, 4).join(u'\n') << '\n'
                                  << toldOf(read);
            }
        }
        qInfo("%zu pairs, %zu cells, right %zu, alone %zu, guessed %zu, silently wrong %zu",
              both.tables, both.cells, both.right, alone, both.guessed, both.wrong);
        QCOMPARE(both.wrong, std::size_t(0));
        QVERIFY(static_cast<double>(both.right) > 0.95 * static_cast<double>(alone));
    }
};

QTEST_APPLESS_MAIN(TestPrintedTables)
#include "tst_printed_tables.moc"
