// SPDX-License-Identifier: MIT
#include "handling/masses.h"

#include "handling/steering.h"

#include <Eigen/Geometry>

#include <cmath>
#include <numbers>

namespace tripoise {
namespace {

using Eigen::Vector3d;

Vector3d spatial(const Point& inPlane, double out)
{
    return {inPlane.x(), inPlane.y(), out};
}

/// A straight rod of even thickness between two points, its mass's centre a share of the way along;
/// of a pair, the other one is its mirror image in the bicycle's plane.
RigidBody rod(const Vector3d& from, const Vector3d& to, double massKg, double centreShare,
              double radiusMm)
{
    const Vector3d line = to - from;
    const double length = line.norm();
    const Vector3d along = length > 0.0 ? Vector3d(line / length) : Vector3d::UnitY();
    const Vector3d centre = from + centreShare * line;
    const double lengthwise = 0.5 * massKg * radiusMm * radiusMm;
    const double across = massKg * (length * length / 12.0 + 0.25 * radiusMm * radiusMm);
    const double out = massKg * centre.z() * centre.z();
    const auto about = [&](double share) { return across + (lengthwise - across) * share * share; };
    RigidBody body{massKg, centre.head<2>(), {}};
    body.inertia.xx = about(along.x()) + out;
    body.inertia.yy = about(along.y()) + out;
    body.inertia.zz = about(along.z());
    body.inertia.xy = (across - lengthwise) * along.x() * along.y();
    return body;
}

/// How thick a rod is that has this mass and length at a density.
double radiusFor(double massKg, double lengthMm, double density)
{
    return lengthMm > 0.0 ? std::sqrt(massKg / (std::numbers::pi * lengthMm * density)) : 0.0;
}

/// Segments of one rider.
class Limbs {
public:
    Limbs(const Body& body, const SegmentTable& table, std::optional<Sex> sex)
        : m_rows(rowsFor(table, sex)), m_massKg(body.massKg), m_density(table.densityKgPerMm3)
    {
    }

    [[nodiscard]] const SegmentRows& rows() const { return m_rows; }

    /// One segment, or one of a pair.
    [[nodiscard]] RigidBody one(Segment segment, const Vector3d& from, const Vector3d& to) const
    {
        const SegmentShare& share = m_rows.of(segment);
        const double mass = share.mass * m_massKg;
        return rod(from, to, mass, share.centre, radiusFor(mass, (to - from).norm(), m_density));
    }
    /// Both of a pair that lie alike.
    [[nodiscard]] RigidBody both(Segment segment, const Vector3d& from, const Vector3d& to) const
    {
        const RigidBody single = one(segment, from, to);
        return together(single, single);
    }

private:
    SegmentRows m_rows;
    double m_massKg;
    double m_density;
};

RigidBody legAtCrank(const Limbs& limbs, const SeatedRider& rider, const BodyModel& model,
                     double hipOut, Angle crank)
{
    const LegPoints leg =
        legAt(rider.body, model, rider.foothold, rider.saddle.point(), rider.crankMm, crank);
    const double pedalOut = rider.pedalLateralMm;
    const double kneeOut = 0.5 * (hipOut + pedalOut);
    const RigidBody thigh =
        limbs.one(Segment::Thigh, spatial(leg.hip, hipOut), spatial(leg.knee, kneeOut));
    const RigidBody shank =
        limbs.one(Segment::Shank, spatial(leg.knee, kneeOut), spatial(leg.ankle, pedalOut));
    const RigidBody foot =
        limbs.one(Segment::Foot, spatial(leg.heel, pedalOut), spatial(leg.toe, pedalOut));
    return together(together(thigh, shank), foot);
}

RigidBody wheelOf(double massKg, double radiusMm, double gyration, const Point& axle)
{
    const double spin = massKg * gyration * gyration * radiusMm * radiusMm;
    return {massKg, axle, {0.5 * spin, 0.5 * spin, spin, 0.0}};
}

RollingWheel rollingOf(const RigidBody& wheel, double radiusMm)
{
    return {radiusMm, wheel.massKg, wheel.inertia.xx, wheel.inertia.zz};
}

RigidBody bagsOn(const Carrier& carrier, double massKg, const Point& axle)
{
    const double own = massKg * carrier.gyrationMm * carrier.gyrationMm;
    const double out = massKg * carrier.outMm * carrier.outMm;
    return {
        massKg, axle + Point(carrier.aheadMm, carrier.aboveMm), {own + out, own + out, own, 0.0}};
}

RigidBody thinRod(const Point& from, const Point& to, double massKg)
{
    return rod(spatial(from, 0.0), spatial(to, 0.0), massKg, 0.5, 0.0);
}

/// Tubes share the frame's mass by their lengths.
RigidBody frameOf(const Skeleton& skeleton, const SaddlePlace& saddle, double massKg)
{
    const double seatTube =
        skeleton.seatTubeMm ? skeleton.seatTubeMm->value : 0.7 * saddle.heightMm;
    const Point seatTop = seatTube * upTube(skeleton.seatAngle);
    const Point bottom = Point::Zero();
    const std::array<std::pair<Point, Point>, 6> tubes{std::pair(bottom, skeleton.headBottom),
                                                       {bottom, seatTop},
                                                       {seatTop, skeleton.headTop},
                                                       {skeleton.headBottom, skeleton.headTop},
                                                       {bottom, skeleton.rearAxle},
                                                       {seatTop, skeleton.rearAxle}};
    double length = 0.0;
    for (const auto& [from, to] : tubes)
        length += (to - from).norm();
    RigidBody frame;
    for (const auto& [from, to] : tubes)
        frame = together(frame, thinRod(from, to, massKg * (to - from).norm() / length));
    return frame;
}

RigidBody moved(RigidBody body, const Point& origin)
{
    body.centre -= origin;
    return body;
}

} // namespace

RigidBody upperBodyOf(const SeatedRider& rider, const BodyModel& model, const SegmentTable& table)
{
    const Limbs limbs(rider.body, table, rider.sex);
    const UpperLimbs lengths = upperLimbs(rider.body, rider.gripHalfWidthMm);
    const Point hip = midHip(rider.saddle.point(), rider.body, model);
    const UpperPosture posture = solveUpperBody(lengths, hip, rider.grip, rider.windows);
    const UpperPoints points = upperPoints(lengths, hip, rider.grip, posture);

    // From the hip outwards, as the legs; the table counts trunk and head from above.
    const double shoulderOut = rider.body.shoulderHalfBreadthMm();
    const double gripOut = rider.gripHalfWidthMm;
    const double elbowOut = 0.5 * (shoulderOut + gripOut);
    const Angle upright = Angle::degrees(90.0);
    const Angle headLine = posture.trunk + table.headLeansBack * (upright - posture.trunk);
    const Point crown = points.shoulder + rider.body.headMm * along(headLine);
    const double headLength = limbs.rows().headOfStature * rider.body.statureMm;
    const Point neck = crown - headLength * along(headLine);
    const Point wrist =
        points.elbow + limbs.rows().wristAlongForearm * (points.grip - points.elbow);
    const double wristOut = elbowOut + limbs.rows().wristAlongForearm * (gripOut - elbowOut);

    RigidBody body = limbs.one(Segment::Trunk, spatial(points.shoulder, 0.0), spatial(hip, 0.0));
    body = together(body, limbs.one(Segment::Head, spatial(crown, 0.0), spatial(neck, 0.0)));
    body = together(body, limbs.both(Segment::UpperArm, spatial(points.shoulder, shoulderOut),
                                     spatial(points.elbow, elbowOut)));
    body = together(body, limbs.both(Segment::Forearm, spatial(points.elbow, elbowOut),
                                     spatial(wrist, wristOut)));
    return together(
        body, limbs.both(Segment::Hand, spatial(wrist, wristOut), spatial(points.grip, gripOut)));
}

RigidBody legsOf(const SeatedRider& rider, const BodyModel& model, const SegmentTable& table,
                 Angle crank)
{
    const Limbs limbs(rider.body, table, rider.sex);
    const Angle opposite = crank + Angle::degrees(180.0);
    return together(legAtCrank(limbs, rider, model, table.hipJointHalfMm, crank),
                    legAtCrank(limbs, rider, model, table.hipJointHalfMm, opposite));
}

RigidBody riderMass(const SeatedRider& rider, const BodyModel& model, const SegmentTable& table)
{
    return together(upperBodyOf(rider, model, table), legsOf(rider, model, table, Angle()));
}

WhippleBicycle loadedBicycle(const Skeleton& skeleton, const Setup& setup, double gripHalfWidthMm,
                             const RigidBody& rider, const Bags& bags, const BicycleTable& table,
                             const Carriers& carriers)
{
    const auto massOf = [&](BicyclePart part) { return table.of(part) * skeleton.bicycleMassKg; };
    const double radius = skeleton.wheelRadiusMm;
    const Point contact(skeleton.rearAxle.x(), skeleton.groundY());

    RigidBody rear = together(rider, frameOf(skeleton, setup.saddle, massOf(BicyclePart::Frame)));
    rear = together(rear, {massOf(BicyclePart::Cranks), Point::Zero(), {}});
    rear = together(rear, {massOf(BicyclePart::Saddle), setup.saddle.point(), {}});
    rear = together(rear, {massOf(BicyclePart::Fittings),
                           skeleton.rearAxle + Point(0.0, table.fittingsAboveAxleMm),
                           {}});

    RigidBody front = thinRod(skeleton.crown, skeleton.frontAxle, massOf(BicyclePart::Fork));
    const Point bar = 0.5 * (setup.clamp + setup.grip);
    front = together(front, rod(spatial(bar, -gripHalfWidthMm), spatial(bar, gripHalfWidthMm),
                                massOf(BicyclePart::Cockpit), 0.5, 0.0));
    const auto load = [&](const Carrier& carrier, double massKg, const Point& axle) {
        RigidBody& on = carrier.steered ? front : rear;
        on = together(on, bagsOn(carrier, massKg, axle));
    };
    load(carriers.front, bags.frontKg, skeleton.frontAxle);
    load(carriers.rear, bags.rearKg, skeleton.rearAxle);

    WhippleBicycle bicycle;
    const Steering steering = steeringOf(skeleton);
    bicycle.wheelbaseMm = steering.wheelbaseMm;
    bicycle.trailMm = steering.trailMm;
    bicycle.headAngle = skeleton.headAngle;
    bicycle.gravityMmS2 = table.gravityMmS2;
    bicycle.rearWheel = rollingOf(
        wheelOf(massOf(BicyclePart::RearWheel), radius, table.rearGyration, skeleton.rearAxle),
        radius);
    bicycle.frontWheel = rollingOf(
        wheelOf(massOf(BicyclePart::FrontWheel), radius, table.frontGyration, skeleton.frontAxle),
        radius);
    bicycle.rear = moved(rear, contact);
    bicycle.front = moved(front, contact);
    return bicycle;
}

} // namespace tripoise
