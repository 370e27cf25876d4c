// SPDX-License-Identifier: MIT
//
// One table, its cells and lanes told: what is understood of them, and what is odd.
#pragma once

#include "table/read_table.h"
#include "table/tables_apart.h"

namespace tripoise::table {

[[nodiscard]] ReadTable readPart(const TablePart& part, const HeadingTable& table,
                                 const std::vector<Assignment>& assignments);

} // namespace tripoise::table
