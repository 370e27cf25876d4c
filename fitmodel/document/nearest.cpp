// SPDX-License-Identifier: MIT
#include "document/nearest.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace tripoise::document {
namespace {

// A name longer than any of ours is compared by its beginning.
constexpr std::size_t longestCompared = 64;
constexpr std::size_t mostNames = 3;
constexpr std::size_t nearlyAsNear = 2; // edits

std::size_t editDistance(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = std::exchange(row[0], i + 1);
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t substituted = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({substituted, diagonal + 1, row[j] + 1});
        }
    }
    return row.back();
}

using Ranked = std::vector<std::pair<std::size_t, std::string_view>>;

Ranked ranked(std::string_view name, std::span<const std::string_view> known)
{
    Ranked result;
    for (const std::string_view other : known)
        result.emplace_back(editDistance(name.substr(0, longestCompared), other), other);
    std::stable_sort(result.begin(), result.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    return result;
}

} // namespace

std::vector<std::string> byNearness(std::string_view name, std::span<const std::string_view> known)
{
    std::vector<std::string> names;
    for (const auto& [distance, other] : ranked(name, known))
        names.emplace_back(other);
    return names;
}

std::vector<std::string> nearestOf(std::string_view name, std::span<const std::string_view> known)
{
    std::vector<std::string> names;
    const Ranked all = ranked(name, known);
    for (const auto& [distance, other] : all)
        if (names.size() < mostNames && distance <= all.front().first + nearlyAsNear)
            names.emplace_back(other);
    return names;
}

} // namespace tripoise::document
