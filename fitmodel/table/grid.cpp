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
    return {std::move(rows), worth, {}};
}

struct Weighed {
    const PageTable* table = nullptr;
    double worth = 0.0;
    bool taken = false;
};

Weighed weighed(const PageTable& table, CellReader& reader)
{
    std::vector<GridRow> rows;
    bool geometry = false;
    for (const auto& cells : table.rows) {
        GridRow& row = rows.emplace_back();
        for (const std::string& cell : cells) {
            row.push_back(reader.cell(plainSigns(cell), 0));
            geometry = geometry || isOfTheFrame(row.back().heading->column);
        }
    }
    const double worth = weighed(std::move(rows), reader).worth;
    return {&table, worth, geometry};
}

/// The page's tables that have headings of a frame's geometry, in their order, with the text beside
/// them and a blank line between. The one with the most in it is always among them.
PastedLines linesOfTables(const std::vector<PageTable>& tables, CellReader& reader)
{
    const ReadingLimits& limits = reader.table().limits;
    std::vector<Weighed> all;
    for (const PageTable& one : tables)
        all.push_back(weighed(one, reader));
    const auto best =
        std::max_element(all.begin(), all.end(), [](const Weighed& one, const Weighed& other) {
            return one.worth < other.worth;
        });
    PastedLines result;
    std::size_t count = 1;
    std::size_t lines = best->table->rows.size();
    for (auto one = all.begin(); one != all.end(); ++one) {
        const bool wanted = one->taken && one->worth > limits.otherTableShare * best->worth;
        const std::size_t more = one->table->rows.size() + one->table->above.size() + 1;
        const bool room = count < limits.mostTables && lines + more < mostTableLines;
        result.more = result.more || (one != best && wanted && !room);
        one->taken = one == best || (wanted && room);
        count += one != best && one->taken ? 1 : 0;
        lines += one != best && one->taken ? more : 0;
    }
    const auto add = [&](const std::string& line) {
        if (trimmed(line).find_first_not_of('\t') != std::string_view::npos)
            result.lines.push_back({result.lines.size() + 1, line});
    };
    const PageTable* last = nullptr;
    for (const Weighed& one : all) {
        if (!one.taken)
            continue;
        if (const PageTable* before = std::exchange(last, one.table)) {
            for (const std::string& line : before->below)
                if (std::find(last->above.begin(), last->above.end(), line) == last->above.end())
                    add(plainSigns(line));
            result.lines.push_back({result.lines.size() + 1, {}});
        }
        for (const std::string& line : last->above)
            add(plainSigns(line));
        for (const auto& cells : last->rows) {
            std::string line;
            for (std::size_t c = 0; c < cells.size(); ++c)
                line += (c > 0 ? "\t" : "") + plainSigns(cells[c]);
            add(line);
        }
    }
    for (const std::string& line : last->below)
        add(plainSigns(line));
    return result;
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

std::variant<PastedLines, Problem> linesOfPage(std::string_view text, CellReader& reader)
{
    auto read = tablesOfPage(text);
    if (auto* problem = std::get_if<Problem>(&read))
        return std::move(*problem);
    const auto& tables = std::get<std::vector<PageTable>>(read);
    if (tables.empty())
        return refused(ProblemCode::Markup);
    PastedLines result = linesOfTables(tables, reader);
    if (result.lines.size() > mostTableLines)
        return refused(ProblemCode::TooMany, result.lines.size(), mostTableLines);
    return result;
}

} // namespace

std::variant<PastedLines, Problem> linesOfPaste(std::string_view bytes, CellReader& reader)
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
        return linesOfPage(*text, reader);
    const auto lines = linesOf(*text, mostTableLines);
    if (lines.size() > mostTableLines)
        return refused(ProblemCode::TooMany, linesIn(*text), mostTableLines);
    PastedLines result;
    for (std::size_t i = 0; i < lines.size(); ++i)
        result.lines.push_back({i + 1, plainSigns(lines[i])});
    return result;
}

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

} // namespace tripoise::table
