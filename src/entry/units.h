// SPDX-License-Identifier: MIT
//
// The units people write numbers in, and what each is in millimetres, kilograms or degrees.
// The inch and the pound are exact by definition (international yard and pound, 1959).
#pragma once

#include <array>
#include <cstdint>

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
    NumberKind kind = {};
    double size = 1.0; ///< in the kind's base unit: mm, kg, degree, share of one, one
};

[[nodiscard]] constexpr UnitFacts factsOf(Unit unit)
{
    constexpr double inchMm = 25.4;
    constexpr double poundKg = 0.45359237;
    constexpr std::array<UnitFacts, 15> facts{{{NumberKind::Length, 1.0},
                                               {NumberKind::Length, 10.0},
                                               {NumberKind::Length, 1000.0},
                                               {NumberKind::Length, inchMm},
                                               {NumberKind::Length, 12.0 * inchMm},
                                               {NumberKind::Mass, 1.0},
                                               {NumberKind::Mass, 0.001},
                                               {NumberKind::Mass, poundKg},
                                               {NumberKind::Mass, poundKg / 16.0},
                                               {NumberKind::Mass, 14.0 * poundKg},
                                               {NumberKind::Angle, 1.0},
                                               {NumberKind::Angle, 1.0 / 60.0},
                                               {NumberKind::Angle, 1.0 / 3600.0},
                                               {NumberKind::Percent, 0.01},
                                               {NumberKind::Plain, 1.0}}};
    return facts[static_cast<std::size_t>(unit)];
}

} // namespace tripoise
