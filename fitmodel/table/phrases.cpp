// SPDX-License-Identifier: MIT
#include "table/phrases.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

/// "Extra", "X", "2X": of the size behind it.
bool isOfNext(const std::string& word)
{
    const std::string small = smallLetters(word);
    return small == "extra"
           || (small.ends_with('x') && small.find_first_not_of("0123456789x") == std::string::npos);
}

/// "S", "(50", "cm)": what stands in brackets belongs to the word before, "Extra" to the next.
Cells namesJoined(const Cells& tokens)
{
    Cells cells;
    bool open = false;
    for (const std::string& token : tokens) {
        open = open || token.starts_with('(');
        if (!cells.empty() && (open || isOfNext(cells.back())))
            cells.back() += ' ' + token;
        else
            cells.push_back(token);
        open = open && !token.ends_with(')');
    }
    return cells;
}

} // namespace

Phrases::Phrases(const std::vector<PlainLine>& lines, CellReader& reader) : m_reader(reader)
{
    std::map<std::size_t, std::size_t> counts;
    for (const PlainLine& line : lines) {
        const Cells tokens = tokensOf(line.text);
        const std::size_t from = valuesFrom(tokens);
        if (from > 0 && from < tokens.size())
            ++counts[valueCells(tokens, from).size()];
    }
    if (counts[usualOf(counts)] >= 2)
        m_count = usualOf(counts);
}

Cells Phrases::operator()(const std::string& text)
{
    const Cells tokens = tokensOf(text);
    const std::size_t from = valuesFrom(tokens);
    Cells values = valueCells(tokens, from);
    // A line of sizes: their names are words as well.
    const Cells words = namesJoined(tokens);
    const std::size_t names = words.size() - std::min(m_count, words.size());
    const auto behind = words.begin() + static_cast<std::ptrdiff_t>(names);
    const bool ofSizes =
        words.size() >= m_count && std::all_of(behind, words.end(), [&](const auto& word) {
            return isSizeName(word, m_reader.table());
        });
    const bool headed = is(CellKind::Heading, phrase(tokens, from));
    const bool title = values.size() == 1 && m_count > 1 && !headed;
    const bool otherCount = values.size() != m_count && !headed;
    Cells cells;
    if (from > 0 && !values.empty() && !title && !(ofSizes && otherCount)) {
        cells.push_back(phrase(tokens, from));
    } else if (ofSizes && names <= 3) {
        cells.push_back(phrase(words, names));
        values.assign(behind, words.end());
    } else {
        return {text};
    }
    cells.insert(cells.end(), values.begin(), values.end());
    return cells;
}

std::size_t Phrases::valuesFrom(const Cells& tokens)
{
    std::size_t from = tokens.size();
    while (
        from > 0
        && (is(CellKind::Unit, tokens[from - 1]) || m_reader.cell(tokens[from - 1], 0).isValue()))
        --from;
    while (from < tokens.size() && is(CellKind::Unit, tokens[from]))
        ++from; // of the phrase
    return from;
}

Cells Phrases::valueCells(const Cells& tokens, std::size_t from)
{
    Cells cells;
    for (std::size_t i = from; i < tokens.size(); ++i)
        if (is(CellKind::Unit, tokens[i]) && !cells.empty())
            cells.back() += ' ' + tokens[i];
        else
            cells.push_back(tokens[i]);
    return cells;
}

} // namespace tripoise::table
