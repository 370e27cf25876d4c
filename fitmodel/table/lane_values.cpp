// SPDX-License-Identifier: MIT
#include "table/lane_values.h"

#include "table/wheel_name.h"
#include "text/plain.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace tripoise::table {
namespace {

/// In the order in which they are tried.
constexpr std::array units{Unit::Millimetre, Unit::Centimetre, Unit::Inch,
                           Unit::Metre,      Unit::Kilogram,   Unit::Gram,
                           Unit::Pound,      Unit::Degree,     Unit::None};

bool suits(Unit unit, Column column)
{
    return factsOf(unit).kind == factsOf(unitOf(column)).kind;
}

/// A number in a unit, by whichever of its readings is plausible.
std::optional<Entry> entryIn(const CellNumber& number, Unit unit, Column column,
                             const HeadingTable& table)
{
    const Range& range = table.plausible[indexOf(column)];
    const double factor = factsOf(unit).size;
    if (outside(number.value * factor, range) == 0.0) {
        Entry entry{column, number.value * factor, {}, number.step * factor};
        if (number.high)
            entry.high = *number.high * factor;
        return entry;
    }
    if (number.grouped && outside(*number.grouped * factor, range) == 0.0)
        return Entry{column, *number.grouped * factor,
                     number.groupedHigh ? std::optional(*number.groupedHigh * factor)
                                        : std::nullopt,
                     factor};
    return std::nullopt;
}

using Numbers = std::vector<std::optional<CellNumber>>;

Numbers numbersOf(const std::vector<std::string>& cells, const HeadingTable& table)
{
    Numbers numbers;
    for (const std::string& cell : cells)
        numbers.push_back(cellNumber(cell, table.numbers));
    return numbers;
}

struct Fit {
    Unit unit = Unit::None;
    std::size_t plausible = 0;
    double distance = 0.0; ///< of the middle number from the middle of the range, as a ratio
};

/// Cells that state a unit of their own tell nothing about the others'.
Fit fitOf(const Numbers& numbers, Unit unit, Column column, const HeadingTable& table)
{
    Fit fit{unit, 0, std::numeric_limits<double>::max()};
    std::vector<double> values;
    for (const auto& number : numbers) {
        if (!number || number->unit != Unit::None)
            continue;
        if (const auto entry = entryIn(*number, unit, column, table)) {
            ++fit.plausible;
            values.push_back(entry->value);
        }
    }
    const Range& range = table.plausible[indexOf(column)];
    if (!values.empty() && range.low > 0.0) {
        std::sort(values.begin(), values.end());
        const double middle = std::sqrt(range.low * range.high);
        fit.distance = std::abs(std::log(values[values.size() / 2] / middle));
    }
    return fit;
}

/// Whether the range is so low that a figure is plausible in several units.
bool isSmallFigure(Column column, const HeadingTable& table)
{
    return unitOf(column) == Unit::Millimetre
           && table.plausible[indexOf(column)].low < table.limits.smallFigureMm;
}

Fit bestFit(const Numbers& numbers, Column column, const HeadingTable& table)
{
    Fit best;
    for (const Unit unit : units) {
        if (!suits(unit, column))
            continue;
        const Fit fit = fitOf(numbers, unit, column, table);
        if (fit.plausible > best.plausible
            || (fit.plausible == best.plausible && fit.plausible > 0
                && fit.distance < best.distance))
            best = fit;
    }
    return best;
}

std::size_t plain(const Numbers& numbers)
{
    return static_cast<std::size_t>(std::count_if(
        numbers.begin(), numbers.end(), [](const auto& n) { return n && n->unit == Unit::None; }));
}

std::size_t countOf(const Numbers& numbers)
{
    return static_cast<std::size_t>(
        std::count_if(numbers.begin(), numbers.end(), [](const auto& n) { return n.has_value(); }));
}

std::size_t inAnyUnit(const Numbers& numbers, Column column, const HeadingTable& table)
{
    std::size_t count = bestFit(numbers, column, table).plausible;
    for (const auto& number : numbers)
        if (number && number->unit != Unit::None && suits(number->unit, column)
            && entryIn(*number, number->unit, column, table))
            ++count;
    return count;
}

/// What else the trade means by a heading whose numbers cannot be what it says.
std::vector<Column> kindred(Column column, const Numbers& numbers)
{
    const bool negative = std::any_of(numbers.begin(), numbers.end(), [](const auto& number) {
        return number && number->value < 0;
    });
    switch (column) {
    case Column::BbDrop: return {Column::BbHeight};
    case Column::BbHeight: return {negative ? Column::BbRise : Column::BbDrop};
    case Column::SeatTube: return {Column::SeatAngle};
    case Column::HeadTube: return {Column::HeadAngle};
    default: return {};
    }
}

Column meaningOf(const Numbers& numbers, Column column, const HeadingTable& table)
{
    const std::size_t as = inAnyUnit(numbers, column, table);
    const std::size_t count = countOf(numbers);
    if (2 * as >= count)
        return column;
    for (const Column other : kindred(column, numbers))
        if (inAnyUnit(numbers, other, table) == count)
            return other;
    return column;
}

class Valuer {
public:
    Valuer(const LaneTexts& lane, Unit usual, const HeadingTable& table)
        : m_table(table), m_lane(lane), m_numbers(numbersOf(lane.cells, table))
    {
        m_result.column = lane.column;
        m_result.values.resize(lane.cells.size());
        if (!lane.column)
            return;
        if (isWheel(*lane.column)) {
            wheels(*lane.column);
        } else {
            const Column meant = meaningOf(m_numbers, *lane.column, table);
            if (meant != *lane.column) {
                m_result.headedAs = lane.column;
                m_result.column = meant;
            }
            chooseUnit(meant, usual);
            for (std::size_t i = 0; i < m_numbers.size(); ++i)
                m_result.values[i] = value(i, meant);
            evenSteps();
        }
        spread();
    }

    LaneValues take() { return std::move(m_result); }

private:
    static bool isWheel(Column column)
    {
        return column == Column::BeadSeat || column == Column::Tyre || column == Column::MaxTyre;
    }

    void chooseUnit(Column column, Unit usual)
    {
        const Fit best = bestFit(m_numbers, column, m_table);
        if (suits(m_lane.stated, column)) {
            const Fit stated = fitOf(m_numbers, m_lane.stated, column, m_table);
            m_result.unit = m_lane.stated;
            if (2 * stated.plausible < plain(m_numbers) && best.plausible > stated.plausible) {
                m_result.unit = best.unit;
                m_result.unitDoubtful = true;
            }
            return;
        }
        m_result.unit = best.unit;
        // The other lengths' unit, where these could be in it as well.
        if (suits(usual, column)) {
            const std::size_t plausible = fitOf(m_numbers, usual, column, m_table).plausible;
            if (plausible > 0 && (isSmallFigure(column, m_table) || plausible == best.plausible))
                m_result.unit = usual;
        }
        m_result.unitGuessed = unitOf(column) == Unit::Millimetre && plain(m_numbers) > 0
                               && m_result.unit != Unit::Millimetre;
    }

    [[nodiscard]] LaneValue value(std::size_t i, Column column) const
    {
        LaneValue result;
        const std::string_view cell = trimmed(m_lane.cells[i]);
        if (cell.empty())
            return result;
        if (isMissing(cell)) {
            result.state = ValueState::Missing;
            return result;
        }
        const auto& number = m_numbers[i];
        if (!number) {
            result.state = ValueState::NoNumber;
            return result;
        }
        const bool ownUnit = number->unit != Unit::None && unitOf(column) != Unit::None;
        if (ownUnit) {
            if (suits(number->unit, column))
                result.entry = entryIn(*number, number->unit, column, m_table);
        } else {
            result.entry = entryIn(*number, m_result.unit, column, m_table);
            for (const Unit other : units) {
                if (result.entry || isSmallFigure(column, m_table))
                    break;
                if (suits(other, column))
                    result.entry = entryIn(*number, other, column, m_table);
                result.otherUnit = result.entry.has_value();
            }
        }
        result.first = number->first;
        result.state = result.entry ? ValueState::Value : ValueState::OutOfRange;
        return result;
    }

    [[nodiscard]] bool isMissing(std::string_view cell) const
    {
        return m_table.missing.contains(smallLetters(cell));
    }

    void wheels(Column column)
    {
        for (std::size_t i = 0; i < m_lane.cells.size(); ++i) {
            LaneValue& to = m_result.values[i];
            const std::string_view cell = trimmed(m_lane.cells[i]);
            if (cell.empty())
                continue;
            if (isMissing(cell)) {
                to.state = ValueState::Missing;
                continue;
            }
            const WheelName wheel = wheelNamed(cell, column != Column::BeadSeat, m_table);
            const auto entry = [](Column of, const std::optional<double>& value) {
                return value ? std::optional(Entry{of, *value, {}, 1.0}) : std::nullopt;
            };
            to.entry = column == Column::BeadSeat ? entry(column, wheel.beadSeatMm)
                                                  : entry(column, wheel.tyreMm);
            if (column == Column::BeadSeat)
                to.beside = entry(Column::Tyre, wheel.tyreMm);
            else if (column == Column::Tyre)
                to.beside = entry(Column::BeadSeat, wheel.beadSeatMm);
            to.state = to.entry ? ValueState::Value : ValueState::NoNumber;
        }
    }

    /// "585, 585.5": the column is printed to the half. "72, 72.5" likewise is not: tenths may be
    /// rounded to halves, which the closing of the table finds out.
    void evenSteps()
    {
        double finest = std::numeric_limits<double>::max();
        bool halves = true;
        const auto each = [&](auto&& with) {
            for (LaneValue& value : m_result.values)
                if (value.entry && !value.otherUnit)
                    with(*value.entry);
        };
        each([&](const Entry& entry) {
            finest = std::min(finest, entry.step);
            const double twice = 2.0 * entry.value;
            halves = halves && std::abs(twice - std::round(twice)) < 1e-9;
        });
        constexpr double tenth = 0.1;
        constexpr double half = 0.5;
        const bool lengths = m_result.column && unitOf(*m_result.column) == Unit::Millimetre;
        if (lengths && halves && std::abs(finest - tenth) < 1e-9)
            finest = half;
        each([&](Entry& entry) { entry.step = finest; });
    }

    /// One cell merged over all sizes is copied as the first alone.
    void spread()
    {
        if (m_result.values.size() < 2 || !m_result.values.front().entry)
            return;
        for (std::size_t i = 1; i < m_result.values.size(); ++i)
            if (m_result.values[i].state != ValueState::Blank)
                return;
        for (std::size_t i = 1; i < m_result.values.size(); ++i) {
            m_result.values[i] = m_result.values.front();
            m_result.values[i].allSizes = true;
        }
    }

    const HeadingTable& m_table;
    const LaneTexts& m_lane;
    Numbers m_numbers;
    LaneValues m_result;
};

} // namespace

bool canBe(Column column, const std::vector<std::string>& cells, const HeadingTable& table)
{
    const Numbers numbers = numbersOf(cells, table);
    return 2 * inAnyUnit(numbers, column, table) >= countOf(numbers);
}

LaneValues valuesOf(const LaneTexts& lane, Unit usual, const HeadingTable& table)
{
    return Valuer(lane, usual, table).take();
}

Unit usualUnit(const std::vector<LaneTexts>& lanes, const HeadingTable& table)
{
    std::array<std::size_t, units.size()> votes{};
    for (const LaneTexts& lane : lanes) {
        if (!lane.column || unitOf(*lane.column) != Unit::Millimetre
            || isSmallFigure(*lane.column, table))
            continue;
        const Fit best = bestFit(numbersOf(lane.cells, table), *lane.column, table);
        for (std::size_t i = 0; i < units.size(); ++i)
            votes[i] += best.plausible > 0 && units[i] == best.unit ? 1 : 0;
    }
    const auto most = std::max_element(votes.begin(), votes.end());
    return *most == 0 ? Unit::None : units[static_cast<std::size_t>(most - votes.begin())];
}

} // namespace tripoise::table
