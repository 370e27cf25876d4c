// SPDX-License-Identifier: MIT
#include "table/grid.h"

#include "table/cut_line.h"
#include "table/plain.h"

#include <algorithm>
#include <map>
#include <optional>

namespace tripoise::table {
namespace {

std::string smallLetters(std::string_view text)
{
    std::string result(text);
    for (char& c : result)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return result;
}

/// Tables of thousands of alike cells ask for the same cell again and again.
class Kinds {
public:
    explicit Kinds(const HeadingTable& table) : m_table(table) {}

    CellKind of(const std::string& cell)
    {
        const auto [at, isNew] = m_known.try_emplace(cell, CellKind::Blank);
        if (isNew)
            at->second = kindOf(cell, m_table);
        return at->second;
    }
    [[nodiscard]] const HeadingTable& table() const { return m_table; }

private:
    const HeadingTable& m_table;
    std::unordered_map<std::string, CellKind> m_known;
};

bool hasFigure(const std::string& cell)
{
    return cell.find_first_of("0123456789") != std::string::npos;
}

void weigh(Grid& grid, Kinds& kinds)
{
    constexpr double headingWorth = 3.0;
    constexpr double dirtyCost = 1.0;
    double sum = 0.0;
    std::map<std::size_t, std::size_t> lengths;
    std::size_t counted = 0;
    for (const GridRow& row : grid.rows) {
        if (row.cells.size() < 2)
            continue;
        ++counted;
        ++lengths[row.cells.size()];
        for (const std::string& cell : row.cells) {
            switch (kinds.of(cell)) {
            case CellKind::Number: sum += 1.0; break;
            case CellKind::Heading: sum += headingWorth; break;
            case CellKind::Text: sum -= hasFigure(cell) ? dirtyCost : 0.0; break;
            default: break;
            }
        }
    }
    std::size_t alike = 0;
    for (const auto& [length, count] : lengths)
        alike = std::max(alike, count);
    const double even =
        counted == 0 ? 0.0 : static_cast<double>(alike) / static_cast<double>(counted);
    grid.worth = sum * (0.5 + 0.5 * even);
}

template <typename Cut> Grid cut(const std::vector<PlainLine>& lines, Kinds& kinds, Cut&& cutLine)
{
    Grid grid;
    for (const PlainLine& line : lines) {
        if (isDrawn(line.text))
            continue;
        Cells cells = cutLine(line.text);
        if (std::all_of(cells.begin(), cells.end(), [](const auto& cell) { return cell.empty(); }))
            continue;
        std::vector<std::size_t> numbers(cells.size(), line.number);
        grid.rows.push_back({std::move(cells), std::move(numbers)});
    }
    weigh(grid, kinds);
    return grid;
}

bool occurs(const std::vector<PlainLine>& lines, std::string_view sign)
{
    std::size_t count = 0;
    for (const PlainLine& line : lines)
        count += line.text.find(sign) != std::string::npos ? 1 : 0;
    return count >= 2;
}

/// Number of characters rather than bytes before each byte, so that "Ä" takes one column.
std::vector<std::size_t> columnsOf(const std::string& text)
{
    std::vector<std::size_t> columns;
    std::size_t column = 0;
    for (const char c : text) {
        const bool continues = (static_cast<unsigned char>(c) & 0xC0) == 0x80;
        columns.push_back(continues ? column - 1 : column);
        column += continues ? 0 : 1;
    }
    return columns;
}

/// Cells between the columns that are blank in all lines.
Grid cutAtGutters(const std::vector<PlainLine>& lines, Kinds& kinds)
{
    std::vector<bool> inked;
    for (const PlainLine& line : lines) {
        if (cutAtBlanks(line.text).size() < 2)
            continue;
        const auto columns = columnsOf(line.text);
        for (std::size_t i = 0; i < line.text.size(); ++i) {
            if (inked.size() <= columns[i])
                inked.resize(columns[i] + 1, false);
            if (line.text[i] != ' ')
                inked[columns[i]] = true;
        }
    }
    std::vector<std::size_t> ends; // the column at which a cell ends
    for (std::size_t i = 1; i + 1 < inked.size(); ++i)
        if (!inked[i] && !inked[i + 1] && inked[i - 1])
            ends.push_back(i);
    return cut(lines, kinds, [&](const std::string& text) {
        if (cutAtBlanks(text).size() < 2)
            return Cells{std::string(trimmed(text))};
        const auto columns = columnsOf(text);
        Cells cells;
        std::size_t from = 0;
        for (const std::size_t end : ends) {
            const auto to = static_cast<std::size_t>(
                std::lower_bound(columns.begin(), columns.end(), end) - columns.begin());
            cells.emplace_back(trimmed(std::string_view(text).substr(from, to - from)));
            from = to;
        }
        cells.emplace_back(trimmed(std::string_view(text).substr(from)));
        return cells;
    });
}

bool isValueToken(const std::string& token, Kinds& kinds)
{
    const CellKind kind = kinds.of(token);
    return kind == CellKind::Number || kind == CellKind::Missing || kind == CellKind::Unit;
}

/// The cells at the end of a line, a unit or a fraction taken together with its number.
Cells valueCells(const Cells& tokens, std::size_t from, Kinds& kinds)
{
    Cells cells;
    for (std::size_t i = from; i < tokens.size(); ++i) {
        const bool unit = kinds.of(tokens[i]) == CellKind::Unit;
        const bool part = tokens[i].find('/') != std::string::npos && !cells.empty()
                          && kinds.of(cells.back() + ' ' + tokens[i]) == CellKind::Number
                          && cells.back().find('/') == std::string::npos;
        if ((unit || part) && !cells.empty())
            cells.back() += ' ' + tokens[i];
        else
            cells.push_back(tokens[i]);
    }
    return cells;
}

std::string phrase(const Cells& tokens, std::size_t count)
{
    std::string text;
    for (std::size_t i = 0; i < count; ++i)
        text += (i ? " " : "") + tokens[i];
    return text;
}

/// A phrase, then as many values in every line, with single blanks.
Grid cutBehindPhrases(const std::vector<PlainLine>& lines, Kinds& kinds)
{
    std::map<std::size_t, std::size_t> counts;
    const auto valuesFrom = [&](const Cells& tokens) {
        std::size_t from = tokens.size();
        while (from > 0 && isValueToken(tokens[from - 1], kinds))
            --from;
        while (from < tokens.size() && kinds.of(tokens[from]) == CellKind::Unit)
            ++from; // of the phrase
        return from;
    };
    for (const PlainLine& line : lines) {
        const Cells tokens = tokensOf(line.text);
        const std::size_t from = valuesFrom(tokens);
        if (from > 0 && from < tokens.size())
            ++counts[valueCells(tokens, from, kinds).size()];
    }
    const auto usual =
        std::max_element(counts.begin(), counts.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    if (usual == counts.end() || usual->second < 2)
        return {};
    const std::size_t count = usual->first;
    return cut(lines, kinds, [&](const std::string& text) {
        const Cells tokens = tokensOf(text);
        const std::size_t from = valuesFrom(tokens);
        Cells values = valueCells(tokens, from, kinds);
        Cells cells;
        if (values.size() == count && from > 0) {
            cells.push_back(phrase(tokens, from));
        } else if (tokens.size() >= count && tokens.size() <= count + 3) {
            const std::size_t names = tokens.size() - count; // of sizes, or short headings
            cells.push_back(phrase(tokens, names));
            values.assign(tokens.begin() + static_cast<std::ptrdiff_t>(names), tokens.end());
        } else {
            return Cells{std::string(trimmed(text))};
        }
        cells.insert(cells.end(), values.begin(), values.end());
        return cells;
    });
}

/// One cell a line, as some pages are copied: headings each followed by as many values, or all
/// headings and then the values of one size after another.
Grid cutByHeadings(const std::vector<PlainLine>& lines, Kinds& kinds)
{
    std::vector<std::size_t> headings;
    std::vector<const PlainLine*> filled;
    for (const PlainLine& line : lines)
        if (!trimmed(line.text).empty() && !isDrawn(line.text))
            filled.push_back(&line);
    for (std::size_t i = 0; i < filled.size(); ++i)
        if (kinds.of(std::string(trimmed(filled[i]->text))) == CellKind::Heading)
            headings.push_back(i);
    if (headings.size() < 2)
        return {};
    const std::size_t first = headings.front();
    std::size_t together = 1;
    while (together < headings.size() && headings[together] == first + together)
        ++together;

    std::size_t length = 0;
    std::size_t start = first;
    if (together >= 3 && together == headings.size()) {
        length = together; // sizes down
    } else if (headings.size() >= 2) {
        length = headings[1] - headings[0];
        for (std::size_t i = 1; i < headings.size(); ++i)
            if (headings[i] - headings[i - 1] != length)
                return {};
        // The sizes stand before the first heading, with or without a word for them.
        if (first + 1 >= length)
            start = first + 1 - length;
        else
            start = first;
    }
    if (length < 2)
        return {};
    Grid grid;
    const auto rowFrom = [&](std::size_t from, std::size_t count, bool blankFirst) {
        GridRow row;
        if (blankFirst) {
            row.cells.emplace_back();
            row.lines.push_back(filled[from]->number);
        }
        for (std::size_t i = from; i < std::min(from + count, filled.size()); ++i) {
            row.cells.emplace_back(trimmed(filled[i]->text));
            row.lines.push_back(filled[i]->number);
        }
        grid.rows.push_back(std::move(row));
    };
    for (std::size_t i = 0; i < start; ++i)
        rowFrom(i, 1, false);
    if (start < first)
        rowFrom(start, first - start, true);
    for (std::size_t i = first; i < filled.size(); i += length)
        rowFrom(i, length, false);
    weigh(grid, kinds);
    return grid;
}

} // namespace

CellKind kindOf(std::string_view cell, const HeadingTable& table)
{
    cell = trimmed(cell);
    if (cell.empty())
        return CellKind::Blank;
    if (table.missing.contains(smallLetters(cell)))
        return CellKind::Missing;
    if (cellNumber(cell, table.numbers))
        return CellKind::Number;
    const HeadingRead heading = readHeading(cell, table);
    if (heading.understood())
        return CellKind::Heading;
    return heading.onlyUnit ? CellKind::Unit : CellKind::Text;
}

Grid gridOf(const std::vector<PlainLine>& lines, const HeadingTable& table)
{
    Kinds kinds(table);
    Grid best = cut(lines, kinds,
                    [](const std::string& text) { return Cells{std::string(trimmed(text))}; });
    const auto offer = [&](Grid grid) {
        if (grid.worth > best.worth)
            best = std::move(grid);
    };
    if (occurs(lines, "\t"))
        offer(cut(lines, kinds, [](const std::string& text) { return cutAt(text, "\t"); }));
    if (occurs(lines, ";"))
        offer(cut(lines, kinds, [](const std::string& text) { return cutAt(text, ";"); }));
    if (occurs(lines, "|"))
        offer(cut(lines, kinds, [](const std::string& text) { return cutAtBars(text); }));
    if (occurs(lines, "  ")) {
        offer(cut(lines, kinds, [](const std::string& text) { return cutAtBlanks(text); }));
        offer(cutAtGutters(lines, kinds));
    }
    if (occurs(lines, ", "))
        offer(cut(lines, kinds, [](const std::string& text) { return cutAt(text, ", "); }));
    if (occurs(lines, ","))
        offer(cut(lines, kinds, [](const std::string& text) { return cutAt(text, ","); }));
    if (occurs(lines, " "))
        offer(cutBehindPhrases(lines, kinds));
    offer(cutByHeadings(lines, kinds));
    return best;
}

} // namespace tripoise::table
