// SPDX-License-Identifier: MIT
//
// The set-up sheet, read back out of the PDF by a reader of such files that knows nothing of this
// program (poppler's pdftotext and pdfinfo).
#include "sheet/sheet.h"

#include "app/own_folders.h"
#include "document/handed_over.h"
#include "random_brief.h"
#include "samples.h"
#include "support.h"
#include "wording/setup_rows.h"
#include "wording/words.h"

#include <QDir>
#include <QGuiApplication>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>

using namespace tripoise;

namespace {

struct Decided {
    Fitting fitting;
    Prepared prepared;
    Advice advice;
    std::optional<HandedOver> over;

    explicit Decided(Fitting of)
        : fitting(std::move(of)),
          prepared(prepare(fitting.frames, fitting.bicycle, fitting.stock, test::tables())),
          advice(advise(fitting.rider, fitting.riding, fitting.current, prepared, test::tables(),
                        {}, fitting.choices.position)),
          over(handedOver(fitting.choices, fitting.riding, advice, prepared, test::tables()))
    {
    }
    Q_DISABLE_COPY_MOVE(Decided)

    [[nodiscard]] Handing handing() const
    {
        return {fitting, advice, prepared, test::tables(), *over};
    }
};

const std::vector<SheetPage> both{SheetPage::Workshop, SheetPage::Rider};

QString output(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForStarted())
        qFatal("%s is not installed (Debian: poppler-utils)", qPrintable(program));
    process.waitForFinished();
    return QString::fromUtf8(process.readAllStandardOutput());
}

/// A page's text with single blanks, words that are broken over lines put together again.
QString textOf(const QString& path, int page)
{
    const QString number = QString::number(page);
    return output(QStringLiteral("pdftotext"), {"-f", number, "-l", number, "-raw", path, "-"})
        .replace(QChar::Nbsp, QLatin1Char(' '))
        .simplified();
}

QString plainOf(QString text)
{
    return text.replace(QChar::Nbsp, QLatin1Char(' ')).remove(QChar(0x2060)).simplified();
}

} // namespace

class TestSheet : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(m_folder.isValid()); }
    void shouldTellEveryNumberOfTheAdvice_data();
    void shouldTellEveryNumberOfTheAdvice();
    void shouldStayOnItsPages_data();
    void shouldStayOnItsPages();
    void shouldTellWhatTheBuilderChose();
    void shouldNotAdviseASizeThatDoesNotFit();
    void shouldSetTheFirstStepOfALongWay();
    void shouldAskForASignatureUnderAHazard();
    void shouldLeaveTheFileAloneWhereItCannotBeWritten();

private:
    [[nodiscard]] QString path() const { return m_folder.filePath(QStringLiteral("sheet.pdf")); }

    QTemporaryDir m_folder;
};

void TestSheet::shouldTellEveryNumberOfTheAdvice_data()
{
    QTest::addColumn<QString>("demo");
    for (const char* demo :
         {"between-two-sizes", "one-frame-two-bikes", "short-rider-large-wheels"})
        QTest::newRow(demo) << QString::fromLatin1(demo);
    for (int i = 0; i < test::samples(12); ++i)
        QTest::addRow("random %d", i) << QString();
}

/// The numbers are worked out here from the contacts, not by the sheet's own code.
void TestSheet::shouldTellEveryNumberOfTheAdvice()
{
    QFETCH(QString, demo);
    static test::RandomBriefs briefs(41);
    std::optional<Decided> one;
    do
        one.emplace(demo.isEmpty() ? test::fittingOf(briefs.next())
                                   : test::demoFitting(demo.toLatin1().constData()));
    while (demo.isEmpty() && !one->over);
    const Decided& decided = *one;
    QVERIFY(decided.over);
    QCOMPARE(writeSheet(path(), decided.handing(), both, QPageSize::A4, QStringLiteral("a day")),
             std::nullopt);
    const QString text = textOf(path(), 1);
    const Setup setup = decided.over->today();
    const Point saddle = setup.saddle.point();
    const double nose = saddle.x() + decided.advice.saddleNoseAheadMm;
    const auto has = [&text](const QString& words) {
        const bool found = text.contains(plainOf(words));
        if (!found)
            qWarning("%s is not in: %s", qPrintable(words), qPrintable(text));
        return found;
    };
    const auto rounded = [](double mm) { return QString::number(std::lround(mm)); };
    const auto at = [&](const char* name, double value, const char* more, const char* less) {
        const QString amount = rounded(std::abs(value)) + QStringLiteral(" mm ");
        return has(QLatin1String(name)
                   + (std::abs(value) < 0.5 ? QString()
                                            : amount + QLatin1String(value > 0.0 ? more : less)));
    };
    QVERIFY(at("Saddle height ", std::hypot(saddle.x(), saddle.y()), "tape", ""));
    QVERIFY(at("Saddle setback ", -saddle.x(), "the same", ""));
    QVERIFY(at("Saddle nose ", -nose, "behind", "ahead"));
    QVERIFY(at("Nose to bar clamp ",
               std::hypot(setup.clamp.x() - nose, setup.clamp.y() - saddle.y()), "tape", ""));
    QVERIFY(at("Bar clamp, against saddle ", saddle.y() - setup.clamp.y(), "below", "above"));
    QVERIFY(at("Hands, against saddle ", saddle.y() - setup.grip.y(), "below", "above"));
    QVERIFY(has(QStringLiteral("Bar clamp, from bracket ") + rounded(setup.clamp.x())
                + QStringLiteral(" mm ahead, ") + rounded(setup.clamp.y())
                + QStringLiteral(" mm up")));
    QVERIFY(has(halfMm(setup.stem.lengthMm)));
    QVERIFY(has(signedDegrees(setup.stem.angle.deg())));
    QVERIFY(has(halfMm(setup.cockpit.spacersMm)));
    QVERIFY(has(halfMm(setup.crankMm)));
    if (!setup.stem.quillMm)
        QVERIFY(has(rounded(setup.steererCutMm) + " mm"));
    QVERIFY(has(barName(decided.prepared.stock.bars[setup.cockpit.bar])));
    QVERIFY(has(sheetBicycle(decided.handing())));
    QVERIFY(has(workshopFoot())); // the page's end is there
    for (const QString& tick : workshopTicks(decided.handing()))
        QVERIFY(has(tick));
}

void TestSheet::shouldStayOnItsPages_data()
{
    QTest::addColumn<bool>("german");
    QTest::addColumn<bool>("letter");
    QTest::addColumn<bool>("longNames");
    for (const bool german : {false, true})
        for (const bool letter : {false, true})
            for (const bool longNames : {false, true})
                QTest::addRow("%s, %s%s", german ? "de" : "en", letter ? "Letter" : "A4",
                              longNames ? ", long names" : "")
                    << german << letter << longNames;
}
void TestSheet::shouldStayOnItsPages()
{
    QFETCH(bool, german);
    QFETCH(bool, letter);
    QFETCH(bool, longNames);
    QTranslator words;
    if (german) {
        QVERIFY(words.load(QStringLiteral(":/i18n/tripoise_de.qm")));
        QCoreApplication::installTranslator(&words);
    }
    for (const char* demo :
         {"between-two-sizes", "one-frame-two-bikes", "short-rider-large-wheels"}) {
        Fitting fitting = test::demoFitting(demo);
        if (longNames) {
            fitting.rider.label = "Maximiliana-Josephina of the Lower Meadows";
            for (FrameSize& frame : fitting.frames)
                frame.model = "Grand Osier Bank Mill Race Tourer Mk. IV";
            for (Bar& bar : fitting.stock.bars)
                bar.name = "A bar with a name of more than forty letters " + bar.name;
        }
        const Decided decided(std::move(fitting));
        const QPageSize::PageSizeId paper = letter ? QPageSize::Letter : QPageSize::A4;
        QCOMPARE(writeSheet(path(), decided.handing(), both, paper, QStringLiteral("a day")),
                 std::nullopt);
        const QString info = output(QStringLiteral("pdfinfo"), {path()});
        QVERIFY(info.contains(QRegularExpression(QStringLiteral("Pages:\\s+2\\b"))));
        const QSizeF size = QPageSize(paper).size(QPageSize::Point);
        const QString boxes = output(QStringLiteral("pdftotext"), {"-bbox", path(), "-"});
        static const QRegularExpression box(
            QStringLiteral("<word xMin=\"([\\d.-]+)\" yMin=\"([\\d.-]+)\" xMax=\"([\\d.-]+)\" "
                           "yMax=\"([\\d.-]+)\">"));
        int found = 0;
        constexpr double margin = 12.0 / 25.4 * 72.0 - 3.0; // of the sheet, points
        for (auto at = box.globalMatch(boxes); at.hasNext(); ++found) {
            const auto word = at.next();
            const auto side = [&word](int i) { return word.captured(i).toDouble(); };
            QVERIFY2(side(1) >= margin && side(3) <= size.width() - margin
                         && side(2) >= margin - 4.0 && side(4) <= size.height() - margin + 4.0,
                     qPrintable(word.captured(0)));
        }
        QVERIFY(found > 250);
        QVERIFY(textOf(path(), 1).contains(plainOf(workshopFoot())));
        const QString rider = textOf(path(), 2);
        QVERIFY(rider.contains(plainOf(comeBack())));
        for (const QString& caution : riderCautions(decided.handing()))
            QVERIFY2(rider.contains(plainOf(caution)), qPrintable(caution));
        if (!hazardsShown(decided.handing()).isEmpty())
            QVERIFY(rider.contains(plainOf(signLine())));
    }
    QCoreApplication::removeTranslator(&words);
}

void TestSheet::shouldTellWhatTheBuilderChose()
{
    Fitting fitting = test::demoFitting();
    const Decided advised(fitting);
    const std::size_t named = advised.over->candidate;
    const Candidate& other = advised.advice.candidates[1 - named];
    const FrameSize& frame = advised.prepared.sizes[other.size].frame;
    chooseSize(fitting.choices, ChosenSize{frame.model, frame.size});
    fitting.choices.reason = "room for bags";
    const SaddlePlace saddle = other.best->setup.saddle;
    const Point grip = other.best->setup.grip;
    pull(fitting.choices, Trial{frame.model, frame.size, saddle.heightMm - 7.0, saddle.setbackMm(),
                                grip.x() - 20.0, grip.y() + 15.0});
    // Only pulled about, it is not handed over, on neither page.
    const Decided pulled(fitting);
    QCOMPARE(writeSheet(path(), pulled.handing(), both, QPageSize::A4, {}), std::nullopt);
    QVERIFY(textOf(path(), 1).contains(QString::number(std::lround(saddle.heightMm)) + " mm"));
    QVERIFY(!textOf(path(), 2).contains(QStringLiteral("just tried")));
    chooseSetup(fitting.choices, true);
    const Decided chosen(fitting);
    QVERIFY(chosen.over->chosen && chosen.over->own);
    QCOMPARE(writeSheet(path(), chosen.handing(), both, QPageSize::A4, {}), std::nullopt);
    const QString text = textOf(path(), 1);
    QVERIFY(text.contains(QStringLiteral("room for bags")));
    QVERIFY(text.startsWith(sheetBicycle(chosen.handing())));
    QVERIFY(text.contains(QString::number(std::lround(saddle.heightMm - 7.0)) + " mm"));
    const Point clamp = other.best->setup.clamp + Point(-20.0, 15.0);
    QVERIFY(text.contains(QString::number(std::lround(clamp.x())) + " mm ahead"));
    QVERIFY(text.contains(QString::number(std::lround(clamp.y())) + " mm up"));
}

/// What nobody advises and nobody chose is not said to be advised.
void TestSheet::shouldNotAdviseASizeThatDoesNotFit()
{
    Fitting fitting = test::demoFitting();
    fitting.current.reset();
    fitting.rider.measurements = {{Quantity::Stature, {2010.0}, {}},
                                  {Quantity::Inseam, {980.0}, {}}};
    const Decided decided(fitting);
    QVERIFY(decided.over && !decided.advice.verdict.named);
    QCOMPARE(writeSheet(path(), decided.handing(), both, QPageSize::A4, {}), std::nullopt);
    for (const int page : {1, 2}) {
        const QString text = textOf(path(), page);
        QVERIFY(text.contains(QStringLiteral("not to order")));
        QVERIFY(!text.contains(QStringLiteral("as advised")));
    }
    chooseSize(fitting.choices, ChosenSize{fitting.frames[1].model, fitting.frames[1].size});
    QVERIFY(workshopLine(Decided(fitting).handing()).contains(QStringLiteral("builder chose")));
}

/// A saddle that is to go 60 mm higher than it is ridden goes 20 today.
void TestSheet::shouldSetTheFirstStepOfALongWay()
{
    Fitting fitting = test::demoFitting();
    const double there = Decided(fitting).over->setup().saddle.heightMm;
    CurrentBike& today = fitting.current.emplace();
    today.saddleHeightMm = there - 60.0;
    today.saddleSetbackMm = 200.0;
    today.ridden = Ridden::Weeks;
    fitting.choices.position = Position::Advise;
    const Decided decided(fitting);
    QVERIFY(decided.over->firstStep);
    const SaddlePlace ridden = saddleFrom(there - 60.0, 200.0);
    const Setup first = decided.over->today();
    QVERIFY(std::abs((first.saddle.point() - ridden.point()).norm() - 20.0) < 1e-6);
    QVERIFY(
        (first.saddle.point() + decided.over->toGo() - decided.over->setup().saddle.point()).norm()
        < 1e-6);
    QCOMPARE(writeSheet(path(), decided.handing(), both, QPageSize::A4, {}), std::nullopt);
    const QString text = textOf(path(), 1);
    QVERIFY(text.contains(plainOf(stagedLine(decided.handing()))));
    QVERIFY(text.contains(QString::number(std::lround(first.saddle.heightMm)) + " mm"));
    QVERIFY(text.contains(QString::number(std::lround(first.clamp.y())) + " mm up"));
    fitting.current.reset();
    QVERIFY(stagedLine(Decided(fitting).handing()).isEmpty()); // no way, no step
}

void TestSheet::shouldAskForASignatureUnderAHazard()
{
    Fitting fitting = test::demoFitting();
    const Decided clear(fitting);
    QVERIFY(hazardsShown(clear.handing()).isEmpty());
    QCOMPARE(writeSheet(path(), clear.handing(), both, QPageSize::A4, {}), std::nullopt);
    QVERIFY(!textOf(path(), 2).contains(signLine()));
    fitting.stock.cranksMm = {195.0}; // the shoe comes to the wheel
    fitting.bicycle.crankMm.reset();
    const Decided touching(fitting);
    QVERIFY(!hazardsShown(touching.handing()).isEmpty());
    QCOMPARE(writeSheet(path(), touching.handing(), both, QPageSize::A4, {}), std::nullopt);
    QVERIFY(textOf(path(), 2).contains(signLine()));
}

void TestSheet::shouldLeaveTheFileAloneWhereItCannotBeWritten()
{
    const Decided decided(test::demoFitting());
    const auto failure = [&](const QString& where) {
        return writeSheet(where, decided.handing(), both, QPageSize::A4, {});
    };
    QVERIFY(failure(m_folder.path())); // a folder
    QVERIFY(failure(m_folder.filePath(QStringLiteral("not/there.pdf"))));
    QVERIFY(failure(QStringLiteral("/dev/null"))); // a device is not replaced
    QVERIFY(!QFileInfo(QStringLiteral("/dev/null")).isFile());
    QFile before(m_folder.filePath(QStringLiteral("before.pdf")));
    QVERIFY(before.open(QIODevice::WriteOnly) && before.write("yesterday's") > 0);
    before.close();
    {
        const test::FullDisk full(1000);
        QVERIFY(failure(before.fileName()));
    }
    QCOMPARE(test::bytesOf(before.fileName()), QByteArray("yesterday's"));
}

int main(int argc, char** argv)
{
    const test::OwnFolders folders;
    const QGuiApplication application(argc, argv);
    TestSheet test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_sheet.moc"
