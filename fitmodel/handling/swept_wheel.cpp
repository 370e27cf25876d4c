// SPDX-License-Identifier: MIT
#include "handling/swept_wheel.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double toleranceMm = 1e-9;
constexpr int mostSteps = 60;

double length(double a, double b)
{
    return std::sqrt(a * a + b * b); // far from where std::hypot's care would matter
}

} // namespace

SweptWheel sweptWheel(const Skeleton& skeleton)
{
    SweptWheel wheel{skeleton.frontAxle,     skeleton.headAngle,    skeleton.forkOffsetMm.value,
                     skeleton.wheelRadiusMm, 0.5 * skeleton.tyreMm, 0.0};
    if (skeleton.mudguard) {
        wheel.radiusMm += skeleton.mudguard->gapMm.value_or(0.0);
        wheel.sectionMm = 0.0;
        wheel.halfWidthMm = 0.5 * skeleton.mudguard->widthMm.value_or(skeleton.tyreMm);
    }
    return wheel;
}

FromAxis fromAxis(const SweptWheel& wheel, const Spot& spot)
{
    const Point fromAxle = spot.head<2>() - wheel.axle;
    return {fromAxle.dot(upTube(wheel.headAngle)),
            fromAxle.dot(aheadOfTube(wheel.headAngle)) + wheel.offsetMm, spot.z()};
}

std::optional<Touch> touchAhead(const SweptWheel& wheel, const Spot& spot)
{
    // Along x the distance to the body is convex, so Newton's steps from behind never overshoot.
    const Point up = upTube(wheel.headAngle);
    const Point ahead = aheadOfTube(wheel.headAngle);
    const FromAxis from = fromAxis(wheel, spot);
    const double side = from.out * from.out - wheel.halfWidthMm * wheel.halfWidthMm;
    const double farBehind = wheel.radiusMm + 2.0 * std::abs(wheel.offsetMm);

    double forward = std::min(0.0, (-farBehind - from.ahead) / ahead.x());
    for (int step = 0; step < mostSteps; ++step) {
        const double s = from.above + forward * up.x();
        const double u = from.ahead + forward * ahead.x();
        const double q = std::sqrt(std::max(0.0, u * u + side));
        const double reach = length(q + wheel.offsetMm, s);
        const double beyond = reach - wheel.radiusMm;
        if (q <= 0.0 || u >= 0.0 || reach <= 0.0)
            return std::nullopt;
        const double byU = (q + wheel.offsetMm) / reach * u / q;
        const double byS = s / reach;
        const double slope = byU * ahead.x() + byS * up.x();
        if (std::abs(beyond) < toleranceMm) {
            const double azimuth = std::atan2(std::abs(from.out), -u);
            const double edge =
                std::asin(std::min(1.0, wheel.halfWidthMm / std::hypot(u, from.out)));
            const Point inPlane = byU * ahead + byS * up;
            return Touch{
                forward, Angle::radians(azimuth - edge),
                Spot(inPlane.x(), inPlane.y(), (q + wheel.offsetMm) / reach * from.out / q)};
        }
        if (slope >= 0.0)
            return std::nullopt;
        forward -= beyond / slope;
    }
    return std::nullopt;
}

HeldWheel::HeldWheel(const SweptWheel& wheel, Angle steer)
    : m_steer(steer), m_offset(wheel.offsetMm), m_ring(wheel.radiusMm - wheel.sectionMm),
      m_halfWidth(wheel.halfWidthMm), m_section(wheel.sectionMm)
{
    const Point up = upTube(wheel.headAngle);
    const Point ahead = aheadOfTube(wheel.headAngle);
    const double sine = std::sin(steer.rad());
    const double cosine = std::cos(steer.rad());
    const Point onAxis = wheel.axle - m_offset * ahead;
    m_onAxis = Spot(onAxis.x(), onAxis.y(), 0.0);
    m_up = Spot(up.x(), up.y(), 0.0);
    m_ahead = Spot(cosine * ahead.x(), cosine * ahead.y(), -sine);
    m_out = Spot(sine * ahead.x(), sine * ahead.y(), cosine);
}

double HeldWheel::distanceTo(const Spot& spot) const
{
    const Spot from = spot - m_onAxis;
    const double radial = length(from.dot(m_up), from.dot(m_ahead) - m_offset) - m_ring;
    const double sideways = std::abs(from.dot(m_out)) - m_halfWidth;
    const double outside = length(std::max(0.0, radial), std::max(0.0, sideways));
    return outside + std::min(0.0, std::max(radial, sideways)) - m_section;
}

Spot HeldWheel::ringSpot(Angle round) const
{
    const Point at = m_ring * along(round);
    return m_onAxis + (m_offset + at.x()) * m_ahead + at.y() * m_up;
}

Spot HeldWheel::turned(const Spot& straight) const
{
    return m_onAxis + Eigen::AngleAxisd(m_steer.rad(), m_up) * (straight - m_onAxis);
}

} // namespace tripoise
