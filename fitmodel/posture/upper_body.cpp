// SPDX-License-Identifier: MIT
//
//   T, D    trunk; hip to grip                      mm
//   e       elbow flexion                           rad
//   A(e)    shoulder to grip in the plane:  A^2 = u^2 + f^2 + 2 u f cos e - splay^2
//   g       (A^2)'/2 = -u f sin e
//   E       T D sin(alpha) = T A sin(kappa), twice the triangle's area
//   alpha   angle at the hip; trunk = slope of hip-grip + alpha.   alpha' = g / E
//   kappa   arm-trunk angle at the shoulder.                       kappa' = n g / (A^2 E)
//   m, n    (T^2 + D^2 - A^2)/2 and (T^2 - A^2 - D^2)/2;           E' = m g / E,  n' = -g
#include "posture/upper_body.h"

#include "base/two_link.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tripoise {
namespace {

constexpr Angle mostElbow = Angle::degrees(90.0);
constexpr Angle straightElbow;           // 0
constexpr double elbowTolerance = 3e-4;  // rad; the step after one this small errs by its square
constexpr double leastArmSquare = 100.0; // mm^2, where splay would swallow the arm
constexpr double leastDistance = 1e-6;   // mm, where the grip would lie in the hip itself
constexpr double beyondScaleMm = 5.0;    // a grip this far out of reach costs a point more

struct Term {
    double value, slope, curvature;
};

/// Cost of one joint and its derivatives, doubled on the side given by `stretchedSign`.
Term termOf(double angle, double slope, double curvature, const Window& window,
            double stretchedSign)
{
    const double away = angle - window.centre.rad();
    const double weight = (away * stretchedSign > 0.0 ? 2.0 : 1.0)
                          / (window.halfWidth.rad() * window.halfWidth.rad());
    return {weight * away * away, 2.0 * weight * away * slope,
            2.0 * weight * (slope * slope + away * curvature)};
}

class Triangle {
public:
    Triangle(const UpperLimbs& limbs, const Point& hip, const Point& grip)
        : m_trunk(limbs.trunkMm), m_product(limbs.upperArmMm * limbs.forearmMm),
          m_fixed(limbs.upperArmMm * limbs.upperArmMm + limbs.forearmMm * limbs.forearmMm
                  - limbs.splayMm * limbs.splayMm)
    {
        const Point line = grip - hip;
        m_distance = std::max(leastDistance, line.norm());
        m_slope = std::atan2(line.y(), line.x());
    }

    double armSquare(double elbow) const
    {
        return std::max(leastArmSquare, m_fixed + 2.0 * m_product * std::cos(elbow));
    }
    /// Elbow that makes the arm this long, or the nearer end of travel.
    double elbowFor(double arm) const
    {
        return std::acos(std::clamp((arm * arm - m_fixed) / (2.0 * m_product), 0.0, 1.0));
    }
    double trunk() const { return m_trunk; }
    double distance() const { return m_distance; }

    UpperPosture postureAt(double elbow, const UpperWindows& windows) const
    {
        const double arm = std::sqrt(armSquare(elbow));
        UpperPosture posture;
        posture.trunk = Angle::radians(m_slope) + angleBetween(m_trunk, m_distance, arm);
        posture.armTrunk = angleBetween(m_trunk, arm, m_distance);
        posture.elbow = Angle::radians(elbow);
        posture.cost = termOf(posture.trunk.rad(), 0, 0, windows.trunk, -1.0).value
                       + termOf(posture.armTrunk.rad(), 0, 0, windows.armTrunk, 1.0).value
                       + termOf(elbow, 0, 0, windows.elbow, 0.0).value;
        return posture;
    }

    /// First and second derivative of the cost in the elbow.
    std::pair<double, double> derivatives(double elbow, const UpperWindows& windows) const
    {
        const double a2 = armSquare(elbow);
        const double g = -m_product * std::sin(elbow);
        const double gSlope = -m_product * std::cos(elbow);
        const double t2 = m_trunk * m_trunk;
        const double d2 = m_distance * m_distance;
        const double m = 0.5 * (t2 + d2 - a2);
        const double n = 0.5 * (t2 - a2 - d2);
        const double area = std::sqrt(std::max(1e-12, t2 * d2 - m * m));
        const double areaSlope = m * g / area;

        const double alpha = std::atan2(area, m);
        const double alphaSlope = g / area;
        const double alphaCurve = (gSlope - g * areaSlope / area) / area;

        const double kappa = std::atan2(area, 0.5 * (t2 + a2 - d2));
        const double under = a2 * area;
        const double kappaSlope = n * g / under;
        const double kappaCurve = (n * gSlope - g * g) / under
                                  - n * g * (2.0 * g * area + a2 * areaSlope) / (under * under);

        const Term trunk = termOf(m_slope + alpha, alphaSlope, alphaCurve, windows.trunk, -1.0);
        const Term armTrunk = termOf(kappa, kappaSlope, kappaCurve, windows.armTrunk, 1.0);
        const Term bend = termOf(elbow, 1.0, 0.0, windows.elbow, 0.0);
        return {trunk.slope + armTrunk.slope + bend.slope,
                trunk.curvature + armTrunk.curvature + bend.curvature};
    }

private:
    double m_trunk, m_product, m_fixed;
    double m_distance = 0.0, m_slope = 0.0;
};

} // namespace

UpperLimbs upperLimbs(const Body& body, double gripHalfWidthMm)
{
    return {body.trunkMm, body.upperArmMm, body.forearmMm,
            std::max(0.0, gripHalfWidthMm - body.shoulderHalfBreadthMm())};
}

UpperPosture solveUpperBody(const UpperLimbs& limbs, const Point& hip, const Point& grip,
                            const UpperWindows& windows)
{
    const Triangle triangle(limbs, hip, grip);
    const double longest = std::sqrt(triangle.armSquare(straightElbow.rad()));
    const double shortest = std::sqrt(triangle.armSquare(mostElbow.rad()));
    // Lengths of the arm with which the triangle closes.
    const double needed = std::abs(triangle.distance() - triangle.trunk());
    const double allowed = triangle.distance() + triangle.trunk();

    if (needed >= longest || allowed <= shortest) {
        const bool tooFar = needed >= longest;
        UpperPosture posture =
            triangle.postureAt(tooFar ? straightElbow.rad() : mostElbow.rad(), windows);
        posture.beyondMm = tooFar ? needed - longest : shortest - allowed;
        const double steep = posture.beyondMm / beyondScaleMm;
        posture.cost += steep + steep * steep;
        return posture;
    }

    double low = allowed < longest ? triangle.elbowFor(allowed) : straightElbow.rad();
    double high = needed > shortest ? triangle.elbowFor(needed) : mostElbow.rad();
    double elbow = std::clamp(windows.elbow.centre.rad(), low, high);
    if (elbow == low || elbow == high)
        elbow = 0.5 * (low + high);
    for (int step = 0; step < 60; ++step) {
        const auto [slope, curvature] = triangle.derivatives(elbow, windows);
        (slope > 0.0 ? high : low) = elbow;
        double next = curvature > 0.0 ? elbow - slope / curvature : low;
        if (!(next >= low && next <= high))
            next = 0.5 * (low + high);
        const double moved = std::abs(next - elbow);
        elbow = next;
        if (moved < elbowTolerance)
            break;
    }
    return triangle.postureAt(elbow, windows);
}

double costAtElbow(const UpperLimbs& limbs, const Point& hip, const Point& grip, Angle elbow,
                   const UpperWindows& windows)
{
    return Triangle(limbs, hip, grip).postureAt(elbow.rad(), windows).cost;
}

Point costSlope(const UpperLimbs& limbs, const Point& hip, const Point& grip,
                const UpperPosture& posture, const UpperWindows& windows)
{
    // With the arm's length held, moving out along D turns alpha by (T cos alpha - D) / E and opens
    // kappa by D / E; moving across turns the whole triangle.
    const Point line = grip - hip;
    const double distance = line.norm();
    const Point out = line / distance;
    const Point across(-out.y(), out.x());
    const double alpha = posture.trunk.rad() - std::atan2(line.y(), line.x());
    const double area = limbs.trunkMm * distance * std::sin(alpha);
    const Term trunk = termOf(posture.trunk.rad(), 1.0, 0.0, windows.trunk, -1.0);
    const Term armTrunk = termOf(posture.armTrunk.rad(), 1.0, 0.0, windows.armTrunk, 1.0);
    const double outward =
        (trunk.slope * (limbs.trunkMm * std::cos(alpha) - distance) + armTrunk.slope * distance)
        / area;
    return outward * out + trunk.slope / distance * across;
}

Point comfortableGrip(const UpperLimbs& limbs, const Point& hip, const UpperWindows& windows)
{
    const Triangle straight(limbs, Point::Zero(), Point::UnitX());
    const double arm = std::sqrt(straight.armSquare(windows.elbow.centre.rad()));
    const Point shoulder = hip + limbs.trunkMm * along(windows.trunk.centre);
    // At the shoulder, the arm hangs from the line back to the hip by the arm-trunk angle.
    return shoulder
           + arm * along(windows.trunk.centre + Angle::degrees(180.0) + windows.armTrunk.centre);
}

CostFloor costFloor(const UpperLimbs& limbs, const UpperWindows& windows)
{
    const Triangle triangle(limbs, Point::Zero(), Point::UnitX());
    const double product = limbs.upperArmMm * limbs.forearmMm;
    const double trunkWidth = windows.trunk.halfWidth.rad();
    const double armWidth = windows.armTrunk.halfWidth.rad();
    const double elbowWidth = windows.elbow.halfWidth.rad();

    // J at the comfortable posture; turning the trunk carries the arm along.
    const double elbow = windows.elbow.centre.rad();
    const double arm = std::sqrt(triangle.armSquare(elbow));
    const Angle armSlope = windows.trunk.centre + Angle::degrees(180.0) + windows.armTrunk.centre;
    const Point toGrip = limbs.trunkMm * along(windows.trunk.centre) + arm * along(armSlope);
    const Point acrossArm(-along(armSlope).y(), along(armSlope).x());
    const Point byTrunk = trunkWidth * Point(-toGrip.y(), toGrip.x());
    const Point byArm = armWidth * arm * acrossArm;
    const Point byElbow = -elbowWidth * product * std::sin(elbow) / arm * along(armSlope);
    const double xx = byTrunk.x() * byTrunk.x() + byArm.x() * byArm.x() + byElbow.x() * byElbow.x();
    const double xy = byTrunk.x() * byTrunk.y() + byArm.x() * byArm.y() + byElbow.x() * byElbow.y();
    const double yy = byTrunk.y() * byTrunk.y() + byArm.y() * byArm.y() + byElbow.y() * byElbow.y();
    const double determinant = xx * yy - xy * xy;
    const double middle = 0.5 * (xx + yy);
    const double shortest =
        std::sqrt(middle - std::sqrt(std::max(0.0, middle * middle - determinant)));

    // Second derivatives, largest over all postures: the arm is never longer than straight, and its
    // length changes fastest where it is shortest.
    const double longestArm = limbs.upperArmMm + limbs.forearmMm;
    const double shortestArm = std::sqrt(triangle.armSquare(mostElbow.rad()));
    const double armSlopeMost = product / shortestArm;
    const double armCurveMost = (product + armSlopeMost * armSlopeMost) / shortestArm;
    const double bendings[] = {(limbs.trunkMm + longestArm) * trunkWidth
                                   * trunkWidth,                       // trunk, trunk
                               longestArm * armWidth * armWidth,       // arm, arm
                               armCurveMost * elbowWidth * elbowWidth, // elbow, elbow
                               longestArm * trunkWidth * armWidth * std::numbers::sqrt2,
                               armSlopeMost * trunkWidth * elbowWidth * std::numbers::sqrt2,
                               armSlopeMost * armWidth * elbowWidth * std::numbers::sqrt2};
    double squares = 0.0;
    for (const double bending : bendings)
        squares += bending * bending;
    // Out of reach, cost grows by a point every beyondScaleMm, which the same form covers from
    // there.
    const double remainder = std::max(0.5 * std::sqrt(squares), beyondScaleMm);

    return {yy / determinant, -xy / determinant, xx / determinant, remainder / shortest};
}

UpperPoints upperPoints(const UpperLimbs& limbs, const Point& hip, const Point& grip,
                        const UpperPosture& posture)
{
    UpperPoints points;
    points.hip = hip;
    points.grip = grip;
    points.shoulder = hip + limbs.trunkMm * along(posture.trunk);
    // In the plane both links of the arm are shortened alike by its splay.
    const double flat = closingLength(limbs.upperArmMm, limbs.forearmMm, posture.elbow);
    const double scale = (grip - points.shoulder).norm() / flat;
    points.elbow = jointBetween(points.shoulder, grip, scale * limbs.upperArmMm,
                                scale * limbs.forearmMm, Bend::Right);
    return points;
}

} // namespace tripoise
