// SPDX-License-Identifier: MIT
//
// The equations of one size: what each column of a geometry table must read, from a minimal set of
// unknowns, with exact derivatives.
//
// Plane geometry of the bike axes. The front axle lies where the line parallel to the steering
// axis, the offset ahead of it, meets the height of the bottom-bracket drop; both axles are at that
// height. Columns without an equation (seat tube, standover, weights) are what they are: nothing
// else follows from them. Outside of its domain (a chainstay shorter than the drop) an expression
// is held at the nearest value that exists, so every figure gives a finite answer.
#pragma once

#include "frame/columns.h"

#include <Eigen/Core>

namespace tripoise {

/// The unknowns: millimetres and degrees, so that a reading of an unknown is the unknown itself.
enum class Unknown : std::uint8_t {
    Stack,
    Reach,
    SeatAngle,
    HeadAngle,
    BbDrop,
    Chainstay,
    ChainstayLong,
    ForkOffset,
    ForkLength,
    LowerHeadset,
    WheelRadius,
};

inline constexpr int unknownCount = static_cast<int>(Unknown::WheelRadius) + 1;

using Unknowns = Eigen::Matrix<double, unknownCount, 1>;

[[nodiscard]] constexpr int indexOf(Unknown unknown)
{
    return static_cast<int>(unknown);
}

/// The column that reads an unknown itself.
[[nodiscard]] Column columnOf(Unknown unknown);

struct Reading {
    double value = 0.0;
    Unknowns gradient = Unknowns::Zero();
};

[[nodiscard]] bool hasEquation(Column column);

/// What a column with an equation reads at these unknowns.
[[nodiscard]] Reading readingOf(Column column, const Unknowns& at);

} // namespace tripoise
