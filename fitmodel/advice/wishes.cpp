// SPDX-License-Identifier: MIT
#include "advice/wishes.h"

#include "advice/assess.h"

#include <algorithm>
#include <limits>
#include <set>

namespace tripoise::advice {
namespace {

/// The box with its stems replaced by all that are made, for every bar in it.
Stock marketFor(const Stock& stock, double steererMm, const Tables& tables)
{
    std::set<double> clamps;
    for (const Bar& bar : stock.bars)
        clamps.insert(bar.barClampMm.value_or(tables.parts.barClampMm));
    Stock market = stock;
    market.stems.clear();
    for (const double clamp : clamps) {
        for (Stem stem : tables.marketStems) {
            stem.barClampMm = clamp;
            stem.steererMm = steererMm;
            market.stems.push_back(stem);
        }
    }
    return market;
}

} // namespace

FrameAsked frameAsked(const ContactTarget& target, const Setup& setup, const Mix& mix,
                      double statureMm, const Skeleton& skeleton, const Tables& tables)
{
    const WeightTable& weights = tables.weights;
    Range lengths;
    for (const Use use : allUses) {
        const Range natural = weights.naturalStem.of(use, statureMm, {});
        lengths.low += mix.of(use) * natural.low;
        lengths.high += mix.of(use) * natural.high;
    }
    const Point clamp = target.grip - (setup.grip - setup.clamp);
    constexpr double far = std::numeric_limits<double>::infinity();
    FrameAsked asked{{far, -far}, {far, -far}, 
                     weights.ordinarySpacersMm + weights.spacerUnitMm};
    const auto widen = [](Range& range, double value) {
        range = {std::min(range.low, value), std::max(range.high, value)};
    };
    for (const double length : {lengths.low, lengths.high}) {
        for (const double spacers : {0.0, asked.mostSpacersMm}) {
            Stem stem = setup.stem;
            stem.lengthMm = length;
            const Point fromHeadTop =
                clampCentre(skeleton, stem, spacers, tables.parts) - skeleton.headTop;
            widen(asked.stackMm, clamp.y() - fromHeadTop.y());
            widen(asked.reachMm, clamp.x() - fromHeadTop.x());
        }
    }
    return asked;
}

std::optional<PartWorthBuying> partWorthBuying(const AdvisedSetup& advised,
                                               const PreparedSize& size, const Basis& basis,
                                               const std::stop_token& stop)
{
    const Tables& tables = basis.tables;
    Prepared market =
        prepare(std::span(&size.frame, 1),
                marketFor(basis.prepared.stock, size.skeleton.steererMm, tables), tables);
    market.cranksMm = {advised.setup.crankMm};
    PreparedSize& offered = market.sizes.front();

    // A fuller box leaves more room to adjust; that alone is no reason to buy.
    PerConsideration<double> weights = tables.weights.points;
    weights[indexOf(Consideration::Adjustment)] = 0.0;
    const Basis among{basis.person, basis.riding, market, tables};
    SizeSearch search(among, offered, stop);
    const auto choice = search.best(weights);
    if (!choice)
        return std::nullopt;
    const AdvisedSetup bought = assess(*choice, search, among, offered);

    const auto offTarget = [](const AdvisedSetup& setup) {
        return setup.ledger[indexOf(Consideration::Posture)].value;
    };
    PartWorthBuying part;
    part.stem = bought.setup.stem;
    part.pointsSaved =
        advised.points - advised.ledger[indexOf(Consideration::Adjustment)].points - choice->points;
    part.nearerMm = offTarget(advised) - offTarget(bought);
    if (part.pointsSaved < tables.weights.worthBuying)
        return std::nullopt;
    return part;
}

} // namespace tripoise::advice
