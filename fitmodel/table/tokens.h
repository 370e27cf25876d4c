// SPDX-License-Identifier: MIT
//
// The pieces between the blanks of a line.
#pragma once

#include "text/plain.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace tripoise::table {

using Cells = std::vector<std::string>;

/// At a run of blanks that is as long or longer.
[[nodiscard]] inline Cells pieces(std::string_view line, std::string_view blanks)
{
    Cells cells;
    for (line = trimmed(line); !line.empty();) {
        const std::size_t end = std::min(line.find(blanks), line.size());
        cells.emplace_back(trimmed(line.substr(0, end)));
        line = trimmed(line.substr(end));
    }
    return cells;
}

/// At each blank.
[[nodiscard]] inline Cells tokensOf(std::string line)
{
    std::replace(line.begin(), line.end(), '\t', ' ');
    return pieces(line, " ");
}

/// Tokens together, from one to before another.
[[nodiscard]] inline std::string phrase(const Cells& tokens, std::size_t from, std::size_t to)
{
    std::string text;
    for (std::size_t i = from; i < to; ++i)
        text += (i > from ? " " : "") + tokens[i];
    return text;
}
/// The first tokens, together.
[[nodiscard]] inline std::string phrase(const Cells& tokens, std::size_t count)
{
    return phrase(tokens, 0, count);
}

} // namespace tripoise::table
