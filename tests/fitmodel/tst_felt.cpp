// SPDX-License-Identifier: MIT
//
// Only what a rider notices is a reason for a size. Thresholds: common practice, no source
// (assets/weights.json, `felt`); each is held on both sides.
#include "random_brief.h"
#include "samples.h"
#include "support.h"

#include "advice/felt.h"
#include "advice/verdict.h"

#include <QTest>

#include <algorithm>
#include <cmath>
#include <tuple>

using namespace tripoise;
using namespace tripoise::advice;
using namespace tripoise::test;

namespace {

/// Two candidates of a demo, to be set apart.
struct Two {
    Fitting fitting = demoFitting();
    Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
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

/// Riders from 1,700 to 1,880 mm with longer and shorter legs, on the demo's two neighbouring
/// sizes, for two kinds of riding in turn.
Fitting between(int i)
{
    Fitting fitting = demoFitting();
    const double statureMm = 1700.0 + 180.0 * ((i * 0.618) - std::floor(i * 0.618));
    const double legs = 0.465 + 0.02 * ((i * 0.414) - std::floor(i * 0.414));
    for (Measurement& told : fitting.rider.measurements) {
        if (told.quantity == Quantity::Stature)
            told.readings = {statureMm};
        if (told.quantity == Quantity::Inseam)
            told.readings = {legs * statureMm};
    }
    const bool provisional = i % 5 == 4; // without the inseam
    std::erase_if(fitting.rider.measurements, [&](const Measurement& told) {
        return told.quantity != Quantity::Stature
               && (told.quantity != Quantity::Inseam || provisional);
    });
    fitting.riding.mix = i % 2 ? Mix::only(Use::Touring) : Mix::only(Use::FastCommuting);
    fitting.riding.footRetention = i % 3 == 0;
    return fitting;
}

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
        row("a knee less off", Consideration::Setback, 9.0, 4.1, 4.0);
        row("stem", Consideration::StemLength, 90.0, 80.5, 80.0);
        row("spacers", Consideration::Spacers, 15.0, 24.5, 25.0);
        row("steeper stem", Consideration::StemAngle, 6.0, 15.9, 16.0);
        row("standing room", Consideration::Standover, 70.0, 50.5, 50.0);
        row("standing room, none left", Consideration::Standover, 5.0, 0.5, -0.5);
        row("standing room, less than is easy", Consideration::Standover, 30.0, 25.5, 24.5);
        row("standing room, just none", Consideration::Standover, 5.0, 0.0, -0.1);
        row("standing room, just easy", Consideration::Standover, 30.0, 25.0, 24.9);
        row("standing room, just easy on this", Consideration::Standover, 25.0, 30.0, 24.9);
        row("standing room, easy on the other", Consideration::Standover, 24.0, 24.9, 25.0);
        row("standing room, some on the other", Consideration::Standover, -1.0, -0.1, 0.0);
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
        QVERIFY(two.felt(Consideration::Posture, 2.0, 3.0));
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
        two.steering(-20.0, 0.0); // and a steadier one
        QVERIFY(two.felt(Consideration::Agility, 0.0, 0.0));
        two.steering(-1.0, -8.0);
        QVERIFY(two.felt(Consideration::Agility, 0.0, 0.0));
        two.steering(-20.0, 8.0);
        QVERIFY(!two.felt(Consideration::Agility, 0.0, 0.0));
    }

    void shouldAskForStandoverOnBoth()
    {
        for (const bool named : {true, false}) {
            Two two;
            QVERIFY(two.felt(Consideration::Standover, 70.0, 10.0));
            (named ? two.namedSize : two.otherSize).skeleton.standoverMm.reset();
            QVERIFY(!two.felt(Consideration::Standover, 70.0, 10.0));
        }
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
        QVERIFY(!felt(-60.0, -20.0)); // clear by just enough
        QVERIFY(felt(-60.0, -19.9));
        QVERIFY(!felt(-19.0, 0.0)); // comes to the wheel, and does not meet it
        QVERIFY(felt(-19.0, 0.1));
        // Where neither meets it, no figure of what is to be expected is felt.
        two.shoes(-19.0, -1.0);
        QVERIFY(!two.felt(Consideration::ToeOverlap, 0.0, 15.0));
        two.named.ride->toe.reset(); // it passes beside the wheel: as clear as can be
        two.other.ride->toe->overlapMm = -60.0;
        QVERIFY(!two.felt(Consideration::ToeOverlap, 0.0, 0.0));
        two.other.ride->toe->overlapMm = 1.0;
        QVERIFY(two.felt(Consideration::ToeOverlap, 0.0, 1.0));
    }

    // Flat pedals let the foot go further forward: the shoe is clear from further off.
    void shouldAskForMoreRoomOnFlatPedals()
    {
        Two two;
        const WeightTable& weights = tables().weights;
        two.shoes(-60.0, -0.5 * (weights.toeRoomMm + weights.toeRoomFlatMm));
        LedgerEntry& toe = two.other.best->ledger[indexOf(Consideration::ToeOverlap)];
        toe.points = two.named.best->ledger[indexOf(Consideration::ToeOverlap)].points + 0.1;
        for (const bool held : {true, false}) {
            Riding riding = two.fitting.riding;
            riding.footRetention = held;
            const std::vector<Reason> costs =
                costsOf(two.other, two.named, {two.advice.person, riding, two.prepared, tables()});
            const bool told = std::any_of(costs.begin(), costs.end(), [](const Reason& cost) {
                return cost.consideration == Consideration::ToeOverlap;
            });
            QCOMPARE(told, !held);
        }
    }

    void shouldCompareWithNothingThatCarriesNoCockpit()
    {
        Two two;
        two.other.best.reset();
        std::vector<SizeSearch> none;
        const Verdict verdict =
            verdictOf({two.named, two.other}, none,
                      {two.advice.person, two.fitting.riding, two.prepared, tables()});
        QVERIFY(verdict.named && !verdict.other);
        QCOMPARE(verdict.kind, VerdictKind::Clear);
    }

    void shouldNeverNameASizeForWhatCanBeExchanged()
    {
        const Two two;
        QVERIFY(!two.felt(Consideration::ExposedPost, 100.0, 300.0));
        QVERIFY(!two.felt(Consideration::BarWidth, 420.0, 640.0));
    }

    void shouldAlwaysTellWhatIsSeenAtOnce()
    {
        const Two two;
        for (const Consideration one : {Consideration::Tidiness, Consideration::ToOrder,
                                        Consideration::Crank, Consideration::RiderHeight})
            QVERIFY(two.felt(one, 1.0, 1.5));
    }

    // Derived from the two ledgers anew: each consideration that decides something and is felt, on
    // the side it speaks for, strongest first; and how sure that makes the verdict.
    void shouldTellAllThatIsFelt()
    {
        int compared = 0;
        std::array<int, 3> kinds{};
        RandomBriefs briefs(74);
        for (int i = 0; i < 200; ++i) {
            Fitting brief = between(i);
            if (i % 2) { // and whatever else there is
                const RandomBrief random = briefs.next();
                brief.rider = random.rider;
                brief.riding = random.riding;
                brief.frames = random.frames;
                brief.stock = random.stock;
            }
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, tables());
            const Advice advice = advise(brief.rider, brief.riding, {}, prepared, tables());
            const Verdict& verdict = advice.verdict;
            if (!advice.solved || !verdict.named || !verdict.other)
                continue;
            const WeightTable& weights = tables().weights;
            const double room =
                brief.riding.footRetention ? weights.toeRoomMm : weights.toeRoomFlatMm;
            for (std::size_t k = 1; k < advice.candidates.size(); ++k) {
                const Candidate& named = advice.candidates[0];
                const Candidate& other = advice.candidates[k];
                if (!other.best) {
                    QVERIFY(other.costs.empty());
                    continue;
                }
                const Pair pair{named, other, prepared.sizes[named.size],
                                prepared.sizes[other.size], room};
                std::vector<Reason> expected, givenUp;
                for (std::size_t c = 0; c < considerationCount; ++c) {
                    const LedgerEntry& mine = named.best->ledger[c];
                    const LedgerEntry& theirs = other.best->ledger[c];
                    const Reason reason{static_cast<Consideration>(c), mine.value, theirs.value,
                                        theirs.points - mine.points,
                                        mine.points < 1e-6 || theirs.points < 1e-6};
                    if (!advice::felt(reason, pair, weights.felt))
                        continue;
                    if (reason.gain >= 0.01)
                        expected.push_back(reason);
                    else if (reason.gain <= -0.01)
                        givenUp.push_back(reason);
                }
                const auto alike = [](std::vector<Reason> a, const std::vector<Reason>& b) {
                    std::stable_sort(a.begin(), a.end(), [](const Reason& x, const Reason& y) {
                        return std::abs(x.gain) > std::abs(y.gain);
                    });
                    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                                      [](const Reason& x, const Reason& y) {
                                          return x.consideration == y.consideration
                                                 && x.gain == y.gain && x.named == y.named
                                                 && x.other == y.other
                                                 && x.faultless == y.faultless;
                                      });
                };
                QVERIFY(alike(expected, other.costs));
                if (k != *verdict.other)
                    continue;
                ++compared;
                QVERIFY(alike(expected, verdict.reasons));
                const bool sameClass = classOf(other.fit.state) == classOf(named.fit.state);
                QVERIFY(alike(sameClass ? givenUp : std::vector<Reason>(), verdict.givenUp));
                if (!sameClass) {
                    QCOMPARE(verdict.lead, 0.0);
                    QVERIFY(verdict.tilts.empty());
                    QVERIFY(verdict.kind == VerdictKind::Clear || advice.person.provisional);
                    continue;
                }
                QCOMPARE(verdict.lead, other.best->points - named.best->points);
                const VerdictKind kind =
                    verdict.lead < weights.eitherBelow || expected.empty() ? VerdictKind::Either
                    : !verdict.tilts.empty() || verdict.lead < weights.clearFrom
                            || advice.person.provisional
                        ? VerdictKind::Slight
                        : VerdictKind::Clear;
                QCOMPARE(verdict.kind, kind);
                ++kinds[static_cast<std::size_t>(kind)];
            }
        }
        qInfo("%d compared, %d %d %d", compared, kinds[0], kinds[1], kinds[2]);
        QVERIFY(compared > 40);
        for (const int count : kinds)
            QVERIFY(count > 1);
    }

    // The thresholds themselves belong to the surer side.
    void shouldNameASizeFromItsLeadOn()
    {
        int slight = 0, clear = 0;
        for (int i = 0; i < samples(120); ++i) {
            const Fitting brief = between(i);
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, tables());
            const Advice first = advise(brief.rider, brief.riding, {}, prepared, tables());
            const Verdict& verdict = first.verdict;
            if (!first.solved || verdict.lead <= 0.0 || verdict.reasons.empty())
                continue;
            const auto kindWith = [&](double eitherBelow, double clearFrom) {
                Tables other = tables();
                other.weights.eitherBelow = eitherBelow;
                other.weights.clearFrom = clearFrom;
                return advise(brief.rider, brief.riding, {}, prepared, other).verdict.kind;
            };
            const double more = std::nextafter(verdict.lead, 10.0);
            QVERIFY(kindWith(verdict.lead, more) == VerdictKind::Slight);
            QVERIFY(kindWith(more, more) == VerdictKind::Either);
            ++slight;
            if (first.person.provisional || !verdict.tilts.empty()
                || verdict.kind == VerdictKind::Either)
                continue; // tilts are sought where a size is named
            QVERIFY(kindWith(0.0, verdict.lead) == VerdictKind::Clear);
            ++clear;
        }
        qInfo("%d %d", slight, clear);
        QVERIFY(slight > samples(15) && clear > samples(2));
    }

    // Each unsourced weight halved and doubled, decided anew: what then names another size of the
    // class is what would change it.
    void shouldFindTheWeightsThatWouldChangeIt()
    {
        Tables base = tables();
        base.weights.eitherBelow = 0.0; // so that close ones are named as well
        base.weights.clearFrom = 0.0;   // and only the weights make one slight
        int tilted = 0;
        for (int i = 0; i < 60; ++i) {
            const Fitting brief = between(i);
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, base);
            const Advice advice = advise(brief.rider, brief.riding, {}, prepared, base);
            const Verdict& verdict = advice.verdict;
            if (!advice.solved || !verdict.other || !verdict.named
                || verdict.kind == VerdictKind::Either
                || classOf(advice.candidates[1].fit.state)
                       != classOf(advice.candidates[0].fit.state))
                continue;
            std::vector<std::tuple<Consideration, double, std::size_t>> expected, found;
            for (const Tilt& tilt : verdict.tilts)
                found.emplace_back(tilt.consideration, tilt.factor,
                                   advice.candidates[tilt.towards].size);
            for (std::size_t c = 0; c < considerationCount; ++c)
                for (const double factor : {0.5, 2.0}) {
                    if (!base.weights.unsourced[c])
                        continue;
                    Tables other = base;
                    other.weights.points[c] *= factor;
                    const Advice again = advise(brief.rider, brief.riding, {}, prepared, other);
                    if (again.candidates[0].size != advice.candidates[0].size)
                        expected.emplace_back(static_cast<Consideration>(c), factor,
                                              again.candidates[0].size);
                }
            QVERIFY(found == expected);
            QCOMPARE(verdict.kind, found.empty() && !advice.person.provisional
                                       ? VerdictKind::Clear
                                       : VerdictKind::Slight);
            tilted += found.empty() ? 0 : 1;
        }
        qInfo("%d", tilted);
        QVERIFY(tilted > 1);
    }

    void shouldBeAsSureAsItsReasons()
    {
        RandomBriefs briefs(71);
        std::array<int, 4> kinds{};
        for (int i = 0; i < 400; ++i) {
            const RandomBrief brief = briefs.next();
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, tables());
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
            QVERIFY2(count > 3, qPrintable(QString::number(count)));
    }

    // The hands are where they were: the other size's own arithmetic, with the parts it says.
    void shouldSayWhatItTakesToSitTheSame()
    {
        RandomBriefs briefs(72);
        int compared = 0;
        for (int i = 0; i < samples(100); ++i) {
            const RandomBrief brief = briefs.next();
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, tables());
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
