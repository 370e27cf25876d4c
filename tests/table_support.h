// SPDX-License-Identifier: MIT
//
// The constants of reading and closing tables, as shipped.
#pragma once

#include "support.h"

namespace tripoise::test {

inline const ClosureTable& closureTable()
{
    static const ClosureTable loaded = [] {
        auto read = readClosureTable(textOf(QStringLiteral(TRIPOISE_ASSETS "/closure.json")),
                                     tables().frame);
        if (auto* problems = std::get_if<Problems>(&read))
            throw std::runtime_error("closure table: " + problems->front().path);
        return std::get<ClosureTable>(std::move(read));
    }();
    return loaded;
}

inline const NumberWords& numberWords()
{
    static const NumberWords loaded = [] {
        auto read = readNumberWords(textOf(QStringLiteral(TRIPOISE_ASSETS "/number_words.json")));
        if (auto* problems = std::get_if<Problems>(&read))
            throw std::runtime_error("number words: " + problems->front().path);
        return std::get<NumberWords>(std::move(read));
    }();
    return loaded;
}

inline const HeadingTable& headingTable()
{
    static const HeadingTable loaded = [] {
        auto read = readHeadingTable(textOf(QStringLiteral(TRIPOISE_ASSETS "/headings.json")),
                                     numberWords());
        if (auto* problems = std::get_if<Problems>(&read))
            throw std::runtime_error("headings: " + problems->front().path + ' '
                                     + problems->front().value);
        return std::get<HeadingTable>(std::move(read));
    }();
    return loaded;
}

} // namespace tripoise::test
