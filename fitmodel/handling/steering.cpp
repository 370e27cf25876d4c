// SPDX-License-Identifier: MIT
#include "handling/steering.h"

#include <algorithm>
#include <cmath>

namespace tripoise {

Steering steeringOf(const Skeleton& skeleton)
{
    const double sine = std::sin(skeleton.headAngle.rad());
    const double cosine = std::cos(skeleton.headAngle.rad());
    Steering steering;
    steering.mechanicalTrailMm = skeleton.wheelRadiusMm * cosine - skeleton.forkOffsetMm.value;
    steering.trailMm = steering.mechanicalTrailMm / sine;
    steering.flopMm = steering.trailMm * sine * cosine;
    steering.frontCentreMm = skeleton.frontAxle.norm();
    steering.wheelbaseMm = skeleton.frontAxle.x() - skeleton.rearAxle.x();
    const double drop = skeleton.bbDropMm.value;
    const double longest = std::max(skeleton.chainstayEndMm, std::abs(drop));
    steering.wheelbaseLongMm = skeleton.frontAxle.x() + std::sqrt(longest * longest - drop * drop);
    steering.chainstayMm = skeleton.chainstayMm.value;
    steering.chainstayLongMm = longest;
    steering.bbHeightMm = -skeleton.groundY();
    steering.axisHeightShare =
        1.0 - skeleton.forkOffsetMm.value / (skeleton.wheelRadiusMm * cosine);
    return steering;
}

double aheadOfSteering(const Skeleton& skeleton, const Point& point)
{
    return (point - skeleton.headTop).dot(aheadOfTube(skeleton.headAngle));
}

GripLever gripLever(const Skeleton& skeleton, const Point& grip, double gripHalfWidthMm)
{
    const double ahead = aheadOfSteering(skeleton, grip);
    return {ahead, std::hypot(ahead, gripHalfWidthMm)};
}

bool withinAdvice(const Skeleton& skeleton, const SteeringAdvice& advice)
{
    return outside(skeleton.headAngle.deg(), advice.headAngleDeg) == 0.0
           && outside(steeringOf(skeleton).axisHeightShare, advice.axisHeightShare) == 0.0;
}

Angle pedalStrikeLean(const Skeleton& skeleton, double crankMm, double pedalLateralMm,
                      double pedalWidthMm)
{
    // From the centre of the tyre's section, radius r above the ground, the pedal's edge lies at
    // (out, up); leaning by a, it touches when r + up cos a - out sin a = 0.
    const double tyre = 0.5 * skeleton.tyreMm;
    const double up = -skeleton.groundY() - crankMm - tyre;
    const double out = pedalLateralMm + 0.5 * pedalWidthMm;
    const double reach = std::hypot(up, out);
    return Angle::radians(std::atan2(up, out) + std::asin(std::min(1.0, tyre / reach)));
}

} // namespace tripoise
