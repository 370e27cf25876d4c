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
    std::optional<Column> second; ///< in the same cells, behind the first
    bool isSize = false;          ///< another name for the sizes
    bool byParts = false;
    bool guessed = false;
    bool qualified = false; ///< the heading says which of two ways of measuring it is
    PrintUnit unit = PrintUnit::None;
    std::vector<std::optional<CellPlace>> cells; ///< by size
};

struct GridLayout {
    bool sizesDown = false;
    std::vector<std::string> sizes;
    std::vector<std::optional<CellPlace>> sizeCells;
    std::vector<CellPlace> sizeHeading;
    std::optional<CellPlace> model;
    bool sizeInModel = false; ///< the title of a single size ends in its name
    std::vector<Lane> lanes;
    std::vector<CellPlace> notes;     ///< that state units or a legend
    PrintUnit unit = PrintUnit::None; ///< of lengths, stated for the whole table
    std::size_t rowsRead = 0;         ///< what follows is another table
    bool sizesNamed = false;
    bool sizesGuessed = false;    ///< there are names, but not one for each place of numbers
    bool headingsGuessed = false; ///< a place of numbers among them lacks its heading
    /// The first of the cells of each row that has fewer or more than there are places, so that
    /// nothing says whose its numbers are. They belong to no lane.
    std::vector<CellPlace> shortRows;
    std::vector<bool> withheld; ///< by size, where it stands in such a row
};

[[nodiscard]] GridLayout layoutOf(const Grid& grid, const HeadingTable& table);

} // namespace tripoise::table
