// SPDX-License-Identifier: MIT
#include "table/read_part.h"

#include "table/lane_values.h"
#include "table/legend.h"
#include "table/repeated_columns.h"
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
        columns();
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
        return m_grid.rows[place.row][place.cell].text;
    }
    [[nodiscard]] std::size_t lineOf(const CellPlace& place) const
    {
        return m_grid.rows[place.row][place.cell].line;
    }

    [[nodiscard]] const Assignment* assigned(std::size_t column, const std::string& heading) const
    {
        for (const Assignment& one : m_assignments) {
            const auto* place = std::get_if<std::size_t>(&one.column);
            const auto* name = std::get_if<std::string>(&one.column);
            if ((place && *place == column) || (name && *name == heading))
                return &one;
        }
        return nullptr;
    }

    void columns()
    {
        m_result.sizesDown = m_layout.sizesDown;
        m_result.sizes = m_layout.places.sizes.names;
        shortRows();
        m_result.sizesFrom = m_layout.places.sizes.guessed ? SizesFrom::Guessed
                             : m_layout.places.sizes.named ? SizesFrom::Named
                                                           : SizesFrom::Counted;
        nameSizesOnce();
        std::vector<LaneTexts> texts;
        std::map<std::size_t, LaneTexts> seconds;
        for (const Lane& lane : m_layout.lanes) {
            const auto& read = lane.read;
            LaneTexts one{read.column, statedFor(lane), {}};
            for (std::size_t i = 0; i < lane.cells.size(); ++i) {
                // What is withheld is not blank: another size's figure is not its own.
                const bool withheld = i < m_layout.withheld.size() && m_layout.withheld[i];
                one.cells.push_back(lane.cells[i] ? textAt(*lane.cells[i])
                                                  : std::string(withheld ? "-" : ""));
                if (lane.piece)
                    one.cells.back() = pieceOf(one.cells.back(), *lane.piece);
            }
            if (const Assignment* by = assigned(texts.size(), lane.heading))
                one.column = by->meaning;
            if (read.second && one.column == read.column)
                seconds[texts.size()] = secondOf(one, *read.second);
            texts.push_back(std::move(one));
        }
        const Unit usual = usualUnit(texts, m_table);
        for (std::size_t i = 0; i < texts.size(); ++i) {
            addColumn(m_layout.lanes[i], i, valuesOf(texts[i], usual, m_table));
            if (!seconds.contains(i))
                continue;
            const LaneValues values = valuesOf(seconds[i], usual, m_table);
            for (std::size_t j = 0; j < values.values.size(); ++j)
                m_result.columns.back().beside[j] = values.values[j].entry;
        }
        std::vector<const HeadingRead*> headings;
        for (const Lane& lane : m_layout.lanes)
            headings.push_back(&lane.read);
        leaveRepeated(m_result.columns, headings, m_result.problems);
    }

    [[nodiscard]] Unit statedFor(const Lane& lane) const
    {
        return lane.read.unit == Unit::None ? m_layout.unit : lane.read.unit;
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

    /// One of "71 / 73"; all where there is one.
    static std::string pieceOf(const std::string& cell, std::size_t piece)
    {
        const std::size_t sign = cell.find_first_of("/|");
        return sign == std::string::npos ? cell
               : piece == 0              ? cell.substr(0, sign)
                                         : cell.substr(sign + 1);
    }

    /// "71 / 73": the first stays, the second is a lane of its own.
    static LaneTexts secondOf(LaneTexts& lane, Column column)
    {
        LaneTexts second{column, lane.stated, {}};
        for (std::string& cell : lane.cells) {
            const bool two = cell.find_first_of("/|") != std::string::npos;
            second.cells.push_back(two ? pieceOf(cell, 1) : std::string());
            cell = pieceOf(cell, 0);
        }
        return second;
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

    void addColumn(const Lane& lane, std::size_t index, LaneValues values)
    {
        ReadColumn column;
        column.heading = lane.heading;
        column.line =
            lane.headingCells.empty() ? firstLine(lane) : lineOf(lane.headingCells.front());
        column.meaning = values.column;
        column.headedAs = values.headedAs;
        column.assigned = assigned(index, lane.heading) != nullptr;
        const bool first = std::any_of(values.values.begin(), values.values.end(),
                                       [](const LaneValue& value) { return value.first; });
        // One cell for all may be the first size's alone.
        const bool spread = values.column && growsWithSize(*values.column)
                            && std::any_of(values.values.begin(), values.values.end(),
                                           [](const LaneValue& value) { return value.allSizes; });
        const bool guessed = values.headedAs || lane.read.guessed || m_layout.headingsGuessed;
        column.from = column.assigned              ? ColumnFrom::Known
                      : guessed || first || spread ? ColumnFrom::Guessed
                      : lane.read.byParts          ? ColumnFrom::Parts
                                                   : ColumnFrom::Known;
        column.unit = values.unit;
        column.unitGuessed = values.unitGuessed;
        for (const LaneValue& value : values.values) {
            column.entries.push_back(value.entry);
            column.beside.push_back(value.beside);
        }
        if (values.unitDoubtful)
            problem(ProblemCode::UnitDoubtful, lineName(column.line), shown(lane.heading),
                    {unitKey(statedFor(lane)), unitKey(values.unit)});
        if (values.headedAs)
            problem(ProblemCode::OtherMeaning, lineName(column.line), shown(lane.heading),
                    {std::string(keyOf(*values.headedAs)), std::string(keyOf(*values.column))});
        mixedUnits(lane, column, values);
        m_values.push_back(std::move(values));
        m_result.columns.push_back(std::move(column));
    }

    static bool growsWithSize(Column column)
    {
        switch (column) {
        case Column::Stack:
        case Column::Reach:
        case Column::HeadTube:
        case Column::SeatTube:
        case Column::SeatTubeCentre:
        case Column::TopTube:
        case Column::TopTubeActual:
        case Column::Wheelbase:
        case Column::FrontCentre:
        case Column::FrontCentreHorizontal:
        case Column::Standover:
        case Column::Mass:
        case Column::RiderHeight: return true;
        default: return false;
        }
    }

    [[nodiscard]] std::size_t firstLine(const Lane& lane) const
    {
        for (const auto& cell : lane.cells)
            if (cell)
                return lineOf(*cell);
        return 0;
    }

    static std::string unitKey(Unit unit) { return std::string(factsOf(unit).key); }

    /// Cells that were taken in another unit than the rest; the first, where several state their
    /// own.
    void mixedUnits(const Lane& lane, const ReadColumn& column, const LaneValues& values)
    {
        std::vector<std::string> other;
        std::vector<std::string> first;
        std::set<Unit> stated;
        for (std::size_t i = 0; i < values.values.size(); ++i) {
            if (!lane.cells[i])
                continue;
            const std::string text = shown(textAt(*lane.cells[i]));
            if (first.size() < 3)
                first.push_back(text);
            if (values.values[i].otherUnit)
                other.push_back(text);
            const auto number = cellNumber(textAt(*lane.cells[i]), m_table.numbers);
            if (values.values[i].entry && number && number->unit != Unit::None)
                stated.insert(number->unit);
        }
        if (!other.empty() || stated.size() > 1)
            problem(ProblemCode::MixedUnits, lineName(column.line), shown(column.heading),
                    other.empty() ? first : other);
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
        for (const ReadColumn& column : m_result.columns)
            if (column.meaning && column.from == ColumnFrom::Guessed && !column.headedAs
                && !isSetAside(*column.meaning) && !isToldTwice(column))
                problem(ProblemCode::ColumnGuessed, lineName(column.line), shown(column.heading),
                        {std::string(keyOf(*column.meaning))});
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
