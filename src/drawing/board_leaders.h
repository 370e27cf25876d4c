// SPDX-License-Identifier: MIT
//
// The leaders of a board: those of the saddle behind it, the others in one column beside the
// drawing or over its front wheel, wherever the drawing leaves room. What finds none is counted on
// a last line; bar and saddle are the last to go.
#pragma once

#include "drawing/clearance.h"
#include "drawing/layout.h"

namespace tripoise::drawing {

/// The layout must have its fit, the clearance all that is drawn.
void placeLeadersOnBoard(DrawingLayout& layout, const SideView& view, Clearance& clearance);

} // namespace tripoise::drawing
