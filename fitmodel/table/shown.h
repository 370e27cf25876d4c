// SPDX-License-Identifier: MIT
//
// How a problem names a place and repeats a text.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

namespace tripoise::table {

/// At most 60 bytes, cut between characters.
[[nodiscard]] inline std::string shown(std::string_view text)
{
    constexpr std::size_t longest = 60;
    std::string result(text.substr(0, longest));
    while (!result.empty() && (result.back() & 0xC0) == 0x80)
        result.pop_back();
    if (result.size() < std::min(text.size(), longest) && !result.empty())
        result.pop_back();
    return result;
}

[[nodiscard]] inline std::string lineName(std::size_t line)
{
    return "line " + std::to_string(line);
}

} // namespace tripoise::table
