// SPDX-License-Identifier: MIT
//
// How sizes ride, side by side, line by line: what a rider feels first, then the figures behind it.
#pragma once

#include "wording/setup_rows.h"

namespace tripoise {

/// A null column is a size that carries no set-up; it says a dash.
using RideColumns = std::vector<const Ride*>;

/// Room for the feet, steadiness, braking, climbing.
[[nodiscard]] std::vector<SetupRow> rideRows(const RideColumns& columns);
/// Steering, clearances and loads in figures, for who wants them.
[[nodiscard]] std::vector<SetupRow> rideFigureRows(const RideColumns& columns);

/// "Shoe 21 mm into the wheel", "13 mm clear"; for a label too.
[[nodiscard]] QString toeRoom(const std::optional<ToeOverlap>& toe);
/// "The shoe overlaps … from 24° on, at 9 km/h": over all angles of bar and crank.
[[nodiscard]] QString toeSentence(const Ride& ride);
/// "18–28 km/h", "from 18 km/h", "at no speed".
[[nodiscard]] QString steadySpeeds(const SelfStability& stability);

/// In what one rides differently from another; empty where that cannot be told.
[[nodiscard]] QString rideDifference(const Candidate& one, const Candidate& other,
                                     const Prepared& prepared);
/// The same of the named size against its runner-up.
[[nodiscard]] QString rideDifference(const Advice& advice, const Prepared& prepared);
/// What these figures are worth.
[[nodiscard]] QString rideCaution();

/// What is acknowledged, and that as something that can be undone.
[[nodiscard]] QString toeToldWords();
[[nodiscard]] QString toeToldStep();

} // namespace tripoise
