// SPDX-License-Identifier: MIT
#include "toe_cases.h"
#include "toe_cloud.h"

#include "handling/steering.h"
#include "handling/wheel_size.h"
#include "samples.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

/// The medium of common practice: steep head, 1.79 m rider.
FrameSize steepMedium()
{
    FrameSize frame;
    frame.geometry.stackMm = 570.0;
    frame.geometry.reachMm = 388.0;
    frame.geometry.headAngleDeg = 74.5;
    frame.geometry.seatAngleDeg = 73.5;
    frame.geometry.bbDropMm = 70.0;
    frame.geometry.forkOffsetMm = 45.0;
    frame.wheel.beadSeatMm = 622.0;
    test::mountingOn(frame).tyreMm = 40.0;
    return frame;
}
Body tallishMan()
{
    return bodyOf(Sex::Male, {{Quantity::Stature, {1790.0}, {}}});
}
double overlapOf(const ToeCase& made)
{
    const auto overlap = toeOverlap(made.wheel, made.shoe, made.pedalling);
    return overlap ? overlap->overlapMm : -1e9;
}

} // namespace

class TestToe : public QObject {
    Q_OBJECT

private slots:
    void shouldMeasureAsTheStandardsDo_data()
    {
        QTest::addColumn<int>("index");
        const auto rows = reference("toe_clearance.csv");
        QCOMPARE(rows.size(), 4);
        for (int i = 0; i < rows.size(); ++i)
            QTest::addRow("front centre %s", qPrintable(rows[i].text("front_centre"))) << i;
    }
    void shouldMeasureAsTheStandardsDo()
    {
        QFETCH(int, index);
        const ReferenceRow row = reference("toe_clearance.csv")[index];
        const double centre = row.number("front_centre");
        const double drop = row.number("drop");
        const SweptWheel wheel{Point(std::sqrt(centre * centre - drop * drop), drop),
                               Angle::degrees(row.number("head")),
                               row.number("offset"),
                               row.number("radius"),
                               0.5 * row.number("tyre"),
                               0.0};
        const double crank = row.number("crank");
        const double lateral = row.number("lateral");
        const auto level = toeClearance(wheel, crank, lateral);
        const auto least = leastToeClearance(wheel, crank, lateral);
        QVERIFY(level && least);
        QVERIFY(std::abs(level->clearanceMm - row.number("level")) < 0.5);
        QVERIFY(std::abs(level->steer.deg() - row.number("level_steer")) < 0.5);
        QVERIFY(std::abs(least->clearanceMm - row.number("any")) < 0.5);
        QVERIFY(std::abs(least->steer.deg() - row.number("any_steer")) < 0.5);
        QVERIFY(std::abs(least->crank.deg() - row.number("any_crank")) < 0.5);
    }

    // Derived: a wheel without offset on an upright axis through its middle sweeps a ball, so from
    // a spot at axle height x = X - sqrt(R^2 - z^2), steered by asin(z / R).
    void shouldSweepABallAboutAnUprightAxis()
    {
        const SweptWheel wheel{Point(600.0, 0.0), Angle::degrees(90.0), 0.0, 340.0, 20.0, 0.0};
        const auto touch = touchAhead(wheel, Spot(170.0, 0.0, 125.0));
        QVERIFY(touch);
        QVERIFY(std::abs(touch->forwardMm - (430.0 - std::sqrt(340.0 * 340.0 - 125.0 * 125.0)))
                < 1e-9);
        QVERIFY(std::abs(touch->steer.rad() - std::asin(125.0 / 340.0)) < 1e-9);
        // From inside it is the same wall, behind.
        const auto inside = touchAhead(wheel, Spot(400.0, 0.0, 125.0));
        QVERIFY(inside && std::abs(inside->forwardMm - touch->forwardMm + 230.0) < 1e-9);
        QVERIFY(!touchAhead(wheel, Spot(170.0, 0.0, 341.0)));
    }

    // A steered wheel is nowhere outside its swept body and meets it where the touch says.
    void shouldTouchAtTheSteerItSays()
    {
        RandomToes toes(11);
        for (int i = 0; i < 500; ++i) {
            const bool mudguard = i % 2;
            const ToeCase made = toes.next(mudguard);
            const Spot from(toes.between(100.0, 180.0), toes.between(-60.0, 100.0),
                            toes.between(60.0, 170.0));
            const auto touch = touchAhead(made.wheel, from);
            QVERIFY(touch);
            const Spot at = from + touch->forwardMm * Spot::UnitX();
            QVERIFY(std::abs(HeldWheel(made.wheel, touch->steer).distanceTo(at)) < 1e-6);
            for (double steer = 0.0; steer < 80.0; steer += 1.0)
                QVERIFY(HeldWheel(made.wheel, Angle::degrees(steer)).distanceTo(at) > -1e-6);
        }
    }

    void shouldAgreeWithBruteForce_data()
    {
        QTest::addColumn<bool>("mudguard");
        QTest::addRow("tyre") << false;
        QTest::addRow("mudguard") << true;
    }
    void shouldAgreeWithBruteForce()
    {
        QFETCH(bool, mudguard);
        RandomToes toes(5);
        int touching = 0;
        double most = 0.0;
        for (int i = 0; i < samples(100); ++i) {
            const ToeCase made = toes.next(mudguard);
            const ToeCloud cloud(made.wheel, made.shoe, made.pedalling);
            const auto overlap = toeOverlap(made.wheel, made.shoe, made.pedalling);
            QVERIFY(overlap);
            const double off = std::abs(overlap->overlapMm + cloud.worst().forwardMm);
            most = std::max(most, off);
            QVERIFY2(off < 1.0, qPrintable(QString::number(off)));
            QCOMPARE(overlap->touches.has_value(), overlap->overlapMm > 0.0);
            if (overlap->overlapMm < 1.0)
                continue; // grazing: brute force steps over it
            ++touching;
            constexpr double beside = 0.6; // degrees; the steps of the cloud
            const TouchingSteer& touches = *overlap->touches;
            QVERIFY(touches.from < touches.to);
            QVERIFY(cloud.touchesAt(touches.from.deg() + beside));
            QVERIFY(!cloud.touchesAt(touches.from.deg() - beside));
            QVERIFY(cloud.touchesAt(touches.to.deg() - beside));
            QVERIFY(!cloud.touchesAt(touches.to.deg() + beside));
        }
        QVERIFY(touching > samples(10) && touching < samples(95));
        qInfo("largest difference to brute force: %.3f mm", most);
    }

    // Common practice, no source: a 74.5 degree head with a 40-622 tyre and 45 mm of offset has a
    // trail of about 50; a rider of 1.79 m on a medium with it has some 20 mm of overlap; 584 rims
    // reduce it.
    void shouldFindWhatTheTradeKnows()
    {
        const ToeCase large = toeCase(steepMedium(), tallishMan(), 170.0);
        QVERIFY(std::abs(steeringOf(large.skeleton).trailMm - 50.0) < 2.0);
        qInfo("front centre %.1f, overlap %.1f", large.skeleton.frontAxle.norm(), overlapOf(large));
        QVERIFY(std::abs(overlapOf(large) - 20.0) < 8.0);
        const ToeCase small = toeCase(withWheel(steepMedium(), 584.0, 40.0), tallishMan(), 170.0);
        QVERIFY(overlapOf(small) < overlapOf(large) - 10.0);
    }

    void shouldGetWorseWithEverythingThatReachesFurther()
    {
        const double before = overlapOf(toeCase(steepMedium(), tallishMan(), 170.0));
        QVERIFY(overlapOf(toeCase(steepMedium(), tallishMan(), 175.0)) > before + 4.0);
        QVERIFY(overlapOf(toeCase(withWheel(steepMedium(), 622.0, 50.0), tallishMan(), 170.0))
                > before + 8.0);
        FrameSize guarded = steepMedium();
        test::mountingOn(guarded).mudguard = Mudguard{};
        const double behindMudguard = overlapOf(toeCase(guarded, tallishMan(), 170.0));
        QVERIFY(behindMudguard > before + 10.0 && behindMudguard < before + 25.0);
        ToeCase further = toeCase(steepMedium(), tallishMan(), 170.0);
        further.shoe.ballAheadMm -= 10.0;
        // The foot is pitched, so ten millimetres along it are a little less on the level.
        QVERIFY(overlapOf(further) < before - 8.0 && overlapOf(further) > before - 10.5);
    }

    void shouldSayNothingWhereTheShoePassesBeside()
    {
        ToeCase made = toeCase(steepMedium(), tallishMan(), 170.0);
        made.shoe.outMm = 900.0;
        QVERIFY(!toeOverlap(made.wheel, made.shoe, made.pedalling));
        QVERIFY(!toeClearance(made.wheel, 170.0, 900.0));
        QVERIFY(!leastToeClearance(made.wheel, 170.0, 900.0));
    }

    // Derived: upright axis, 45 degrees: the rear track's radius is the wheelbase; v^2 = g r
    // tan(lean).
    void shouldTurnAsTightAsTheSteer()
    {
        ToeTable table = tables().handling.toe;
        table.leanInTightTurnDeg = 45.0;
        const auto turn =
            tightTurn(Angle::degrees(45.0), Angle::degrees(90.0), 1000.0, table, 10'000.0);
        QVERIFY(turn);
        QVERIFY(std::abs(turn->radiusMm - 1000.0) < 1e-9);
        QVERIFY(std::abs(turn->speedMmS - std::sqrt(1e7)) < 1e-9);
        QVERIFY(!tightTurn(Angle(), Angle::degrees(72.0), 1000.0, table, 9806.65));
        // A flatter head turns less on the ground: tan 20 sin 70.
        const auto flat =
            tightTurn(Angle::degrees(20.0), Angle::degrees(70.0), 1000.0, table, 9806.65);
        QVERIFY(std::abs(flat->radiusMm
                         - 1000.0
                               / (std::tan(Angle::degrees(20.0).rad())
                                  * std::sin(Angle::degrees(70.0).rad())))
                < 1e-9);
    }
};

QTEST_APPLESS_MAIN(TestToe)
#include "tst_toe.moc"
