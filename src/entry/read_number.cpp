// SPDX-License-Identifier: MIT
#include "entry/read_number.h"

#include "entry/number_tokens.h"
#include "entry/plain_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace tripoise {

using namespace entry;

namespace {

constexpr qsizetype longest = 200;        // characters; no number is longer
constexpr double largestDenominator = 64; // of an inch, as rules are divided
constexpr double rounding = 1e-9;         // share of a value

struct UnitWords {
    const char16_t* words; ///< each between blanks
    Unit unit;
};

// English and German, whatever the language of the program: people write what they are used to.
constexpr std::array unitWords{
    UnitWords{u" mm millimetre millimetres millimeter millimeters ", Unit::Millimetre},
    UnitWords{u" cm centimetre centimetres centimeter centimeters zentimeter ", Unit::Centimetre},
    UnitWords{u" m metre metres meter meters ", Unit::Metre},
    UnitWords{u" in ins inch inches zoll ", Unit::Inch},
    UnitWords{u" ft foot feet fu\u00df fuss ", Unit::Foot},
    UnitWords{u" kg kgs kilo kilos kilogram kilograms kilogramm ", Unit::Kilogram},
    UnitWords{u" g gram grams gramm ", Unit::Gram},
    UnitWords{u" lb lbs pound pounds ", Unit::Pound},
    UnitWords{u" oz ounce ounces ", Unit::Ounce},
    UnitWords{u" st stone stones ", Unit::Stone},
    UnitWords{u" deg degree degrees grad ", Unit::Degree},
    UnitWords{u" percent prozent ", Unit::Percent},
};

std::optional<Unit> unitOfWord(const QString& word)
{
    const QString sought = QLatin1Char(' ') + word + QLatin1Char(' ');
    for (const UnitWords& row : unitWords)
        if (QStringView(row.words).contains(sought))
            return row.unit;
    return std::nullopt;
}

std::optional<Unit> unitOfMark(QChar mark, NumberKind kind)
{
    const bool angle = kind == NumberKind::Angle;
    if (mark == QLatin1Char('\''))
        return angle ? Unit::ArcMinute : Unit::Foot;
    if (mark == QLatin1Char('"'))
        return angle ? Unit::ArcSecond : Unit::Inch;
    if (mark == QChar(u'\u00b0'))
        return Unit::Degree;
    if (mark == QLatin1Char('%'))
        return Unit::Percent;
    return std::nullopt;
}

/// The unit that is left out behind a larger one: "5 ft 10", "12 st 3", "73° 30".
std::optional<Unit> nextSmaller(Unit unit)
{
    switch (unit) {
    case Unit::Foot: return Unit::Inch;
    case Unit::Stone: return Unit::Pound;
    case Unit::Degree: return Unit::ArcMinute;
    case Unit::Centimetre: return Unit::Millimetre;
    default: return std::nullopt;
    }
}

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

struct Term {
    Figures figures;
    std::optional<Unit> unit;
};

class Reader {
public:
    Reader(std::vector<Token> tokens, const Question& question)
        : m_tokens(std::move(tokens)), m_question(question)
    {
    }

    NumberRead read()
    {
        m_sign = takeSign();
        while (m_at < m_tokens.size())
            if (!takeTerm())
                return m_failure;
        if (m_terms.empty())
            return odd(Oddity::NotANumber);
        if (m_terms.size() > 1)
            return compound();
        return m_terms.front().unit ? withUnit() : bare();
    }

private:
    [[nodiscard]] const Token* peek(std::size_t ahead = 0) const
    {
        return m_at + ahead < m_tokens.size() ? &m_tokens[m_at + ahead] : nullptr;
    }
    [[nodiscard]] bool markAt(std::size_t ahead, char mark) const
    {
        const Token* token = peek(ahead);
        return token && token->kind == Token::Kind::Mark && token->mark == QLatin1Char(mark);
    }
    [[nodiscard]] const Figures* figuresAt(std::size_t ahead) const
    {
        const Token* token = peek(ahead);
        return token && token->kind == Token::Kind::Figures ? &token->figures : nullptr;
    }

    double takeSign()
    {
        const bool minus = markAt(0, '-');
        if (minus || markAt(0, '+'))
            ++m_at;
        return minus ? -1.0 : 1.0;
    }

    bool fail(Oddity oddity, const QString& word = {})
    {
        m_failure = odd(oddity);
        m_failure.word = word;
        return false;
    }

    /// "1/2" at a place, or nothing.
    [[nodiscard]] std::optional<double> fractionAt(std::size_t ahead) const
    {
        const Figures* above = figuresAt(ahead);
        const Figures* below = figuresAt(ahead + 2);
        if (!above || !below || !markAt(ahead + 1, '/') || !above->whole || !below->whole)
            return std::nullopt;
        const double divisor = below->first();
        if (divisor < 2.0 || divisor > largestDenominator || above->first() >= divisor)
            return std::nullopt;
        return above->first() / divisor;
    }

    /// "10", "1/2", "10 1/2" or "10-1/2".
    std::optional<Figures> takeFigures()
    {
        if (const auto fraction = fractionAt(0)) {
            m_at += 3;
            return Figures{fraction, {}, {}, 0, false};
        }
        const Figures* first = figuresAt(0);
        if (!first || markAt(1, '/'))
            return std::nullopt;
        Figures figures = *first;
        ++m_at;
        const std::size_t dash = markAt(0, '-') ? 1 : 0;
        if (const auto fraction = figures.whole ? fractionAt(dash) : std::nullopt) {
            figures.decimal = figures.first() + *fraction;
            figures.grouped.reset();
            figures.whole = false;
            m_at += 3 + dash;
        }
        return figures;
    }

    bool takeTerm()
    {
        // 5'-10"
        if (!m_terms.empty() && m_terms.back().unit == Unit::Foot && markAt(0, '-'))
            ++m_at;
        const auto figures = takeFigures();
        if (!figures)
            return fail(Oddity::NotANumber);
        Term term{*figures, {}};
        if (const Token* token = peek()) {
            if (token->kind == Token::Kind::Word) {
                term.unit = unitOfWord(token->word);
                if (!term.unit || factsOf(*term.unit).kind != m_question.kind)
                    return fail(Oddity::UnknownUnit, token->word);
                ++m_at;
            } else if (token->kind == Token::Kind::Mark) {
                term.unit = unitOfMark(token->mark, m_question.kind);
                if (!term.unit)
                    return fail(Oddity::NotANumber);
                if (factsOf(*term.unit).kind != m_question.kind)
                    return fail(Oddity::UnknownUnit, token->mark);
                ++m_at;
            }
        }
        m_terms.push_back(term);
        return true;
    }

    [[nodiscard]] bool plausible(double value) const
    {
        const Range& range = m_question.plausible;
        const double slack = rounding * std::abs(value);
        return value >= range.low - slack && value <= range.high + slack;
    }

    [[nodiscard]] NumberRead odd(Oddity oddity) const
    {
        NumberRead read;
        read.oddity = oddity;
        return read;
    }

    [[nodiscard]] NumberRead judged(double value, Unit unit) const
    {
        NumberRead read;
        const Range& range = m_question.plausible;
        read.value = plausible(value) ? std::clamp(value, range.low, range.high) : value;
        read.unit = unit;
        read.oddity = plausible(value)                   ? Oddity::None
                      : value < m_question.plausible.low ? Oddity::Below
                                                         : Oddity::Above;
        return read;
    }

    /// One run of figures in a unit, as a decimal or as thousands.
    [[nodiscard]] NumberRead judged(const Figures& figures, Unit unit) const
    {
        const double size = m_sign * factsOf(unit).size;
        const NumberRead first = judged(size * figures.first(), unit);
        if (!figures.decimal || !figures.grouped)
            return first;
        NumberRead grouped = judged(size * *figures.grouped, unit);
        if (!grouped.sound())
            return first;
        if (!first.sound())
            return grouped;
        if (figures.separator == m_question.decimalSign)
            return first;
        grouped.oddity = Oddity::Ambiguous;
        grouped.other = first.value;
        return grouped;
    }

    [[nodiscard]] NumberRead bare() const
    {
        const Figures& figures = m_terms.front().figures;
        const NumberRead shown = judged(figures, m_question.shown);
        if (shown.sound() || shown.oddity == Oddity::Ambiguous)
            return shown;
        for (const Unit unit : triedFor(m_question.kind)) {
            NumberRead read = judged(figures, unit);
            if (read.sound()) {
                read.unitGuessed = unit != m_question.shown;
                return read;
            }
        }
        return shown;
    }

    [[nodiscard]] NumberRead withUnit() const
    {
        const Term& term = m_terms.front();
        NumberRead read = judged(term.figures, *term.unit);
        if (read.sound() || read.oddity == Oddity::Ambiguous)
            return read;
        for (const Unit unit : triedFor(m_question.kind))
            if (judged(term.figures, unit).sound()) {
                read.oddity = Oddity::FitsOtherUnit;
                read.fitting = unit;
                return read;
            }
        return read;
    }

    /// Feet and inches without a word: "5 10".
    [[nodiscard]] bool feetAndInchesUnsaid() const
    {
        return m_question.kind == NumberKind::Length && m_terms.size() == 2 && !m_terms[0].unit
               && (!m_terms[1].unit || m_terms[1].unit == Unit::Inch);
    }

    NumberRead compound()
    {
        const bool guessed = feetAndInchesUnsaid();
        if (guessed) {
            m_terms[0].unit = Unit::Foot;
            m_terms[1].unit = Unit::Inch;
        }
        double sum = 0.0;
        for (std::size_t i = 0; i < m_terms.size(); ++i) {
            Term& term = m_terms[i];
            const bool last = i + 1 == m_terms.size();
            if (!last && (!term.unit || !term.figures.whole))
                return odd(Oddity::NotANumber);
            double amount = term.figures.first();
            if (!term.unit && m_terms[i - 1].unit == Unit::Metre) {
                // 1m79: the decimals of the metre
                constexpr int mostDigits = 3;
                if (term.figures.wholeDigits < 1 || term.figures.wholeDigits > mostDigits)
                    return odd(Oddity::NotANumber);
                amount *= std::pow(10.0, -term.figures.wholeDigits);
                sum += amount * factsOf(Unit::Metre).size;
                continue;
            }
            if (!term.unit)
                term.unit = nextSmaller(*m_terms[i - 1].unit);
            if (!term.unit)
                return odd(Oddity::NotANumber);
            const double size = factsOf(*term.unit).size;
            if (i > 0) {
                const double larger = factsOf(*m_terms[i - 1].unit).size;
                if (size >= larger)
                    return odd(Oddity::NotANumber);
                if (amount * size >= larger * (1.0 - rounding))
                    return odd(Oddity::TooManyParts);
            }
            sum += amount * size;
        }
        NumberRead read = judged(m_sign * sum, *m_terms.front().unit);
        read.unitGuessed = guessed;
        return read;
    }

    std::vector<Token> m_tokens;
    const Question& m_question;
    std::size_t m_at = 0;
    double m_sign = 1.0;
    std::vector<Term> m_terms;
    NumberRead m_failure;
};

} // namespace

NumberRead readNumber(QStringView typed, const Question& question)
{
    NumberRead read;
    const QStringView trimmed = typed.trimmed();
    if (trimmed.size() > longest) {
        read.oddity = Oddity::NotANumber;
        return read;
    }
    const QString plain = plainText(trimmed).trimmed();
    if (plain.isEmpty())
        return read;
    auto tokens = tokensOf(plain);
    if (!tokens) {
        read.oddity = Oddity::NotANumber;
        return read;
    }
    return Reader(std::move(*tokens), question).read();
}

} // namespace tripoise
