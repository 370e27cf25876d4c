// SPDX-License-Identifier: MIT
#include "table/titles.h"

#include "table/legend.h"
#include "text/plain.h"

#include <algorithm>
#include <utility>

namespace tripoise::table {
namespace {

/// The foot or head of a page copied along: its number apart from other words, or an address.
bool isFootOfAPage(const std::string& text, std::size_t longestNumber)
{
    const std::size_t figures = text.find_first_not_of("0123456789");
    const bool number = figures > 0 && (figures == std::string::npos || figures <= longestNumber);
    return (number
            && (figures == std::string::npos || text.compare(figures, 2, "  ") == 0
                || text[figures] == '\t'))
           || text.find("www.") != std::string::npos || text.find("://") != std::string::npos;
}

/// "Home / Bikes / Weir": where on its site a page is.
bool isPath(std::string_view text, const HeadingTable& table)
{
    for (const std::string_view sign : {" / ", " > ", "›", "»"})
        if (const std::size_t at = text.find(sign);
            at != std::string_view::npos && isPageTitle(text.substr(0, at), table))
            return true;
    return false;
}

/// "Colour: matt black", but no setting.
bool isLabelled(std::string_view text, const HeadingTable& table)
{
    const std::size_t colon = text.find(": ");
    return colon != std::string_view::npos && !titleOf(text.substr(0, colon), table).empty()
           && !settingIn(text, table);
}

/// The end of a sentence, or what leads to one.
bool isProse(std::string_view text)
{
    return text.ends_with('.') || text.ends_with('?') || text.ends_with('!') || text.ends_with(':');
}

} // namespace

bool isPageTitle(std::string_view text, const HeadingTable& table)
{
    text = trimmed(text);
    if (const std::size_t bracket = text.rfind('(');
        text.ends_with(')') && bracket > 0
        && text.find_first_not_of("0123456789", bracket + 1) + 1 == text.size())
        text = text.substr(0, bracket);
    const std::vector<std::string> words = wordsOf(text);
    const auto isOne = [&](const std::string& word) { return table.pageWords.contains(word); };
    return std::any_of(words.begin(), words.end(), isOne)
           && std::all_of(words.begin(), words.end(), [&](const std::string& word) {
                  return isOne(word) || table.titleWords.contains(word);
              });
}

std::optional<Setting> settingIn(std::string_view text, const HeadingTable& table)
{
    std::optional<Setting> found;
    for (const std::string& word : wordsOf(text)) {
        const auto setting = table.settings.find(word);
        if (setting == table.settings.end()) {
            if (!table.settingWords.contains(word) && !table.titleWords.contains(word)
                && !table.fillers.contains(word))
                return std::nullopt;
        } else if (std::exchange(found, Setting{setting->second, word})) {
            return std::nullopt;
        }
    }
    return found;
}

bool isOfAPage(const GridRow& row, const HeadingTable& table)
{
    return std::all_of(row.begin(), row.end(), [&](const GridCell& cell) {
        return cell.text.empty()
               || (!cell.heading->understood() && !wordsOf(cell.text).empty()
                   && (isPageTitle(cell.text, table) || titleOf(cell.text, table).empty()));
    });
}

bool isTitle(const GridCell& cell, const HeadingTable& table)
{
    const std::string title = titleOf(cell.text, table);
    return !cell.note && cell.kind != CellKind::Number
           && !isFootOfAPage(cell.text, table.limits.longestPageNumber)
           && !isPageTitle(cell.text, table) && !isProse(cell.text) && !isPath(cell.text, table)
           && !isLabelled(cell.text, table) && !cell.heading->understood()
           && !cell.heading->onlyUnit && cell.text.size() <= table.limits.longestTitle
           && !title.empty() && !readHeading(title, table).onlyUnit; // "Geometry (mm)"
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
        if (namesOneSize(rows[r - 1], table)
            || (title && !title->text.ends_with('.') && !title->text.starts_with('*'))) {
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
