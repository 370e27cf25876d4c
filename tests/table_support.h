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

} // namespace tripoise::test
