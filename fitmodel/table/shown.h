// SPDX-License-Identifier: MIT
//
// How a problem names a place and repeats a text.
#pragma once

#include "text/encoding.h"

#include <string>
#include <string_view>

namespace tripoise::table {

/// At most 60 bytes, cut between characters.
[[nodiscard]] inline std::string shown(std::string_view text)
{
    constexpr std::size_t longest = 60;
    return std::string(cutToBytes(text, longest));
}

[[nodiscard]] inline std::string lineName(std::size_t line)
{
    return "line " + std::to_string(line);
}

} // namespace tripoise::table
