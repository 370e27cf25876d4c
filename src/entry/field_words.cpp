// SPDX-License-Identifier: MIT
#include "entry/field_words.h"

#include "wording/speech.h"
#include "wording/words.h"

#include <cmath>

namespace tripoise {
namespace {

constexpr int inchDecimals = 2;
constexpr int poundDecimals = 1;

/// As few decimals as say it.
QString shortest(double value, int most)
{
    for (int decimals = 0; decimals < most; ++decimals) {
        const double scale = std::pow(10.0, decimals);
        if (std::abs(std::round(value * scale) / scale - value) < 0.5 * std::pow(10.0, -most - 1))
            return plain(value, decimals);
    }
    return plain(value, most);
}

QString withUnit(double value, const FieldSpec& spec)
{
    const QString unit = unitName(shownUnit(spec));
    const QString text = fieldText(value, spec);
    return unit.isEmpty() || spec.stature ? text
                                          : Words::tr("%1 %2", "number and unit").arg(text, unit);
}

} // namespace

QChar decimalSign()
{
    return speech().locale.decimalPoint().at(0);
}

Unit shownUnit(const FieldSpec& spec)
{
    const bool imperial = speech().units == Units::Imperial && spec.marked == Marked::AsTheBody;
    switch (spec.kind) {
    case NumberKind::Length: return imperial ? Unit::Inch : Unit::Millimetre;
    case NumberKind::Mass: return imperial ? Unit::Pound : Unit::Kilogram;
    case NumberKind::Angle: return Unit::Degree;
    case NumberKind::Percent: return Unit::Percent;
    case NumberKind::Plain: return Unit::None;
    }
    return Unit::None;
}

QString unitName(Unit unit)
{
    switch (unit) {
    case Unit::Millimetre: return Words::tr("mm");
    case Unit::Centimetre: return Words::tr("cm");
    case Unit::Metre: return Words::tr("m", "metres");
    case Unit::Inch: return Words::tr("in", "inches");
    case Unit::Foot: return Words::tr("ft", "feet");
    case Unit::Kilogram: return Words::tr("kg");
    case Unit::Gram: return Words::tr("g", "grams");
    case Unit::Pound: return Words::tr("lb", "pounds");
    case Unit::Ounce: return Words::tr("oz", "ounces");
    case Unit::Stone: return Words::tr("st", "stones, the weight");
    case Unit::Degree: return QStringLiteral("°");
    case Unit::Percent: return QStringLiteral("%");
    default: return {};
    }
}

QString fieldText(double value, const FieldSpec& spec)
{
    const Unit unit = shownUnit(spec);
    if (spec.stature && unit == Unit::Inch)
        return bodyLength(value);
    const int decimals = unit == Unit::Inch    ? inchDecimals
                         : unit == Unit::Pound ? poundDecimals
                                               : spec.decimals;
    return shortest(value / factsOf(unit).size, decimals);
}

QString plausibleRange(const FieldSpec& spec)
{
    if (spec.stature && shownUnit(spec) == Unit::Inch)
        return Words::tr("%1 to %2")
            .arg(fieldText(spec.plausible.low, spec), fieldText(spec.plausible.high, spec));
    return Words::tr("%1 to %2")
        .arg(fieldText(spec.plausible.low, spec), withUnit(spec.plausible.high, spec));
}

QString guessedUnit(const NumberRead& read)
{
    switch (read.unit) {
    case Unit::Millimetre: return Words::tr("read as millimetres");
    case Unit::Centimetre: return Words::tr("read as centimetres");
    case Unit::Metre: return Words::tr("read as metres");
    case Unit::Inch: return Words::tr("read as inches");
    case Unit::Foot: return Words::tr("read as feet and inches");
    case Unit::Kilogram: return Words::tr("read as kilograms");
    case Unit::Pound: return Words::tr("read as pounds");
    default: return {};
    }
}

QString complaint(const NumberRead& read, const FieldSpec& spec)
{
    const QString range = plausibleRange(spec);
    switch (read.oddity) {
    case Oddity::None: return {};
    case Oddity::Empty: return Words::tr("A number is needed here: %1.").arg(range);
    case Oddity::UnknownUnit:
        return Words::tr("“%1” is no unit for this. It takes %2.").arg(read.word, range);
    case Oddity::TooManyParts:
        return Words::tr("The second number is too large for its unit. It takes %1.").arg(range);
    case Oddity::Ambiguous:
        return Words::tr("That can be %1 or %2; write it with its unit.")
            .arg(withUnit(read.value, spec), withUnit(read.other, spec));
    case Oddity::Below:
        return Words::tr("%1 is less than can be; it takes %2.")
            .arg(withUnit(read.value, spec), range);
    case Oddity::Above:
        return Words::tr("%1 is more than can be; it takes %2.")
            .arg(withUnit(read.value, spec), range);
    case Oddity::FitsOtherUnit:
        return Words::tr("%1 cannot be; was it in %2? It takes %3.")
            .arg(withUnit(read.value, spec), unitName(read.fitting), range);
    case Oddity::NotANumber: return Words::tr("That is no number. It takes %1.").arg(range);
    }
    return {};
}

} // namespace tripoise
