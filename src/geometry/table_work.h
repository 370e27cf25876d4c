// SPDX-License-Identifier: MIT
//
// A geometry table as it is worked on: the text as it came, what a person says of it, and what
// becomes of both.
//
//     text, assignments --read--> columns --corrections--> closed --> frames
//
// Nothing is changed in the text; what a person says lies beside it and can be taken back. Of a
// text with the tables of several models one is worked on at a time, and what is said of one holds
// for that one alone.
#pragma once

#include "frame/closure.h"
#include "frame/geometry.h"
#include "table/read_table.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace tripoise {

/// One figure taken otherwise than printed. It holds as long as that figure is printed there.
struct Correction {
    std::string size;
    Column column = Column::Stack;
    double printed = 0.0;
    double taken = 0.0;

    bool operator==(const Correction&) const = default;
};

/// What a person says of one table.
struct TableSaid {
    std::vector<Assignment> assignments;
    std::vector<Correction> corrections;
    bool sizesConfirmed = false; ///< which numbers belong to which size, where that was a guess
    bool asHeaded = false;       ///< no column is taken by another definition than its heading's
    std::optional<std::string> model;
    std::set<std::string> unticked; ///< sizes
};

struct TableWork {
    std::string text;
    std::size_t chosen = 0;                ///< of several tables
    std::map<std::size_t, TableSaid> said; ///< by table

    [[nodiscard]] TableSaid& ofChosen() { return said[chosen]; }
    [[nodiscard]] const TableSaid& ofChosen() const;
};

struct TableAnswer {
    ReadTable read;                                 ///< the chosen one
    std::vector<std::optional<std::string>> models; ///< of all tables, as printed
    std::vector<Redefinition> proposed;             ///< taken up, unless all is to be as headed
    std::vector<Correction> corrections;            ///< that hold
    GeometryTable geometry;                         ///< with both taken up
    ClosedTable closed;                             ///< of that
};

/// Of tables that are fewer than the chosen one's place the last is chosen.
[[nodiscard]] TableAnswer workedOut(TableWork& work, const std::stop_token& stop = {});

/// The correction of one figure; null where it is taken as printed.
[[nodiscard]] const Correction* correctionOf(std::size_t size, Column column,
                                             const TableAnswer& answer);

/// What a column is taken for, by proposals that are taken up.
[[nodiscard]] Column takenFor(Column column, const TableAnswer& answer, bool asHeaded);

} // namespace tripoise
