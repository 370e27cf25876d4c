// SPDX-License-Identifier: MIT
#include "table/plain_lines.h"

#include "table/plain.h"
#include "table/read_table.h"

#include <algorithm>

namespace tripoise::table {
namespace {

bool holds(std::string_view text, std::string_view small)
{
    const auto same = [](char a, char b) {
        return (a >= 'A' && a <= 'Z' ? static_cast<char>(a - 'A' + 'a') : a) == b;
    };
    return std::search(text.begin(), text.end(), small.begin(), small.end(), same) != text.end();
}

bool looksLikeMarkup(std::string_view text)
{
    return holds(text, "<table") || holds(text, "<td") || holds(text, "<tr") || holds(text, "<html")
           || holds(text, "<div") || holds(text, "</span");
}

Problem refused(ProblemCode code)
{
    return {code, {}, {}, {}, {}, {}, {}};
}

Problem tooManyLines(std::string_view text)
{
    const auto ends = std::count(text.begin(), text.end(), '\n');
    const auto lines = ends + (text.ends_with('\n') ? 0 : 1);
    return {ProblemCode::TooMany,
            {},
            std::to_string(lines),
            {},
            static_cast<double>(mostTableLines),
            {},
            {}};
}

} // namespace

std::variant<std::vector<PlainLine>, Problem> plainLinesOf(std::string_view bytes)
{
    if (bytes.size() > mostTableBytes) {
        const auto ends = std::count(bytes.begin(), bytes.end(), '\n');
        if (static_cast<std::size_t>(ends) > mostTableLines)
            return tooManyLines(bytes);
        return Problem{ProblemCode::TooLarge,
                       {},
                       std::to_string(bytes.size()),
                       {},
                       static_cast<double>(mostTableBytes),
                       "bytes",
                       {}};
    }
    const auto text = decoded(bytes);
    if (!text)
        return refused(ProblemCode::NotText);
    if (looksLikeMarkup(*text))
        return refused(ProblemCode::Markup);
    const auto lines = linesOf(*text, mostTableLines);
    if (lines.size() > mostTableLines)
        return tooManyLines(*text);
    std::vector<PlainLine> plain;
    for (std::size_t i = 0; i < lines.size(); ++i)
        plain.push_back({i + 1, plainSigns(lines[i])});
    return plain;
}

} // namespace tripoise::table
