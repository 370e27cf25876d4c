// SPDX-License-Identifier: MIT
//
// What a number typed into a field (`text/written_number.h`) answers to what the field asks for.
//
// A number with a unit means what it says. A bare one is in the unit shown beside the field; where
// that cannot be, in the first of mm, cm, m, in (kg, lb) in which it can, and the answer says that
// the unit was guessed; so it does of two bare ones, which are feet and inches. Of two readings of
// a point or comma the plausible one counts; where both are, the language's decimal sign decides,
// and for the other sign nothing is guessed. Never throws; linear in the length of the text.
#pragma once

#include "base/range.h"
#include "text/written_number.h"

#include <QChar>
#include <QString>
#include <QStringView>

namespace tripoise {

/// What a field asks for.
struct Question {
    NumberKind kind = NumberKind::Length;
    Unit shown = Unit::Millimetre; ///< of a bare number
    Range plausible;               ///< both ends belong to it; mm, kg, degrees, share of one
    QChar decimalSign = QLatin1Char('.');
};

enum class Oddity : std::uint8_t {
    None,
    Empty,
    NotANumber,
    UnknownUnit,   ///< `word` is not a unit, or not of what is asked
    TooManyParts,  ///< "5 ft 13": the smaller unit makes up a larger one
    Ambiguous,     ///< `value` or `other`
    Below,         ///< `value` is less than what is plausible
    Above,         ///< `value` is more than what is plausible
    FitsOtherUnit, ///< `value` is out of the range, the same figure in `fitting` is not
};

struct NumberRead {
    Oddity oddity = Oddity::Empty;
    double value = 0.0;     ///< mm, kg, degrees, share of one; where a number was found
    Unit unit = Unit::None; ///< the largest it was read in
    bool unitGuessed = false;
    double other = 0.0;
    Unit fitting = Unit::None;
    QString word;

    [[nodiscard]] bool sound() const { return oddity == Oddity::None; }
};

[[nodiscard]] NumberRead readNumber(QStringView typed, const Question& question,
                                    const NumberWords& words);

} // namespace tripoise
