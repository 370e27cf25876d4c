// SPDX-License-Identifier: MIT
//
// What a tape reads off a bicycle that is set up, and the finished one held against what was
// wanted.
#pragma once

#include "advice/today.h"
#include "advice/trial.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

/// A set-up as a builder measures it; mm.
struct TapeMeasures {
    double saddleHeightMm = 0.0;   ///< bottom bracket straight to the saddle point
    double saddleSetbackMm = 0.0;  ///< saddle point behind the bottom bracket, level
    double noseSetbackMm = 0.0;    ///< saddle's nose behind the bottom bracket, by plumb line
    double noseToBarMm = 0.0;      ///< nose straight to the bar's middle
    double barBelowSaddleMm = 0.0; ///< bar's middle under the saddle's top, by straightedge
    double barReachMm = 0.0;       ///< bar's middle ahead of the bottom bracket, level
    double barHeightMm = 0.0;      ///< and above it, plumb
};
[[nodiscard]] TapeMeasures measuresOf(const Setup& setup, double noseAheadMm);

/// Read off the finished bicycle; what was not taken is empty.
struct AsBuilt {
    std::string model;
    std::string size;
    std::string date; ///< base/day.h
    std::optional<double> saddleHeightMm;
    std::optional<double> noseSetbackMm;
    std::optional<double> barBelowSaddleMm;
    std::optional<double> noseToBarMm;
    std::optional<double> stemMm;
    std::optional<double> stemAngleDeg; ///< as mounted
    std::optional<double> spacersMm;    ///< under the stem
    std::optional<double> crankMm;
    std::string notes;

    bool operator==(const AsBuilt&) const = default;
};

enum class BuiltPlace {
    SaddleHeight,
    NoseSetback,
    BarBelowSaddle,
    NoseToBar,
    Stem,
    StemAngle, ///< degrees
    Spacers,
    Crank
};

/// One reading against what was wanted.
struct BuiltReading {
    BuiltPlace place = {};
    double wanted = 0.0;
    double read = 0.0;
    bool off = false; ///< by more than the shop's tolerance
};

struct BuiltCheck {
    std::vector<BuiltReading> readings; ///< those that were taken
    Contacts contacts;                  ///< that follow; where nothing was read, as wanted
    std::optional<Tried> rider;         ///< on them, where one of them is off

    [[nodiscard]] bool off() const;
};

/// `wanted` is the set-up that was handed to the workshop, on `size`; `advised` the advised one of
/// it. A bar that was not measured stands where the stem and the spacers that were read carry it.
[[nodiscard]] BuiltCheck checkBuilt(const AsBuilt& built, const Setup& wanted,
                                    const AdvisedSetup& advised, double noseAheadMm,
                                    const PreparedSize& size, const Basis& basis);

} // namespace tripoise
