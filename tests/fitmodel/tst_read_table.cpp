// SPDX-License-Identifier: MIT
//
// Geometry tables in every shape (tests/reference/tables, all invented): what each must give.
// Beside each text stands what is expected of it: the model, the names of the sizes, every column
// by key with its values in millimetres and degrees ("-" where there is none), problems by code,
// and what is not understood. Whatever is not listed there must not be found. Another model or line
// of sizes begins what is expected of the next table.
#include "table_support.h"

#include "frame/closure.h"
#include "table/markup.h"
#include "table/read_table.h"
#include "text/encoding.h"
#include "text/plain.h"

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

#include <cmath>
#include <map>

using namespace tripoise;
using namespace tripoise::test;

namespace {

const QString folder = QStringLiteral(TRIPOISE_REFERENCE "/tables");

struct Expectation {
    std::optional<QString> model;
    QStringList sizes;
    std::map<std::string, QStringList> columns;
    QStringList problems;
    QStringList notUnderstood;
};

std::vector<Expectation> expectationsOf(const QString& path)
{
    std::vector<Expectation> result(1);
    for (const QString& line : QString::fromStdString(textOf(path)).split(u'\n')) {
        if (line.isEmpty() || line.startsWith(u'#'))
            continue;
        const QString key = line.section(QStringLiteral(": "), 0, 0);
        const QString value = line.section(QStringLiteral(": "), 1);
        if ((key == u"model" || key == u"sizes") && !result.back().sizes.isEmpty())
            result.emplace_back();
        Expectation& now = result.back();
        if (key == u"model")
            now.model = value;
        else if (key == u"sizes")
            now.sizes = value.split(QStringLiteral("; "));
        else if (key == u"problem")
            now.problems << value;
        else if (key == u"not understood")
            now.notUnderstood << value;
        else
            now.columns[key.toStdString()] = value.split(QStringLiteral("; "));
    }
    return result;
}

QString codeName(ProblemCode code)
{
    switch (code) {
    case ProblemCode::TooMany: return QStringLiteral("TooMany");
    case ProblemCode::TooLarge: return QStringLiteral("TooLarge");
    case ProblemCode::OutOfRange: return QStringLiteral("OutOfRange");
    case ProblemCode::NotText: return QStringLiteral("NotText");
    case ProblemCode::Markup: return QStringLiteral("Markup");
    case ProblemCode::NoTable: return QStringLiteral("NoTable");
    case ProblemCode::NoGeometry: return QStringLiteral("NoGeometry");
    case ProblemCode::SecondTable: return QStringLiteral("SecondTable");
    case ProblemCode::NoSizes: return QStringLiteral("NoSizes");
    case ProblemCode::SizeTwice: return QStringLiteral("SizeTwice");
    case ProblemCode::ColumnTwice: return QStringLiteral("ColumnTwice");
    case ProblemCode::MixedUnits: return QStringLiteral("MixedUnits");
    case ProblemCode::UnitDoubtful: return QStringLiteral("UnitDoubtful");
    case ProblemCode::OtherMeaning: return QStringLiteral("OtherMeaning");
    case ProblemCode::NotANumber: return QStringLiteral("NotANumber");
    case ProblemCode::ShortRow: return QStringLiteral("ShortRow");
    case ProblemCode::ColumnGuessed: return QStringLiteral("ColumnGuessed");
    case ProblemCode::SizesGuessed: return QStringLiteral("SizesGuessed");
    default: return QStringLiteral("another");
    }
}

/// What a reading gives, in the words of an expectation.
QStringList told(const ReadTable& read)
{
    QStringList lines;
    if (read.model)
        lines << QStringLiteral("model: ") + QString::fromStdString(*read.model);
    for (const std::string& size : read.sizes)
        lines << QStringLiteral("size: ") + QString::fromStdString(size);
    for (const Problem& problem : read.problems)
        lines << QStringLiteral("problem: ") + codeName(problem.code) + u' '
                     + QString::fromStdString(problem.path + ' ' + problem.value);
    for (const TableText& text : read.notUnderstood)
        lines << QStringLiteral("not understood: ") + QString::fromStdString(text.text);
    for (const ReadColumn& column : read.columns)
        lines << QStringLiteral("column: ") + QString::fromStdString(column.heading)
                     + (column.meaning
                            ? QStringLiteral(" = ")
                                  + QString::fromStdString(std::string(keyOf(*column.meaning)))
                            : QString());
    return lines;
}

const Entry* entryIn(const GeometryTable& geometry, std::size_t size, const std::string& key)
{
    return entryOf(*columnFromKey(key), geometry.sizes[size]);
}

/// What differs in one cell, empty where nothing does.
QString difference(const Entry* entry, const QString& expected)
{
    if (expected == u"-")
        return entry ? QStringLiteral("a value where there is none") : QString();
    if (!entry)
        return QStringLiteral("no value");
    const QStringList ends = expected.split(QStringLiteral(".."));
    if (std::abs(entry->value - ends.first().toDouble()) > 0.006)
        return QStringLiteral("%1").arg(entry->value);
    if (ends.size() == 1)
        return entry->high ? QStringLiteral("a range") : QString();
    return entry->high && std::abs(*entry->high - ends.last().toDouble()) < 0.006
               ? QString()
               : QStringLiteral("another far end");
}

} // namespace

class TestReadTable : public QObject {
    Q_OBJECT

private slots:
    void shouldHaveACorpus()
    {
        QVERIFY(QDir(folder).entryList({QStringLiteral("*.txt")}).size() >= 60);
    }

    void shouldReadTheTable_data()
    {
        QTest::addColumn<QString>("name");
        for (const QString& file : QDir(folder).entryList({QStringLiteral("*.txt")}))
            QTest::newRow(qPrintable(file.chopped(4))) << file.chopped(4);
    }
    void shouldReadTheTable()
    {
        QFETCH(QString, name);
        const std::string text = textOf(folder + u'/' + name + QStringLiteral(".txt"));
        const auto expected = expectationsOf(folder + u'/' + name + QStringLiteral(".expected"));
        const auto read = readGeometryTables(text, headingTable());
        QCOMPARE(read.size(), expected.size());
        for (std::size_t i = 0; i < read.size() && !QTest::currentTestFailed(); ++i)
            compare(read[i], expected[i]);
    }

    // Every sign of the text that is not blank stands in some cell, and says what it was taken for.
    void shouldKeepTheText_data() { shouldReadTheTable_data(); }
    void shouldKeepTheText()
    {
        QFETCH(QString, name);
        const std::string bytes = textOf(folder + u'/' + name + QStringLiteral(".txt"));
        const auto tables = readGeometryTables(bytes, headingTable());
        if (tables.front().rows.empty())
            return; // refused as a whole, which a problem says
        if (table::looksLikeMarkup(bytes))
            return; // a page's tags are no text; tst_markup.cpp
        const auto letters = [](std::string_view text) {
            std::string kept;
            for (const char c : text)
                if (std::isalnum(static_cast<unsigned char>(c)))
                    kept += c;
            return kept;
        };
        std::string stands;
        std::vector<std::string> words; // of which halves and models beside each other share some
        for (const ReadTable& read : tables)
            for (const auto& row : read.rows)
                for (const TableCell& cell : row) {
                    stands += letters(cell.text);
                    QCOMPARE(cell.state == CellState::Blank, cell.text.empty());
                    for (const std::string& word : wordsOf(cell.text))
                        words.push_back(word);
                }
        const std::string plain = plainSigns(*decoded(bytes));
        if (stands == letters(plain))
            return;
        for (const std::string& word : wordsOf(plain))
            QVERIFY2(std::find(words.begin(), words.end(), word) != words.end(), word.c_str());
    }

    void shouldReadTheNumberOfACell_data()
    {
        QTest::addColumn<QString>("cell");
        QTest::addColumn<QString>("expected"); // value, high, grouped, step, unit
        const auto row = [](const char* cell, const char* expected) {
            QTest::newRow(cell) << QString::fromUtf8(cell) << QString::fromLatin1(expected);
        };
        row("585", "585 - - 1 none");
        row("  585 ", "585 - - 1 none");
        row("58,5", "58.5 - - 0.1 none");
        row("58.50", "58.5 - - 0.01 none");
        row("-70", "-70 - - 1 none");
        row("−70", "-70 - - 1 none");
        row("+12", "12 - - 1 none");
        row("1.015", "1.015 - 1015 0.001 none");
        row("1,015", "1.015 - 1015 0.001 none");
        row("1.015,5", "1015.5 - - 0.1 none");
        row("1,015.5", "1015.5 - - 0.1 none");
        row("1\u00a0015", "1015 - - 1 none");
        row("1 015", "1015 - - 1 none");
        row("560 mm 22.0\"", "560 - - 1 mm");
        row("65.5° / 65.1°", "65.5 - - 0.1 deg"); // two settings: the first
        row("585mm", "585 - - 1 mm");
        row("58,5 cm", "58.5 - - 0.1 cm");
        row("23 in.", "23 - - 1 in");
        row("22 1/2\"", "22.5 - - 0.5 in");
        row("22½″", "22.5 - - 0.5 in");
        row("3/8\"", "0.375 - - 0.125 in");
        row("72°", "72 - - 1 deg");
        row("72,5 Grad", "72.5 - - 0.1 deg");
        row("72°30'", "72.5 - - 0.01667 deg");
        row("425-440", "425 440 - 1 none");
        row("425 – 440 mm", "425 440 - 1 mm");
        row("425/440", "425 440 - 1 none");
        row("42,5 bis 44,0", "42.5 44 - 0.1 none");
        row("1,020 to 1,037", "1.02 1.037 1020 0.001 none");
        row("585*", "585 - - 1 none");
        row("585 **", "585 - - 1 none");
        row("585 1)", "585 - - 1 none");
        row("585 (2)", "585 - - 1 none");
        row("585¹", "585 - - 1 none");
        row("ca. 585", "585 - - 1 none");
        row("~585", "585 - - 1 none");
        row("440-425", "none");
        row("585 590", "none");
        row("585 blue", "none");
        row("blue", "none");
        row("", "none");
        row("-", "none");
        row("1.2.3.4", "none");
        row("1234567890123", "none");
        row("M (54)", "none");
        row("12/25/26", "none");
        row("381 / 15.0", "381 - - 1 mm"); // the same in inches
        row("43.4 / 1,102", "1102 - - 0.001 mm");
        row("381 / 15.5", "381 - - 1 none");
        row("5'1\" - 5'4\" (155-163 cm)", "5.08333 5.33333 - 0.08333 ft");
        row("5'1\" - 5'4\" (165-173 cm)", "none");
    }
    void shouldReadTheNumberOfACell()
    {
        QFETCH(QString, cell);
        QFETCH(QString, expected);
        const auto number = cellNumber(plainSigns(cell.toStdString()), headingTable().numbers);
        QString found = QStringLiteral("none");
        if (number) {
            const auto optional = [](const std::optional<double>& value) {
                return value ? QString::number(*value) : QStringLiteral("-");
            };
            static const std::map<Unit, QString> units{
                {Unit::None, QStringLiteral("none")},     {Unit::Millimetre, QStringLiteral("mm")},
                {Unit::Centimetre, QStringLiteral("cm")}, {Unit::Inch, QStringLiteral("in")},
                {Unit::Foot, QStringLiteral("ft")},       {Unit::Degree, QStringLiteral("deg")}};
            found = QStringLiteral("%1 %2 %3 %4 %5")
                        .arg(QString::number(number->value), optional(number->high),
                             optional(number->grouped), QString::number(number->step, 'g', 4),
                             units.at(number->unit));
        }
        QCOMPARE(found, expected);
    }

    // Every term of assets/headings.json, as it stands, in capitals, and with what may stand
    // beside.
    void shouldKnowEveryTermInAnyDress()
    {
        const auto json = textOf(QStringLiteral(TRIPOISE_ASSETS "/headings.json"));
        const QJsonObject columns = QJsonDocument::fromJson(QByteArray::fromStdString(json))
                                        .object()
                                        .value(u"columns")
                                        .toObject();
        int count = 0;
        for (auto column = columns.begin(); column != columns.end(); ++column) {
            const auto meaning = columnFromKey(column.key().toStdString());
            QVERIFY(meaning);
            const QJsonObject languages = column.value().toObject();
            for (const QJsonValue& language : languages) {
                for (const QJsonValue& one : language.toArray()) {
                    const QString term = one.toString();
                    const bool degrees = unitOf(*meaning) == Unit::Degree;
                    const QString unit = degrees ? QStringLiteral(" (°)") : QStringLiteral(" [mm]");
                    for (const QString& dressed :
                         {term, term.toUpper(), term + unit, term + QStringLiteral("*"),
                          term + QStringLiteral("²"), QStringLiteral("G ") + term,
                          term + QStringLiteral(" (G)") + unit}) {
                        const HeadingRead read =
                            readHeading(plainSigns(dressed.toStdString()), headingTable());
                        QVERIFY2(read.column == meaning, qPrintable(dressed));
                        ++count;
                    }
                }
            }
        }
        QVERIFY(count > 2000);
    }

    void shouldNotGuessFromAPartOfAHeading()
    {
        for (const char* heading : {"stack of hay", "reach for the stars", "head", "tube", "angle",
                                    "seat tube diameter", "top tube colour", "wheel base camp"})
            QVERIFY2(!readHeading(heading, headingTable()).understood(), heading);
    }

    void shouldTakeWhatAPersonSays()
    {
        const std::string text = "\tS\tM\tL\nA\t560\t585\t610\nB\t380\t390\t400\n"
                                 "C\t71\t71.5\t72\nRatio\t5\t6\t7\n";
        const ReadTable blind = readGeometryTable(text, headingTable());
        QVERIFY(!blind.readable());
        QCOMPARE(blind.columns.size(), std::size_t(4));
        const ReadTable read = readGeometryTable(text, headingTable(),
                                                 {{std::size_t(0), Column::Stack},
                                                  {std::string("B"), Column::Reach},
                                                  {std::string("C"), Column::HeadAngle},
                                                  {std::string("Ratio"), std::nullopt}});
        QVERIFY(read.readable());
        QVERIFY(read.problems.empty());
        QVERIFY(read.notUnderstood.empty());
        QVERIFY(read.columns[0].assigned && read.columns[3].assigned);
        const GeometryTable geometry = geometryOf(read);
        QCOMPARE(geometry.sizes[1].size, std::string("M"));
        QCOMPARE(entryOf(Column::Stack, geometry.sizes[1])->value, 585.0);
        QCOMPARE(entryOf(Column::HeadAngle, geometry.sizes[2])->value, 72.0);
        QCOMPARE(geometry.sizes[2].entries.size(), std::size_t(3));
        QCOMPARE(read.rows[4][1].state, CellState::SetAside);
        // Another meaning in place of the one that the heading has.
        const std::string named = "Size;S;M\nStack;560;585\nTop tube;541;563";
        const ReadTable other = readGeometryTable(
            named, headingTable(), {{std::string("Top tube"), Column::TopTubeActual}});
        QVERIFY(entryOf(Column::TopTubeActual, geometryOf(other).sizes[0]));
        QVERIFY(!entryOf(Column::TopTube, geometryOf(other).sizes[0]));
    }

    void shouldMarkEveryCell()
    {
        const ReadTable read = readGeometryTable(
            "Milldam geometry\nAll in mm\nSize\tS\tM\nStack\t560\tn/a\nColour\tred\tred\n"
            "Flux\t1\t2\nReach\t380\t39000\n",
            headingTable());
        const auto state = [&](std::size_t row, std::size_t cell) {
            return read.rows[row][cell].state;
        };
        QCOMPARE(state(0, 0), CellState::Model);
        QCOMPARE(state(1, 0), CellState::Unit);
        QCOMPARE(state(2, 0), CellState::Heading);
        QCOMPARE(state(2, 2), CellState::Size);
        QCOMPARE(state(3, 0), CellState::Heading);
        QCOMPARE(state(3, 1), CellState::Value);
        QCOMPARE(state(3, 2), CellState::Missing);
        QCOMPARE(state(4, 1), CellState::SetAside);
        QCOMPARE(state(5, 0), CellState::NotUnderstood);
        QCOMPARE(state(5, 1), CellState::NotUnderstood);
        QCOMPARE(state(6, 2), CellState::NotUnderstood); // no reach is 39 metres
        QCOMPARE(read.rows[3][1].line, std::size_t(4));
        QCOMPARE(read.rows[3][1].size, std::optional<std::size_t>(0));
    }

    // The last character was cut off where it is no ASCII.
    void shouldTellACellWhole()
    {
        const ReadTable read =
            readGeometryTable("Size\tS\tM\nStack\t560\t58é\nReach\t380\t390\n", headingTable());
        QCOMPARE(read.problems.size(), std::size_t(1));
        QCOMPARE(read.problems.front().value, std::string("58é"));
    }

    // How finely a maker rounds is read off the column.
    void shouldSeeTheRounding()
    {
        const GeometryTable geometry = geometryOf(
            readGeometryTable("Size\tS\tM\tL\nStack (cm)\t56\t58.5\t61\nReach\t380\t390.5\t400\n"
                              "Wheelbase\t1010\t1020\t1030\nHead angle\t71\t71.5\t72\nFork "
                              "offset\t1 3/4\"\t1 3/4\"\t1 3/4\"",
                              headingTable()));
        const auto step = [&](Column column) { return entryOf(column, geometry.sizes[0])->step; };
        QVERIFY(std::abs(step(Column::Stack) - 1.0) < 1e-12);
        QVERIFY(std::abs(step(Column::Reach) - 0.5) < 1e-12);
        QVERIFY(std::abs(step(Column::Wheelbase) - 1.0) < 1e-12);
        QVERIFY(std::abs(step(Column::HeadAngle) - 0.1) < 1e-12);
        QVERIFY(std::abs(step(Column::ForkOffset) - 25.4 / 4.0) < 1e-12);
    }

    void shouldRefuseTooMuch()
    {
        std::string rows = "Size;Stack;Reach\n";
        for (int i = 0; i < 100'000; ++i)
            rows += std::to_string(i) + ";560;380\n";
        const ReadTable read = readGeometryTable(rows, headingTable());
        QVERIFY(!read.readable());
        QCOMPARE(read.problems.size(), std::size_t(1));
        QCOMPARE(read.problems.front().code, ProblemCode::TooMany);
        QCOMPARE(read.problems.front().value, std::string("100001"));

        std::string wide = "Size";
        for (int i = 0; i < 200; ++i)
            wide += "\tS" + std::to_string(i);
        wide += "\nStack";
        for (int i = 0; i < 200; ++i)
            wide += "\t560";
        const ReadTable many = readGeometryTable(wide, headingTable());
        QVERIFY(!many.readable());
        QCOMPARE(many.problems.front().code, ProblemCode::TooMany);
        QVERIFY(!many.notUnderstood.empty());
        const ReadTable long_ = readGeometryTable(std::string(2'000'000, 'x'), headingTable());
        QCOMPARE(long_.problems.front().code, ProblemCode::TooLarge);
    }

    // Two halves of one table with the foot of a page between them; and with a line that may as
    // well be the title of another model, so that a person is asked.
    void shouldNotTakeThePagesFootForAModel_data()
    {
        QTest::addColumn<std::string>("between");
        QTest::addColumn<std::size_t>("tables");
        QTest::newRow("nothing") << std::string() << std::size_t(1);
        QTest::newRow("page number") << std::string("38   Road 2024") << std::size_t(1);
        QTest::newRow("number alone") << std::string("38") << std::size_t(1);
        QTest::newRow("address") << std::string("www.example.com") << std::size_t(1);
        QTest::newRow("a sentence")
            << std::string("All measurements subject to change") << std::size_t(2);
        QTest::newRow("a name") << std::string("Weir Tour") << std::size_t(2);
    }
    void shouldNotTakeThePagesFootForAModel()
    {
        QFETCH(std::string, between);
        QFETCH(std::size_t, tables);
        const auto read = readGeometryTables("Quill Lane\n"
                                             "Size XS S M\n"
                                             "Seat tube length 445 470 500\n"
                                             "Seat tube angle 74.5 74.2 73.7\n"
                                             "Head tube angle 70.5 71.3 72.0\n"
                                             "Chainstay length 418 418 418\n"
                                             "Stack 532 553 573\n"
                                             "Reach 362 370 378\n"
                                             "\n" + between
                                                 + "\n\n"
                                                   "Size L XL\n"
                                                   "Seat tube length 530 560\n"
                                                   "Seat tube angle 73.3 73.0\n"
                                                   "Head tube angle 72.5 72.8\n"
                                                   "Chainstay length 418 418\n"
                                                   "Stack 598 622\n"
                                                   "Reach 386 395\n",
                                             headingTable());
        QCOMPARE(read.size(), tables);
        QCOMPARE(read.front().sizes.size(), tables == 1 ? std::size_t(5) : std::size_t(3));
        if (tables == 2)
            QCOMPARE(read.back().sizesFrom, SizesFrom::Guessed);
    }

private:
    static void compare(const ReadTable& read, const Expectation& expected)
    {
        const QString all = told(read).join(u'\n');
        QVERIFY2(!expected.model
                     || (read.model && QString::fromStdString(*read.model) == *expected.model),
                 qPrintable(all));
        QVERIFY2(expected.model || !read.model, qPrintable(all));
        QStringList problems;
        for (const Problem& problem : read.problems)
            problems << codeName(problem.code);
        QVERIFY2(problems == expected.problems, qPrintable(all));
        QStringList open;
        for (const TableText& one : read.notUnderstood)
            open << QString::fromStdString(one.text);
        if (!expected.columns.empty())
            for (const QString& one : open)
                QVERIFY2(expected.notUnderstood.contains(one) || problems.contains(u"SecondTable"),
                         qPrintable(all));
        for (const QString& one : expected.notUnderstood)
            QVERIFY2(open.contains(one), qPrintable(all));
        if (expected.columns.empty()) {
            QVERIFY(!read.readable());
            return;
        }

        QVERIFY(read.readable());
        QStringList sizes;
        for (const std::string& size : read.sizes)
            sizes << QString::fromStdString(size);
        QVERIFY2(sizes == expected.sizes, qPrintable(all));
        const GeometryTable geometry = geometryOf(read);
        for (const auto& [key, values] : expected.columns) {
            QVERIFY2(columnFromKey(key), key.c_str());
            QCOMPARE(values.size(), sizes.size());
            for (qsizetype i = 0; i < values.size(); ++i) {
                const QString wrong =
                    difference(entryIn(geometry, static_cast<std::size_t>(i), key), values[i]);
                QVERIFY2(wrong.isEmpty(), qPrintable(QString::fromStdString(key) + u' ' + values[i]
                                                     + QStringLiteral(": ") + wrong + u'\n' + all));
            }
        }
        for (const TableSize& size : geometry.sizes)
            for (const Entry& entry : size.entries)
                QVERIFY2(expected.columns.contains(std::string(keyOf(entry.column))),
                         std::string(keyOf(entry.column)).c_str());
    }
};

QTEST_APPLESS_MAIN(TestReadTable)
#include "tst_read_table.moc"
