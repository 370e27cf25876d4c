// SPDX-License-Identifier: MIT
#include "advice/search.h"

#include "advice/shoes.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <tuple>

namespace tripoise {
namespace {

constexpr double unlimited = std::numeric_limits<double>::infinity();
// Rounding must not pass over a row whose floor meets the best exactly.
constexpr double rounding = 1e-12;

double square(double value)
{
    return value * value;
}

/// What a shoe's overlap comes to on the average of shoes, which differ by `sd`; never negative.
double expectedOverlap(double overlapMm, double sd)
{
    const double x = overlapMm / sd;
    const double density = std::exp(-0.5 * x * x) / std::sqrt(2.0 * std::numbers::pi);
    const double chance = 0.5 * std::erfc(-x / std::numbers::sqrt2);
    return sd * density + overlapMm * chance;
}

} // namespace

double NaturalStem::middle(Use use, double riderMm) const
{
    return std::clamp(lengthMm + perStature * (riderMm - statureMm) + offsetMm[indexOf(use)],
                      lengthsMm.low, lengthsMm.high);
}

Range NaturalStem::of(Use use, double riderMm, const std::optional<double>& soldMm) const
{
    const double half = soldMm ? soldHalfRangeMm : halfRangeMm;
    const double about = soldMm.value_or(middle(use, riderMm));
    return {about - half, about + half};
}

Range wantedBarWidth(const Person& person, BarKind kind, Use use, const WeightTable& weights)
{
    const Range* beyond = nullptr;
    switch (kind) {
    case BarKind::Flat: beyond = &weights.flatBarBeyondShouldersMm; break;
    case BarKind::Swept: beyond = &weights.sweptBarBeyondShouldersMm; break;
    case BarKind::Drop:
        beyond = use == Use::Gravel ? &weights.gravelBarBeyondShouldersMm
                                    : &weights.dropBarBeyondShouldersMm;
        break;
    }
    const double shoulders = person.body.biacromialMm;
    return {shoulders + beyond->low, shoulders + beyond->high};
}

SizeSearch::SizeSearch(const Basis& basis, const PreparedSize& size, std::stop_token stop)
    : m_basis(basis), m_size(size), m_stop(std::move(stop)), m_wheel(sweptWheel(size.skeleton)),
      m_shoe(shoeOn(basis.prepared.bicycle.pedal, basis.person, basis.tables))
{
    const auto& [person, riding, prepared, tables] = basis;
    const bool kept = person.keepsHands();
    m_withinSize = kept ? tables.comfort.keptWeight : tables.weights.postureWithinSize;
    m_againstSizes = kept ? tables.comfort.keptAgainstSizes : 1.0;
    for (const BarRun& run : size.bars)
        m_bars.push_back(planBar(prepared.stock.bars[run.bar]));
    planStems();
    weighSize();
    const LegTarget target = legTarget(tables.comfort, riding.mix, person);
    for (const double crankMm : prepared.cranksMm)
        planCrank(crankMm, target);
}

void SizeSearch::weighSize()
{
    const auto& [person, riding, prepared, tables] = m_basis;
    const WeightTable& weights = tables.weights;
    const Mix& mix = riding.mix;
    if (const auto clearance = standoverInShoes(m_size.skeleton, person, tables.parts))
        m_standoverMeasure =
            1.0
            - placeIn({weights.leastStandoverMm, mix.mean(weights.wantedStandoverMm)}, *clearance);
    const double steadiness =
        m_size.steering.wheelbaseMm + weights.trailInWheelbase * m_size.steering.trailMm;
    for (const Use use : allUses) {
        const double want = weights.steadinessWanted[indexOf(use)];
        const double off = want < 0.0 ? steadiness - weights.steadinessMm.low
                                      : weights.steadinessMm.high - steadiness;
        m_agilityMeasure +=
            mix.of(use) * std::abs(want) * std::max(0.0, off) / weights.steadinessUnitMm;
    }
    m_compactnessMeasure = mix.mean(weights.compactnessWanted)
                           * std::max(0.0, m_size.bulkMm - weights.leastBulkMm)
                           / weights.bulkUnitMm;
    if (const auto& heights = m_size.frame.riderHeightMm) {
        const double beyond = outside(person.body.statureMm, *heights) / weights.riderHeightUnitMm;
        const double sds = std::abs(
            inseamSds(person.body.statureMm, person.body.inseamMm, person.sex, tables.populations));
        m_riderHeightMeasure =
            (1.0 - placeIn(weights.proportionSds, sds)) * std::min(1.0, beyond * beyond);
    }
}

void SizeSearch::planStems()
{
    const auto& [person, riding, prepared, tables] = m_basis;
    const WeightTable& weights = tables.weights;
    const Untidy& untidy = weights.untidy;
    PerUse<Range> natural;
    for (const Use use : allUses)
        natural[indexOf(use)] =
            weights.naturalStem.of(use, person.body.statureMm, m_size.frame.asSold.stemMm);
    for (const SizeStem& stem : m_size.stems) {
        StemPlan plan;
        for (const Use use : allUses)
            plan.lengthMeasure +=
                riding.mix.of(use)
                * square(outside(stem.stem.lengthMm, natural[indexOf(use)]) / weights.stemUnitMm);
        if (!stem.stem.quillMm) { // a quill is level and raised, as they are made
            plan.down = placeIn(untidy.downDeg, -stem.stem.angle.deg());
            plan.steep = placeIn(untidy.steepDeg, -stem.stem.angle.deg());
        }
        plan.toOrder = stem.inStock && stem.stem.joint == StemJoint::Direct ? 0.0 : 1.0;
        m_stems.push_back(plan);
    }
    const double upright = riding.mix.mean(untidy.upright);
    const double ordinary = weights.ordinarySpacers.of(person.body.statureMm);
    for (const double spacers : m_size.spacersMm)
        m_spacers.push_back({square((spacers - ordinary) / weights.spacerUnitMm),
                             placeIn(untidy.spacersMm, spacers)
                                 + upright * placeIn(untidy.uprightSpacersMm, spacers),
                             placeIn(untidy.steepSpacersMm, spacers)});
}

SizeSearch::BarPlan SizeSearch::planBar(const Bar& bar) const
{
    const auto& [person, riding, prepared, tables] = m_basis;
    const WeightTable& weights = tables.weights;
    BarPlan plan;
    for (const Use use : allUses)
        plan.widthMeasure += riding.mix.of(use)
                             * outside(bar.widthMm, wantedBarWidth(person, bar.kind, use, weights))
                             / weights.barUnitMm;
    const double rise =
        bar.riseMm.value_or(bar.kind == BarKind::Swept ? tables.parts.sweptRiseMm : 0.0);
    plan.riser = placeIn(weights.untidy.riseMm, rise);
    plan.notPlain = plan.riser * riding.mix.mean(weights.untidy.plain);
    for (const Hold& hold : holdsOf(person, riding.mix, bar, tables))
        plan.holds.push_back(
            {hold, comfortableGrip(hold.limbs, Point::Zero(), hold.windows) - hold.fromClamp,
             costFloor(hold.limbs, hold.windows)});
    std::stable_sort(plan.holds.begin(), plan.holds.end(),
                     [](const FlooredHold& first, const FlooredHold& second) {
                         return first.hold.share > second.hold.share;
                     });
    return plan;
}

void SizeSearch::planToeCures()
{
    const Tables& tables = m_basis.tables;
    const WeightTable& weights = tables.weights;
    const Skeleton& skeleton = m_size.skeleton;
    m_toeCures.push_back({RemedyKind::FootBack, m_wheel,
                          shoeOn(m_basis.prepared.bicycle.pedal, m_basis.person, tables, 0.0),
                          weights.footBack});
    const auto onWheel = [&](RemedyKind kind, const std::optional<FrameSize>& frame,
                             double measure) {
        if (frame)
            m_toeCures.push_back(
                {kind, sweptWheel(skeletonOf(*frame, tables.frame)), m_shoe, measure});
    };
    onWheel(RemedyKind::NarrowerTyre,
            onNarrowerTyre(m_size.frame, skeleton, tables.handling.tyresMm), weights.narrowerTyre);
    onWheel(RemedyKind::SmallerRim, onSmallerRim(m_size.frame, skeleton, tables.handling.rims),
            weights.smallerRim);
}

ToeOverlap SizeSearch::toeOf(const CrankPlan& plan, const SweptWheel& wheel,
                             const ShoeOutline& shoe) const
{
    const Pedalling pedalling{m_basis.person.foothold, plan.saddle.point(), plan.crankMm};
    auto worst = worstToe(wheel, shoe, pedalling);
    if (worst && worst->overlapMm > 0.0)
        worst = toeOverlap(wheel, shoe, pedalling);
    return worst.value_or(ToeOverlap{-unlimited, {}, {}, Spot::Zero(), {}});
}

const SizeSearch::CrankPlan& SizeSearch::withToe(CrankPlan& plan)
{
    if (plan.toe)
        return plan;
    plan.toe = toeOf(plan, m_wheel, m_shoe);
    plan.toeMeasure = toeMeasure(*plan.toe);
    plan.toeCuredMeasure = plan.toeMeasure;
    if (plan.toe->overlapMm <= 0.0)
        return plan;
    if (m_toeCures.empty())
        planToeCures();
    for (const ToeCure& cure : m_toeCures) {
        if (cure.measure >= plan.toeCuredMeasure)
            continue;
        const double cured = cure.measure + toeMeasure(toeOf(plan, cure.wheel, cure.shoe));
        if (cured < plan.toeCuredMeasure) {
            plan.toeCuredMeasure = cured;
            plan.toeCure = cure.kind;
        }
    }
    return plan;
}

double SizeSearch::toeMeasure(const ToeOverlap& toe) const
{
    const WeightTable& weights = m_basis.tables.weights;
    // Shoes clear of it by all of the room lie two standard deviations off.
    const double room = m_basis.riding.footRetention ? weights.toeRoomMm : weights.toeRoomFlatMm;
    if (toe.overlapMm < -2.0 * room)
        return 0.0;
    const Angle steer = toe.touches ? toe.touches->from : toe.steer;
    const double far = placeIn(weights.toeSteerDeg, std::abs(steer.deg()));
    return expectedOverlap(toe.overlapMm, 0.5 * room) / weights.toeUnitMm
           * (1.0 - far * (1.0 - weights.toeFar))
           * (m_basis.riding.traffic ? weights.toeInTraffic : 1.0);
}

void SizeSearch::planCrank(double crankMm, const LegTarget& target)
{
    const auto& [person, riding, prepared, tables] = m_basis;
    const WeightTable& weights = tables.weights;
    const Body& body = person.body;
    CrankPlan plan;
    plan.crankMm = crankMm;
    plan.saddle = saddleForKnee(body, tables.body, person.foothold, crankMm, target.knee,
                                target.kneeOverSpindleMm);
    plan.wantedSetbackMm = plan.saddle.setbackMm();
    const Range rails = saddleBehindRange(m_size.skeleton, prepared.bicycle.saddle, tables.parts);
    const double behind = behindTube(plan.saddle, m_size.skeleton.seatAngle);
    if (outside(behind, rails) > 0.0) {
        plan.saddle =
            saddleBehindTube(body, tables.body, person.foothold, crankMm, target.knee,
                             m_size.skeleton.seatAngle, std::clamp(behind, rails.low, rails.high));
        const double off = kneeOverSpindle(body, tables.body, person.foothold, plan.saddle, crankMm)
                           - target.kneeOverSpindleMm;
        const double halfWidths = off / tables.comfort.kneeOverSpindleHalfWidthMm;
        plan.setbackMeasure = tables.comfort.ease.of(halfWidths * halfWidths);
    }
    plan.hip = midHip(plan.saddle.point(), body, tables.body);
    if (const auto exposed =
            exposedPost(m_size.skeleton, plan.saddle, prepared.bicycle.saddle, tables.parts))
        plan.postMeasure = outside(*exposed, weights.ordinaryPostMm) / weights.postUnitMm;
    const CrankBand band = crankBandFor(tables.comfort, person);
    plan.crankMeasure = outside(crankMm, {band.lowMm, band.highMm}) / weights.crankUnitMm;

    m_cranks.push_back(std::move(plan));
}

SizeSearch::Solved SizeSearch::solve(const BarPlan& bar, const Point& hip, const Point& clamp,
                                     double most)
{
    const Point fromHip = clamp - hip;
    double unsolved = 0.0;
    for (const FlooredHold& floored : bar.holds)
        unsolved += floored.least(fromHip);
    double solved = 0.0;
    for (const FlooredHold& floored : bar.holds) {
        const Hold& hold = floored.hold;
        unsolved -= floored.least(fromHip);
        solved += hold.share
                  * hold.ease.of(
                      solveUpperBody(hold.limbs, hip, clamp + hold.fromClamp, hold.windows).cost);
        ++m_solved;
        if (solved + unsolved > most)
            return {solved + unsolved, false};
    }
    return {solved, true};
}

/// Once over all cockpits and cranks, under given weights.
class SizeSearch::Pass {
public:
    Pass(SizeSearch& search, const PerConsideration<double>& weights)
        : m_search(search), m_size(search.m_size), m_weights(weights),
          m_postureWeight(search.m_withinSize * weights[indexOf(Consideration::Posture)])
    {
    }

    std::optional<Choice> run()
    {
        for (const Start& start : starts()) {
            if (m_search.m_stop.stop_requested())
                return std::nullopt;
            if (start.points > most())
                break;
            lookInto(start);
        }
        if (m_best) {
            CrankPlan& plan = m_search.m_cranks[m_best->crank];
            m_best->points += (m_search.m_againstSizes - m_search.m_withinSize)
                              * of(Consideration::Posture, plan.solved[m_best->row].least);
            m_search.withToe(plan);
            m_best->points += of(Consideration::ToeOverlap, plan.toeCuredMeasure - plan.toeMeasure);
        }
        return m_best;
    }

private:
    /// A crank with a bar, and what they cost by themselves.
    struct Start {
        double points = 0.0;
        std::size_t crank = 0;
        std::size_t run = 0;
    };

    double of(Consideration consideration, double measure) const
    {
        return m_weights[indexOf(consideration)] * measure;
    }

    /// More points than these are not the best.
    double most() const { return m_best ? m_best->points + rounding : unlimited; }

    std::vector<Start> starts() const
    {
        std::vector<Start> starts;
        const double sizePoints = of(Consideration::Standover, m_search.m_standoverMeasure)
                                  + of(Consideration::Agility, m_search.m_agilityMeasure)
                                  + of(Consideration::Compactness, m_search.m_compactnessMeasure)
                                  + of(Consideration::RiderHeight, m_search.m_riderHeightMeasure);
        for (std::size_t crank = 0; crank < m_search.m_cranks.size(); ++crank) {
            const CrankPlan& plan = m_search.m_cranks[crank];
            const double crankPoints = sizePoints + of(Consideration::Setback, plan.setbackMeasure)
                                       + of(Consideration::ExposedPost, plan.postMeasure)
                                       + of(Consideration::Crank, plan.crankMeasure);
            for (std::size_t run = 0; run < m_size.bars.size(); ++run)
                starts.push_back(
                    {crankPoints + of(Consideration::BarWidth, m_search.m_bars[run].widthMeasure),
                     crank, run});
        }
        std::stable_sort(starts.begin(), starts.end(),
                         [](const Start& a, const Start& b) { return a.points < b.points; });
        return starts;
    }

    void lookInto(const Start& start)
    {
        CrankPlan& plan = m_search.m_cranks[start.crank];
        const BarPlan& bar = m_search.m_bars[start.run];
        const std::vector<Clamping>& clampings = m_size.clampings[m_size.bars[start.run].clampings];
        m_floors.resize(clampings.size());
        std::size_t lowest = 0;
        for (std::size_t i = 0; i < clampings.size(); ++i) {
            m_floors[i] = floorUnder(start, plan, bar, clampings[i]);
            if (m_floors[i] < m_floors[lowest])
                lowest = i;
        }
        if (m_floors[lowest] > most())
            return;
        m_toePoints = m_weights[indexOf(Consideration::ToeOverlap)] > 0.0
                          ? of(Consideration::ToeOverlap, m_search.withToe(plan).toeMeasure)
                          : 0.0;
        // The most promising first, so that its points let most others be passed over.
        tryStem(start, plan, bar, clampings[lowest]);
        for (std::size_t i = 0; i < clampings.size(); ++i)
            if (i != lowest && m_floors[i] + m_toePoints <= most())
                tryStem(start, plan, bar, clampings[i]);
    }

    /// Under the points of a stem over any of its spacers, toe apart.
    double floorUnder(const Start& start, const CrankPlan& crank, const BarPlan& bar,
                      const Clamping& clamping) const
    {
        const SizeStem& stem = m_size.stems[clamping.stem];
        const double tallest = m_size.spacersMm[stem.totals - 1];
        const Point fromHip = stem.clamp.at(0.0) - crank.hip;
        double posture = 0.0;
        for (const FlooredHold& hold : bar.holds)
            posture += hold.hold.share
                       * hold.hold.ease.of(
                           hold.floor.leastOn(fromHip - hold.ideal, stem.clamp.up, tallest));
        const StemPlan& plan = m_search.m_stems[clamping.stem];
        return start.points + of(Consideration::StemLength, plan.lengthMeasure)
               + of(Consideration::StemAngle, stem.angleMeasure)
               + of(Consideration::Tidiness, bar.notPlain + plan.down * bar.riser)
               + of(Consideration::ToOrder, plan.toOrder)
               + of(Consideration::Adjustment, 1.0 - (2.0 + clamping.stemRoom) / barDirections)
               + m_postureWeight * posture;
    }

    void tryStem(const Start& start, CrankPlan& plan, const BarPlan& bar, const Clamping& clamping)
    {
        const SizeStem& stem = m_size.stems[clamping.stem];
        const StemPlan& stemPlan = m_search.m_stems[clamping.stem];
        const std::size_t first = m_size.bars[start.run].begin + clamping.begin;
        m_rows.resize(stem.totals);
        std::size_t lowest = 0;
        for (std::size_t total = 0; total < stem.totals; ++total) {
            Row& row = m_rows[total];
            row.clamp = stem.clamp.at(m_size.spacersMm[total]);
            row.lower =
                start.points + of(Consideration::StemLength, stemPlan.lengthMeasure)
                + of(Consideration::Spacers, m_search.m_spacers[total].measure)
                + of(Consideration::StemAngle, stem.angleMeasure)
                + of(Consideration::Tidiness,
                     m_search.untidiness(bar, stemPlan, m_search.m_spacers[total]))
                + of(Consideration::ToOrder, stemPlan.toOrder)
                + of(Consideration::Adjustment,
                     m_size.adjustmentMeasure(clamping, total, m_search.m_basis.tables.weights));
            row.lower += m_toePoints;
            double posture = 0.0;
            for (const FlooredHold& hold : bar.holds)
                posture += hold.least(row.clamp - plan.hip);
            row.floor = row.lower + m_postureWeight * posture;
            if (row.floor < m_rows[lowest].floor)
                lowest = total;
        }
        tryRow(start, plan, bar, first, lowest);
        for (std::size_t total = 0; total < stem.totals; ++total)
            if (total != lowest && m_rows[total].floor <= most())
                tryRow(start, plan, bar, first, total);
    }

    void tryRow(const Start& start, CrankPlan& plan, const BarPlan& bar, std::size_t first,
                std::size_t total)
    {
        const Row& row = m_rows[total];
        Solved& solved = plan.solved[first + total];
        if (!solved.exact && row.lower + m_postureWeight * solved.least <= most())
            solved = m_search.solve(bar, plan.hip, row.clamp,
                                    (most() - row.lower) / m_postureWeight + rounding);
        if (!solved.exact)
            return;
        const Choice choice{start.crank, first + total, row.lower + m_postureWeight * solved.least};
        if (!m_best
            || std::tie(choice.points, choice.crank, choice.row)
                   < std::tie(m_best->points, m_best->crank, m_best->row))
            m_best = choice;
    }

    struct Row {
        Point clamp = Point::Zero();
        double lower = 0.0; ///< points without posture
        double floor = 0.0; ///< under the points
    };

    SizeSearch& m_search;
    const PreparedSize& m_size;
    const PerConsideration<double>& m_weights;
    double m_postureWeight; ///< among set-ups of the size
    std::optional<Choice> m_best;
    double m_toePoints = 0.0;     ///< of the crank looked into
    std::vector<double> m_floors; ///< scratch: by clamping
    std::vector<Row> m_rows;      ///< scratch: by total
};

std::optional<Choice> SizeSearch::best(const PerConsideration<double>& weights)
{
    return Pass(*this, weights).run();
}

Setup SizeSearch::setupOf(const Choice& choice) const
{
    return makeSetup(m_size.skeleton, m_basis.prepared.stock, saddle(choice.crank),
                     m_cranks[choice.crank].crankMm, m_size.cockpitAt(choice.row),
                     m_basis.tables.parts);
}

PerConsideration<double> SizeSearch::measures(const Choice& choice)
{
    CrankPlan& plan = m_cranks[choice.crank];
    const CockpitPlace place = placeOf(m_size, choice.row);
    const SizeStem& stem = m_size.stems[place.clamping->stem];
    Solved& solved = plan.solved[choice.row];
    if (!solved.exact)
        solved = solve(m_bars[place.run], plan.hip, stem.clamp.at(m_size.spacersMm[place.total]),
                       unlimited);

    PerConsideration<double> result{};
    const auto set = [&result](Consideration c, double value) { result[indexOf(c)] = value; };
    set(Consideration::Posture, m_againstSizes * solved.least);
    set(Consideration::Setback, plan.setbackMeasure);
    const StemPlan& stemPlan = m_stems[place.clamping->stem];
    set(Consideration::StemLength, stemPlan.lengthMeasure);
    set(Consideration::Spacers, m_spacers[place.total].measure);
    set(Consideration::StemAngle, stem.angleMeasure);
    set(Consideration::Tidiness, untidiness(m_bars[place.run], stemPlan, m_spacers[place.total]));
    set(Consideration::ToOrder, stemPlan.toOrder);
    set(Consideration::ExposedPost, plan.postMeasure);
    set(Consideration::Standover, m_standoverMeasure);
    set(Consideration::Agility, m_agilityMeasure);
    set(Consideration::Compactness, m_compactnessMeasure);
    set(Consideration::Adjustment,
        m_size.adjustmentMeasure(*place.clamping, place.total, m_basis.tables.weights));
    set(Consideration::Crank, plan.crankMeasure);
    set(Consideration::BarWidth, m_bars[place.run].widthMeasure);
    set(Consideration::ToeOverlap, withToe(plan).toeCuredMeasure);
    set(Consideration::RiderHeight, m_riderHeightMeasure);
    return result;
}

} // namespace tripoise
