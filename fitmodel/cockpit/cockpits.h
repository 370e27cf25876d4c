// SPDX-License-Identifier: MIT
//
// Every front assembly that the box of parts can make.
#pragma once

#include "cockpit/parts.h"

#include <vector>

namespace tripoise {

/// Indices are into the stock's lists.
struct Cockpit {
    std::size_t stem = 0;
    bool flipped = false;
    std::size_t bar = 0;
    double spacersMm = 0.0; ///< in all, below the stem; of a quill, how far it is raised

    bool operator==(const Cockpit&) const = default;
};

/// Every total that some of the pieces make, ascending, starting with 0; none above `mostMm`.
/// Totals are told apart to a hundredth of a millimetre.
[[nodiscard]] std::vector<double> spacerTotals(const std::vector<double>& pieces, double mostMm);
/// Fewest of the pieces that make a total, largest first; the total as one piece where none do.
[[nodiscard]] std::vector<double> spacerPieces(const std::vector<double>& pieces, double totalMm);
/// How many of such totals are not above `mostMm`.
[[nodiscard]] std::size_t totalsUpTo(const std::vector<double>& totals, double mostMm);

/// A stem as it would be mounted: with its angle, over or under.
struct MountedStem {
    std::size_t stem = 0;
    bool flipped = false;

    bool operator==(const MountedStem&) const = default;
};

/// The stems that fit a steerer, each way up, those to be ordered last. Two that put the bar at the
/// same place for the same clamp are one: the one in stock stays, and of those the one that needs
/// no turning over.
[[nodiscard]] std::vector<MountedStem> mountedStems(const Stock& stock, const Steerer& steerer,
                                                    const PartDefaults& defaults);

[[nodiscard]] Angle effectiveAngle(const Stem& stem, bool flipped);

[[nodiscard]] bool clampsMatch(const Stem& stem, const Bar& bar, const PartDefaults& defaults);
[[nodiscard]] bool steererMatches(const Stem& stem, const Steerer& steerer,
                                  const PartDefaults& defaults);
/// The stem as a shim or an adaptor puts it on a steerer; empty where it goes on without one, and
/// where none is made.
[[nodiscard]] std::optional<Stem> adapted(const Stem& stem, const Steerer& steerer,
                                          const PartDefaults& defaults);

} // namespace tripoise
