// SPDX-License-Identifier: MIT
//
// What is pasted, as lines of text. A page's tables become lines with tabs, so that a page and what
// is copied of it are read alike; where none of its tables is one of geometry, its blocks are tried
// (`blocks.h`).
#pragma once

#include "base/problem.h"
#include "table/cuts.h"

#include <string_view>
#include <variant>
#include <vector>

namespace tripoise::table {

struct PastedLines {
    std::vector<PlainLine> lines;
    bool more = false; ///< the page holds tables that are not among them
};

/// The lines of what was pasted, text or the source of a page, or why it cannot be a table at all.
[[nodiscard]] std::variant<PastedLines, Problem> linesOfPaste(std::string_view bytes,
                                                              CellReader& reader);

} // namespace tripoise::table
