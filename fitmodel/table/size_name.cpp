// SPDX-License-Identifier: MIT
#include "table/size_name.h"

#include "table/legend.h"
#include "table/plain.h"

namespace tripoise::table {

bool isSizeName(std::string_view text, const HeadingTable& table)
{
    constexpr std::size_t longest = 24;
    if (text.size() > longest || text.find("°") != std::string_view::npos)
        return false;
    const auto words = wordsOf(text);
    constexpr std::size_t mostFigures = 3;
    bool named = false;
    for (const std::string& word : words) {
        const bool figures = word.find_first_not_of("0123456789") == std::string::npos;
        const bool unit = isLength(unitNamed(word, table.numbers));
        const bool letter = word.find_first_not_of("0123456789xsml") == std::string::npos
                            && word.find_first_of("sml") + 1 == word.size();
        const bool more = word.ends_with('x') // of "2X-Large"
                          && word.find_first_not_of("0123456789x") == std::string::npos;
        if (!letter && !more && !table.sizeWords.contains(word)
            && !(figures && word.size() <= mostFigures) && !unit)
            return false;
        named = named || (!unit && !more);
    }
    return named;
}

} // namespace tripoise::table
