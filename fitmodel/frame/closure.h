// SPDX-License-Identifier: MIT
//
// A geometry table closed: every value that follows from the others, what contradicts them, what is
// missing.
//
// Each size is brought to agreement by itself (`adjustment.h`); the sizes of the model together
// break ties (`faults.h`), tell what they have in common (`size_rows.h`) and which definition a
// column follows (`definitions.h`). Over random tables of five sizes with one entry wrong by 6 mm
// or 0.7 degrees or more the wrong entry is named first in over 97 of 100; see
// tests/fitmodel/tst_faults.cpp. Cost grows linearly with the sizes.
#pragma once

#include "base/estimate.h"
#include "frame/closure_table.h"
#include "frame/geometry_table.h"

#include <optional>

namespace tripoise {

struct ClosedValue {
    Column column = Column::Stack;
    Estimate value; ///< given as printed, with its rounding; derived; or assumed
    /// Of what is assumed: it follows from the others, if this is as in ordinary frames.
    std::optional<Column> assuming;
};

/// What cannot be told about a size while a column is unknown.
enum class Purpose {
    Candidate,    ///< no candidate can be made of the size
    SaddlePlace,  ///< setback of the saddle
    Heights,      ///< heights above the ground, pedal strike
    Wheelbase,    ///< wheelbase and balance
    Trail,        ///< trail and what depends on it
    ToeClearance, ///< front wheel against the foot
    Steerer,      ///< length to cut
    Post,         ///< insertion and exposed length
    Standover,
};

struct UnknownColumn {
    Column column = Column::Stack;
    std::vector<Purpose> prevents;
};

struct ClosedSize {
    std::string size;
    /// All of what a candidate needs is given or derived, and nothing contradicts it.
    bool closed = false;
    std::vector<ClosedValue> values; ///< in the order of the columns
    std::vector<UnknownColumn> unknown;
};

struct Contradiction {
    std::size_t size = 0;
    Column column = Column::Stack;
    double given = 0.0;
    double agreesWithRest = 0.0;
    double sd = 0.0;
    std::vector<Column> indistinguishableFrom; ///< by this size's own equations
};

/// Out of the run of sizes, though nothing contradicts it.
struct UnusualValue {
    std::size_t size = 0;
    Column column = Column::Stack;
    double given = 0.0;
    double expected = 0.0;
    double sd = 0.0;
};

/// A column that agrees by another definition than its heading says.
struct Redefinition {
    Column column = Column::Stack;
    Column takenAs = Column::Stack;
    std::size_t contradicted = 0;      ///< sizes that contradict the heading's definition
    std::size_t contradictedStill = 0; ///< and the other
    std::size_t of = 0;                ///< sizes that can tell
};

/// What is wrong with more than one figure, and is one fault.
struct Mixup {
    enum class Kind {
        SizesAlike,     ///< two sizes are printed alike
        ColumnShifted,  ///< each size has its neighbour's figure
        ColumnsSwapped, ///< each of two columns has the other's figures
    };
    Kind kind = Kind::SizesAlike;
    std::size_t size = 0;      ///< of two alike
    std::size_t otherSize = 0; ///< of two alike
    Column column = Column::Stack;
    Column otherColumn = Column::Stack; ///< of two swapped
};

struct ClosedTable {
    std::vector<ClosedSize> sizes; ///< as in the table
    std::vector<Contradiction> contradictions;
    std::vector<UnusualValue> unusual;
    std::vector<Redefinition> redefinitions;
    std::vector<Mixup> mixups;          ///< their figures are not told one by one as well
    bool anglesRoundedCoarsely = false; ///< they agree only if rounded more coarsely than printed

    [[nodiscard]] const ClosedValue* valueOf(std::size_t size, Column column) const;
};

struct CloseOptions {
    bool redefine = true; ///< take a column by the definition that agrees; else only as headed
};

[[nodiscard]] ClosedTable closeTable(const GeometryTable& geometry, const ClosureTable& table,
                                     const CloseOptions& options = {});

} // namespace tripoise
