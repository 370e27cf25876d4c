// SPDX-License-Identifier: MIT
//
// The room a front wheel takes as it is steered, behind the steering axis where the shoes are.
//
// The wheel's middle plane holds the steering axis, so in cylindrical coordinates about the axis
// (height s above the axle, distance q from the axis) every steered position has the same outline:
// behind the axis, a point is inside exactly when
//
//     (q + o)^2 + s^2 <= R^2,     o the fork's offset, R the outside radius,
//
// and for a mudguard with square edges of half-width h, with sqrt(q^2 - h^2) in place of q. The
// tyre's round section needs no further term: the room swept by a ring of spheres is that of the
// ring grown by their radius, and ring and growth lie in the same plane. The body is convex, and
// closed form; it reproduces the four rows of tests/reference/toe_clearance.csv. Exact for a wheel
// that can be steered as far as the contact asks for, which bicycles with toes near the wheel
// always can.
#pragma once

#include "frame/skeleton.h"

#include <optional>

namespace tripoise {

using Spot = Eigen::Vector3d; ///< x, y as Point; z to the rider's right, mm

struct SweptWheel {
    Point axle = Point::Zero();
    Angle headAngle;
    double offsetMm = 0.0;
    double radiusMm = 0.0;    ///< outside
    double sectionMm = 0.0;   ///< radius of a tyre's round section, 0 for a mudguard
    double halfWidthMm = 0.0; ///< of a mudguard's square edges, 0 for a tyre
};

/// The mudguard where there is one, else the tyre.
[[nodiscard]] SweptWheel sweptWheel(const Skeleton& skeleton);

/// A place from the steering axis and the axle's height along it.
struct FromAxis {
    double above = 0.0; ///< s
    double ahead = 0.0; ///< in the plane of a straight wheel, negative behind the axis
    double out = 0.0;   ///< to the right
};
[[nodiscard]] FromAxis fromAxis(const SweptWheel& wheel, const Spot& spot);

struct Touch {
    double forwardMm = 0.0;     ///< from the spot, straight ahead; negative when the spot is inside
    Angle steer;                ///< away from the spot's side, at which the wheel first is there
    Spot normal = Spot::Zero(); ///< of the swept body, outwards; not of unit length
};
/// Straight ahead from a spot to the swept body; empty where it passes by.
[[nodiscard]] std::optional<Touch> touchAhead(const SweptWheel& wheel, const Spot& spot);

/// The wheel held at one steering angle (positive turns its back to the right), taken as solid
/// between its spokes.
class HeldWheel {
public:
    HeldWheel(const SweptWheel& wheel, Angle steer);

    /// Negative inside.
    [[nodiscard]] double distanceTo(const Spot& spot) const;

    /// A spot in the middle of its section, round from the foremost upwards; for drawing.
    [[nodiscard]] Spot ringSpot(Angle round) const;
    /// A spot of what turns with it, from where that is with the wheel straight.
    [[nodiscard]] Spot turned(const Spot& straight) const;

private:
    Angle m_steer;
    Spot m_onAxis; ///< beside the axle
    Spot m_up;     ///< along the steering axis
    Spot m_ahead;  ///< in the wheel's plane, square to the axis
    Spot m_out;    ///< along the axle
    double m_offset;
    double m_ring; ///< radius to the middle of the tyre's section
    double m_halfWidth;
    double m_section;
};

} // namespace tripoise
