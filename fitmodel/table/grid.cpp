// SPDX-License-Identifier: MIT
#include "table/grid.h"

#include "table/cut_line.h"
#include "table/mended_rows.h"
#include "table/plain.h"
#include "table/size_name.h"

#include <algorithm>
#include <array>
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
    [[nodiscard]] KindOf reader()
    {
        return [this](const std::string& cell) { return of(cell); };
    }

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

bool isBlank(const GridRow& row)
{
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const std::string& cell) { return cell.empty(); });
}

enum class Broken { AsCut, Joined }; ///< rows that are pieces of one

template <typename Cut>
Grid cut(const std::vector<PlainLine>& lines, Kinds& kinds, Cut&& cutLine,
         Broken broken = Broken::AsCut)
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
    if (broken == Broken::Joined)
        grid.rows = brokenRowsJoined(std::move(grid.rows), kinds.reader());
    addCorner(grid.rows, kinds.reader(), kinds.table());
    weigh(grid, kinds);
    return grid;
}

/// At a sign, cells that break over lines put together.
Grid cutJoined(const std::vector<PlainLine>& lines, std::string_view sign, Kinds& kinds)
{
    return cut(
        quotedLinesJoined(lines, sign.front()), kinds,
        [&](const std::string& text) {
            const bool decimal = sign == "," && kinds.of(text) == CellKind::Number;
            return decimal ? Cells{text} : cutAt(text, sign);
        },
        Broken::Joined);
}

bool occurs(const std::vector<PlainLine>& lines, std::string_view sign)
{
    std::size_t count = 0;
    for (const PlainLine& line : lines)
        count += line.text.find(sign) != std::string::npos ? 1 : 0;
    return count >= 2;
}

/// Whether most lines with a number have runs of blanks inside: those part cells, single ones
/// words.
bool inColumns(const std::vector<PlainLine>& lines)
{
    std::size_t count = 0;
    std::size_t with = 0;
    for (const PlainLine& line : lines) {
        if (!hasFigure(line.text))
            continue;
        ++count;
        with += trimmed(line.text).find("  ") != std::string_view::npos ? 1 : 0;
    }
    return 2 * with > count;
}

/// Whether every line with several numbers has a sign between its cells: then blanks part words.
bool isMarked(const std::vector<PlainLine>& lines, Kinds& kinds)
{
    std::array<std::size_t, 3> with{};
    std::size_t count = 0;
    for (const PlainLine& line : lines) {
        const Cells tokens = tokensOf(line.text);
        if (std::count_if(
                tokens.begin(), tokens.end(),
                [&](const std::string& token) { return kinds.of(token) == CellKind::Number; })
                < 2
            && line.text.find_first_of("\t;|") == std::string::npos)
            continue;
        ++count;
        for (std::size_t i = 0; i < with.size(); ++i)
            with[i] += line.text.find("\t;|"[i]) != std::string::npos ? 1 : 0;
    }
    return count >= 2 && std::find(with.begin(), with.end(), count) != with.end();
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
        const std::size_t names = tokens.size() - std::min(count, tokens.size());
        // A line of sizes: their names are words as well.
        const bool ofSizes =
            tokens.size() >= count
            && std::all_of(tokens.begin() + static_cast<std::ptrdiff_t>(names), tokens.end(),
                           [&](const auto& token) { return isSizeName(token, kinds.table()); });
        const bool title =
            values.size() == 1 && count > 1 && kinds.of(phrase(tokens, from)) != CellKind::Heading;
        if (from > 0 && !values.empty() && !title && !(ofSizes && values.size() != count)) {
            cells.push_back(phrase(tokens, from));
        } else if (ofSizes && names <= 3) {
            cells.push_back(phrase(tokens, names));
            values.assign(tokens.begin() + static_cast<std::ptrdiff_t>(names), tokens.end());
        } else {
            return Cells{std::string(trimmed(text))};
        }
        cells.insert(cells.end(), values.begin(), values.end());
        return cells;
    });
}

/// "Stack: 585 mm    Reach: 390 mm"
Cells cutAtColons(const std::string& text)
{
    Cells cells;
    for (const std::string& pair : cutAtBlanks(text)) {
        const std::size_t colon = pair.find(':');
        if (colon <= 1 || colon == std::string::npos || colon + 1 == pair.size())
            return {text}; // "A: stack" says what a letter is
        cells.emplace_back(trimmed(std::string_view(pair).substr(0, colon)));
        cells.emplace_back(trimmed(std::string_view(pair).substr(colon + 1)));
    }
    return cells;
}

/// One cell a line, as some pages are copied: headings each followed by as many values, or all
/// headings and then the values of one size after another.
Grid cutByHeadings(const std::vector<PlainLine>& lines, Kinds& kinds)
{
    std::vector<const PlainLine*> filled;
    std::vector<CellKind> kindAt;
    for (const PlainLine& line : lines)
        if (!trimmed(line.text).empty() && !isDrawn(line.text)) {
            filled.push_back(&line);
            kindAt.push_back(kinds.of(std::string(trimmed(line.text))));
        }
    const auto isValue = [&](std::size_t i) {
        return kindAt[i] == CellKind::Number || kindAt[i] == CellKind::Missing;
    };
    // Headings, known or not, stand before a number, the ones of columns before each other.
    std::vector<std::size_t> headings;
    for (std::size_t i = 0; i + 1 < filled.size(); ++i)
        if (!isValue(i) && isValue(i + 1))
            headings.push_back(i);
    if (headings.empty())
        return {};
    const auto alike = [&](std::size_t length) {
        std::size_t count = 0;
        for (std::size_t i = 1; i < headings.size(); ++i)
            count += headings[i] - headings[i - 1] == length ? 1 : 0;
        return count;
    };
    const auto areHeadings = [&](std::size_t from, std::size_t to) {
        std::size_t count = 0;
        for (std::size_t i = from; i < to; ++i)
            count += kindAt[i] == CellKind::Heading
                             || (i + 1 < to && trimmed(filled[i]->text) == "A"
                                 && trimmed(filled[i + 1]->text) == "B")
                         ? 1
                         : 0;
        return count >= 2 || (count == 1 && trimmed(filled[from + 1]->text) == "A");
    };
    std::size_t length = 0;
    std::size_t first = headings.front();
    std::size_t start = first;
    if (headings.size() == 1) { // all headings, then sizes that are numbers
        const auto top = static_cast<std::size_t>(
            std::find(kindAt.begin(), kindAt.end(), CellKind::Heading) - kindAt.begin());
        length = first + 1 - std::min(top, first);
        start = first = std::min(top, first);
    } else {
        for (std::size_t i = 1; i < headings.size(); ++i)
            if (const std::size_t one = headings[i] - headings[i - 1]; alike(one) > alike(length))
                length = one;
        if (10 * alike(length) < 6 * (headings.size() - 1))
            return {};
        if (first >= length && areHeadings(first - length, first))
            start = first = first - length; // all headings, then the first size by its name
        else if (first + 1 >= length)
            // The sizes stand before the first heading, with or without a word for them.
            start = first + 1 - length;
        if (start > 0 && start < first && kindAt[start - 1] == CellKind::Heading)
            --start;
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
        rowFrom(start, first - start, first - start < length);
    // From heading to heading: one that has a single number for all sizes shifts none.
    for (std::size_t i = first, next = 0; i < filled.size(); i = next) {
        const auto at = std::upper_bound(headings.begin(), headings.end(), i);
        const bool isRow = std::binary_search(headings.begin(), headings.end(), i);
        next = at == headings.end() || !isRow ? i + length : *at;
        rowFrom(i, next - i, false);
    }
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
    for (const char* sign : {"\t", ";", ", ", ","})
        if (occurs(lines, sign))
            offer(cutJoined(lines, sign, kinds));
    if (occurs(lines, "|")) {
        std::ptrdiff_t bars = 0;
        std::ptrdiff_t first = 0;
        for (const PlainLine& line : lines) {
            bars += line.text.find('|') != std::string::npos ? 1 : 0;
            first += trimmed(line.text).starts_with('|') ? 1 : 0;
        }
        offer(cut(lines, kinds,
                  [&](const std::string& text) { return cutAtBars(text, 2 * first > bars); }));
    }
    if (occurs(lines, ":"))
        offer(cut(lines, kinds, cutAtColons));
    offer(cutByHeadings(lines, kinds));
    if (!isMarked(lines, kinds)) {
        if (occurs(lines, "  ")) {
            offer(cut(lines, kinds, [](const std::string& text) { return cutAtBlanks(text); }));
            offer(cutAtGutters(lines, kinds));
        }
        if (occurs(lines, " ") && !inColumns(lines))
            offer(cutBehindPhrases(lines, kinds));
    }
    pairsApart(best.rows, kinds.reader());
    return best;
}

Grid gridOf(const std::vector<PageTable>& tables, const HeadingTable& table)
{
    Kinds kinds(table);
    Grid best;
    const PageTable* chosen = nullptr;
    std::vector<double> worths;
    for (const PageTable& one : tables) {
        Grid grid;
        for (const auto& cells : one.rows) {
            grid.rows.emplace_back();
            for (const std::string& cell : cells)
                grid.rows.back().cells.emplace_back(trimmed(plainSigns(cell)));
            grid.rows.back().lines.resize(cells.size());
            if (isBlank(grid.rows.back()))
                grid.rows.pop_back();
        }
        addCorner(grid.rows, kinds.reader(), table);
        weigh(grid, kinds);
        worths.push_back(grid.worth);
        if (chosen && grid.worth <= best.worth)
            continue;
        best = std::move(grid);
        chosen = &one;
    }
    constexpr double nearly = 0.5;
    best.another = std::count_if(worths.begin(), worths.end(),
                                 [&](double worth) { return worth > nearly * best.worth; })
                   > 1;
    pairsApart(best.rows, kinds.reader());
    const auto textRow = [](const std::string& line) {
        return GridRow{{std::string(trimmed(plainSigns(line)))}, {0}};
    };
    std::vector<GridRow> rows;
    for (const std::string& line : chosen ? chosen->above : std::vector<std::string>())
        rows.push_back(textRow(line));
    rows.insert(rows.end(), std::make_move_iterator(best.rows.begin()),
                std::make_move_iterator(best.rows.end()));
    for (const std::string& line : chosen ? chosen->below : std::vector<std::string>())
        rows.push_back(textRow(line));
    std::erase_if(rows, isBlank);
    for (std::size_t i = 0; i < rows.size(); ++i)
        std::fill(rows[i].lines.begin(), rows[i].lines.end(), i + 1);
    best.rows = std::move(rows);
    return best;
}

std::string textOf(const Grid& grid)
{
    std::string text;
    for (const GridRow& row : grid.rows) {
        for (std::size_t i = 0; i < row.cells.size(); ++i)
            text += (i ? "\t" : "") + row.cells[i];
        text += '\n';
    }
    return text;
}

} // namespace tripoise::table
