// SPDX-License-Identifier: MIT
//
// A geometry table as it is shown: one line for each of its columns in the order they are printed,
// then what follows from them; each with a figure for every size, and what to think of it.
#pragma once

#include "geometry/table_work.h"

#include <QString>

#include <optional>
#include <vector>

namespace tripoise {

enum class FigureMark {
    None,          ///< there is nothing
    Given,         ///< as printed
    Follows,       ///< from the other figures
    Assumed,       ///< nothing in the table tells it
    Contradicts,   ///< the rest of its size; the likeliest fault
    Doubtful,      ///< the fault could be here as well
    Unusual,       ///< out of the run of sizes
    Corrected,     ///< taken otherwise than printed
    NotUnderstood, ///< kept as it stands
    SetAside,      ///< of no use for a frame
};

struct TableFigure {
    QString text;
    FigureMark mark = FigureMark::None;
    QString told;                ///< all of it in words; for who hovers, or does not see it
    std::optional<double> agree; ///< what would agree where this contradicts

    bool operator==(const TableFigure&) const = default;
};

struct TableLine {
    std::optional<std::size_t> readColumn; ///< of `ReadTable::columns`; none for what follows
    std::optional<Column> column;          ///< what it is taken for
    QString heading;                       ///< as it is printed; empty for what follows
    QString meaning;                       ///< "seat angle"
    bool open = false;                     ///< not understood: to be said by a person
    bool setAside = false;
    bool assigned = false; ///< by a person
    std::vector<TableFigure> figures;

    bool operator==(const TableLine&) const = default;
};

[[nodiscard]] std::vector<TableLine> tableLines(const TableAnswer& answer, bool asHeaded);

} // namespace tripoise
