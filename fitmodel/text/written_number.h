// SPDX-License-Identifier: MIT
//
// A number as it is written, with its unit: "5ft 10 1/2", "33.5in", "84,2 cm", "1m79", "73°30'",
// "12 st 3", "1 015 mm". One reader for what is typed into a field and for what stands in a cell.
//
// One point or comma before three figures may group thousands or be the decimal sign; both readings
// are kept. A smaller unit makes up a larger one where this is a whole multiple of it, and may be
// left out where only one follows: inches, pounds, minutes, millimetres, the decimals of a metre.
// Never throws; linear in the length of the text.
#pragma once

#include "base/units.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace tripoise {

/// Words beside numbers, whatever the language of the program (assets/number_words.json), by the
/// keys of `wordsOf`.
struct NumberWords {
    using Units = std::vector<std::pair<std::string, Unit>>;
    Units units;
    Units behindFigures;            ///< "m", "st": elsewhere something else
    std::vector<std::string> range; ///< "to", "bis"
    std::vector<std::string> about; ///< "ca."; as they stand, longest first
};

/// The unit that a word by itself stands for.
[[nodiscard]] Unit unitNamed(std::string_view word, const NumberWords& words);

/// "1.790" has two readings: with a decimal sign, and as grouped thousands.
struct Figures {
    std::optional<double> decimal;
    std::optional<double> grouped;
    char separator = 0;  ///< the one that may be either
    int digits = 0;      ///< in all
    int wholeDigits = 0; ///< before the decimal sign
    bool whole = false;  ///< nothing behind a decimal sign
    double step = 1.0;   ///< of the last one

    [[nodiscard]] double first() const { return decimal ? *decimal : grouped.value_or(0.0); }
};

struct WrittenNumber {
    Figures figures;           ///< in `unit`; of several parts, their sum
    Unit unit = Unit::None;    ///< the largest
    std::string_view unitText; ///< as it stands
    int parts = 1;
    bool tooMany = false;      ///< "5 ft 13": what follows is no part of the larger unit
    std::string_view notAUnit; ///< a word that stands where a unit would
};

/// What the place of a number tells of it.
struct NumberPlace {
    std::optional<NumberKind> kind;  ///< primes of an angle are minutes
    bool ranges = false;             ///< may stand there: "43/47" is no fraction
    std::size_t mostBeforeBlank = 3; ///< figures that a blank parts from a group of three
};

/// Reads from the left of plain text (`plainSigns`), a piece at a time.
class NumberReader {
public:
    NumberReader(std::string_view plain, const NumberWords& words, NumberPlace place)
        : m_rest(plain), m_words(words), m_place(place)
    {
    }

    [[nodiscard]] std::string_view rest() const { return m_rest; }
    bool take(std::string_view sign);
    void blanks();
    /// "ca.", "~"
    void about();
    /// Letters.
    [[nodiscard]] std::string_view word();
    /// The number that begins here; `assumed` is its unit where none is written.
    [[nodiscard]] std::optional<WrittenNumber> number(Unit assumed = Unit::None);

private:
    bool dash();
    void endSign();
    [[nodiscard]] std::string_view taken(std::size_t count);
    [[nodiscard]] std::string_view digits();
    [[nodiscard]] char at(std::size_t ahead) const;
    [[nodiscard]] std::optional<Figures> run();
    [[nodiscard]] std::optional<double> fraction(bool alone, double& step);
    [[nodiscard]] std::optional<Figures> figures();
    [[nodiscard]] std::optional<WrittenNumber> part(bool ofAngle);
    bool addPart(WrittenNumber& number, WrittenNumber& last);

    std::string_view m_rest;
    const NumberWords& m_words;
    NumberPlace m_place;
};

} // namespace tripoise
