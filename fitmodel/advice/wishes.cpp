// SPDX-License-Identifier: MIT
#include "advice/wishes.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tripoise::advice {
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
    const double spacersMm = weights.ordinarySpacers.of(statureMm) + weights.spacerUnitMm;
    FrameAsked asked{// no frame is looked for that takes more than makers let one stack
                     {far, -far},
                     {far, -far},
                     std::min(spacersMm, tables.frame.metalSpacersMm)};
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

std::optional<PartToOrder> partToOrder(const AdvisedSetup& advised, const PreparedSize& size,
                                       SizeSearch& search, const WeightTable& weights)
{
    Setup ordered = advised.setup;
    if (ordered.stem.inStock) {
        PerConsideration<double> free = weights.points;
        free[indexOf(Consideration::ToOrder)] = 0.0;
        const auto choice = search.best(free);
        if (!choice || advised.points - choice->points < weights.worthOrdering)
            return std::nullopt;
        ordered = search.setupOf(*choice);
        if (ordered.stem.inStock)
            return std::nullopt;
    }
    PartToOrder part{ordered.stem, {}};
    for (const BarRun& run : size.bars)
        if (run.bar == ordered.cockpit.bar)
            if (const NearestRow nearest = nearestRow(size, run, ordered.clamp);
                std::isfinite(nearest.offMm))
                part.nearerMm = nearest.offMm;
    return part;
}

} // namespace tripoise::advice
