// SPDX-License-Identifier: MIT
//
// The numbers of one lane, in millimetres, degrees and kilograms.
//
// A unit that is stated beside the heading or in the cell holds where the numbers are plausible in
// it. Where none is stated, the one in which most are plausible is taken, of several that of the
// table's other lengths, else the one that brings them nearest to the middle of what is plausible;
// small figures that could be anything (a drop, an offset) follow the other lengths anyway. A cell
// that is plausible in another unit only is taken in that, and said so; one that is plausible in
// none is not understood.
#pragma once

#include "frame/geometry_table.h"
#include "table/headings.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise::table {

/// The cells of one lane by size; empty where there is none.
struct LaneTexts {
    std::optional<Column> column;
    Unit stated = Unit::None;
    std::vector<std::string> cells;
};

enum class ValueState { Blank, Missing, Value, NoNumber, OutOfRange };

struct LaneValue {
    ValueState state = ValueState::Blank;
    std::optional<Entry> entry;
    std::optional<Entry> beside; ///< a rim in a tyre's cell, a tyre in a rim's
    bool otherUnit = false;      ///< than the rest of its lane
    bool allSizes = false;       ///< one cell for all
    bool first = false;          ///< of two figures that are no range
};

struct LaneValues {
    std::optional<Column> column;   ///< what the numbers can be
    std::optional<Column> headedAs; ///< where that is another than the heading says
    Unit unit = Unit::None;
    bool unitGuessed = false;
    bool unitDoubtful = false; ///< another unit than stated was taken
    std::vector<LaneValue> values;
};

/// Whether at least half of the cells' numbers are plausible as that, in some unit.
[[nodiscard]] bool canBe(Column column, const std::vector<std::string>& cells,
                         const HeadingTable& table);

/// `usual` is the unit of the table's other lengths.
[[nodiscard]] LaneValues valuesOf(const LaneTexts& lane, Unit usual, const HeadingTable& table);

/// The unit most lanes of lengths are plausible in.
[[nodiscard]] Unit usualUnit(const std::vector<LaneTexts>& lanes, const HeadingTable& table);

} // namespace tripoise::table
