// SPDX-License-Identifier: MIT
//
// The number in one cell of a table: "585", "58,5 cm", "22 1/2\"", "72°30'", "425–440", "1 015
// mm*".
//
// One point or comma before three figures may group thousands or be the decimal sign; both readings
// are kept until the column tells. Footnote marks after the number are passed over.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace tripoise {

enum class PrintUnit : std::uint8_t {
    None,
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Degree,
    Kilogram,
    Gram,
    Pound,
};

inline constexpr std::pair<std::string_view, PrintUnit> unitKeys[] = {
    {"mm", PrintUnit::Millimetre}, {"cm", PrintUnit::Centimetre}, {"m", PrintUnit::Metre},
    {"in", PrintUnit::Inch},       {"deg", PrintUnit::Degree},    {"kg", PrintUnit::Kilogram},
    {"g", PrintUnit::Gram},        {"lb", PrintUnit::Pound}};

/// Words and signs that tables use beside numbers, by the keys of `wordsOf`, signs as they are.
struct NumberWords {
    std::vector<std::pair<std::string, PrintUnit>> units;
    std::vector<std::string> range; ///< "to", "bis"
    std::vector<std::string> about; ///< "ca."
};

struct CellNumber {
    double value = 0.0;
    std::optional<double> grouped; ///< the other reading, "1.015" as 1015
    std::optional<double> high;    ///< of a range
    std::optional<double> groupedHigh;
    double step = 1.0;  ///< of the last figure printed
    bool first = false; ///< of two that are no range: "65.5 / 65.1"
    PrintUnit unit = PrintUnit::None;

    bool operator==(const CellNumber&) const = default;
};

/// Nothing where the cell is no number, or holds more than one that are no range.
[[nodiscard]] std::optional<CellNumber> cellNumber(std::string_view cell, const NumberWords& words);

/// The unit that a word or sign stands for.
[[nodiscard]] PrintUnit unitNamed(std::string_view word, const NumberWords& words);

} // namespace tripoise
