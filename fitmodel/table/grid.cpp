// SPDX-License-Identifier: MIT
#include "table/grid.h"

#include "table/cuts.h"
#include "table/mended_rows.h"
#include "text/plain.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

bool hasFigure(const std::string& text)
{
    return text.find_first_of("0123456789") != std::string::npos;
}

double worthOf(const std::vector<GridRow>& rows, const ReadingLimits& limits)
{
    double sum = 0.0;
    std::map<std::size_t, std::size_t> lengths;
    std::size_t counted = 0;
    for (const GridRow& row : rows) {
        if (row.size() < 2)
            continue;
        ++counted;
        ++lengths[row.size()];
        for (const GridCell& cell : row) {
            if (cell.kind == CellKind::Number)
                sum += 1.0;
            else if (cell.kind == CellKind::Heading)
                sum += limits.headingWorth;
            else if (cell.kind == CellKind::Text && hasFigure(cell.text))
                sum -= limits.dirtyCost;
        }
    }
    if (counted == 0)
        return 0.0;
    const double even =
        static_cast<double>(lengths[usualOf(lengths)]) / static_cast<double>(counted);
    return sum * (0.5 + 0.5 * even);
}

Grid weighed(std::vector<GridRow> rows, CellReader& reader)
{
    addCorner(rows, reader);
    const double worth = worthOf(rows, reader.table().limits);
    return {std::move(rows), worth, {}};
}

} // namespace

Grid gridOf(const std::vector<PlainLine>& lines, CellReader& reader)
{
    Grid best{cutNowhere(lines, reader), 0.0, {}};
    eachCut(lines, reader, [&](std::vector<GridRow> rows) {
        if (Grid grid = weighed(std::move(rows), reader); grid.worth > best.worth)
            best = std::move(grid);
    });
    pairsApart(best.rows, reader.table().limits.pairsShare);
    return best;
}

double worthOf(const TextRows& texts, CellReader& reader)
{
    std::vector<GridRow> rows;
    for (const auto& cells : texts) {
        GridRow& row = rows.emplace_back();
        for (const std::string& cell : cells)
            row.push_back(reader.cell(plainSigns(cell), 0));
    }
    return weighed(std::move(rows), reader).worth;
}

} // namespace tripoise::table
