// SPDX-License-Identifier: MIT
//
// Of several columns with one meaning, which counts, and what the others are.
#pragma once

#include "table/read_table.h"

namespace tripoise::table {

/// Whether two columns of the same sizes have the same figures, in another unit maybe.
[[nodiscard]] bool isSame(const ReadColumn& one, const ReadColumn& other);

/// A guess gives way ("Stack+" to "Stack"); else the column counts whose heading says which way of
/// measuring it is, and the other is the other way; else the first, and that is a guess. What does
/// not count loses its meaning, which a problem tells. `headings` are those of the columns.
void leaveRepeated(std::vector<ReadColumn>& columns,
                   const std::vector<const HeadingRead*>& headings, Problems& problems);

} // namespace tripoise::table
