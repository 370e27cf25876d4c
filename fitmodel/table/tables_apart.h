// SPDX-License-Identifier: MIT
//
// The tables of a text: those that stand one below the other or side by side apart, the halves of
// one table together.
//
// Another table begins where headings or sizes come again. It is a half of the one before if it has
// the same sizes and other headings, or the same headings and the sizes behind those
// (`joined_tables.h`); else it is another model's. Sizes that come again in one line are told apart
// by the models' names over them (`models_beside.h`).
#pragma once

#include "table/layout.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise::table {

struct TablePart {
    Grid grid;
    GridLayout layout; ///< of that grid
    /// What tells it from others of the same model: the name over its sizes, the setting.
    std::optional<std::string> title;
    std::optional<std::string> model; ///< of the table before, another setting's

    /// Sizes, and a column of a frame's geometry.
    [[nodiscard]] bool isGeometry() const;
};

/// In the order in which they begin; all that is none is a part as well.
[[nodiscard]] std::vector<TablePart> tablesApart(const std::vector<PlainLine>& lines,
                                                 CellReader& reader);

} // namespace tripoise::table
