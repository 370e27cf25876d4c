// SPDX-License-Identifier: MIT
//
// The number in one cell of a table (`text/written_number.h`), or the two of a range: "425–440".
// What is no part of it is passed over: footnote marks, the same length in another unit.
#pragma once

#include "text/written_number.h"

#include <optional>
#include <string_view>

namespace tripoise {

struct CellNumber {
    double value = 0.0;
    std::optional<double> grouped; ///< the other reading, "1.015" as 1015
    std::optional<double> high;    ///< of a range
    std::optional<double> groupedHigh;
    double step = 1.0;  ///< of the last figure printed
    bool first = false; ///< of two that are no range: "65.5 / 65.1"
    Unit unit = Unit::None;

    bool operator==(const CellNumber&) const = default;
};

/// Nothing where the cell is no number, or holds more than one that are no range.
[[nodiscard]] std::optional<CellNumber> cellNumber(std::string_view cell, const NumberWords& words);

} // namespace tripoise
