// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>

namespace tripoise {

/// From low to high, both included.
struct Range {
    double low = 0.0;
    double high = 0.0;

    bool operator==(const Range&) const = default;
};

/// How far a value lies outside a range, 0 inside.
[[nodiscard]] inline double outside(double value, const Range& range)
{
    return std::max({0.0, range.low - value, value - range.high});
}

/// Where a value stands in a range: 0 at or below its low end, 1 at or above its high one.
[[nodiscard]] inline double placeIn(const Range& range, double value)
{
    return std::clamp((value - range.low) / (range.high - range.low), 0.0, 1.0);
}

} // namespace tripoise
