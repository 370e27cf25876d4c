// SPDX-License-Identifier: MIT
//
// Lines of text cut into cells.
//
// Every way of cutting that the text allows is tried: tabs, semicolons, bars, commas, runs of
// blanks, blank columns, words followed by numbers, one cell a line, labels with their value two a
// line. The one is taken in which most cells are clean numbers and known headings, and the lines
// are of one length. Of a page's source the cells are as they are marked.
#pragma once

#include "table/headings.h"
#include "table/markup.h"

#include <string>
#include <string_view>
#include <vector>

namespace tripoise::table {

struct PlainLine {
    std::size_t number = 0; ///< counted from 1
    std::string text;       ///< in plain signs
};

struct GridRow {
    std::vector<std::string> cells; ///< trimmed
    std::vector<std::size_t> lines; ///< of each cell
};

struct Grid {
    std::vector<GridRow> rows; ///< one for each line that is not blank
    double worth = 0.0;        ///< clean numbers and headings, weighted
    bool another = false;      ///< there is another table that is worth nearly as much
};

/// The page's table with the most in it, with the text beside it.
[[nodiscard]] Grid gridOf(const std::vector<PageTable>& tables, const HeadingTable& table);

/// As text with tabs.
[[nodiscard]] std::string textOf(const Grid& grid);

enum class CellKind { Blank, Number, Missing, Heading, Unit, Text };

[[nodiscard]] CellKind kindOf(std::string_view cell, const HeadingTable& table);

[[nodiscard]] Grid gridOf(const std::vector<PlainLine>& lines, const HeadingTable& table);

} // namespace tripoise::table
