// SPDX-License-Identifier: MIT
//
// Where in a grid another table begins.
#pragma once

#include "table/extent.h"

namespace tripoise::table {

/// The row from which on another table reaches, its title included: where headings or sizes come
/// again behind numbers, or a line of headings stands where lines of sizes were, or the other way
/// round. A line of sizes or a title alone begins one only if below it is measured again what was
/// above.
[[nodiscard]] std::optional<std::size_t> nextTable(const std::vector<GridRow>& rows,
                                                   const Extent& extent, const HeadingTable& table);

} // namespace tripoise::table
