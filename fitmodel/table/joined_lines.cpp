// SPDX-License-Identifier: MIT
#include "table/joined_lines.h"

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

using KindOf = std::function<CellKind(const std::string&)>;

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
    for (const GridRow& row : rows)
        if (row.cells.size() >= 3 && numbersIn(row, kindOf) >= 2)
            ++lengths[row.cells.size()];
    const auto usual =
        std::max_element(lengths.begin(), lengths.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    if (usual == lengths.end())
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

} // namespace tripoise::table
