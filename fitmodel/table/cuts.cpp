// SPDX-License-Identifier: MIT
#include "table/cuts.h"

#include "table/gutters.h"
#include "table/headed_columns.h"
#include "table/mended_rows.h"
#include "table/phrases.h"
#include "table/tokens.h"
#include "text/plain.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

using Lines = std::vector<PlainLine>;
using Rows = std::vector<GridRow>;

/// At a sign; a quoted cell keeps the signs inside it (RFC 4180).
Cells cutAt(std::string_view line, std::string_view sign)
{
    Cells cells;
    std::string cell;
    bool quoted = false;
    for (std::size_t i = 0; i < line.size();) {
        const bool opens = line[i] == '"' && !quoted && trimmed(cell).empty();
        const std::size_t end = opens ? line.find('"', i + 1) : std::string_view::npos;
        if (end != std::string_view::npos) {
            // Only a quote that ends at a separator encloses a cell; 18" does not.
            const std::string_view after = trimmed(line.substr(end + 1));
            if (after.empty() || after.starts_with(trimmed(sign)) || after.starts_with('"')
                || line.substr(end + 1).starts_with(sign)) {
                quoted = true;
                cell.clear();
                ++i;
                continue;
            }
        }
        if (quoted && line[i] == '"') {
            quoted = line.substr(i + 1).starts_with('"');
            cell += quoted ? "\"" : "";
            i += quoted ? 2 : 1;
        } else if (!quoted && line.substr(i).starts_with(sign)) {
            cells.push_back(std::exchange(cell, {}));
            i += sign.size();
        } else {
            cell += line[i++];
        }
    }
    cells.push_back(std::move(cell));
    return cells;
}

/// "|---|:--:|", "+----+", "=====": a line that is drawn.
bool isDrawn(std::string_view line)
{
    const std::string_view text = trimmed(line);
    const auto has = [&](std::string_view sign) {
        return text.find(sign) != std::string_view::npos;
    };
    return text.size() >= 3 && text.find_first_not_of("-+|=:_ \t") == std::string_view::npos
           && (has("--") || has("==") || has("__"));
}

template <typename Cut> Rows cut(const Lines& lines, CellReader& reader, Cut&& cutLine)
{
    Rows rows;
    for (const PlainLine& line : lines) {
        if (isDrawn(line.text))
            continue;
        GridRow row;
        for (const std::string& cell : cutLine(line.text))
            row.push_back(reader.cell(cell, line.number));
        if (!isBlank(row))
            rows.push_back(std::move(row));
    }
    return rows;
}

/// At a sign, cells that break over lines put together.
Rows cutJoined(const Lines& lines, std::string_view sign, CellReader& reader)
{
    return brokenRowsJoined(cut(quotedLinesJoined(lines, sign.front()), reader,
                                [&](const std::string& text) {
                                    const bool decimal =
                                        sign == "," && reader.kindOf(text) == CellKind::Number;
                                    return decimal ? Cells{text} : cutAt(text, sign);
                                }),
                            reader);
}

/// "| Stack | 585 |": bars stand at both ends of the line as well.
Rows cutAtBars(const Lines& lines, CellReader& reader)
{
    std::ptrdiff_t bars = 0;
    for (const PlainLine& line : lines)
        bars += (trimmed(line.text).starts_with('|') ? 2 : 0)
                - (line.text.find('|') != std::string::npos ? 1 : 0);
    return cut(lines, reader, [&](const std::string& text) {
        std::string_view line = trimmed(text);
        if (bars > 0 && line.starts_with('|'))
            line.remove_prefix(1);
        if (bars > 0 && line.ends_with('|'))
            line.remove_suffix(1);
        Cells cells = cutAt(line, "|");
        for (std::string& cell : cells) {
            const std::string_view bold = trimmed(cell);
            if (bold.size() > 4 && bold.starts_with("**") && bold.ends_with("**"))
                cell = std::string(bold.substr(2, bold.size() - 4));
        }
        return cells;
    });
}

/// "Stack: 585 mm    Reach: 390 mm"
Rows cutAtColons(const Lines& lines, CellReader& reader)
{
    return cut(lines, reader, [](const std::string& text) {
        Cells cells;
        for (const std::string& pair : pieces(text, "  ")) {
            const std::size_t colon = pair.find(':');
            if (colon <= 1 || colon == std::string::npos || colon + 1 == pair.size())
                return Cells{text}; // "A: stack" says what a letter is
            cells.push_back(pair.substr(0, colon));
            cells.push_back(pair.substr(colon + 1));
        }
        return cells;
    });
}

bool occurs(const Lines& lines, std::string_view sign)
{
    return std::count_if(
               lines.begin(), lines.end(),
               [&](const PlainLine& line) { return line.text.find(sign) != std::string::npos; })
           >= 2;
}

/// Whether most lines with a number have runs of blanks inside: those part cells, single ones
/// words.
bool inColumns(const Lines& lines)
{
    std::size_t count = 0;
    std::size_t with = 0;
    for (const PlainLine& line : lines) {
        if (line.text.find_first_of("0123456789") == std::string::npos)
            continue;
        ++count;
        with += trimmed(line.text).find("  ") != std::string_view::npos ? 1 : 0;
    }
    return 2 * with > count;
}

/// The sign that every line with several numbers has between its cells, from the first line with it
/// to the last, if there is one: then blanks part words, and beside tabs other signs do.
std::optional<char> markOf(const Lines& lines, CellReader& reader)
{
    const auto severalNumbers = [&](const PlainLine& line) {
        const Cells tokens = tokensOf(line.text);
        return std::count_if(tokens.begin(), tokens.end(),
                             [&](const std::string& token) {
                                 return reader.kindOf(token) == CellKind::Number;
                             })
               >= 2;
    };
    for (const char sign : {'\t', ';', '|'}) {
        const auto has = [sign](const PlainLine& line) {
            return line.text.find(sign) != std::string::npos;
        };
        const auto first = std::find_if(lines.begin(), lines.end(), has);
        const auto end = std::find_if(lines.rbegin(), lines.rend(), has).base();
        if (std::count_if(first, lines.end(), has) >= 2
            && std::all_of(first, end, [&](const PlainLine& line) {
                   return has(line) || !severalNumbers(line);
               }))
            return sign;
    }
    return std::nullopt;
}

} // namespace

std::vector<GridRow> cutNowhere(const Lines& lines, CellReader& reader)
{
    return cut(lines, reader, [](const std::string& text) { return Cells{text}; });
}

Rows cutByHeadings(const Lines& lines, CellReader& reader)
{
    GridRow cells;
    for (const PlainLine& line : lines) {
        if (trimmed(line.text).empty() || isDrawn(line.text))
            continue;
        GridCell cell = reader.cell(line.text, line.number);
        // A unit, or the rest of a heading: "Top tube", "horizontal".
        const bool whole = cell.isValue() || cell.kind == CellKind::Heading
                           || !cell.heading->letter.empty()
                           || isSizeName(cell.text, reader.table());
        if (!whole && !cells.empty() && !cells.back().isValue()) {
            GridCell both = reader.cell(cells.back().text + ' ' + cell.text, cells.back().line);
            if (cell.kind == CellKind::Unit || both.heading->column) {
                cells.back() = std::move(both);
                continue;
            }
        }
        cells.push_back(std::move(cell));
    }
    // Headings, known or not, stand before a number, the ones of columns before each other.
    std::vector<std::size_t> headings;
    for (std::size_t i = 0; i + 1 < cells.size(); ++i)
        if (!cells[i].isValue() && cells[i + 1].isValue())
            headings.push_back(i);
    if (headings.empty())
        return {};
    std::size_t length = 0;
    std::size_t first = headings.front();
    std::size_t start = first;
    if (headings.size() == 1) { // all headings, then sizes that are numbers
        const auto top = std::find_if(cells.begin(), cells.end(), [](const GridCell& cell) {
            return cell.kind == CellKind::Heading;
        });
        start = std::min(static_cast<std::size_t>(top - cells.begin()), first);
        length = first + 1 - start;
        first = start;
    } else {
        std::map<std::size_t, std::size_t> lengths;
        for (std::size_t i = 1; i < headings.size(); ++i)
            ++lengths[headings[i] - headings[i - 1]];
        length = usualOf(lengths);
        const double alike = static_cast<double>(lengths[length]);
        if (alike < reader.table().limits.alikeShare * static_cast<double>(headings.size() - 1))
            return {};
        // The sizes, or all headings, stand before, with or without a word for them.
        if (first + 1 >= length)
            start = first + 1 - length;
        if (start > 0 && start < first && cells[start - 1].kind == CellKind::Heading)
            --start;
    }
    if (length < 2)
        return {};
    Rows rows;
    const auto rowFrom = [&](std::size_t from, std::size_t count) {
        const auto begin = cells.begin() + static_cast<std::ptrdiff_t>(from);
        rows.emplace_back(
            begin, begin + static_cast<std::ptrdiff_t>(std::min(count, cells.size() - from)));
    };
    for (std::size_t i = 0; i < start; ++i)
        rowFrom(i, 1);
    if (start < first)
        rowFrom(start, first - start);
    if (start < first && first - start < length)
        rows.back().insert(rows.back().begin(), reader.cell({}, cells[start].line));
    // From heading to heading: one that has a single number for all sizes shifts none.
    const bool across = std::binary_search(headings.begin(), headings.end(), first);
    for (std::size_t i = first, next = 0; i < cells.size(); i = next) {
        const auto at = std::upper_bound(headings.begin(), headings.end(), i);
        const bool isRow = std::binary_search(headings.begin(), headings.end(), i);
        const std::size_t before = at == headings.end() ? cells.size() : *at;
        next = at == headings.end() || !isRow ? i + length : *at;
        if (across && before > i + length && !cells[i + length].isValue()) {
            // Then the next table's title and sizes stand before its first heading.
            if (isRow)
                next = i + length;
            else if (at != headings.end() && before < i + 2 * length)
                next = before - length;
        }
        rowFrom(i, next - i);
    }
    return rows;
}

void eachCut(const Lines& lines, CellReader& reader, const std::function<void(Rows)>& offer)
{
    const std::optional<char> mark = markOf(lines, reader);
    for (const char* sign : {"\t", ";", ", ", ","})
        if (occurs(lines, sign) && (mark != '\t' || *sign == '\t'))
            offer(cutJoined(lines, sign, reader));
    if (occurs(lines, "|"))
        offer(cutAtBars(lines, reader));
    if (occurs(lines, ":"))
        offer(cutAtColons(lines, reader));
    offer(cutByHeadings(lines, reader));
    if (mark)
        return;
    if (occurs(lines, "  ")) {
        offer(cut(lines, reader, [](const std::string& text) { return pieces(text, "  "); }));
        offer(cut(lines, reader, Gutters(lines, reader)));
    }
    if (Phrases phrases(lines, reader); phrases.found() && !inColumns(lines))
        offer(cut(lines, reader, phrases));
    if (HeadedColumns columns(lines, reader); columns.found() && !inColumns(lines))
        offer(cut(lines, reader, columns));
}

} // namespace tripoise::table
