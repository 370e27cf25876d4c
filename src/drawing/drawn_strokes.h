// SPDX-License-Identifier: MIT
//
// The drawing as words see it: tubes, limbs and arcs as strokes, wheels as rings.
#pragma once

#include "drawing/clearance.h"
#include "drawing/fit.h"
#include "drawing/options.h"
#include "drawing/side_view.h"

namespace tripoise::drawing {

/// Adds what is drawn of a view. A board, which is small, lets words stand inside a wheel; a sheet
/// does not.
void avoidDrawn(Clearance& clearance, const SideView& view, const DrawingFit& fit,
                const Layers& layers, bool onBoard);

} // namespace tripoise::drawing
