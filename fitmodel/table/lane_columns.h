// SPDX-License-Identifier: MIT
//
// The lanes of a table's layout as columns, with their numbers.
#pragma once

#include "table/lane_values.h"
#include "table/read_table.h"
#include "table/tables_apart.h"

namespace tripoise::table {

struct LaneColumns {
    std::vector<ReadColumn> columns; ///< of each lane
    std::vector<LaneValues> values;  ///< of the same
    Problems problems;
};

/// Those that a person has assigned mean what was said.
[[nodiscard]] LaneColumns columnsOf(const TablePart& part, const HeadingTable& table,
                                    const std::vector<Assignment>& assignments);

/// The key of a unit, as problems name it.
[[nodiscard]] std::string unitKey(Unit unit);

} // namespace tripoise::table
