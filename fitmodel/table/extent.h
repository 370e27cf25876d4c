// SPDX-License-Identifier: MIT
//
// Where in a grid the table lies, and which way: its first and last row, whether its sizes stand
// one a row, and what is stated beside it. Where headings come again another table begins, and is
// left.
#pragma once

#include "table/legend.h"
#include "table/sheet.h"

namespace tripoise::table {

struct Extent {
    Legend legend;
    Unit unit = Unit::None; ///< of lengths, stated for the whole table
    std::size_t from = 0;
    std::size_t to = 0;
    std::size_t rowsRead = 0; ///< what follows is another table
    bool sizesDown = false;
    bool anyHeading = false; ///< else what the headings are is for a person to say

    /// What a heading means, or the letter that stands for one.
    [[nodiscard]] std::optional<Column> columnOf(const GridCell& cell) const;
    [[nodiscard]] bool isHeading(const GridCell& cell) const { return columnOf(cell).has_value(); }
};

/// Marks the cells that state a unit or a legend as notes.
[[nodiscard]] Extent extentOf(Grid& grid, const HeadingTable& table);

} // namespace tripoise::table
