// SPDX-License-Identifier: MIT
//
// What a decision needs of the sizes and the box of parts, worked out once, without the rider:
// which cockpits each size can carry, where they put the bar's clamp, and what they cost apart from
// posture. Any number of bodies can then be decided over the same value.
//
// Cockpits are not listed one by one: a stem carries the clamp up a line as spacers are added, and
// bars of one clamp diameter share stems. A row is the number of a cockpit, counting through bars,
// their stems, and the totals of spacers below each.
#pragma once

#include "advice/tables.h"
#include "base/problem.h"
#include "handling/steering.h"
#include "setup/bicycle.h"
#include "setup/setup.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

namespace tripoise {

/// A bar can be moved later in four directions: up, down, nearer, further.
inline constexpr double barDirections = 4.0;

/// A stem as it is mounted on one size. A measure times its weight is points.
struct SizeStem {
    MountedStem mounted;
    ClampLine clamp;
    Stem stem;              ///< as mounted
    std::size_t totals = 0; ///< that it can stand on: the first so many of the size's
    double angleMeasure = 0.0;
    bool inStock = true;
};

/// A stem under bars of one clamp diameter.
struct Clamping {
    std::uint32_t stem = 0; ///< index into PreparedSize::stems
    double stemRoom = 0.0;  ///< directions in which another stem would move the bar
    std::size_t begin = 0;  ///< its first row, counted from the bar's first
};

/// The cockpits of one size that carry one bar.
struct BarRun {
    std::size_t bar = 0;
    std::size_t clampings = 0; ///< index into PreparedSize::clampings
    std::size_t begin = 0;     ///< rows
    std::size_t end = 0;
};

struct PreparedSize {
    FrameSize frame; ///< on the wheels it is to have
    Skeleton skeleton;
    Steering steering;

    std::vector<double>
        spacersMm; ///< every total the box makes within the maker's limit, ascending
    std::vector<SizeStem> stems;
    std::vector<std::vector<Clamping>> clampings; ///< one list a clamp diameter
    std::vector<BarRun> bars;

    double bulkMm = 0.0; ///< stack + reach

    [[nodiscard]] std::size_t count() const { return bars.empty() ? 0 : bars.back().end; }
    [[nodiscard]] Cockpit cockpitAt(std::size_t row) const;
    /// Of the directions in which the bar can be moved later, how many are missing.
    [[nodiscard]] double adjustmentMeasure(const Clamping& clamping, std::size_t total,
                                           const WeightTable& weights) const;
};

/// Where a row stands.
struct CockpitPlace {
    std::size_t run = 0; ///< index into PreparedSize::bars
    const Clamping* clamping = nullptr;
    std::size_t total = 0; ///< index into PreparedSize::spacersMm
};
[[nodiscard]] CockpitPlace placeOf(const PreparedSize& size, std::size_t row);

/// The cockpit in stock of a bar whose clamp comes nearest to a point, and how near; off is
/// infinite without one.
struct NearestRow {
    std::size_t row = 0;
    Point clamp = Point::Zero();
    double offMm = std::numeric_limits<double>::infinity();
};
[[nodiscard]] NearestRow nearestRow(const PreparedSize& size, const BarRun& run,
                                    const Point& clamp);

struct Prepared {
    Bicycle bicycle;
    Stock stock;                  ///< the box, bars of the bicycle's kind alone, and the stems that
                                  ///< can ordinarily be ordered
    std::vector<double> cranksMm; ///< to choose from, the fitted one first
    std::vector<PreparedSize> sizes;
};

/// Cockpits that break the maker's spacer limit or want a longer steerer are left out, unless a
/// size has no other. Stopped, it returns early and its result is not to be used.
[[nodiscard]] Prepared prepare(std::span<const FrameSize> frames, const Bicycle& bicycle,
                               const Stock& stock, const Tables& tables,
                               const std::stop_token& stop = {});

/// Sizes times cranks times cockpits that are looked through within seconds and little memory.
inline constexpr double mostSetups = 2e6;

/// Where sizes and box make more than that; counted without making them. The path is the longest
/// list of them, `names[0]` the next.
[[nodiscard]] std::optional<Problem> tooManySetups(std::span<const FrameSize> frames,
                                                   const Bicycle& bicycle, const Stock& stock,
                                                   const Tables& tables);

} // namespace tripoise
