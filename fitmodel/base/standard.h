// SPDX-License-Identifier: MIT
//
// The safety standards a bicycle may be sold under.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace tripoise {

/// A safety standard the bicycle is sold under, where its toe clearance becomes a limit.
enum class Standard { Cfr1512, IsoCity, IsoYoungAdult, IsoMountain, IsoRacing };

template <typename T> using PerStandard = std::array<T, 5>;

inline constexpr PerStandard<std::string_view> standardKeys{
    "16CFR1512", "ISO4210-city", "ISO4210-young-adult", "ISO4210-mountain", "ISO4210-racing"};

[[nodiscard]] constexpr std::size_t indexOf(Standard standard)
{
    return static_cast<std::size_t>(standard);
}

[[nodiscard]] constexpr std::string_view keyOf(Standard standard)
{
    return standardKeys[indexOf(standard)];
}

} // namespace tripoise
