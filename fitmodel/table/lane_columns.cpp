// SPDX-License-Identifier: MIT
#include "table/lane_columns.h"

#include "table/repeated_columns.h"
#include "table/shown.h"

#include <algorithm>
#include <map>
#include <set>

namespace tripoise::table {
namespace {

class Reader {
public:
    Reader(const TablePart& part, const HeadingTable& table,
           const std::vector<Assignment>& assignments)
        : m_table(table), m_assignments(assignments), m_grid(part.grid), m_layout(part.layout)
    {
        columns();
    }

    LaneColumns take() { return std::move(m_result); }

private:
    void problem(ProblemCode code, std::string path, std::string value,
                 std::vector<std::string> names)
    {
        m_result.problems.push_back(
            {code, std::move(path), std::move(value), {}, {}, {}, std::move(names)});
    }

    [[nodiscard]] const std::string& textAt(const CellPlace& place) const
    {
        return cellAt(m_grid, place).text;
    }
    [[nodiscard]] std::size_t lineOf(const CellPlace& place) const
    {
        return cellAt(m_grid, place).line;
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
                std::vector<Setting> named;
                if (!lane.read.settings.empty())
                    one.cells.back() = withoutSettings(one.cells.back(), m_table, named);
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
        m_result.values.push_back(std::move(values));
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

    const HeadingTable& m_table;
    const std::vector<Assignment>& m_assignments;
    const Grid& m_grid;
    const GridLayout& m_layout;
    LaneColumns m_result;
};

} // namespace

std::string unitKey(Unit unit)
{
    return std::string(factsOf(unit).key);
}

LaneColumns columnsOf(const TablePart& part, const HeadingTable& table,
                      const std::vector<Assignment>& assignments)
{
    return Reader(part, table, assignments).take();
}

} // namespace tripoise::table
