// SPDX-License-Identifier: MIT
#include "table/mended_rows.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

using Rows = std::vector<GridRow>;

constexpr std::size_t mostPieces = 60; // lines of one row

/// Whether a cell that a quote opened is still open at the end of the line.
bool endsInside(const std::string& line, char sign)
{
    bool starts = true;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (starts && line[i] == '"') {
            do // two of them are one in the cell
                i = line.find('"', i + 1);
            while (i != std::string::npos && i + 1 < line.size() && line[i + 1] == '"' && ++i);
            if (i == std::string::npos)
                return true;
        }
        starts = line[i] == sign || (starts && line[i] == ' ');
    }
    return false;
}

/// The last cell of the one goes on in the first of the other.
void append(GridRow& to, const GridRow& next, CellReader& reader)
{
    GridCell& last = to.back();
    if (last.text.empty() || !next.front().text.empty())
        last = reader.cell(last.text + ' ' + next.front().text, last.line);
    to.insert(to.end(), next.begin() + 1, next.end());
}

/// "A = stack": parted by what parts cells elsewhere.
bool isLegend(const GridRow& row)
{
    return std::any_of(row.begin(), row.end(), [](const GridCell& cell) {
        return cell.text.find('=') != std::string::npos;
    });
}

struct Join {
    std::size_t from = 0;
    std::size_t to = 0;
    std::size_t headings = 0;
    GridRow row;
};

/// Of the rows from one to another, the run that makes a row of so many cells.
std::optional<Join> bestJoin(const Rows& rows, std::size_t from, std::size_t to, std::size_t length,
                             CellReader& reader)
{
    std::optional<Join> best;
    for (std::size_t start = from; start < to; ++start) {
        GridRow row = rows[start];
        for (std::size_t end = start + 1; end < to && end - start < mostPieces; ++end) {
            append(row, rows[end], reader);
            if (row.size() > length)
                break;
            const std::size_t headings = countOf(CellKind::Heading, row);
            if (row.size() < length || headings < 2 || (best && headings < best->headings))
                continue;
            // What stands between the headings and the first numbers belongs to the last of them.
            const bool whole = end + 1 == to;
            const bool better =
                !best || headings > best->headings
                || (whole != (best->to == to) ? whole : end + 1 - start < best->to - best->from);
            if (better)
                best = Join{start, end + 1, headings, row};
        }
    }
    return best;
}

/// Each row of numbers alone behind the single cell above it.
Rows labelsBeside(Rows rows)
{
    const auto isBelow = [&](std::size_t i) {
        return i > 0 && rows[i].size() > 1 && valuesIn(rows[i]) == rows[i].size()
               && rows[i - 1].size() == 1 && !rows[i - 1].front().isValue();
    };
    std::size_t below = 0;
    std::size_t numbers = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        below += isBelow(i) ? 1 : 0;
        numbers += valuesIn(rows[i]) >= 2 ? 1 : 0;
    }
    if (below < 2 || below < numbers)
        return rows;
    Rows result;
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (isBelow(i))
            result.back().insert(result.back().end(), rows[i].begin(), rows[i].end());
        else
            result.push_back(rows[i]);
    return result;
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

Rows brokenRowsJoined(Rows rows, CellReader& reader)
{
    rows = labelsBeside(std::move(rows));
    std::map<std::size_t, std::size_t> lengths;
    std::size_t count = 0;
    for (const GridRow& row : rows)
        if (row.size() >= 3 && valuesIn(row) >= 2) {
            ++lengths[row.size()];
            ++count;
        }
    const std::size_t length = usualOf(lengths);
    if (2 * lengths[length] <= count) // they do not say
        return rows;
    Rows result;
    for (std::size_t i = 0; i < rows.size();) {
        std::size_t end = i;
        while (end < rows.size() && rows[end].size() < length && valuesIn(rows[end]) < 2
               && !isLegend(rows[end]))
            ++end;
        const auto join = bestJoin(rows, i, end, length, reader);
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

void addCorner(Rows& rows, CellReader& reader)
{
    std::map<std::size_t, std::size_t> lengths;
    for (const GridRow& row : rows)
        if (valuesIn(row, 1) >= 1)
            ++lengths[row.size()];
    const std::size_t length = usualOf(lengths);
    if (length < 3)
        return;
    const auto isSize = [&](const GridCell& cell) { return isSizeName(cell.text, reader.table()); };
    bool sizesFirst = true;
    bool unitsSecond = true;
    for (const GridRow& row : rows) {
        if (row.size() != length)
            continue;
        sizesFirst = sizesFirst && (valuesIn(row, 1) == 0 || isSize(row.front()));
        unitsSecond = unitsSecond && !row[1].isValue();
    }
    const std::size_t names = length - (unitsSecond ? 2 : 1);
    for (GridRow& row : rows) {
        if (row.size() >= length || row.size() < std::min(names, length - 1))
            continue;
        const auto lead = row.begin() + static_cast<std::ptrdiff_t>(row.size() - names);
        const bool sizes = !sizesFirst && std::all_of(lead, row.end(), isSize)
                           && std::none_of(row.begin(), lead, isSize);
        const bool header = sizesFirst && row.size() + 1 == length
                            && 2 * countOf(CellKind::Heading, row) > row.size()
                            && row.front().heading->column;
        if (!sizes && !header)
            continue;
        row.insert(header ? row.begin() : lead, length - row.size(),
                   reader.cell({}, row.front().line));
        return;
    }
}

void pairsApart(Rows& rows, double share)
{
    const auto isPairs = [](const GridRow& row) {
        if (row.size() < 4 || row.size() % 2 != 0)
            return false;
        std::size_t headings = 0;
        for (std::size_t i = 0; i < row.size(); i += 2) {
            headings += row[i].kind == CellKind::Heading ? 1 : 0;
            if (row[i].isValue() || row[i + 1].kind == CellKind::Heading)
                return false;
        }
        return 4 * headings >= row.size();
    };
    const auto wide =
        std::count_if(rows.begin(), rows.end(), [](const GridRow& row) { return row.size() > 2; });
    const auto paired = std::count_if(rows.begin(), rows.end(), isPairs);
    if (paired == 0 || static_cast<double>(paired) < share * static_cast<double>(wide))
        return;
    Rows result;
    for (GridRow& row : rows) {
        const std::size_t length = isPairs(row) ? 2 : row.size();
        for (auto at = row.begin(); at != row.end(); at += static_cast<std::ptrdiff_t>(length))
            result.emplace_back(at, at + static_cast<std::ptrdiff_t>(length));
    }
    rows = std::move(result);
}

} // namespace tripoise::table
