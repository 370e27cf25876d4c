// SPDX-License-Identifier: MIT
//
// Where the words of the joint angles stand: beside their arcs or in a margin, clear of bicycle,
// limbs, leaders and each other. Where there is no room for all of a label, the range goes first,
// then the name: the angle alone stands where it is.
#pragma once

#include "drawing/clearance.h"
#include "drawing/layout.h"

namespace tripoise::drawing {

/// Radius an angle is drawn with, mm.
[[nodiscard]] double arcRadiusMm(Joint joint);

/// Room that a sign takes before a label. A board has one before each, so that nothing moves as an
/// angle leaves its range; a sheet has the hazard's alone.
[[nodiscard]] double signWidth(const JointAngle& angle, const Steps& steps, bool onBoard);

/// Fills in a place for each joint angle of the rider, and takes it from what is clear. The layout
/// must have its fit.
void placeJointLabels(DrawingLayout& layout, const SideView& view, const DrawingOptions& options,
                      Clearance& clearance);

} // namespace tripoise::drawing
