// SPDX-License-Identifier: MIT
#include "support.h"

#include "advice/assess.h"
#include "advice/first_answer.h"
#include "random_brief.h"
#include "samples.h"

#include <QTest>

#include <algorithm>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Decided {
    Fitting fitting;
    Prepared prepared;
    Advice advice;

    [[nodiscard]] std::string named() const { return size(*advice.verdict.named); }
    [[nodiscard]] std::string size(std::size_t candidate) const
    {
        return prepared.sizes[advice.candidates[candidate].size].frame.size;
    }
    [[nodiscard]] const Candidate& candidate(const std::string& wanted) const
    {
        for (std::size_t i = 0; i < advice.candidates.size(); ++i)
            if (size(i) == wanted)
                return advice.candidates[i];
        throw std::runtime_error("no size " + wanted);
    }
};

Decided decided(const Fitting& fitting)
{
    Decided result{fitting, prepare(fitting.frames, fitting.bicycle, fitting.stock, tables()), {}};
    result.advice = advise(fitting.rider, fitting.riding, fitting.current, result.prepared,
                           tables(), {}, fitting.choices.position);
    return result;
}

Decided decidedFor(const char* name, const Mix& mix)
{
    Fitting fitting = demoFitting(name);
    fitting.riding.mix = mix;
    return decided(fitting);
}

} // namespace

class TestAdvise : public QObject {
    Q_OBJECT

private slots:
    // Common practice, no source: a rider of 1.79 m between two sizes is well served by the smaller
    // for agile commuting, and by the larger with a shorter stem for long trips; by little: nothing
    // that these two differ in is noticed.
    void shouldKnowTheTradesFact()
    {
        const Decided agile = decidedFor("between-two-sizes", Mix::only(Use::FastCommuting));
        QCOMPARE(agile.named(), std::string("M"));
        const Decided far = decidedFor("between-two-sizes", Mix::only(Use::Touring));
        QCOMPARE(far.named(), std::string("L"));
        QVERIFY(far.candidate("L").best->setup.stem.lengthMm
                < agile.candidate("M").best->setup.stem.lengthMm);
    }

    // Common practice, no source: on a frame the trade would call ordinary for a use, the average
    // man is advised the ordinary set-up: within a step of stem and one of spacers.
    void shouldAdviseTheOrdinarySetupToTheAverageMan_data()
    {
        QTest::addColumn<int>("index");
        const auto rows = reference("calibration.csv");
        for (int i = 0; i < rows.size(); ++i)
            if (!rows[i].text("expected_trunk").isEmpty())
                QTest::addRow("%s, %s", qPrintable(rows[i].text("use")),
                              qPrintable(rows[i].text("grip")))
                    << i;
    }
    void shouldAdviseTheOrdinarySetupToTheAverageMan()
    {
        QFETCH(int, index);
        const ReferenceRow row = reference("calibration.csv")[index];
        Fitting fitting;
        fitting.rider.sex = Sex::Male;
        fitting.rider.measurements = {{Quantity::Stature, {1756.0}, {}},
                                      {Quantity::Inseam, {846.0}, {}}};
        fitting.riding.mix = Mix::only(*useFromKey(row.text("use").toStdString()));
        FrameSize frame;
        frame.geometry.stackMm = row.number("stack");
        frame.geometry.reachMm = row.number("reach");
        frame.geometry.headAngleDeg = row.number("head");
        frame.geometry.seatAngleDeg = row.number("seat");
        frame.headset.upperMm = 15.0;
        frame.headset.maxSpacersMm = 40.0;
        fitting.frames = {frame};
        for (double length = 50.0; length <= 130.0; length += 10.0) {
            for (const double angle : {6.0, 17.0}) {
                Stem stem;
                stem.lengthMm = length;
                stem.angle = Angle::degrees(angle);
                fitting.stock.stems.push_back(stem);
            }
        }
        fitting.stock.spacersMm = {5.0, 10.0, 20.0};
        fitting.stock.cranksMm = {170.0};
        Bar bar;
        const std::string place = row.text("grip").toStdString();
        bar.kind =
            place == "hoods" ? BarKind::Drop : (place == "swept" ? BarKind::Swept : BarKind::Flat);
        bar.widthMm = bar.kind == BarKind::Drop ? 420.0 : 620.0;
        bar.gripBackMm = -row.number("grip_x");
        if (bar.kind == BarKind::Swept)
            bar.riseMm = row.number("grip_y");
        fitting.stock.bars = {bar};

        const Decided d = decided(fitting);
        const PreparedSize& size = d.prepared.sizes.front();
        const Setup& advised = d.advice.candidates.front().best->setup;
        Stem ordinary;
        ordinary.lengthMm = row.number("stem");
        ordinary.angle = Angle::degrees(row.number("stem_angle"));
        const Point hand =
            clampCentre(size.skeleton, ordinary, row.number("spacers"), tables().parts)
            + Point(row.number("grip_x"), row.number("grip_y"));
        QVERIFY(std::abs(advised.stem.lengthMm - ordinary.lengthMm) <= 10.0);
        QVERIFY2((advised.grip - hand).norm() < 15.0,
                 qPrintable(QString::number((advised.grip - hand).norm())));
    }

    void shouldGiveOneFrameTwoSetups()
    {
        const Decided d = decided(demoFitting("one-frame-two-bikes"));
        const Candidate& only = d.advice.candidates.front();
        QCOMPARE(only.byUse.size(), std::size_t(2));
        const AdvisedSetup* fast = nullptr;
        const AdvisedSetup* touring = nullptr;
        for (const UseSetup& use : only.byUse)
            (use.use == Use::Touring ? touring : fast) = &use.advised;
        QVERIFY(touring->setup.grip.y() > fast->setup.grip.y() + 15.0);
        QVERIFY(touring->setup.grip.x() < fast->setup.grip.x());
        QVERIFY(touring->points < only.best->points);
        QVERIFY(fast->points < only.best->points);
    }

    void shouldDecideTheShortRidersDemo()
    {
        const Decided d = decided(demoFitting("short-rider-large-wheels"));
        QVERIFY(d.advice.anyFits());
        // Both would fit; in traffic the toe speaks against the XS.
        QCOMPARE(d.named(), std::string("S"));
        const auto overlap = [&d](const std::string& size) {
            return d.candidate(size).best->ledger[indexOf(Consideration::ToeOverlap)].value;
        };
        QVERIFY(fitsAtAll(d.candidate("XS").fit.state));
        QCOMPARE(overlap("S"), 0.0);
        QVERIFY(overlap("XS") > 10.0);
        QVERIFY(d.advice.riderFindings.empty());
    }

    void shouldRankSizesThatFitFirst()
    {
        Fitting fitting = demoFitting("between-two-sizes");
        fitting.riding.mix = Mix::only(Use::Touring);
        for (FrameSize& frame : fitting.frames)
            if (frame.size == "L")
                frame.geometry.standoverMm = 900.0;
        const Decided d = decided(fitting);
        QCOMPARE(d.named(), std::string("M"));
        QCOMPARE(d.candidate("L").rank, 2);
        QCOMPARE(d.candidate("L").limits.front().code, FindingCode::NoStandover);
        QCOMPARE(d.candidate("L").fit.state, FitState::Barred);
        QCOMPARE(d.advice.verdict.kind, VerdictKind::Clear);
        QVERIFY(d.advice.anyFits());
        fitting.frames[0].geometry.standoverMm = 900.0;
        const Decided none = decided(fitting);
        QVERIFY(!none.advice.anyFits());
        QVERIFY(!none.advice.verdict.named);
        QCOMPARE(none.advice.verdict.kind, VerdictKind::None);
    }

    // A box without a stem for a steerer is no reason against the frame.
    void shouldOrderWhatTheBoxLacks()
    {
        Fitting fitting = demoFitting("between-two-sizes");
        fitting.riding.mix = Mix::only(Use::Touring);
        const std::string named = decided(fitting).named();
        for (FrameSize& frame : fitting.frames)
            frame.headset.steererMm = 31.8;
        const Decided d = decided(fitting);
        QCOMPARE(d.named(), named);
        const Candidate& candidate = d.candidate(named);
        QCOMPARE(candidate.fit.state, FitState::WithParts);
        QVERIFY(candidate.fit.stem && !candidate.fit.stem->inStock);
        QVERIFY(d.advice.part && !d.advice.part->nearerMm);
    }

    void shouldOrderALongerPost()
    {
        Fitting fitting = demoFitting("between-two-sizes");
        const Decided before = decided(fitting);
        const std::string named = before.named();
        for (FrameSize& frame : fitting.frames)
            frame.post.lengthMm = 200.0;
        const Decided d = decided(fitting);
        QCOMPARE(d.named(), named);
        const Candidate& candidate = d.candidate(named);
        QCOMPARE(candidate.fit.state, FitState::WithParts);
        QVERIFY(candidate.limits.empty());
        // Derived: what shows and what must stay inside, of the post that is long enough.
        const PreparedSize& size = d.prepared.sizes[candidate.size];
        const double shows = *exposedPost(size.skeleton, candidate.best->setup.saddle,
                                          d.prepared.bicycle.saddle, tables().parts);
        QVERIFY(std::abs(*candidate.fit.postMmToOrder - shows - size.skeleton.postInsertionMm)
                < 1e-9);
    }

    void shouldNotMindTheOrderOfSizes()
    {
        RandomBriefs briefs(31);
        for (int i = 0; i < samples(200); ++i) {
            Fitting fitting = fittingOf(briefs.next());
            const Decided one = decided(fitting);
            std::reverse(fitting.frames.begin(), fitting.frames.end());
            const Decided other = decided(fitting);
            QCOMPARE(other.advice.solved, one.advice.solved);
            for (std::size_t rank = 0; rank < one.advice.candidates.size(); ++rank)
                QCOMPARE(other.size(rank), one.size(rank));
            if (one.advice.solved) {
                QCOMPARE(other.advice.verdict.kind, one.advice.verdict.kind);
                QCOMPARE(other.advice.verdict.lead, one.advice.verdict.lead);
            }
        }
    }

    // Before there is a frame, what is said of the frame to look for is what is said with one on
    // the table, as long as the box's bar and the angle of its stem are the same: a quarter of a
    // size (stack 22 mm a size, tests/study/runs) is more than any frame of these makes of it.
    void shouldAskForTheSameFrameBeforeThereIsOne()
    {
        RandomBriefs briefs(77);
        int compared = 0;
        int near = 0;
        for (int i = 0; i < samples(400); ++i) {
            const RandomBrief brief = briefs.next();
            const Decided d = decided(fittingOf(brief));
            const Posterior posterior = infer(brief.rider.measurements, brief.rider.sex,
                                              tables().populations, tables().tape);
            const Advice first = firstAnswer(brief.rider, posterior, brief.riding, {},
                                             brief.bicycle, brief.stock, tables());
            if (!d.advice.solved || !first.solved)
                continue;
            const Setup& one = first.leading().best->setup;
            const Setup& other = d.advice.leading().best->setup;
            if (one.cockpit.bar != other.cockpit.bar
                || std::abs(one.stem.angle.deg() - other.stem.angle.deg()) > 0.5)
                continue;
            ++compared;
            const auto off = [](const Range& ours, const Range& theirs) {
                return std::max(std::abs(ours.low - theirs.low), std::abs(ours.high - theirs.high));
            };
            near += off(first.asked.stackMm, d.advice.asked.stackMm) < 5.5
                    && off(first.asked.reachMm, d.advice.asked.reachMm) < 7.5;
        }
        QVERIFY(compared > samples(100));
        QVERIFY2(near >= 0.9 * compared,
                 qPrintable(QStringLiteral("%1 of %2").arg(near).arg(compared)));
    }

    void shouldNeverBeNanNorCrash()
    {
        RandomBriefs briefs(32);
        for (int i = 0; i < samples(1500); ++i) {
            const Decided d = decided(fittingOf(briefs.next()));
            QCOMPARE(d.advice.candidates.size(), std::size_t(2));
            if (!d.advice.solved)
                continue;
            QVERIFY(d.advice.target.grip.allFinite());
            QVERIFY(std::isfinite(d.advice.asked.stackMm.low));
            QVERIFY(d.advice.asked.stackMm.low <= d.advice.asked.stackMm.high);
            QVERIFY(d.advice.asked.reachMm.low <= d.advice.asked.reachMm.high);
            QVERIFY(d.advice.asked.mostSpacersMm <= 40.0); // metal_spacers_mm in assets/parts.json
            for (const Candidate& candidate : d.advice.candidates) {
                if (!candidate.best)
                    continue;
                QVERIFY(std::isfinite(candidate.best->points) && candidate.best->points >= 0.0);
                QVERIFY(candidate.best->setup.grip.allFinite());
                QVERIFY(std::isfinite(candidate.best->leg.hipTop.deg()));
                for (const LedgerEntry& entry : candidate.best->ledger)
                    QVERIFY(std::isfinite(entry.value) && std::isfinite(entry.points));
            }
        }
    }

    void shouldMoveTheTargetGripOutForLongerArms()
    {
        RandomBriefs briefs(33);
        int compared = 0;
        for (int i = 0; i < samples(300); ++i) {
            Fitting fitting = fittingOf(briefs.next());
            fitting.stock.bars.resize(1); // the same bar for both
            fitting.riding.mix = Mix::only(Use::Touring);
            fitting.rider.measurements.resize(2);
            const double stature = fitting.rider.measurements[0].readings[0];
            const auto grip = [&](double armMm) {
                Fitting with = fitting;
                with.rider.measurements.push_back({Quantity::ArmToGrip, {armMm}, 2.0});
                return decided(with).advice;
            };
            const Advice shorter = grip(0.370 * stature);
            const Advice longer = grip(0.385 * stature);
            if (!shorter.solved || !longer.solved || shorter.person.provisional
                || longer.person.provisional) // what is doubted is left out
                continue;
            ++compared;
            QVERIFY(longer.target.grip.x() > shorter.target.grip.x());
        }
        QVERIFY(compared > samples(150));
    }

    void shouldNameASizeOnlyIfNoWeightTurnsIt()
    {
        RandomBriefs briefs(34);
        int clear = 0, other = 0;
        for (int i = 0; i < samples(200); ++i) {
            const Decided d = decided(fittingOf(briefs.next()));
            if (!d.advice.solved || !d.advice.verdict.other)
                continue;
            const bool named = d.advice.verdict.kind == VerdictKind::Clear;
            (named ? clear : other) += 1;
            if (!named)
                continue;
            const std::vector<Candidate>& candidates = d.advice.candidates;
            if (!fitsAtAll(candidates[1].fit.state))
                continue; // no weight makes a size fit
            QVERIFY(d.advice.verdict.lead >= tables().weights.eitherBelow);
            for (std::size_t c = 0; c < considerationCount; ++c) {
                if (!tables().weights.unsourced[c])
                    continue;
                for (const double factor : {0.5, 2.0}) {
                    Tables changed = tables();
                    changed.weights.points[c] *= factor;
                    const Advice again =
                        advise(d.fitting.rider, d.fitting.riding, {}, d.prepared, changed);
                    QCOMPARE(d.prepared.sizes[again.candidates.front().size].frame.size, d.named());
                }
            }
        }
        QVERIFY2(clear > samples(20) && other > samples(4),
                 qPrintable(QStringLiteral("%1 clear, %2 not").arg(clear).arg(other)));
    }

    void shouldLetARiddenSaddleHeightCount()
    {
        Fitting fitting = demoFitting("between-two-sizes");
        fitting.current.reset();
        const double modelled = decided(fitting).advice.target.saddle.heightMm;
        fitting.current = CurrentBike{};
        fitting.current->saddleHeightMm = modelled + 20.0;
        fitting.current->crankMm = 170.0;
        const Advice unasked = decided(fitting).advice;
        QVERIFY(std::abs(unasked.target.saddle.heightMm - modelled)
                < 1e-9); // not called comfortable
        fitting.current->comfortable = true;
        fitting.choices.position = Position::Advise;
        const Advice counted = decided(fitting).advice;
        // Derived: the model's 11.5 and the ridden 5 pool to 84 % of the difference.
        const double share = 11.5 * 11.5 / (11.5 * 11.5 + 25.0);
        QVERIFY2(std::abs(counted.target.saddle.heightMm - modelled - share * 20.0) < 0.5,
                 qPrintable(QString::number(counted.target.saddle.heightMm - modelled)));
        QVERIFY(std::any_of(
            counted.riderFindings.begin(), counted.riderFindings.end(),
            [](const Finding& f) { return f.code == FindingCode::RiddenHeightCounts; }));
    }

    void shouldPutTheStiffRidersHandsHigher()
    {
        Fitting fitting = demoFitting("between-two-sizes");
        fitting.rider.flexibility = Flexibility::Ordinary;
        const double ordinary = decided(fitting).advice.target.grip.y();
        fitting.rider.flexibility = Flexibility::Stiff;
        QVERIFY(decided(fitting).advice.target.grip.y() > ordinary + 5.0);
        fitting.rider.flexibility = Flexibility::Supple;
        QVERIFY(decided(fitting).advice.target.grip.y() < ordinary - 5.0);
    }

    void shouldReachTheTargetOfASingleUseExactly()
    {
        const Decided d = decidedFor("between-two-sizes", Mix::only(Use::Touring));
        const UpperWindows windows =
            windowsFor(tables().comfort, Use::Touring, GripPlace::Flat, Flexibility::Ordinary,
                       d.advice.person.body.statureMm);
        const Bar& bar = d.prepared.stock.bars[d.candidate(d.named()).best->setup.cockpit.bar];
        const double palm = gripOn(bar, GripPlace::Flat, tables().parts).halfWidthMm;
        const UpperPosture posture = solveUpperBody(
            upperLimbs(d.advice.person.body, palm),
            midHip(d.advice.target.saddle.point(), d.advice.person.body, tables().body),
            d.advice.target.grip, windows);
        QVERIFY(posture.cost < 1e-9);
    }

    // Derived: at a mixed target no step of a millimetre lowers the mixed cost.
    void shouldFindTheMixedTarget()
    {
        RandomBriefs briefs(35);
        for (int i = 0; i < 100; ++i) {
            const RandomBrief brief = briefs.next();
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, tables());
            const Person person{averageMan(), *brief.rider.flexibility, calibrationFoothold(), {}};
            const std::vector<Hold> holds =
                holdsOf(person, brief.riding.mix, brief.stock.bars.front(), tables());
            const Point hip(-210.0, 780.0);
            const Point best = comfortableClamp(holds, hip);
            const double least = postureCost(holds, hip, best);
            for (int step = 0; step < 16; ++step)
                QVERIFY2(postureCost(holds, hip, best + along(Angle::degrees(22.5 * step)))
                             > least - 1e-9,
                         qPrintable(QStringLiteral("%1 of %2, brief %3, way %4, kind %5")
                                        .arg(postureCost(holds, hip,
                                                         best + along(Angle::degrees(22.5 * step)))
                                             - least)
                                        .arg(least)
                                        .arg(i)
                                        .arg(step)
                                        .arg(int(brief.stock.bars.front().kind))));
        }
    }

    // Derived for a two-link leg (thigh 420, knee to pedal 500, hip on the seat axis), seat axis
    // 73, knee 32 at the bottom, crank 170: the hip closes to the trunk's slope + 8 degrees at the
    // top; a crank 5 mm shorter opens it by 1.2, a degree of seat angle by 1.2, and a knee 5
    // degrees lower closes it by 1.2.
    void shouldCloseTheHipAtTheTop()
    {
        Person person{averageMan(), Flexibility::Ordinary, {}, {}};
        person.body.hipHigherMm = 0.0;
        person.body.thighMm = 420.0;
        person.body.shankMm = 500.0;
        person.body.ankleHeightMm = person.body.ankleToBallMm = 0.0;
        Tables plain = tables();
        plain.body.legHipAboveSaddleMm = 0.0;
        const auto hipTop = [&](double crankMm, double seatDeg, double kneeDeg) {
            const SaddlePlace saddle =
                saddleOnAxis(person.body, plain.body, person.foothold, crankMm,
                             Angle::degrees(kneeDeg), Angle::degrees(seatDeg));
            return legPosture(person, saddle, crankMm, Angle::degrees(45.0), plain).hipTop.deg();
        };
        const double closed = hipTop(170.0, 73.0, 32.0);
        QVERIFY2(std::abs(closed - 53.0) < 0.5, qPrintable(QString::number(closed)));
        QVERIFY(std::abs(hipTop(165.0, 73.0, 32.0) - closed - 1.2) < 0.1);
        QVERIFY(std::abs(hipTop(170.0, 74.0, 32.0) - closed - 1.2) < 0.1);
        QVERIFY(std::abs(hipTop(170.0, 73.0, 37.0) - closed + 1.2) < 0.1);
    }

    void shouldTellOfTheOtherCranksInTheBox()
    {
        const Decided d = decided(demoFitting("one-frame-two-bikes"));
        QCOMPARE(d.advice.otherCranks.size(), std::size_t(1));
        const CrankChoice& other = d.advice.otherCranks.front();
        const LegPosture& advised = d.advice.candidates.front().best->leg;
        const double crank = d.advice.candidates.front().best->setup.crankMm;
        QCOMPARE(other.leverage, other.crankMm / crank);
        QCOMPARE(other.leg.hipTop > advised.hipTop, other.crankMm < crank);
        QVERIFY(std::abs((other.leg.kneeBottom - advised.kneeBottom).deg()) < 1e-6);
    }

    void shouldStopWhenAsked()
    {
        const Fitting fitting = demoFitting("between-two-sizes");
        const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(!advise(fitting.rider, fitting.riding, {}, prepared, tables(), stop.get_token())
                     .solved);
    }

    // A box with one hopeless stem: another is ordered.
    void shouldNameThePartToOrder()
    {
        Fitting fitting = demoFitting("between-two-sizes");
        fitting.riding.mix = Mix::only(Use::Touring);
        fitting.stock.stems.resize(1);
        fitting.stock.stems[0].lengthMm = 150.0;
        fitting.stock.stems[0].reversible = false;
        const Advice poor = decided(fitting).advice;
        QVERIFY(poor.part);
        QVERIFY(*poor.part->nearerMm > 10.0);
        QVERIFY(poor.part->stem.lengthMm < 110.0);
    }

    // Sizes follow stature as makers' charts do, over made-up people drawn from the survey's
    // statistics (a seed, not rows): never a smaller size on the whole for a taller rider.
    void shouldFollowStature()
    {
        const Population& men = tables().populations.male;
        Fitting fitting = demoFitting("between-two-sizes");
        fitting.current.reset();
        const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
        const int stature = static_cast<int>(Quantity::Stature);
        const BaseVector perMm = men.covariance.col(stature) / men.covariance(stature, stature);
        for (const Use use : {Use::FastCommuting, Use::Touring}) {
            fitting.riding.mix = Mix::only(use);
            double previous = -1e9;
            const double sure = 2.0 * tables().weights.eitherBelow;
            for (double height = 1650.0; height <= 1950.0; height += 10.0) {
                const BaseVector base = men.mean + (height - men.mean(stature)) * perMm;
                Person person{bodyFrom(base, tables().body),
                              Flexibility::Ordinary,
                              calibrationFoothold(),
                              {}};
                double smaller = 0.0, larger = 0.0;
                for (const SizeAnswer& answer :
                     nameSize({person, fitting.riding, prepared, tables()}).sizes)
                    (prepared.sizes[answer.size].frame.size == "M" ? smaller : larger) =
                        answer.choice->points;
                const double forLarger = smaller - larger;
                if (std::abs(forLarger) > sure) // it may no longer turn back
                    QVERIFY(previous < sure || forLarger > 0.0);
                previous = std::max(previous, forLarger);
            }
            QVERIFY(previous > sure);
        }
    }
};

QTEST_APPLESS_MAIN(TestAdvise)
#include "tst_advise.moc"
