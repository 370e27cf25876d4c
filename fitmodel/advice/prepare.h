// SPDX-License-Identifier: MIT
//
// What a decision needs of the sizes and the box of parts, worked out once, without the rider:
// every cockpit each size can carry, where it puts the bar's clamp, and what it costs apart from
// posture. Any number of bodies can then be decided over the same value.
#pragma once

#include "advice/tables.h"
#include "handling/steering.h"
#include "setup/setup.h"

#include <cstdint>
#include <span>
#include <vector>

namespace tripoise {

/// A bar can be moved later in four directions: up, down, nearer, further.
inline constexpr double barDirections = 4.0;

/// The cockpits of one size that carry one bar: a run of the arrays below.
struct BarRun {
    std::size_t bar = 0;
    std::size_t begin = 0;
    std::size_t end = 0;
};

/// One size; the arrays have one entry a cockpit. A measure times its weight is points.
struct PreparedSize {
    FrameSize frame;
    Skeleton skeleton;
    Steering steering;

    std::vector<MountedStem> stems;
    std::vector<PerUse<double>> stemMeasure; ///< of each mounted stem, by use
    std::vector<BarRun> bars;

    std::vector<std::uint32_t> mounted; ///< index into `stems`
    std::vector<double> spacersMm;
    std::vector<double> clampX;
    std::vector<double> clampY;
    std::vector<double> spacerMeasure;
    std::vector<double> angleMeasure;
    std::vector<double> adjustmentMeasure;

    /// Place in the candidates' spread, 0 least to 1 most; less where the spread is too small to
    /// count.
    double steadiness = 0.0;
    double steadinessMost = 0.0; ///< of all candidates
    double bulk = 0.0;
    double bulkMm = 0.0; ///< stack + reach

    [[nodiscard]] std::size_t count() const { return mounted.size(); }
    [[nodiscard]] Cockpit cockpitAt(std::size_t row) const;
};

struct Prepared {
    Stock stock;
    std::vector<double> cranksMm; ///< to choose from, the fitted one first
    std::vector<PreparedSize> sizes;
};

/// Cockpits that break the maker's spacer limit or want a longer steerer are left out, unless a
/// size has no other.
[[nodiscard]] Prepared prepare(std::span<const FrameSize> frames, const Stock& stock,
                               const Tables& tables);

} // namespace tripoise
