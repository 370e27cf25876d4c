// SPDX-License-Identifier: MIT
//
// The tables of a page's source (HTML), as rows of cells.
//
// Tables, rows and cells are kept, merged cells repeated in every place they cover, all else is
// text. Tags may be missing or crossed, as they are on pages. One pass over `page_source.h`; how
// deep tables lie in each other, how many cells there are and how much text is repeated are
// limited, so that memory is.
#pragma once

#include "base/problem.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tripoise::table {

inline constexpr std::size_t mostMarkupBytes = 8'000'000;
inline constexpr std::size_t mostMarkupCells = 20'000;
inline constexpr std::size_t mostTablesNested = 20;
inline constexpr std::size_t mostAbove = 4;  ///< lines of text
inline constexpr std::size_t mostBelow = 12; ///< of the same

using TextRows = std::vector<std::vector<std::string>>;

struct PageTable {
    TextRows rows;                  ///< of one blank between words, UTF-8
    std::vector<std::string> above; ///< the title and the last lines of text before it
    std::vector<std::string> below; ///< the first behind it
};

[[nodiscard]] bool looksLikeMarkup(std::string_view text);

/// In the order in which they begin; none where there is no table.
[[nodiscard]] std::variant<std::vector<PageTable>, Problem> tablesOfPage(std::string_view page);

} // namespace tripoise::table
