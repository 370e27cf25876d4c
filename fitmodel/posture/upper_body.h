// SPDX-License-Identifier: MIT
//
// The upper body between saddle and grip: trunk, arm and elbow.
//
// Two equations, three joints: the rider takes the posture that is most comfortable for the use, so
// the elbow is the one that makes the use's window cost least. Cost of a joint is
// ((angle - centre) / half-width)^2, doubled on its stretched side (trunk lower, arm-trunk larger).
// The arm lies in the plane of the bicycle after its length is shortened by its splay to the grips.
// Within 0.001 degrees of the optimum; the cost is unimodal in the elbow on 0..90 degrees (checked
// against a general optimiser in the tests). A grip beyond the straight arm, or closer than the
// bent arm allows, is out of reach: the arm is then taken at its end of travel and every further
// millimetre adds steeply growing cost, so costs stay finite and ordered.
#pragma once

#include "base/axes.h"
#include "posture/windows.h"
#include "rider/body.h"

#include <algorithm>
#include <cmath>

namespace tripoise {

/// The lengths the upper body is solved with, for one bar.
struct UpperLimbs {
    double trunkMm = 0.0;
    double upperArmMm = 0.0;
    double forearmMm = 0.0;
    double splayMm = 0.0; ///< grip half-width minus shoulder half-breadth
};

struct UpperPosture {
    Angle trunk;    ///< from the horizontal
    Angle armTrunk; ///< at the shoulder, between the lines to hip and grip
    Angle elbow;    ///< flexion, 0 = straight
    double cost = 0.0;
    double beyondMm = 0.0; ///< how far the grip is out of reach, 0 when reached
};

[[nodiscard]] UpperLimbs upperLimbs(const Body& body, double gripHalfWidthMm);

/// Hip of the trunk over a saddle point.
[[nodiscard]] inline Point midHip(const Point& saddle, const Body& body, const BodyModel& model)
{
    return saddle + Point(0.0, model.midHipAboveSaddleMm + body.hipHigherMm);
}

[[nodiscard]] UpperPosture solveUpperBody(const UpperLimbs& limbs, const Point& hip,
                                          const Point& grip, const UpperWindows& windows);

/// The same cost with the elbow held at an angle; for checking the solution against others.
[[nodiscard]] double costAtElbow(const UpperLimbs& limbs, const Point& hip, const Point& grip,
                                 Angle elbow, const UpperWindows& windows);

/// How a solved cost changes as the grip moves, points a millimetre. By the envelope theorem the
/// elbow need not be solved again; meaningful where the grip is within reach.
[[nodiscard]] Point costSlope(const UpperLimbs& limbs, const Point& hip, const Point& grip,
                              const UpperPosture& posture, const UpperWindows& windows);

/// The grip at which all three joints are at their centres.
[[nodiscard]] Point comfortableGrip(const UpperLimbs& limbs, const Point& hip,
                                    const UpperWindows& windows);

/// A proven floor under the cost of a grip, in closed form, from how far it is from the comfortable
/// one.
///
/// With joint changes x measured in half-widths, cost >= |x|^2, and the grip moves by J x + r with
/// |r| <= R |x|^2, where R is half of a bound on the second derivatives over all postures. In the
/// norm of (J J')^-1, in which |J x| <= |x|, a move of length s therefore has s <= |x| + k |x|^2
/// with k = R / (the shortest half-axis of J J'), which is solved for |x|.
struct CostFloor {
    double xx = 0.0, xy = 0.0, yy = 0.0; ///< (J J')^-1, 1/mm^2
    double bend = 0.0;                   ///< k

    [[nodiscard]] double at(double dxMm, double dyMm) const
    {
        const double length =
            std::sqrt(xx * dxMm * dxMm + 2.0 * xy * dxMm * dyMm + yy * dyMm * dyMm);
        const double halfWidths = 2.0 * length / (1.0 + std::sqrt(1.0 + 4.0 * bend * length));
        return halfWidths * halfWidths;
    }
    /// The least on a stretch: from a point, as far again along a direction as `lengthMm`.
    [[nodiscard]] double leastOn(const Point& from, const Point& along, double lengthMm) const
    {
        const Point slope(xx * along.x() + xy * along.y(), xy * along.x() + yy * along.y());
        const double to = std::clamp(-from.dot(slope) / along.dot(slope), 0.0, lengthMm);
        return at(from.x() + to * along.x(), from.y() + to * along.y());
    }
};
[[nodiscard]] CostFloor costFloor(const UpperLimbs& limbs, const UpperWindows& windows);

/// Shoulder and elbow in the plane, for drawing.
struct UpperPoints {
    Point hip;
    Point shoulder;
    Point elbow;
    Point grip;
};
[[nodiscard]] UpperPoints upperPoints(const UpperLimbs& limbs, const Point& hip, const Point& grip,
                                      const UpperPosture& posture);

} // namespace tripoise
