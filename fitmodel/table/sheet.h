// SPDX-License-Identifier: MIT
//
// A part of a grid, turned so that headings stand at the start of each line.
#pragma once

#include "table/grid.h"

#include <algorithm>
#include <optional>

namespace tripoise::table {

struct CellPlace {
    std::size_t row = 0;
    std::size_t cell = 0;

    bool operator==(const CellPlace&) const = default;
};

[[nodiscard]] inline const GridCell& noCell()
{
    static const HeadingRead nothing;
    static const GridCell cell{{}, 0, CellKind::Blank, &nothing};
    return cell;
}

[[nodiscard]] inline const GridCell& cellAt(const Grid& grid, const CellPlace& place)
{
    return grid.rows[place.row][place.cell];
}

class Sheet {
public:
    Sheet(const Grid& grid, std::size_t from, std::size_t to, bool turned)
        : m_grid(grid), m_from(from), m_to(to), m_turned(turned)
    {
        for (std::size_t r = from; r < to; ++r)
            m_widest = std::max(m_widest, grid.rows[r].size());
    }

    [[nodiscard]] std::size_t lines() const { return m_turned ? m_widest : m_to - m_from; }
    [[nodiscard]] std::size_t length() const { return m_turned ? m_to - m_from : m_widest; }
    [[nodiscard]] CellPlace place(std::size_t line, std::size_t at) const
    {
        return m_turned ? CellPlace{m_from + at, line} : CellPlace{m_from + line, at};
    }
    /// Blank where the row ends before.
    [[nodiscard]] const GridCell& cell(std::size_t line, std::size_t at) const
    {
        const auto p = existing(line, at);
        return p ? m_grid.rows[p->row][p->cell] : noCell();
    }
    [[nodiscard]] const std::string& text(std::size_t line, std::size_t at) const
    {
        return cell(line, at).text;
    }
    [[nodiscard]] std::optional<CellPlace> existing(std::size_t line, std::size_t at) const
    {
        const CellPlace p = place(line, at);
        return p.cell < m_grid.rows[p.row].size() ? std::optional(p) : std::nullopt;
    }

private:
    const Grid& m_grid;
    std::size_t m_from;
    std::size_t m_to;
    bool m_turned;
    std::size_t m_widest = 0;
};

} // namespace tripoise::table
