// SPDX-License-Identifier: MIT
//
// A table of a frame that can be set up in two ways, by a chip at its linkage, as one table of
// each.
#pragma once

#include "table/tables_apart.h"

namespace tripoise::table {

/// The part itself where it does not tell of two. Else one of each, with the setting's name for a
/// title: with its sizes where these are named by settings, its rows, and its piece of each cell
/// that holds two ("65 / 65.5"). What tells of no setting is of both, but for a column that is told
/// of this one as well; in the second what a setting changes is a guess there.
[[nodiscard]] std::vector<TablePart> settingsApart(TablePart part);

} // namespace tripoise::table
