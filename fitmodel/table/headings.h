// SPDX-License-Identifier: MIT
//
// What headings mean (assets/headings.json), and how one is recognised.
//
// A heading and a term are the same when their words are, run together, without units, drawing
// letters, footnote marks and filler words; in any order of the words if need be. Nothing is
// guessed from a part of a heading: what is not the same is not understood, and said so.
#pragma once

#include "base/range.h"
#include "frame/columns.h"
#include "table/cell_number.h"

#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace tripoise {

struct HeadingTable {
    std::unordered_map<std::string, Column> columns; ///< by `exactKey`
    std::unordered_map<std::string, Column>
        loosely;                                    ///< by `looseKey`, where only one column has it
    std::unordered_set<std::string> sizes;          ///< by `exactKey`
    std::unordered_set<std::string> missing;        ///< as they stand, small letters
    std::unordered_set<std::string> fillers;        ///< words
    std::unordered_set<std::string> titleWords;     ///< words
    std::unordered_map<std::string, double> wheels; ///< bead seat by a wheel's name
    NumberWords numbers;
    PerColumn<Range> plausible{};
};

/// The words of a term or heading, run together.
[[nodiscard]] std::string exactKey(const std::vector<std::string>& words);
/// The same in an order that does not depend on the words', without fillers unless there is nothing
/// else.
[[nodiscard]] std::string looseKey(const std::vector<std::string>& words,
                                   const std::unordered_set<std::string>& fillers);

struct HeadingRead {
    std::optional<Column> column;
    bool isSize = false;
    PrintUnit unit = PrintUnit::None;
    std::string letter; ///< a drawing letter that stands alone, "a"
    bool onlyUnit = false;

    [[nodiscard]] bool understood() const { return column || isSize; }
};

[[nodiscard]] HeadingRead readHeading(std::string_view text, const HeadingTable& table);

} // namespace tripoise
