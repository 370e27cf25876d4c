// SPDX-License-Identifier: MIT
//
// Text cut into cells.
//
// Every way of cutting that the text allows is tried (`cuts.h`). The one is taken in which most
// cells are clean numbers and known headings, and the lines are of one length. A page's tables
// become lines with tabs first, so that a page and what is copied of it are read alike.
#pragma once

#include "base/problem.h"
#include "table/cuts.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tripoise::table {

struct Grid {
    std::vector<GridRow> rows; ///< one for each line that is not blank
    double worth = 0.0;        ///< clean numbers and headings, weighted
    GridRow told;              ///< what repeats headings or sizes, or names a model over its sizes
};

struct PastedLines {
    std::vector<PlainLine> lines;
    bool more = false; ///< the page holds tables that are not among them
};

/// The lines of what was pasted, text or the source of a page, or why it cannot be a table at all.
[[nodiscard]] std::variant<PastedLines, Problem> linesOfPaste(std::string_view bytes,
                                                              CellReader& reader);

/// `reader` keeps what the cells refer to.
[[nodiscard]] Grid gridOf(const std::vector<PlainLine>& lines, CellReader& reader);

} // namespace tripoise::table
