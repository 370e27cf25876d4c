// SPDX-License-Identifier: MIT
//
// The rider as a calm figure of one tint: what is near lies over the bicycle like tracing paper,
// the far leg behind it.
#pragma once

#include "drawing/canvas.h"

namespace tripoise {

/// The far leg, behind everything.
void paintFarLeg(const Canvas& canvas, const RiderSketch& rider);
/// The whole near figure, under the bicycle.
void paintFigure(const Canvas& canvas, const RiderSketch& rider);
/// Near leg and arm once more, over the bicycle and half clear.
void paintNearLimbs(const Canvas& canvas, const RiderSketch& rider);

/// Where the near knee goes, once round.
void paintKneePath(const Canvas& canvas, const RiderSketch& rider);

} // namespace tripoise
