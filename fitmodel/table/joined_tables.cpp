// SPDX-License-Identifier: MIT
#include "table/joined_tables.h"

#include "table/legend.h"

#include <algorithm>
#include <set>

namespace tripoise::table {
namespace {

using Rows = std::vector<GridRow>;

const std::string& textAt(const Rows& rows, std::size_t row, std::size_t cell)
{
    return cell < rows[row].size() ? rows[row][cell].text : noCell().text;
}

std::vector<std::string> textsOf(const Lane& lane, const Grid& grid)
{
    std::vector<std::string> texts;
    for (const auto& cell : lane.cells)
        texts.push_back(cell ? textAt(grid.rows, cell->row, cell->cell) : std::string());
    return texts;
}

class Joiner {
public:
    Joiner(const TablePart& first, const TablePart& second, const HeadingTable& table)
        : m_first(first), m_second(second), m_a(first.layout), m_b(second.layout), m_table(table)
    {
    }

    [[nodiscard]] std::optional<Grid> joined() const
    {
        if (!m_first.isGeometry() || m_a.sizesDown != m_b.sizesDown || !isNamed(m_a)
            || !isNamed(m_b))
            return std::nullopt;
        const bool moreColumns = m_a.places.sizes.names == m_b.places.sizes.names && !isTwice();
        if (!moreColumns && !(hasSameHeadings() && hasSizesBehind() && !hasOwnTitle()))
            return std::nullopt;
        return moreColumns == m_a.sizesDown ? beside() : below();
    }

    [[nodiscard]] bool mayGoOn() const
    {
        return m_first.isGeometry() && m_second.isGeometry() && isNamed(m_a) && isNamed(m_b)
               && hasSameHeadings() && hasSizesBehind() && hasOwnTitle() && growsOn();
    }

private:
    static bool isNamed(const GridLayout& layout)
    {
        return layout.places.sizes.named && !layout.places.sizes.guessed;
    }

    /// Whether something is told in both, and not the same.
    [[nodiscard]] bool isTwice() const
    {
        for (const Lane& one : m_a.lanes)
            for (const Lane& other : m_b.lanes) {
                const bool sameHeading = !one.heading.empty() && one.heading == other.heading;
                const bool sameColumn =
                    isOfTheFrame(one.read.column) && one.read.column == other.read.column;
                if ((sameHeading || sameColumn)
                    && textsOf(one, m_first.grid) != textsOf(other, m_second.grid))
                    return true;
            }
        return false;
    }

    static std::multiset<std::string> headingsOf(const GridLayout& layout)
    {
        std::multiset<std::string> headings;
        for (const Lane& lane : layout.lanes)
            if (lane.read.column)
                headings.insert(lane.heading);
        return headings;
    }
    [[nodiscard]] bool hasSameHeadings() const { return headingsOf(m_a) == headingsOf(m_b); }

    /// Whether the second's sizes are others, and those that are numbers the larger ones.
    [[nodiscard]] bool hasSizesBehind() const
    {
        const auto& before = m_a.places.sizes.names;
        const auto& behind = m_b.places.sizes.names;
        for (const std::string& name : behind)
            if (std::find(before.begin(), before.end(), name) != before.end())
                return false;
        const auto last = cellNumber(before.back(), m_table.numbers);
        const auto next = cellNumber(behind.front(), m_table.numbers);
        return last.has_value() == next.has_value() && (!last || last->value < next->value);
    }

    /// Whether most of what grows from size to size in the first grows on into the second.
    [[nodiscard]] bool growsOn() const
    {
        int growing = 0;
        int on = 0;
        for (const Lane& one : m_a.lanes)
            for (const Lane& other : m_b.lanes) {
                if (one.heading.empty() || one.heading != other.heading || one.cells.empty()
                    || other.cells.empty())
                    continue;
                const auto number = [this](const std::string& text) {
                    return cellNumber(text, m_table.numbers);
                };
                const std::vector<std::string> texts = textsOf(one, m_first.grid);
                const auto first = number(texts.front());
                const auto last = number(texts.back());
                const auto next = number(textsOf(other, m_second.grid).front());
                if (!first || !last || !next || last->value <= first->value)
                    continue;
                ++growing;
                on += next->value > last->value ? 1 : 0;
            }
        return 2 * on > growing;
    }

    [[nodiscard]] bool hasOwnTitle() const
    {
        if (!m_b.model)
            return false;
        const std::string own =
            titleOf(textAt(m_second.grid.rows, m_b.model->row, m_b.model->cell), m_table);
        return !m_a.model
               || own
                      != titleOf(textAt(m_first.grid.rows, m_a.model->row, m_a.model->cell),
                                 m_table);
    }

    /// The rows of the second below, without those that repeat: its line of sizes, or of headings.
    [[nodiscard]] std::optional<Grid> below() const
    {
        if (m_a.places.values.front() != m_b.places.values.front() && !m_a.sizesDown)
            return std::nullopt;
        std::set<std::size_t> again;
        if (m_a.sizesDown) {
            for (std::size_t r = m_b.from; r < m_b.from + m_b.places.values.front(); ++r) {
                const std::size_t other = m_a.from + (r - m_b.from);
                const auto same = [](const GridCell& one, const GridCell& two) {
                    return one.text == two.text;
                };
                if (!std::equal(m_second.grid.rows[r].begin(), m_second.grid.rows[r].end(),
                                m_first.grid.rows[other].begin(), m_first.grid.rows[other].end(),
                                same))
                    return std::nullopt;
                again.insert(r);
            }
        } else if (m_a.places.values == m_b.places.values
                   && m_a.places.headingAt == m_b.places.headingAt) {
            for (const auto line : {m_b.places.sizeLine, m_b.places.secondSizeLine})
                if (line)
                    again.insert(m_b.from + *line);
        } else {
            return std::nullopt;
        }
        Grid grid = m_first.grid;
        addTold(grid, m_second.grid.told, m_second.grid.told.size());
        for (std::size_t r = 0; r < m_second.grid.rows.size(); ++r)
            if (!again.contains(r))
                grid.rows.push_back(m_second.grid.rows[r]);
            else
                addTold(grid, m_second.grid.rows[r], m_second.grid.rows[r].size());
        return grid;
    }

    /// The cells of the second behind those of the row that begins alike. A row that lacks a cell
    /// would shift those behind it.
    [[nodiscard]] std::optional<Grid> beside() const
    {
        if (!m_a.shortRows.empty() || !m_b.shortRows.empty() || m_a.headingsGuessed
            || m_b.headingsGuessed)
            return std::nullopt;
        const bool down = m_a.sizesDown;
        const std::size_t labelA = down ? *m_a.places.sizeLine : m_a.places.headingAt;
        const std::size_t labelB = down ? *m_b.places.sizeLine : m_b.places.headingAt;
        const std::size_t start = down ? labelB + 1 : m_b.places.values.front();
        Grid grid = m_first.grid;
        const auto title = titleWithSize(m_b);
        const std::size_t sizeRow = down ? 0 : sizeRowOf(grid);
        std::size_t width = 0;
        for (std::size_t r = m_a.from; r < m_a.to; ++r)
            width = std::max(width, grid.rows[r].size());
        std::vector<bool> used(grid.rows.size(), false);
        Rows others;
        for (std::size_t r = 0; r < m_second.grid.rows.size(); ++r) {
            const GridRow& row = m_second.grid.rows[r];
            const auto partner = [&] {
                for (std::size_t at = m_a.from; at < m_a.to; ++at)
                    if (!used[at]
                        && textAt(grid.rows, at, labelA) == textAt(m_second.grid.rows, r, labelB))
                        return std::optional(at);
                return std::optional<std::size_t>();
            }();
            if (title == r) {
                GridRow& to = grid.rows[sizeRow];
                to.resize(width, blank(row));
                to.push_back(row.front());
                continue;
            }
            if (row.size() <= start || r < m_b.from || r >= m_b.to) {
                others.push_back(row);
                continue;
            }
            if (!partner)
                return std::nullopt;
            used[*partner] = true;
            GridRow& to = grid.rows[*partner];
            to.resize(width, blank(to));
            to.insert(to.end(), row.begin() + static_cast<std::ptrdiff_t>(start), row.end());
            addTold(grid, row, start);
        }
        std::size_t whole = 0;
        for (std::size_t r = m_a.from; r < m_a.to; ++r)
            whole = std::max(whole, grid.rows[r].size());
        for (std::size_t r = m_a.from; r < m_a.to; ++r)
            if (filledIn(grid.rows[r]) > 1)
                grid.rows[r].resize(whole, blank(grid.rows[r]));
        grid.rows.insert(grid.rows.end(), others.begin(), others.end());
        return grid;
    }

    /// The row above a table of one size that is the size's name, where no line names it.
    static std::optional<std::size_t> titleWithSize(const GridLayout& layout)
    {
        const auto& cells = layout.places.sizes.cells;
        return layout.sizesDown || layout.places.sizeLine || cells.size() != 1 || !cells.front()
                   ? std::nullopt
                   : std::optional(cells.front()->row);
    }

    /// The first's line of sizes; made of that row where there is none.
    std::size_t sizeRowOf(Grid& grid) const
    {
        const auto title = titleWithSize(m_a);
        if (!title)
            return m_a.from + m_a.places.sizeLine.value_or(0);
        GridRow row(m_a.places.values.front(), blank(grid.rows[*title]));
        row.push_back(grid.rows[*title].front());
        grid.rows.erase(grid.rows.begin() + static_cast<std::ptrdiff_t>(*title));
        const std::size_t at = m_a.from - 1;
        grid.rows.insert(grid.rows.begin() + static_cast<std::ptrdiff_t>(at), std::move(row));
        return at;
    }

    static void addTold(Grid& grid, const GridRow& row, std::size_t count)
    {
        std::copy_if(row.begin(), row.begin() + static_cast<std::ptrdiff_t>(count),
                     std::back_inserter(grid.told),
                     [](const GridCell& cell) { return !cell.text.empty(); });
    }

    static GridCell blank(const GridRow& row)
    {
        GridCell cell = noCell();
        cell.line = row.front().line;
        return cell;
    }

    const TablePart& m_first;
    const TablePart& m_second;
    const GridLayout& m_a;
    const GridLayout& m_b;
    const HeadingTable& m_table;
};

} // namespace

std::optional<Grid> joined(const TablePart& first, const TablePart& second,
                           const HeadingTable& table)
{
    return Joiner(first, second, table).joined();
}

bool mayGoOn(const TablePart& first, const TablePart& second, const HeadingTable& table)
{
    return Joiner(first, second, table).mayGoOn();
}

} // namespace tripoise::table
