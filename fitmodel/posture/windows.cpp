// SPDX-License-Identifier: MIT
#include "posture/windows.h"

namespace tripoise {
namespace {

/// The trunk a use asks for on a bar it has no row for: that of the bar it is mostly ridden with.
Angle listedTrunk(const ComfortTable& table, Use use)
{
    for (const GripPlace place : {GripPlace::Flat, GripPlace::Hoods, GripPlace::Swept})
        if (const auto& row = table.calibrated[indexOf(use)][indexOf(place)])
            return row->trunk;
    return table.fallback[indexOf(GripPlace::Flat)].trunk;
}

UpperCentre centreFor(const ComfortTable& table, Use use, GripPlace place)
{
    if (const auto& row = table.calibrated[indexOf(use)][indexOf(place)])
        return *row;
    if (place == GripPlace::Tops || place == GripPlace::Drops) {
        const UpperCentre hoods = centreFor(table, use, GripPlace::Hoods);
        const UpperCentre& away = table.awayFromHoods[indexOf(place)];
        return {hoods.trunk + away.trunk, hoods.armTrunk + away.armTrunk};
    }
    const Angle trunk = listedTrunk(table, use);
    const ArmTrunkLine& line = table.fallback[indexOf(place)];
    return {trunk, line.at + line.slope * (trunk - line.trunk)};
}

} // namespace

UpperWindows windowsFor(const ComfortTable& table, Use use, GripPlace place,
                        Flexibility flexibility, std::optional<double> statureMm)
{
    UpperCentre centre = centreFor(table, use, place);
    if (statureMm)
        centre.trunk = centre.trunk - (*statureMm - table.averageStatureMm) * table.lowerPerStature;
    if (flexibility == Flexibility::Stiff)
        centre.trunk = centre.trunk + table.stiffShift;
    if (flexibility == Flexibility::Supple)
        centre.trunk = centre.trunk + table.suppleShift;
    return {{centre.trunk, table.trunkHalfWidth},
            {centre.armTrunk, table.armTrunkHalfWidth},
            {table.elbowCentre, table.elbowHalfWidth}};
}

Flexibility flexibilityOf(const ComfortTable& table, const Rider& rider)
{
    if (rider.flexibility)
        return *rider.flexibility;
    if (rider.straightLegRaiseDeg) {
        const Angle raise = Angle::degrees(*rider.straightLegRaiseDeg);
        if (raise < table.stiffBelow)
            return Flexibility::Stiff;
        if (raise > table.suppleAbove)
            return Flexibility::Supple;
    }
    return Flexibility::Ordinary;
}

CrankBand crankBandFor(const ComfortTable& table, double inseamMm)
{
    for (const CrankBand& band : table.cranks)
        if (inseamMm < band.belowInseamMm)
            return band;
    return table.cranks.back();
}

} // namespace tripoise
