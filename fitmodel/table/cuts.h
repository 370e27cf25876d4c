// SPDX-License-Identifier: MIT
//
// The ways in which lines of text can be cut into cells: at tabs, semicolons, commas, bars, runs of
// blanks, blank columns, between words and the numbers behind them, at colons; or one cell a line.
#pragma once

#include "table/cells.h"

#include <functional>
#include <string>
#include <vector>

namespace tripoise::table {

struct PlainLine {
    std::size_t number = 0; ///< counted from 1
    std::string text;       ///< in plain signs
};

/// Each line that is not blank is one cell.
[[nodiscard]] std::vector<GridRow> cutNowhere(const std::vector<PlainLine>& lines,
                                              CellReader& reader);

/// One cell a line, as some pages are copied: headings each followed by as many values, or all
/// headings and then the values of one size after another.
[[nodiscard]] std::vector<GridRow> cutByHeadings(const std::vector<PlainLine>& lines,
                                                 CellReader& reader);

/// Offers what each way makes of the lines that allow it.
void eachCut(const std::vector<PlainLine>& lines, CellReader& reader,
             const std::function<void(std::vector<GridRow>)>& offer);

} // namespace tripoise::table
