// SPDX-License-Identifier: MIT
#include "table/legend.h"

#include "text/plain.h"

#include <algorithm>

namespace tripoise::table {

Unit statedIn(std::string_view text, const HeadingTable& table)
{
    const std::vector<std::string> words = wordsOf(text);
    if (words.size() > 2 && words.back() == "in" && words[words.size() - 2] == "in")
        return Unit::Inch; // "all dimensions in in"
    for (const std::string& word : words) {
        const Unit unit = unitNamed(word, table.numbers);
        if ((isLength(unit) || unit == Unit::Degree) && word != "in")
            return unit;
    }
    return Unit::None;
}

std::string titleOf(std::string_view text, const HeadingTable& table)
{
    const auto isTitleWord = [&](std::string_view word) {
        const auto words = wordsOf(word);
        return std::all_of(words.begin(), words.end(), [&](const std::string& one) {
            return table.titleWords.contains(one) || table.fillers.contains(one);
        });
    };
    // From both ends, so that a name keeps what is inside it.
    for (text = trimmed(text); !text.empty();) {
        const std::size_t end = std::min(text.find(' '), text.size());
        const std::size_t start = text.rfind(' ') + 1; // 0 where there is none
        if (isTitleWord(text.substr(0, end)))
            text = trimmed(text.substr(end));
        else if (isTitleWord(text.substr(start)))
            text = trimmed(text.substr(0, start));
        else
            break;
    }
    return std::string(text);
}

bool Legend::take(std::string_view text, const HeadingTable& table)
{
    std::string parted(text);
    bool bullets = false;
    for (const std::string_view bullet : {"•", "·"})
        for (std::size_t at = 0; (at = parted.find(bullet, at)) != std::string::npos;
             bullets = true)
            parted.replace(at, bullet.size(), ";");
    // "A = stack B = reach"
    for (std::size_t at = 0; (at = parted.find('=', at + 1)) != std::string::npos;) {
        const std::size_t end = parted.find_last_not_of(' ', at - 1);
        const std::size_t blank = end == std::string::npos ? end : parted.rfind(' ', end);
        if (blank != std::string::npos && blank + 2 >= end)
            parted[blank] = ';';
    }
    text = parted;
    // "A = angle, head tube, B = stack": a piece without a letter belongs to the one before.
    const std::string_view signs = bullets ? "=:)-. " : "=:)-."; // "A Stack • B Reach"
    const auto isEntry = [&](std::string_view piece) {
        const std::size_t sign = piece.find_first_of(signs);
        return sign != std::string_view::npos && trimmed(piece.substr(0, sign)).size() <= 2;
    };
    bool any = false;
    std::size_t start = 0;
    while (start < text.size()) {
        std::size_t end = start;
        do {
            end = std::min(text.find_first_of(",;|", end + 1), text.size());
        } while (end < text.size() && !isEntry(trimmed(text.substr(end + 1))));
        any = takeOne(trimmed(text.substr(start, end - start)), signs, table) || any;
        start = end + 1;
    }
    return any;
}

const HeadingRead* Legend::named(const std::string& letter) const
{
    const auto found = m_named.find(letter);
    return found == m_named.end() ? nullptr : &found->second;
}

bool Legend::takeOne(std::string_view text, std::string_view signs, const HeadingTable& table)
{
    const std::size_t sign = text.find_first_of(signs);
    if (sign == std::string_view::npos || sign + 1 >= text.size())
        return false;
    const std::string_view before = trimmed(text.substr(0, sign));
    std::vector<std::string> letter = wordsOf(before);
    if (letter.empty())
        letter.push_back(readHeading(before, table).letter); // Greek
    if (letter.size() != 1 || letter.front().empty() || letter.front().size() > 2)
        return false;
    const HeadingRead heading = readHeading(trimmed(text.substr(sign + 1)), table);
    if (!heading.column)
        return false;
    m_named.try_emplace(letter.front(), heading);
    return true;
}

} // namespace tripoise::table
