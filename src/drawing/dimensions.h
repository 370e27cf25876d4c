// SPDX-License-Identifier: MIT
//
// What a builder measures on a bicycle: contacts and frame, each with its two ends.
#pragma once

#include "drawing/side_view.h"

namespace tripoise {

enum class DimensionKind {
    SaddleHeight, ///< bottom bracket to saddle point, straight
    Setback,      ///< saddle point behind the bottom bracket, level
    SaddleToBarDrop,
    GripReach, ///< from the bottom bracket
    GripHeight,
    Stack,
    Reach, ///< of the frame
    FrontCentre,
    Wheelbase,
    // as a workshop takes them with tape, plumb line and straightedge
    NoseSetback,    ///< saddle's nose behind the bottom bracket, level
    NoseToBar,      ///< saddle's nose to the bar's middle, straight
    BarBelowSaddle, ///< bar's middle under the saddle's top
    BarReach,       ///< bar's middle from the bottom bracket
    BarHeight,
};

struct Dimension {
    DimensionKind kind = DimensionKind::SaddleHeight;
    Point from = Point::Zero();
    Point to = Point::Zero();
    double valueMm = 0.0;
    std::optional<double> otherMm; ///< the same of the size beside
};

/// Of the chosen bicycle as it stands; contacts only where it has them.
[[nodiscard]] std::vector<Dimension> dimensionsOf(const SideView& view);
/// What a workshop sets, of the chosen bicycle alone.
[[nodiscard]] std::vector<Dimension> tapeDimensionsOf(const SideView& view);

} // namespace tripoise
