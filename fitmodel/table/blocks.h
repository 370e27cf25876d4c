// SPDX-License-Identifier: MIT
//
// The tables of a page that is laid out in blocks: elements in each other (div, list), none of them
// marked as a table.
//
// Whether an element is a row, a cell or a wrapper shows by what it holds. Each is tried as a row
// of its children, as a table whose rows are its children, with their children or grandchildren as
// cells, and as cells that run from heading to heading; what is worth more as a table (`grid.h`)
// than all that lies in it is one. Tables of like rows with a few lines between are one table.
// An
// empty element is a cell where the row has as many as most with it, and none elsewhere.
#pragma once

#include "base/problem.h"
#include "table/cells.h"
#include "table/markup.h"

#include <variant>

namespace tripoise::table {

inline constexpr std::size_t mostBlocksNested = 200; ///< deeper ones are text of these
inline constexpr std::size_t mostBlockTexts = 50'000;

/// In the order in which they begin; refused where a page has more texts than that.
[[nodiscard]] std::variant<std::vector<PageTable>, Problem> blockTablesOfPage(std::string_view page,
                                                                              CellReader& reader);

} // namespace tripoise::table
