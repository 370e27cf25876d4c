// SPDX-License-Identifier: MIT
#pragma once

#include "drawing/canvas.h"

namespace tripoise {

/// The crank and pedal on the other side, behind everything.
void paintFarCrank(const Canvas& canvas, const BikeSketch& bike);
/// The wheels with their mudguards.
void paintWheels(const Canvas& canvas, const BikeSketch& bike);
/// The bicycle whole, in ink, but for its wheels.
void paintBike(const Canvas& canvas, const BikeSketch& bike);
/// The bicycle as a thin dashed outline; the canvas must be shifted to where it stands.
void paintOutlineWheels(const Canvas& canvas, const BikeSketch& bike);
void paintOutline(const Canvas& canvas, const BikeSketch& bike);
/// The contacts of the bicycle ridden today, dotted.
void paintRidden(const Canvas& canvas, const RiddenSketch& ridden, const BikeSketch& chosen);
/// Contacts as advised, faint, behind those that were pulled about.
void paintAdvised(const Canvas& canvas, const AdvisedMarks& advised);

} // namespace tripoise
