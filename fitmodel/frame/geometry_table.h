// SPDX-License-Identifier: MIT
//
// A geometry table as it is understood: per size, what its maker states and how finely. In
// millimetres, degrees and kilograms whatever it was printed in.
#pragma once

#include "frame/columns.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

struct Entry {
    Column column = Column::Stack;
    double value = 0.0;
    std::optional<double> high; ///< of a range; `value` is its low end
    double step = 1.0;          ///< the last printed digit, in the unit of `value`

    bool operator==(const Entry&) const = default;
};

struct TableSize {
    std::string size;
    std::vector<Entry> entries; ///< of two for one column the first counts

    bool operator==(const TableSize&) const = default;
};

struct GeometryTable {
    std::string model; ///< empty where none is stated
    std::vector<TableSize> sizes;

    bool operator==(const GeometryTable&) const = default;
};

[[nodiscard]] const Entry* entryOf(Column column, const TableSize& size);

/// A value as finely as the entry is printed.
[[nodiscard]] double asPrinted(double value, const Entry& entry);

/// A table in which one value is another; as it was when there is no such entry.
[[nodiscard]] GeometryTable corrected(GeometryTable table, std::size_t size, Column column,
                                      double value);

/// A table in which every entry of one column counts as another.
[[nodiscard]] GeometryTable redefined(GeometryTable table, Column from, Column to);

} // namespace tripoise
