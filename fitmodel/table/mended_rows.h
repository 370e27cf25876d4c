// SPDX-License-Identifier: MIT
//
// Rows put right before they are read: cells that break over lines are put together (quoted ones as
// RFC 4180 has them, and the headings of a table copied from a page, whose breaks are those of its
// cells), a corner that is missing is added, pairs of label and value are put one a row.
#pragma once

#include "table/cuts.h"

namespace tripoise::table {

/// Lines that end inside a quoted cell, together with those up to its end.
[[nodiscard]] std::vector<PlainLine> quotedLinesJoined(const std::vector<PlainLine>& lines,
                                                       char sign);

/// Rows that are pieces of one: the rows of numbers say how many cells it has, and of the runs that
/// give as many the one with the most headings is taken, of equal ones the shortest. Rows of
/// numbers alone belong to the line above them.
[[nodiscard]] std::vector<GridRow> brokenRowsJoined(std::vector<GridRow> rows, CellReader& reader);

/// A header or a line of sizes that lacks the blank corner has a cell less than its rows.
void addCorner(std::vector<GridRow>& rows, CellReader& reader);

/// "Stack | 585 | Reach | 390": label and value, several pairs in this share of the rows.
void pairsApart(std::vector<GridRow>& rows, double share);

} // namespace tripoise::table
