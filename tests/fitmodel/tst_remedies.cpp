// SPDX-License-Identifier: MIT
#include "toe_cases.h"

#include "handling/remedies.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

FrameSize sized(double stackMm, double reachMm)
{
    FrameSize frame;
    frame.geometry.stackMm = stackMm;
    frame.geometry.reachMm = reachMm;
    frame.geometry.headAngleDeg = 74.0;
    frame.geometry.seatAngleDeg = 73.5;
    frame.geometry.bbDropMm = 70.0;
    frame.geometry.forkOffsetMm = 45.0;
    frame.wheel.beadSeatMm = 622.0;
    test::mountingOn(frame).tyreMm = 40.0;
    frame.wheel.maxTyreMm = 42.0;
    test::mountingOn(frame).mudguard = Mudguard{};
    return frame;
}

const std::vector<FrameSize>& sizes()
{
    static const std::vector<FrameSize> all{sized(560.0, 380.0), sized(585.0, 392.0)};
    return all;
}

ToeSituation situation(std::size_t size)
{
    const Body body = bodyOf(Sex::Male, {{Quantity::Stature, {1750.0}, {}}});
    return {sizes()[size],
            body,
            body.footMm + 12.0,
            {calibrationFoothold(), 740.0 * upTube(Angle::degrees(73.5)), 170.0},
            125.0,
            90.0,
            12.0};
}

std::vector<ToeRemedy> remedies(const ToeSituation& of, std::size_t size)
{
    static const std::vector<double> cranks{160.0, 165.0, 170.0, 175.0};
    const HandlingTables& table = tables().handling;
    return toeRemedies(of, {sizes(), size, cranks, table.tyresMm, table.rims}, tables().frame,
                       table.toe);
}

const ToeRemedy* find(const std::vector<ToeRemedy>& all, RemedyKind kind)
{
    for (const ToeRemedy& one : all)
        if (one.kind == kind)
            return &one;
    return nullptr;
}

} // namespace

class TestRemedies : public QObject {
    Q_OBJECT

private slots:
    void shouldAllReduceTheOverlap()
    {
        const auto before = overlapOn(situation(0), tables().frame, tables().handling.toe);
        QVERIFY(before && before->overlapMm > 0.0);
        const auto all = remedies(situation(0), 0);
        QCOMPARE(all.size(), std::size_t{6});
        for (const ToeRemedy& remedy : all)
            QVERIFY(remedy.overlapMm && *remedy.overlapMm < before->overlapMm - 1.0);
    }

    // Derived: 37 for 40 mm lowers the axle's height by 3; 622 to 584 by 19; trail follows as
    // change of radius / tan(head angle).
    void shouldSayWhatElseAWheelChanges()
    {
        const auto all = remedies(situation(0), 0);
        const double perMm = 1.0 / std::tan(Angle::degrees(74.0).rad());
        const ToeRemedy* tyre = find(all, RemedyKind::NarrowerTyre);
        QVERIFY(tyre);
        QCOMPARE(tyre->to, 37.0);
        QVERIFY(std::abs(tyre->bbHigherMm + 3.0) < 1e-9);
        QVERIFY(std::abs(tyre->trailMoreMm + 3.0 * perMm) < 1e-9);
        QVERIFY(std::abs(tyre->development - 696.0 / 702.0) < 1e-12);
        const ToeRemedy* rim = find(all, RemedyKind::SmallerRim);
        QVERIFY(rim);
        QCOMPARE(rim->to, 584.0);
        QVERIFY(std::abs(rim->bbHigherMm + 19.0) < 1e-9);
        QVERIFY(std::abs(rim->trailMoreMm + 19.0 * perMm) < 1e-9);
        QVERIFY(rim->pedalLean < tyre->pedalLean);
        QCOMPARE(rim->leverage, 1.0);
    }

    void shouldSayWhatElseCranksAndSizesChange()
    {
        const auto all = remedies(situation(0), 0);
        const ToeRemedy* crank = find(all, RemedyKind::ShorterCrank);
        QVERIFY(crank);
        QCOMPARE(crank->to, 165.0);
        QVERIFY(std::abs(crank->leverage - 165.0 / 170.0) < 1e-12);
        QCOMPARE(crank->development, 1.0);
        QCOMPARE(crank->bbHigherMm, 0.0);
        const ToeRemedy* size = find(all, RemedyKind::NextSize);
        QVERIFY(size);
        QCOMPARE(size->to, 1.0);
        // Reach + 12 and stack + 25 over tan 74.
        QVERIFY(std::abs(size->wheelbaseMoreMm - 12.0 - 25.0 / std::tan(Angle::degrees(74.0).rad()))
                < 1e-9);
    }

    void shouldKeepTheMakersTyreLimit()
    {
        ToeSituation wide = situation(0);
        wide.frame.wheel.maxTyreMm = 35.0; // and 40 on it
        const std::vector<ToeRemedy> all = remedies(wide, 0);
        const ToeRemedy* rim = find(all, RemedyKind::SmallerRim);
        QVERIFY(rim);
        QVERIFY(std::abs(rim->bbHigherMm + 19.0 + 5.0) < 1e-9);
    }

    void shouldOfferOnlyWhatThereIs()
    {
        ToeSituation bare = situation(1);
        test::mountingOn(bare.frame).mudguard.reset();
        bare.frame.wheel.beadSeatMm = 305.0;
        test::mountingOn(bare.frame).tyreMm = 20.0;
        bare.pedalling.crankMm = 160.0;
        bare.ballAheadMm = 0.0;
        QVERIFY(remedies(bare, 1).empty());
    }
};

QTEST_APPLESS_MAIN(TestRemedies)
#include "tst_remedies.moc"
