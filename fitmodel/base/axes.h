// SPDX-License-Identifier: MIT
//
// The bike axes, fixed here once for the whole model. Lengths are millimetres.
//
//            y (up)
//            |        head-tube top
//    saddle  |       /
//       \    |      /          The plane is seen from the rider's right, so the bicycle rolls
//        \   |     /           towards +x. z points to the rider's right, out of the page.
//         \  |    /            An angle of a line is taken from the x axis, positive towards y;
//          \ |   /             seat and head angles are the tubes' slopes from the horizontal.
//           \|  /
//            +----------- x (forward)
//        bottom bracket
#pragma once

#include "base/angle.h"

#include <Eigen/Core>

#include <cmath>

namespace tripoise {

using Point = Eigen::Vector2d;

/// Unit vector at an angle from the x axis.
[[nodiscard]] inline Point along(Angle fromX)
{
    return {std::cos(fromX.rad()), std::sin(fromX.rad())};
}

/// Unit vector up a tube that leans back by its slope from the horizontal, as seat and head tubes
/// do.
[[nodiscard]] inline Point upTube(Angle slope)
{
    return {-std::cos(slope.rad()), std::sin(slope.rad())};
}

/// Unit vector ahead of such a tube, square to it.
[[nodiscard]] inline Point aheadOfTube(Angle slope)
{
    return {std::sin(slope.rad()), std::cos(slope.rad())};
}

/// Angle of a vector from the x axis.
[[nodiscard]] inline Angle angleOf(const Point& vector)
{
    return Angle::radians(std::atan2(vector.y(), vector.x()));
}

} // namespace tripoise
