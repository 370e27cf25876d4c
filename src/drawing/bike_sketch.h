// SPDX-License-Identifier: MIT
//
// One size with a set-up on it, as points to draw.
#pragma once

#include "drawing/side_view.h"

namespace tripoise::drawing {

/// Without a set-up, the bare frame with its wheels.
[[nodiscard]] BikeSketch sketchBike(const PreparedSize& size, const Setup* setup,
                                    const Prepared& prepared, const Tables& tables);

/// The bar seen from the side, mounted with its clamp's centre at a point.
[[nodiscard]] BarSketch sketchBar(const Bar& bar, const Point& clamp, const PartDefaults& defaults);

/// Centre line of a fork blade: down the steering axis, then forward to the axle.
[[nodiscard]] std::vector<Point> forkBlade(const BikeSketch& bike);

} // namespace tripoise::drawing
