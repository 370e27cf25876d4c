// SPDX-License-Identifier: MIT
#include "support.h"

#include "handling/clearances.h"
#include "handling/steering.h"
#include "handling/wheel_size.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

const HandlingTables& handling()
{
    return tables().handling;
}

FrameSize ordinary()
{
    FrameSize frame;
    frame.geometry.stackMm = 585.0;
    frame.geometry.reachMm = 396.0;
    frame.geometry.headAngleDeg = 72.0;
    frame.geometry.seatAngleDeg = 73.5;
    frame.geometry.chainstayMm = Range{435.0, 450.0};
    frame.geometry.bbDropMm = 70.0;
    frame.geometry.forkOffsetMm = 47.0;
    frame.geometry.standoverMm = 780.0;
    frame.wheel.beadSeatMm = 622.0;
    test::mountingOn(frame).tyreMm = 40.0;
    return frame;
}
Skeleton skeleton(const FrameSize& frame)
{
    return skeletonOf(frame, tables().frame);
}

SeatedRider seated()
{
    SeatedRider rider;
    rider.body = averageMan();
    rider.foothold = calibrationFoothold();
    rider.crankMm = 170.0;
    rider.saddle = saddleForKnee(rider.body, tables().body, rider.foothold, rider.crankMm,
                                 Angle::degrees(36.0), -8.0);
    rider.grip = Point(440.0, 690.0);
    rider.gripHalfWidthMm = 245.0;
    rider.pedalLateralMm = 125.0;
    return rider;
}
const Point clamp(468.0, 680.0);

double knee(const SeatedRider& rider, const Point& at, double steerDeg)
{
    return kneeToBar(rider, tables().body, skeleton(ordinary()), at, 45.0, Angle::degrees(steerDeg),
                     handling().clearance)
        .clearanceMm;
}

} // namespace

class TestClearances : public QObject {
    Q_OBJECT

private slots:
    // By looking at every degree of the turn.
    void shouldFindTheHeelsFurthestBack()
    {
        const SeatedRider rider = seated();
        const RearBag bag{60.0, 300.0, -400.0}; // so low that the whole turn counts
        const auto heel =
            heelToBag(rider, tables().body, skeleton(ordinary()), bag, handling().clearance, 12.0);
        QVERIFY(heel);
        const double front = skeleton(ordinary()).rearAxle.x() - 60.0 + 150.0;
        double least = 1e9;
        for (int degrees = 0; degrees < 360; ++degrees) {
            const LegPoints leg = legAt(rider.body, tables().body, rider.foothold,
                                        rider.saddle.point(), 170.0, Angle::degrees(degrees));
            const double cosine = (leg.toe.x() - leg.heel.x()) / rider.body.footMm;
            least = std::min(least, leg.heel.x() + (12.0 - 8.0) * cosine - front);
        }
        QVERIFY(std::abs(heel->clearanceMm - least) < 0.1);
    }

    // Derived: a bag 10 mm further back leaves 10 mm more, one 20 mm deeper 10 less.
    void shouldMoveWithTheBag()
    {
        const auto room = [](const RearBag& bag) {
            return heelToBag(seated(), tables().body, skeleton(ordinary()), bag,
                             handling().clearance, 12.0)
                ->clearanceMm;
        };
        const RearBag bag = handling().rearBag;
        RearBag back = bag, deep = bag, high = bag;
        back.setbackMm += 10.0;
        deep.depthMm += 20.0;
        high.bottomAboveAxleMm += 60.0;
        QVERIFY(std::abs(room(back) - room(bag) - 10.0) < 1e-6);
        QVERIFY(std::abs(room(deep) - room(bag) + 10.0) < 1e-6);
        QVERIFY(room(high) > room(bag)); // only the top of the turn reaches it
        RearBag above = bag;
        above.bottomAboveAxleMm = 2000.0;
        QVERIFY(!heelToBag(seated(), tables().body, skeleton(ordinary()), above,
                           handling().clearance, 12.0));
    }

    // By looking at every degree of the turn, and at many spots of a straight bar.
    void shouldFindTheKneeNearestToTheBar()
    {
        const SeatedRider rider = seated();
        const double cosine = std::cos(Angle::degrees(72.0).rad());
        const double sine = std::sin(Angle::degrees(72.0).rad());
        for (const double steer : {0.0, 30.0}) {
            double least = 1e9;
            for (int degrees = 0; degrees < 360; ++degrees) {
                const LegPoints leg = legAt(rider.body, tables().body, rider.foothold,
                                            rider.saddle.point(), 170.0, Angle::degrees(degrees));
                for (double out = 0.0; out <= 310.0; out += 1.0) {
                    const double share = std::max(0.0, (out - 45.0) / 200.0);
                    const Point at = clamp + share * (rider.grip - clamp);
                    // Into axes of the steering tube, turned there, by hand.
                    const Point from = at - skeleton(ordinary()).headTop;
                    const double along = -cosine * from.x() + sine * from.y();
                    const double ahead = sine * from.x() + cosine * from.y();
                    const double turn = Angle::degrees(steer).rad();
                    const double turned = ahead * std::cos(turn) - out * std::sin(turn);
                    const double side = ahead * std::sin(turn) + out * std::cos(turn);
                    const Point then = skeleton(ordinary()).headTop + along * Point(-cosine, sine)
                                       + turned * Point(sine, cosine);
                    least = std::min(least, std::hypot((leg.knee - then).norm(), 125.0 - side));
                }
            }
            const double expected =
                least - handling().clearance.kneeRoundMm - handling().clearance.barTubeMm;
            QVERIFY2(std::abs(knee(rider, clamp, steer) - expected) < 0.5,
                     qPrintable(QString::number(knee(rider, clamp, steer) - expected)));
        }
    }

    void shouldHaveLessRoomTurned()
    {
        QVERIFY(knee(seated(), clamp, 30.0) < knee(seated(), clamp, 0.0) - 20.0);
        SeatedRider near = seated();
        near.grip -= Point(50.0, 0.0);
        QVERIFY(knee(near, clamp - Point(50.0, 0.0), 0.0) < knee(seated(), clamp, 0.0) - 20.0);
    }

    void shouldSayWhatIsLeftForTheTyre()
    {
        FrameSize frame = ordinary();
        QVERIFY(!tyreLeft(frame, skeleton(frame)));
        frame.wheel.maxTyreMm = 45.0;
        QCOMPARE(*tyreLeft(frame, skeleton(frame)), 5.0);
        test::mountingOn(frame).tyreMm = 50.0;
        QCOMPARE(*tyreLeft(frame, skeleton(frame)), -5.0);
    }

    // Derived: seated 36 degrees bent over a crank at the bottom, the ground lies below the pedal,
    // so the flat sole does not reach it; tiptoe comes nearer; lowering the saddle by 50 brings
    // both 50.
    void shouldReachForTheGround()
    {
        const auto reach = [](const SeatedRider& rider, const FrameSize& frame) {
            return footToGround(rider, tables().body, skeleton(frame), 15.0, handling().clearance);
        };
        const FootToGround foot = reach(seated(), ordinary());
        QVERIFY(foot.flatMm > 50.0 && foot.flatMm < 250.0);
        QVERIFY(foot.tiptoeMm < foot.flatMm - 40.0);
        SeatedRider low = seated();
        low.saddle = saddleAt(low.saddle.point() - Point(0.0, 50.0));
        QVERIFY(std::abs(reach(low, ordinary()).flatMm - foot.flatMm + 50.0) < 1e-6);
        QVERIFY(std::abs(*foot.straddleMm - (seated().body.inseamMm - 780.0 + 15.0)) < 1e-9);
        FrameSize unknown = ordinary();
        unknown.geometry.standoverMm.reset();
        QVERIFY(!reach(seated(), unknown).straddleMm);
        // Smaller wheels bring saddle and ground together.
        QVERIFY(std::abs(reach(seated(), withWheel(ordinary(), 584.0, 40.0)).flatMm - foot.flatMm
                         + 19.0)
                < 1e-9);
    }

    // ISO 5775: 40-622 is 702 outside.
    void shouldKnowRims()
    {
        QCOMPARE(outsideDiameter(622.0, 40.0), 702.0);
        const auto& rims = handling().rims;
        QVERIFY(rimOf(rims, 622.0) && !rimOf(rims, 600.0));
        QCOMPARE(nextSmaller(rims, 622.0)->beadSeatMm, 584.0);
        QCOMPARE(nextSmaller(rims, 590.0)->beadSeatMm, 584.0);
        QVERIFY(!nextSmaller(rims, 305.0));
        for (std::size_t i = 1; i < rims.size(); ++i)
            QVERIFY(rims[i].beadSeatMm < rims[i - 1].beadSeatMm);
    }

    // Derived: 19 mm less radius: bottom bracket 19 lower, trail 19 / tan 72 less; the pedal
    // strikes sooner; the front axle stays where it is over the bottom bracket.
    void shouldCarryAWheelThroughEverything()
    {
        const Skeleton large = skeleton(ordinary());
        const Skeleton small = skeleton(withWheel(ordinary(), 584.0, 40.0));
        const Steering before = steeringOf(large), after = steeringOf(small);
        QVERIFY(std::abs(after.bbHeightMm - before.bbHeightMm + 19.0) < 1e-9);
        QVERIFY(
            std::abs(after.trailMm - before.trailMm + 19.0 / std::tan(Angle::degrees(72.0).rad()))
            < 1e-9);
        QVERIFY(pedalStrikeLean(small, 170.0, 125.0, 90.0)
                < pedalStrikeLean(large, 170.0, 125.0, 90.0));
        QCOMPARE(small.frontAxle, large.frontAxle);
    }

    // Derived by independent algebra: 1 - o / (R cos H).
    void shouldPlaceTheSteeringAxisOverTheGround_data()
    {
        QTest::addColumn<double>("bead");
        QTest::addColumn<double>("tyre");
        QTest::addColumn<double>("head");
        QTest::addColumn<double>("offset");
        QTest::addColumn<double>("share");
        QTest::addRow("25-622") << 622.0 << 25.0 << 73.5 << 43.0 << 0.549;
        QTest::addRow("45-622") << 622.0 << 45.0 << 70.5 << 50.0 << 0.579;
        QTest::addRow("40-622") << 622.0 << 40.0 << 71.0 << 45.0 << 0.606;
        QTest::addRow("42-584") << 584.0 << 42.0 << 73.0 << 65.0 << 0.334;
        QTest::addRow("47-406") << 406.0 << 47.0 << 72.0 << 28.0 << 0.638;
    }
    void shouldPlaceTheSteeringAxisOverTheGround()
    {
        QFETCH(double, bead);
        QFETCH(double, tyre);
        QFETCH(double, head);
        QFETCH(double, offset);
        QFETCH(double, share);
        FrameSize frame = withWheel(ordinary(), bead, tyre);
        frame.geometry.headAngleDeg = head;
        frame.geometry.forkOffsetMm = offset;
        const Skeleton made = skeleton(frame);
        QVERIFY(std::abs(steeringOf(made).axisHeightShare - share) < 0.0005);
        QCOMPARE(withinAdvice(made, handling().steering), share >= 0.15 && share <= 0.60);
    }

    // Derived: a stem 10 mm longer at right angles to the axis puts the grips 10 mm further ahead
    // of it; the lever is the hypotenuse to the palm.
    void shouldMeasureTheGripsLever()
    {
        const Skeleton made = skeleton(ordinary());
        const Point grip(440.0, 690.0);
        const GripLever lever = gripLever(made, grip, 245.0);
        const GripLever longer = gripLever(made, grip + 10.0 * aheadOfTube(made.headAngle), 245.0);
        QVERIFY(std::abs(longer.aheadMm - lever.aheadMm - 10.0) < 1e-9);
        QVERIFY(std::abs(lever.leverMm - std::hypot(lever.aheadMm, 245.0)) < 1e-9);
        QVERIFY(longer.leverMm > lever.leverMm);
    }

    void shouldGiveBothEndsOfADropout()
    {
        const Steering steering = steeringOf(skeleton(ordinary()));
        QCOMPARE(steering.chainstayMm, 435.0);
        QCOMPARE(steering.chainstayLongMm, 450.0);
        QVERIFY(steering.wheelbaseLongMm > steering.wheelbaseMm + 15.0);
    }
};

QTEST_APPLESS_MAIN(TestClearances)
#include "tst_clearances.moc"
