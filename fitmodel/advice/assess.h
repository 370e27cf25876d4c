// SPDX-License-Identifier: MIT
//
// What a chosen set-up is worth and does: its ledger, its posture, its findings.
#pragma once

#include "advice/advise.h"

namespace tripoise {

namespace advice {
/// A set-up as a consideration looks at it.
struct Weighed {
    const Setup& setup;
    const PreparedSize& size;
    const Basis& basis;
    double measure = 0.0; ///< the consideration's own
    Point comfortableGrip = Point::Zero();
    double toeOverlapMm = 0.0;
};
} // namespace advice

[[nodiscard]] AdvisedSetup assess(const Choice& choice, SizeSearch& search, const Basis& basis,
                                  const PreparedSize& size);

/// How the rider takes a bar at its main place, use by use; `holds` are that bar's.
[[nodiscard]] std::vector<UsePosture> usePostures(const std::vector<Hold>& holds, BarKind kind,
                                                  const Point& hip, const Point& grip);

/// The most bent back of the uses.
[[nodiscard]] Angle lowestTrunk(const std::vector<UsePosture>& uses);

/// The leg under a trunk.
[[nodiscard]] LegPosture legPosture(const Person& person, const SaddlePlace& saddle, double crankMm,
                                    Angle trunk, const Tables& tables);

/// The leg at one step of the crank's turn.
struct TurnStep {
    Angle crank; ///< from the x axis
    Angle knee;  ///< flexion
    Angle hip;   ///< between trunk and thigh
    Angle ankle; ///< between shank and foot
    Point kneeAt = Point::Zero();
};
/// Once round, in even steps from the crank level forward.
[[nodiscard]] std::vector<TurnStep> legOverTurn(const Person& person, const SaddlePlace& saddle,
                                                double crankMm, Angle trunk, const Tables& tables);

/// Limits the set-up breaks.
[[nodiscard]] Findings limitsOf(const Setup& setup, const PreparedSize& size, const Basis& basis);

/// Joints outside their ranges, and a bar out of reach.
[[nodiscard]] Findings postureFindings(const std::vector<UsePosture>& uses, const LegPosture& leg,
                                       const Mix& mix, const Tables& tables);

/// Uses for which a stem is shorter or longer than usual.
[[nodiscard]] Findings stemFindings(double lengthMm, const std::vector<UsePosture>& uses,
                                    const PreparedSize& size, const Basis& basis);

/// What is worth telling about it, short of limits.
[[nodiscard]] Findings findingsOf(const AdvisedSetup& advised, double wantedSetbackMm,
                                  const PreparedSize& size, const Basis& basis);

} // namespace tripoise
