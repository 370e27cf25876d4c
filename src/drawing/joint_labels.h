// SPDX-License-Identifier: MIT
//
// Where the words of the joint angles stand: beside their arcs, clear of bicycle, limbs, leaders
// and each other.
#pragma once

#include "drawing/layout.h"

namespace tripoise {

/// Radius an angle is drawn with, mm.
[[nodiscard]] double arcRadiusMm(Joint joint);

/// Room that the hazard mark takes before a label; 0 inside the comfortable range.
[[nodiscard]] double hazardMarkWidth(const JointAngle& angle, const Steps& steps);

/// One rectangle a joint angle of the rider, in their order. The layout must have its leaders.
[[nodiscard]] std::vector<QRectF> placeJointLabels(const Layout& layout, const SideView& view);

} // namespace tripoise
