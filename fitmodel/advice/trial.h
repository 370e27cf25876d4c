// SPDX-License-Identifier: MIT
//
// What becomes of rider and parts when the contacts of an advised set-up are pulled about by hand.
//
// The rider is solved on the tried contacts as on advised ones (advice/assess.h). The bar stays,
// and the cranks unless others are named; the stem and the spacers that would carry the bar there
// follow in closed form at the advised stem's angle (setup/setup.h, stemCarrying), sold or not, and
// the box is searched for the cockpit that comes closest.
#pragma once

#include "advice/advise.h"

#include <optional>

namespace tripoise {

/// What can be pulled about; from the bottom bracket.
struct Contacts {
    SaddlePlace saddle;
    Point grip = Point::Zero();    ///< at the bar's main place
    std::optional<double> crankMm; ///< the advised one where empty
};

[[nodiscard]] inline Contacts contactsOf(const Setup& setup)
{
    return {setup.saddle, setup.grip, {}};
}

/// Contacts of the bicycle ridden today; empty where saddle or grip are not known.
[[nodiscard]] std::optional<Contacts> contactsOf(const CurrentBike& bike);

/// A cockpit of the box, on the size it was looked for.
struct NearestCockpit {
    Cockpit cockpit;
    Stem stem; ///< as mounted
    Point grip = Point::Zero();
    double offMm = 0.0; ///< from where the hands were pulled to
};

struct Tried {
    Setup setup; ///< on the advised bar; stem and spacers as they would have to be
    std::vector<UsePosture> uses;
    LegPosture leg;
    double gripAheadOfSteeringMm = 0.0; ///< perpendicular to the steering axis
    double advisedAheadOfSteeringMm = 0.0;
    double kneeToBarMm = 0.0;              ///< room over a turn of the crank
    std::optional<Balance> load;           ///< rider, bicycle and luggage on the wheels
    std::optional<NearestCockpit> nearest; ///< empty where the box has none
    Findings findings;                     ///< limits first; none that the advised set-up breaks
};

/// `advised` must be advised on `size`.
[[nodiscard]] Tried tryContacts(const Contacts& contacts, const AdvisedSetup& advised,
                                const PreparedSize& size, const Basis& basis);

/// The cockpit whose grip, on a bar of one kind, comes nearest to a point; of equals the first,
/// those with the bar `preferred` before others.
[[nodiscard]] std::optional<NearestCockpit>
nearestCockpit(const Point& grip, std::size_t preferredBar, const PreparedSize& size,
               const Prepared& prepared, const Tables& tables);

} // namespace tripoise
