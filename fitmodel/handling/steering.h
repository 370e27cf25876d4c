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
    double bbHeightMm = 0.0;
};

[[nodiscard]] Steering steeringOf(const Skeleton& skeleton);

/// How far a point, such as the grips, lies ahead of the steering axis; perpendicular, mm.
[[nodiscard]] double aheadOfSteering(const Skeleton& skeleton, const Point& point);

/// Lean at which the outer edge of the lower pedal meets the ground, the bicycle rolling over the
/// round of its tyre; riderless, tyres unsquashed (16 CFR 1512.17(c) asks for 25 degrees).
[[nodiscard]] Angle pedalStrikeLean(const Skeleton& skeleton, double crankMm, double pedalLateralMm,
                                    double pedalWidthMm);

} // namespace tripoise
