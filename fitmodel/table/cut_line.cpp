// SPDX-License-Identifier: MIT
#include "table/cut_line.h"

#include "table/plain.h"

#include <algorithm>

namespace tripoise::table {

Cells cutAt(std::string_view line, std::string_view sign)
{
    Cells cells;
    std::string cell;
    bool quoted = false;
    for (std::size_t i = 0; i < line.size();) {
        const bool opens = line[i] == '"' && !quoted && trimmed(cell).empty()
                           && line.find('"', i + 1) != std::string_view::npos;
        if (opens) {
            // Only a quote that ends at a separator encloses a cell; 18" does not.
            const std::size_t end = line.find('"', i + 1);
            const std::string_view after = trimmed(line.substr(end + 1));
            if (after.empty() || after.starts_with(trimmed(sign)) || after.starts_with('"')
                || line.substr(end + 1).starts_with(sign)) {
                quoted = true;
                cell.clear();
                ++i;
                continue;
            }
        }
        if (quoted && line[i] == '"') {
            if (i + 1 < line.size() && line[i + 1] == '"') {
                cell += '"';
                i += 2;
            } else {
                quoted = false;
                ++i;
            }
            continue;
        }
        if (!quoted && line.substr(i).starts_with(sign)) {
            cells.emplace_back(trimmed(cell));
            cell.clear();
            i += sign.size();
            continue;
        }
        cell += line[i++];
    }
    cells.emplace_back(trimmed(cell));
    return cells;
}

Cells cutAtBars(std::string_view line, bool outer)
{
    line = trimmed(line);
    if (outer && line.starts_with('|'))
        line.remove_prefix(1);
    if (outer && line.ends_with('|'))
        line.remove_suffix(1);
    return cutAt(line, "|");
}

bool isDrawn(std::string_view line)
{
    const std::string_view text = trimmed(line);
    return text.size() >= 3 && text.find_first_not_of("-+|=:_ \t") == std::string_view::npos
           && (text.find("--") != std::string_view::npos
               || text.find("==") != std::string_view::npos
               || text.find("__") != std::string_view::npos);
}

Cells cutAtBlanks(std::string_view line)
{
    Cells cells;
    line = trimmed(line);
    while (!line.empty()) {
        const std::size_t end = std::min(line.find("  "), line.size());
        cells.emplace_back(trimmed(line.substr(0, end)));
        line = trimmed(line.substr(end));
    }
    return cells;
}

Cells tokensOf(std::string_view line)
{
    Cells tokens;
    line = trimmed(line);
    while (!line.empty()) {
        const std::size_t end = std::min(line.find_first_of(" \t"), line.size());
        tokens.emplace_back(line.substr(0, end));
        line = trimmed(line.substr(end));
    }
    return tokens;
}

} // namespace tripoise::table
