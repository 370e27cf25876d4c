// SPDX-License-Identifier: MIT
//
// Models side by side in one table, told by their names over the sizes: "S M L | S M L" below
// "Steel | Alloy", or lines that are names alone above the sizes of each.
#pragma once

#include "table/tables_apart.h"

namespace tripoise::table {

/// The part of each model; the part alone where there is one.
[[nodiscard]] std::vector<TablePart> modelsBeside(TablePart part, const HeadingTable& table);

} // namespace tripoise::table
