// SPDX-License-Identifier: MIT
//
// A mix as it is set: always whole, the others in proportion.
#include "advice/mix.h"

#include <QTest>

#include <cmath>
#include <numeric>

using namespace tripoise;

class TestMix : public QObject {
    Q_OBJECT

private slots:
    void shouldShareOutInProportion()
    {
        Mix mix;
        mix.share[indexOf(Use::Touring)] = 0.6;
        mix.share[indexOf(Use::Road)] = 0.4;
        const Mix made = withShare(mix, Use::City, 0.5);
        QCOMPARE(made.of(Use::Touring), 0.3); // 0.6 and 0.4 of the other half
        QCOMPARE(made.of(Use::Road), 0.2);
    }

    void shouldGiveTheRestToEverydayRiding()
    {
        QCOMPARE(withShare(Mix{}, Use::City, 0.3).of(Use::Commuting), 0.7);
        QCOMPARE(withShare(Mix::only(Use::Commuting), Use::Commuting, 0.3).of(Use::City), 0.7);
    }

    void shouldHoldAShareWithinTheWhole()
    {
        const Mix before = mixOf(UsualMix::WorkAndAway);
        QVERIFY(withShare(before, Use::Road, 7.0) == Mix::only(Use::Road));
        QVERIFY(withShare(before, Use::Road, -1.0) == before);
    }

    void shouldLeaveNothingOver()
    {
        Mix thirds; // 33 1/3 each of what is left
        for (const Use use : {Use::Commuting, Use::Touring, Use::Gravel})
            thirds.share[indexOf(use)] = 1.0 / 3.0;
        for (int own = 0; own <= 100; ++own) {
            const Mix made = withShare(thirds, Use::City, own / 100.0);
            int percents = 0;
            for (const double share : made.share)
                percents += int(std::lround(100.0 * share));
            QCOMPARE(percents, 100);
        }
    }

    void shouldOfferWholeMixesThatDiffer()
    {
        for (std::size_t i = 0; i < allUsualMixes.size(); ++i) {
            const Mix mix = mixOf(allUsualMixes[i]);
            QCOMPARE(std::accumulate(mix.share.begin(), mix.share.end(), 0.0), 1.0);
            for (std::size_t j = 0; j < i; ++j)
                QVERIFY(mix != mixOf(allUsualMixes[j]));
        }
    }
};

QTEST_APPLESS_MAIN(TestMix)
#include "tst_mix.moc"
