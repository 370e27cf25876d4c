// SPDX-License-Identifier: MIT
#include "handling/clearances.h"

#include "base/least.h"
#include "base/root.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise {
namespace {

using Eigen::Vector3d;

constexpr double angleTolerance = 1e-4;

double toSegment(const Vector3d& point, const Vector3d& from, const Vector3d& to)
{
    const Vector3d line = to - from;
    const double square = line.squaredNorm();
    const double share =
        square > 0.0 ? std::clamp((point - from).dot(line) / square, 0.0, 1.0) : 0.0;
    return (point - from - share * line).norm();
}

} // namespace

std::optional<OverTurn> heelToBag(const SeatedRider& rider, const BodyModel& model,
                                  const Skeleton& skeleton, const RearBag& bag,
                                  const ClearanceTable& table, double ballAheadMm)
{
    const double front = skeleton.rearAxle.x() - bag.setbackMm + 0.5 * bag.depthMm;
    const double bottom = skeleton.rearAxle.y() + bag.bottomAboveAxleMm;
    const auto heelAt = [&](double crank) {
        const LegPoints leg = legAt(rider.body, model, rider.foothold, rider.saddle.point(),
                                    rider.crankMm, Angle::radians(crank));
        const Point toToe = (leg.toe - leg.heel) / rider.body.footMm;
        return Point(leg.heel + (ballAheadMm - table.shoeBehindHeelMm) * toToe);
    };
    // Behind the bottom bracket the heel rises from the bottom to the top of the turn.
    const double low = Angle::degrees(270.0).rad();
    const double high = Angle::degrees(90.0).rad();
    const auto aboveBottom = [&](double crank) { return heelAt(crank).y() - bottom; };
    double from = low;
    if (aboveBottom(low) < 0.0) {
        if (aboveBottom(high) < 0.0)
            return std::nullopt;
        from = rootWithin(high, low, angleTolerance, aboveBottom);
    }
    const Least least = leastWithin(high, from, angleTolerance,
                                    [&](double crank) { return heelAt(crank).x() - front; });
    const double atEnd = heelAt(from).x() - front;
    if (atEnd < least.value)
        return OverTurn{atEnd, Angle::radians(from)};
    return OverTurn{least.value, Angle::radians(least.at)};
}

OverTurn kneeToBar(const SeatedRider& rider, const BodyModel& model, const Skeleton& skeleton,
                   const Point& clamp, double straightCentreMm, Angle steer,
                   const ClearanceTable& table)
{
    const Point up = upTube(skeleton.headAngle);
    // Turning right brings the right end back: against the axis's right-handed sense.
    const Eigen::AngleAxisd turn(-steer.rad(), Vector3d(up.x(), up.y(), 0.0));
    const Vector3d onAxis(skeleton.headTop.x(), skeleton.headTop.y(), 0.0);
    const auto steered = [&](const Point& inPlane, double out) {
        return Vector3d(onAxis + turn * (Vector3d(inPlane.x(), inPlane.y(), out) - onAxis));
    };
    const double palm = rider.gripHalfWidthMm;
    const double straight = std::min(straightCentreMm, palm);
    const double beyond =
        palm > straight ? (palm + table.barBeyondPalmMm - straight) / (palm - straight) : 1.0;
    const Point end = clamp + beyond * (rider.grip - clamp);
    const std::array bar{steered(clamp, 0.0), steered(clamp, straight), steered(rider.grip, palm),
                         steered(end, palm + table.barBeyondPalmMm)};

    const double kneeOut = rider.pedalLateralMm;
    const Least least =
        leastWithin(Angle::degrees(-30.0).rad(), Angle::degrees(180.0).rad(), angleTolerance,
                    [&](double crank) {
                        const LegPoints leg =
                            legAt(rider.body, model, rider.foothold, rider.saddle.point(),
                                  rider.crankMm, Angle::radians(crank));
                        const Vector3d knee(leg.knee.x(), leg.knee.y(), kneeOut);
                        double nearest = toSegment(knee, bar[0], bar[1]);
                        for (std::size_t i = 1; i + 1 < bar.size(); ++i)
                            nearest = std::min(nearest, toSegment(knee, bar[i], bar[i + 1]));
                        return nearest;
                    });
    return {least.value - table.kneeRoundMm - table.barTubeMm, Angle::radians(least.at)};
}

std::optional<double> tyreLeft(const FrameSize& frame, const Skeleton& skeleton)
{
    if (!frame.wheel.maxTyreMm)
        return std::nullopt;
    return *frame.wheel.maxTyreMm - skeleton.tyreMm;
}

FootToGround footToGround(const SeatedRider& rider, const BodyModel& model,
                          const Skeleton& skeleton, double soleMm, const ClearanceTable& table)
{
    const Body& body = rider.body;
    const double hip = rider.saddle.point().y() + model.legHipAboveSaddleMm + body.hipHigherMm
                       - skeleton.groundY();
    const double leg = body.thighMm + body.shankMm;
    const double out = std::min(leg, table.hipLeansOutMm);
    const double ankle = hip - std::sqrt(leg * leg - out * out);
    const Angle stretched = Angle::degrees(table.tiptoeDeg);
    FootToGround foot;
    foot.flatMm = ankle - body.ankleHeightMm - soleMm;
    foot.tiptoeMm = ankle - body.ankleToBallMm * std::sin(stretched.rad())
                    - body.ankleHeightMm * std::cos(stretched.rad()) - soleMm;
    if (const auto clearance = standoverClearance(skeleton, body.inseamMm))
        foot.straddleMm = *clearance + soleMm;
    return foot;
}

} // namespace tripoise
