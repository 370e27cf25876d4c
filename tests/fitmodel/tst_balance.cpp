// SPDX-License-Identifier: MIT
#include "benchmark_bicycle.h"

#include "handling/balance.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

/// Two points and two wheels without mass: 80 kg at (400, 1100) and 20 kg at (600, 600), 1000
/// apart.
WhippleBicycle handBicycle()
{
    WhippleBicycle bicycle;
    bicycle.wheelbaseMm = 1000.0;
    bicycle.headAngle = Angle::degrees(72.0);
    bicycle.trailMm = 60.0;
    bicycle.gravityMmS2 = 9806.65;
    bicycle.rear = {80.0, Point(400.0, 1100.0), {}};
    bicycle.front = {20.0, Point(600.0, 600.0), {}};
    return bicycle;
}

SeatedRider seated(double trunkDeg, double armTrunkDeg)
{
    SeatedRider rider;
    rider.body = averageMan();
    rider.sex = Sex::Male;
    rider.foothold = calibrationFoothold();
    rider.crankMm = 170.0;
    rider.saddle = saddleForKnee(rider.body, tables().body, rider.foothold, rider.crankMm,
                                 Angle::degrees(36.0), -10.0);
    rider.gripHalfWidthMm = 230.0;
    rider.pedalLateralMm = 125.0;
    rider.windows =
        windowsFor(tables().comfort, Use::Touring, GripPlace::Flat, Flexibility::Ordinary);
    rider.windows.trunk.centre = Angle::degrees(trunkDeg);
    rider.windows.armTrunk.centre = Angle::degrees(armTrunkDeg);
    rider.grip =
        comfortableGrip(upperLimbs(rider.body, rider.gripHalfWidthMm),
                        midHip(rider.saddle.point(), rider.body, tables().body), rider.windows);
    return rider;
}

} // namespace

class TestBalance : public QObject {
    Q_OBJECT

private slots:
    // Derived: x = (80 * 400 + 20 * 600) / 100 = 440, y = (80 * 1100 + 20 * 600) / 100 = 1000.
    void shouldBalanceByHand()
    {
        const auto balance = balanceOf(handBicycle());
        QVERIFY(balance);
        QCOMPARE(balance->massKg, 100.0);
        QVERIFY((balance->centre - Point(440.0, 1000.0)).norm() < 1e-9);
        QVERIFY(std::abs(balance->frontShare() - 0.44) < 1e-12);
        // Level: (1000 - 440) / 1000 = 0.56 g. Down 3 in 4 (36.87 degrees: cos 0.8, sin 0.6):
        // 0.8 * 0.56 - 0.6 < 0, so the rear wheel lifts without any braking. Down 10 in 100.5
        // (sin 0.1, cos sqrt(0.99)): 0.99499 * 0.56 - 0.1 = 0.45719.
        QVERIFY(std::abs(pitchOverG(*balance) - 0.56) < 1e-12);
        QCOMPARE(pitchOverG(*balance, Angle::radians(std::asin(0.6))), 0.0);
        QVERIFY(std::abs(pitchOverG(*balance, Angle::radians(std::asin(0.1)))
                         - (std::sqrt(0.99) * 0.56 - 0.1))
                < 1e-12);
        // The line from the rear contact to the centre is upright at tan s = 440 / 1000; with the
        // peak of the drive twice its mean, 440 / 2000.
        QVERIFY(std::abs(std::tan(frontLiftsAtRest(*balance).rad()) - 0.44) < 1e-12);
        QVERIFY(std::abs(std::tan(frontLiftsUnderPedalling(*balance, 2.0).rad()) - 0.22) < 1e-12);
    }

    // Derived: 10 kg more at (-40, 500) make x = (44000 - 400) / 110 = 396.36.
    void shouldMoveBackWithLuggage()
    {
        WhippleBicycle bicycle = handBicycle();
        bicycle.rear = together(bicycle.rear, {10.0, Point(-40.0, 500.0), {}});
        const auto balance = balanceOf(bicycle);
        QVERIFY(std::abs(balance->centre.x() - 43600.0 / 110.0) < 1e-9);
        QVERIFY(frontLiftsAtRest(*balance) < frontLiftsAtRest(*balanceOf(handBicycle())));
    }

    // Derived from the benchmark's published parameters (Meijaard et al. 2007): x_T 0.342128 m,
    // z_T -0.861170 m, w 1.02 m give 0.787 g and 33.5 % in front.
    void shouldPitchTheBenchmarkOver()
    {
        const auto balance = balanceOf(benchmarkBicycle());
        QVERIFY(balance);
        QVERIFY(std::abs(balance->centre.x() - 342.127659574468) < 1e-9);
        QVERIFY(std::abs(balance->centre.y() - 861.170212765957) < 1e-9);
        QVERIFY(std::abs(pitchOverG(*balance) - 0.787) < 0.0005);
        QVERIFY(std::abs(balance->frontShare() - 0.335) < 0.0005);
    }

    void shouldRefuseWhatDoesNotStand()
    {
        QVERIFY(!balanceOf(WhippleBicycle()));
        WhippleBicycle flat = handBicycle();
        flat.rear.centre.y() = flat.front.centre.y() = 0.0;
        QVERIFY(!balanceOf(flat));
        WhippleBicycle odd = handBicycle();
        odd.rear.centre.x() = std::numeric_limits<double>::quiet_NaN();
        QVERIFY(!balanceOf(odd));
    }

    // Derived elsewhere with the same table (de Leva, man) and the same coarse hinge: share by
    // trunk and arm-trunk angles, printed to two decimals. Bodies differ a little, so 0.02.
    void shouldBoundTheHandsLoad_data()
    {
        QTest::addColumn<double>("trunk");
        QTest::addColumn<double>("armTrunk");
        QTest::addColumn<double>("share");
        const double rows[][3] = {{80, 45, 0.13}, {65, 60, 0.20}, {55, 75, 0.21},
                                  {48, 80, 0.23}, {42, 85, 0.24}, {35, 88, 0.26}};
        for (const auto& [trunk, armTrunk, share] : rows)
            QTest::addRow("%g/%g", trunk, armTrunk) << trunk << armTrunk << share;
    }
    void shouldBoundTheHandsLoad()
    {
        QFETCH(double, trunk);
        QFETCH(double, armTrunk);
        QFETCH(double, share);
        const auto bound =
            handsShareBound(seated(trunk, armTrunk), tables().body, tables().handling.segments);
        QVERIFY(bound);
        QVERIFY(std::abs(*bound - share) < 0.02);
    }

    void shouldGiveNoHandsLoadBehindTheHip()
    {
        SeatedRider rider = seated(50.0, 80.0);
        rider.grip = rider.saddle.point() - Point(200.0, 0.0);
        QVERIFY(!handsShareBound(rider, tables().body, tables().handling.segments));
    }

    // Saddle to the end of its rails, and the rider as far back on it as the table says.
    void shouldSitFullyBack()
    {
        const SeatedRider rider = seated(50.0, 80.0);
        const Angle tube = Angle::degrees(73.5);
        const double behind = behindTube(rider.saddle, tube);
        const SeatedRider back =
            fullyBack(rider, {behind - 30.0, behind + 20.0}, tube, tables().handling.balance);
        const Point moved = back.saddle.point() - rider.saddle.point();
        QVERIFY(std::abs(moved.x() + 20.0 + tables().handling.balance.riderBackOnSaddleMm) < 1e-9);
        QVERIFY(std::abs(moved.y()) < 1e-9);
        const double before =
            riderMass(rider, tables().body, tables().handling.segments).centre.x();
        QVERIFY(riderMass(back, tables().body, tables().handling.segments).centre.x() < before);
        // A saddle beyond its rails is not pulled forward.
        const SeatedRider beyond =
            fullyBack(rider, {behind - 60.0, behind - 40.0}, tube, tables().handling.balance);
        QVERIFY(beyond.saddle.point().x() < rider.saddle.point().x());
    }

    void shouldWeighTheSystem()
    {
        const auto balance = balanceOf(handBicycle());
        const SystemWeight over = systemWeight(*balance, 95.0);
        QVERIFY(over.leftKg && *over.leftKg == -5.0);
        QVERIFY(!systemWeight(*balance, std::nullopt).leftKg);
    }
};

QTEST_APPLESS_MAIN(TestBalance)
#include "tst_balance.moc"
