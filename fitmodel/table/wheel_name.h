// SPDX-License-Identifier: MIT
//
// Wheels and tyres as they are named: "700c", "40-622" (ISO 5775), "29 x 2.25", "700x40c", "45 mm".
#pragma once

#include "table/headings.h"

#include <optional>
#include <string_view>

namespace tripoise::table {

struct WheelName {
    std::optional<double> beadSeatMm;
    std::optional<double> tyreMm;
};

/// A number alone is a tyre's width where a tyre is asked for, else a wheel's name.
[[nodiscard]] WheelName wheelNamed(std::string_view cell, bool tyreAsked,
                                   const HeadingTable& table);

} // namespace tripoise::table
