// SPDX-License-Identifier: MIT
#include "advice/search.h"

#include "advice/shoes.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tripoise {
namespace {

constexpr double unlimited = std::numeric_limits<double>::infinity();
// Rounding must not pass over a row whose floor meets the best exactly.
constexpr double rounding = 1e-12;

/// Measure of a place in the candidates' spread for what the uses want of it, -1 low to +1 high.
double spreadMeasure(const Mix& mix, const PerUse<double>& wanted, double place, double most)
{
    double measure = 0.0;
    for (const Use use : allUses) {
        const double want = wanted[indexOf(use)];
        measure += mix.of(use) * (want < 0.0 ? -want * place : want * (most - place));
    }
    return measure;
}

} // namespace

SizeSearch::SizeSearch(const Person& person, const Riding& riding, const PreparedSize& size,
                       const Prepared& prepared, const Tables& tables)
    : m_person(person), m_riding(riding), m_size(size), m_prepared(prepared), m_tables(tables),
      m_wheel(sweptWheel(size.skeleton)), m_shoe(shoeOn(prepared.stock, person, tables))
{
    const Mix& mix = riding.mix;
    const WeightTable& weights = tables.weights;
    for (const BarRun& run : size.bars) {
        const Bar& bar = prepared.stock.bars[run.bar];
        m_holds.push_back(holdsOf(person, mix, bar, tables));
        m_barMeasure.push_back(barMeasure(bar));
    }
    for (const PerUse<double>& measure : size.stemMeasure)
        m_stemMeasure.push_back(mix.mean(measure));
    if (const auto clearance = standoverClearance(size.skeleton, person.body.inseamMm))
        m_standoverMeasure = std::clamp(1.0 - *clearance / weights.wantedStandoverMm, 0.0, 1.0);
    m_agilityMeasure =
        spreadMeasure(mix, weights.steadinessWanted, size.steadiness, size.steadinessMost);
    m_compactnessMeasure = mix.mean(weights.compactnessWanted) * size.bulk;

    const LegTarget target = legTarget(tables.comfort, mix, person.kneeShift);
    for (const double crankMm : prepared.cranksMm)
        planCrank(crankMm, target);
}

double SizeSearch::barMeasure(const Bar& bar) const
{
    const WeightTable& weights = m_tables.weights;
    const double shoulders = m_person.body.biacromialMm;
    double measure = 0.0;
    for (const Use use : allUses) {
        Range wanted = bar.kind == BarKind::Flat ? weights.flatBarMm : weights.sweptBarMm;
        if (bar.kind == BarKind::Drop) {
            const Range& beyond = use == Use::Gravel ? weights.gravelBarBeyondShouldersMm
                                                     : weights.dropBarBeyondShouldersMm;
            wanted = {shoulders + beyond.low, shoulders + beyond.high};
        }
        measure += m_riding.mix.of(use) * outside(bar.widthMm, wanted) / weights.barUnitMm;
    }
    return measure;
}

double SizeSearch::overlapOf(CrankPlan& plan)
{
    if (!plan.overlapMm) {
        const auto worst =
            worstToe(m_wheel, m_shoe, {m_person.foothold, plan.saddle.point(), plan.crankMm});
        plan.overlapMm = worst ? std::max(0.0, worst->overlapMm) : 0.0;
    }
    return *plan.overlapMm;
}

double SizeSearch::toeMeasure(CrankPlan& plan)
{
    const WeightTable& weights = m_tables.weights;
    return overlapOf(plan) / weights.toeUnitMm * (m_riding.traffic ? weights.toeInTraffic : 1.0);
}

void SizeSearch::planCrank(double crankMm, const LegTarget& target)
{
    const WeightTable& weights = m_tables.weights;
    const Body& body = m_person.body;
    CrankPlan plan;
    plan.crankMm = crankMm;
    plan.saddle = saddleForKnee(body, m_tables.body, m_person.foothold, crankMm, target.knee,
                                target.kneeOverSpindleMm);
    plan.wantedSetbackMm = plan.saddle.setbackMm();
    const Range rails = saddleBehindRange(m_size.skeleton, m_prepared.stock.saddle, m_tables.parts);
    const double behind = behindTube(plan.saddle, m_size.skeleton.seatAngle);
    if (outside(behind, rails) > 0.0) {
        plan.saddle =
            saddleBehindTube(body, m_tables.body, m_person.foothold, crankMm, target.knee,
                             m_size.skeleton.seatAngle, std::clamp(behind, rails.low, rails.high));
        const double off =
            kneeOverSpindle(body, m_tables.body, m_person.foothold, plan.saddle, crankMm)
            - target.kneeOverSpindleMm;
        const double halfWidths = off / m_tables.comfort.kneeOverSpindleHalfWidthMm;
        plan.setbackMeasure = halfWidths * halfWidths;
    }
    plan.hip = midHip(plan.saddle.point(), m_tables.body);
    if (const auto exposed =
            exposedPost(m_size.skeleton, plan.saddle, m_prepared.stock.saddle, m_tables.parts))
        plan.postMeasure = outside(*exposed, weights.ordinaryPostMm) / weights.postUnitMm;
    const CrankBand band = crankBandFor(m_tables.comfort, body.inseamMm);
    plan.crankMeasure = outside(crankMm, {band.lowMm, band.highMm}) / weights.crankUnitMm;

    plan.posture.assign(m_size.count(), 0.0);
    plan.exact.assign(m_size.count(), false);
    for (std::size_t run = 0; run < m_size.bars.size(); ++run) {
        std::vector<FlooredHold>& floored = plan.holds.emplace_back();
        for (const Hold& hold : m_holds[run])
            floored.push_back({hold,
                               comfortableGrip(hold.limbs, plan.hip, hold.windows) - hold.fromClamp,
                               costFloor(hold.limbs, hold.windows)});
        std::stable_sort(floored.begin(), floored.end(),
                         [](const FlooredHold& first, const FlooredHold& second) {
                             return first.hold.share > second.hold.share;
                         });
        for (const FlooredHold& hold : floored)
            for (std::size_t row = m_size.bars[run].begin; row < m_size.bars[run].end; ++row)
                plan.posture[row] += hold.least({m_size.clampX[row], m_size.clampY[row]});
    }
    m_cranks.push_back(std::move(plan));
}

void SizeSearch::solve(CrankPlan& plan, std::size_t row, std::size_t run, double most)
{
    const Point clamp(m_size.clampX[row], m_size.clampY[row]);
    double unsolved = 0.0;
    for (const FlooredHold& hold : plan.holds[run])
        unsolved += hold.least(clamp);
    double solved = 0.0;
    for (const FlooredHold& floored : plan.holds[run]) {
        const Hold& hold = floored.hold;
        unsolved -= floored.least(clamp);
        solved += hold.share
                  * solveUpperBody(hold.limbs, plan.hip, clamp + hold.fromClamp, hold.windows).cost;
        ++m_solved;
        if (solved + unsolved > most) {
            plan.posture[row] = std::max(plan.posture[row], solved + unsolved);
            return;
        }
    }
    plan.posture[row] = solved;
    plan.exact[row] = true;
}

std::optional<Choice> SizeSearch::best(const PerConsideration<double>& weights)
{
    if (m_size.count() == 0)
        return std::nullopt;
    const auto weight = [&weights](Consideration c) { return weights[indexOf(c)]; };
    const double postureWeight = weight(Consideration::Posture);
    const double sizePoints = weight(Consideration::Standover) * m_standoverMeasure
                              + weight(Consideration::Agility) * m_agilityMeasure
                              + weight(Consideration::Compactness) * m_compactnessMeasure;

    std::optional<Choice> best;
    const auto offer = [&best](const Choice& choice) {
        if (!best || choice.points < best->points)
            best = choice;
    };
    std::vector<double>& lower = m_lower;
    lower.resize(m_size.count());
    const double toeWeight = weight(Consideration::ToeOverlap);
    for (std::size_t crank = 0; crank < m_cranks.size(); ++crank) {
        CrankPlan& plan = m_cranks[crank];
        const double crankPoints = sizePoints + weight(Consideration::Setback) * plan.setbackMeasure
                                   + weight(Consideration::ExposedPost) * plan.postMeasure
                                   + weight(Consideration::Crank) * plan.crankMeasure;
        for (std::size_t run = 0; run < m_size.bars.size(); ++run) {
            const auto [bar, begin, end] = m_size.bars[run];
            const double runPoints =
                crankPoints + weight(Consideration::BarWidth) * m_barMeasure[run];
            std::size_t lowest = begin;
            for (std::size_t row = begin; row < end; ++row) {
                lower[row] =
                    runPoints
                    + weight(Consideration::StemLength) * m_stemMeasure[m_size.mounted[row]]
                    + weight(Consideration::Spacers) * m_size.spacerMeasure[row]
                    + weight(Consideration::StemAngle) * m_size.angleMeasure[row]
                    + weight(Consideration::Adjustment) * m_size.adjustmentMeasure[row];
                if (lower[row] + postureWeight * plan.posture[row]
                    < lower[lowest] + postureWeight * plan.posture[lowest])
                    lowest = row;
            }
            if (best
                && lower[lowest] + postureWeight * plan.posture[lowest] > best->points + rounding)
                continue;
            const double toePoints = toeWeight > 0.0 ? toeWeight * toeMeasure(plan) : 0.0;
            for (std::size_t row = begin; row < end; ++row)
                lower[row] += toePoints;
            // The most promising first, so that its points let most others be passed over.
            if (!plan.exact[lowest])
                solve(plan, lowest, run, unlimited);
            double least = lower[lowest] + postureWeight * plan.posture[lowest];
            for (std::size_t row = begin; row < end; ++row) {
                if (lower[row] + postureWeight * plan.posture[row] > least + rounding)
                    continue;
                if (!plan.exact[row])
                    solve(plan, row, run, (least - lower[row]) / postureWeight + rounding);
                if (!plan.exact[row])
                    continue;
                const double points = lower[row] + postureWeight * plan.posture[row];
                if (points < least)
                    least = points;
                if (points == least)
                    offer({crank, row, points});
            }
        }
    }
    return best;
}

PerConsideration<double> SizeSearch::measures(const Choice& choice)
{
    CrankPlan& plan = m_cranks[choice.crank];
    std::size_t run = 0;
    while (choice.row >= m_size.bars[run].end)
        ++run;
    if (!plan.exact[choice.row])
        solve(plan, choice.row, run, unlimited);

    PerConsideration<double> result{};
    const auto set = [&result](Consideration c, double value) { result[indexOf(c)] = value; };
    set(Consideration::Posture, plan.posture[choice.row]);
    set(Consideration::Setback, plan.setbackMeasure);
    set(Consideration::StemLength, m_stemMeasure[m_size.mounted[choice.row]]);
    set(Consideration::Spacers, m_size.spacerMeasure[choice.row]);
    set(Consideration::StemAngle, m_size.angleMeasure[choice.row]);
    set(Consideration::ExposedPost, plan.postMeasure);
    set(Consideration::Standover, m_standoverMeasure);
    set(Consideration::Agility, m_agilityMeasure);
    set(Consideration::Compactness, m_compactnessMeasure);
    set(Consideration::Adjustment, m_size.adjustmentMeasure[choice.row]);
    set(Consideration::Crank, plan.crankMeasure);
    set(Consideration::BarWidth, m_barMeasure[run]);
    set(Consideration::ToeOverlap, toeMeasure(plan));
    return result;
}

} // namespace tripoise
