// SPDX-License-Identifier: MIT
#include "table/read_part.h"

#include "table/lane_columns.h"
#include "table/legend.h"
#include "table/shown.h"
#include "table/titles.h"

#include <algorithm>
#include <map>
#include <set>

namespace tripoise::table {
namespace {

class Reader {
public:
    Reader(const TablePart& part, const HeadingTable& table,
           const std::vector<Assignment>& assignments)
        : m_table(table), m_assignments(assignments), m_part(part), m_grid(part.grid),
          m_layout(part.layout)
    {
        cells();
        if (m_layout.places.sizes.names.size() > mostTableSizes) {
            problem(ProblemCode::TooMany, {}, std::to_string(m_layout.places.sizes.names.size()));
            m_result.problems.back().high = static_cast<double>(mostTableSizes);
            gatherNotUnderstood();
            return;
        }
        sizes();
        LaneColumns read = columnsOf(m_part, m_table, m_assignments);
        m_result.columns = std::move(read.columns);
        m_values = std::move(read.values);
        m_result.problems.insert(m_result.problems.end(), read.problems.begin(),
                                 read.problems.end());
        states();
        gatherNotUnderstood();
        complain();
    }

    ReadTable take() { return std::move(m_result); }

private:
    void problem(ProblemCode code, std::string path, std::string value = {},
                 std::vector<std::string> names = {})
    {
        m_result.problems.push_back(
            {code, std::move(path), std::move(value), {}, {}, {}, std::move(names)});
    }

    void cells()
    {
        for (const GridRow& row : m_grid.rows) {
            auto& to = m_result.rows.emplace_back();
            for (const GridCell& cell : row)
                to.push_back({cell.text,
                              cell.line,
                              cell.text.empty() ? CellState::Blank
                              : cell.note       ? CellState::Unit
                                                : CellState::NotUnderstood,
                              {},
                              {}});
        }
        if (m_grid.told.empty())
            return;
        auto& told = m_result.rows.emplace_back();
        for (const GridCell& cell : m_grid.told)
            told.push_back({cell.text, cell.line, CellState::Heading, {}, {}});
    }

    TableCell& at(const CellPlace& place) { return m_result.rows[place.row][place.cell]; }
    [[nodiscard]] const std::string& textAt(const CellPlace& place) const
    {
        return cellAt(m_grid, place).text;
    }
    [[nodiscard]] std::size_t lineOf(const CellPlace& place) const
    {
        return cellAt(m_grid, place).line;
    }

    /// Told once, with the first few of them.
    void shortRows()
    {
        const auto& rows = m_layout.shortRows;
        constexpr std::size_t most = 3;
        std::vector<std::string> names;
        for (std::size_t i = 0; i < std::min(most, rows.size()); ++i)
            names.push_back(shown(textAt(rows[i])));
        if (rows.size() > most)
            names.emplace_back("…");
        if (!rows.empty())
            problem(ProblemCode::ShortRow, lineName(lineOf(rows.front())),
                    std::to_string(rows.size()), std::move(names));
    }

    void sizes()
    {
        m_result.sizesDown = m_layout.sizesDown;
        m_result.sizes = m_layout.places.sizes.names;
        shortRows();
        m_result.sizesFrom = m_layout.places.sizes.guessed ? SizesFrom::Guessed
                             : m_layout.places.sizes.named ? SizesFrom::Named
                                                           : SizesFrom::Counted;
        nameSizesOnce();
    }

    void nameSizesOnce()
    {
        for (std::size_t i = 0; i < m_result.sizes.size(); ++i) {
            const std::string name = m_result.sizes[i];
            std::size_t count = 1;
            for (std::size_t j = 0; j < i; ++j)
                count += m_layout.places.sizes.names[j] == name ? 1 : 0;
            if (count == 1)
                continue;
            m_result.sizes[i] = name + " (" + std::to_string(count) + ')';
            const auto& cell = m_layout.places.sizes.cells[i];
            problem(ProblemCode::SizeTwice, cell ? lineName(lineOf(*cell)) : std::string(),
                    shown(name), {m_result.sizes[i]});
        }
    }

    void states()
    {
        if (m_part.model)
            m_result.model = titleOf(*m_part.model, m_table);
        if (m_layout.model && isGeometry()) {
            at(*m_layout.model).state = CellState::Model;
            std::string title = textAt(*m_layout.model);
            if (m_layout.places.sizes.inModel)
                title.resize(std::min(title.rfind(' '), title.size()));
            m_result.model = titleOf(title, m_table);
        }
        if (m_layout.setting && isGeometry()) {
            at(*m_layout.setting).state = CellState::Model;
            addToModel(titleOf(textAt(*m_layout.setting), m_table));
        }
        if (m_part.title)
            addToModel(*m_part.title);
        for (const CellPlace& place : m_layout.aside)
            mark(place, CellState::SetAside, std::nullopt, std::nullopt);
        for (const CellPlace& place : m_layout.places.sizes.headings)
            at(place).state = CellState::Heading;
        for (auto& row : m_result.rows) // "Geometry"
            for (TableCell& cell : row)
                if (cell.text.size() > 2 && cell.state == CellState::NotUnderstood
                    && (titleOf(cell.text, m_table).empty() || isPageTitle(cell.text, m_table)))
                    cell.state = CellState::Heading;
        for (std::size_t i = 0; i < m_layout.places.sizes.cells.size(); ++i)
            if (const auto& place = m_layout.places.sizes.cells[i];
                place && !textAt(*place).empty())
                mark(*place, CellState::Size, std::nullopt, i);
        for (std::size_t i = 0; i < m_layout.lanes.size(); ++i)
            laneStates(i);
    }

    /// "Corrie" above a table, "Corrie 700c" or "700c" over some of its sizes.
    void addToModel(const std::string& title)
    {
        const std::string model = m_result.model.value_or(std::string());
        m_result.model =
            model.empty() || title.find(model) != std::string::npos ? title : model + ' ' + title;
    }

    void mark(const CellPlace& place, CellState state, std::optional<std::size_t> column,
              std::optional<std::size_t> size)
    {
        TableCell& cell = at(place);
        cell.state = cell.text.empty() ? CellState::Blank : state;
        cell.column = column;
        cell.size = size;
    }

    void laneStates(std::size_t index)
    {
        const Lane& lane = m_layout.lanes[index];
        const ReadColumn& column = m_result.columns[index];
        const bool understood = column.meaning || lane.read.isSize;
        const bool leftOut = column.assigned && !column.meaning;
        const CellState heading = understood ? CellState::Heading
                                  : leftOut  ? CellState::SetAside
                                             : CellState::NotUnderstood;
        for (const CellPlace& place : lane.headingCells)
            mark(place, heading, index, std::nullopt);
        for (const CellPlace& place : lane.unitCells)
            mark(place, CellState::Unit, index, std::nullopt);
        for (std::size_t i = 0; i < lane.cells.size(); ++i)
            if (lane.cells[i])
                mark(*lane.cells[i], valueState(index, i, leftOut), index, i);
    }

    CellState valueState(std::size_t index, std::size_t size, bool leftOut)
    {
        const Lane& lane = m_layout.lanes[index];
        const ReadColumn& column = m_result.columns[index];
        const LaneValue& value = m_values[index].values[size];
        if (leftOut || lane.read.isSize || (column.meaning && isSetAside(*column.meaning)))
            return CellState::SetAside;
        if (!column.meaning)
            return CellState::NotUnderstood;
        switch (value.state) {
        case ValueState::Blank: return CellState::Blank;
        case ValueState::Missing: return CellState::Missing;
        case ValueState::Value: return CellState::Value;
        case ValueState::NoNumber:
        case ValueState::OutOfRange: break;
        }
        if (isOfTheSale(*column.meaning)) // "integrated": no figure, and no fault
            return CellState::SetAside;
        const Range& range = m_table.plausible[indexOf(*column.meaning)];
        const CellPlace& place = *lane.cells[size];
        Problem wrong{value.state == ValueState::OutOfRange ? ProblemCode::OutOfRange
                                                            : ProblemCode::NotANumber,
                      lineName(lineOf(place)) + ", " + shown(column.heading),
                      shown(textAt(place)),
                      range.low,
                      range.high,
                      unitKey(unitOf(*column.meaning)),
                      {}};
        m_result.problems.push_back(std::move(wrong));
        return CellState::NotUnderstood;
    }

    /// A column that is not understood is told by its heading alone.
    void gatherNotUnderstood()
    {
        for (const auto& row : m_result.rows) {
            const auto isOpen = [](const TableCell& cell) {
                return cell.state == CellState::NotUnderstood;
            };
            for (const TableCell& cell : row) {
                if (!isOpen(cell))
                    continue;
                const bool ofColumn = cell.column && cell.size
                                      && !m_result.columns[*cell.column].meaning
                                      && !m_result.columns[*cell.column].heading.empty();
                if (!ofColumn)
                    m_result.notUnderstood.push_back({cell.text, cell.line});
            }
        }
    }

    void complain()
    {
        if (m_layout.rowsRead < m_grid.rows.size())
            problem(ProblemCode::SecondTable,
                    lineName(m_grid.rows[m_layout.rowsRead].front().line));
        if (m_result.sizesFrom == SizesFrom::Guessed)
            problem(ProblemCode::SizesGuessed, {});
        for (std::size_t i = 0; i < m_result.columns.size(); ++i) {
            const ReadColumn& column = m_result.columns[i];
            if (!column.meaning || column.from != ColumnFrom::Guessed || column.headedAs
                || isSetAside(*column.meaning) || isToldTwice(column))
                continue;
            std::vector<std::string> names{std::string(keyOf(*column.meaning))};
            if (m_layout.lanes[i].ofFirstSetting)
                names.push_back(shown(m_result.model.value_or(std::string())));
            problem(ProblemCode::ColumnGuessed, lineName(column.line), shown(column.heading),
                    std::move(names));
        }
        if (!isGeometry())
            problem(hasNumbers() ? ProblemCode::NoGeometry : ProblemCode::NoTable, {});
        else if (!m_layout.places.sizes.named)
            problem(ProblemCode::NoSizes, {});
    }

    [[nodiscard]] bool isToldTwice(const ReadColumn& column) const
    {
        return std::any_of(m_result.problems.begin(), m_result.problems.end(),
                           [&](const Problem& one) {
                               return one.code == ProblemCode::ColumnTwice
                                      && one.names.front() == lineName(column.line);
                           });
    }

    /// A line of two numbers or more: a table of something.
    [[nodiscard]] bool hasNumbers() const
    {
        return std::any_of(m_grid.rows.begin(), m_grid.rows.end(),
                           [](const GridRow& row) { return countOf(CellKind::Number, row) >= 2; });
    }

    [[nodiscard]] bool isGeometry() const { return m_result.readable(); }

    const HeadingTable& m_table;
    const std::vector<Assignment>& m_assignments;
    const TablePart& m_part;
    const Grid& m_grid;
    const GridLayout& m_layout;
    std::vector<LaneValues> m_values;
    ReadTable m_result;
};

} // namespace

ReadTable readPart(const TablePart& part, const HeadingTable& table,
                   const std::vector<Assignment>& assignments)
{
    return Reader(part, table, assignments).take();
}

} // namespace tripoise::table
