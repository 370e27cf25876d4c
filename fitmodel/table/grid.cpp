// SPDX-License-Identifier: MIT
#include "table/grid.h"

#include "table/cuts.h"
#include "table/markup.h"
#include "table/mended_rows.h"
#include "table/read_table.h"
#include "text/encoding.h"
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
    return {std::move(rows), worth};
}

Grid gridOfLines(const std::vector<PlainLine>& lines, CellReader& reader)
{
    Grid best{cutNowhere(lines, reader)};
    eachCut(lines, reader, [&](std::vector<GridRow> rows) {
        if (Grid grid = weighed(std::move(rows), reader); grid.worth > best.worth)
            best = std::move(grid);
    });
    pairsApart(best.rows, reader.table().limits.pairsShare);
    return best;
}

/// The page's table with the most in it, with the text beside it.
Grid gridOfTables(const std::vector<PageTable>& tables, CellReader& reader)
{
    Grid best;
    const PageTable* chosen = nullptr;
    std::vector<double> worths;
    for (const PageTable& one : tables) {
        std::vector<GridRow> rows;
        for (const auto& cells : one.rows) {
            GridRow row;
            for (const std::string& cell : cells)
                row.push_back(reader.cell(plainSigns(cell), 0));
            if (!isBlank(row))
                rows.push_back(std::move(row));
        }
        Grid grid = weighed(std::move(rows), reader);
        worths.push_back(grid.worth);
        if (chosen && grid.worth <= best.worth)
            continue;
        best = std::move(grid);
        chosen = &one;
    }
    const double nearly = reader.table().limits.otherTableShare * best.worth;
    best.another =
        std::count_if(worths.begin(), worths.end(), [&](double worth) { return worth > nearly; })
        > 1;
    pairsApart(best.rows, reader.table().limits.pairsShare);
    std::vector<GridRow> rows;
    const auto addText = [&](const std::vector<std::string>& lines) {
        for (const std::string& line : lines)
            if (GridRow row{reader.cell(plainSigns(line), 0)}; !isBlank(row))
                rows.push_back(std::move(row));
    };
    addText(chosen->above);
    rows.insert(rows.end(), std::make_move_iterator(best.rows.begin()),
                std::make_move_iterator(best.rows.end()));
    addText(chosen->below);
    for (std::size_t i = 0; i < rows.size(); ++i)
        for (GridCell& cell : rows[i])
            cell.line = i + 1;
    best.rows = std::move(rows);
    return best;
}

Problem refused(ProblemCode code, std::size_t value = 0, std::size_t most = 0,
                std::string unit = {})
{
    Problem problem;
    problem.code = code;
    problem.unit = std::move(unit);
    if (most > 0) {
        problem.value = std::to_string(value);
        problem.high = static_cast<double>(most);
    }
    return problem;
}

std::size_t linesIn(std::string_view text)
{
    return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')
                                    + (text.ends_with('\n') ? 0 : 1));
}

std::variant<Grid, Problem> gridOfPage(std::string_view text, CellReader& reader)
{
    auto read = tablesOfPage(text);
    if (auto* problem = std::get_if<Problem>(&read))
        return std::move(*problem);
    const auto& tables = std::get<std::vector<PageTable>>(read);
    if (tables.empty())
        return refused(ProblemCode::Markup);
    Grid grid = gridOfTables(tables, reader);
    if (grid.rows.size() > mostTableLines)
        return refused(ProblemCode::TooMany, grid.rows.size(), mostTableLines);
    return grid;
}

} // namespace

std::variant<Grid, Problem> gridOf(std::string_view bytes, CellReader& reader)
{
    const bool page = looksLikeMarkup(bytes.substr(0, mostMarkupBytes));
    const std::size_t most = page ? mostMarkupBytes : mostTableBytes;
    if (bytes.size() > most && !page && linesIn(bytes) > mostTableLines)
        return refused(ProblemCode::TooMany, linesIn(bytes), mostTableLines);
    if (bytes.size() > most)
        return refused(ProblemCode::TooLarge, bytes.size(), most, "bytes");
    const auto text = decoded(bytes);
    if (!text)
        return refused(ProblemCode::NotText);
    if (page || looksLikeMarkup(*text))
        return gridOfPage(*text, reader);
    const auto lines = linesOf(*text, mostTableLines);
    if (lines.size() > mostTableLines)
        return refused(ProblemCode::TooMany, linesIn(*text), mostTableLines);
    std::vector<PlainLine> plain;
    for (std::size_t i = 0; i < lines.size(); ++i)
        plain.push_back({i + 1, plainSigns(lines[i])});
    return gridOfLines(plain, reader);
}

std::string textOf(const Grid& grid)
{
    std::string text;
    for (const GridRow& row : grid.rows) {
        for (std::size_t i = 0; i < row.size(); ++i)
            text += (i ? "\t" : "") + row[i].text;
        text += '\n';
    }
    return text;
}

} // namespace tripoise::table
