// SPDX-License-Identifier: MIT
//
// The figures and words of the constant tables. A figure is a number, or an object with its `value`
// beside unit and origin. The files are ours, so a figure is not weighed here, only that it is
// there.
#pragma once

#include "advice/tables.h"
#include "document/fields.h"

#include <limits>

namespace tripoise::document {

inline constexpr double largest = std::numeric_limits<double>::max();
inline constexpr Limits anyNumber{-largest, largest, ""};
inline constexpr Count anyCount{1, 1000};

[[nodiscard]] double figure(Fields& fields, std::string_view key);
[[nodiscard]] Angle angle(Fields& fields, std::string_view key);
/// A list of exactly so many numbers; zeros where it is not.
[[nodiscard]] std::vector<double> row(const Json& json, const std::string& path, std::size_t size,
                                      Report& report);
[[nodiscard]] Range range(Fields& fields, std::string_view key);
[[nodiscard]] std::vector<std::string> texts(Fields& fields, std::string_view key);
/// The same by the keys of `wordsOf`.
[[nodiscard]] std::vector<std::string> wordList(Fields& fields, std::string_view key);

/// One figure for each use, from an object that names them.
template <typename Value, typename Read>
void perUse(Fields& fields, std::string_view key, PerUse<Value>& values, Read&& read)
{
    if (auto byUse = fields.needObject(key))
        for (const Use use : allUses)
            values[indexOf(use)] = read(*byUse, keyOf(use));
}

void readComfort(Fields file, ComfortTable& comfort);
void readParts(Fields file, Tables& tables);
void readSegments(Fields file, SegmentTable& to);
void readHandling(Fields file, HandlingTables& to);

} // namespace tripoise::document
