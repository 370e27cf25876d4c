// SPDX-License-Identifier: MIT
//
// Only what a rider notices is a reason for a size. Thresholds: common practice, no source
// (assets/weights.json, `felt`); each is held on both sides.
#include "random_brief.h"
#include "samples.h"
#include "support.h"

#include "advice/felt.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::advice;
using namespace tripoise::test;

namespace {

/// Two candidates of a demo, to be set apart.
struct Two {
    Fitting fitting = demoFitting();
    Prepared prepared = prepare(fitting.frames, fitting.stock, tables());
    Advice advice = advise(fitting.rider, fitting.riding, {}, prepared, tables());
    Candidate named = advice.candidates[0];
    Candidate other = advice.candidates[1];
    PreparedSize namedSize = prepared.sizes[named.size];
    PreparedSize otherSize = prepared.sizes[other.size];

    [[nodiscard]] bool felt(Consideration consideration, double mine, double theirs,
                            double gain = 0.1) const
    {
        return advice::felt({consideration, mine, theirs, gain},
                            {named, other, namedSize, otherSize, tables().weights.toeRoomFlatMm},
                            tables().weights.felt);
    }
    void handsApart(double byMm)
    {
        other.best->setup.grip = named.best->setup.grip + Point(0.0, byMm);
    }
    void steering(double wheelbaseMm, double trailMm)
    {
        namedSize.steering.wheelbaseMm = otherSize.steering.wheelbaseMm - wheelbaseMm;
        namedSize.steering.trailMm = otherSize.steering.trailMm - trailMm;
    }
    void shoes(double mineOverlapMm, double theirsOverlapMm)
    {
        named.ride->toe->overlapMm = mineOverlapMm;
        other.ride->toe->overlapMm = theirsOverlapMm;
    }
};

} // namespace

class TestFelt : public QObject {
    Q_OBJECT

private slots:
    void shouldBeginWhereARiderNotices_data()
    {
        QTest::addColumn<int>("consideration");
        QTest::addColumn<double>("mine");
        QTest::addColumn<double>("little");
        QTest::addColumn<double>("enough");
        const auto row = [](const char* name, Consideration consideration, double mine,
                            double little, double enough) {
            QTest::newRow(name) << int(consideration) << mine << little << enough;
        };
        row("a knee further off", Consideration::Setback, 2.0, 6.9, 7.0);
        row("a knee off the other way", Consideration::Setback, 2.0, -6.9, -7.0);
        row("stem", Consideration::StemLength, 90.0, 80.5, 80.0);
        row("spacers", Consideration::Spacers, 15.0, 24.5, 25.0);
        row("steeper stem", Consideration::StemAngle, 6.0, 15.9, 16.0);
        row("standing room", Consideration::Standover, 70.0, 50.5, 50.0);
        row("standing room, none left", Consideration::Standover, 5.0, 0.5, -0.5);
        row("standing room, less than is easy", Consideration::Standover, 30.0, 25.5, 24.5);
        row("bulk", Consideration::Compactness, 980.0, 1009.0, 1010.0);
        row("ways to move the bar", Consideration::Adjustment, 3.0, 2.1, 2.0);
    }
    void shouldBeginWhereARiderNotices()
    {
        QFETCH(int, consideration);
        QFETCH(double, mine);
        QFETCH(double, little);
        QFETCH(double, enough);
        const Two two;
        QVERIFY(!two.felt(static_cast<Consideration>(consideration), mine, little));
        QVERIFY(two.felt(static_cast<Consideration>(consideration), mine, enough));
    }

    void shouldAskTheHandsThemselves()
    {
        Two two;
        two.handsApart(9.9);
        QVERIFY(!two.felt(Consideration::Posture, 2.0, 8.0));
        two.handsApart(10.0);
        QVERIFY(two.felt(Consideration::Posture, 2.0, 8.0));
        QVERIFY(!two.felt(Consideration::Posture, 2.0, 2.9)); // two figures alike
        QVERIFY(!two.felt(Consideration::Posture, 8.0, 2.0)); // what is easier lies further off
        QVERIFY(two.felt(Consideration::Posture, 8.0, 2.0, -0.1));
    }

    void shouldCallABikeQuickerOnlyWhereWheelbaseAndTrailAgree()
    {
        Two two;
        two.steering(19.9, 0.0);
        QVERIFY(!two.felt(Consideration::Agility, 0.0, 0.0));
        two.steering(20.0, 0.0);
        QVERIFY(two.felt(Consideration::Agility, 0.0, 0.0));
        two.steering(20.0, -1.0);
        QVERIFY(!two.felt(Consideration::Agility, 0.0, 0.0));
        two.steering(1.0, 7.9);
        QVERIFY(!two.felt(Consideration::Agility, 0.0, 0.0));
        two.steering(1.0, 8.0);
        QVERIFY(two.felt(Consideration::Agility, 0.0, 0.0));
    }

    void shouldCountAShoeByWhatItDoesAtTheWheel()
    {
        Two two;
        const auto felt = [&two](double mine, double theirs) {
            two.shoes(mine, theirs);
            return two.felt(Consideration::ToeOverlap, std::max(0.0, mine), std::max(0.0, theirs));
        };
        QVERIFY(!felt(-60.0, -21.0)); // both clear
        QVERIFY(felt(-60.0, -19.0));  // the other may touch
        QVERIFY(!felt(-19.0, -1.0));
        QVERIFY(felt(-19.0, 1.0)); // the other does
        QVERIFY(!felt(3.0, 12.9));
        QVERIFY(felt(3.0, 13.0));
    }

    void shouldNeverNameASizeForWhatCanBeExchanged()
    {
        const Two two;
        QVERIFY(!two.felt(Consideration::ExposedPost, 100.0, 300.0));
        QVERIFY(!two.felt(Consideration::BarWidth, 420.0, 640.0));
    }

    void shouldBeAsSureAsItsReasons()
    {
        RandomBriefs briefs(71);
        std::array<int, 4> kinds{};
        for (int i = 0; i < samples(400); ++i) {
            const RandomBrief brief = briefs.next();
            const Prepared prepared = prepare(brief.frames, brief.stock, tables());
            const Advice advice = advise(brief.rider, brief.riding, {}, prepared, tables());
            if (!advice.solved)
                continue;
            const Verdict& verdict = advice.verdict;
            ++kinds[static_cast<std::size_t>(verdict.kind)];
            if (!verdict.other || !verdict.named || classOf(advice.candidates[1].fit.state) > 0)
                continue;
            switch (verdict.kind) {
            case VerdictKind::Clear:
                QVERIFY(verdict.lead >= tables().weights.clearFrom);
                QVERIFY(!verdict.reasons.empty());
                break;
            case VerdictKind::Slight:
                QVERIFY(verdict.lead >= tables().weights.eitherBelow);
                QVERIFY(!verdict.reasons.empty());
                break;
            case VerdictKind::Either:
                QVERIFY(verdict.lead < tables().weights.eitherBelow || verdict.reasons.empty());
                break;
            case VerdictKind::None: QFAIL("a size is named"); break;
            }
            for (const Reason& reason : verdict.reasons)
                QVERIFY(reason.gain > 0.0);
            for (const Reason& reason : verdict.givenUp)
                QVERIFY(reason.gain < 0.0);
        }
        for (const int count : kinds)
            QVERIFY2(count > samples(3), qPrintable(QString::number(count)));
    }

    // The hands are where they were: the other size's own arithmetic, with the parts it says.
    void shouldSayWhatItTakesToSitTheSame()
    {
        RandomBriefs briefs(72);
        int compared = 0;
        for (int i = 0; i < samples(100); ++i) {
            const RandomBrief brief = briefs.next();
            const Prepared prepared = prepare(brief.frames, brief.stock, tables());
            const Advice advice = advise(brief.rider, brief.riding, {}, prepared, tables());
            if (!advice.solved || !advice.verdict.other
                || !advice.candidates[*advice.verdict.other].best)
                continue;
            const Setup& setup = advice.leading().best->setup;
            const SameSeat& same = advice.verdict.contrast.same;
            Stem stem = setup.stem;
            stem.lengthMm += same.stemLongerMm;
            const Candidate& other = advice.candidates[*advice.verdict.other];
            const Point clamp = clampCentre(
                prepared.sizes[other.size].skeleton, stem,
                setup.cockpit.spacersMm + same.spacersMoreMm - same.lowerMm, tables().parts);
            QVERIFY((clamp - setup.clamp).norm() < 1e-6);
            QVERIFY(same.lowerMm == 0.0 || setup.cockpit.spacersMm + same.spacersMoreMm == 0.0);
            ++compared;
        }
        QVERIFY(compared > samples(30));
    }
};

QTEST_APPLESS_MAIN(TestFelt)
#include "tst_felt.moc"
