// SPDX-License-Identifier: MIT
//
// What one bicycle has whichever of its sizes is taken: tyres and mudguards, the kind of bar, the
// crank that is fitted, saddle and pedals.
#pragma once

#include "cockpit/parts.h"
#include "frame/geometry.h"

#include <span>

namespace tripoise {

struct Bicycle {
    std::optional<double> tyreMm;
    std::optional<double> beadSeatMm; ///< of its rims, where they are not the size's own
    std::optional<Mudguard> mudguard;
    std::optional<BarKind> barKind; ///< of the bars in the box, these alone
    std::optional<double> crankMm;  ///< fitted already; it counts as in the box
    Saddle saddle;
    Pedal pedal;

    bool operator==(const Bicycle&) const = default;
};

[[nodiscard]] Mounting mountingOf(const Bicycle& bicycle);

/// A size with the bicycle's wheels on it, or with its own where it has such.
[[nodiscard]] FrameSize mountedOn(FrameSize frame, const Bicycle& bicycle);

/// The bars in the box of the kind that the bicycle has, all without one.
[[nodiscard]] std::vector<Bar> barsFor(const Stock& stock, const Bicycle& bicycle);

} // namespace tripoise
