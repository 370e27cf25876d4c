// SPDX-License-Identifier: MIT
#include "table/headed_columns.h"

#include <map>

namespace tripoise::table {
namespace {

std::string joined(const Cells& cells)
{
    return phrase(cells, cells.size());
}

} // namespace

HeadedColumns::HeadedColumns(const std::vector<PlainLine>& lines, CellReader& reader)
    : m_reader(reader), m_limits(reader.table().limits)
{
    std::map<std::size_t, std::size_t> counts;
    for (const PlainLine& line : lines)
        if (const auto cells = valuesIn(line.text); cells.size() >= m_limits.leastHeadedCells)
            ++counts[cells.size()];
    m_count = usualOf(counts);
    for (std::size_t i = 0; i + 1 < lines.size() && counts[m_count] >= 2 && !found(); ++i)
        if (valuesIn(lines[i + 1].text).size() == m_count)
            m_headings = headingsIn(tokensOf(lines[i].text));
    m_headingLine = found() ? joined(m_headings) : std::string();
}

Cells HeadedColumns::operator()(const std::string& text)
{
    if (joined(tokensOf(text)) == m_headingLine)
        return m_headings;
    Cells cells = valuesIn(text);
    return cells.size() + 1 < m_count || cells.size() < m_limits.leastHeadedCells ? Cells{text}
                                                                                  : cells;
}

/// A name of one word or more, then values, each with its unit; nothing where there are others.
Cells HeadedColumns::valuesIn(const std::string& text)
{
    const Cells tokens = tokensOf(text);
    std::size_t from = tokens.size();
    while (from > 0 && (m_reader.cell(tokens[from - 1], 0).isValue() || isUnit(tokens[from - 1])))
        --from;
    if (from > m_limits.longestNameWords
        || (from > 0 && m_reader.kindOf(phrase(tokens, from)) == CellKind::Heading))
        return {};
    Cells cells;
    if (from > 0)
        cells.push_back(phrase(tokens, from));
    for (std::size_t i = from; i < tokens.size(); ++i)
        if (isUnit(tokens[i]) && !cells.empty())
            cells.back() += ' ' + tokens[i];
        else
            cells.push_back(tokens[i]);
    return cells;
}

bool HeadedColumns::isUnit(const std::string& token)
{
    return m_reader.kindOf(token) == CellKind::Unit;
}

/// How well tokens from one to another are a heading: a term better than one by its parts.
int HeadedColumns::worthOf(const Cells& tokens, std::size_t from, std::size_t to)
{
    const HeadingRead& read = *m_reader.cell(phrase(tokens, from, to), 0).heading;
    if (read.understood())
        return read.byParts || read.guessed ? 2 : 3;
    return read.letter.empty() || to > from + 1 ? 0 : 3;
}

/// The only best way to cut a line into so many headings, the size's own among them or not, all
/// understood but for one; nothing where two ways are alike.
Cells HeadedColumns::headingsIn(const Cells& tokens)
{
    if (tokens.size() + 1 < m_count || tokens.size() > m_limits.mostHeadingLineWords)
        return {};
    struct Way {
        int worth = -1;
        bool alike = false; ///< another is worth as much
        std::size_t from = 0;
    };
    // By the number of headings, of those not understood, and of tokens.
    std::vector<Way> ways((m_count + 1) * 2 * (tokens.size() + 1));
    const auto at = [&](std::size_t count, std::size_t unknown, std::size_t end) -> Way& {
        return ways[(count * 2 + unknown) * (tokens.size() + 1) + end];
    };
    at(0, 0, 0).worth = 0;
    for (std::size_t end = 1; end <= tokens.size(); ++end)
        for (std::size_t from = end - std::min(end, m_limits.longestHeadingWords); from < end;
             ++from) {
            const int worth = worthOf(tokens, from, end);
            for (std::size_t count = 1; count <= m_count; ++count)
                for (std::size_t unknown = worth > 0 ? 0 : 1; unknown < 2; ++unknown) {
                    const Way& before = at(count - 1, unknown - (worth > 0 ? 0 : 1), from);
                    Way& way = at(count, unknown, end);
                    if (before.worth < 0 || before.worth + worth < way.worth)
                        continue;
                    const bool alike = before.alike || before.worth + worth == way.worth;
                    way = {before.worth + worth, alike, from};
                }
        }
    for (const std::size_t unknown : {0, 1})
        for (const std::size_t count : {m_count, m_count - 1}) {
            const Way& best = at(count, unknown, tokens.size());
            if (best.worth < 2 * static_cast<int>(count - unknown) || best.alike)
                continue;
            Cells cells;
            std::size_t open = unknown;
            for (std::size_t end = tokens.size(), left = count; left > 0; --left) {
                const std::size_t from = at(left, open, end).from;
                open -= worthOf(tokens, from, end) > 0 ? 0 : 1;
                cells.insert(cells.begin(), phrase(tokens, from, end));
                end = from;
            }
            if (count < m_count)
                cells.insert(cells.begin(), std::string());
            return cells;
        }
    return {};
}

} // namespace tripoise::table
