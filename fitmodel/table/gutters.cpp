// SPDX-License-Identifier: MIT
#include "table/gutters.h"

#include "text/encoding.h"
#include "text/plain.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

Cells parted(std::string_view line)
{
    return pieces(line, "  ");
}

/// Number of characters rather than bytes before each byte, so that "Ä" takes one column.
std::vector<std::size_t> columnsOf(const std::string& text)
{
    std::vector<std::size_t> columns;
    std::size_t column = 0;
    for (const char c : text) {
        const bool continues = isContinuation(c);
        columns.push_back(continues ? column - 1 : column);
        column += continues ? 0 : 1;
    }
    return columns;
}

} // namespace

Gutters::Gutters(const std::vector<PlainLine>& lines, CellReader& reader) : m_reader(reader)
{
    findEnds(lines);
    m_edges.resize(m_ends.size() + 1);
    for (const PlainLine& line : lines)
        if (const Cells cells = cellsOf(line.text); isFull(cells))
            for (const auto& [cell, both] : edgesOf(cells))
                m_edges[cell].insert(both.begin(), both.end());
}

void Gutters::findEnds(const std::vector<PlainLine>& lines)
{
    std::map<std::size_t, std::size_t> counts;
    for (const PlainLine& line : lines)
        if (const std::size_t count = parted(line.text).size(); count >= 2)
            ++counts[count];
    const std::size_t usual = usualOf(counts);
    std::size_t count = 0;
    std::vector<bool> inked;
    std::vector<std::size_t> begun; // lines that begin a cell there
    for (const PlainLine& line : lines) {
        if (2 * parted(line.text).size() < std::max<std::size_t>(usual, 3))
            continue;
        ++count;
        const auto columns = columnsOf(line.text);
        inked.resize(std::max(inked.size(), columns.back() + 1), false);
        begun.resize(inked.size(), 0);
        for (std::size_t i = 0; i < line.text.size(); ++i)
            if (line.text[i] != ' ') {
                inked[columns[i]] = true;
                begun[columns[i]] += i >= 2 && line.text.compare(i - 2, 2, "  ") == 0 ? 1 : 0;
            }
    }
    for (std::size_t i = 1; i + 1 < inked.size(); ++i)
        if (!inked[i] && inked[i - 1] && (!inked[i + 1] || 2 * begun[i + 1] > count))
            m_ends.push_back(i);
}

Cells Gutters::cellsOf(const std::string& text) const
{
    if (parted(text).size() < 2)
        return {text};
    const auto columns = columnsOf(text);
    Cells cells;
    std::size_t from = 0;
    for (const std::size_t end : m_ends) {
        const auto to = static_cast<std::size_t>(
            std::lower_bound(columns.begin(), columns.end(), end) - columns.begin());
        if (to < text.size() && text[to] != ' ')
            return {text}; // a word stands there
        cells.push_back(text.substr(from, to - from));
        from = to;
    }
    cells.push_back(text.substr(from));
    return cells;
}

bool Gutters::isFull(const Cells& cells) const
{
    return cells.size() == m_edges.size()
           && std::none_of(cells.begin(), cells.end(),
                           [](const std::string& cell) { return trimmed(cell).empty(); });
}

std::vector<Gutters::Edges> Gutters::edgesOf(const Cells& cells)
{
    std::vector<Edges> edges;
    for (std::size_t i = 0, at = 0; i < cells.size(); at += columnsOf(cells[i++]).size())
        if (m_reader.kindOf(cells[i]) == CellKind::Number)
            edges.push_back({i,
                             {2 * (at + cells[i].find_first_not_of(' ')),
                              2 * (at + cells[i].find_last_not_of(' ')) + 1}});
    return edges;
}

bool Gutters::standsAsOthers(const Cells& cells)
{
    const auto edges = edgesOf(cells);
    return std::all_of(edges.begin(), edges.end(), [&](const Edges& one) {
        const std::set<std::size_t>& others = m_edges[one.cell];
        return others.empty() || others.contains(one.both[0]) || others.contains(one.both[1]);
    });
}

Cells Gutters::operator()(const std::string& text)
{
    Cells cells = cellsOf(text);
    const bool twoInOne = std::any_of(cells.begin() + 1, cells.end(), [](const std::string& cell) {
        return parted(cell).size() > 1; // two of them between the same gutters
    });
    const bool gaps = cells.size() == m_edges.size() && !isFull(cells);
    return twoInOne || (gaps && !standsAsOthers(cells)) ? Cells{text} : cells;
}

} // namespace tripoise::table
