// SPDX-License-Identifier: MIT
//
// Text cut into cells.
//
// Every way of cutting that the text allows is tried (`cuts.h`). The one is taken in which most
// cells are clean numbers and known headings, and the lines are of one length. Of a page's source
// the cells are as they are marked.
#pragma once

#include "base/problem.h"
#include "table/cells.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tripoise::table {

struct Grid {
    std::vector<GridRow> rows; ///< one for each line that is not blank
    double worth = 0.0;        ///< clean numbers and headings, weighted
    bool another = false;      ///< there is another table that is worth nearly as much
};

/// The cells of what was pasted, text or the source of a page, or why it cannot be a table at all.
/// `reader` keeps what the cells refer to.
[[nodiscard]] std::variant<Grid, Problem> gridOf(std::string_view bytes, CellReader& reader);

/// As text with tabs.
[[nodiscard]] std::string textOf(const Grid& grid);

} // namespace tripoise::table
