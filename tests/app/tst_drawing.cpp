// SPDX-License-Identifier: MIT
//
// The side view: what is drawn is what the model says, and stays readable. All expected numbers are
// derived, from the skeleton, the advised set-up and the body.
#include "support.h"

#include "drawing/bike_sketch.h"
#include "drawing/export.h"
#include "drawing/labels.h"
#include "drawing/layout.h"
#include "wording/speech.h"

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>

#include <cmath>
#include <numeric>

using namespace tripoise;

namespace {

constexpr double exact = 1e-9;
constexpr double solverDeg = 1e-3; // the elbow is solved to 0.001 degrees

struct Case {
    Fitting fitting;
    Prepared prepared;
    Advice advice;
    SideView view;
};

FrameSize frameOf(const char* size, double stack, double reach)
{
    FrameSize frame;
    frame.model = "Millrace";
    frame.size = size;
    frame.geometry.stackMm = stack;
    frame.geometry.reachMm = reach;
    frame.geometry.headAngleDeg = 72.0;
    frame.geometry.seatAngleDeg = 73.0;
    frame.geometry.seatTubeMm = 0.85 * stack;
    frame.geometry.chainstayMm = Range{435.0, 435.0};
    frame.geometry.bbDropMm = 70.0;
    frame.geometry.forkOffsetMm = 47.0;
    test::mountingOn(frame).tyreMm = 40.0;
    return frame;
}

Fitting fittingOf(double stature, double inseam, BarKind kind, Use use)
{
    Fitting fitting;
    fitting.rider.sex = Sex::Male;
    fitting.rider.measurements = {{Quantity::Stature, {stature}, {}},
                                  {Quantity::Inseam, {inseam}, {}}};
    fitting.riding.mix = Mix::only(use);
    fitting.frames = {frameOf("M", 0.33 * stature, 0.222 * stature),
                      frameOf("L", 0.33 * stature + 25.0, 0.222 * stature + 10.0)};
    // The larger one rolls on wider tyres and hangs lower, so that nothing lines up by chance.
    test::mountingOn(fitting.frames[1]).tyreMm = 47.0;
    fitting.frames[1].geometry.bbDropMm = 74.0;
    fitting.frames[1].geometry.chainstayMm = Range{442.0, 442.0};
    for (const double length : {60.0, 70.0, 80.0, 90.0, 100.0, 110.0}) {
        Stem stem;
        stem.lengthMm = length;
        stem.angle = Angle::degrees(6.0);
        fitting.stock.stems.push_back(stem);
    }
    fitting.stock.spacersMm = {5.0, 10.0, 20.0};
    fitting.stock.cranksMm = {170.0};
    Bar bar;
    bar.kind = kind;
    bar.widthMm = kind == BarKind::Drop ? 420.0 : 620.0;
    fitting.stock.bars = {bar};
    return fitting;
}

Case caseOf(Fitting fitting)
{
    Case made{std::move(fitting), {}, {}, {}};
    const Tables& tables = test::tables();
    made.prepared = prepare(made.fitting.frames, made.fitting.bicycle, made.fitting.stock, tables);
    made.advice = advise(made.fitting.rider, made.fitting.riding, {}, made.prepared, tables);
    made.view = makeSideView(made.advice, made.fitting.riding.mix, made.prepared, tables);
    return made;
}

const AdvisedSetup& chosenOf(const Case& made)
{
    return *made.advice.leading().best;
}

const Skeleton& skeletonOf(const Case& made, std::size_t candidate)
{
    return made.prepared.sizes[made.advice.candidates[candidate].size].skeleton;
}

/// The runner-up, or the other one of two where a limit keeps it out of the running.
std::size_t otherOf(const Case& made)
{
    return made.advice.verdict.other.value_or(1 - *made.advice.verdict.named);
}

const DrawingText sentences{QStringLiteral("The M & nothing else"), QStringLiteral("Touring")};

bool near(const Point& a, const Point& b, double tolerance = exact)
{
    return (a - b).norm() <= tolerance;
}

QRectF areaOf(QSize size)
{
    return {QPointF(), QSizeF(size)};
}

QImage painted(const SideView& view, const Theme& theme, QSize size)
{
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    paintSideView(painter, areaOf(size), view, theme, sentences);
    return image;
}

double luminance(const QColor& color)
{
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF())
           + 0.0722 * linear(color.blueF());
}

/// WCAG 2.1, contrast ratio.
double contrast(const QColor& a, const QColor& b)
{
    const double lighter = std::max(luminance(a), luminance(b));
    const double darker = std::min(luminance(a), luminance(b));
    return (lighter + 0.05) / (darker + 0.05);
}

} // namespace

class DrawingTest : public QObject {
    Q_OBJECT

private slots:
    void shouldDrawTheAdvisedSetup_data() { riders(); }
    void shouldDrawTheAdvisedSetup();
    void shouldStandBothOnOneGround_data() { riders(); }
    void shouldStandBothOnOneGround();
    void shouldDrawTheRidersOwnLengths_data() { riders(); }
    void shouldDrawTheRidersOwnLengths();
    void shouldDrawTheAnglesItTells_data() { riders(); }
    void shouldDrawTheAnglesItTells();
    void shouldHoldTheBarWhereTheHandsAre_data() { riders(); }
    void shouldHoldTheBarWhereTheHandsAre();
    void shouldTellExactDifferences_data() { riders(); }
    void shouldTellExactDifferences();
    void shouldSayFrameDifferencesInMillimetresInAnyUnits();
    void shouldKeepLabelsApart_data();
    void shouldKeepLabelsApart();
    void shouldDrawMostRiddenPosition();
    void shouldDrawAloneWithOneCandidate();
    void shouldTellNothingOfEqualSizes();
    void shouldMakeSpacersFromThePiecesAtHand_data();
    void shouldMakeSpacersFromThePiecesAtHand();
    void shouldSpreadWithoutOverlap();
    void shouldPutInkWhereTheFitSays();
    void shouldPaintAtAnySize_data();
    void shouldPaintAtAnySize();
    void shouldWarnOnlyOutsideTheRange();
    void shouldWriteReadableSvg();
    void shouldEndALongTitleBetweenWords();
    void shouldWritePng_data();
    void shouldWritePng();
    void shouldSayWhyItCouldNotWrite();
    void shouldKeepTextReadableOnPaper_data();
    void shouldKeepTextReadableOnPaper();

private:
    static void riders()
    {
        QTest::addColumn<double>("stature");
        QTest::addColumn<double>("inseam");
        QTest::addColumn<BarKind>("kind");
        QTest::addColumn<Use>("use");
        QTest::newRow("short, swept") << 1560.0 << 725.0 << BarKind::Swept << Use::City;
        QTest::newRow("average, flat") << 1756.0 << 846.0 << BarKind::Flat << Use::FastCommuting;
        QTest::newRow("average, drop") << 1756.0 << 846.0 << BarKind::Drop << Use::Touring;
        QTest::newRow("tall, drop") << 1980.0 << 950.0 << BarKind::Drop << Use::Road;
    }
    static Case fetched()
    {
        QFETCH(double, stature);
        QFETCH(double, inseam);
        QFETCH(BarKind, kind);
        QFETCH(Use, use);
        return caseOf(fittingOf(stature, inseam, kind, use));
    }
};

void DrawingTest::shouldDrawTheAdvisedSetup()
{
    const Case made = fetched();
    const Setup& setup = chosenOf(made).setup;
    const Skeleton& skeleton = skeletonOf(made, *made.advice.verdict.named);
    const BikeSketch& bike = made.view.chosen;
    QVERIFY(made.view.drawn);
    QVERIFY(near(bike.rear.axle, skeleton.rearAxle));
    QVERIFY(near(bike.front.axle, skeleton.frontAxle));
    QVERIFY(near(bike.headTube.from, skeleton.headTop));
    QVERIFY(near(bike.fork.from, skeleton.crown));
    QVERIFY(near(bike.saddle->point, setup.saddle.point()));
    QVERIFY(near(bike.cockpit->stem.to, setup.clamp));
    QVERIFY(near(bike.cockpit->grip, setup.grip));
    QVERIFY(std::abs(bike.crank->near.norm() - setup.crankMm) < exact);
    QVERIFY(std::abs(bike.crank->far.norm() - setup.crankMm) < exact);

    // The stem as drawn is as long as the stem, and the spacers add up.
    const TubeSketch& stem = bike.cockpit->stem;
    QVERIFY(std::abs((stem.to - stem.from).norm() - setup.stem.lengthMm) < 1e-6);
    double spacers = 0.0;
    for (const TubeSketch& piece : bike.cockpit->spacers)
        spacers += (piece.to - piece.from).norm();
    QVERIFY(std::abs(spacers - setup.cockpit.spacersMm) < 1e-6);

    // Nose and tail are a saddle's length apart, the saddle point between them.
    const PartDefaults& parts = test::tables().parts;
    QVERIFY(std::abs((bike.saddle->nose - bike.saddle->tail).norm() - parts.saddleLengthMm)
            < exact);
    QVERIFY(std::abs(bike.saddle->nose.x() - bike.saddle->point.x()
                     - parts.noseAheadShare * parts.saddleLengthMm)
            < exact);
    // The post rises along the seat tube to the rails.
    const TubeSketch& post = bike.saddle->post;
    const Point up = upTube(skeleton.seatAngle);
    QVERIFY(std::abs((post.to - post.from).norm() - (post.to - post.from).dot(up)) < 1e-6);
    // A fork blade starts at the crown and ends at the axle.
    QVERIFY(near(drawing::forkBlade(bike).front(), skeleton.crown));
    QVERIFY(near(drawing::forkBlade(bike).back(), skeleton.frontAxle));
}

void DrawingTest::shouldStandBothOnOneGround()
{
    const Case made = fetched();
    const SideView& view = made.view;
    QVERIFY(view.other);
    const double ground = view.chosen.groundY;
    for (const WheelSketch* wheel : {&view.chosen.rear, &view.chosen.front})
        QVERIFY(std::abs(wheel->axle.y() - wheel->radiusMm - ground) < exact);
    for (const WheelSketch* wheel : {&view.other->rear, &view.other->front})
        QVERIFY(std::abs(wheel->axle.y() + view.otherOffset.y() - wheel->radiusMm - ground)
                < exact);
    QVERIFY(std::abs(view.other->rear.axle.x() + view.otherOffset.x() - view.chosen.rear.axle.x())
            < exact);
    QVERIFY(view.otherOffset.norm() > 1.0);
}

void DrawingTest::shouldDrawTheRidersOwnLengths()
{
    const Case made = fetched();
    const RiderSketch& rider = *made.view.rider;
    const Body& body = made.advice.person.body;
    const auto length = [](const Point& a, const Point& b) { return (a - b).norm(); };
    for (const LegPoints* leg : {&rider.near, &rider.far}) {
        QVERIFY(std::abs(length(leg->hip, leg->knee) - body.thighMm) < 1e-6);
        QVERIFY(std::abs(length(leg->knee, leg->ankle) - body.shankMm) < 1e-6);
        QVERIFY(std::abs(length(leg->heel, leg->toe) - body.footMm) < 1e-6);
    }
    QVERIFY(std::abs(length(rider.hip, rider.shoulder) - body.trunkMm) < 1e-6);
    // The arm is drawn in the plane, both of its links shortened alike by its splay to the grips.
    const double upper = length(rider.shoulder, rider.elbow) / body.upperArmMm;
    const double lower = length(rider.elbow, rider.grip) / body.forearmMm;
    QVERIFY(std::abs(upper - lower) < 1e-6);
    QVERIFY(upper <= 1.0 + 1e-9 && upper > 0.95);
    QVERIFY(near(rider.grip, chosenOf(made).setup.grip));
    QVERIFY(near(rider.near.spindle, made.view.chosen.crank->near, 1e-6));
    QVERIFY(near(rider.far.spindle, made.view.chosen.crank->far, 1e-6));
    // Hand, head: on the arm; above the shoulder by what was measured.
    QVERIFY(length(rider.wrist, rider.grip) < length(rider.elbow, rider.grip));
    QVERIFY(rider.head.y() > rider.shoulder.y());
    QVERIFY(length(rider.head, rider.shoulder) < body.headMm);
}

void DrawingTest::shouldDrawTheAnglesItTells()
{
    const Case made = fetched();
    const RiderSketch& rider = *made.view.rider;
    const AdvisedSetup& advised = chosenOf(made);
    const UsePosture& posture = advised.uses.front();
    QCOMPARE(rider.angles.size(), std::size_t(4));
    const auto inner = [](const Point& a, const Point& at, const Point& b) {
        const Point u = (a - at).normalized();
        const Point v = (b - at).normalized();
        return Angle::radians(std::acos(std::clamp(u.dot(v), -1.0, 1.0))).deg();
    };
    const double trunk = angleOf(rider.shoulder - rider.hip).deg();
    const double armTrunk = inner(rider.hip, rider.shoulder, rider.grip);
    const double elbow = 180.0 - inner(rider.shoulder, rider.elbow, rider.grip);
    const double knee = 180.0 - inner(rider.near.hip, rider.near.knee, rider.near.ankle);
    const std::array drawn{trunk, armTrunk, elbow, knee};
    const std::array told{posture.posture.trunk, posture.posture.armTrunk, posture.posture.elbow,
                          advised.leg.kneeBottom};
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        const JointAngle& angle = rider.angles[i];
        QVERIFY2(std::abs(drawn[i] - told[i].deg()) < solverDeg,
                 qPrintable(QString::number(drawn[i]) + ' ' + QString::number(told[i].deg())));
        QVERIFY(std::abs(angle.value.deg() - told[i].deg()) < exact);
        QVERIFY(angle.low < angle.high);
    }
    // The arc ends on the limb: trunk, arm, forearm, shank.
    const std::array ends{rider.shoulder, rider.grip, rider.grip, rider.near.ankle};
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const JointAngle& angle = rider.angles[i];
        const Point limb = (ends[i] - angle.at).normalized();
        QVERIFY(limb.dot(along(angle.directionOf(angle.value))) > 1.0 - 1e-8);
    }
}

void DrawingTest::shouldHoldTheBarWhereTheHandsAre()
{
    const Case made = fetched();
    const BarSketch& bar = made.view.chosen.cockpit->bar;
    const Point grip = made.view.chosen.cockpit->grip;
    QVERIFY(near(bar.curve.front(), chosenOf(made).setup.clamp));
    double nearest = 1e9;
    for (const std::vector<Point>* line : {&bar.held, &bar.hood})
        for (std::size_t i = 0; i + 1 < line->size(); ++i)
            for (double t = 0.0; t <= 1.0; t += 0.05)
                nearest =
                    std::min(nearest, ((1.0 - t) * (*line)[i] + t * (*line)[i + 1] - grip).norm());
    // The palm's centre is within the thickness of a grip.
    QVERIFY2(nearest < 20.0, qPrintable(QString::number(nearest)));
}

void DrawingTest::shouldTellExactDifferences()
{
    const Case made = fetched();
    const SideView& view = made.view;
    const Setup& mine = chosenOf(made).setup;
    const Setup& theirs = made.advice.candidates[otherOf(made)].best->setup;
    const Skeleton& chosen = skeletonOf(made, *made.advice.verdict.named);
    const Skeleton& other = skeletonOf(made, otherOf(made));
    const double ground = chosen.groundY() - other.groundY();
    QVERIFY(!view.leaders.empty());
    double before = 1e9;
    for (const Leader& leader : view.leaders) {
        double expected = leader.valueMm;
        switch (leader.kind) {
        case LeaderKind::BarHigher: expected = theirs.grip.y() - mine.grip.y() + ground; break;
        case LeaderKind::BarFurther: expected = theirs.grip.x() - mine.grip.x(); break;
        case LeaderKind::StemLonger: expected = theirs.stem.lengthMm - mine.stem.lengthMm; break;
        case LeaderKind::SpacersMore:
            expected = theirs.cockpit.spacersMm - mine.cockpit.spacersMm;
            break;
        case LeaderKind::HeadTubeHigher:
            expected = other.headTop.y() - chosen.headTop.y() + ground;
            break;
        case LeaderKind::FrontWheelFurther:
            expected = (other.frontAxle.x() - other.rearAxle.x())
                       - (chosen.frontAxle.x() - chosen.rearAxle.x());
            break;
        case LeaderKind::SaddleHigher:
            expected = theirs.saddle.point().y() - mine.saddle.point().y() + ground;
            break;
        case LeaderKind::SaddleFurtherBack:
            expected = theirs.saddle.setbackMm() - mine.saddle.setbackMm();
            break;
        case LeaderKind::TopTubeHigher:
        case LeaderKind::CrankLonger: break;
        }
        QVERIFY2(std::abs(leader.valueMm - expected) < 1e-6,
                 qPrintable(QStringLiteral("%1, not %2").arg(leaderLabel(leader)).arg(expected)));
        QVERIFY(std::abs(leader.valueMm) >= leastLeaderMm);
        QVERIFY(leader.at.y() <= before);
        before = leader.at.y();
        const QString words = leaderLabel(leader);
        QVERIFY2(words.contains(QString::number(std::abs(std::round(leader.valueMm)))),
                 qPrintable(words));
        QVERIFY(!words.contains(QLatin1Char('-')) && !words.contains(QLatin1Char('%')));
    }
}

// Frames are drawn and sold in millimetres; where hands and saddle are is the rider's.
void DrawingTest::shouldSayFrameDifferencesInMillimetresInAnyUnits()
{
    speak({QLocale::c(), Units::Imperial});
    for (int kind = 0; kind <= int(LeaderKind::CrankLonger); ++kind) {
        Leader leader;
        leader.kind = LeaderKind(kind);
        leader.valueMm = 25.4;
        const bool rider = leader.kind == LeaderKind::BarHigher
                           || leader.kind == LeaderKind::BarFurther
                           || leader.kind == LeaderKind::SaddleHigher
                           || leader.kind == LeaderKind::SaddleFurtherBack;
        const QString said = leaderLabel(leader);
        QVERIFY2(said.contains(QStringLiteral("1.00 in")) == rider, qPrintable(said));
        QVERIFY2(said.contains(QStringLiteral(" mm")) != rider, qPrintable(said));
    }
    speak({});
}

void DrawingTest::shouldKeepLabelsApart_data()
{
    QTest::addColumn<double>("stature");
    QTest::addColumn<double>("inseam");
    QTest::addColumn<BarKind>("kind");
    QTest::addColumn<Use>("use");
    QTest::addColumn<QSize>("size");
    const std::pair<BarKind, Use> bars[] = {
        {BarKind::Swept, Use::City}, {BarKind::Flat, Use::Commuting}, {BarKind::Drop, Use::Road}};
    for (const double stature : {1520.0, 1640.0, 1760.0, 1880.0, 2000.0})
        for (const auto& [kind, use] : bars)
            for (const QSize size : {QSize(1280, 800), QSize(1920, 1080), QSize(820, 1100)})
                QTest::addRow("%.0f, bar %d, %dx%d", stature, static_cast<int>(kind), size.width(),
                              size.height())
                    << stature << 0.475 * stature << kind << use << size;
}

void DrawingTest::shouldKeepLabelsApart()
{
    QFETCH(QSize, size);
    const Case made = fetched();
    const QRectF area = areaOf(size);
    const DrawingLayout layout = layOut(area, made.view, sentences);
    QVERIFY(layout.words);
    std::vector<QRectF> labels;
    for (const JointLabelPlace& place : layout.jointLabels)
        labels.push_back(place.box);
    QCOMPARE(labels.size(), std::size_t(4));
    std::size_t told = 0;
    for (const LeaderPlace& leader : layout.leaders) {
        labels.push_back(leader.label);
        told += static_cast<std::size_t>(leader.rows.size());
    }
    QCOMPARE(told, made.view.leaders.size());
    labels.push_back(layout.leadersHeadingBox);
    labels.push_back(layout.block.box);
    labels.push_back(layout.title.box);
    labels.push_back(layout.subtitle.box);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        QVERIFY(area.contains(labels[i]));
        for (std::size_t k = i + 1; k < labels.size(); ++k) {
            const QRectF shared = labels[i].intersected(labels[k]);
            QVERIFY2(shared.width() < 0.01 || shared.height() < 0.01,
                     qPrintable(QStringLiteral("%1 and %2").arg(i).arg(k)));
        }
    }
}

void DrawingTest::shouldDrawMostRiddenPosition()
{
    Fitting fitting = fittingOf(1756.0, 846.0, BarKind::Flat, Use::Commuting);
    fitting.riding.mix = Mix();
    fitting.riding.mix.share[indexOf(Use::Commuting)] = 0.3;
    fitting.riding.mix.share[indexOf(Use::Touring)] = 0.7;
    const Case made = caseOf(fitting);
    QVERIFY(made.view.rider->use == Use::Touring);
    for (const UsePosture& use : chosenOf(made).uses)
        if (use.use == Use::Touring)
            QVERIFY(std::abs((use.posture.trunk - made.view.rider->angles[0].value).deg()) < exact);
}

void DrawingTest::shouldDrawAloneWithOneCandidate()
{
    Fitting fitting = fittingOf(1756.0, 846.0, BarKind::Flat, Use::Commuting);
    fitting.frames.pop_back();
    const Case made = caseOf(fitting);
    QVERIFY(!made.view.other);
    QVERIFY(made.view.leaders.empty());
    for (const BlockRow& row : blockRows(made.view))
        QVERIFY(row.other.isEmpty());
}

void DrawingTest::shouldTellNothingOfEqualSizes()
{
    Fitting fitting = fittingOf(1756.0, 846.0, BarKind::Flat, Use::Commuting);
    fitting.frames[1] = fitting.frames[0];
    fitting.frames[1].size = "M twice";
    const Case made = caseOf(fitting);
    QVERIFY(made.view.other);
    QVERIFY(made.view.leaders.empty());
    QVERIFY(made.view.otherOffset.norm() < exact);
}

void DrawingTest::shouldMakeSpacersFromThePiecesAtHand_data()
{
    QTest::addColumn<QList<double>>("pieces");
    QTest::addColumn<double>("total");
    QTest::addColumn<QList<double>>("expected");
    QTest::newRow("none") << QList<double>{5, 10} << 0.0 << QList<double>{};
    QTest::newRow("largest first") << QList<double>{5, 10, 20} << 25.0 << QList<double>{20, 5};
    QTest::newRow("fewest") << QList<double>{5, 5, 10, 20} << 20.0 << QList<double>{20};
    QTest::newRow("each once") << QList<double>{5, 10, 10} << 20.0 << QList<double>{10, 10};
    QTest::newRow("halves") << QList<double>{2.5, 5} << 7.5 << QList<double>{5, 2.5};
    QTest::newRow("not to be made") << QList<double>{10} << 15.0 << QList<double>{15};
}

void DrawingTest::shouldMakeSpacersFromThePiecesAtHand()
{
    QFETCH(QList<double>, pieces);
    QFETCH(double, total);
    QFETCH(QList<double>, expected);
    const std::vector<double> made = spacerPieces({pieces.begin(), pieces.end()}, total);
    QCOMPARE(QList<double>(made.begin(), made.end()), expected);
}

void DrawingTest::shouldSpreadWithoutOverlap()
{
    // Two that want the same place share the way; one far off stays.
    std::vector<Interval> intervals{{100.0, 20.0}, {100.0, 20.0}, {300.0, 20.0}};
    spread(intervals, 0.0, 1000.0);
    QCOMPARE(intervals[0].top, 90.0);
    QCOMPARE(intervals[1].top, 110.0);
    QCOMPARE(intervals[2].top, 300.0);
    // Pushed up from below, in order.
    intervals = {{980.0, 20.0}, {990.0, 40.0}};
    spread(intervals, 0.0, 1000.0);
    QCOMPARE(intervals[0].top, 940.0);
    QCOMPARE(intervals[1].top, 960.0);
}

void DrawingTest::shouldPutInkWhereTheFitSays()
{
    const Case made = caseOf(fittingOf(1756.0, 846.0, BarKind::Flat, Use::Commuting));
    const QSize size(1600, 1000);
    const QImage image = painted(made.view, Theme::day(), size);
    const DrawingFit fit = fitSideView(areaOf(size), made.view, sentences);
    QVERIFY(fit.pxPerMm > 0.1);
    const Point there(123.0, -45.0);
    QVERIFY(near(fit.toMm(fit.toPx(there)), there));

    // Half way up the tyre behind the rear wheel: tyre inside its radius, paper outside. The
    // outline of the other size, whose wheel is larger, is kept out of the way.
    SideView alone = made.view;
    alone.other.reset();
    alone.leaders.clear();
    const QImage bare = painted(alone, Theme::day(), size);
    const DrawingFit bareFit = fitSideView(areaOf(size), alone, sentences);
    const WheelSketch& wheel = made.view.chosen.rear;
    const auto at = [&](double radius, double degrees) {
        return bare.pixelColor(
            bareFit.toPx(wheel.axle + radius * along(Angle::degrees(degrees))).toPoint());
    };
    for (const double degrees : {130.0, 160.0, 180.0, 200.0, 230.0}) {
        const double tyre = wheel.radiusMm - wheel.beadSeatRadiusMm;
        QCOMPARE(at(wheel.beadSeatRadiusMm + 0.5 * tyre, degrees), Theme::day().tyre);
        QCOMPARE(at(wheel.radiusMm + 8.0, degrees), Theme::day().paper);
    }
    // And the ground's line lies under it.
    const QPointF ground = bareFit.toPx({wheel.axle.x() - wheel.radiusMm, alone.chosen.groundY});
    QVERIFY(bare.pixelColor(ground.toPoint()) != Theme::day().paper);
}

void DrawingTest::shouldPaintAtAnySize_data()
{
    QTest::addColumn<QSize>("size");
    for (const QSize size :
         {QSize(1, 1), QSize(5, 5), QSize(40, 300), QSize(300, 40), QSize(420, 300),
          QSize(500, 1500), QSize(3000, 400), QSize(4000, 3000)})
        QTest::addRow("%dx%d", size.width(), size.height()) << size;
}

void DrawingTest::shouldPaintAtAnySize()
{
    QFETCH(QSize, size);
    static const Case made = caseOf(fittingOf(1756.0, 846.0, BarKind::Drop, Use::Road));
    const QImage image = painted(made.view, Theme::night(), size);
    QCOMPARE(image.pixelColor(0, 0) == QColor(Qt::magenta), size.width() < 4);
    const DrawingLayout layout = layOut(areaOf(size), made.view, sentences);
    QVERIFY(std::isfinite(layout.fit.pxPerMm) && layout.fit.pxPerMm > 0.0);
}

void DrawingTest::shouldWarnOnlyOutsideTheRange()
{
    const auto orange = [](const QImage& image) {
        qint64 count = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                count += image.pixelColor(x, y) == Theme::day().hazard;
        return count;
    };
    SideView view = caseOf(fittingOf(1756.0, 846.0, BarKind::Flat, Use::Commuting)).view;
    for (JointAngle& angle : view.rider->angles) {
        angle.low = angle.value - Angle::degrees(1.0);
        angle.high = angle.value + Angle::degrees(1.0);
    }
    QCOMPARE(orange(painted(view, Theme::day(), {1600, 1000})), 0);
    view.rider->angles[0].low = view.rider->angles[0].value + Angle::degrees(2.0);
    view.rider->angles[0].high = view.rider->angles[0].value + Angle::degrees(8.0);
    QVERIFY(!view.rider->angles[0].comfortable());
    QVERIFY(orange(painted(view, Theme::day(), {1600, 1000})) > 20);
}

void DrawingTest::shouldWriteReadableSvg()
{
    const Case made = caseOf(fittingOf(1756.0, 846.0, BarKind::Drop, Use::Touring));
    const QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("view.svg"));
    QCOMPARE(writeSvg(path, made.view, Theme::day(), sentences), std::nullopt);
    const QString svg = QString::fromStdString(test::textOf(path));

    QXmlStreamReader xml(svg);
    QString words;
    QString title;
    QString description;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == QLatin1String("text"))
            words += xml.readElementText() + QLatin1Char('\n');
        else if (xml.name() == QLatin1String("title"))
            title = xml.readElementText();
        else if (xml.name() == QLatin1String("desc"))
            description = xml.readElementText();
    }
    QVERIFY2(!xml.hasError(), qPrintable(xml.errorString()));
    QCOMPARE(title, sentences.title);
    QVERIFY(description.contains(leaderLabel(made.view.leaders.front())));
    QVERIFY(words.contains(sentences.title));
    for (const JointAngle& angle : made.view.rider->angles) {
        QVERIFY(words.contains(jointLabel(angle)));
        QVERIFY(words.contains(jointRange(angle)));
    }
    for (const Leader& leader : made.view.leaders)
        QVERIFY(words.contains(leaderLabel(leader)));
    QVERIFY(words.contains(chosenName(made.view)) && words.contains(otherName(made.view)));

    QVERIFY(!svg.contains(QLatin1String("nan"), Qt::CaseInsensitive));
    QVERIFY(svg.contains(QLatin1String("stroke-dasharray")));
    QVERIFY(svg.contains(Theme::day().other.name()) && svg.contains(Theme::day().ink.name()));
    QVERIFY(svg.contains(QLatin1String("sans-serif"))
            && svg.contains(QLatin1String("role=\"img\"")));
}

/// Names come from files: a label of a thousand characters, of words or of one.
void DrawingTest::shouldEndALongTitleBetweenWords()
{
    const Case made = caseOf(fittingOf(1756.0, 846.0, BarKind::Drop, Use::Touring));
    const QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("view.svg"));
    const DrawingText text{QStringLiteral("word ").repeated(200), QString(1000, u'W')};
    QCOMPARE(writeSvg(path, made.view, Theme::day(), text), std::nullopt);
    QXmlStreamReader xml(QString::fromStdString(test::textOf(path)));
    QStringList title;
    QStringList subtitle;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement || xml.name() != QLatin1String("text"))
            continue;
        const QString words = xml.readElementText();
        if (words.startsWith(QStringLiteral("word")))
            title << words;
        else if (words.startsWith(QStringLiteral("WWW")))
            subtitle << words;
    }
    QCOMPARE(title.size(), 2);
    QCOMPARE(subtitle.size(), 2);
    QVERIFY2(title[0].endsWith(QStringLiteral("word")), qPrintable(title[0]));
    for (const QStringList& lines : {title, subtitle})
        QVERIFY2(lines[1].endsWith(QStringLiteral("…")), qPrintable(lines[1]));
}

void DrawingTest::shouldWritePng_data()
{
    QTest::addColumn<bool>("night");
    QTest::newRow("day") << false;
    QTest::newRow("night") << true;
}

void DrawingTest::shouldWritePng()
{
    QFETCH(bool, night);
    const Theme theme = night ? Theme::night() : Theme::day();
    const Case made = caseOf(fittingOf(1756.0, 846.0, BarKind::Flat, Use::Commuting));
    const QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("view.png"));
    QCOMPARE(writePng(path, made.view, theme, sentences), std::nullopt);
    const QImage image(path);
    QCOMPARE(image.size(), pictureSize);
    QCOMPARE(image.pixelColor(2, 2), theme.paper);
    qint64 painted = 0;
    for (int y = 0; y < image.height(); y += 2)
        for (int x = 0; x < image.width(); x += 2)
            painted += image.pixelColor(x, y) != theme.paper;
    QVERIFY(painted > 20'000);
    QVERIFY(!image.text(QStringLiteral("Description")).isEmpty());
}

void DrawingTest::shouldSayWhyItCouldNotWrite()
{
    const Case made = caseOf(fittingOf(1756.0, 846.0, BarKind::Flat, Use::Commuting));
    const QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("no/such/folder/view."));
    const auto svg = writeSvg(path + QLatin1String("svg"), made.view, Theme::day(), sentences);
    const auto png = writePng(path + QLatin1String("png"), made.view, Theme::day(), sentences);
    QVERIFY(svg && !svg->isEmpty());
    QVERIFY(png && !png->isEmpty());
    QVERIFY(QDir(dir.path()).isEmpty());
}

void DrawingTest::shouldKeepTextReadableOnPaper_data()
{
    QTest::addColumn<QColor>("text");
    QTest::addColumn<QColor>("ground");
    QTest::addColumn<double>("least");
    const std::pair<const char*, Theme> themes[] = {{"day", Theme::day()},
                                                    {"night", Theme::night()}};
    for (const auto& [name, theme] : themes) {
        QTest::addRow("%s ink", name) << theme.ink << theme.paper << 4.5;
        QTest::addRow("%s soft", name) << theme.soft << theme.paper << 4.5;
        QTest::addRow("%s other", name) << theme.otherText << theme.paper << 4.5;
        QTest::addRow("%s hazard", name) << theme.hazardText << theme.paper << 4.5;
        QTest::addRow("%s on the hazard", name) << theme.hazardInk << theme.hazard << 4.5;
        QTest::addRow("%s ink on the figure", name) << theme.ink << theme.rider << 4.5;
        // Lines that carry meaning: WCAG 2.1, 1.4.11.
        QTest::addRow("%s outline", name) << theme.other << theme.paper << 3.0;
    }
}

void DrawingTest::shouldKeepTextReadableOnPaper()
{
    QFETCH(QColor, text);
    QFETCH(QColor, ground);
    QFETCH(double, least);
    QVERIFY2(contrast(text, ground) >= least, qPrintable(QString::number(contrast(text, ground))));
}

QTEST_MAIN(DrawingTest)
#include "tst_drawing.moc"
