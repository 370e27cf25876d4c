// SPDX-License-Identifier: MIT
//
// Where in a grid the table lies, and which way: its first and last row, whether its sizes stand
// one a row, and what is stated beside it. Where headings come again another table begins, and is
// left.
#pragma once

#include "table/legend.h"
#include "table/sheet.h"

#include <vector>

namespace tripoise::table {

struct Extent {
    std::vector<std::vector<HeadingRead>> reads; ///< of every cell
    Legend legend;
    PrintUnit unit = PrintUnit::None; ///< of lengths, stated for the whole table
    std::vector<CellPlace> notes;     ///< that state units or a legend
    std::size_t from = 0;
    std::size_t to = 0;
    std::size_t rowsRead = 0; ///< what follows is another table
    bool sizesDown = false;
    bool anyHeading = false; ///< else what the headings are is for a person to say

    [[nodiscard]] const HeadingRead& read(CellPlace place) const;
    [[nodiscard]] bool isHeading(const HeadingRead& heading) const;
};

[[nodiscard]] Extent extentOf(const Grid& grid, const HeadingTable& table);

} // namespace tripoise::table
