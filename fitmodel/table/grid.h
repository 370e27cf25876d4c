// SPDX-License-Identifier: MIT
//
// Text cut into cells.
//
// Every way of cutting that the text allows is tried (`cuts.h`). The one is taken in which most
// cells are clean numbers and known headings, and the lines are of one length.
#pragma once

#include "table/cuts.h"
#include "table/markup.h"

namespace tripoise::table {

struct Grid {
    std::vector<GridRow> rows; ///< one for each line that is not blank
    double worth = 0.0;        ///< clean numbers and headings, weighted
    GridRow told;              ///< what repeats headings or sizes, or names a model over its sizes
};

/// `reader` keeps what the cells refer to.
[[nodiscard]] Grid gridOf(const std::vector<PlainLine>& lines, CellReader& reader);

/// What rows of cells are worth.
[[nodiscard]] double worthOf(const TextRows& rows, CellReader& reader);

} // namespace tripoise::table
