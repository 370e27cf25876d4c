// SPDX-License-Identifier: MIT
//
// What the bicycle is for, and what rides on it.
#pragma once

#include "base/standard.h"
#include "base/use.h"

#include <optional>

namespace tripoise {

struct Luggage {
    double frontKg = 0.0;
    double rearKg = 0.0;

    bool operator==(const Luggage&) const = default;
};

struct Riding {
    Mix mix;
    bool traffic = false;
    bool footRetention = false;
    Luggage luggage;
    std::optional<Standard> soldUnder;

    bool operator==(const Riding&) const = default;
};

/// Contacts of the bicycle ridden today; those that are known.
struct CurrentBike {
    std::optional<double> saddleHeightMm;
    std::optional<double> saddleSetbackMm;
    std::optional<double> gripReachMm;
    std::optional<double> gripHeightMm;
    std::optional<double> crankMm;
    bool comfortable = false; ///< ridden for long without complaint

    bool operator==(const CurrentBike&) const = default;
};

} // namespace tripoise
