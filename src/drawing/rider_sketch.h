// SPDX-License-Identifier: MIT
//
// The rider in the position of one use, as points to draw.
#pragma once

#include "drawing/side_view.h"

namespace tripoise::drawing {

/// What the rider sits on, and how.
struct Seat {
    const Setup& setup;
    const std::vector<UsePosture>& uses;
    const LegPosture& leg;
};

/// In the position of `use`, or of the first there is; the near crank at an angle from the x axis,
/// or at the bottom of the turn.
[[nodiscard]] RiderSketch sketchRider(const Person& person, const Seat& seat, Use use,
                                      std::optional<Angle> crank, const Mix& mix,
                                      const Prepared& prepared, const Tables& tables);

} // namespace tripoise::drawing
