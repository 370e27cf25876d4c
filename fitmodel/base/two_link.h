// SPDX-License-Identifier: MIT
//
// The triangle of two links and the line that closes them, by the law of cosines. Every limb of the
// model is one: thigh and shank, trunk and arm, upper arm and forearm.
#pragma once

#include "base/axes.h"

#include <algorithm>
#include <cmath>

namespace tripoise {

/// Angle between two sides of a triangle, from its three sides (mm). A triangle that cannot close
/// is taken as straight or folded, so the answer is always within 0..180 degrees.
[[nodiscard]] inline Angle angleBetween(double sideMm, double otherMm, double oppositeMm)
{
    const double cosine =
        (sideMm * sideMm + otherMm * otherMm - oppositeMm * oppositeMm) / (2.0 * sideMm * otherMm);
    return Angle::radians(std::acos(std::clamp(cosine, -1.0, 1.0)));
}

/// Length of the line that closes two links whose joint is bent by `flexion` (0 = straight).
[[nodiscard]] inline double closingLength(double firstMm, double secondMm, Angle flexion)
{
    return std::sqrt(firstMm * firstMm + secondMm * secondMm
                     + 2.0 * firstMm * secondMm * std::cos(flexion.rad()));
}

enum class Bend { Left, Right };

/// The joint of two links from `start` to `end`, on the left or right of that line as one walks it.
[[nodiscard]] inline Point jointBetween(const Point& start, const Point& end, double firstMm,
                                        double secondMm, Bend side)
{
    const Point line = end - start;
    const Angle inner = angleBetween(firstMm, line.norm(), secondMm);
    const Angle turn = side == Bend::Left ? inner : -inner;
    return start + firstMm * along(angleOf(line) + turn);
}

} // namespace tripoise
