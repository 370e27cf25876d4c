// SPDX-License-Identifier: MIT
//
// Published rules for saddle height, shown beside the solution (assets/comfort.json, each with its
// source). All are of the form a + b inseam + c knee + d inseam x seat angle.
#pragma once

#include "base/angle.h"

#include <string>
#include <vector>

namespace tripoise {

struct SaddleRule {
    std::string name; ///< who published it
    double constantMm = 0.0;
    double perInseam = 0.0;
    double perKneeMm = 0.0;          ///< mm a degree
    double perInseamSeatAngle = 0.0; ///< a degree
    bool fromPedal = false;          ///< pedal axle to saddle, else bottom bracket to saddle
    double leastInseamMm = 0.0;      ///< below it, the same share of the inseam as there

    bool operator==(const SaddleRule&) const = default;
};

/// Saddle height from the bottom bracket, mm.
[[nodiscard]] double heightByRule(const SaddleRule& rule, double inseamMm, Angle knee,
                                  Angle seatAxis, double crankMm);

} // namespace tripoise
