// SPDX-License-Identifier: MIT
//
// The bicycle ridden today, as a shop can take it: either the contacts from the bottom bracket, or
// from the saddle, with a plumb line, a straightedge and a tape.
//
//     nose behind the bottom bracket     setback = nose + nose ahead of the saddle point
//     straightedge level on the saddle,  bar's middle = saddle point height - down
//       down to the bar's middle
//     tape, nose to the bar's middle     level part = sqrt(tape² - down²)
//
// Grip and bar's middle are apart by what the bar's shape says. The conversion is exact; contacts
// are kept to a tenth of a millimetre.
#pragma once

#include "advice/riding.h"
#include "advice/tables.h"
#include "base/axes.h"

#include <optional>

namespace tripoise {

/// The bar of a bicycle by its kind: one of the box, else one as they usually are; the box's first
/// where the kind is not told.
[[nodiscard]] Bar barLike(std::optional<BarKind> kind, const Stock& stock, const Tables& tables);

/// What the conversion needs of saddle and bar.
struct TodayParts {
    double noseAheadMm = 0.0;          ///< of the saddle point
    Point gripFromBar = Point::Zero(); ///< palm, from the middle of the bar at its clamp
};

/// Taken from the saddle; those that are known.
struct FromSaddle {
    std::optional<double> heightMm;     ///< bottom bracket to saddle, as among the contacts
    std::optional<double> noseBehindMm; ///< the bottom bracket, level
    std::optional<double> barBelowMm;   ///< the saddle's top; negative when the bar is higher
    std::optional<double> noseToBarMm;  ///< straight, nose to the bar's middle

    bool operator==(const FromSaddle&) const = default;
};

/// What can be said of it from contacts.
[[nodiscard]] FromSaddle fromSaddle(const CurrentBike& bike, const TodayParts& parts);

/// The contacts that follow, in the place of what was taken; the rest of `bike` stays. A grip needs
/// saddle height, nose and both measures of the bar; while nothing is taken of the bar, the grip
/// stays as it was.
[[nodiscard]] CurrentBike withContacts(CurrentBike bike, const FromSaddle& taken,
                                       const TodayParts& parts);

/// Whether the tape is shorter than the straightedge's drop, which cannot be.
[[nodiscard]] bool tapeTooShort(const FromSaddle& taken);

} // namespace tripoise
