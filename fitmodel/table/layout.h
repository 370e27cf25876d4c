// SPDX-License-Identifier: MIT
//
// Which way a grid lies, and what its cells are for.
#pragma once

#include "table/sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise::table {

/// One column of the geometry, whichever way it lies in the grid.
struct Lane {
    std::string heading;
    std::vector<CellPlace> headingCells;
    std::vector<CellPlace> unitCells;
    std::optional<Column> column;
    bool isSize = false; ///< another name for the sizes
    PrintUnit unit = PrintUnit::None;
    std::vector<std::optional<CellPlace>> cells; ///< by size
};

struct GridLayout {
    bool sizesDown = false;
    std::vector<std::string> sizes;
    std::vector<std::optional<CellPlace>> sizeCells;
    std::vector<CellPlace> sizeHeading;
    std::optional<CellPlace> model;
    std::vector<Lane> lanes;
    std::vector<CellPlace> notes;     ///< that state units or a legend
    PrintUnit unit = PrintUnit::None; ///< of lengths, stated for the whole table
    std::size_t rowsRead = 0;         ///< what follows is another table
    bool sizesNamed = false;
};

[[nodiscard]] GridLayout layoutOf(const Grid& grid, const HeadingTable& table);

} // namespace tripoise::table
