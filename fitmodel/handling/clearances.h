// SPDX-License-Identifier: MIT
//
// Room for heels, knees, tyres and feet.
//
// Plane leg of posture/leg.h over the crank's turn, so knees and heels are where a steady foot puts
// them; riders' knees sway, riders' heels drop. Wanted: heel to bag 20 mm, knee to bar 50 mm, both
// common practice without a source. Bags are boxes; real ones are often cut away at the lower front
// corner, which helps.
#pragma once

#include "handling/masses.h"

#include <optional>

namespace tripoise {

/// The figures of this page, with their origins (assets/handling.json).
struct ClearanceTable {
    double wantedHeelMm = 0.0;
    double wantedKneeMm = 0.0;
    double shoeBehindHeelMm = 0.0;
    double kneeRoundMm = 0.0;     ///< knee cap ahead of the joint's centre, as a ball around it
    double barTubeMm = 0.0;       ///< radius of bar and grip
    double turnedBarDeg = 0.0;    ///< of a bar in the tightest turns ridden
    double barBeyondPalmMm = 0.0; ///< bar's end from the middle of the palm
    double hipLeansOutMm = 0.0;   ///< hip of the standing leg from the bicycle's plane
    double tiptoeDeg = 0.0;       ///< foot stretched, from level
};

/// A bag on the rear carrier.
struct RearBag {
    double setbackMm = 0.0; ///< its middle behind the axle
    double depthMm = 0.0;   ///< front to back
    double bottomAboveAxleMm = 0.0;
};

struct OverTurn {
    double clearanceMm = 0.0;
    Angle crank;
};

/// Heel of the shoe to the bag's front, straight back, least over the part of the turn in which the
/// heel is above the bag's bottom; empty where it never is.
[[nodiscard]] std::optional<OverTurn> heelToBag(const SeatedRider& rider, const BodyModel& model,
                                                const Skeleton& skeleton, const RearBag& bag,
                                                const ClearanceTable& table, double ballAheadMm);

/// Right knee to the bar, least over the turn, the bar steered towards that knee's side by an
/// angle (its right end comes back); negative when they touch.
[[nodiscard]] OverTurn kneeToBar(const SeatedRider& rider, const BodyModel& model,
                                 const Skeleton& skeleton, const Point& clamp,
                                 double straightCentreMm, Angle steer, const ClearanceTable& table);

/// What is left between tyre and the maker's limit; empty where none is given.
[[nodiscard]] std::optional<double> tyreLeft(const FrameSize& frame, const Skeleton& skeleton);

/// Sole above the ground, bicycle upright; negative when the foot stands with the knee bent.
struct FootToGround {
    double flatMm = 0.0;              ///< from the saddle, sole level
    double tiptoeMm = 0.0;            ///< from the saddle, ball of the foot
    std::optional<double> straddleMm; ///< room over the frame, standing in shoes; positive is room
};
[[nodiscard]] FootToGround footToGround(const SeatedRider& rider, const BodyModel& model,
                                        const Skeleton& skeleton, double soleMm,
                                        const ClearanceTable& table);

} // namespace tripoise
