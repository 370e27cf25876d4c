// SPDX-License-Identifier: MIT
//
// Where the knee comes nearest to the bar over a turn of the crank, seen from the side: between the
// front of the knee, a circle as thick as it is drawn, and the bar with the hand on it. How near it
// comes is told as worked out in space (handling/clearances.h), the same figure everywhere.
#pragma once

#include "drawing/side_view.h"

namespace tripoise {

struct KneeRoom {
    double mm = 0.0;             ///< as told; less than nothing where they would touch
    Angle crank;                 ///< of the near pedal, where it is least
    Point front = Point::Zero(); ///< of the knee
    Point bar = Point::Zero();
};

/// Less room than this is told about. Common practice, no source.
inline constexpr double barNearKneeMm = 120.0;

/// The view must have a rider and a cockpit.
[[nodiscard]] KneeRoom roomAtTheKnee(const SideView& view);

} // namespace tripoise
