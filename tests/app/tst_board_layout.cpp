// SPDX-License-Identifier: MIT
//
// The words of a drafting board: at any size it can have, with any letters, whatever is drawn and
// while it is pulled about, nothing written lies on anything else written or over the edge, no
// word is cut and no line runs through one. And what there is room for is written.
#include "support.h"

#include "advice/trial.h"
#include "drawing/clearance.h"
#include "drawing/layout.h"
#include "wording/trial_words.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Case {
    Fitting fitting;
    Prepared prepared;
    Advice advice;

    [[nodiscard]] const Candidate& named() const { return advice.leading(); }
    [[nodiscard]] Tried pulled(const Point& grip, const Point& saddle) const
    {
        Contacts contacts{named().best->setup.saddle, named().best->setup.grip, {}};
        contacts.grip += grip;
        contacts.saddle = saddleAt(contacts.saddle.point() + saddle);
        return tryContacts(contacts, *named().best, prepared.sizes[named().size],
                           {advice.person, fitting.riding, prepared, tables()});
    }
    [[nodiscard]] SideView view(const Tried* tried = nullptr) const
    {
        Shown shown = asAdvised(advice);
        if (fitting.current)
            shown.ridden = &*fitting.current;
        shown.tried = tried;
        return makeSideView(advice, shown, fitting.riding.mix, prepared, tables());
    }
};

const Case& demo(const QString& name)
{
    static std::map<QString, Case> made;
    const auto found = made.find(name);
    if (found != made.end())
        return found->second;
    Case loaded;
    loaded.fitting = std::get<Fitting>(
        readFitting(textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/%1.json").arg(name)), tables()));
    loaded.prepared =
        prepare(loaded.fitting.frames, loaded.fitting.bicycle, loaded.fitting.stock, tables());
    loaded.advice = advise(loaded.fitting.rider, loaded.fitting.riding, loaded.fitting.current,
                           loaded.prepared, tables());
    return made.emplace(name, std::move(loaded)).first->second;
}

const QStringList demos{QStringLiteral("between-two-sizes"),
                        QStringLiteral("short-rider-large-wheels"),
                        QStringLiteral("one-frame-two-bikes")};

/// A board by its letters and its size in widths of a letter.
struct BoardSize {
    double letters;
    QSizeF inLetters;

    [[nodiscard]] QRectF area() const { return {QPointF(), letters * inLetters}; }
    [[nodiscard]] QByteArray name() const
    {
        return QByteArray::number(area().width(), 'f', 0) + "x"
               + QByteArray::number(area().height(), 'f', 0) + ", letters "
               + QByteArray::number(letters);
    }
};

/// From a pane of 300 px with letters of 11 to a whole large screen.
const std::vector<BoardSize>& boards()
{
    static const std::vector<BoardSize> sizes = [] {
        std::vector<BoardSize> made;
        for (const double letters : {11.0, 22.0})
            for (const double width : {27.3, 33.0, 42.0, 57.0, 100.0})
                for (const double height : {18.0, 27.0, 40.0, 62.0})
                    made.push_back({letters, {width, height}});
        for (const QSizeF& size : {QSizeF(30, 30), QSizeF(48, 33), QSizeF(70, 90)})
            made.push_back({15.0, size});
        return made;
    }();
    return sizes;
}

/// Something written: what it is called in a failure, where it stands, how wide its text is.
struct Written {
    QString what;
    QRectF box;
    double width = 0.0;
    std::vector<QLineF> lines; ///< that tie it to its point
};

std::vector<Written> writtenOn(const DrawingLayout& layout, const SideView& view)
{
    std::vector<Written> all;
    const QFont small = fontOf(layout.steps.small);
    const QFont strong = fontOf(layout.steps.small, QFont::DemiBold);
    const QFont body = fontOf(layout.steps.body, QFont::DemiBold);
    for (const LegendPlace& place : layout.legend)
        all.push_back({place.text,
                       place.box,
                       legendSample * layout.steps.small + widthOf(place.text, small),
                       {}});
    if (layout.scale)
        all.push_back(
            {layout.scale->text, layout.scale->words, widthOf(layout.scale->text, small), {}});
    if (!layout.leaders.empty())
        all.push_back({leadersHeading(view),
                       layout.leadersHeadingBox,
                       widthOf(leadersHeading(view), strong),
                       {}});
    for (const LeaderPlace& place : layout.leaders)
        all.push_back({place.rows.join(QStringLiteral(" / ")),
                       place.label,
                       widestOf(place.rows, small) - 2.0,
                       {{place.at, place.knee}, {place.knee, place.end}}});
    if (!layout.moreLeaders.isEmpty())
        all.push_back(
            {layout.moreLeaders, layout.moreLeadersBox, widthOf(layout.moreLeaders, small), {}});
    for (std::size_t i = 0; i < layout.jointLabels.size(); ++i) {
        const JointLabelPlace& place = layout.jointLabels[i];
        if (place.box.isEmpty())
            continue;
        const JointAngle& angle = view.rider->angles[i];
        const QString text =
            place.spot.form == LabelForm::Value ? jointValue(angle) : jointLabel(angle);
        double width = widthOf(text, body);
        if (place.spot.form == LabelForm::Whole)
            width = std::max(width, widthOf(jointRange(angle), small));
        Written written{text, place.box, 1.4 * layout.steps.body + width, {}};
        if (place.tie)
            written.lines = {*place.tie};
        all.push_back(written);
    }
    for (const DimensionPlace& place : layout.dimensions)
        all.push_back({place.text + place.more, place.extent(), 0.0, {}});
    for (const PulledPlace& place : layout.pulled)
        all.push_back({place.rows.join(QStringLiteral(" / ")),
                       place.label,
                       widestOf(place.rows, strong) - 2.0,
                       {}});
    return all;
}

/// What is wrong with a layout; empty where nothing is.
QString faultOf(const QRectF& area, const DrawingLayout& layout, const SideView& view)
{
    constexpr double hair = 0.01;
    const std::vector<Written> all = writtenOn(layout, view);
    for (const Written& written : all) {
        if (!area.contains(written.box))
            return written.what + QStringLiteral(" runs over the edge");
        if (written.width > written.box.width() + hair)
            return written.what + QStringLiteral(" is cut");
        for (const Written& other : all) {
            if (&other == &written)
                continue;
            const QRectF shared = written.box.intersected(other.box);
            if (shared.width() > hair && shared.height() > hair)
                return written.what + QStringLiteral(" lies on ") + other.what;
            for (const QLineF& line : written.lines)
                if (touches(other.box.adjusted(0.6, 0.6, -0.6, -0.6), line))
                    return QStringLiteral("the line of ") + written.what
                           + QStringLiteral(" runs through ") + other.what;
        }
    }
    return {};
}

DrawingOptions onBoard(double letters)
{
    DrawingOptions options;
    options.furniture = false;
    options.lettersPx = letters;
    return options;
}

std::size_t rowsOf(const DrawingLayout& layout)
{
    std::size_t rows = 0;
    for (const LeaderPlace& place : layout.leaders)
        rows += static_cast<std::size_t>(place.rows.size());
    return rows;
}

void everyDemo()
{
    QTest::addColumn<QString>("name");
    for (const QString& name : demos)
        QTest::newRow(qPrintable(name)) << name;
}

} // namespace

class BoardLayoutTest : public QObject {
    Q_OBJECT

private slots:
    void shouldFindWhatIsFree();
    void shouldKeepWordsApart_data() { everyDemo(); }
    void shouldKeepWordsApart();
    void shouldKeepWordsApartWithDimensions_data() { everyDemo(); }
    void shouldKeepWordsApartWithDimensions();
    void shouldKeepWordsApartAtAnyZoom_data() { everyDemo(); }
    void shouldKeepWordsApartAtAnyZoom();
    void shouldKeepWordsApartWhilePulled_data() { everyDemo(); }
    void shouldKeepWordsApartWhilePulled();
    void shouldTellAllWhereThereIsRoom_data() { everyDemo(); }
    void shouldTellAllWhereThereIsRoom();
    void shouldTellEveryAngleOnSmallBoards_data() { everyDemo(); }
    void shouldTellEveryAngleOnSmallBoards();
    void shouldCountWhatItLeavesOut_data() { everyDemo(); }
    void shouldCountWhatItLeavesOut();
    void shouldKeepTheDrawingLarge_data() { everyDemo(); }
    void shouldKeepTheDrawingLarge();
    void shouldHoldLabelsWhilePulled();
    void shouldEndEveryLeaderOnWhatItSpeaksOf_data() { everyDemo(); }
    void shouldEndEveryLeaderOnWhatItSpeaksOf();
};

void BoardLayoutTest::shouldFindWhatIsFree()
{
    Clearance clearance({0, 0, 100, 100});
    QVERIFY(clearance.clear({0, 0, 100, 100}));
    QVERIFY(!clearance.free({90, 10, 20, 5})); // over the edge
    clearance.take({10, 10, 20, 10});
    clearance.take({}); // takes nothing
    QVERIFY(!clearance.free({25, 15, 20, 10}));
    QVERIFY(clearance.free({30, 10, 20, 10})); // edge to edge
    QVERIFY(!clearance.freeLine({{0, 15}, {50, 15}}));
    QVERIFY(clearance.freeLine({{0, 25}, {50, 25}}));
    clearance.takeLine({{0, 50}, {100, 50}});
    QVERIFY(!clearance.free({40, 45, 10, 10}));
    // A stroke 10 wide with a weight of 8; a wheel that is open in its middle.
    clearance.avoid({{60, 0}, {60, 40}}, 5.0, 8.0);
    QCOMPARE(clearance.covered({52, 10, 2, 2}), 0.0);
    QCOMPARE(clearance.covered({54, 10, 2, 2}), 8.0);
    QVERIFY(clearance.free({54, 10, 2, 2}) && !clearance.clear({54, 10, 2, 2}));
    QCOMPARE(clearance.crossed({{50, 20}, {70, 20}}), 8.0);
    QCOMPARE(clearance.crossed({{50, 45}, {70, 45}}), 0.0);
    clearance.avoidRing({50, 80}, 10.0, 15.0, 3.0);
    QCOMPARE(clearance.covered({48, 78, 4, 4}), 0.0);
    QCOMPARE(clearance.covered({48, 78, 14, 4}), 3.0);
    QCOMPARE(clearance.covered({66, 78, 4, 4}), 0.0);
}

void BoardLayoutTest::shouldKeepWordsApart()
{
    QFETCH(QString, name);
    const SideView view = demo(name).view();
    for (const BoardSize& size : boards()) {
        const DrawingLayout layout = layOut(size.area(), view, {}, onBoard(size.letters));
        QVERIFY(layout.words);
        const QString fault = faultOf(size.area(), layout, view);
        QVERIFY2(fault.isEmpty(), qPrintable(size.name() + ": " + fault));
    }
}

void BoardLayoutTest::shouldKeepWordsApartWithDimensions()
{
    QFETCH(QString, name);
    const SideView view = demo(name).view();
    for (const BoardSize& size : boards()) {
        DrawingOptions options = onBoard(size.letters);
        options.layers.dimensions = true;
        const DrawingLayout layout = layOut(size.area(), view, {}, options);
        const QString fault = faultOf(size.area(), layout, view);
        QVERIFY2(fault.isEmpty(), qPrintable(size.name() + ": " + fault));
    }
}

void BoardLayoutTest::shouldKeepWordsApartAtAnyZoom()
{
    QFETCH(QString, name);
    const SideView view = demo(name).view();
    for (const BoardSize& size : boards()) {
        DrawingOptions options = onBoard(size.letters);
        const QRectF area = size.area();
        const DrawingFit whole = layOut(area, view, {}, options).fit;
        for (const double zoom : {0.5, 1.4, 5.0}) {
            DrawingFit fit = whole;
            fit.pxPerMm *= zoom;
            const QPointF middle = area.center();
            fit.origin += middle - fit.toPx(whole.toMm(middle));
            options.viewport = fit;
            const DrawingLayout layout = layOut(area, view, {}, options);
            QCOMPARE(layout.fit.pxPerMm, fit.pxPerMm);
            const QString fault = faultOf(area, layout, view);
            QVERIFY2(fault.isEmpty(), qPrintable(size.name() + ": " + fault));
        }
    }
}

void BoardLayoutTest::shouldKeepWordsApartWhilePulled()
{
    QFETCH(QString, name);
    const Case& made = demo(name);
    const SideView still = made.view();
    std::vector<SideView> pulled;
    for (double pull = -60.0; pull <= 60.0; pull += 20.0) {
        const Tried tried = made.pulled({pull, 0.6 * pull}, {-0.4 * pull, 0.3 * pull});
        pulled.push_back(made.view(&tried));
    }
    for (const BoardSize& size : boards()) {
        DrawingOptions options = onBoard(size.letters);
        DrawingLayout layout = layOut(size.area(), still, {}, options);
        options.viewport = layout.fit;
        options.holdSpots = true;
        for (const SideView& view : pulled) {
            options.spots = spotsOf(layout);
            layout = layOut(size.area(), view, {}, options);
            const QString fault = faultOf(size.area(), layout, view);
            QVERIFY2(fault.isEmpty(), qPrintable(size.name() + ": " + fault));
        }
    }
}

void BoardLayoutTest::shouldTellAllWhereThereIsRoom()
{
    QFETCH(QString, name);
    const SideView view = demo(name).view();
    for (const double letters : {11.0, 22.0}) {
        const BoardSize size{letters, {100.0, 62.0}};
        const DrawingLayout layout = layOut(size.area(), view, {}, onBoard(letters));
        QCOMPARE(rowsOf(layout), view.leaders.size());
        QVERIFY(layout.moreLeaders.isEmpty());
        QVERIFY(layout.scale.has_value());
        // All by name; a range may be left out for the sake of a place beside the joint.
        std::size_t whole = 0;
        for (const JointLabelPlace& place : layout.jointLabels) {
            QVERIFY(!place.box.isEmpty() && place.spot.form != LabelForm::Value);
            whole += place.spot.form == LabelForm::Whole;
        }
        QVERIFY(whole + 1 >= layout.jointLabels.size());
        QCOMPARE(layout.legend.front().text, layout.legend.front().row.texts.first());
        DrawingOptions options = onBoard(letters);
        options.layers.dimensions = true;
        const DrawingLayout measured = layOut(size.area(), view, {}, options);
        QCOMPARE(measured.dimensions.size(), dimensionsOf(view).size());
    }
}

void BoardLayoutTest::shouldTellEveryAngleOnSmallBoards()
{
    QFETCH(QString, name);
    const SideView view = demo(name).view();
    for (const BoardSize& size : boards()) {
        if (size.inLetters.height() < 24.0)
            continue;
        const DrawingLayout layout = layOut(size.area(), view, {}, onBoard(size.letters));
        for (const JointLabelPlace& place : layout.jointLabels)
            QVERIFY2(!place.box.isEmpty(), size.name());
        QCOMPARE(layout.legend.size(), legendRows(view, {}).size());
    }
}

void BoardLayoutTest::shouldCountWhatItLeavesOut()
{
    QFETCH(QString, name);
    const SideView view = demo(name).view();
    for (const BoardSize& size : boards()) {
        const DrawingLayout layout = layOut(size.area(), view, {}, onBoard(size.letters));
        if (layout.leaders.empty())
            continue;
        const std::size_t told = rowsOf(layout);
        QCOMPARE(layout.moreLeaders, told == view.leaders.size()
                                         ? QString()
                                         : leadersLeftOut(view.leaders.size() - told));
        QCOMPARE(std::size_t(layout.leftOut.size()), view.leaders.size() - told);
    }
}

void BoardLayoutTest::shouldKeepTheDrawingLarge()
{
    QFETCH(QString, name);
    const SideView view = demo(name).view();
    const SideView::Bounds bounds = view.bounds();
    for (const BoardSize& size : boards()) {
        const DrawingLayout layout = layOut(size.area(), view, {}, onBoard(size.letters));
        const Point extent = layout.fit.pxPerMm * (bounds.high - bounds.low);
        // At least 70 % of what the area could hold, but for the legend's and the scale's lines.
        const double rows = 2.0 * rowPitch + 2.4 + 1.8 + 0.4;
        const double most = std::min((size.area().width() - 1.8 * size.letters) / extent.x(),
                                     (size.area().height() - rows * size.letters) / extent.y());
        QVERIFY2(most <= 1.0 / 0.7 + 1e-9, size.name());
    }
}

void BoardLayoutTest::shouldHoldLabelsWhilePulled()
{
    const Case& made = demo(demos.front());
    const QRectF area(0.0, 0.0, 640.0, 640.0);
    DrawingOptions options = onBoard(11.0);
    const DrawingLayout before = layOut(area, made.view(), {}, options);
    options.viewport = before.fit;
    options.spots = spotsOf(before);
    options.holdSpots = true;
    const Tried tried = made.pulled({-6.0, 4.0}, {0.0, 0.0});
    const DrawingLayout after = layOut(area, made.view(&tried), {}, options);
    QVERIFY(spotsOf(after) == spotsOf(before));
    QCOMPARE(after.pulled.size(), std::size_t(1));
}

void BoardLayoutTest::shouldEndEveryLeaderOnWhatItSpeaksOf()
{
    QFETCH(QString, name);
    const SideView view = demo(name).view();
    for (const BoardSize& size : boards()) {
        const DrawingLayout layout = layOut(size.area(), view, {}, onBoard(size.letters));
        for (const LeaderPlace& place : layout.leaders) {
            const Point at = layout.fit.toMm(place.at);
            const bool there =
                place.kind == LeaderKind::FrontWheelFurther
                    ? std::abs((at - view.other->front.axle - view.otherOffset).norm()
                               - view.other->front.radiusMm)
                          < 1e-6
                    : std::any_of(
                        view.leaders.begin(), view.leaders.end(), [&](const Leader& leader) {
                            return leader.kind == place.kind && (leader.at - at).norm() < 1e-6;
                        });
            QVERIFY2(there, size.name());
        }
    }
}

QTEST_MAIN(BoardLayoutTest)
#include "tst_board_layout.moc"
