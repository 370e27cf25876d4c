// SPDX-License-Identifier: MIT
//
// How the load stands on the wheels: centre of mass, load shares, when braking lifts the rear wheel
// and climbing the front one. Plane statics of a rigid bicycle and rider; as good as the masses it
// is given (handling/masses.h), so shares are estimates of a few hundredths. Riders move: hanging
// back adds about 0.2 g to what a seated rider can brake (Riel 2005, as reported).
#pragma once

#include "handling/masses.h"

#include <optional>

namespace tripoise {

struct Balance {
    double massKg = 0.0;
    Point centre = Point::Zero(); ///< of all mass, from the rear contact
    double wheelbaseMm = 0.0;

    [[nodiscard]] double frontShare() const { return centre.x() / wheelbaseMm; }
};

/// Empty where nothing weighs anything, stands on one point, or lies on the ground.
[[nodiscard]] std::optional<Balance> balanceOf(const WhippleBicycle& bicycle);

/// Deceleration, in g, that lifts the rear wheel. On a slope down by s from the horizontal the
/// moments about the front contact give a/g = cos s (w - x)/y - sin s; never below 0.
[[nodiscard]] double pitchOverG(const Balance& balance, Angle downhill = {});

/// Slope on which the front wheel carries nothing, standing still or climbing steadily:
/// tan s = x / y.
[[nodiscard]] Angle frontLiftsAtRest(const Balance& balance);

/// The same under pedal strokes, whose peak drive is `pulse` times the mean that holds the speed on
/// that slope: m (pulse - 1) g sin s y more turns the bicycle back, so tan s = x / (pulse y).
[[nodiscard]] Angle frontLiftsUnderPedalling(const Balance& balance, double pulse);

/// Both hands' load, a share of the rider's mass, if head, trunk and arms were one rigid piece
/// hinged at the hip and the hands pushed straight down: an upper bound, and coarse, since back and
/// pedalling legs carry part. Empty where the grip is not ahead of the hip.
[[nodiscard]] std::optional<double>
handsShareBound(const SeatedRider& rider, const BodyModel& model, const SegmentTable& table);

/// The figures of this room, with their origins (assets/handling.json).
struct BalanceTable {
    double pedalPulse = 0.0;          ///< peak of the drive over its mean
    double leastFrontShare = 0.0;     ///< ISO 4210-2:2015, 4.7.5
    double riderBackOnSaddleMm = 0.0; ///< how far a rider can sit back from the saddle point
    double brakingToCountOnG = 0.0;   ///< for advice, in any position
    double climbToCountOn = 0.0;      ///< a gradient, share of one
    double descentToldOf = 0.0;       ///< a gradient to tell the braking on
};

/// What braking and climbing do; gradients are shares of one.
struct Grades {
    double overTheBarsG = 0.0;
    double downhill = 0.0;
    double overTheBarsDownhillG = 0.0;
    double liftsAtRest = 0.0;
    double liftsUnderPedalling = 0.0;
};
[[nodiscard]] Grades gradesOf(const Balance& balance, const BalanceTable& table);

/// As ISO 4210-2:2015, 4.7.5 has it: saddle and rider fully back, hands on the grips.
[[nodiscard]] SeatedRider fullyBack(SeatedRider rider, const Range& saddleBehindTubeMm,
                                    Angle seatTube, const BalanceTable& table);

struct SystemWeight {
    double massKg = 0.0;           ///< bicycle, rider and bags
    std::optional<double> limitKg; ///< the maker's
    std::optional<double> leftKg;  ///< negative when over
};
[[nodiscard]] SystemWeight systemWeight(const Balance& balance, std::optional<double> limitKg);

} // namespace tripoise
