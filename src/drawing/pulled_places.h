// SPDX-License-Identifier: MIT
//
// What grip and saddle were pulled by, in words beside them: ahead of the grips, behind the saddle.
#pragma once

#include "drawing/clearance.h"
#include "drawing/layout.h"

namespace tripoise::drawing {

/// The layout must have all else. What finds no room is told below the drawing anyway.
void placePulled(DrawingLayout& layout, const SideView& view, Clearance& clearance);

} // namespace tripoise::drawing
