// SPDX-License-Identifier: MIT
#include "table/titles.h"

#include "table/legend.h"

namespace tripoise::table {
namespace {

/// The foot or head of a page copied along: its number apart from other words, or an address.
bool isOfAPage(const std::string& text, std::size_t longestNumber)
{
    const std::size_t figures = text.find_first_not_of("0123456789");
    const bool number = figures > 0 && (figures == std::string::npos || figures <= longestNumber);
    return (number
            && (figures == std::string::npos || text.compare(figures, 2, "  ") == 0
                || text[figures] == '\t'))
           || text.find("www.") != std::string::npos || text.find("://") != std::string::npos;
}

} // namespace

bool isTitle(const GridCell& cell, const HeadingTable& table)
{
    const std::string title = titleOf(cell.text, table);
    return !cell.note && !isOfAPage(cell.text, table.limits.longestPageNumber)
           && !cell.heading->understood() && !cell.heading->onlyUnit
           && cell.text.size() <= table.limits.longestTitle && !title.empty()
           && !readHeading(title, table).onlyUnit; // "Geometry (mm)"
}

const GridCell* titleIn(const GridRow& row, const HeadingTable& table)
{
    const GridCell* last = nullptr;
    const std::size_t filled = filledIn(row);
    for (const GridCell& cell : row) {
        if (cell.text.empty())
            continue;
        if (filled == 2 && !last && !titleOf(cell.text, table).empty())
            return nullptr;
        last = &cell;
    }
    const bool title = filled > 0 && filled <= 2 && isTitle(*last, table)
                       && (filled == 1 || !isSizeName(last->text, table));
    return title ? last : nullptr;
}

std::size_t withTitle(const std::vector<GridRow>& rows, std::size_t row, const HeadingTable& table)
{
    std::size_t first = row;
    for (std::size_t r = row; r > 0; --r) {
        const GridCell* title = titleIn(rows[r - 1], table);
        if (title && !title->text.ends_with('.') && !title->text.starts_with('*')) {
            first = r - 1;
            break;
        }
        if (filledIn(rows[r - 1]) >= 2)
            break;
    }
    // What stands behind the last blank line is of this table as well.
    const auto line = [&](std::size_t r) { return rows[r].front().line; };
    std::size_t more = first;
    while (more > 0 && filledIn(rows[more - 1]) < 2 && line(more - 1) + 1 == line(more))
        --more;
    return more > 0 && line(more - 1) + 1 < line(more) ? more : first;
}

} // namespace tripoise::table
