// SPDX-License-Identifier: MIT
//
// Names of models, above tables and between them.
#pragma once

#include "table/cells.h"

#include <optional>

namespace tripoise::table {

/// Whether a cell can be the name of a model.
[[nodiscard]] bool isTitle(const GridCell& cell, const HeadingTable& table);

/// The name of a model in a row that is nothing else: alone, or behind "Model"; null where there is
/// none.
[[nodiscard]] const GridCell* titleIn(const GridRow& row, const HeadingTable& table);

/// The setting that a text names and nothing else: "Low", "Flip chip: high".
[[nodiscard]] std::optional<Setting> settingIn(std::string_view text, const HeadingTable& table);

/// A title of the page, not of a model: "Overview", "Reviews (12)".
[[nodiscard]] bool isPageTitle(std::string_view text, const HeadingTable& table);

/// Whether a row is of such titles alone.
[[nodiscard]] bool isOfAPage(const GridRow& row, const HeadingTable& table);

/// The row from which a table on reaches whose first line is this: its title stands above, the
/// nearest line that can be one. What lies between the title and the table belongs to it; notes of
/// the table before do not.
[[nodiscard]] std::size_t withTitle(const std::vector<GridRow>& rows, std::size_t row,
                                    const HeadingTable& table);

} // namespace tripoise::table
