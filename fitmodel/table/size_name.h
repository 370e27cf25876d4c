// SPDX-License-Identifier: MIT
//
// Whether a cell can be the name of a size: "XS", "Medium", "54 cm", "M (54)", "17\"", "M/L".
// Letters and figures as the trade uses them, common practice, no source.
#pragma once

#include "table/headings.h"

namespace tripoise::table {

[[nodiscard]] bool isSizeName(std::string_view text, const HeadingTable& table);

} // namespace tripoise::table
