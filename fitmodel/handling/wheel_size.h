// SPDX-License-Identifier: MIT
//
// Rims and tyres by ISO 5775: a tyre's width and its bead seat's diameter; nominal outside diameter
// is bead seat plus twice the width. A loaded wheel rolls 1 to 3 % less (from memory).
#pragma once

#include "frame/skeleton.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tripoise {

/// One row of assets/handling.json.
struct RimSize {
    double beadSeatMm = 0.0;
    std::string names;  ///< as the trade calls them
    bool common = true; ///< new wheels and tyres of many widths are made for it
};

[[nodiscard]] constexpr double outsideDiameter(double beadSeatMm, double tyreMm)
{
    return beadSeatMm + 2.0 * tyreMm;
}

/// The row of a bead seat; empty for one that is not in the table.
[[nodiscard]] const RimSize* rimOf(std::span<const RimSize> rims, double beadSeatMm);

/// The greatest of values that is less than one.
[[nodiscard]] std::optional<double> nextBelow(std::span<const double> values, double value);

/// The next smaller rim that is common; nullptr where there is none.
[[nodiscard]] const RimSize* nextSmaller(std::span<const RimSize> rims, double beadSeatMm);

/// The same size on other wheels, front and rear alike; its drop and angles stay. Everything else
/// follows when its skeleton is made anew.
[[nodiscard]] FrameSize withWheel(FrameSize frame, double beadSeatMm, double tyreMm);
[[nodiscard]] FrameSize withoutMudguard(FrameSize frame);

/// The same size on the next narrower of the tyres made; empty where there is none.
[[nodiscard]] std::optional<FrameSize>
onNarrowerTyre(const FrameSize& frame, const Skeleton& skeleton, std::span<const double> tyresMm);
/// The same on the next smaller rim that is common, its tyre no wider than the maker's limit.
[[nodiscard]] std::optional<FrameSize>
onSmallerRim(const FrameSize& frame, const Skeleton& skeleton, std::span<const RimSize> rims);

} // namespace tripoise
