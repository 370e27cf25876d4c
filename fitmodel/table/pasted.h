// SPDX-License-Identifier: MIT
//
// The cells of what was pasted, text or the source of a page, or why it cannot be a table at all.
#pragma once

#include "base/problem.h"
#include "table/grid.h"

#include <string_view>
#include <variant>
#include <vector>

namespace tripoise::table {

[[nodiscard]] std::variant<Grid, Problem> gridOfBytes(std::string_view bytes,
                                                      const HeadingTable& table);

} // namespace tripoise::table
