// SPDX-License-Identifier: MIT
//
// Rows put right before they are read: cells that break over lines are put together (quoted ones as
// RFC 4180 has them, and the headings of a table copied from a page, whose breaks are those of its
// cells), a corner that is missing is added, pairs of label and value are put one a row.
#pragma once

#include "table/grid.h"

#include <functional>

namespace tripoise::table {

using KindOf = std::function<CellKind(const std::string&)>;

/// Lines that end inside a quoted cell, together with those up to its end.
[[nodiscard]] std::vector<PlainLine> quotedLinesJoined(const std::vector<PlainLine>& lines,
                                                       char sign);

/// Rows that are pieces of one: the rows of numbers say how many cells it has, and of the runs that
/// give as many the one with the most headings is taken, of equal ones the shortest.
[[nodiscard]] std::vector<GridRow> brokenRowsJoined(std::vector<GridRow> rows,
                                                    const KindOf& kindOf);

/// A header or a line of sizes that lacks the blank corner has a cell less than its rows.
void addCorner(std::vector<GridRow>& rows, const KindOf& kindOf, const HeadingTable& table);

/// "Stack | 585 | Reach | 390": label and value, several pairs a row.
void pairsApart(std::vector<GridRow>& rows, const KindOf& kindOf);

} // namespace tripoise::table
