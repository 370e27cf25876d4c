// SPDX-License-Identifier: MIT
//
// What is told of a ride, and when; the ride itself is made up here.
#include "support.h"

#include "advice/advise.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

const HandlingTables& handling()
{
    return tables().handling;
}

Skeleton skeleton(bool mudguard = false)
{
    FrameSize frame;
    frame.geometry.stackMm = 580.0;
    frame.geometry.reachMm = 390.0;
    frame.geometry.headAngleDeg = 72.0;
    frame.geometry.forkOffsetMm = 45.0;
    if (mudguard)
        test::mountingOn(frame).mudguard = Mudguard{};
    return skeletonOf(frame, tables().frame);
}

/// One of which nothing is to be told.
Ride good()
{
    Ride ride;
    ride.steering = steeringOf(skeleton());
    ride.toe.emplace();
    ride.toe->overlapMm = -40.0;
    ride.kneeToBar.clearanceMm = 200.0;
    ride.kneeToTurnedBar.clearanceMm = 100.0;
    ride.heelToBag = OverTurn{30.0, {}};
    ride.frontShareFullyBack = 0.33;
    ride.grades = Grades{0.65, 0.1, 0.55, 0.5, 0.25};
    ride.stability.emplace();
    ride.stability->weaveMmS = 5000.0;
    ride.stability->capsizeMmS = 7500.0;
    ride.stability->steady = true;
    return ride;
}

Findings told(const Ride& ride, bool mudguard = false)
{
    return rideFindings(ride, skeleton(mudguard), handling());
}

/// The only one; a note without a code of these where there is not exactly one.
Finding only(const Ride& ride, bool mudguard = false)
{
    const Findings findings = told(ride, mudguard);
    return findings.size() == 1 ? findings.front()
                                : Finding{FindingCode::SexNotStated, Severity::Note, {}, {}, {}};
}

} // namespace

class TestRideFindings : public QObject {
    Q_OBJECT

private slots:
    void shouldSayNothingOfAGoodRide() { QVERIFY(told(good()).empty()); }

    void shouldWarnOfAToeThatTouches()
    {
        Ride ride = good();
        ride.toe->overlapMm = 14.0;
        ride.toe->touches = TouchingSteer{Angle::degrees(21.0), Angle::degrees(40.0), {}};
        ride.touchingTurn = TightTurn{2900.0, 2700.0};
        const Finding tyre = only(ride);
        QCOMPARE(tyre.code, FindingCode::ToeOverlaps);
        QCOMPARE(tyre.severity, Severity::Caution);
        QCOMPARE(tyre.name, std::string("tyre"));
        QCOMPARE(tyre.numbers.size(), std::size_t{4});
        QVERIFY(std::abs(tyre.numbers[1] - 21.0) < 1e-9);
        QCOMPARE(only(ride, true).name, std::string("mudguard"));
        ride.touchingTurn.reset();
        QCOMPARE(only(ride).numbers.size(), std::size_t{1});
    }

    void shouldAskForALookWhereRoomIsWithinWhatShoesDiffer()
    {
        Ride ride = good();
        ride.toe->overlapMm = -handling().toe.checkRoomMm + 1.0;
        const Finding near = only(ride);
        QCOMPARE(near.code, FindingCode::ToeNear);
        QCOMPARE(near.severity, Severity::Note);
        QVERIFY(std::abs(near.numbers[0] - handling().toe.checkRoomMm + 1.0) < 1e-9);
        ride.toe->overlapMm = -handling().toe.checkRoomMm - 1.0;
        QVERIFY(told(ride).empty());
        ride.toe.reset(); // beside the wheel
        QVERIFY(told(ride).empty());
    }

    void shouldWarnOfHeelAndKneeUnderWhatIsWanted_data()
    {
        QTest::addColumn<double>("heel");
        QTest::addColumn<double>("straight");
        QTest::addColumn<double>("turned");
        QTest::addColumn<int>("code");
        QTest::addColumn<double>("steer");
        const int heel = static_cast<int>(FindingCode::HeelNearBag);
        const int knee = static_cast<int>(FindingCode::KneeNearBar);
        QTest::addRow("heel under 20") << 19.0 << 60.0 << 60.0 << heel << -1.0;
        QTest::addRow("heel into the bag") << -5.0 << 60.0 << 60.0 << heel << -1.0;
        QTest::addRow("knee under 50") << 21.0 << 49.0 << 20.0 << knee << 0.0;
        QTest::addRow("knee, turned alone") << 21.0 << 60.0 << 49.0 << knee << 30.0;
    }
    void shouldWarnOfHeelAndKneeUnderWhatIsWanted()
    {
        QFETCH(double, heel);
        QFETCH(double, straight);
        QFETCH(double, turned);
        QFETCH(int, code);
        QFETCH(double, steer);
        Ride ride = good();
        ride.heelToBag->clearanceMm = heel;
        ride.kneeToBar.clearanceMm = straight;
        ride.kneeToTurnedBar.clearanceMm = turned;
        const Finding finding = only(ride);
        QCOMPARE(static_cast<int>(finding.code), code);
        QCOMPARE(finding.severity, Severity::Caution);
        if (steer >= 0.0)
            QCOMPARE(finding.numbers[2], steer);
    }

    // Derived: without a drop the axle goes back by what the chainstay gets longer, 20 mm.
    void shouldTellTheHeelsRoomAtTheBackOfTheDropouts()
    {
        FrameSize frame;
        frame.geometry.stackMm = 580.0;
        frame.geometry.reachMm = 390.0;
        frame.geometry.headAngleDeg = 72.0;
        frame.geometry.bbDropMm = 0.0;
        frame.geometry.chainstayMm = Range{430.0, 450.0};
        Ride ride = good();
        ride.heelToBag->clearanceMm = 5.0;
        const Findings findings = rideFindings(ride, skeletonOf(frame, tables().frame), handling());
        QCOMPARE(findings.size(), std::size_t(1));
        QCOMPARE(findings[0].numbers.size(), std::size_t(3));
        QVERIFY(std::abs(findings[0].numbers[2] - 25.0) < 1e-9);
        QCOMPARE(only(ride).numbers.size(), std::size_t(2)); // dropouts that do not adjust
    }

    // ISO 4210-2:2015, 4.7.5: the front wheel carries at least 25 %.
    void shouldHoldTheFrontWheelToTheStandard()
    {
        Ride ride = good();
        ride.frontShareFullyBack = 0.249;
        QCOMPARE(only(ride).code, FindingCode::FrontWheelLight);
        QCOMPARE(only(ride).severity, Severity::Caution);
        ride.frontShareFullyBack = 0.25;
        QVERIFY(told(ride).empty());
    }

    void shouldTellOfEarlyPitchingAndALightFrontWheel()
    {
        Ride ride = good();
        ride.grades->overTheBarsG = 0.49;
        QCOMPARE(only(ride).code, FindingCode::PitchesEarly);
        ride = good();
        ride.grades->liftsUnderPedalling = 0.14;
        QCOMPARE(only(ride).code, FindingCode::FrontLiftsClimbing);
        QCOMPARE(only(ride).severity, Severity::Note);
    }

    void shouldSayWhereThereIsNoSteadySpeed()
    {
        Ride ride = good();
        ride.stability->steady = false;
        QCOMPARE(only(ride).code, FindingCode::NoSteadySpeed);
        ride = good();
        ride.stability->capsizeMmS.reset();
        QCOMPARE(only(ride).code, FindingCode::NoCapsizeSpeed);
        QCOMPARE(only(ride).numbers[0], 5000.0);
    }

    void shouldAdviseOnSteeringOutsideTheStandardsBand()
    {
        FrameSize frame;
        frame.geometry.stackMm = 580.0;
        frame.geometry.reachMm = 390.0;
        frame.geometry.headAngleDeg = 64.0;
        const Findings findings =
            rideFindings(good(), skeletonOf(frame, tables().frame), handling());
        QCOMPARE(findings.size(), std::size_t{1});
        QCOMPARE(findings[0].code, FindingCode::SteeringOutOfAdvice);
        QCOMPARE(findings[0].severity, Severity::Note);
        QCOMPARE(findings[0].numbers.size(), std::size_t{6});
    }

    void shouldPutTheGravestFirst()
    {
        Ride ride = good();
        ride.toe->overlapMm = 3.0;
        ride.stability->steady = false;
        const Findings findings = told(ride);
        QCOMPARE(findings.size(), std::size_t{2});
        QVERIFY(findings[0].severity > findings[1].severity);
    }
};

QTEST_APPLESS_MAIN(TestRideFindings)
#include "tst_ride_findings.moc"
