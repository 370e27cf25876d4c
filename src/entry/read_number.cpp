// SPDX-License-Identifier: MIT
#include "entry/read_number.h"

#include "text/plain.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <tuple>
#include <utility>

namespace tripoise {
namespace {

constexpr qsizetype longest = 200; // characters; no number is longer
constexpr double rounding = 1e-9;  // share of a value

/// The units that a bare number is tried in, behind the one shown.
std::span<const Unit> triedFor(NumberKind kind)
{
    static constexpr std::array lengths{Unit::Millimetre, Unit::Centimetre, Unit::Metre,
                                        Unit::Inch};
    static constexpr std::array masses{Unit::Kilogram, Unit::Pound};
    switch (kind) {
    case NumberKind::Length: return lengths;
    case NumberKind::Mass: return masses;
    default: return {};
    }
}

NumberRead odd(Oddity oddity, std::string_view word = {})
{
    NumberRead read;
    read.oddity = oddity;
    read.word = QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
    return read;
}

NumberRead judged(double value, Unit unit, const Range& plausible)
{
    NumberRead read;
    const double slack = rounding * std::abs(value);
    const bool below = value < plausible.low - slack;
    const bool above = value > plausible.high + slack;
    read.value = below || above ? value : std::clamp(value, plausible.low, plausible.high);
    read.unit = unit;
    read.oddity = below ? Oddity::Below : above ? Oddity::Above : Oddity::None;
    return read;
}

/// Figures in a unit, as a decimal or as thousands.
NumberRead judged(const Figures& figures, Unit unit, const Question& question)
{
    const double size = factsOf(unit).size;
    const NumberRead first = judged(size * figures.first(), unit, question.plausible);
    if (!figures.decimal || !figures.grouped)
        return first;
    NumberRead grouped = judged(size * *figures.grouped, unit, question.plausible);
    if (!grouped.sound())
        return first;
    if (!first.sound())
        return grouped;
    if (QLatin1Char(figures.separator) == question.decimalSign)
        return first;
    grouped.oddity = Oddity::Ambiguous;
    grouped.other = first.value;
    return grouped;
}

NumberRead answer(const WrittenNumber& number, const Question& question)
{
    const bool bare = number.unit == Unit::None;
    NumberRead read = judged(number.figures, bare ? question.shown : number.unit, question);
    if (number.parts > 1) // two bare ones have no unit that is written
        read.unitGuessed = number.unitText.empty();
    if (number.parts > 1 || read.sound() || read.oddity == Oddity::Ambiguous)
        return read;
    for (const Unit unit : triedFor(question.kind)) {
        NumberRead other = judged(number.figures, unit, question);
        if (!other.sound())
            continue;
        if (bare) {
            other.unitGuessed = true;
            return other;
        }
        read.oddity = Oddity::FitsOtherUnit;
        read.fitting = unit;
        break;
    }
    return read;
}

} // namespace

NumberRead readNumber(QStringView typed, const Question& question, const NumberWords& words)
{
    const QStringView shown = typed.trimmed();
    if (shown.size() > longest)
        return odd(Oddity::NotANumber);
    QString text = shown.toString().toLower();
    text.replace(u'~', u' ').replace(u'≈', u' '); // "about", before or behind
    const std::string plain = plainSigns(text.toStdString());
    NumberReader reader(plain, words, {question.kind});
    reader.about();
    if (reader.rest().empty())
        return odd(Oddity::Empty);
    const auto from = [&](Unit assumed) {
        NumberReader at = reader;
        auto number = at.number(assumed);
        at.blanks();
        return std::pair(std::move(number), at.rest());
    };
    auto [number, rest] = from(Unit::None);
    if (number && number->unit == Unit::None && question.kind == NumberKind::Length
        && !rest.empty()) // "5 10"
        std::tie(number, rest) = from(Unit::Foot);
    if (!number)
        return odd(Oddity::NotANumber);
    if (!number->unitText.empty() && factsOf(number->unit).kind != question.kind)
        return odd(Oddity::UnknownUnit, number->unitText);
    if (!number->notAUnit.empty())
        return odd(Oddity::UnknownUnit, number->notAUnit);
    if (number->tooMany)
        return odd(Oddity::TooManyParts);
    if (!rest.empty())
        return odd(Oddity::NotANumber);
    return answer(*number, question);
}

} // namespace tripoise
