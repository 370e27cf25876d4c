// SPDX-License-Identifier: MIT
#include "document/plausible_columns.h"

#include "document/plausible.h"

namespace tripoise::document {
namespace {

// Of what no fitting holds: as wide as the rest, common practice, no source.
constexpr Limits bbHeight{150, 450, "mm"};
constexpr Limits trail{0, 180, "mm"};
constexpr Limits wheelRadius{120, 420, "mm"};
constexpr Limits riderInseam{450, 1150, "mm"};

const Limits& limitsOf(Column column)
{
    static constexpr Limits anything{-1e9, 1e9, ""};
    switch (column) {
    case Column::Stack: return plausible::stack;
    case Column::Reach: return plausible::reach;
    case Column::SeatAngle:
    case Column::SeatAngleActual: return plausible::seatAngle;
    case Column::HeadAngle: return plausible::headAngle;
    case Column::HeadTube: return plausible::headTube;
    case Column::SeatTube:
    case Column::SeatTubeCentre: return plausible::seatTube;
    case Column::TopTube:
    case Column::TopTubeActual: return plausible::topTube;
    case Column::Chainstay:
    case Column::ChainstayHorizontal:
    case Column::ChainstayLong: return plausible::chainstay;
    case Column::BbDrop:
    case Column::BbRise: return plausible::bbDrop;
    case Column::BbHeight: return bbHeight;
    case Column::Wheelbase:
    case Column::WheelbaseLong: return plausible::wheelbase;
    case Column::FrontCentre:
    case Column::FrontCentreHorizontal: return plausible::frontCentre;
    case Column::ForkLength:
    case Column::ForkLengthAxial: return plausible::forkLength;
    case Column::ForkOffset: return plausible::forkOffset;
    case Column::Standover: return plausible::standover;
    case Column::Trail: return trail;
    case Column::LowerHeadset:
    case Column::UpperHeadset: return plausible::headsetStack;
    case Column::WheelRadius: return wheelRadius;
    case Column::BeadSeat: return plausible::beadSeat;
    case Column::Tyre:
    case Column::MaxTyre: return plausible::tyre;
    case Column::SteererDiameter:
    case Column::PostDiameter: return plausible::diameter;
    case Column::PostLength: return plausible::postLength;
    case Column::PostOffset: return plausible::postOffset;
    case Column::MaxSystem: return plausible::systemMass;
    case Column::Mass: return plausible::bicycleMass;
    case Column::Price: return plausible::price;
    case Column::StemLength: return plausible::stemLength;
    case Column::BarWidth: return plausible::barWidth;
    case Column::CrankLength: return plausible::crank;
    case Column::RiderHeight: return plausible::riderHeight;
    case Column::RiderInseam: return riderInseam;
    case Column::OtherPart: return anything;
    }
    return anything;
}

} // namespace

Range plausibleOf(Column column)
{
    const Limits& limits = limitsOf(column);
    if (column == Column::BbRise) // the drop negated
        return {-limits.high, -limits.low};
    return {limits.low, limits.high};
}

} // namespace tripoise::document
