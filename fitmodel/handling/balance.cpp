// SPDX-License-Identifier: MIT
#include "handling/balance.h"

#include <algorithm>
#include <cmath>

namespace tripoise {

std::optional<Balance> balanceOf(const WhippleBicycle& bicycle)
{
    const RigidBody rearWheel{bicycle.rearWheel.massKg, Point(0.0, bicycle.rearWheel.radiusMm), {}};
    const RigidBody frontWheel{
        bicycle.frontWheel.massKg, Point(bicycle.wheelbaseMm, bicycle.frontWheel.radiusMm), {}};
    const RigidBody whole =
        together(together(bicycle.rear, bicycle.front), together(rearWheel, frontWheel));
    if (!(whole.massKg > 0.0 && bicycle.wheelbaseMm > 0.0 && whole.centre.y() > 0.0
          && std::isfinite(whole.centre.x())))
        return std::nullopt;
    return Balance{whole.massKg, whole.centre, bicycle.wheelbaseMm};
}

double pitchOverG(const Balance& balance, Angle downhill)
{
    const double level = (balance.wheelbaseMm - balance.centre.x()) / balance.centre.y();
    return std::max(0.0, std::cos(downhill.rad()) * level - std::sin(downhill.rad()));
}

Angle frontLiftsAtRest(const Balance& balance)
{
    return frontLiftsUnderPedalling(balance, 1.0);
}

Angle frontLiftsUnderPedalling(const Balance& balance, double pulse)
{
    return Angle::radians(
        std::atan2(std::max(0.0, balance.centre.x()), std::max(1.0, pulse) * balance.centre.y()));
}

Grades gradesOf(const Balance& balance, const BalanceTable& table)
{
    return {pitchOverG(balance), table.descentToldOf,
            pitchOverG(balance, Angle::radians(std::atan(table.descentToldOf))),
            std::tan(frontLiftsAtRest(balance).rad()),
            std::tan(frontLiftsUnderPedalling(balance, table.pedalPulse).rad())};
}

std::optional<double> handsShareBound(const SeatedRider& rider, const BodyModel& model,
                                      const SegmentTable& table)
{
    const Point hip = midHip(rider.saddle.point(), rider.body, model);
    const double lever = rider.grip.x() - hip.x();
    if (!(lever > 0.0 && rider.body.massKg > 0.0))
        return std::nullopt;
    const RigidBody upper = upperBodyOf(rider, model, table);
    const double share = upper.massKg / rider.body.massKg * (upper.centre.x() - hip.x()) / lever;
    return std::max(0.0, share);
}

SeatedRider fullyBack(SeatedRider rider, const Range& saddleBehindTubeMm, Angle seatTube,
                      const BalanceTable& table)
{
    const double railsLeft =
        std::max(0.0, saddleBehindTubeMm.high - behindTube(rider.saddle, seatTube));
    rider.saddle =
        saddleAt(rider.saddle.point() - Point(railsLeft + table.riderBackOnSaddleMm, 0.0));
    return rider;
}

SystemWeight systemWeight(const Balance& balance, std::optional<double> limitKg)
{
    SystemWeight weight{balance.massKg, limitKg, {}};
    if (limitKg)
        weight.leftKg = *limitKg - balance.massKg;
    return weight;
}

} // namespace tripoise
