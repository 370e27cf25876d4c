// SPDX-License-Identifier: MIT
//
// How a size steers and stands, from its skeleton alone. Formulas as in Meijaard et al. 2007 (Proc
// R Soc A 463:1955) for the trail; head angle from the horizontal.
#pragma once

#include "frame/skeleton.h"

namespace tripoise {

struct Steering {
    double trailMm = 0.0;           ///< on the ground: (R cos H - o) / sin H
    double mechanicalTrailMm = 0.0; ///< perpendicular to the axis: R cos H - o
    double flopMm = 0.0;            ///< trail sin H cos H
    double frontCentreMm = 0.0;     ///< straight
    double wheelbaseMm = 0.0;       ///< at the forward end of an adjustable dropout
    double wheelbaseLongMm = 0.0;   ///< at its rear end
    double chainstayMm = 0.0;       ///< at the forward end
    double chainstayLongMm = 0.0;   ///< at the rear end
    double bbHeightMm = 0.0;
    /// Where the steering axis passes the vertical through the front axle: height above the ground,
    /// share of the wheel's radius, 1 - o / (R cos H).
    double axisHeightShare = 0.0;
};

[[nodiscard]] Steering steeringOf(const Skeleton& skeleton);

/// How far a point, such as the grips, lies ahead of the steering axis; perpendicular, mm.
[[nodiscard]] double aheadOfSteering(const Skeleton& skeleton, const Point& point);

/// What the hands have to turn: how far the grips are ahead of the axis, and how far from it,
/// square to it. A longer lever turns slower for the same movement of the hand; grips behind the
/// axis swing sideways the other way.
struct GripLever {
    double aheadMm = 0.0;
    double leverMm = 0.0;
};
[[nodiscard]] GripLever gripLever(const Skeleton& skeleton, const Point& grip,
                                  double gripHalfWidthMm);

/// The advice of ISO 4210-2, Annex A, from memory: check a bought copy. Advice, not a requirement;
/// many touring, trekking and small-wheeled bicycles lie above it.
struct SteeringAdvice {
    Range headAngleDeg;
    Range axisHeightShare;
};
[[nodiscard]] bool withinAdvice(const Skeleton& skeleton, const SteeringAdvice& advice);

/// Lean at which the outer edge of the lower pedal meets the ground, the bicycle rolling over the
/// round of its tyre; riderless, tyres unsquashed (16 CFR 1512.17(c) asks for 25 degrees).
[[nodiscard]] Angle pedalStrikeLean(const Skeleton& skeleton, double crankMm, double pedalLateralMm,
                                    double pedalWidthMm);

} // namespace tripoise
