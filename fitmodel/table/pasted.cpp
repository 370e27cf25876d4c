// SPDX-License-Identifier: MIT
#include "table/pasted.h"

#include "table/plain.h"
#include "table/read_table.h"

#include <algorithm>

namespace tripoise::table {
namespace {

Problem refused(ProblemCode code)
{
    return {code, {}, {}, {}, {}, {}, {}};
}

Problem tooMany(std::size_t lines)
{
    return {ProblemCode::TooMany,
            {},
            std::to_string(lines),
            {},
            static_cast<double>(mostTableLines),
            {},
            {}};
}

Problem tooManyLines(std::string_view text)
{
    const auto ends = std::count(text.begin(), text.end(), '\n');
    return tooMany(static_cast<std::size_t>(ends + (text.ends_with('\n') ? 0 : 1)));
}

std::variant<Grid, Problem> gridOfPage(std::string_view text, const HeadingTable& table)
{
    auto read = tablesOfPage(text);
    if (auto* problem = std::get_if<Problem>(&read))
        return std::move(*problem);
    const auto& tables = std::get<std::vector<PageTable>>(read);
    if (tables.empty())
        return refused(ProblemCode::Markup);
    Grid grid = gridOf(tables, table);
    if (grid.rows.size() > mostTableLines)
        return tooMany(grid.rows.size());
    return grid;
}

} // namespace

std::variant<Grid, Problem> gridOfBytes(std::string_view bytes, const HeadingTable& table)
{
    const bool page = looksLikeMarkup(bytes.substr(0, mostMarkupBytes));
    const std::size_t most = page ? mostMarkupBytes : mostTableBytes;
    if (bytes.size() > most) {
        const auto ends = static_cast<std::size_t>(std::count(bytes.begin(), bytes.end(), '\n'));
        if (!page && ends > mostTableLines)
            return tooMany(ends + (bytes.ends_with('\n') ? 0 : 1));
        return Problem{ProblemCode::TooLarge,
                       {},
                       std::to_string(bytes.size()),
                       {},
                       static_cast<double>(most),
                       "bytes",
                       {}};
    }
    const auto text = decoded(bytes);
    if (!text)
        return refused(ProblemCode::NotText);
    if (page || looksLikeMarkup(*text))
        return gridOfPage(*text, table);
    const auto lines = linesOf(*text, mostTableLines);
    if (lines.size() > mostTableLines)
        return tooManyLines(*text);
    std::vector<PlainLine> plain;
    for (std::size_t i = 0; i < lines.size(); ++i)
        plain.push_back({i + 1, plainSigns(lines[i])});
    return gridOf(plain, table);
}

} // namespace tripoise::table
