// SPDX-License-Identifier: MIT
//
// The units people write numbers in, and what each is in millimetres, kilograms or degrees.
// The inch and the pound are exact by definition (international yard and pound, 1959).
#pragma once

#include <array>
#include <cstdint>

namespace tripoise {

enum class Dimension : std::uint8_t { Length, Mass, Angle, Plain, Percent };

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
    Dimension dimension;
    double size; ///< in the dimension's base unit: mm, kg, degree, share of one, one
};

[[nodiscard]] constexpr UnitFacts factsOf(Unit unit)
{
    constexpr double inchMm = 25.4;
    constexpr double poundKg = 0.45359237;
    constexpr std::array<UnitFacts, 15> facts{{{Dimension::Length, 1.0},
                                               {Dimension::Length, 10.0},
                                               {Dimension::Length, 1000.0},
                                               {Dimension::Length, inchMm},
                                               {Dimension::Length, 12.0 * inchMm},
                                               {Dimension::Mass, 1.0},
                                               {Dimension::Mass, 0.001},
                                               {Dimension::Mass, poundKg},
                                               {Dimension::Mass, poundKg / 16.0},
                                               {Dimension::Mass, 14.0 * poundKg},
                                               {Dimension::Angle, 1.0},
                                               {Dimension::Angle, 1.0 / 60.0},
                                               {Dimension::Angle, 1.0 / 3600.0},
                                               {Dimension::Percent, 0.01},
                                               {Dimension::Plain, 1.0}}};
    return facts[static_cast<std::size_t>(unit)];
}

} // namespace tripoise
