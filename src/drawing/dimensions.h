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

} // namespace tripoise
