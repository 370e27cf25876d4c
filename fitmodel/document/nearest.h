// SPDX-License-Identifier: MIT
//
// Which known names a misspelt one may have meant, by edit distance (Levenshtein 1966): insertions,
// deletions and substitutions of one byte each. Case counts.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tripoise::document {

/// The known names, nearest first; equal distances keep their order.
[[nodiscard]] std::vector<std::string> byNearness(std::string_view name,
                                                  std::span<const std::string_view> known);

/// The nearest, and at most two others that are nearly as near.
[[nodiscard]] std::vector<std::string> nearestOf(std::string_view name,
                                                 std::span<const std::string_view> known);

} // namespace tripoise::document
