// SPDX-License-Identifier: MIT
//
// The units people write numbers in, and what each is in millimetres, kilograms or degrees.
// The inch and the pound are exact by definition (international yard and pound, 1959).
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace tripoise {

enum class NumberKind : std::uint8_t { Length, Mass, Angle, Plain, Percent };

enum class Unit : std::uint8_t {
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
    Kilogram,
    Gram,
    Pound,
    Ounce,
    Stone,
    Degree,
    ArcMinute,
    ArcSecond,
    Percent,
    None, ///< a plain number
};

struct UnitFacts {
    std::string_view key; ///< in assets/number_words.json
    NumberKind kind = {};
    double size = 1.0;         ///< in the kind's base unit: mm, kg, degree, share of one, one
    Unit leftOut = Unit::None; ///< behind this one: "5 ft 10", "12 st 3", "73° 30"
};

inline constexpr double inchMm = 25.4;
inline constexpr double poundKg = 0.45359237;
inline constexpr std::array<UnitFacts, 15> unitFacts{{
    {"mm", NumberKind::Length, 1.0},
    {"cm", NumberKind::Length, 10.0, Unit::Millimetre},
    {"m", NumberKind::Length, 1000.0},
    {"in", NumberKind::Length, inchMm},
    {"ft", NumberKind::Length, 12.0 * inchMm, Unit::Inch},
    {"kg", NumberKind::Mass, 1.0},
    {"g", NumberKind::Mass, 0.001},
    {"lb", NumberKind::Mass, poundKg},
    {"oz", NumberKind::Mass, poundKg / 16.0},
    {"st", NumberKind::Mass, 14.0 * poundKg, Unit::Pound},
    {"deg", NumberKind::Angle, 1.0, Unit::ArcMinute},
    {"min", NumberKind::Angle, 1.0 / 60.0},
    {"s", NumberKind::Angle, 1.0 / 3600.0},
    {"percent", NumberKind::Percent, 0.01},
    {"", NumberKind::Plain, 1.0},
}};

[[nodiscard]] constexpr const UnitFacts& factsOf(Unit unit)
{
    return unitFacts[static_cast<std::size_t>(unit)];
}

[[nodiscard]] constexpr bool isLength(Unit unit)
{
    return factsOf(unit).kind == NumberKind::Length;
}

} // namespace tripoise
