// SPDX-License-Identifier: MIT
//
// The cells of a table, and what each is by itself.
#pragma once

#include "table/headings.h"

#include <stop_token>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace tripoise::table {

enum class CellKind { Blank, Number, Missing, Heading, Unit, Text };

struct GridCell {
    std::string text; ///< trimmed
    std::size_t line = 0;
    CellKind kind = CellKind::Blank;
    const HeadingRead* heading = nullptr; ///< kept by the `CellReader`
    bool note = false;                    ///< states a unit or a legend, and heads nothing

    [[nodiscard]] bool isValue() const
    {
        return kind == CellKind::Number || kind == CellKind::Missing;
    }
};

using GridRow = std::vector<GridCell>;

/// A row that is a size's name alone, and no number, which can be a page's.
[[nodiscard]] bool namesOneSize(const GridRow& row, const HeadingTable& table);

[[nodiscard]] bool isBlank(const GridRow& row);
[[nodiscard]] std::size_t filledIn(const GridRow& row);
/// How many of the cells from one on are of a kind.
[[nodiscard]] std::size_t countOf(CellKind kind, const GridRow& row, std::size_t from = 0);
/// Numbers, and what stands for one that is missing.
[[nodiscard]] std::size_t valuesIn(const GridRow& row, std::size_t from = 0);

/// Says what cells are, each text once: tables have thousands of alike cells, and are cut in many
/// ways.
class CellReader {
public:
    /// After `stop` all that is new is text.
    explicit CellReader(const HeadingTable& table, std::stop_token stop = {})
        : m_table(table), m_stop(std::move(stop))
    {
    }

    [[nodiscard]] GridCell cell(std::string_view text, std::size_t line);
    [[nodiscard]] CellKind kindOf(std::string_view text) { return cell(text, 0).kind; }
    [[nodiscard]] const HeadingTable& table() const { return m_table; }

private:
    bool isNumberOfSettings(std::string_view text, HeadingRead& heading) const;

    struct Known {
        CellKind kind = CellKind::Blank;
        HeadingRead heading;
    };
    const HeadingTable& m_table;
    std::stop_token m_stop;
    std::unordered_map<std::string, Known> m_known;
};

/// Whether a cell can be the name of a size: "XS", "Medium", "54 cm", "M (54)", "17\"", "M/L".
/// Letters and figures as the trade uses them, common practice, no source.
[[nodiscard]] bool isSizeName(std::string_view text, const HeadingTable& table);

/// The most frequent of counted things; 0 where there are none.
template <typename Counts> [[nodiscard]] std::size_t usualOf(const Counts& counts)
{
    std::size_t usual = 0;
    std::size_t most = 0;
    for (const auto& [value, count] : counts)
        if (count > most) {
            usual = value;
            most = count;
        }
    return usual;
}

} // namespace tripoise::table
