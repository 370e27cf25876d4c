// SPDX-License-Identifier: MIT
//
// A geometry table out of any text.
//
// The text is cut into cells (`grid.h`), turned so that each column of the geometry is one lane of
// cells (`layout.h`), and each lane's numbers are brought to millimetres and degrees by the unit
// that is stated or, where none is, in which they are plausible (`lane_values.h`). Nothing is
// dropped: every cell says what it was taken for, what is not understood is listed, and what was
// taken wrongly can be assigned by hand and read again. Never throws; linear in the length of the
// text.
#pragma once

#include "base/problem.h"
#include "frame/geometry_table.h"
#include "table/headings.h"

#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tripoise {

inline constexpr std::size_t mostTableLines = 1000;
inline constexpr std::size_t mostTableBytes = 1'000'000;
inline constexpr std::size_t mostTableSizes = 60;

/// How sure it is which size a number belongs to.
enum class SizesFrom {
    Named,   ///< each by a name of its own
    Counted, ///< there are no names: the first, the second
    Guessed, ///< there are names, and which numbers each has is for a person to confirm
};

/// How sure it is what a column means.
enum class ColumnFrom {
    Known,   ///< its heading is a term
    Parts,   ///< its heading is understood by its words
    Guessed, ///< by its numbers, or by what stands beside it: for a person to confirm
};

enum class CellState {
    Blank,
    Model,
    Size,
    Heading,
    Unit, ///< a unit, or a note that says which
    Value,
    Missing,       ///< "–", "n/a"
    SetAside,      ///< known, and of no use for a frame
    NotUnderstood, ///< shown, and kept for a person to say
};

struct TableCell {
    std::string text;
    std::size_t line = 0; ///< counted from 1
    CellState state = CellState::Blank;
    std::optional<std::size_t> column; ///< of `ReadTable::columns`
    std::optional<std::size_t> size;   ///< of `ReadTable::sizes`

    bool operator==(const TableCell&) const = default;
};

struct ReadColumn {
    std::string heading; ///< as it stands
    std::size_t line = 0;
    std::optional<Column> meaning;
    std::optional<Column> headedAs; ///< where its numbers cannot be what the heading says
    bool assigned = false;          ///< by hand
    ColumnFrom from = ColumnFrom::Known;
    Unit unit = Unit::None;
    bool unitGuessed = false;
    std::vector<std::optional<Entry>> entries; ///< by size
    std::vector<std::optional<Entry>> beside;  ///< a tyre's rim, or a rim's tyre, in the same cell

    bool operator==(const ReadColumn&) const = default;
};

struct TableText {
    std::string text;
    std::size_t line = 0;

    bool operator==(const TableText&) const = default;
};

struct ReadTable {
    std::optional<std::string> model;
    std::vector<std::string> sizes;
    SizesFrom sizesFrom = SizesFrom::Counted;
    std::vector<ReadColumn> columns;
    bool sizesDown = false; ///< one size a line
    std::vector<std::vector<TableCell>> rows;
    std::vector<TableText> notUnderstood;
    Problems problems; ///< the path is "line 7", or empty for the whole text

    /// There is a size, and a column that is understood.
    [[nodiscard]] bool readable() const;
    bool operator==(const ReadTable&) const = default;
};

/// What a person says a column of one table means: the column by its place in `ReadTable::columns`,
/// or by its heading as it stands; nothing for a column that is to be left out.
struct Assignment {
    std::variant<std::size_t, std::string> column;
    std::optional<Column> meaning;
    std::size_t table = 0; ///< of several
};

/// A page's source as the text of its table, with tabs; nothing where there is no table in it.
/// After `stop` the result is of no use.
[[nodiscard]] std::optional<std::string>
tableTextOfPage(std::string_view page, const HeadingTable& table, const std::stop_token& stop = {});

/// The tables of a text, each of another model; there is always one, be it of nothing but problems.
/// The text may be the source of a page (HTML). After `stop` the result is of no use.
[[nodiscard]] std::vector<ReadTable>
readGeometryTables(std::string_view text, const HeadingTable& table,
                   const std::vector<Assignment>& assignments = {},
                   const std::stop_token& stop = {});

/// The first of them.
[[nodiscard]] ReadTable readGeometryTable(std::string_view text, const HeadingTable& table,
                                          const std::vector<Assignment>& assignments = {},
                                          const std::stop_token& stop = {});

/// What was understood of it.
[[nodiscard]] GeometryTable geometryOf(const ReadTable& read);

/// Of its riders, or of the bicycle as it is sold: kept, and no part of the frame's geometry.
[[nodiscard]] bool isOfTheSale(Column column);

/// Known, and of no use for a frame.
[[nodiscard]] bool isSetAside(Column column);

} // namespace tripoise
