// SPDX-License-Identifier: MIT
#include "table/paste.h"

#include "table/blocks.h"
#include "table/grid.h"
#include "table/read_table.h"
#include "text/encoding.h"
#include "text/plain.h"

#include <algorithm>

namespace tripoise::table {
namespace {

struct Weighed {
    const PageTable* table = nullptr;
    double worth = 0.0;
    bool taken = false;
};

bool hasGeometry(const PageTable& table, CellReader& reader)
{
    for (const auto& row : table.rows)
        for (const std::string& cell : row)
            if (isOfTheFrame(reader.cell(plainSigns(cell), 0).heading->column))
                return true;
    return false;
}

/// The page's tables that have headings of a frame's geometry, in their order, with the text beside
/// them and a blank line between. The one with the most in it is always among them.
PastedLines linesOfTables(const std::vector<PageTable>& tables, CellReader& reader)
{
    const ReadingLimits& limits = reader.table().limits;
    std::vector<Weighed> all;
    for (const PageTable& one : tables)
        all.push_back({&one, worthOf(one.rows, reader), hasGeometry(one, reader)});
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
    auto& tables = std::get<std::vector<PageTable>>(read);
    const auto isOne = [&](const PageTable& one) { return hasGeometry(one, reader); };
    if (std::none_of(tables.begin(), tables.end(), isOne)) {
        auto blocks = blockTablesOfPage(text, reader);
        auto* found = std::get_if<std::vector<PageTable>>(&blocks);
        if (!found)
            return std::get<Problem>(std::move(blocks));
        if (std::any_of(found->begin(), found->end(), isOne))
            tables = std::move(*found);
    }
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

} // namespace tripoise::table
