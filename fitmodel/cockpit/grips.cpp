// SPDX-License-Identifier: MIT
#include "cockpit/grips.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

/// How far back the palm comes on a straight bar swept by an angle outside its middle.
double sweptBack(const Bar& bar, const PartDefaults& defaults)
{
    if (bar.gripBackMm)
        return *bar.gripBackMm;
    if (bar.kind == BarKind::Swept && !bar.backsweepDeg)
        return defaults.sweptGripBackMm;
    const double swept =
        std::max(0.0, 0.5 * bar.widthMm - defaults.palmFromBarEndMm - defaults.straightCentreMm);
    const double sweep = bar.backsweepDeg.value_or(defaults.flatBacksweepDeg);
    return swept * std::sin(Angle::degrees(sweep).rad());
}

} // namespace

GripPlace mainPlace(BarKind kind)
{
    switch (kind) {
    case BarKind::Flat: return GripPlace::Flat;
    case BarKind::Swept: return GripPlace::Swept;
    case BarKind::Drop: return GripPlace::Hoods;
    }
    return GripPlace::Flat;
}

Grip gripOn(const Bar& bar, GripPlace place, const PartDefaults& defaults)
{
    const double reach = bar.reachMm.value_or(defaults.dropReachMm);
    const double halfWidth = 0.5 * bar.widthMm;
    switch (place) {
    case GripPlace::Flat:
        return {{-sweptBack(bar, defaults), bar.riseMm.value_or(0.0) + defaults.flatPalmUpMm},
                std::max(0.0, halfWidth - defaults.palmFromBarEndMm)};
    case GripPlace::Swept:
        return {{-sweptBack(bar, defaults), bar.riseMm.value_or(defaults.sweptRiseMm)},
                std::max(0.0, halfWidth - defaults.palmFromBarEndMm)};
    case GripPlace::Hoods:
        return {{reach + bar.hoodForwardMm.value_or(defaults.hoodForwardMm),
                 bar.hoodUpMm.value_or(defaults.hoodUpMm)},
                halfWidth};
    case GripPlace::Tops:
        return {{defaults.topsForwardMm, defaults.topsUpMm},
                std::min(defaults.topsHalfWidthMm, halfWidth)};
    case GripPlace::Drops:
        return {{defaults.dropsForwardShare * reach,
                 defaults.dropsUpMm - bar.dropMm.value_or(defaults.dropDropMm)},
                halfWidth};
    }
    return {};
}

} // namespace tripoise
