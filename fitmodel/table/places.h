// SPDX-License-Identifier: MIT
//
// What stands in which place along the lines of a sheet: headings, units, letters of a drawing,
// notes, and the values of each size; and which line names the sizes.
#pragma once

#include "table/extent.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise::table {

enum class Place { Values, Heading, Unit, Letter, Note };

struct SizesFound {
    std::vector<std::string> names;
    std::vector<std::optional<CellPlace>> cells; ///< of the names
    std::vector<CellPlace> headings;
    std::vector<Setting> settings; ///< of each, where there are two
    bool named = false;
    bool guessed = false; ///< there are names, but not one for each place of numbers
    bool inModel = false; ///< the title of a single size ends in its name
};

struct Places {
    std::vector<Place> of;
    std::size_t headingAt = 0;
    std::vector<std::size_t> values; ///< of each size
    SizesFound sizes;
    std::optional<std::size_t> sizeLine;
    std::optional<std::size_t> secondSizeLine;

    [[nodiscard]] bool isBeforeValues(std::size_t at) const
    {
        return values.empty() || at < values.front();
    }
};

/// Whether a line holds units and nothing else.
[[nodiscard]] bool isUnitLine(const Sheet& sheet, std::size_t line);

[[nodiscard]] Places placesOf(const Grid& grid, const Sheet& sheet, const Extent& extent,
                              const HeadingTable& table);

} // namespace tripoise::table
