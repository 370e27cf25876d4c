// SPDX-License-Identifier: MIT
#pragma once

#include "drawing/canvas.h"

namespace tripoise {

/// The crank and pedal on the other side, behind everything.
void paintFarCrank(const Canvas& canvas, const BikeSketch& bike);
/// The bicycle whole, in ink.
void paintBike(const Canvas& canvas, const BikeSketch& bike);
/// The bicycle as a thin dashed outline; the canvas must be shifted to where it stands.
void paintOutline(const Canvas& canvas, const BikeSketch& bike);

} // namespace tripoise
