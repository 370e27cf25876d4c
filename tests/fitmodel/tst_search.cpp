// SPDX-License-Identifier: MIT
//
// The best cockpit must be exactly the best of a plain loop over everything that fits together.
#include "support.h"

#include "advice/advise.h"
#include "random_brief.h"

#include <QTest>

#include <cmath>
#include <numbers>

using namespace tripoise;
using namespace tripoise::test;

namespace {

/// Where a value stands from 0 at the low end to 1 at the high one.
double ramp(double value, const Range& range)
{
    return std::min(1.0, std::max(0.0, (value - range.low) / (range.high - range.low)));
}

/// By integration of its slope: `within` up to `from`, then rising evenly to 1 at `full`.
double eased(double cost)
{
    const Ease& ease = tables().comfort.ease;
    const double middle = std::min(std::max(0.0, cost - ease.from), ease.full - ease.from);
    const double slope = ease.within + (1.0 - ease.within) * middle / (ease.full - ease.from);
    return ease.within * std::min(cost, ease.from) + 0.5 * (ease.within + slope) * middle
           + std::max(0.0, cost - ease.full);
}

/// The mean overlap of shoes that are normally distributed about this one: the integral of
/// x N(x; overlap, sd) over x > 0.
double toeMeasure(const ToeOverlap& toe, const Riding& riding, const WeightTable& w)
{
    const double room = riding.footRetention ? w.toeRoomMm : w.toeRoomFlatMm;
    if (toe.overlapMm < -2.0 * room)
        return 0.0;
    const double sd = 0.5 * room;
    const double x = toe.overlapMm / (sd * std::numbers::sqrt2);
    const double mean = 0.5 * toe.overlapMm * (1.0 + std::erf(x))
                        + sd * std::exp(-x * x) / std::sqrt(2.0 * std::numbers::pi);
    const Angle steer = toe.touches ? toe.touches->from : toe.steer;
    return mean / w.toeUnitMm
           * (1.0 - ramp(std::abs(steer.deg()), w.toeSteerDeg) * (1.0 - w.toeFar))
           * (riding.traffic ? w.toeInTraffic : 1.0);
}

/// Points of one set-up, added up afresh from their definitions, without the search's shortcuts;
/// as they count against other sizes, or among the size's own set-ups.
double pointsOf(const Person& person, const Riding& riding, const Prepared& prepared,
                const PreparedSize& size, std::size_t crank, std::size_t row, bool withinSize)
{
    const Tables& t = tables();
    const Mix& mix = riding.mix;
    const WeightTable& w = t.weights;
    const Body& body = person.body;
    const double crankMm = prepared.cranksMm[crank];
    const LegTarget leg = legTarget(t.comfort, mix, person);
    SaddlePlace saddle =
        saddleForKnee(body, t.body, person.foothold, crankMm, leg.knee, leg.kneeOverSpindleMm);
    double points = 0.0;
    const Range rails = saddleBehindRange(size.skeleton, prepared.bicycle.saddle, t.parts);
    const double behind = behindTube(saddle, size.skeleton.seatAngle);
    if (behind < rails.low || behind > rails.high) {
        saddle = saddleBehindTube(body, t.body, person.foothold, crankMm, leg.knee,
                                  size.skeleton.seatAngle,
                                  std::min(std::max(behind, rails.low), rails.high));
        points += w.points[indexOf(Consideration::Setback)]
                  * eased(std::pow((kneeOverSpindle(body, t.body, person.foothold, saddle, crankMm)
                                    - leg.kneeOverSpindleMm)
                                       / t.comfort.kneeOverSpindleHalfWidthMm,
                                   2));
    }
    const Setup setup =
        makeSetup(size.skeleton, prepared.stock, saddle, crankMm, size.cockpitAt(row), t.parts);
    const Bar& bar = prepared.stock.bars[setup.cockpit.bar];
    const auto add = [&](Consideration c, double measure) {
        points += w.points[indexOf(c)] * measure;
    };

    for (const Use use : allUses) {
        const double share = mix.of(use);
        if (share == 0.0)
            continue;
        const auto hold = [&](GripPlace place, double time) {
            const Grip grip = gripOn(bar, place, t.parts);
            add(Consideration::Posture,
                (withinSize ? w.postureWithinSize : 1.0) * share * time
                    * eased(solveUpperBody(upperLimbs(body, grip.halfWidthMm),
                                           midHip(saddle.point(), body, t.body),
                                           setup.clamp + grip.fromClamp,
                                           windowsFor(t.comfort, use, place, person.flexibility,
                                                      body.statureMm))
                                .cost));
        };
        if (bar.kind == BarKind::Drop)
            for (const GripPlace place : {GripPlace::Hoods, GripPlace::Tops, GripPlace::Drops})
                hold(place, t.comfort.dropBarTime[indexOf(use)][indexOf(place)]);
        else
            hold(mainPlace(bar.kind), 1.0);
        const NaturalStem& n = w.naturalStem;
        const auto& sold = size.frame.asSold.stemMm;
        const double about =
            std::min(std::max(n.lengthMm + n.perStature * (body.statureMm - n.statureMm)
                                  + n.offsetMm[indexOf(use)],
                              n.lengthsMm.low),
                     n.lengthsMm.high);
        const double off = sold ? std::abs(setup.stem.lengthMm - *sold) - n.soldHalfRangeMm
                                : std::abs(setup.stem.lengthMm - about) - n.halfRangeMm;
        add(Consideration::StemLength, share * std::pow(std::max(0.0, off) / w.stemUnitMm, 2));
        const double steadiness =
            size.steering.wheelbaseMm + w.trailInWheelbase * size.steering.trailMm;
        const double want = w.steadinessWanted[indexOf(use)];
        add(Consideration::Agility,
            share
                * (want < 0 ? -want * std::max(0.0, steadiness - w.steadinessMm.low)
                            : want * std::max(0.0, w.steadinessMm.high - steadiness))
                / w.steadinessUnitMm);
        add(Consideration::Compactness,
            share * w.compactnessWanted[indexOf(use)]
                * std::max(0.0, size.frame.geometry.stackMm + size.frame.geometry.reachMm
                                    - w.leastBulkMm)
                / w.bulkUnitMm);
        const Range& beyond = bar.kind == BarKind::Flat    ? w.flatBarBeyondShouldersMm
                              : bar.kind == BarKind::Swept ? w.sweptBarBeyondShouldersMm
                              : use == Use::Gravel         ? w.gravelBarBeyondShouldersMm
                                                           : w.dropBarBeyondShouldersMm;
        add(Consideration::BarWidth,
            share * outside(bar.widthMm - body.biacromialMm, beyond) / w.barUnitMm);
        // Parts that undo each other.
        const Untidy& u = w.untidy;
        const double spacers = setup.cockpit.spacersMm;
        const double down = ramp(-setup.stem.angle.deg(), u.downDeg);
        const double rise =
            bar.riseMm.value_or(bar.kind == BarKind::Swept ? t.parts.sweptRiseMm : 0);
        add(Consideration::Tidiness,
            share
                * (down
                       * (ramp(rise, u.riseMm) + ramp(spacers, u.spacersMm)
                          + u.upright[indexOf(use)] * ramp(spacers, u.uprightSpacersMm))
                   + ramp(-setup.stem.angle.deg(), u.steepDeg) * ramp(spacers, u.steepSpacersMm)
                   + u.plain[indexOf(use)] * ramp(rise, u.riseMm)));
    }
    add(Consideration::ToOrder,
        setup.stem.inStock && setup.stem.joint == StemJoint::Direct ? 0.0 : 1.0);
    const OrdinarySpacers& o = w.ordinarySpacers;
    const double ordinary =
        std::min(std::max(o.mm + o.perStature * (body.statureMm - o.statureMm), o.betweenMm.low),
                 o.betweenMm.high);
    add(Consideration::Spacers, std::pow((setup.cockpit.spacersMm - ordinary) / w.spacerUnitMm, 2));
    if (const auto& heights = size.frame.riderHeightMm) {
        const double sds =
            std::abs(inseamSds(body.statureMm, body.inseamMm, person.sex, t.populations));
        add(Consideration::RiderHeight,
            (1.0 - ramp(sds, w.proportionSds))
                * std::min(1.0,
                           std::pow(outside(body.statureMm, *heights) / w.riderHeightUnitMm, 2)));
    }
    add(Consideration::StemAngle,
        std::abs(setup.stem.angle.deg()) > w.ordinaryStemAngleDeg + 1e-9 ? 1.0 : 0.0);
    if (const auto post = exposedPost(size.skeleton, saddle, prepared.bicycle.saddle, t.parts))
        add(Consideration::ExposedPost, outside(*post, w.ordinaryPostMm) / w.postUnitMm);
    if (const auto clear = standoverClearance(size.skeleton, body.inseamMm)) {
        const double inShoes = *clear + person.soleMm.value_or(t.parts.soleMm);
        add(Consideration::Standover,
            1.0 - ramp(inShoes, {w.leastStandoverMm, mix.mean(w.wantedStandoverMm)}));
    }
    const CrankBand band = crankBandFor(t.comfort, person);
    add(Consideration::Crank, outside(crankMm, {band.lowMm, band.highMm}) / w.crankUnitMm);
    const HandlingTables& h = t.handling;
    const double shoeMm = person.shoeLengthMm.value_or(body.footMm + t.parts.shoeBeyondFootMm);
    const double out = prepared.bicycle.pedal.lateralMm.value_or(t.parts.pedalLateralMm);
    // As it is, or after the remedy that leaves least.
    const auto toeOn = [&](const Skeleton& skeleton, std::optional<double> ballAheadMm) {
        const auto toe =
            toeOverlap(sweptWheel(skeleton),
                       shoeOutline(body, shoeMm, person.foothold, out, h.toe, ballAheadMm),
                       {person.foothold, saddle.point(), crankMm});
        return toe ? std::pair(toe->overlapMm, toeMeasure(*toe, riding, w)) : std::pair(-1e9, 0.0);
    };
    const auto onTyre = [&](double beadSeatMm, double tyreMm) {
        FrameSize changed = size.frame;
        changed.wheel.beadSeatMm = beadSeatMm;
        test::mountingOn(changed).tyreMm = tyreMm;
        return toeOn(skeletonOf(changed, t.frame), {}).second;
    };
    auto [overlapMm, toe] = toeOn(size.skeleton, {});
    if (overlapMm > 0.0 && !withinSize) {
        toe = std::min(toe, toeOn(size.skeleton, 0.0).second + w.footBack);
        const double rim = size.skeleton.beadSeatMm;
        const double tyre = size.skeleton.tyreMm;
        double narrower = 0.0;
        for (const double one : h.tyresMm)
            if (one < tyre)
                narrower = std::max(narrower, one);
        if (narrower > 0.0)
            toe = std::min(toe, onTyre(rim, narrower) + w.narrowerTyre);
        double smaller = 0.0;
        for (const RimSize& one : h.rims)
            if (one.common && one.beadSeatMm < rim)
                smaller = std::max(smaller, one.beadSeatMm);
        if (smaller > 0.0)
            toe = std::min(
                toe, onTyre(smaller, std::min(tyre, size.frame.wheel.maxTyreMm.value_or(tyre)))
                         + w.smallerRim);
    }
    add(Consideration::ToeOverlap, toe);
    // Of the four ways, those that are open: up and down as far as wanted or in part, and a stem of
    // the same angle a little shorter, a little longer.
    const std::vector<double> totals = spacerTotals(
        prepared.stock.spacersMm, std::max(0.0, mostSpacers(size.skeleton, setup.stem, t.parts)));
    double ways = std::min(1.0, (totals.back() - setup.cockpit.spacersMm) / w.raiseRoomMm)
                  + std::min(1.0, setup.cockpit.spacersMm / w.lowerRoomMm);
    for (const double sign : {-1.0, 1.0}) {
        bool found = false;
        for (const Stem& stem : prepared.stock.stems)
            for (const bool turned : {false, true}) {
                if (!stem.inStock)
                    continue;
                const double step = sign * (stem.lengthMm - setup.stem.lengthMm);
                found = found
                        || (step > 0.0 && step <= w.stemRoomMm && (!turned || stem.reversible)
                            && effectiveAngle(stem, turned) == setup.stem.angle
                            && clampsMatch(stem, bar, t.parts)
                            && steererMatches(stem, steererOf(size.skeleton), t.parts));
            }
        ways += found ? 1.0 : 0.0;
    }
    add(Consideration::Adjustment, 1.0 - ways / 4.0);
    return points;
}

} // namespace

class TestSearch : public QObject {
    Q_OBJECT

private slots:
    void shouldFindExactlyTheExhaustiveBest()
    {
        RandomBriefs briefs(21);
        std::size_t solved = 0, everything = 0, overlapping = 0;
        for (int i = 0; i < 150; ++i) {
            const RandomBrief brief = briefs.next();
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, tables());
            Findings findings;
            const Person person = personOf(brief.rider,
                                           infer(brief.rider.measurements, brief.rider.sex,
                                                 tables().populations, tables().tape),
                                           {}, brief.riding, prepared, tables(), findings);
            for (const PreparedSize& size : prepared.sizes) {
                SizeSearch search({person, brief.riding, prepared, tables()}, size);
                const auto found = search.best(tables().weights.points);
                QCOMPARE(found.has_value(), size.count() > 0);
                if (!found)
                    continue;
                std::size_t bestCrank = 0, bestRow = 0;
                double least = std::numeric_limits<double>::infinity();
                for (std::size_t crank = 0; crank < prepared.cranksMm.size(); ++crank)
                    for (std::size_t row = 0; row < size.count(); ++row) {
                        const double points =
                            pointsOf(person, brief.riding, prepared, size, crank, row, true);
                        if (points < least - 1e-12) {
                            least = points;
                            bestCrank = crank;
                            bestRow = row;
                        }
                    }
                const double points =
                    pointsOf(person, brief.riding, prepared, size, bestCrank, bestRow, false);
                QVERIFY(std::abs(found->points - points) < 1e-9);
                QCOMPARE(found->crank, bestCrank);
                QCOMPARE(found->row, bestRow);
                solved += search.solved();
                overlapping += search.toeOverlapMm(found->crank) > 0.0;
                for (const BarRun& run : size.bars)
                    everything +=
                        prepared.cranksMm.size() * (run.end - run.begin)
                        * holdsOf(person, brief.riding.mix, brief.stock.bars[run.bar], tables())
                              .size();
            }
        }
        QVERIFY(everything > 20000);
        QVERIFY(overlapping > 20); // so that the toe had a say
        // Boxes of a few dozen cockpits; the floor saves the more the fuller the box.
        QVERIFY2(2 * solved < everything,
                 qPrintable(QStringLiteral("%1 of %2").arg(solved).arg(everything)));
    }

    void shouldStayExactUnderOtherWeightsAskedLater()
    {
        RandomBriefs briefs(22);
        for (int i = 0; i < 40; ++i) {
            const RandomBrief brief = briefs.next();
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, tables());
            Findings findings;
            const Person person = personOf(brief.rider,
                                           infer(brief.rider.measurements, brief.rider.sex,
                                                 tables().populations, tables().tape),
                                           {}, brief.riding, prepared, tables(), findings);
            const PreparedSize& size = prepared.sizes.front();
            SizeSearch reused({person, brief.riding, prepared, tables()}, size);
            for (std::size_t c = 0; c < considerationCount; ++c) {
                PerConsideration<double> weights = tables().weights.points;
                weights[c] *= 2.0;
                const auto again = reused.best(weights);
                SizeSearch fresh({person, brief.riding, prepared, tables()}, size);
                const auto first = fresh.best(weights);
                QCOMPARE(again.has_value(), first.has_value());
                if (!first)
                    continue;
                QCOMPARE(again->row, first->row);
                QCOMPARE(again->crank, first->crank);
                QVERIFY(std::abs(again->points - first->points) < 1e-12);
            }
        }
    }

    void shouldMakeItsPointsOfItsMeasures()
    {
        RandomBriefs briefs(23);
        for (int i = 0; i < 40; ++i) {
            const RandomBrief brief = briefs.next();
            const Prepared prepared = prepare(brief.frames, brief.bicycle, brief.stock, tables());
            const Advice advice = advise(brief.rider, brief.riding, {}, prepared, tables());
            for (const Candidate& candidate : advice.candidates) {
                if (!candidate.best)
                    continue;
                double sum = 0.0;
                for (const LedgerEntry& entry : candidate.best->ledger)
                    sum += entry.points;
                QVERIFY(std::abs(sum - candidate.best->points) < 1e-9);
            }
        }
    }
};

QTEST_APPLESS_MAIN(TestSearch)
#include "tst_search.moc"
