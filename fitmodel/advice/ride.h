// SPDX-License-Identifier: MIT
//
// How an advised set-up rides: toe, heel and knee room, balance and self-stability, for the rider
// it was advised for. Posture is that of the use with the largest share in the mix.
#pragma once

#include "advice/basis.h"
#include "handling/remedies.h"

namespace tripoise {

struct AdvisedSetup;
struct UsePosture;

struct Ride {
    Steering steering;
    double wheelMm = 0.0; ///< outside, by ISO 5775
    GripLever grips;
    Angle pedalLean;                               ///< at which a pedal meets the ground
    std::optional<ToeClearance> toeClearance;      ///< crank level, as the standards have it
    std::optional<ToeClearance> leastToeClearance; ///< of any crank angle
    std::optional<double> toeClearanceLimitMm;     ///< of the standard it is sold under
    std::optional<ToeOverlap> toe;                 ///< as the rider meets it
    std::optional<TightTurn> touchingTurn;         ///< where the wheel first comes to the shoe
    std::optional<OverTurn> heelToBag;             ///< with luggage at the rear
    OverTurn kneeToBar;
    OverTurn kneeToTurnedBar;
    FootToGround foot;
    std::optional<double> tyreLeftMm;
    std::optional<Balance> balance;
    std::optional<Grades> grades;
    std::optional<double> frontShareFullyBack;
    std::optional<double> handsShareBound; ///< share of the rider's mass
    std::optional<SystemWeight> weight;
    std::optional<WhippleModel> model; ///< for the picture over speed
    std::optional<SelfStability> stability;
};

[[nodiscard]] Ride rideOf(const AdvisedSetup& advised, const PreparedSize& size,
                          const Basis& basis);

/// Of it how the load stands on the wheels; on any contacts, with the postures they ask for.
[[nodiscard]] std::optional<Balance> loadOn(const Setup& setup, const std::vector<UsePosture>& uses,
                                            const PreparedSize& size, const Basis& basis);

/// The least toe clearance of the standard the bicycle is sold under, where that applies.
[[nodiscard]] std::optional<double> leastToeClearanceUnder(const Riding& riding,
                                                           const ToeTable& table);

/// What is worth telling about it, short of limits; the gravest first.
[[nodiscard]] Findings rideFindings(const Ride& ride, const Skeleton& skeleton,
                                    const HandlingTables& tables);

/// The cures of its toe overlap; `index` is the size's place in Prepared::sizes, as is what the
/// next size of the same model is told by.
[[nodiscard]] std::vector<ToeRemedy> toeRemediesOf(const AdvisedSetup& advised, std::size_t index,
                                                   const Basis& basis);

/// The same of the knee, the bar straight.
[[nodiscard]] OverTurn kneeToBarOn(const Setup& setup, const std::vector<UsePosture>& uses,
                                   const PreparedSize& size, const Basis& basis);

} // namespace tripoise
