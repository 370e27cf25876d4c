// SPDX-License-Identifier: MIT
//
// What headings mean (assets/headings.json), and how one is recognised.
//
// A heading and a term are the same when their words are, run together, without units, drawing
// letters and footnote marks. A heading that is no term is understood by its parts: its words,
// compounds taken apart, say which tube or axis, which measure of it (angle, length, height, drop)
// and how it is taken (effective, actual, centre to top), and the set of these is one that has a
// meaning. All words count: where one is not understood, neither is the heading.
#pragma once

#include "base/range.h"
#include "frame/columns.h"
#include "table/cell_number.h"

#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace tripoise {

/// What words stand for, one bit each: "seat tube", "angle", "effective".
using PartSet = std::uint64_t;

/// Looked up without a copy of the text.
struct TextHash {
    using is_transparent = void;
    std::size_t operator()(std::string_view text) const
    {
        return std::hash<std::string_view>()(text);
    }
};

struct PartTerm {
    std::string text; ///< its `exactKey`
    std::vector<PartSet> parts;
};

struct HeadingParts {
    std::array<std::vector<PartTerm>, 256> terms; ///< by their first byte, the longest first
    std::unordered_map<PartSet, Column> meanings;
    std::unordered_set<std::string, TextHash, std::equal_to<>> fillers; ///< words
    std::unordered_set<std::string> asides; ///< words behind which something else is told
    PartSet angle = 0;
    PartSet measures = 0;   ///< angle, length, height: of "head / seat angle" both have it
    PartSet qualifiers = 0; ///< effective, actual: of two columns for one tube they tell
};

/// How sure something must be, and what tells one thing from another.
struct ReadingLimits {
    double headingWorth = 0.0;         ///< of a cell that is a known heading, in numbers
    double dirtyCost = 0.0;            ///< of one that holds figures and is no number
    double otherTableShare = 0.0;      ///< of the best table's worth, from which on another is read
    double alikeShare = 0.0;           ///< of headings that are as far from the next as most
    double pairsShare = 0.0;           ///< of rows that are pairs of label and value
    double smallFigureMm = 0.0;        ///< a column that begins below it tells nothing of its unit
    double widestTyreInches = 0.0;     ///< a smaller figure is in inches
    std::size_t mostTables = 0;        ///< of one text
    std::size_t mostTwice = 0;         ///< columns that stand twice in one table
    std::size_t longestTitle = 0;      ///< bytes of a model's name
    std::size_t longestPageNumber = 0; ///< figures
    // A table of something else above: how far the geometry is looked for behind blank lines.
    std::size_t mostBlankLines = 0;
    std::size_t mostBytesSearched = 0;
    std::size_t mostLinesAbove = 0;     ///< of titles that can be part of one heading
    std::size_t mostTextsInCell = 0;    ///< of a page's blocks
    std::size_t leastFlatCells = 0;     ///< of a block that can be a table without rows
    std::size_t leastSentenceWords = 0; ///< of an explanation beside a heading
    double joinedShare = 0.0;         ///< of the worth of blocks, from which on they are one table
    std::size_t leastCounted = 0;     ///< rows from which on 1, 2, 3 are their numbers
    std::size_t leastHeadedCells = 0; ///< of a line of values with single blanks
    std::size_t longestNameWords = 0; ///< of a size before its values
    std::size_t longestHeadingWords = 0;
    std::size_t mostHeadingLineWords = 0;
    Range sizes; ///< numbers that name a size, in inches or centimetres
    Range sizesMm;
};

/// One of two ways in which a frame can be set up, by a chip at its linkage.
struct Setting {
    bool high = false;
    std::string name; ///< the word for it

    bool operator==(const Setting&) const = default;
};

struct HeadingTable {
    std::unordered_map<std::string, Column> columns; ///< by `exactKey`
    std::unordered_set<std::string> sizes;           ///< by `exactKey`
    std::unordered_set<std::string> sizeWords;       ///< "small", "medium"
    std::unordered_set<std::string> missing;         ///< as they stand, small letters
    std::unordered_set<std::string> fillers;         ///< words
    std::unordered_set<std::string> titleWords;      ///< words
    std::unordered_set<std::string> pageWords;       ///< of a page's own titles: "overview"
    std::unordered_map<std::string, bool> settings;  ///< by word, whether it is the high one
    std::unordered_set<std::string> settingWords;    ///< beside these: "flip chip", "position"
    std::unordered_map<std::string, double> wheels;  ///< bead seat by a wheel's name
    HeadingParts parts;
    NumberWords numbers;
    PerColumn<Range> plausible{};
    ReadingLimits limits;
};

/// A cell's text without the settings it names, "612 (low) / 609 (high)", which are added in their
/// order; as it is where it names none.
[[nodiscard]] std::string withoutSettings(std::string_view text, const HeadingTable& table,
                                          std::vector<Setting>& settings);

/// The words of a term or heading, run together.
[[nodiscard]] std::string exactKey(const std::vector<std::string>& words);

struct HeadingRead {
    std::optional<Column> column;
    std::optional<Column> second; ///< of two quantities in one cell, "head / seat angle"
    bool isSize = false;
    bool byParts = false;
    bool guessed = false;          ///< but for what stands in brackets or behind "at", "with"
    std::vector<Setting> settings; ///< that it holds in, in their order: "(low / high)"
    bool qualified = false;        ///< says which of two ways of measuring is meant
    Unit unit = Unit::None;
    std::string letter; ///< a drawing letter that stands alone, "a"
    bool onlyUnit = false;

    [[nodiscard]] bool understood() const { return column || isSize; }
};

[[nodiscard]] HeadingRead readHeading(std::string_view text, const HeadingTable& table);

} // namespace tripoise
