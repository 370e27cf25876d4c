// SPDX-License-Identifier: MIT
#include "table/cell_number.h"

#include "text/plain.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <utility>

namespace tripoise {
namespace {

constexpr std::size_t longestCell = 60;

std::optional<CellNumber> oneNumber(NumberReader& reader)
{
    constexpr int mostFigures = 9;
    constexpr double mostFeet = 7.0; // a person's height; 29' is a wheel's inches
    const auto written = reader.number();
    if (!written || written->figures.digits > mostFigures || written->unit == Unit::Percent
        || (written->unit == Unit::Foot && written->figures.first() > mostFeet))
        return std::nullopt;
    const Figures& figures = written->figures;
    return CellNumber{figures.first(),
                      figures.decimal ? figures.grouped : std::nullopt,
                      {},
                      {},
                      figures.step,
                      false,
                      written->unit};
}

/// Between the ends of a range.
bool rangeSign(NumberReader& reader, const NumberWords& words)
{
    reader.blanks();
    for (const std::string_view sign : {"-", "–", "—", "...", "…", "..", "/", "~"})
        if (reader.take(sign))
            return true;
    const auto key = wordsOf(reader.word());
    return key.size() == 1
           && std::find(words.range.begin(), words.range.end(), key.front()) != words.range.end();
}

/// "*", "**", "†", "1)", "(2)", "[a]", "#"
bool onlyMarks(std::string_view rest)
{
    rest = trimmed(rest);
    if (rest.empty())
        return true;
    for (const std::string_view mark : {"*", "†", "‡", "#", "§"}) {
        if (rest.starts_with(mark))
            return onlyMarks(rest.substr(mark.size()));
    }
    const char open = rest.front();
    const bool bracket = open == '(' || open == '[';
    const std::string_view inside = bracket ? rest.substr(1) : rest;
    const std::size_t end = inside.find_first_of(")]");
    return end != std::string_view::npos && end >= 1 && end <= 2
           && std::isalnum(static_cast<unsigned char>(inside.front()))
           && onlyMarks(inside.substr(end + 1));
}

/// Whether two figures are of one length but for the rounding of both.
bool isSame(double value, double step, Unit unit, const CellNumber& other, Unit otherUnit)
{
    const double size = factsOf(unit).size;
    const double otherSize = factsOf(otherUnit).size;
    const double rounding = 0.5 * (step * size + other.step * otherSize);
    constexpr double share = 0.01; // converted from a figure before it was rounded
    return std::abs(value * size - other.value * otherSize)
           <= rounding + share * std::abs(value * size);
}

/// "381 / 15.0", "15.0 / 381": of a length in inches as well the millimetres.
std::optional<CellNumber> inMillimetres(const CellNumber& one, const CellNumber& other)
{
    for (const auto& [mm, inches] : {std::pair(one, other), std::pair(other, one)})
        for (const double value : {mm.value, mm.grouped.value_or(mm.value)})
            if (value > 0.0 && mm.unit == Unit::None && inches.unit == Unit::None
                && isSame(value, mm.step, Unit::Millimetre, inches, Unit::Inch))
                return CellNumber{value, {}, {}, {}, mm.step, false, Unit::Millimetre};
    return std::nullopt;
}

/// "565 mm (22.2\")", "22.2 in / 565 mm", "565 mm 22.2\"", "5'1\" – 5'4\" (155–163 cm)": the same
/// but for the rounding of both.
bool sameInAnotherUnit(NumberReader reader, const CellNumber& number, const NumberWords& words)
{
    reader.blanks();
    const bool bracket = reader.take("(") || reader.take("[");
    if (!bracket)
        reader.take("/");
    auto other = oneNumber(reader);
    std::optional<CellNumber> high;
    if (other && number.high && rangeSign(reader, words)) {
        high = oneNumber(reader);
        if (high && other->unit == Unit::None)
            other->unit = high->unit;
    }
    reader.blanks();
    const bool closed = !bracket || reader.take(")") || reader.take("]");
    if (!other || !closed || !onlyMarks(reader.rest()) || number.unit == Unit::None
        || other->unit == Unit::None || other->unit == number.unit
        || number.high.has_value() != high.has_value())
        return false;
    return isSame(number.value, number.step, number.unit, *other, other->unit)
           && (!high || isSame(*number.high, number.step, number.unit, *high, other->unit));
}

} // namespace

std::optional<CellNumber> cellNumber(std::string_view cell, const NumberWords& words)
{
    cell = trimmed(cell);
    if (cell.empty() || cell.size() > longestCell)
        return std::nullopt;
    NumberReader reader(cell, words, {{}, true, 1});
    reader.about();
    auto number = oneNumber(reader);
    if (!number)
        return std::nullopt;
    if (onlyMarks(reader.rest()) || sameInAnotherUnit(reader, *number, words))
        return number;
    if (!rangeSign(reader, words))
        return std::nullopt;
    const bool slash = cell.substr(0, cell.size() - reader.rest().size()).ends_with('/');
    const auto high = oneNumber(reader);
    number->first = high && slash && high->value < number->value;
    if (high && slash && onlyMarks(reader.rest()))
        if (auto mm = inMillimetres(*number, *high))
            return mm;
    const bool mixed = high && number->unit != Unit::None && high->unit != Unit::None
                       && high->unit != number->unit;
    if (!high || mixed || (high->value < number->value && !slash))
        return std::nullopt;
    const bool whole = onlyMarks(reader.rest());
    if (!whole && number->first)
        return std::nullopt;
    if (number->first) {
        number->unit = number->unit == Unit::None ? high->unit : number->unit;
        return number;
    }
    number->high = high->value;
    number->step = std::min(number->step, high->step);
    if (number->grouped && high->grouped)
        number->groupedHigh = high->grouped;
    else
        number->grouped.reset();
    if (number->unit == Unit::None)
        number->unit = high->unit;
    return whole || sameInAnotherUnit(reader, *number, words) ? number : std::nullopt;
}

} // namespace tripoise
