// SPDX-License-Identifier: MIT
//
// Cells that break over lines, put together again: quoted ones as RFC 4180 has them, and the
// headings of a table copied from a page, whose breaks are those of its cells.
#pragma once

#include "table/grid.h"

#include <functional>

namespace tripoise::table {

/// Lines that end inside a quoted cell, together with those up to its end.
[[nodiscard]] std::vector<PlainLine> quotedLinesJoined(const std::vector<PlainLine>& lines,
                                                       char sign);

/// Rows that are pieces of one: the rows of numbers say how many cells it has, and of the runs that
/// give as many the one with the most headings is taken, of equal ones the shortest.
[[nodiscard]] std::vector<GridRow>
brokenRowsJoined(std::vector<GridRow> rows,
                 const std::function<CellKind(const std::string&)>& kindOf);

} // namespace tripoise::table
