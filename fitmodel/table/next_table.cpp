// SPDX-License-Identifier: MIT
#include "table/next_table.h"

#include "table/titles.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace tripoise::table {
namespace {

constexpr std::size_t least = 2; // lines of numbers above, and columns that come again below

class Finder {
public:
    Finder(const std::vector<GridRow>& rows, const Extent& extent, const HeadingTable& table)
        : m_rows(rows), m_extent(extent), m_table(table)
    {
    }

    [[nodiscard]] std::optional<std::size_t> find() const
    {
        auto row = m_extent.sizesDown ? belowSizesDown() : lineBelow();
        if (!row && !m_extent.sizesDown)
            row = headingsAgain();
        if (row)
            row = withTitle(m_rows, *row, m_table);
        return row && *row > m_extent.from ? row : std::nullopt;
    }

private:
    [[nodiscard]] std::size_t headingsIn(std::size_t r) const
    {
        return static_cast<std::size_t>(
            std::count_if(m_rows[r].begin(), m_rows[r].end(),
                          [&](const GridCell& cell) { return m_extent.isHeading(cell); }));
    }
    [[nodiscard]] std::size_t numbersIn(std::size_t r) const
    {
        return countOf(CellKind::Number, m_rows[r]);
    }
    [[nodiscard]] bool isSizeLine(std::size_t r) const
    {
        return std::any_of(m_rows[r].begin(), m_rows[r].end(),
                           [](const GridCell& cell) { return cell.heading->isSize; });
    }

    /// Another line of headings behind numbers, or a heading with its numbers behind it. Two lines
    /// of headings, one below the other, are one heading.
    [[nodiscard]] std::optional<std::size_t> belowSizesDown() const
    {
        bool numbers = false;
        for (std::size_t r = m_extent.from; r < m_extent.to; ++r) {
            if (numbers && headingsIn(r) >= least) // in several lines, the sizes' own in the first
                return isSizeLine(r - 1) && numbersIn(r - 1) < least ? r - 1 : r;
            if (numbers && headingsIn(r) == 1 && m_rows[r].front().heading->column
                && numbersIn(r) >= least)
                return sizesAbove(r);
            numbers = numbers || numbersIn(r) >= least;
        }
        return std::nullopt;
    }

    /// Where sizes stand across: a line of headings; the first line of sizes behind numbers that
    /// are of none of them; a line that can name sizes, the surest first, or a title, below which
    /// columns come again.
    [[nodiscard]] std::optional<std::size_t> lineBelow() const
    {
        std::size_t lines = 0;
        bool sizes = false;
        std::vector<std::size_t> behind; // numbers enough
        for (std::size_t r = m_extent.from; r < m_extent.to; ++r) {
            const bool headings =
                headingsIn(r) > least && numbersIn(r) == 0 && !hasSizes(m_rows[r]);
            if (lines >= least && (headings || (!sizes && isSizeLine(r) && isAboveNumbers(r))))
                return r;
            // "L" is a letter of a drawing as well.
            if (lines >= least
                && (headingsIn(r) == 0
                    || (hasSizes(m_rows[r]) && !m_extent.isHeading(m_rows[r].front()))))
                behind.push_back(r);
            sizes = sizes || isSizeLine(r);
            lines += numbersIn(r) >= least ? 1 : 0;
        }
        const auto isNumbers = [&](std::size_t r) { return hasSizes(m_rows[r]); };
        const auto isNames = [&](std::size_t r) { return canNameSizes(m_rows[r]); };
        const auto isAlone = [&](std::size_t r) {
            const GridCell* title = titleIn(m_rows[r], m_table);
            return title && !settingIn(title->text, m_table);
        };
        const auto firstOf = [&](auto&& is) -> std::optional<std::size_t> {
            // Most comes again below the title of a table, less below those of its sections.
            std::optional<std::size_t> best;
            std::size_t most = least;
            for (const std::size_t r : behind) {
                const std::size_t count = is(r) && isAboveNumbers(r) ? comingAgain(r) : 0;
                best = count >= most ? r : best;
                most = std::max(most, count);
            }
            return best;
        };
        auto row = firstOf([&](std::size_t r) { return isSizeLine(r); });
        row = row ? row : firstOf(isNames);
        row = row ? row : firstOf(isNumbers);
        return row ? row : firstOf(isAlone);
    }

    /// Whether the rows of its table follow. Names of sizes may stand below their table: then
    /// titles come, or the sizes of the next.
    [[nodiscard]] bool isAboveNumbers(std::size_t row) const
    {
        if (row + 1 >= m_extent.to)
            return false;
        std::size_t next = row + 1;
        while (next + 1 < m_extent.to && filledIn(m_rows[next]) < 2)
            ++next;
        const bool ofAbove =
            next > row + 1 && filledIn(m_rows[row]) >= 2 && filledIn(m_rows[row - 1]) >= 2;
        return !ofAbove
               && (headingsIn(next) > 0
                   || (numbersIn(next) >= least && !canNameSizes(m_rows[next])));
    }

    /// How many columns are measured from a row on that were above it.
    [[nodiscard]] std::size_t comingAgain(std::size_t row) const
    {
        std::set<Column> above;
        std::set<Column> again;
        for (std::size_t r = m_extent.from; r < m_extent.to; ++r)
            for (const GridCell& cell : m_rows[r]) {
                const auto column = m_extent.columnOf(cell);
                if (!isOfTheFrame(column))
                    continue;
                if (r < row)
                    above.insert(*column);
                else if (above.contains(*column))
                    again.insert(*column);
            }
        return again.size();
    }

    /// Where headings come again, two of them or more, as they stood: at the line of sizes.
    [[nodiscard]] std::optional<std::size_t> headingsAgain() const
    {
        std::map<std::string, std::size_t> seen; // and in which row last
        std::optional<std::size_t> again;
        std::optional<bool> setting;
        for (std::size_t r = m_extent.from; r < m_extent.to; ++r) {
            const GridCell* title = titleIn(m_rows[r], m_table);
            if (const auto one = title ? settingIn(title->text, m_table) : std::nullopt)
                if (std::exchange(setting, one->high) != one->high)
                    seen.clear();
            const auto heading =
                std::find_if(m_rows[r].begin(), m_rows[r].end(),
                             [](const GridCell& cell) { return cell.heading->column; });
            if (heading == m_rows[r].end())
                continue;
            const auto [at, isNew] = seen.try_emplace(heading->text, r);
            const bool merged = !isNew && at->second + 1 == r; // over several rows
            at->second = r;
            if (isNew || merged)
                continue;
            if (again)
                return sizesAbove(*again);
            again = r;
        }
        return std::nullopt;
    }

    /// The line of sizes above the first heading of a table, or that heading's. Between lie lines
    /// that are not understood, of this table and of the one before.
    [[nodiscard]] std::size_t sizesAbove(std::size_t row) const
    {
        for (std::size_t r = row; r > m_extent.from && headingsIn(r - 1) == 0; --r)
            if (isSizeLine(r - 1))
                return r - 1;
        return row > m_extent.from && canNameSizes(m_rows[row - 1]) ? row - 1 : row;
    }

    /// What can be names of sizes behind the first cell.
    [[nodiscard]] bool hasSizes(const GridRow& row) const
    {
        return filledIn(row) >= 2
               && std::all_of(row.begin() + 1, row.end(), [&](const GridCell& cell) {
                      return cell.text.empty() || isSizeName(cell.text, m_table);
                  });
    }

    /// The same, but numbers alone only below a corner that is blank, or if they are the first
    /// line's.
    [[nodiscard]] bool canNameSizes(const GridRow& row) const
    {
        const GridRow& first = m_rows[m_extent.from];
        const auto same = [](const GridCell& one, const GridCell& other) {
            return one.text == other.text;
        };
        return hasSizes(row)
               && (row.front().text.empty() || countOf(CellKind::Number, row, 1) + 1 < filledIn(row)
                   || std::equal(row.begin() + 1, row.end(), first.begin() + 1, first.end(), same));
    }

    const std::vector<GridRow>& m_rows;
    const Extent& m_extent;
    const HeadingTable& m_table;
};

} // namespace

std::optional<std::size_t> nextTable(const std::vector<GridRow>& rows, const Extent& extent,
                                     const HeadingTable& table)
{
    return Finder(rows, extent, table).find();
}

} // namespace tripoise::table
