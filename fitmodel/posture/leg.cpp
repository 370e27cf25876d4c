// SPDX-License-Identifier: MIT
#include "posture/leg.h"

#include "base/root.h"
#include "base/two_link.h"

namespace tripoise {
namespace {

// Any seat axis a saddle could stand on; solutions are kept inside.
constexpr Angle flattestAxis = Angle::degrees(45.0);
constexpr Angle steepestAxis = Angle::degrees(89.0);
constexpr double axisTolerance = 1e-10;

Point ankleAbove(const Body& body, const Foothold& foothold, const Point& spindle, Angle pitch)
{
    const Point toToe = along(-pitch);
    const Point up{-toToe.y(), toToe.x()};
    return spindle + (foothold.stackMm + body.ankleHeightMm) * up - body.ankleToBallMm * toToe;
}

Point ankleAtBottom(const Body& body, const Foothold& foothold, double crankMm, Angle seatAxis,
                    Angle pitch)
{
    return ankleAbove(body, foothold, -crankMm * upTube(seatAxis), pitch);
}

Point hipAbove(const Point& saddle, const Body& body, const BodyModel& model)
{
    return saddle + Point(0.0, model.legHipAboveSaddleMm + body.hipHigherMm);
}

Angle flexionBetween(const Body& body, const Point& hip, const Point& ankle)
{
    return Angle::degrees(180.0) - angleBetween(body.thighMm, body.shankMm, (hip - ankle).norm());
}

} // namespace

SaddlePlace saddleFrom(double heightMm, double setbackMm)
{
    return {heightMm, Angle::radians(std::acos(std::clamp(setbackMm / heightMm, -1.0, 1.0)))};
}

SaddlePlace saddleAt(const Point& point)
{
    return {point.norm(), Angle::radians(std::atan2(point.y(), -point.x()))};
}

Angle footPitch(const Foothold& foothold, const Point& saddle, Angle crank)
{
    // The foot dips towards level as the crank comes forward from the bottom, and lifts as far
    // behind.
    const Angle bottom = bottomOfTurn(saddle);
    const double forward = std::sin((crank - bottom).rad()) / std::sin(-bottom.rad());
    return foothold.pitchBottom + forward * (foothold.pitchForward - foothold.pitchBottom);
}

LegPoints legAt(const Body& body, const BodyModel& model, const Foothold& foothold,
                const Point& saddle, double crankMm, Angle crank)
{
    const Angle pitch = footPitch(foothold, saddle, crank);
    LegPoints leg;
    leg.spindle = crankMm * along(crank);
    leg.hip = hipAbove(saddle, body, model);
    leg.ankle = ankleAbove(body, foothold, leg.spindle, pitch);
    leg.knee = jointBetween(leg.hip, leg.ankle, body.thighMm, body.shankMm, Bend::Left);
    leg.kneeFlexion = flexionBetween(body, leg.hip, leg.ankle);

    const Point toToe = along(-pitch);
    const Point sole = leg.spindle + foothold.stackMm * Point(-toToe.y(), toToe.x());
    leg.heel = sole - body.ballMm * toToe;
    leg.toe = sole + (body.footMm - body.ballMm) * toToe;
    return leg;
}

Angle bottomOfTurn(const Point& saddle)
{
    return angleOf(-saddle);
}

Angle topOfTurn(const Point& saddle)
{
    return angleOf(saddle);
}

Angle kneeAtBottom(const Body& body, const BodyModel& model, const Foothold& foothold,
                   const SaddlePlace& saddle, double crankMm)
{
    return flexionBetween(
        body, hipAbove(saddle.point(), body, model),
        ankleAtBottom(body, foothold, crankMm, saddle.seatAxis, foothold.pitchBottom));
}

Angle kneeAtBottomFootLevel(const Body& body, const BodyModel& model, const Foothold& foothold,
                            const SaddlePlace& saddle, double crankMm)
{
    return flexionBetween(body, hipAbove(saddle.point(), body, model),
                          ankleAtBottom(body, foothold, crankMm, saddle.seatAxis, Angle()));
}

double kneeOverSpindle(const Body& body, const BodyModel& model, const Foothold& foothold,
                       const SaddlePlace& saddle, double crankMm)
{
    const LegPoints leg = legAt(body, model, foothold, saddle.point(), crankMm, Angle());
    return leg.knee.x() + model.tuberosityAheadMm - leg.spindle.x();
}

SaddlePlace saddleOnAxis(const Body& body, const BodyModel& model, const Foothold& foothold,
                         double crankMm, Angle knee, Angle seatAxis)
{
    // |s u + w| = reach of the leg, with u up the axis and w from the ankle to the raised origin.
    const Point axis = upTube(seatAxis);
    const Point ankle = ankleAtBottom(body, foothold, crankMm, seatAxis, foothold.pitchBottom);
    const Point offset = hipAbove(Point::Zero(), body, model) - ankle;
    const double reach = closingLength(body.thighMm, body.shankMm, knee);
    const double middle = axis.dot(offset);
    const double square = middle * middle - offset.squaredNorm() + reach * reach;
    return {-middle + std::sqrt(std::max(0.0, square)), seatAxis};
}

double behindTube(const SaddlePlace& saddle, Angle seatTube)
{
    return saddle.setbackMm() - saddle.point().y() / std::tan(seatTube.rad());
}

namespace {

/// The saddle with a knee angle for which a figure of it is zero; a search over the seat axis.
template <typename Figure>
SaddlePlace saddleWhere(const Body& body, const BodyModel& model, const Foothold& foothold,
                        double crankMm, Angle knee, Figure&& figure)
{
    const auto on = [&](double axis) {
        return saddleOnAxis(body, model, foothold, crankMm, knee, Angle::radians(axis));
    };
    return on(rootWithin(flattestAxis.rad(), steepestAxis.rad(), axisTolerance,
                         [&](double axis) { return figure(on(axis)); }));
}

} // namespace

SaddlePlace saddleForKnee(const Body& body, const BodyModel& model, const Foothold& foothold,
                          double crankMm, Angle knee, double kneeOverSpindleMm)
{
    return saddleWhere(body, model, foothold, crankMm, knee, [&](const SaddlePlace& saddle) {
        return kneeOverSpindle(body, model, foothold, saddle, crankMm) - kneeOverSpindleMm;
    });
}

SaddlePlace saddleBehindTube(const Body& body, const BodyModel& model, const Foothold& foothold,
                             double crankMm, Angle knee, Angle seatTube, double behindMm)
{
    return saddleWhere(body, model, foothold, crankMm, knee, [&](const SaddlePlace& saddle) {
        return behindTube(saddle, seatTube) - behindMm;
    });
}

} // namespace tripoise
