// SPDX-License-Identifier: MIT
//
// Geometry tables in every shape (tests/reference/tables, all invented): what each must give.
// Beside each text stands what is expected of it: the model, the names of the sizes, every column
// by key with its values in millimetres and degrees ("-" where there is none), problems by code,
// and what is not understood. Whatever is not listed there must not be found.
#include "table_support.h"

#include "frame/closure.h"
#include "table/plain.h"
#include "table/read_table.h"

#include <QDir>
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

Expectation expectationOf(const QString& path)
{
    Expectation result;
    for (const QString& line : QString::fromStdString(textOf(path)).split(u'\n')) {
        if (line.isEmpty() || line.startsWith(u'#'))
            continue;
        const QString key = line.section(QStringLiteral(": "), 0, 0);
        const QString value = line.section(QStringLiteral(": "), 1);
        if (key == u"model")
            result.model = value;
        else if (key == u"sizes")
            result.sizes = value.split(QStringLiteral("; "));
        else if (key == u"problem")
            result.problems << value;
        else if (key == u"not understood")
            result.notUnderstood << value;
        else
            result.columns[key.toStdString()] = value.split(QStringLiteral("; "));
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
        const Expectation expected =
            expectationOf(folder + u'/' + name + QStringLiteral(".expected"));
        const ReadTable read = readGeometryTable(text, headingTable());
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

    // Every sign of the text that is not blank stands in some cell, and says what it was taken for.
    void shouldKeepTheText_data() { shouldReadTheTable_data(); }
    void shouldKeepTheText()
    {
        QFETCH(QString, name);
        const std::string bytes = textOf(folder + u'/' + name + QStringLiteral(".txt"));
        const ReadTable read = readGeometryTable(bytes, headingTable());
        if (read.rows.empty())
            return; // refused as a whole, which a problem says
        const auto letters = [](std::string_view text) {
            std::string kept;
            for (const char c : text)
                if (std::isalnum(static_cast<unsigned char>(c)))
                    kept += c;
            return kept;
        };
        std::string stands;
        for (const auto& row : read.rows)
            for (const TableCell& cell : row)
                stands += letters(cell.text);
        QCOMPARE(stands, letters(plainSigns(*decoded(bytes))));
    }
};

QTEST_APPLESS_MAIN(TestReadTable)
#include "tst_read_table.moc"
