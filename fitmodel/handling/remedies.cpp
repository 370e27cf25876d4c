// SPDX-License-Identifier: MIT
#include "handling/remedies.h"

#include <algorithm>

namespace tripoise {
namespace {

/// One size as this page looks at it.
struct State {
    std::optional<double> overlapMm;
    Steering steering;
    Angle lean;
    double diameterMm = 0.0;
};

ShoeOutline shoeOf(const ToeSituation& situation, const ToeTable& table)
{
    return shoeOutline(situation.body, situation.shoeLengthMm, situation.pedalling.foothold,
                       situation.pedalLateralMm, table, situation.ballAheadMm);
}

State stateOf(const ToeSituation& situation, const FrameDefaults& defaults, const ToeTable& table)
{
    const Skeleton skeleton = skeletonOf(situation.frame, defaults);
    State state;
    if (const auto worst =
            worstToe(sweptWheel(skeleton), shoeOf(situation, table), situation.pedalling))
        state.overlapMm = worst->overlapMm;
    state.steering = steeringOf(skeleton);
    state.lean = pedalStrikeLean(skeleton, situation.pedalling.crankMm, situation.pedalLateralMm,
                                 situation.pedalWidthMm);
    state.diameterMm = outsideDiameter(skeleton.beadSeatMm, skeleton.tyreMm);
    return state;
}

} // namespace

std::optional<ToeOverlap> overlapOn(const ToeSituation& situation, const FrameDefaults& defaults,
                                    const ToeTable& table)
{
    return toeOverlap(sweptWheel(skeletonOf(situation.frame, defaults)), shoeOf(situation, table),
                      situation.pedalling);
}

std::vector<ToeRemedy> toeRemedies(const ToeSituation& situation, const ToeChoices& choices,
                                   const FrameDefaults& defaults, const ToeTable& table)
{
    const State before = stateOf(situation, defaults, table);
    std::vector<ToeRemedy> remedies;
    const auto offer = [&](RemedyKind kind, double to, const ToeSituation& changed) {
        const State after = stateOf(changed, defaults, table);
        remedies.push_back({kind, to, after.overlapMm,
                            after.steering.bbHeightMm - before.steering.bbHeightMm, after.lean,
                            after.steering.trailMm - before.steering.trailMm,
                            after.steering.wheelbaseMm - before.steering.wheelbaseMm,
                            after.diameterMm / before.diameterMm,
                            changed.pedalling.crankMm / situation.pedalling.crankMm, false});
    };
    const Skeleton skeleton = skeletonOf(situation.frame, defaults);

    if (choices.size + 1 < choices.sizes.size()) {
        ToeSituation changed = situation;
        changed.frame = choices.sizes[choices.size + 1];
        offer(RemedyKind::NextSize, static_cast<double>(choices.size + 1), changed);
    }
    const auto offerWheel = [&](RemedyKind kind, const std::optional<FrameSize>& frame,
                                std::optional<double> Mounting::*to) {
        if (!frame)
            return;
        ToeSituation changed = situation;
        changed.frame = *frame;
        offer(kind, *((*frame->mounting).*to), changed);
    };
    offerWheel(RemedyKind::NarrowerTyre, onNarrowerTyre(situation.frame, skeleton, choices.tyresMm),
               &Mounting::tyreMm);
    offerWheel(RemedyKind::SmallerRim, onSmallerRim(situation.frame, skeleton, choices.rims),
               &Mounting::beadSeatMm);
    if (const auto crank = nextBelow(choices.cranksMm, situation.pedalling.crankMm)) {
        ToeSituation changed = situation;
        changed.pedalling.crankMm = *crank;
        offer(RemedyKind::ShorterCrank, *crank, changed);
    }
    if (situation.ballAheadMm > 0.0) {
        ToeSituation changed = situation;
        changed.ballAheadMm = 0.0; // the ball over the spindle
        offer(RemedyKind::FootBack, 0.0, changed);
    }
    if (skeleton.mudguard) {
        ToeSituation changed = situation;
        changed.frame = withoutMudguard(situation.frame);
        offer(RemedyKind::NoMudguard, 0.0, changed);
    }
    return remedies;
}

} // namespace tripoise
