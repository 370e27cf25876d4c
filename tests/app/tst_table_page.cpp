// SPDX-License-Identifier: MIT
//
// A table as it is worked on, its page, and the library of frames.
#include "app/own_folders.h"
#include "support.h"

#include "document/frame_list.h"
#include "geometry/library_model.h"
#include "geometry/table_page.h"
#include "session/store.h"
#include "wording/table_words.h"

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>

#include <cmath>
#include <ctime>
#include <memory>
#include <random>

using namespace tripoise;
using namespace tripoise::test;

namespace {

// Invented, and consistent by derivation: four sizes of tests/reference/tables/01, which follow
// from stack, reach, angles, 430 of chainstay, 72 of drop, 395 of fork and 48 of offset, rounded.
const QString clean = QStringLiteral("Weir\n"
                                     "Size\tS\tM\tL\tXL\n"
                                     "Stack\t558\t580\t602\t624\n"
                                     "Reach\t380\t390\t400\t410\n"
                                     "Seat angle\t74\t73.5\t73\t72.5\n"
                                     "Head angle\t71\t71.5\t72\t72.5\n"
                                     "Effective top tube\t540\t562\t584\t607\n"
                                     "Chainstay\t430\t430\t430\t430\n"
                                     "BB drop\t72\t72\t72\t72\n"
                                     "Wheelbase\t1022\t1035\t1047\t1058\n"
                                     "Front centre\t602\t615\t627\t638\n");

/// One figure mistyped.
QString wrongly(const QString& from, const QString& to)
{
    QString text = clean;
    text.replace(from, to);
    return text;
}

const TableLine& lineOf(TablePage& page, Column column)
{
    for (const TableLine& line : static_cast<TableLinesModel*>(page.lines())->lines())
        if (line.column == column)
            return line;
    throw std::runtime_error("no line of that column");
}
int rowOf(TablePage& page, Column column)
{
    const auto& lines = static_cast<TableLinesModel*>(page.lines())->lines();
    return int(&lineOf(page, column) - lines.data());
}
QStringList notesOf(TablePage& page)
{
    QStringList told;
    for (const TableNote& note : static_cast<TableNotesModel*>(page.notes())->notes())
        told << note.told;
    return told;
}

FrameSize sized(const char* size, double stackMm)
{
    FrameSize frame;
    frame.model = "Weir";
    frame.size = size;
    frame.geometry.stackMm = stackMm;
    frame.geometry.reachMm = 390;
    frame.geometry.headAngleDeg = 71.5;
    frame.geometry.seatAngleDeg = 73.5;
    return frame;
}

void putPage(const QString& page)
{
    auto* data = new QMimeData;
    data->setText(QStringLiteral("plain"));
    data->setHtml(page);
    QGuiApplication::clipboard()->setMimeData(data);
}

/// As many cells as are read at all, of headings' words, so that each takes its time.
QString longPage()
{
    const QStringList words{"effective", "seat",   "tube",  "angle",  "head",  "top",   "centre",
                            "length",    "height", "frame", "actual", "stack", "reach", "fork"};
    std::minstd_rand random(1);
    QString page = QStringLiteral("<table>");
    for (int cell = 0; cell < 19'999; ++cell) {
        page += cell % 20 == 0 ? QStringLiteral("<tr><td>") : QStringLiteral("<td>");
        for (int i = 0; i < 13; ++i)
            page += words[qsizetype(random() % std::size_t(words.size()))] + u' ';
    }
    return page + QStringLiteral("</table>");
}

} // namespace

class TestTablePage : public QObject {
    Q_OBJECT

private slots:
    void shouldMarkEveryFigure()
    {
        TablePage page;
        page.setText(wrongly("390\t400", "420\t400")); // the reach of M, by 30 mm
        QVERIFY(page.readable());
        const TableFigure& reach = lineOf(page, Column::Reach).figures[1];
        const TableFigure& stack = lineOf(page, Column::Stack).figures[1];
        QVERIFY(reach.mark == FigureMark::Contradicts);
        // Derived: what the table had before; the others are rounded to 0.5 mm or 0.05 degrees.
        QVERIFY(std::abs(reach.agree.value_or(0.0) - 390.0) < 1.5);
        QVERIFY(stack.mark == FigureMark::Given || stack.mark == FigureMark::Doubtful);
        QVERIFY(lineOf(page, Column::Reach).figures[0].mark == FigureMark::Given);
        // Trail needs the fork's offset, which is not in the table but follows from the rest.
        QVERIFY(lineOf(page, Column::ForkOffset).figures[1].mark != FigureMark::Given);
        QVERIFY(lineOf(page, Column::ForkOffset).heading.isEmpty());
    }

    void shouldSayNothingOfACleanTable()
    {
        TablePage page;
        page.setText(clean);
        for (const TableLine& line : static_cast<TableLinesModel*>(page.lines())->lines())
            for (const TableFigure& figure : line.figures)
                QVERIFY(figure.mark == FigureMark::Given || figure.mark == FigureMark::Follows
                        || figure.mark == FigureMark::Assumed);
        QCOMPARE(page.modelName(), QStringLiteral("Weir"));
        QCOMPARE(page.summary(), QStringLiteral("4 size(s), 9 heading(s) understood"));
    }

    /// Beside the plain text, whose cells break, stand the cells as the page has them.
    void shouldTakeTheCellsOfAPage()
    {
        auto* data = new QMimeData;
        data->setText(QStringLiteral("Seat\nangle\nStack\n74\n560"));
        data->setHtml(QStringLiteral("<table><tr><th>Size<th>S<th>M<tr><th>Stack<td>560<td>585"
                                     "<tr><th>Seat<br>angle<td colspan=2>73.5</table>"));
        QGuiApplication::clipboard()->setMimeData(data);
        TablePage page;
        page.offerClipboard();
        QVERIFY(page.reading() && page.shownText().isEmpty());
        QTRY_VERIFY(!page.reading());
        QCOMPARE(page.shownText(),
                 QStringLiteral("Size\tS\tM\nStack\t560\t585\nSeat angle\t73.5\t73.5\n"));
        QVERIFY(lineOf(page, Column::SeatAngle).figures[1].mark == FigureMark::Given);
        page.setText(QStringLiteral("Weir\n"));
        QVERIFY(page.pasteLong(5, 5, false));
        QTRY_VERIFY(page.readable());
        QVERIFY(page.shownText().startsWith(QStringLiteral("Weir\nSize\tS")));
        data = new QMimeData;
        data->setText(QStringLiteral("prose"));
        data->setHtml(QStringLiteral("<p><img src='https://192.0.2.1/a.png'>prose</p>"));
        QGuiApplication::clipboard()->setMimeData(data);
        page.paste();
        QCOMPARE(page.shownText(), QStringLiteral("prose"));
        const OwnFolders folders;
        page.openFile(QUrl::fromLocalFile(folders.file(
            QStringLiteral("page.html"),
            QByteArrayLiteral("<table><tr><td>Size<td>S<tr><td>Stack<td>560</table>"))));
        QTRY_VERIFY(page.readable());
        QCOMPARE(page.shownText(), QStringLiteral("Size\tS\nStack\t560\n"));
        data = new QMimeData; // a page's table that is none of geometry
        data->setText(QStringLiteral("plain"));
        data->setHtml(QStringLiteral("<table><tr><td>Price<td>1490</table>"));
        QGuiApplication::clipboard()->setMimeData(data);
        page.paste();
        QTRY_COMPARE(page.shownText(), QStringLiteral("plain"));
        page.clear();
        page.offerClipboard();
        QTRY_VERIFY(!page.reading());
        QCOMPARE(page.shownText(), QString());
    }

    /// The window's thread gives the page away and goes on; a word says so meanwhile.
    void shouldReadAPageBesideTheWindow()
    {
        putPage(longPage());
        TablePage page;
        page.setText(clean);
        QElapsedTimer clock;
        clock.start();
        page.paste();
        const qint64 given = clock.elapsed();
        QVERIFY(page.reading());
        QCOMPARE(page.summary(), QStringLiteral("The table is being read…"));
        QVERIFY(!page.canAdd());
        QCOMPARE(page.shownText(), clean); // until the other is there
        qint64 longest = 0;
        for (qint64 last = clock.elapsed(); page.reading() && clock.elapsed() < 60'000;) {
            QTest::qWait(1);
            longest = std::max(longest, clock.elapsed() - last);
            last = clock.elapsed();
        }
        qInfo("read in %lld ms, given away in %lld, the window waited %lld at most",
              clock.elapsed(), given, longest);
        QVERIFY(!page.reading());
        QVERIFY(page.shownText() != clean);
        QVERIFY(given < 100 && longest < clock.elapsed() / 2);
    }

    /// Whatever is newer: another page, a text, nothing at all.
    void shouldLetANewerTableReplaceAPage()
    {
        TablePage page;
        const QSignalSpy texts(&page, &TablePage::textChanged);
        putPage(longPage());
        page.paste();
        putPage(QStringLiteral("<table><tr><td>Size<td>S<tr><td>Stack<td>560</table>"));
        page.paste();
        QTRY_VERIFY(!page.reading());
        QCOMPARE(page.shownText(), QStringLiteral("Size\tS\nStack\t560\n"));
        QCOMPARE(texts.size(), 1);
        putPage(longPage());
        page.paste();
        page.setText(clean);
        QVERIFY(!page.reading());
        page.paste();
        page.clear();
        QTest::qWait(50);
        QCOMPARE(page.shownText(), QString());
    }

    /// In a small part of the time that the reading takes; in processor time, which a busy machine
    /// does not lengthen much.
    void shouldEndInTheMiddleOfAPage()
    {
        putPage(longPage());
        auto page = std::make_unique<TablePage>();
        const std::clock_t begun = std::clock();
        page->paste();
        QTRY_VERIFY_WITH_TIMEOUT(!page->reading(), 60'000);
        const std::clock_t whole = std::clock() - begun;
        page->paste();
        QTest::qSleep(20);
        QElapsedTimer clock;
        clock.start();
        const std::clock_t asked = std::clock();
        page.reset();
        const std::clock_t ended = std::clock() - asked;
        qInfo("ended in %lld ms; processor %ld of %ld", clock.elapsed(), ended, whole);
        QVERIFY(ended < whole / 3);
    }

    void shouldAskForAGuessToBeConfirmed()
    {
        TablePage page;
        page.setText(wrongly("S\tM\tL\tXL", "S\tM\t\tXL")
                     + QStringLiteral("Trail (loaded)\t60\t60"
                                      "\t60\t60\n"));
        QVERIFY(page.readable());
        QVERIFY(!page.canAdd());
        const auto confirm = [&page] {
            const auto& notes = static_cast<TableNotesModel*>(page.notes())->notes();
            for (std::size_t i = 0; i < notes.size(); ++i)
                if (std::holds_alternative<ConfirmGuess>(notes[i].step)) {
                    page.step(int(i));
                    return true;
                }
            return false;
        };
        QVERIFY(confirm());
        QVERIFY(confirm());
        QVERIFY(!confirm());
        QVERIFY(page.canAdd());
        QVERIFY(lineOf(page, Column::Trail).assigned);
    }

    void shouldHaveAWordForEveryColumn()
    {
        for (std::size_t i = 0; i < columnCount; ++i)
            QVERIFY2(!nameOf(static_cast<Column>(i)).contains(u'_'), columnKeys[i].data());
    }

    void shouldCorrectByOneClickAndBack()
    {
        TablePage page;
        page.setText(wrongly("390\t400", "420\t400"));
        const int reach = rowOf(page, Column::Reach);
        QVERIFY(page.actOn(reach, 1));
        QVERIFY(lineOf(page, Column::Reach).figures[1].mark == FigureMark::Corrected);
        const double taken = lineOf(page, Column::Reach).figures[1].text.toDouble();
        QVERIFY(std::abs(taken - 390.0) <= 1.0);
        QVERIFY(!page.actOn(reach, 0)); // nothing to be done about it
        QVERIFY(page.actOn(reach, 1));
        QCOMPARE(lineOf(page, Column::Reach).figures[1].text, QStringLiteral("420"));
        QCOMPARE(page.shownText(), wrongly("390\t400", "420\t400"));
    }

    /// What is typed on elsewhere leaves a correction; what is typed in its place ends it.
    void shouldKeepACorrectionAsLongAsItsFigureIsPrinted()
    {
        TablePage page;
        page.setText(wrongly("390\t400", "420\t400"));
        QVERIFY(page.actOn(rowOf(page, Column::Reach), 1));
        page.setText(wrongly("390\t400", "420\t400")
                     + QStringLiteral("Fork offset\t48\t48\t48\t48\n"));
        QVERIFY(lineOf(page, Column::Reach).figures[1].mark == FigureMark::Corrected);
        page.setText(clean);
        QVERIFY(lineOf(page, Column::Reach).figures[1].mark == FigureMark::Given);
        QCOMPARE(lineOf(page, Column::Reach).figures[1].text, QStringLiteral("390"));
    }

    /// Straight front-centres under the heading of horizontal ones: told, taken as what they are,
    /// and left as headed when a person says so.
    void shouldProposeAnotherDefinition()
    {
        QString text = clean;
        text.replace("Effective top tube\t540\t562\t584\t607",
                     "Front centre horizontal\t602\t615\t627\t638");
        text.replace("Front centre\t602\t615\t627\t638\n", "");
        TablePage page;
        page.setText(text);
        const auto& notes = static_cast<TableNotesModel*>(page.notes())->notes();
        const auto found = std::find_if(notes.begin(), notes.end(), [](const TableNote& note) {
            return std::holds_alternative<ReadAsHeaded>(note.step);
        });
        QVERIFY2(found != notes.end(), qPrintable(notesOf(page).join(u'\n')));
        QVERIFY(lineOf(page, Column::FrontCentre).figures[0].mark == FigureMark::Given);
        QCOMPARE(page.step(int(found - notes.begin())), -1);
        QVERIFY(lineOf(page, Column::FrontCentreHorizontal).readColumn.has_value());
        const auto& later = static_cast<TableNotesModel*>(page.notes())->notes();
        QVERIFY(std::any_of(later.begin(), later.end(), [](const TableNote& note) {
            return note.step == TableStep(ReadAsHeaded{false});
        }));
    }

    /// Two models with the same sizes: what is said of the one holds for that one alone, and its
    /// sizes are added under its own name.
    void shouldWorkOnOneModelAtATime()
    {
        QString other = clean;
        other.replace(QStringLiteral("Weir\n"), QStringLiteral("\nSluice\n"))
            .replace(QStringLiteral("602\t624"), QStringLiteral("642\t664"));
        const OwnFolders folders;
        Session session;
        TablePage page;
        page.setSession(&session);
        const std::size_t already = session.fitting().frames.size();
        page.setText(clean);
        QVERIFY(page.models().isEmpty());
        page.setText(clean + other);
        QCOMPARE(page.models().size(), 2);
        QCOMPARE(page.models().at(1).toMap().value(QStringLiteral("text")).toString(),
                 QStringLiteral("Sluice"));
        QCOMPARE(page.modelName(), QStringLiteral("Weir"));
        page.tick(0, false);
        page.assign(rowOf(page, Column::Chainstay), QStringLiteral("leave out"));
        page.setModelName(QStringLiteral("Weir of May"));

        page.choose(1);
        QCOMPARE(page.chosen(), 1);
        QCOMPARE(page.modelName(), QStringLiteral("Sluice"));
        QCOMPARE(lineOf(page, Column::Stack).figures[3].text, QStringLiteral("664"));
        QVERIFY(!lineOf(page, Column::Chainstay).assigned);
        page.setKeep(false);
        QVERIFY(page.add());
        QCOMPARE(session.fitting().frames.size(), already + 4);
        QCOMPARE(session.fitting().frames.back().model, std::string("Sluice"));

        page.choose(0);
        QCOMPARE(page.modelName(), QStringLiteral("Weir of May"));
        QCOMPARE(lineOf(page, Column::Stack).figures[3].text, QStringLiteral("624"));
        QVERIFY(page.add());
        QCOMPARE(session.fitting().frames.size(), already + 7);
        page.setText(clean); // the other is no longer there
        page.choose(1);
        QCOMPARE(page.chosen(), 0);
    }

    // Two tables of one name would take each other's place.
    void shouldNameTwoTablesOfOneNameApart()
    {
        QString other = clean;
        other.replace(QStringLiteral("602\t624"), QStringLiteral("642\t664"));
        const OwnFolders folders;
        Session session;
        TablePage page;
        page.setSession(&session);
        page.setKeep(false);
        const std::size_t already = session.fitting().frames.size();
        page.setText(clean + u'\n' + other);
        QCOMPARE(page.models().size(), 2);
        QCOMPARE(page.modelName(), QStringLiteral("Weir, table 1"));
        QVERIFY(page.add());
        page.choose(1);
        QCOMPARE(page.modelName(), QStringLiteral("Weir, table 2"));
        QVERIFY(page.add());
        QCOMPARE(session.fitting().frames.size(), already + 8);
    }

    void shouldSayHowManySizesTakeThePlaceOfOthers()
    {
        QString other = clean;
        other.replace(QStringLiteral("602\t624"), QStringLiteral("642\t664"));
        const OwnFolders folders;
        Session session;
        TablePage page;
        page.setSession(&session);
        page.setKeep(false);
        page.setText(clean);
        QCOMPARE(page.addText(), QStringLiteral("Add 4 size(s)"));
        QVERIFY(page.add());
        QCOMPARE(page.addText(), QStringLiteral("Add 4 size(s)")); // the same once more
        page.setText(other);
        QCOMPARE(page.addText(),
                 QStringLiteral("Add 4 size(s); 2 in place of another of its name"));
    }

    void shouldTakeAMeaningFromAPersonAndGiveItBack()
    {
        TablePage page;
        page.setText(wrongly("Stack\t", "Elevation\t"));
        QVERIFY(!lineOf(page, Column::Stack).readColumn); // the rest tells it meanwhile
        QVERIFY(lineOf(page, Column::Stack).figures[1].mark == FigureMark::Follows);
        QVERIFY(notesOf(page).join(u'\n').contains(QStringLiteral("“Elevation”")));
        const auto& notes = static_cast<TableNotesModel*>(page.notes())->notes();
        int asked = -1;
        for (std::size_t i = 0; i < notes.size() && asked < 0; ++i)
            if (std::holds_alternative<SayMeaning>(notes[i].step))
                asked = page.step(int(i));
        QCOMPARE(asked, 0);
        page.assign(asked, QStringLiteral("stack_mm"));
        QVERIFY(lineOf(page, Column::Stack).assigned);
        QVERIFY(lineOf(page, Column::Stack).figures[1].mark == FigureMark::Given);
        page.setText(wrongly("Stack\t", "Elevation\t")
                     + QStringLiteral("Fork offset\t48\t48\t48\t48\n"));
        QVERIFY(lineOf(page, Column::Stack).assigned); // by its heading, whatever is typed on
        const QVariantList meanings = page.meanings(0);
        QVERIFY(meanings.size() > 20);
        QCOMPARE(meanings.front().toMap().value(QStringLiteral("key")).toString(), QString());
        page.assign(0, {}); // as headed
        QVERIFY(!lineOf(page, Column::Stack).readColumn);
        page.assign(0, QStringLiteral("leave out"));
        const auto& lines = static_cast<TableLinesModel*>(page.lines())->lines();
        QVERIFY(lines[0].setAside && !lines[0].open);
    }

    void shouldMakeCandidatesAndKeepTheFrame()
    {
        const OwnFolders folders;
        Session session;
        TablePage page;
        page.setSession(&session);
        page.setText(clean);
        page.tick(0, false);
        QCOMPARE(page.addText(), QStringLiteral("Add 3 size(s) and keep the frame"));
        QVERIFY(page.add());
        const auto& frames = session.fitting().frames;
        QCOMPARE(frames.size(), std::size_t(3));
        QCOMPARE(frames[0].size, std::string("M"));
        QCOMPARE(frames[0].geometry.stackMm, 580.0);
        QCOMPARE(frames[0].geometry.wheelbaseMm.value_or(0.0), 1035.0);
        const auto kept = library::all();
        QCOMPARE(kept.size(), std::size_t(1));
        QCOMPARE(kept[0].model, std::string("Weir"));
        QCOMPARE(kept[0].sizes.size(), std::size_t(4)); // those left out are kept as well
        QVERIFY(page.add());                            // the same once more changes nothing
        QCOMPARE(session.fitting().frames.size(), std::size_t(3));
    }

    /// A full disk: nothing is added by half, and it is said.
    void shouldSayWhenTheFrameCannotBeKept()
    {
        const OwnFolders folders;
        Session session;
        TablePage page;
        page.setSession(&session);
        page.setText(clean);
        {
            const FullDisk full(100);
            QVERIFY(!page.add());
        }
        QVERIFY(page.said().contains(QStringLiteral("could not be kept")));
        QVERIFY(session.fitting().frames.empty());
        page.setKeep(false);
        QVERIFY(page.add());
        QCOMPARE(session.fitting().frames.size(), std::size_t(4));
    }

    /// A text that no field can show is kept whole; a picture's bytes and prices get a word.
    void shouldKeepWhatIsNoTable()
    {
        TablePage page;
        QString rows = clean;
        for (int i = 0; i < 100'000; ++i)
            rows += QStringLiteral("Row\t1\t2\t3\t4\n");
        QGuiApplication::clipboard()->setText(rows);
        page.offerClipboard();
        QCOMPARE(page.shownText(), QString()); // it is not offered
        page.paste();
        QVERIFY(!page.readable());
        QVERIFY(!page.wholeShown());
        QVERIFY(rows.startsWith(page.shownText()));
        QVERIFY(
            notesOf(page).constFirst().contains(QStringLiteral("too many for a geometry table")));
        const OwnFolders folders;
        page.openFile(QUrl::fromLocalFile(folders.file(
            QStringLiteral("picture.csv"), QByteArray("\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0", 18))));
        QVERIFY(page.said().contains(QStringLiteral("holds no text")));
        QVERIFY(rows.startsWith(page.shownText()) && !page.shownText().isEmpty());
        page.openFile(QUrl::fromLocalFile(folders.path(QStringLiteral("gone.csv"))));
        QVERIFY(page.said().contains(QStringLiteral("gone.csv was not opened")));
        page.setText(QStringLiteral("Model\tPrice\nWeir\t1490\nSluice\t1890\n"));
        QVERIFY(!page.canAdd());
        QVERIFY(!notesOf(page).isEmpty());
    }

    /// What is too long for the field goes past it; what is not is the field's own.
    void shouldTakeALongTextPastTheField()
    {
        TablePage page;
        page.setText(QStringLiteral("Size\tS\nold"));
        QGuiApplication::clipboard()->setText(QStringLiteral("Stack\t560"));
        QVERIFY(!page.pasteLong(7, 10, false));
        QVERIFY(!page.pasteLong(7, 10, true)); // nothing is marked anywhere
        QCOMPARE(page.shownText(), QStringLiteral("Size\tS\nold"));
        QGuiApplication::clipboard()->setText(QStringLiteral("Row\t1\t2\n").repeated(500'000));
        QVERIFY(page.pasteLong(7, 10, false));
        QVERIFY(!page.wholeShown());
        QCOMPARE(page.shownText().size(), 60'000);
        QVERIFY(page.shownText().startsWith(QStringLiteral("Size\tS\nRow\t1")));
        QVERIFY(notesOf(page).constFirst().contains(QStringLiteral("500001 lines")));
    }

    void shouldKeepToTheRulesOfModels()
    {
        const OwnFolders folders;
        TablePage page;
        const QAbstractItemModelTester lines(
            page.lines(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        const QAbstractItemModelTester sizes(
            page.sizes(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        const QAbstractItemModelTester notes(
            page.notes(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        for (const QString& text : {clean, wrongly("390\t400", "420\t400"), QStringLiteral("prose"),
                                    wrongly("Stack\t", "Elevation\t"), QString()})
            page.setText(text);
        LibraryModel library;
        const QAbstractItemModelTester kept(&library,
                                            QAbstractItemModelTester::FailureReportingMode::QtTest);
        QVERIFY(!library::keep("Weir", {sized("S", 560)}));
        QVERIFY(!library::keep("Ford", {sized("S", 560)}));
        library.refresh();
        library.tick(1, 0, true);
        library.forget(0);
        library.refresh();
        QCOMPARE(library.count(), 1);
    }

    /// Sizes kept before stay; those of the same name are replaced, and what stood there is
    /// history.
    void shouldMergeWhatIsKeptTwice()
    {
        const OwnFolders folders;
        QVERIFY(!library::keep("Weir", {sized("S", 560), sized("M", 580)}));
        QVERIFY(!library::keep("Weir", {sized("M", 585), sized("L", 600)}));
        QVERIFY(!library::keep("weir", {sized("S", 500)})); // another model
        const auto kept = library::all();
        QCOMPARE(kept.size(), std::size_t(2));
        const auto weir =
            std::find_if(kept.begin(), kept.end(),
                         [](const library::KeptFrame& frame) { return frame.model == "Weir"; });
        QVERIFY(weir != kept.end());
        QCOMPARE(weir->sizes.size(), std::size_t(3));
        QCOMPARE(weir->sizes[0].geometry.stackMm, 585.0);
        QCOMPARE(weir->sizes[2].size, std::string("S"));
        QVERIFY(!QDir(store::historyOf(weir->path)).entryList(QDir::Files).isEmpty());
        QVERIFY(!library::forget(weir->path));
        QCOMPARE(library::all().size(), std::size_t(1));
    }

    /// A damaged file among those kept stays where it is and hides nothing.
    void shouldPassOverADamagedFrame()
    {
        const OwnFolders folders;
        QVERIFY(!library::keep("Weir", {sized("S", 560)}));
        QVERIFY(!store::write(
            QDir(store::folder(QStringLiteral("frames"))).filePath(QStringLiteral("x.json")),
            "{ half a"));
        QCOMPARE(library::all().size(), std::size_t(1));
        QVERIFY(QFile::exists(
            QDir(store::folder(QStringLiteral("frames"))).filePath(QStringLiteral("x.json"))));
    }

    /// A size that is a candidate already gets the table's figures and keeps what no table states.
    void shouldOverlayASizeThatIsThereAlready()
    {
        Fitting fitting;
        fitting.frames = {sized("M", 570)};
        fitting.frames[0].headset.material = SteererMaterial::Steel;
        fitting.frames[0].price = 900;
        FrameSize next = sized("M", 580);
        next.price = 950;
        const Fitting merged = withFrames(fitting, {next, sized("L", 600)}).value();
        QCOMPARE(merged.frames.size(), std::size_t(2));
        QCOMPARE(merged.frames[0].geometry.stackMm, 580.0);
        QVERIFY(merged.frames[0].headset.material == SteererMaterial::Steel);
        QCOMPARE(merged.frames[0].price.value_or(0), 950.0);
        std::vector<FrameSize> many;
        for (std::size_t i = 0; i < mostFrames; ++i)
            many.push_back(sized(std::to_string(i).c_str(), 600));
        QVERIFY(!withFrames(fitting, many)); // one more than a fitting holds
        many.pop_back();
        QVERIFY(withFrames(fitting, many));
    }
};

int main(int argc, char** argv)
{
    const OwnFolders folders;
    QGuiApplication application(argc, argv);
    TestTablePage test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_table_page.moc"
