// SPDX-License-Identifier: MIT
#pragma once

#include "advice/tables.h"
#include "frame/closure_table.h"
#include "table/headings.h"

namespace tripoise {

/// The constant tables built into the program. That they can be read is tested; a program without
/// them cannot go on and stops.
[[nodiscard]] const Tables& shippedTables();
/// Words beside numbers, in fields and in tables.
[[nodiscard]] const NumberWords& shippedNumberWords();
/// What reading and closing a geometry table know beforehand.
[[nodiscard]] const HeadingTable& shippedHeadings();
[[nodiscard]] const ClosureTable& shippedClosure();

} // namespace tripoise
