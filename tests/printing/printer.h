// SPDX-License-Identifier: MIT
//
// Prints one known geometry as makers and shops do: in any layout, language and unit, with broken
// headings, merged cells, legends, footnotes, riders' heights and parts as sold. How tables look is
// common practice, no source; geometries, models and sizes are invented.
//
// Of each printing it says whether a person could decide what each number is. Where a person could
// not (a cell is lost and nothing says which), a reader may refuse it or say that it guesses.
#pragma once

#include "frame/columns.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise::test {

struct PrintedColumn {
    Column column = Column::Stack;
    std::string heading;
    std::vector<std::optional<double>> values; ///< as printed, in mm and degrees, by size
    std::vector<std::string> cells;
};

struct Printed {
    std::string text;
    bool html = false;
    bool decidable = true;
    std::string layout;   ///< for the figures
    std::string language; ///< of the headings
    std::vector<std::string> sizes;
    std::vector<PrintedColumn> columns;
    std::vector<std::pair<double, double>> riderHeightMm; ///< by size, where printed
};

/// The printing of a seed; the same on every machine.
[[nodiscard]] Printed printedTable(unsigned seed);

} // namespace tripoise::test
