// SPDX-License-Identifier: MIT
//
// What a bicycle is ridden for, and the mix of it. Costs and windows are kept per use and mixed
// last.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace tripoise {

enum class Use { City, Commuting, FastCommuting, Touring, Gravel, Road };

inline constexpr std::array allUses{Use::City,    Use::Commuting, Use::FastCommuting,
                                    Use::Touring, Use::Gravel,    Use::Road};

template <typename T> using PerUse = std::array<T, allUses.size()>;

[[nodiscard]] constexpr std::size_t indexOf(Use use)
{
    return static_cast<std::size_t>(use);
}

inline constexpr PerUse<std::string_view> useKeys{"city",    "commuting", "fast_commuting",
                                                  "touring", "gravel",    "road"};

[[nodiscard]] constexpr std::string_view keyOf(Use use)
{
    return useKeys[indexOf(use)];
}

[[nodiscard]] constexpr std::optional<Use> useFromKey(std::string_view key)
{
    for (const Use use : allUses)
        if (keyOf(use) == key)
            return use;
    return std::nullopt;
}

/// Shares of the uses, summing to 1.
struct Mix {
    PerUse<double> share{};

    [[nodiscard]] static constexpr Mix only(Use use)
    {
        Mix mix;
        mix.share[indexOf(use)] = 1.0;
        return mix;
    }
    [[nodiscard]] constexpr double of(Use use) const { return share[indexOf(use)]; }
    [[nodiscard]] constexpr double mean(const PerUse<double>& perUse) const
    {
        double sum = 0.0;
        for (std::size_t i = 0; i < share.size(); ++i)
            sum += share[i] * perUse[i];
        return sum;
    }

    bool operator==(const Mix&) const = default;
};

} // namespace tripoise
