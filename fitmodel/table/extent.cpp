// SPDX-License-Identifier: MIT
#include "table/extent.h"

#include "table/next_table.h"
#include "table/titles.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

class Finder {
public:
    Finder(Grid& grid, const HeadingTable& table) : m_rows(grid.rows), m_table(table)
    {
        for (GridRow& row : m_rows)
            findNotes(row);
        findRows();
        findWay();
    }

    Extent take() { return std::move(m_result); }

private:
    /// The table reaches from its first line of two cells to its last.
    void findRows()
    {
        m_result.from = m_rows.size();
        for (std::size_t r = 0; r < m_rows.size(); ++r) {
            const bool above =
                m_result.to == 0 && (titleIn(m_rows[r], m_table) || isOfAPage(m_rows[r], m_table));
            if (filledIn(m_rows[r]) < 2 || isNote(m_rows[r]) || above)
                continue;
            m_result.from = std::min(m_result.from, r);
            m_result.to = r + 1;
        }
        m_result.from = std::min(m_result.from, m_result.to);
    }

    /// Cells that say what the letters are, cut as those of the table.
    static bool isNote(const GridRow& row)
    {
        return std::any_of(row.begin(), row.end(), [](const GridCell& cell) { return cell.note; });
    }

    /// Lines outside of the cells may say what the letters are and in which unit all is.
    void findNotes(GridRow& row)
    {
        const bool alone = filledIn(row) == 1;
        // A legend with commas may have been cut where the table was.
        std::string whole;
        for (const GridCell& cell : row)
            whole += (whole.empty() ? "" : ", ") + cell.text;
        // "A. Stack" in a cell of its own is a heading.
        const bool legend = countOf(CellKind::Number, row) == 0
                            && (alone || whole.find_first_of("=:") != std::string::npos)
                            && m_result.legend.take(whole, m_table);
        const bool unit = alone && takeUnit(whole);
        if (!legend && !unit)
            return;
        for (GridCell& cell : row) {
            cell.note = !cell.text.empty();
            cell.heading = noCell().heading; // "B = stack" heads nothing
        }
    }

    /// "All dimensions in mm"
    bool takeUnit(std::string_view text)
    {
        if (text.find_first_of("0123456789") != std::string_view::npos)
            return false;
        const Unit unit = statedIn(text, m_table);
        if (isLength(unit))
            m_result.unit = unit;
        return unit != Unit::None;
    }

    [[nodiscard]] bool isHeading(std::size_t r, std::size_t c) const
    {
        return m_result.isHeading(m_rows[r][c]);
    }

    [[nodiscard]] std::size_t headingsInRow(std::size_t r) const
    {
        return static_cast<std::size_t>(
            std::count_if(m_rows[r].begin(), m_rows[r].end(),
                          [&](const GridCell& cell) { return m_result.isHeading(cell); }));
    }

    void findWay()
    {
        std::size_t most = 0;
        std::map<std::size_t, std::size_t> byCell;
        for (std::size_t r = m_result.from; r < m_result.to; ++r) {
            most = std::max(most, headingsInRow(r));
            for (std::size_t c = 0; c < m_rows[r].size(); ++c)
                byCell[c] += isHeading(r, c) ? 1 : 0;
        }
        const std::size_t mostDown = byCell[usualOf(byCell)];
        m_result.rowsRead = m_rows.size();
        m_result.anyHeading = most > 0;
        if (most == 0) {
            m_result.sizesDown = lettersAcross();
            return;
        }
        m_result.sizesDown = most > mostDown || (most == mostDown && numbersBelow());
        const auto next = nextTable(m_rows, m_result, m_table);
        if (!next)
            return;
        m_result.rowsRead = m_result.to = *next;
        while (filledIn(m_rows[m_result.to - 1]) < 2)
            --m_result.to;
    }

    /// No heading is known: "A, B, C" in one line are headings all the same, for a person to name.
    [[nodiscard]] bool lettersAcross() const
    {
        for (std::size_t r = m_result.from; r < m_result.to; ++r)
            for (std::size_t c = 0; c + 1 < m_rows[r].size(); ++c)
                if (m_rows[r][c].heading->letter == "a" && m_rows[r][c + 1].heading->letter == "b")
                    return true;
        return false;
    }

    /// One heading alone: whether its numbers stand below it.
    [[nodiscard]] bool numbersBelow() const
    {
        for (std::size_t r = m_result.from; r < m_result.to; ++r)
            for (std::size_t c = 0; c < m_rows[r].size(); ++c)
                if (isHeading(r, c))
                    return r + 1 < m_result.to && c < m_rows[r + 1].size()
                           && m_rows[r + 1][c].kind == CellKind::Number;
        return false;
    }

    std::vector<GridRow>& m_rows;
    const HeadingTable& m_table;
    Extent m_result;
};

} // namespace

std::optional<Column> Extent::columnOf(const GridCell& cell) const
{
    const HeadingRead* named =
        cell.heading->letter.empty() ? nullptr : legend.named(cell.heading->letter);
    return cell.heading->column || !named ? cell.heading->column : named->column;
}

Extent extentOf(Grid& grid, const HeadingTable& table)
{
    return Finder(grid, table).take();
}

} // namespace tripoise::table
