// SPDX-License-Identifier: MIT
#include "support.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

class TestWindows : public QObject {
    Q_OBJECT

private slots:
    // Direction: Holliday & Swart 2021, Sports Med Health Sci 3:93; sizes common practice, no
    // source.
    void shouldRaiseTheTrunkOfTheStiff()
    {
        const auto trunk = [](Flexibility flexibility) {
            return windowsFor(tables().comfort, Use::Road, GripPlace::Hoods, flexibility)
                .trunk.centre.deg();
        };
        QVERIFY(std::abs(trunk(Flexibility::Stiff) - trunk(Flexibility::Ordinary) - 5.0) < 1e-9);
        QVERIFY(std::abs(trunk(Flexibility::Supple) - trunk(Flexibility::Ordinary) + 4.0) < 1e-9);
    }

    void shouldReadFlexibilityFromALegRaise_data()
    {
        QTest::addColumn<double>("raiseDeg");
        QTest::addColumn<int>("expected");
        QTest::newRow("under 60") << 55.0 << int(Flexibility::Stiff);
        QTest::newRow("60 to 80") << 70.0 << int(Flexibility::Ordinary);
        QTest::newRow("over 80") << 85.0 << int(Flexibility::Supple);
    }
    void shouldReadFlexibilityFromALegRaise()
    {
        QFETCH(double, raiseDeg);
        QFETCH(int, expected);
        Rider rider;
        rider.straightLegRaiseDeg = raiseDeg;
        QCOMPARE(int(flexibilityOf(tables().comfort, rider)), expected);
        rider.flexibility = Flexibility::Stiff; // what is stated counts
        QCOMPARE(flexibilityOf(tables().comfort, rider), Flexibility::Stiff);
    }

    // Common practice, no source.
    void shouldChooseCranksByInseam_data()
    {
        QTest::addColumn<double>("inseam");
        QTest::addColumn<double>("low");
        QTest::addColumn<double>("high");
        QTest::newRow("under 740") << 739.9 << 155.0 << 160.0;
        QTest::newRow("from 740") << 740.0 << 160.0 << 165.0;
        QTest::newRow("from 790") << 790.0 << 165.0 << 170.0;
        QTest::newRow("from 840") << 840.0 << 170.0 << 172.5;
        QTest::newRow("above 900") << 950.0 << 175.0 << 175.0;
    }
    void shouldChooseCranksByInseam()
    {
        QFETCH(double, inseam);
        QFETCH(double, low);
        QFETCH(double, high);
        const CrankBand band = crankBandFor(tables().comfort, inseam);
        QCOMPARE(band.lowMm, low);
        QCOMPARE(band.highMm, high);
    }

    // A pair without a row: the trunk of the use's own bar, the arms further out on a lower trunk.
    void shouldFallBackForUnlistedPairs()
    {
        const auto windows = [](Use use, GripPlace place) {
            return windowsFor(tables().comfort, use, place, Flexibility::Ordinary);
        };
        const UpperWindows listed = windows(Use::Commuting, GripPlace::Flat);
        const UpperWindows swept = windows(Use::Commuting, GripPlace::Swept);
        QCOMPARE(swept.trunk.centre, listed.trunk.centre);
        QVERIFY(windows(Use::Road, GripPlace::Flat).armTrunk.centre
                > windows(Use::City, GripPlace::Flat).armTrunk.centre);
        for (const Use use : allUses)
            for (const GripPlace place : allGripPlaces) {
                const UpperWindows each = windows(use, place);
                QVERIFY(each.trunk.centre.deg() > 25.0 && each.trunk.centre.deg() < 90.0);
                QVERIFY(each.armTrunk.centre.deg() > 40.0 && each.armTrunk.centre.deg() < 105.0);
            }
    }

    void shouldDivideTheTimeOnADropBar()
    {
        for (const Use use : allUses) {
            double sum = 0.0;
            for (const double share : tables().comfort.dropBarTime[indexOf(use)])
                sum += share;
            QVERIFY(std::abs(sum - 1.0) < 1e-12);
        }
    }
};

QTEST_APPLESS_MAIN(TestWindows)
#include "tst_windows.moc"
