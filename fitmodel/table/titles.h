// SPDX-License-Identifier: MIT
//
// Names of models, above tables and between them.
#pragma once

#include "table/cells.h"

namespace tripoise::table {

/// Whether a cell can be the name of a model.
[[nodiscard]] bool isTitle(const GridCell& cell, const HeadingTable& table);

/// The name of a model in a row that is nothing else: alone, or behind "Model"; null where there is
/// none.
[[nodiscard]] const GridCell* titleIn(const GridRow& row, const HeadingTable& table);

/// The row from which a table on reaches whose first line is this: its title stands above, the
/// nearest line that can be one. What lies between the title and the table belongs to it; notes of
/// the table before do not.
[[nodiscard]] std::size_t withTitle(const std::vector<GridRow>& rows, std::size_t row,
                                    const HeadingTable& table);

} // namespace tripoise::table
