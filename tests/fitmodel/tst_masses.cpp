// SPDX-License-Identifier: MIT
#include "support.h"

#include "handling/masses.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

const HandlingTables& handling()
{
    return tables().handling;
}

SeatedRider seated(const Body& body, std::optional<Sex> sex)
{
    SeatedRider rider;
    rider.body = body;
    rider.sex = sex;
    rider.foothold = calibrationFoothold();
    rider.crankMm = 170.0;
    rider.saddle = saddleForKnee(body, tables().body, rider.foothold, rider.crankMm,
                                 Angle::degrees(36.0), -10.0);
    rider.gripHalfWidthMm = 245.0;
    rider.pedalLateralMm = tables().parts.pedalLateralMm;
    rider.windows =
        windowsFor(tables().comfort, Use::FastCommuting, GripPlace::Flat, Flexibility::Ordinary);
    rider.grip =
        comfortableGrip(upperLimbs(body, rider.gripHalfWidthMm),
                        midHip(rider.saddle.point(), rider.body, tables().body), rider.windows);
    return rider;
}

Skeleton ordinary()
{
    FrameSize frame;
    frame.geometry.stackMm = 585.0;
    frame.geometry.reachMm = 396.0;
    frame.geometry.headAngleDeg = 71.5;
    frame.geometry.seatAngleDeg = 73.5;
    frame.geometry.seatTubeMm = 490.0;
    frame.geometry.chainstayMm = Range{435.0, 435.0};
    frame.geometry.bbDropMm = 70.0;
    frame.geometry.forkOffsetMm = 47.0;
    return skeletonOf(frame, tables().frame);
}

WhippleBicycle loaded(const SeatedRider& rider, const Bags& bags)
{
    Setup setup;
    setup.saddle = rider.saddle;
    setup.crankMm = rider.crankMm;
    setup.grip = rider.grip;
    setup.clamp = rider.grip + Point(28.0, -10.0);
    return loadedBicycle(ordinary(), setup, rider.gripHalfWidthMm,
                         riderMass(rider, tables().body, handling().segments), bags,
                         handling().bicycle, handling().carriers);
}

} // namespace

class TestMasses : public QObject {
    Q_OBJECT

private slots:
    // Published: de Leva 1996; shares printed to four decimals, so twelve of them sum to 1 within
    // 12 half-units of the last.
    void shouldSumToAWholeBody()
    {
        QVERIFY(std::abs(handling().segments.male.sum() - 1.0) < 6e-4);
        QVERIFY(std::abs(handling().segments.female.sum() - 1.0) < 6e-4);
        for (const auto& sex :
             {std::optional(Sex::Female), std::optional(Sex::Male), std::optional<Sex>()})
            QVERIFY(std::abs(rowsFor(handling().segments, sex).sum() - 1.0) < 1e-12);
        double bicycle = 0.0;
        for (const double share : handling().bicycle.share)
            bicycle += share;
        QVERIFY(std::abs(bicycle - 1.0) < 1e-12);
    }

    void shouldTakeTheMeanWhereSexIsNotStated()
    {
        const SegmentRows rows = rowsFor(handling().segments, std::nullopt);
        const double trunk = 0.5 * (0.4257 + 0.4346) / (0.5 * (0.9999 + 1.0));
        QVERIFY(std::abs(rows.of(Segment::Trunk).mass - trunk) < 1e-4);
        QVERIFY(std::abs(rows.of(Segment::Trunk).centre - 0.5 * (0.3782 + 0.4310)) < 1e-9);
    }

    void shouldCarryTheWholeRider()
    {
        for (const Sex sex : {Sex::Female, Sex::Male}) {
            const SeatedRider rider = seated(sex == Sex::Male ? averageMan() : averageWoman(), sex);
            const RigidBody mass = riderMass(rider, tables().body, handling().segments);
            QVERIFY(std::abs(mass.massKg - rider.body.massKg) < 1e-9);
            // Between saddle and grip, a hand's breadth to a forearm's length above the saddle
            // point.
            const Point fromSaddle = mass.centre - rider.saddle.point();
            QVERIFY(fromSaddle.x() > 50.0 && fromSaddle.x() < 300.0);
            QVERIFY(fromSaddle.y() > 50.0 && fromSaddle.y() < 300.0);
        }
    }

    // Derived: a body cannot resist turning about one axis more than about the other two together,
    // and its product is bounded by the mean of the two in its plane.
    void shouldBeAPossibleBody()
    {
        const RigidBody mass =
            riderMass(seated(averageMan(), Sex::Male), tables().body, handling().segments);
        const Inertia& i = mass.inertia;
        QVERIFY(i.xx > 0.0 && i.yy > 0.0 && i.zz > 0.0);
        QVERIFY(i.xx < i.yy + i.zz && i.yy < i.xx + i.zz && i.zz < i.xx + i.yy);
        QVERIFY(i.xy * i.xy < i.xx * i.yy);
        // A rider leans forward: what is higher is further forward.
        QVERIFY(i.xy > 0.0);
        // Seated adults measure about 8 to 12 kg m^2 in roll (the benchmark bicycle's body, 85 kg
        // with the frame, has 9.2): the right order, no more.
        QVERIFY(i.xx > 4e6 && i.xx < 16e6);
    }

    // Moving both legs by half a turn exchanges them.
    void shouldNotKnowLeftFromRight()
    {
        const SeatedRider rider = seated(averageMan(), Sex::Male);
        const auto at = [&](double degrees) {
            return legsOf(rider, tables().body, handling().segments, Angle::degrees(degrees));
        };
        QVERIFY((at(0.0).centre - at(180.0).centre).norm() < 1e-9);
        QVERIFY(std::abs(at(30.0).inertia.xx - at(210.0).inertia.xx) < 1e-3);
    }

    void shouldLeanFurtherForwardOverALowerBar()
    {
        SeatedRider rider = seated(averageMan(), Sex::Male);
        const double before = upperBodyOf(rider, tables().body, handling().segments).centre.x();
        rider.grip += Point(30.0, -60.0);
        QVERIFY(upperBodyOf(rider, tables().body, handling().segments).centre.x() > before + 10.0);
    }

    // Everything is put on once: rider, bicycle, bags.
    void shouldWeighWhatItCarries()
    {
        const SeatedRider rider = seated(averageMan(), Sex::Male);
        const WhippleBicycle bicycle = loaded(rider, {3.0, 8.0});
        const double total = bicycle.rear.massKg + bicycle.front.massKg + bicycle.rearWheel.massKg
                             + bicycle.frontWheel.massKg;
        QVERIFY(std::abs(total - rider.body.massKg - tables().frame.bicycleMassKg - 11.0) < 1e-9);
        const WhippleBicycle bare = loaded(rider, {});
        QVERIFY(std::abs(bicycle.front.massKg - bare.front.massKg - 3.0) < 1e-9);
        QVERIFY(std::abs(bicycle.rear.massKg - bare.rear.massKg - 8.0) < 1e-9);
    }

    // Derived: adding 8 kg moves the rear body's centre by 8 / (m + 8) of the way to the bags.
    void shouldPutBagsWhereCarriersHoldThem()
    {
        const SeatedRider rider = seated(averageMan(), Sex::Male);
        const RigidBody bare = loaded(rider, {}).rear;
        const RigidBody with = loaded(rider, {0.0, 8.0}).rear;
        const Point axle(0.0, ordinary().wheelRadiusMm);
        const Carrier& carrier = handling().carriers.rear;
        const Point bags = axle + Point(carrier.aheadMm, carrier.aboveMm);
        const Point expected = bare.centre + 8.0 / (bare.massKg + 8.0) * (bags - bare.centre);
        QVERIFY((with.centre - expected).norm() < 1e-9);
    }

    // An ordinary bicycle of this kind has a weave speed somewhere between walking and fast riding;
    // snapshot limits, wide.
    void shouldMakeABicycleOfTheModel()
    {
        const auto model = whippleModel(loaded(seated(averageMan(), Sex::Male), {}));
        QVERIFY(model);
        const SelfStability found = selfStability(*model);
        QVERIFY(found.weaveMmS);
        qInfo("weave %.2f m/s, capsize %.2f m/s", *found.weaveMmS / 1e3,
              found.capsizeMmS.value_or(0.0) / 1e3);
        QVERIFY(*found.weaveMmS > 2'000.0 && *found.weaveMmS < 12'000.0);
    }
};

QTEST_APPLESS_MAIN(TestMasses)
#include "tst_masses.moc"
