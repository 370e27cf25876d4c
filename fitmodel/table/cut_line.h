// SPDX-License-Identifier: MIT
//
// One line cut into cells.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tripoise::table {

using Cells = std::vector<std::string>;

/// Cut at a sign; a quoted cell keeps the signs inside it (RFC 4180).
[[nodiscard]] Cells cutAt(std::string_view line, std::string_view sign);
/// `outer`: bars stand at both ends of the line as well.
[[nodiscard]] Cells cutAtBars(std::string_view line, bool outer);
/// At two blanks or more.
[[nodiscard]] Cells cutAtBlanks(std::string_view line);
/// At every blank.
[[nodiscard]] Cells tokensOf(std::string_view line);
/// "|---|:--:|", "+----+", "=====" : a line that is drawn.
[[nodiscard]] bool isDrawn(std::string_view line);

} // namespace tripoise::table
