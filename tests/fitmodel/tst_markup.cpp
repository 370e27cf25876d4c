// SPDX-License-Identifier: MIT
//
// The tables of a page's source: cells as they are marked, merged ones in every place they cover,
// nothing of what is no text, and a clear word where there is too much. All pages are invented.
#include "table_support.h"

#include "table/markup.h"
#include "table/read_table.h"

#include <QTest>

#include <algorithm>
#include <ctime>

using namespace tripoise;
using namespace tripoise::test;

namespace {

/// Cells by "|", rows by "/", of every table one after another, parted by "//".
std::string told(std::string_view page)
{
    const auto read = table::tablesOfPage(page);
    if (const auto* problem = std::get_if<Problem>(&read))
        return "refused: " + problem->value + ' ' + problem->names.front();
    std::string text;
    for (const table::PageTable& one : std::get<std::vector<table::PageTable>>(read)) {
        text += text.empty() ? "" : "//";
        for (std::size_t r = 0; r < one.rows.size(); ++r) {
            text += r ? "/" : "";
            for (std::size_t c = 0; c < one.rows[r].size(); ++c)
                text += (c ? "|" : "") + one.rows[r][c];
        }
    }
    return text;
}

} // namespace

class TestMarkup : public QObject {
    Q_OBJECT

private slots:
    void shouldGiveTheCells_data()
    {
        QTest::addColumn<QByteArray>("page");
        QTest::addColumn<QByteArray>("cells");
        const auto row = [](const char* name, const char* page, const char* cells) {
            QTest::newRow(name) << QByteArray(page) << QByteArray(cells);
        };
        row("plain", "<table><tr><td>a</td><td>b</td></tr><tr><td>1</td><td>2</td></tr></table>",
            "a|b/1|2");
        row("unclosed", "<table><tr><td>a<td>b<tr><td>1<td>2", "a|b/1|2");
        row("no rows", "<TABLE><TD>a<TD>b</TABLE>", "a|b");
        row("line breaks", "<table><tr><td>Seat tube<br>C-T<td> 5\n 0 <p>mm</table>",
            "Seat tube C-T|5 0 mm");
        row("merged across", "<table><tr><td>a<td colspan=2>b<td>c</table>", "a|b|b|c");
        row("merged down", "<table><tr><td rowspan='2'>a<td>b<tr><td>c</table>", "a|b/a|c");
        row("merged both ways",
            "<table><tr><td rowspan=2 colspan=2>a<td>b<tr><td>c<tr><td>d<td>e<td>f</table>",
            "a|a|b/a|a|c/d|e|f");
        row("merged that overlap",
            "<table><tr><td>a<td rowspan=2>b<tr><td colspan=2>c<td>d</table>", "a|b/c|b|d");
        row("title over all", "<table><tr><th colspan=3>Frame<tr><td>a<td>b<td>c</table>",
            "Frame/a|b|c");
        row("span of nonsense", "<table><tr><td colspan=-4>a<td rowspan=x>b</table>", "a|b");
        row("signs",
            "<table><td>71&deg;&nbsp;&#8211; &#x32; &quot;&amp;&lt;&unknown; a & b</table>",
            "71° – 2 \"&<&unknown; a & b");
        row("scripts",
            "<script>document.write('<table><td>x</table>')</script><style>td{}</style>"
            "<table><td>a<script>1<2</script>b<!-- <td>c --></table>",
            "a b");
        row("sign in an attribute", "<table title='a>b'><td onclick=\"x('</td>')\">a</table>", "a");
        row("pictures", "<table><td><img src='http://192.0.2.1/x.png' alt='y'>a</table>", "a");
        row("nested", "<table><tr><td><table><tr><td>a<td>b</table><td>c</table>", "|c//a|b");
        row("two", "<table><td>a</table>text<table><td>b</table>", "a//b");
        row("none", "<p>Stack 560</p>", "");
        row("hidden in a cell",
            "<table><td>a<span style=\"color:red; display: none\">b <span>c</span></span>"
            "<td aria-hidden=true>d<td><p hidden>e</p>f</table>",
            "a|d|f");
        row("hidden and not closed", "<table><td><p hidden>a<td>b</table>", "|b");
        row("hidden table", "<div style='display:none'><table><td>a</table></div>", "a");
        row("text of two elements", "<table><td><b>Stack</b><span>560</span><sub>mm</sub></table>",
            "Stack 560 mm");
        row("footnote marks", "<table><td>15<sup>1</sup><td>73<sup>o</sup><td>Stack<sup>*</sup>",
            "15|73|Stack");
        row("fraction", "<table><td>15<sup>1</sup>/<sub>2</sub>\"</table>", "15 1/2\"");
        row("a lone sign", "<table><td>1 < 2<td>a<", "1 < 2|a<");
    }
    void shouldGiveTheCells()
    {
        QFETCH(QByteArray, page);
        QFETCH(QByteArray, cells);
        QCOMPARE(QByteArray::fromStdString(told(page.toStdString())), cells);
    }

    void shouldGiveTheTextBeside()
    {
        const auto read = table::tablesOfPage("<h1>Weir</h1><p>All in mm</p><table><td>a</table>"
                                              "<p>* a note</p>");
        const auto& one = std::get<std::vector<table::PageTable>>(read).front();
        QCOMPARE(one.above, (std::vector<std::string>{"Weir", "All in mm"}));
        QCOMPARE(one.below, (std::vector<std::string>{"* a note"}));
    }

    void shouldRefuseTooMuch()
    {
        std::string deep;
        for (int i = 0; i < 30; ++i)
            deep += "<table><tr><td>";
        QCOMPARE(told(deep), std::string("refused: 21 tables"));
        std::string wide = "<table>";
        for (int i = 0; i < 300; ++i)
            wide += "<tr><td colspan=100>a";
        QCOMPARE(told(wide), std::string("refused: 20001 cells"));
        const std::string large = "<table><td>" + std::string(9'000'000, 'x');
        const ReadTable read = readGeometryTable(large, headingTable());
        QCOMPARE(read.problems.front().code, ProblemCode::TooLarge);
    }

    // How deep blocks lie in each other and how many texts they hold is limited as well.
    void shouldBoundThePagesBlocks()
    {
        const auto nested = [](int depth) {
            std::string page;
            for (int i = 0; i < depth; ++i)
                page += "<div>";
            for (const char* row :
                 {"<p>Size<p>S<p>M", "<p>Stack<p>560<p>580", "<p>Reach<p>380<p>390"})
                page += std::string("<div>") + row + "</div>";
            return readGeometryTable(page, headingTable());
        };
        QVERIFY(nested(150).readable());
        QVERIFY(!nested(100'000).readable()); // and the stack holds
        std::string many;
        for (int i = 0; i < 60'000; ++i)
            many += "<p>1";
        QCOMPARE(readGeometryTable(many + "<div>", headingTable()).problems.front().code,
                 ProblemCode::TooMany);
    }

    // A long text in a cell that is merged over many is not repeated in each.
    void shouldNotMultiplyText()
    {
        const std::string page =
            "<table><tr><td rowspan=1000 colspan=15>" + std::string(100'000, 'x') + "<td>a</table>";
        const auto read = table::tablesOfPage(page);
        std::size_t bytes = 0;
        for (const auto& row : std::get<std::vector<table::PageTable>>(read).front().rows)
            for (const std::string& cell : row)
                bytes += cell.size();
        QVERIFY(bytes < 200'000);
    }

    void shouldTakeTheTableWithTheGeometry()
    {
        const ReadTable read = readGeometryTable(
            "<table><tr><td>Frame<td>1,299<tr><td>Fork<td>349</table><h2>Weir</h2>"
            "<table><tr><th><th>S<th>M<tr><th>Stack<td>560<td>585<tr><th>Reach<td colspan=2>390"
            "</table>",
            headingTable());
        QCOMPARE(read.sizes, (std::vector<std::string>{"S", "M"}));
        QCOMPARE(read.model, std::optional<std::string>("Weir"));
        QCOMPARE(read.sizesFrom, SizesFrom::Named);
        const GeometryTable geometry = geometryOf(read);
        QCOMPARE(entryOf(Column::Stack, geometry.sizes[1])->value, 585.0);
        QCOMPARE(entryOf(Column::Reach, geometry.sizes[1])->value, 390.0);
        QVERIFY(read.problems.empty());
    }

    void shouldGiveThePageAsText()
    {
        const auto text = tableTextOfPage("<table><tr><td>Size<td>S<td>M<tr><td>Head<br>angle"
                                          "<td>71<td>72</table>",
                                          headingTable());
        QCOMPARE(text, std::optional<std::string>("Size\tS\tM\nHead angle\t71\t72\n"));
        QVERIFY(!tableTextOfPage("<p>Stack 560</p>", headingTable()));
        QVERIFY(!tableTextOfPage("Stack\t560", headingTable()));
    }

    // Four times the cells take four times the time, where each is made of headings' words and no
    // two are alike. Processor time.
    void shouldTakeTimeByTheCells()
    {
        const auto seconds = [](int cells) {
            const char* words[] = {"effective", "seat",  "tube",   "angle",  "head",
                                   "top",       "frame", "actual", "length", "height"};
            std::string page = "<table>";
            for (int cell = 0; cell < cells; ++cell) {
                page += cell % 10 == 0 ? "<tr><td>" : "<td>";
                for (int i = 0, rest = cell; i < 12; ++i, rest /= 3)
                    page += words[(rest + i) % 10] + std::string(" ");
            }
            const std::clock_t begun = std::clock();
            const ReadTable read = readGeometryTable(page + "</table>", headingTable());
            return read.readable() ? 0.0 : double(std::clock() - begun) / CLOCKS_PER_SEC;
        };
        (void)seconds(100);
        const double few = std::min(seconds(4'000), seconds(4'000));
        const double many = std::min(seconds(16'000), seconds(16'000));
        qInfo("%.0f and %.0f ms", 1e3 * few, 1e3 * many);
        QVERIFY(few > 0.0 && many < 8.0 * few);
    }

    // A page four times as long takes about four times as long.
    void shouldBeQuickOnLongPages()
    {
        const auto seconds = [](std::size_t bytes) {
            std::string page;
            while (page.size() < bytes)
                page += "<table><tr><th>Size</th><th>S</th></tr><tr><td>Stack</td><td>560</td></tr>"
                        "</table><div>"
                        + std::string(2000, 'x') + "</div>";
            const std::clock_t begun = std::clock();
            const ReadTable read = readGeometryTable(page, headingTable());
            return read.readable() ? double(std::clock() - begun) / CLOCKS_PER_SEC : 0.0;
        };
        (void)seconds(50'000);
        const double few = std::min(seconds(250'000), seconds(250'000));
        const double many = std::min(seconds(1'000'000), seconds(1'000'000));
        qInfo("%.0f and %.0f ms", 1e3 * few, 1e3 * many);
        QVERIFY(few > 0.0 && many < 8.0 * few);
    }
};

QTEST_APPLESS_MAIN(TestMarkup)
#include "tst_markup.moc"
