// SPDX-License-Identifier: MIT
#include "table/extent.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

std::size_t filled(const GridRow& row)
{
    return static_cast<std::size_t>(std::count_if(row.cells.begin(), row.cells.end(),
                                                  [](const auto& c) { return !c.empty(); }));
}

class Finder {
public:
    Finder(const Grid& grid, const HeadingTable& table) : m_grid(grid), m_table(table)
    {
        for (const GridRow& row : grid.rows) {
            m_result.reads.emplace_back();
            for (const std::string& cell : row.cells)
                m_result.reads.back().push_back(readHeading(cell, table));
        }
        findRows();
        findNotes();
        findWay();
    }

    Extent take() { return std::move(m_result); }

private:
    /// The table reaches from its first line of two cells to its last.
    void findRows()
    {
        m_result.from = m_grid.rows.size();
        for (std::size_t r = 0; r < m_grid.rows.size(); ++r) {
            if (filled(m_grid.rows[r]) < 2)
                continue;
            m_result.from = std::min(m_result.from, r);
            m_result.to = r + 1;
        }
        m_result.from = std::min(m_result.from, m_result.to);
    }

    /// Lines outside of the cells may say what the letters are and in which unit all is.
    void findNotes()
    {
        for (std::size_t r = 0; r < m_grid.rows.size(); ++r) {
            const GridRow& row = m_grid.rows[r];
            const auto full = filled(row);
            // A legend with commas may have been cut where the table was.
            std::string whole;
            for (const std::string& cell : row.cells)
                whole += (whole.empty() ? "" : ", ") + cell;
            const bool hasNumber =
                std::any_of(row.cells.begin(), row.cells.end(), [&](const std::string& cell) {
                    return kindOf(cell, m_table) == CellKind::Number;
                });
            // "A. Stack" in a cell of its own is a heading.
            const bool legend = !hasNumber
                                && (full == 1 || whole.find_first_of("=:") != std::string::npos)
                                && m_result.legend.take(whole, m_table);
            const bool unit = full == 1 && takeUnit(whole);
            if (!legend && !unit)
                continue;
            for (std::size_t c = 0; c < row.cells.size(); ++c) {
                if (!row.cells[c].empty())
                    m_result.notes.push_back({r, c});
                m_result.reads[r][c] = {}; // "B = stack" heads nothing
            }
        }
    }

    /// "All dimensions in mm"
    bool takeUnit(std::string_view text)
    {
        if (text.find_first_of("0123456789") != std::string_view::npos)
            return false;
        const PrintUnit unit = statedIn(text, m_table);
        if (isLength(unit))
            m_result.unit = unit;
        return unit != PrintUnit::None;
    }

    [[nodiscard]] std::size_t headingsInRow(std::size_t r) const
    {
        return static_cast<std::size_t>(
            std::count_if(m_result.reads[r].begin(), m_result.reads[r].end(),
                          [&](const HeadingRead& heading) { return m_result.isHeading(heading); }));
    }

    void findWay()
    {
        std::size_t most = 0;
        std::map<std::size_t, std::size_t> byCell;
        for (std::size_t r = m_result.from; r < m_result.to; ++r) {
            most = std::max(most, headingsInRow(r));
            for (std::size_t c = 0; c < m_result.reads[r].size(); ++c)
                byCell[c] += m_result.isHeading(m_result.reads[r][c]) ? 1 : 0;
        }
        std::size_t mostDown = 0;
        for (const auto& [cell, count] : byCell)
            mostDown = std::max(mostDown, count);
        m_result.rowsRead = m_grid.rows.size();
        m_result.anyHeading = most > 0;
        if (most == 0) {
            m_result.sizesDown = lettersAcross();
            return;
        }
        m_result.sizesDown = most > mostDown || (most == mostDown && numbersBelow());
        if (m_result.sizesDown)
            cutSecondAcross();
        else
            cutSecondDown();
    }

    /// No heading is known: "A, B, C" in one line are headings all the same, for a person to name.
    [[nodiscard]] bool lettersAcross() const
    {
        for (std::size_t r = m_result.from; r < m_result.to; ++r)
            for (std::size_t c = 0; c + 1 < m_result.reads[r].size(); ++c)
                if (m_result.reads[r][c].letter == "a" && m_result.reads[r][c + 1].letter == "b")
                    return true;
        return false;
    }

    /// One heading alone: whether its numbers stand below it.
    [[nodiscard]] bool numbersBelow() const
    {
        for (std::size_t r = m_result.from; r < m_result.to; ++r)
            for (std::size_t c = 0; c < m_result.reads[r].size(); ++c)
                if (m_result.isHeading(m_result.reads[r][c]))
                    return r + 1 < m_result.to && c < m_grid.rows[r + 1].cells.size()
                           && kindOf(m_grid.rows[r + 1].cells[c], m_table) == CellKind::Number;
        return false;
    }

    void endAt(std::size_t row)
    {
        m_result.to = row;
        m_result.rowsRead = row;
        while (m_result.to > m_result.from && filled(m_grid.rows[m_result.to - 1]) < 2)
            --m_result.to;
    }

    /// Another line of headings behind numbers begins another table.
    void cutSecondAcross()
    {
        for (std::size_t r = m_result.from; r < m_result.to; ++r) {
            // Two lines of headings, one below the other, are one heading.
            if (headingsInRow(r) < 2 || !hasNumbersBefore(r))
                continue;
            std::size_t end = r;
            while (end > m_result.from && filled(m_grid.rows[end - 1]) < 2)
                --end;
            endAt(end);
            return;
        }
    }

    [[nodiscard]] bool hasNumbersBefore(std::size_t row) const
    {
        for (std::size_t r = m_result.from; r < row; ++r) {
            const auto& cells = m_grid.rows[r].cells;
            if (std::count_if(cells.begin(), cells.end(),
                              [&](const std::string& cell) {
                                  return kindOf(cell, m_table) == CellKind::Number;
                              })
                >= 2)
                return true;
        }
        return false;
    }

    /// Where headings come again, two of them or more, another table began: at its line of sizes.
    void cutSecondDown()
    {
        std::vector<std::string> seen;
        std::size_t again = 0;
        std::size_t firstAgain = 0;
        for (std::size_t r = m_result.from; r < m_result.to; ++r) {
            for (std::size_t c = 0; c < m_result.reads[r].size(); ++c) {
                if (!m_result.reads[r][c].column)
                    continue;
                const std::string& text = m_grid.rows[r].cells[c];
                if (r > 0 && c < m_grid.rows[r - 1].cells.size()
                    && m_grid.rows[r - 1].cells[c] == text)
                    continue; // merged over several rows
                if (std::find(seen.begin(), seen.end(), text) == seen.end()) {
                    seen.push_back(text);
                } else if (++again == 1) {
                    firstAgain = r;
                } else {
                    std::size_t start = firstAgain;
                    while (start > m_result.from && headingsInRow(start - 1) == 0)
                        --start;
                    endAt(start);
                    return;
                }
                break;
            }
        }
    }

    const Grid& m_grid;
    const HeadingTable& m_table;
    Extent m_result;
};

} // namespace

const HeadingRead& Extent::read(CellPlace place) const
{
    static const HeadingRead none;
    const auto& row = reads[place.row];
    return place.cell < row.size() ? row[place.cell] : none;
}

bool Extent::isHeading(const HeadingRead& heading) const
{
    return heading.column || (!heading.letter.empty() && legend.named(heading.letter));
}

Extent extentOf(const Grid& grid, const HeadingTable& table)
{
    return Finder(grid, table).take();
}

} // namespace tripoise::table
