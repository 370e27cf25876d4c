// SPDX-License-Identifier: MIT
//
// The safety standards a bicycle may be sold under.
#pragma once

#include <array>
#include <cstddef>

namespace tripoise {

/// A safety standard the bicycle is sold under, where its toe clearance becomes a limit.
enum class Standard { Cfr1512, IsoCity, IsoYoungAdult, IsoMountain, IsoRacing };

template <typename T> using PerStandard = std::array<T, 5>;

[[nodiscard]] constexpr std::size_t indexOf(Standard standard)
{
    return static_cast<std::size_t>(standard);
}

} // namespace tripoise
