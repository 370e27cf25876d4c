// SPDX-License-Identifier: MIT
//
// The lines of what was pasted, or why it cannot be a table at all.
#pragma once

#include "base/problem.h"
#include "table/grid.h"

#include <string_view>
#include <variant>
#include <vector>

namespace tripoise::table {

[[nodiscard]] std::variant<std::vector<PlainLine>, Problem> plainLinesOf(std::string_view bytes);

} // namespace tripoise::table
