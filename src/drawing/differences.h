// SPDX-License-Identifier: MIT
//
// Where two bicycles differ, as they stand.
#pragma once

#include "drawing/side_view.h"

namespace tripoise::drawing {

/// Highest first. `offset` is where the other stands, in the chosen one's axes.
[[nodiscard]] std::vector<Leader> differencesOf(const BikeSketch& chosen, const BikeSketch& other,
                                                const Point& offset);

} // namespace tripoise::drawing
