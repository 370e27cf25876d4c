// SPDX-License-Identifier: MIT
//
// Text to JSON, guarded: size and depth are limited, a key may stand once in an object, and what is
// wrong comes back as a problem with its line and column. Keys keep the order of the text. Nothing
// throws.
#pragma once

#include "base/problem.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>
#include <variant>

namespace tripoise {

using Json = nlohmann::ordered_json;

inline constexpr std::size_t mostBytes = 4'000'000;
inline constexpr std::size_t mostLevels = 64;

/// The JSON of a text (RFC 8259, a byte-order mark is passed over), or what is wrong with it.
[[nodiscard]] std::variant<Json, Problems> parseJson(std::string_view text);

/// JSON pointer (RFC 6901) to a member or an entry.
[[nodiscard]] std::string joined(const std::string& path, std::string_view key);
[[nodiscard]] std::string joined(const std::string& path, std::size_t index);

/// A number as a hand would write it: without a fraction where it has none.
[[nodiscard]] Json tidy(double value);

/// One-line JSON. Text that is not UTF-8 has its bad bytes replaced, never refused.
[[nodiscard]] std::string compact(const Json& json);

/// One line of at most `most` bytes, cut between characters, control characters made visible.
[[nodiscard]] std::string shortened(std::string_view text, std::size_t most);

/// A value as a problem shows it.
[[nodiscard]] std::string shown(const Json& json);

} // namespace tripoise
