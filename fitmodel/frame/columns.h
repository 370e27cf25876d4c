// SPDX-License-Identifier: MIT
//
// What a column of a geometry table can mean. Where the trade measures one name in two ways, each
// way is a column of its own, so that a definition is a choice between columns: front centre
// straight or horizontal, chainstay along the stay or horizontal, drop below the axles or rise
// above them.
#pragma once

#include "base/units.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace tripoise {

enum class Column : std::uint8_t {
    // as Geometry holds them
    Stack,
    Reach,
    SeatAngle, ///< effective
    HeadAngle,
    HeadTube,
    SeatTube, ///< centre to the top of the tube
    TopTube,  ///< effective: horizontal, head-tube top centre to the seat axis
    Chainstay,
    BbDrop,
    Wheelbase,
    FrontCentre, ///< straight
    ForkLength,  ///< crown seat to axle, straight
    ForkOffset,
    Standover,
    // the same by other definitions
    SeatAngleActual, ///< of the tube itself
    TopTubeActual,   ///< along the tube
    SeatTubeCentre,  ///< centre to the centre of the top tube
    ChainstayHorizontal,
    ChainstayLong, ///< the far end of an adjustable dropout
    BbHeight,      ///< above the ground
    BbRise,        ///< above the axles: the drop negated
    WheelbaseLong, ///< at the far end of an adjustable dropout
    FrontCentreHorizontal,
    ForkLengthAxial, ///< along the steering axis
    Trail,           ///< on the ground
    // parts that belong to the frame
    LowerHeadset,
    UpperHeadset,
    WheelRadius,
    BeadSeat,
    Tyre,
    MaxTyre,
    SteererDiameter,
    PostDiameter,
    PostLength,
    PostOffset,
    MaxSystem,
    Mass,
    Price,
    // of the riders it is made for, and of the bicycle as it is sold
    StemLength,
    BarWidth,
    CrankLength,
    RiderHeight,
    // known, and of no use for a frame
    RiderInseam,
    OtherPart,
};

inline constexpr std::size_t columnCount = static_cast<std::size_t>(Column::OtherPart) + 1;

[[nodiscard]] constexpr std::size_t indexOf(Column column)
{
    return static_cast<std::size_t>(column);
}

template <typename T> using PerColumn = std::array<T, columnCount>;

/// Of the frame's geometry, by whatever definition.
[[nodiscard]] constexpr bool isOfTheFrame(std::optional<Column> column)
{
    return column && indexOf(*column) <= indexOf(Column::Trail);
}

inline constexpr PerColumn<std::string_view> columnKeys{
    "stack_mm",
    "reach_mm",
    "seat_angle_deg",
    "head_angle_deg",
    "head_tube_mm",
    "seat_tube_mm",
    "top_tube_effective_mm",
    "chainstay_mm",
    "bb_drop_mm",
    "wheelbase_mm",
    "front_centre_mm",
    "fork_length_mm",
    "fork_offset_mm",
    "standover_mm",
    "seat_angle_actual_deg",
    "top_tube_actual_mm",
    "seat_tube_centre_mm",
    "chainstay_horizontal_mm",
    "chainstay_long_mm",
    "bb_height_mm",
    "bb_rise_mm",
    "wheelbase_long_mm",
    "front_centre_horizontal_mm",
    "fork_length_axial_mm",
    "trail_mm",
    "lower_headset_mm",
    "upper_headset_mm",
    "wheel_radius_mm",
    "bead_seat_mm",
    "tyre_mm",
    "max_tyre_mm",
    "steerer_mm",
    "post_diameter_mm",
    "post_length_mm",
    "post_offset_mm",
    "max_system_kg",
    "mass_kg",
    "price",
    "stem_length_mm",
    "bar_width_mm",
    "crank_length_mm",
    "rider_height_mm",
    "rider_inseam_mm",
    "other_part",
};

[[nodiscard]] constexpr std::string_view keyOf(Column column)
{
    return columnKeys[indexOf(column)];
}

[[nodiscard]] constexpr std::optional<Column> columnFromKey(std::string_view key)
{
    for (std::size_t i = 0; i < columnCount; ++i)
        if (columnKeys[i] == key)
            return static_cast<Column>(i);
    return std::nullopt;
}

/// Of its values.
[[nodiscard]] constexpr Unit unitOf(Column column)
{
    const std::string_view key = keyOf(column);
    if (key.ends_with("_mm"))
        return Unit::Millimetre;
    if (key.ends_with("_deg"))
        return Unit::Degree;
    return key.ends_with("_kg") ? Unit::Kilogram : Unit::None;
}

} // namespace tripoise
