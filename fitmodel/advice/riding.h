// SPDX-License-Identifier: MIT
//
// What the bicycle is for, and what rides on it.
#pragma once

#include "base/complaint.h"
#include "base/standard.h"
#include "base/use.h"
#include "cockpit/parts.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

struct Luggage {
    double frontKg = 0.0;
    double rearKg = 0.0;

    bool operator==(const Luggage&) const = default;
};

/// Which foot reaches the ground from the saddle.
enum class FeetDown { OneToe, Toes, Flat };

struct Riding {
    Mix mix;
    bool traffic = false;
    bool footRetention = false;
    Luggage luggage;
    std::optional<FeetDown> feetDown;
    std::optional<Standard> soldUnder;

    bool operator==(const Riding&) const = default;
};

/// How long a position has been ridden.
enum class Ridden { Weeks, Season, Years };

/// What is wanted of the position ridden today.
enum class Position {
    Keep,  ///< it is the target
    Advise ///< it is evidence
};

/// Contacts of the bicycle ridden today; those that are known. What a shop takes from the saddle
/// stands as it was taken (advice/today.h).
struct CurrentBike {
    std::optional<Use> use;
    std::optional<BarKind> barKind;
    std::optional<double> saddleHeightMm;
    std::optional<double> saddleSetbackMm;
    std::optional<double> gripReachMm;
    std::optional<double> gripHeightMm;
    std::optional<double> saddleLengthMm;
    std::optional<double> noseSetbackMm;    ///< nose behind the bottom bracket, by plumb line
    std::optional<double> noseToBarMm;      ///< straight, nose to the bar's middle
    std::optional<double> barBelowSaddleMm; ///< bar's middle under the saddle's top
    std::optional<double> crankMm;
    std::optional<Ridden> ridden;
    bool comfortable = false; ///< ridden for long without complaint
    std::vector<Complaint> complaints;
    std::vector<std::string> otherComplaints; ///< in words of their own

    bool operator==(const CurrentBike&) const = default;
};

} // namespace tripoise
