// SPDX-License-Identifier: MIT
//
// What cures toe overlap, each with the overlap it leaves and what else it changes. Every remedy is
// worked out anew on the changed bicycle, one change at a time; none is weighed here. A smaller rim
// keeps the tyre's width and so the maker's limit; a foot further back is cleats or habit, and the
// saddle should follow it.
#pragma once

#include "handling/steering.h"
#include "handling/toe.h"
#include "handling/wheel_size.h"

#include <span>
#include <vector>

namespace tripoise {

/// One size with one rider's shoe on its pedals.
struct ToeSituation {
    FrameSize frame;
    Body body;
    double shoeLengthMm = 0.0;
    Pedalling pedalling;
    double pedalLateralMm = 0.0;
    double pedalWidthMm = 0.0;
    double ballAheadMm = 0.0;
};

enum class RemedyKind { NextSize, NarrowerTyre, SmallerRim, ShorterCrank, FootBack, NoMudguard };

struct ToeRemedy {
    RemedyKind kind = {};
    /// What it is changed to: index among the sizes, tyre's width, bead seat, crank, ball ahead of
    /// the spindle; nothing for a mudguard taken off.
    double to = 0.0;
    std::optional<double> overlapMm; ///< left; empty where the shoe passes beside the wheel
    double bbHigherMm = 0.0;
    Angle pedalLean; ///< as it then is
    double trailMoreMm = 0.0;
    double wheelbaseMoreMm = 0.0;
    double development = 1.0; ///< distance a crank turn, against before
    double leverage = 1.0;    ///< of the cranks, against before
    bool counted = false;     ///< the size is judged with it
};

/// What there is to change to.
struct ToeChoices {
    std::span<const FrameSize> sizes; ///< in the order of their size, this one among them
    std::size_t size = 0;             ///< this one's index
    std::span<const double> cranksMm;
    std::span<const double> tyresMm; ///< widths made
    std::span<const RimSize> rims;
};

[[nodiscard]] std::optional<ToeOverlap>
overlapOn(const ToeSituation& situation, const FrameDefaults& defaults, const ToeTable& table);

/// Those that there are, in the order of RemedyKind. The narrower tyre and the shorter crank are
/// the next that there are; the next size is the next larger one.
[[nodiscard]] std::vector<ToeRemedy> toeRemedies(const ToeSituation& situation,
                                                 const ToeChoices& choices,
                                                 const FrameDefaults& defaults,
                                                 const ToeTable& table);

} // namespace tripoise
