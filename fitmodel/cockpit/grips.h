// SPDX-License-Identifier: MIT
//
// Where the hands hold a bar, from the centre of its clamp.
#pragma once

#include "base/axes.h"
#include "base/grip_place.h"
#include "cockpit/parts.h"

namespace tripoise {

/// The place a bar is mainly held, and advised for.
[[nodiscard]] GripPlace mainPlace(BarKind kind);

struct Grip {
    Point fromClamp = Point::Zero(); ///< centre of the palm
    double halfWidthMm = 0.0;        ///< palm from the bicycle's plane
};

[[nodiscard]] Grip gripOn(const Bar& bar, GripPlace place, const PartDefaults& defaults);

} // namespace tripoise
