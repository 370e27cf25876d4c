// SPDX-License-Identifier: MIT
#include "table/mended_rows.h"

#include "table/size_name.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

constexpr std::size_t mostPieces = 60; // lines of one row

/// Whether a cell that a quote opened is still open at the end of the line.
bool endsInside(const std::string& line, char sign)
{
    bool starts = true;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (starts && line[i] == '"') {
            for (++i; i < line.size(); ++i) {
                if (line[i] != '"')
                    continue;
                if (i + 1 >= line.size() || line[i + 1] != '"')
                    break;
                ++i;
            }
            if (i >= line.size())
                return true;
        }
        starts = line[i] == sign || (starts && line[i] == ' ');
    }
    return false;
}

std::size_t numbersIn(const GridRow& row, const KindOf& kindOf)
{
    return static_cast<std::size_t>(
        std::count_if(row.cells.begin(), row.cells.end(), [&](const std::string& cell) {
            const CellKind kind = kindOf(cell);
            return kind == CellKind::Number || kind == CellKind::Missing;
        }));
}

/// The last cell of the one goes on in the first of the other.
void append(GridRow& to, const GridRow& next)
{
    std::string& last = to.cells.back();
    last += (last.empty() || next.cells.front().empty() ? "" : " ") + next.cells.front();
    to.cells.insert(to.cells.end(), next.cells.begin() + 1, next.cells.end());
    to.lines.insert(to.lines.end(), next.lines.begin() + 1, next.lines.end());
}

std::size_t headingsIn(const GridRow& row, const KindOf& kindOf)
{
    return static_cast<std::size_t>(
        std::count_if(row.cells.begin(), row.cells.end(),
                      [&](const std::string& cell) { return kindOf(cell) == CellKind::Heading; }));
}

/// "A = stack": parted by what parts cells elsewhere.
bool isLegend(const GridRow& row)
{
    return std::any_of(row.cells.begin(), row.cells.end(),
                       [](const std::string& cell) { return cell.find('=') != std::string::npos; });
}

struct Join {
    std::size_t from = 0;
    std::size_t to = 0;
    std::size_t headings = 0;
    GridRow row;
};

/// Of the rows from one to another, the run that makes a row of so many cells.
std::optional<Join> bestJoin(const std::vector<GridRow>& rows, std::size_t from, std::size_t to,
                             std::size_t length, const KindOf& kindOf)
{
    std::optional<Join> best;
    for (std::size_t start = from; start < to; ++start) {
        GridRow row = rows[start];
        for (std::size_t end = start + 1; end < to && end - start < mostPieces; ++end) {
            append(row, rows[end]);
            if (row.cells.size() > length)
                break;
            if (row.cells.size() < length)
                continue;
            const std::size_t headings = headingsIn(row, kindOf);
            // What stands between the headings and the first numbers belongs to the last of them.
            const bool whole = end + 1 == to;
            const bool better =
                !best || headings > best->headings
                || (headings == best->headings
                    && (whole != (best->to == to) ? whole
                                                  : end + 1 - start < best->to - best->from));
            if (headings >= 2 && better)
                best = Join{start, end + 1, headings, row};
        }
    }
    return best;
}

} // namespace

std::vector<PlainLine> quotedLinesJoined(const std::vector<PlainLine>& lines, char sign)
{
    std::vector<PlainLine> result;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        PlainLine line = lines[i];
        std::size_t end = i;
        while (endsInside(line.text, sign) && end + 1 < lines.size() && end - i < mostPieces)
            line.text += ' ' + lines[++end].text;
        if (endsInside(line.text, sign)) { // a quote alone, 18"
            result.push_back(lines[i]);
            continue;
        }
        i = end;
        result.push_back(std::move(line));
    }
    return result;
}

std::vector<GridRow> brokenRowsJoined(std::vector<GridRow> rows, const KindOf& kindOf)
{
    std::map<std::size_t, std::size_t> lengths;
    std::size_t count = 0;
    for (const GridRow& row : rows)
        if (row.cells.size() >= 3 && numbersIn(row, kindOf) >= 2) {
            ++lengths[row.cells.size()];
            ++count;
        }
    const auto usual =
        std::max_element(lengths.begin(), lengths.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    if (usual == lengths.end() || 2 * usual->second <= count) // they do not say
        return rows;
    const std::size_t length = usual->first;
    std::vector<GridRow> result;
    for (std::size_t i = 0; i < rows.size();) {
        std::size_t end = i;
        while (end < rows.size() && rows[end].cells.size() < length
               && numbersIn(rows[end], kindOf) < 2 && !isLegend(rows[end]))
            ++end;
        const auto join = bestJoin(rows, i, end, length, kindOf);
        for (; i < (join ? join->from : end); ++i)
            result.push_back(std::move(rows[i]));
        if (join) {
            result.push_back(join->row);
            i = join->to;
        } else if (i < rows.size()) {
            result.push_back(std::move(rows[i++]));
        }
    }
    return result;
}

void addCorner(std::vector<GridRow>& rows, const KindOf& kindOf, const HeadingTable& table)
{
    const auto isNumber = [&](const std::string& cell) {
        return kindOf(cell) == CellKind::Number || kindOf(cell) == CellKind::Missing;
    };
    std::map<std::size_t, std::size_t> lengths;
    for (const GridRow& row : rows)
        if (std::count_if(row.cells.begin() + 1, row.cells.end(), isNumber) >= 1)
            ++lengths[row.cells.size()];
    const auto usual =
        std::max_element(lengths.begin(), lengths.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    if (usual == lengths.end() || usual->first < 3)
        return;
    const std::size_t length = usual->first;
    const auto isSize = [&](const std::string& cell) { return isSizeName(cell, table); };
    const auto isHeading = [&](const std::string& cell) {
        return kindOf(cell) == CellKind::Heading;
    };
    const bool sizesFirst = std::all_of(rows.begin(), rows.end(), [&](const GridRow& row) {
        return row.cells.size() != length
               || std::none_of(row.cells.begin() + 1, row.cells.end(), isNumber)
               || isSize(row.cells.front());
    });
    const bool unitsSecond = std::none_of(rows.begin(), rows.end(), [&](const GridRow& row) {
        return row.cells.size() == length && isNumber(row.cells[1]);
    });
    const std::size_t names = length - (unitsSecond ? 2 : 1);
    for (GridRow& row : rows) {
        if (row.cells.size() >= length || row.cells.size() < std::min(names, length - 1))
            continue;
        const auto lead = static_cast<std::ptrdiff_t>(row.cells.size() - names);
        const auto headings = std::count_if(row.cells.begin(), row.cells.end(), isHeading);
        const bool sizes = !sizesFirst
                           && std::all_of(row.cells.begin() + lead, row.cells.end(), isSize)
                           && std::none_of(row.cells.begin(), row.cells.begin() + lead, isSize);
        const bool header = sizesFirst && row.cells.size() + 1 == length
                            && 2 * static_cast<std::size_t>(headings) > row.cells.size()
                            && isHeading(row.cells.front())
                            && !readHeading(row.cells.front(), table).isSize;
        if (!sizes && !header)
            continue;
        const std::size_t lacks = length - row.cells.size();
        const auto at = header ? 0 : lead;
        row.lines.insert(row.lines.begin() + at, lacks, row.lines.front());
        row.cells.insert(row.cells.begin() + at, lacks, std::string());
        return;
    }
}

void pairsApart(std::vector<GridRow>& rows, const KindOf& kindOf)
{
    std::size_t paired = 0;
    std::size_t wide = 0;
    const auto isPairs = [&](const GridRow& row) {
        if (row.cells.size() < 4 || row.cells.size() % 2 != 0)
            return false;
        std::size_t headings = 0;
        for (std::size_t i = 0; i < row.cells.size(); i += 2) {
            headings += kindOf(row.cells[i]) == CellKind::Heading ? 1 : 0;
            const CellKind label = kindOf(row.cells[i]);
            if (label == CellKind::Number || label == CellKind::Missing)
                return false;
            if (kindOf(row.cells[i + 1]) == CellKind::Heading)
                return false;
        }
        return 2 * headings >= row.cells.size() / 2;
    };
    for (const GridRow& row : rows) {
        wide += row.cells.size() > 2 ? 1 : 0;
        paired += isPairs(row) ? 1 : 0;
    }
    if (paired == 0 || paired * 10 < wide * 8)
        return;
    std::vector<GridRow> result;
    for (GridRow& row : rows) {
        if (!isPairs(row)) {
            result.push_back(std::move(row));
            continue;
        }
        for (std::size_t i = 0; i < row.cells.size(); i += 2)
            result.push_back({{row.cells[i], row.cells[i + 1]}, {row.lines[i], row.lines[i + 1]}});
    }
    rows = std::move(result);
}

} // namespace tripoise::table
