// SPDX-License-Identifier: MIT
//
// Two halves of one table, put together.
#pragma once

#include "table/tables_apart.h"

namespace tripoise::table {

/// `first` with the other below or beside it, if the names of all sizes or all headings prove that
/// they are one table; nothing else does. The title of the second is no proof against its having
/// the same sizes and other headings ("Fork"), but against its having the same headings and other
/// sizes.
[[nodiscard]] std::optional<Grid> joined(const TablePart& first, const TablePart& second,
                                         const HeadingTable& table);

/// Whether the other may be the second half all the same: it has the same headings and carries the
/// sizes on, but stands under a line that can be a title of its own.
[[nodiscard]] bool mayGoOn(const TablePart& first, const TablePart& second,
                           const HeadingTable& table);

} // namespace tripoise::table
