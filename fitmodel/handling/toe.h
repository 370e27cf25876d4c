// SPDX-License-Identifier: MIT
//
// Will the toe hit the wheel? Twice: as the standards measure it, and as the rider meets it.
//
// The standards measure from the middle of the pedal, straight ahead, to the arc that the tyre or
// mudguard sweeps (16 CFR 1512.17(d): 89 mm on bicycles without foot retention; ISO
// 4210-2 4.13.2.2: 100 or 89 mm by type, from memory). The rider meets the shoe: its outline ahead
// of the ball is half an ellipse in the plane of the foot, which is pitched as the leg model
// pitches it, at mid-height of the toe box, pointing straight ahead. Overlap is how far the shoe
// would have to go straight back to clear the swept wheel at every crank angle; positive when they
// touch. Against the swept body each is closed form for a given crank angle
// (handling/swept_wheel.h), then least over the turn. Expect some 10 mm of difference to a real
// shoe; a foot turned out or in adds its own.
//
// Overlap is a walking-pace hazard: check it by hand, sitting on the bicycle in the shoes that will
// be worn; mudguards there need stays that break away.
#pragma once

#include "base/range.h"
#include "base/standard.h"
#include "handling/swept_wheel.h"
#include "posture/leg.h"

namespace tripoise {

/// The figures of this page, with their origins (assets/handling.json).
struct ToeTable {
    double ballAheadOfSpindleMm = 0.0;
    double boxAboveSoleMm = 0.0;     ///< middle of the toe box over the foot's sole
    double breadthOfLength = 0.0;    ///< of a shoe
    double leanInTightTurnDeg = 0.0; ///< what riders dare at walking pace
    double checkRoomMm = 0.0;        ///< room under which a real shoe may touch all the same
    PerStandard<double> leastClearanceMm{};
};

struct ToeClearance {
    double clearanceMm = 0.0; ///< spindle's middle to the swept wheel, straight ahead
    Angle steer;
    Angle crank; ///< above level forward
};
/// Crank level forward, as the standards have it; empty where the pedal passes beside the wheel.
[[nodiscard]] std::optional<ToeClearance> toeClearance(const SweptWheel& wheel, double crankMm,
                                                       double pedalLateralMm);
/// The least of any crank angle.
[[nodiscard]] std::optional<ToeClearance> leastToeClearance(const SweptWheel& wheel, double crankMm,
                                                            double pedalLateralMm);

/// The fore part of a shoe on its pedal, from the spindle along the foot.
struct ShoeOutline {
    double ballAheadMm = 0.0;
    double tipAheadOfBallMm = 0.0;
    double halfBreadthMm = 0.0;
    double aboveMm = 0.0; ///< middle of the toe box over the spindle
    double outMm = 0.0;   ///< middle of the shoe from the bicycle's plane
};
/// `ballAheadMm` where the rider says how the foot stands.
[[nodiscard]] ShoeOutline shoeOutline(const Body& body, double shoeLengthMm,
                                      const Foothold& foothold, double pedalLateralMm,
                                      const ToeTable& table,
                                      std::optional<double> ballAheadMm = std::nullopt);

/// What swings the shoe round.
struct Pedalling {
    Foothold foothold;
    Point saddle = Point::Zero(); ///< for how the foot is pitched over the turn
    double crankMm = 0.0;
};
/// A spot of the outline: from -90 degrees (inner side of the ball) over the tip to +90 (outer
/// side).
[[nodiscard]] Spot shoeSpot(const ShoeOutline& shoe, const Pedalling& pedalling, Angle crank,
                            Angle round);

/// Steering away from a foot ahead: from where the wheel comes to the shoe at some crank angle to
/// where it has passed.
struct TouchingSteer {
    Angle from;
    Angle to;
    Angle crank; ///< where on the turn it first touches
};

struct ToeOverlap {
    double overlapMm = 0.0; ///< positive when they touch, else the gap, negative
    Angle steer;            ///< at the worst
    Angle crank;            ///< at the worst, above level forward
    Spot at = Spot::Zero(); ///< of the shoe
    std::optional<TouchingSteer> touches;
};
/// Empty where the shoe passes beside the wheel at every crank angle. Without the steering angles
/// that touch, which cost several times as much.
[[nodiscard]] std::optional<ToeOverlap> worstToe(const SweptWheel& wheel, const ShoeOutline& shoe,
                                                 const Pedalling& pedalling);
/// The same with them.
[[nodiscard]] std::optional<ToeOverlap> toeOverlap(const SweptWheel& wheel, const ShoeOutline& shoe,
                                                   const Pedalling& pedalling);

/// How near the shoe ahead comes to the wheel, both held: cranks at one angle, the bar steered away
/// from that shoe. Negative when they meet.
[[nodiscard]] double shoeGap(const SweptWheel& wheel, const ShoeOutline& shoe,
                             const Pedalling& pedalling, Angle steer, Angle crank);

/// A turn at a steering angle, the bicycle upright: tan(on the ground) = tan(steer) sin(head
/// angle).
struct TightTurn {
    double radiusMm = 0.0; ///< of the rear wheel's track
    double speedMmS = 0.0; ///< at which a rider leaning so far turns so tightly
};
/// Empty when steering straight ahead.
[[nodiscard]] std::optional<TightTurn> tightTurn(Angle steer, Angle headAngle, double wheelbaseMm,
                                                 const ToeTable& table, double gravityMmS2);

} // namespace tripoise
