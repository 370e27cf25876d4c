// SPDX-License-Identifier: MIT
//
// What a picture of a reason adds to a drawing to make its point.
#pragma once

#include "drawing/canvas.h"

namespace tripoise {

/// The lines of trunk and arm, or of the leg, as a body's middle.
[[nodiscard]] std::vector<Point> bodyLine(const RiderSketch& rider);
[[nodiscard]] std::vector<Point> legLine(const RiderSketch& rider);

/// A comfortable range as a fan at its joint, as far as a length, and where the limb is in it.
void paintFan(const Canvas& canvas, const JointAngle& angle, double fromMm, double toMm);

/// Kept or not, seen without its colour: a tick in a circle, an exclamation mark in a triangle.
void paintVerdict(const Canvas& canvas, const QPointF& topLeft, double size, bool kept);

/// Two arrows at two levels and a line between them, or towards each other where that is short.
void paintSpan(const Canvas& canvas, const QPointF& from, const QPointF& to, double arrow);

} // namespace tripoise
