// SPDX-License-Identifier: MIT
#include "support.h"

#include "frame/skeleton.h"
#include "handling/steering.h"
#include "setup/setup.h"

#include <QTest>

#include <random>

using namespace tripoise;
using namespace tripoise::test;

namespace {

FrameSize fullFrame()
{
    FrameSize frame;
    frame.size = "M";
    frame.geometry.stackMm = 587;
    frame.geometry.reachMm = 398;
    frame.geometry.headAngleDeg = 72;
    frame.geometry.seatAngleDeg = 73.5;
    frame.geometry.seatTubeMm = 500;
    frame.geometry.chainstayMm = Range{435, 445};
    frame.geometry.bbDropMm = 70;
    frame.geometry.forkOffsetMm = 47;
    frame.geometry.forkLengthMm = 395;
    return frame;
}

Skeleton skeleton(const FrameSize& frame)
{
    return skeletonOf(frame, tables().frame);
}

bool assumes(const Skeleton& skeleton, const std::string& key)
{
    for (const Finding& finding : skeleton.findings)
        if (finding.code == FindingCode::GeometryAssumed && finding.name == key)
            return true;
    return false;
}

} // namespace

class TestSkeleton : public QObject {
    Q_OBJECT

private slots:
    // Derived: the axle lies the offset ahead of the axis, both axles the drop above the bottom
    // bracket.
    void shouldPlaceTheFrontAxleAheadOfTheAxis()
    {
        const Skeleton s = skeleton(fullFrame());
        const Point up = upTube(s.headAngle);
        const Point fromTop = s.frontAxle - s.headTop;
        const double ahead = fromTop.x() * up.y() - fromTop.y() * up.x();
        QVERIFY(std::abs(ahead - 47.0) < 1e-9);
        QCOMPARE(s.frontAxle.y(), 70.0);
        QVERIFY(std::abs(s.rearAxle.norm() - 435.0) < 1e-9);
        QCOMPARE(s.chainstayEndMm, 445.0);
        // sqrt(445^2 - 70^2) - sqrt(435^2 - 70^2) = 10.13.
        const Steering steering = steeringOf(s);
        QVERIFY(std::abs(steering.wheelbaseLongMm - steering.wheelbaseMm - 10.13) < 0.01);
    }

    // Derived: crown seat to axle is the fork's length, whichever of tube and fork is given.
    void shouldCloseTheHeadTubeWithTheFork()
    {
        const Skeleton s = skeleton(fullFrame());
        QCOMPARE(s.headTubeMm.origin, Origin::Derived);
        QVERIFY(std::abs((s.frontAxle - s.crown).norm() - 395.0) < 1e-9);
        FrameSize other = fullFrame();
        other.geometry.headTubeMm = s.headTubeMm.value;
        other.geometry.forkLengthMm.reset();
        const Skeleton again = skeleton(other);
        QVERIFY((again.crown - s.crown).norm() < 1e-9);
        QCOMPARE(again.headTubeMm.origin, Origin::Given);
    }

    void shouldDeriveTheOffsetFromWheelbaseOrFrontCentre()
    {
        const Steering steering = steeringOf(skeleton(fullFrame()));
        FrameSize byWheelbase = fullFrame();
        byWheelbase.geometry.forkOffsetMm.reset();
        byWheelbase.geometry.wheelbaseMm = steering.wheelbaseMm;
        QVERIFY(std::abs(skeleton(byWheelbase).forkOffsetMm.value - 47.0) < 1e-9);
        QCOMPARE(skeleton(byWheelbase).forkOffsetMm.origin, Origin::Derived);
        FrameSize byFrontCentre = fullFrame();
        byFrontCentre.geometry.forkOffsetMm.reset();
        byFrontCentre.geometry.frontCentreMm = steering.frontCentreMm;
        QVERIFY(std::abs(skeleton(byFrontCentre).forkOffsetMm.value - 47.0) < 1e-9);
    }

    // Identity: effective top tube = reach + stack / tan(seat angle).
    void shouldTakeTheSeatAngleFromTheTopTube()
    {
        FrameSize frame = fullFrame();
        frame.geometry.seatAngleDeg.reset();
        frame.geometry.topTubeEffectiveMm = 398.0 + 587.0 / std::tan(Angle::degrees(73.5).rad());
        QVERIFY(std::abs(skeleton(frame).seatAngle.deg() - 73.5) < 1e-9);
    }

    void shouldSayWhatItAssumes()
    {
        QVERIFY(skeleton(fullFrame()).findings.size() >= 1);
        QVERIFY(!assumes(skeleton(fullFrame()), "fork_offset_mm"));
        FrameSize bare = fullFrame();
        bare.geometry.forkOffsetMm.reset();
        bare.geometry.bbDropMm.reset();
        const Skeleton s = skeleton(bare);
        QVERIFY(assumes(s, "fork_offset_mm") && assumes(s, "bb_drop_mm"));
        QCOMPARE(s.forkOffsetMm.origin, Origin::Assumed);
        QVERIFY(s.forkOffsetMm.sd > 0.0);
    }

    void shouldGiveTheSteeringTable_data()
    {
        QTest::addColumn<int>("index");
        const auto rows = reference("trail.csv");
        for (int i = 0; i < rows.size(); ++i)
            QTest::addRow("%s-%s, head %s", qPrintable(rows[i].text("tyre")),
                          qPrintable(rows[i].text("bead_seat")), qPrintable(rows[i].text("head")))
                << i;
    }
    void shouldGiveTheSteeringTable()
    {
        QFETCH(int, index);
        const ReferenceRow row = reference("trail.csv")[index];
        FrameSize frame = fullFrame();
        frame.geometry.headAngleDeg = row.number("head");
        frame.geometry.forkOffsetMm = row.number("offset");
        frame.wheel.beadSeatMm = row.number("bead_seat");
        test::mountingOn(frame).tyreMm = row.number("tyre");
        const Steering steering = steeringOf(skeleton(frame));
        QVERIFY(std::abs(steering.trailMm - row.number("trail")) <= 0.0051);
        QVERIFY(std::abs(steering.mechanicalTrailMm - row.number("mechanical")) <= 0.0051);
        QVERIFY(std::abs(steering.flopMm - row.number("flop")) <= 0.0051);
    }

    // Derived: on a tyre without width the pedal's edge touches at atan(height / out); a round tyre
    // only helps.
    void shouldStrikeThePedalByItsEdge()
    {
        FrameSize frame = fullFrame();
        frame.wheel.beadSeatMm = 660.0;
        test::mountingOn(frame).tyreMm = 0.0;
        const Skeleton thin = skeleton(frame);
        const double height = -thin.groundY() - 170.0;
        QVERIFY(
            std::abs(pedalStrikeLean(thin, 170.0, 125.0, 90.0).rad() - std::atan2(height, 170.0))
            < 1e-9);
        frame.wheel.beadSeatMm = 580.0;
        test::mountingOn(frame).tyreMm = 40.0; // the same radius
        const Skeleton round = skeleton(frame);
        QVERIFY(pedalStrikeLean(round, 170.0, 125.0, 90.0)
                > pedalStrikeLean(thin, 170.0, 125.0, 90.0));
        QVERIFY(pedalStrikeLean(round, 165.0, 125.0, 90.0)
                > pedalStrikeLean(round, 175.0, 125.0, 90.0));
    }

    void shouldNeverBeNanOnAnyTable()
    {
        std::mt19937 random(5);
        const auto between = [&random](double low, double high) {
            return std::uniform_real_distribution<double>(low, high)(random);
        };
        for (int i = 0; i < 5000; ++i) {
            FrameSize frame;
            Geometry& g = frame.geometry;
            g.stackMm = between(300, 900);
            g.reachMm = between(200, 650);
            g.headAngleDeg = between(55, 85);
            const auto maybe = [&](double low, double high) -> std::optional<double> {
                if (random() % 2)
                    return std::nullopt;
                return between(low, high);
            };
            g.seatAngleDeg = maybe(60, 85);
            g.topTubeEffectiveMm = maybe(350, 800);
            g.bbDropMm = maybe(-100, 150);
            if (random() % 2)
                g.chainstayMm = Range{300, between(300, 700)};
            g.wheelbaseMm = maybe(700, 1500);
            g.frontCentreMm = maybe(400, 900);
            g.forkLengthMm = maybe(250, 650);
            g.forkOffsetMm = maybe(0, 120);
            g.headTubeMm = maybe(40, 400);
            g.seatTubeMm = maybe(200, 900);
            const Skeleton s = skeleton(frame);
            QVERIFY(s.headTop.allFinite() && s.crown.allFinite() && s.frontAxle.allFinite()
                    && s.rearAxle.allFinite());
            QVERIFY(std::isfinite(steeringOf(s).trailMm));
        }
    }
};

QTEST_APPLESS_MAIN(TestSkeleton)
#include "tst_skeleton.moc"
