// SPDX-License-Identifier: MIT
//
// Where the words of the joint angles stand: beside their arcs, clear of bicycle, limbs, leaders
// and each other.
#pragma once

#include "drawing/layout.h"

namespace tripoise {

/// Radius an angle is drawn with, mm.
[[nodiscard]] double arcRadiusMm(Joint joint);

/// Room that a sign takes before a label. A board has one before each, so that nothing moves as an
/// angle leaves its range; a sheet has the hazard's alone.
[[nodiscard]] double signWidth(const JointAngle& angle, const Steps& steps, bool onBoard);

/// Fills in a rectangle and its spot for each joint angle of the rider. The layout must have all
/// else.
void placeJointLabels(Layout& layout, const SideView& view, const DrawingOptions& options);

} // namespace tripoise
