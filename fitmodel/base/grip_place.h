// SPDX-License-Identifier: MIT
//
// The places on a bar that a hand holds, and how far they lie from the bar's clamp.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace tripoise {

enum class GripPlace { Flat, Swept, Hoods, Tops, Drops };

inline constexpr std::array allGripPlaces{GripPlace::Flat, GripPlace::Swept, GripPlace::Hoods,
                                          GripPlace::Tops, GripPlace::Drops};

template <typename T> using PerGripPlace = std::array<T, allGripPlaces.size()>;

inline constexpr PerGripPlace<std::string_view> gripPlaceKeys{"flat", "swept", "hoods", "tops",
                                                              "drops"};

[[nodiscard]] constexpr std::size_t indexOf(GripPlace place)
{
    return static_cast<std::size_t>(place);
}
[[nodiscard]] constexpr std::string_view keyOf(GripPlace place)
{
    return gripPlaceKeys[indexOf(place)];
}
[[nodiscard]] constexpr std::optional<GripPlace> gripPlaceFromKey(std::string_view key)
{
    for (const GripPlace place : allGripPlaces)
        if (keyOf(place) == key)
            return place;
    return std::nullopt;
}

} // namespace tripoise
