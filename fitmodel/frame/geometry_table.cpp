// SPDX-License-Identifier: MIT
#include "frame/geometry_table.h"

#include <algorithm>
#include <cmath>

namespace tripoise {

const Entry* entryOf(Column column, const TableSize& size)
{
    const auto found = std::find_if(size.entries.begin(), size.entries.end(),
                                    [&](const Entry& entry) { return entry.column == column; });
    return found == size.entries.end() ? nullptr : &*found;
}

double asPrinted(double value, const Entry& entry)
{
    return entry.step > 0.0 ? std::round(value / entry.step) * entry.step : value;
}

GeometryTable corrected(GeometryTable table, std::size_t size, Column column, double value)
{
    if (size >= table.sizes.size())
        return table;
    for (Entry& entry : table.sizes[size].entries) {
        if (entry.column != column)
            continue;
        entry.value = value;
        break;
    }
    return table;
}

GeometryTable redefined(GeometryTable table, Column from, Column to)
{
    for (TableSize& size : table.sizes)
        for (Entry& entry : size.entries)
            if (entry.column == from)
                entry.column = to;
    return table;
}

} // namespace tripoise
