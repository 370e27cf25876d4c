// SPDX-License-Identifier: MIT
#include "table/cells.h"

#include "table/legend.h"
#include "text/plain.h"

#include <algorithm>

namespace tripoise::table {

bool isBlank(const GridRow& row)
{
    return filledIn(row) == 0;
}

std::size_t filledIn(const GridRow& row)
{
    return row.size() - countOf(CellKind::Blank, row);
}

std::size_t countOf(CellKind kind, const GridRow& row, std::size_t from)
{
    std::size_t count = 0;
    for (std::size_t i = from; i < row.size(); ++i)
        count += row[i].kind == kind ? 1 : 0;
    return count;
}

std::size_t valuesIn(const GridRow& row, std::size_t from)
{
    return countOf(CellKind::Number, row, from) + countOf(CellKind::Missing, row, from);
}

/// "612 (low) / 609 (high)"
bool CellReader::isNumberOfSettings(std::string_view text, HeadingRead& heading) const
{
    if (text.find_first_of("0123456789") == std::string_view::npos)
        return false;
    std::vector<Setting> settings;
    const std::string rest = withoutSettings(text, m_table, settings);
    if (settings.empty() || !cellNumber(rest, m_table.numbers))
        return false;
    heading.settings = std::move(settings);
    return true;
}

GridCell CellReader::cell(std::string_view text, std::size_t line)
{
    text = trimmed(text);
    const auto [at, isNew] = m_known.try_emplace(std::string(text));
    Known& known = at->second;
    if (isNew && !text.empty()) {
        if (m_stop.stop_requested()) {
            known.kind = CellKind::Text;
        } else if (m_table.missing.contains(smallLetters(text))) {
            known.kind = CellKind::Missing;
        } else if (cellNumber(text, m_table.numbers)) {
            known.kind = CellKind::Number;
        } else if (isNumberOfSettings(text, known.heading)) {
            known.kind = CellKind::Number;
        } else {
            known.heading = readHeading(text, m_table);
            known.kind = known.heading.understood() ? CellKind::Heading
                         : known.heading.onlyUnit   ? CellKind::Unit
                                                    : CellKind::Text;
        }
    }
    return {std::string(text), line, known.kind, &known.heading};
}

bool isSizeName(std::string_view text, const HeadingTable& table)
{
    constexpr std::size_t longest = 24;
    if (text.size() > longest)
        return false;
    for (const std::string_view sign : {"°", "€", "$", "£", "¥"})
        if (text.find(sign) != std::string_view::npos)
            return false;
    constexpr std::size_t mostFigures = 3;
    bool named = false;
    for (const std::string& word : wordsOf(text)) {
        const bool figures = word.find_first_not_of("0123456789") == std::string::npos;
        const bool unit = isLength(unitNamed(word, table.numbers));
        const bool letter = word.find_first_not_of("0123456789xsml") == std::string::npos
                            && word.find_first_of("sml") + 1 == word.size();
        const bool more = word.ends_with('x') // of "2X-Large"
                          && word.find_first_not_of("0123456789x") == std::string::npos;
        if (!letter && !more && !table.sizeWords.contains(word)
            && !(figures && word.size() <= mostFigures) && !unit)
            return false;
        named = named || (!unit && !more);
    }
    return named;
}

bool namesOneSize(const GridRow& row, const HeadingTable& table)
{
    return filledIn(row) == 1 && row.front().kind != CellKind::Number
           && isSizeName(row.front().text, table);
}

} // namespace tripoise::table
