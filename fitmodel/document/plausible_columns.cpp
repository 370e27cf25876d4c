// SPDX-License-Identifier: MIT
#include "document/plausible_columns.h"

#include "document/field_facts.h"
#include "document/plausible.h"
#include "frame/geometry.h"

namespace tripoise::document {
namespace {

// Of what no fitting holds: as wide as the rest, common practice, no source.
constexpr Limits bbHeight{150, 450, "mm"};
constexpr Limits trail{0, 180, "mm"};
constexpr Limits wheelRadius{120, 420, "mm"};
constexpr Limits riderInseam{450, 1150, "mm"};

Limits limitsOf(Column column)
{
    static constexpr Limits anything{-1e9, 1e9, ""};
    switch (column) {
    case Column::Stack: return factsOf(&Geometry::stackMm).limits;
    case Column::Reach: return factsOf(&Geometry::reachMm).limits;
    case Column::SeatAngle:
    case Column::SeatAngleActual: return factsOf(&Geometry::seatAngleDeg).limits;
    case Column::HeadAngle: return factsOf(&Geometry::headAngleDeg).limits;
    case Column::HeadTube: return factsOf(&Geometry::headTubeMm).limits;
    case Column::SeatTube:
    case Column::SeatTubeCentre: return factsOf(&Geometry::seatTubeMm).limits;
    case Column::TopTube:
    case Column::TopTubeActual: return factsOf(&Geometry::topTubeEffectiveMm).limits;
    case Column::Chainstay:
    case Column::ChainstayHorizontal:
    case Column::ChainstayLong: return factsOf(&Geometry::chainstayMm).limits;
    case Column::BbDrop:
    case Column::BbRise: return factsOf(&Geometry::bbDropMm).limits;
    case Column::BbHeight: return bbHeight;
    case Column::Wheelbase:
    case Column::WheelbaseLong: return factsOf(&Geometry::wheelbaseMm).limits;
    case Column::FrontCentre:
    case Column::FrontCentreHorizontal: return factsOf(&Geometry::frontCentreMm).limits;
    case Column::ForkLength:
    case Column::ForkLengthAxial: return factsOf(&Geometry::forkLengthMm).limits;
    case Column::ForkOffset: return factsOf(&Geometry::forkOffsetMm).limits;
    case Column::Standover: return factsOf(&Geometry::standoverMm).limits;
    case Column::Trail: return trail;
    case Column::LowerHeadset:
    case Column::UpperHeadset: return factsOf(&Headset::upperMm).limits;
    case Column::WheelRadius: return wheelRadius;
    case Column::BeadSeat: return plausible::beadSeat;
    case Column::Tyre:
    case Column::MaxTyre: return plausible::tyre;
    case Column::SteererDiameter:
    case Column::PostDiameter: return plausible::diameter;
    case Column::PostLength: return factsOf(&Post::lengthMm).limits;
    case Column::PostOffset: return factsOf(&Post::offsetMm).limits;
    case Column::MaxSystem: return factsOf(&FrameSize::maxSystemKg).limits;
    case Column::Mass: return factsOf(&FrameSize::massKg).limits;
    case Column::Price: return factsOf(&FrameSize::price).limits;
    case Column::StemLength: return plausible::stemLength;
    case Column::BarWidth: return plausible::barWidth;
    case Column::CrankLength: return plausible::crank;
    case Column::RiderHeight: return factsOf(&FrameSize::riderHeightMm).limits;
    case Column::RiderInseam: return riderInseam;
    case Column::OtherPart: return anything;
    }
    return anything;
}

} // namespace

Range plausibleOf(Column column)
{
    const Limits limits = limitsOf(column);
    if (column == Column::BbRise) // the drop negated
        return {-limits.high, -limits.low};
    return {limits.low, limits.high};
}

} // namespace tripoise::document
