// SPDX-License-Identifier: MIT
//
// Which way a grid lies, and what its cells are for: each column of the geometry is a lane, with
// the heading that is most of what stands before it and that its numbers can be.
#pragma once

#include "table/places.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise::table {

/// One column of the geometry, whichever way it lies in the grid.
struct Lane {
    std::string heading;
    std::vector<CellPlace> headingCells;
    std::vector<CellPlace> unitCells;
    HeadingRead read;                 ///< of the heading, or of what its letter stands for
    std::optional<std::size_t> piece; ///< of two in each cell, "65 / 65.5"
    bool ofFirstSetting = false;      ///< maybe, and this is the second's
    std::vector<std::optional<CellPlace>> cells; ///< by size
};

struct GridLayout {
    bool sizesDown = false;
    std::size_t from = 0; ///< the table's first row, and the one behind its last
    std::size_t to = 0;
    Places places; ///< along the lines of the sheet, and the sizes in them
    std::optional<CellPlace> model;
    std::optional<CellPlace> setting; ///< that is named beside it
    std::vector<Lane> lanes;
    Unit unit = Unit::None;       ///< of lengths, stated for the whole table
    std::size_t rowsRead = 0;     ///< what follows is another table
    bool headingsGuessed = false; ///< a place of numbers among them lacks its heading
    /// The first of the cells of each row that has fewer or more than there are places, so that
    /// nothing says whose its numbers are. They belong to no lane.
    std::vector<CellPlace> shortRows;
    std::vector<bool> withheld;   ///< by size, where it stands in such a row
    std::vector<CellPlace> aside; ///< of another setting, which has a layout of its own
};

/// Marks the cells that state units as notes.
[[nodiscard]] GridLayout layoutOf(Grid& grid, const HeadingTable& table);

} // namespace tripoise::table
