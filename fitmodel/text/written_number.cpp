// SPDX-License-Identifier: MIT
#include "text/written_number.h"

#include "text/encoding.h"
#include "text/plain.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace tripoise {
namespace {

constexpr std::size_t groupSize = 3;
constexpr double rounding = 1e-9; // share of a value

double valueOf(const std::string& digits)
{
    double value = 0.0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
}

bool isDecimalSign(char c)
{
    return c == '.' || c == ',';
}

/// Letters of any script; not the signs, dashes and blanks that have codes among them.
bool isOfAWord(char32_t c)
{
    if (c < 0xC0)
        return isLetter(static_cast<char>(c < 0x80 ? c : 0));
    return c != 0xD7 && c != 0xF7 && !(c >= 0x2000 && c < 0x2C00) && !(c >= 0x3000 && c < 0x3021)
           && c != noCharacter;
}

bool areThousands(const std::vector<std::string_view>& groups, std::size_t count)
{
    if (groups.front().empty() || groups.front().size() > groupSize
        || groups.front().front() == '0')
        return false;
    return std::all_of(groups.begin() + 1, groups.begin() + static_cast<std::ptrdiff_t>(count),
                       [](std::string_view group) { return group.size() == groupSize; });
}

std::optional<Figures> readingsOf(const std::vector<std::string_view>& groups,
                                  const std::string& separators)
{
    std::string whole;
    for (const std::string_view group : groups)
        whole += group;
    Figures figures;
    figures.digits = figures.wholeDigits = static_cast<int>(whole.size());
    figures.whole = true;
    if (separators.empty()) {
        figures.decimal = valueOf(whole);
        return figures;
    }
    const auto count = [&](char sign) {
        return static_cast<std::size_t>(std::count(separators.begin(), separators.end(), sign));
    };
    const std::size_t last = groups.size() - 1;
    if (isDecimalSign(separators.back()) && count(separators.back()) == 1) {
        if (last > 1 && !areThousands(groups, last))
            return std::nullopt;
        const std::size_t decimals = groups.back().size();
        figures.decimal = valueOf(std::string(whole).insert(whole.size() - decimals, "."));
        figures.wholeDigits -= static_cast<int>(decimals);
        figures.whole = false;
        figures.step = std::pow(10.0, -static_cast<double>(decimals));
    }
    if (count(separators.front()) == separators.size() && areThousands(groups, groups.size())) {
        figures.grouped = valueOf(whole);
        figures.separator = separators.front();
    }
    return figures.decimal || figures.grouped ? std::optional(figures) : std::nullopt;
}

Unit unitIn(const NumberWords::Units& units, std::string_view word)
{
    const auto key = wordsOf(word);
    if (key.size() == 1)
        for (const auto& [name, unit] : units)
            if (name == key.front())
                return unit;
    return Unit::None;
}

} // namespace

Unit unitNamed(std::string_view word, const NumberWords& words)
{
    return unitIn(words.units, word);
}

bool NumberReader::take(std::string_view sign)
{
    if (!m_rest.starts_with(sign))
        return false;
    m_rest.remove_prefix(sign.size());
    return true;
}

void NumberReader::blanks()
{
    (void)taken(m_rest.find_first_not_of(" \t"));
}

void NumberReader::about()
{
    blanks();
    for (const std::string& about : m_words.about)
        if (smallLetters(m_rest.substr(0, about.size())) == about) {
            m_rest.remove_prefix(about.size());
            return blanks();
        }
}

bool NumberReader::dash()
{
    return take("-") || take("–") || take("—");
}

std::string_view NumberReader::taken(std::size_t count)
{
    const std::string_view taken = m_rest.substr(0, count);
    m_rest.remove_prefix(taken.size());
    return taken;
}

std::string_view NumberReader::word()
{
    std::size_t end = 0;
    for (std::size_t next = 0; next < m_rest.size() && isOfAWord(nextCharacter(m_rest, next));)
        end = next;
    return taken(end);
}

std::string_view NumberReader::digits()
{
    return taken(m_rest.find_first_not_of("0123456789"));
}

char NumberReader::at(std::size_t ahead) const
{
    return ahead < m_rest.size() ? m_rest[ahead] : '\0';
}

/// "84." on the way to "84.2", or the end of a sentence
void NumberReader::endSign()
{
    if (isDecimalSign(at(0)) && at(1) != '.')
        m_rest.remove_prefix(1);
}

/// "1", "1.5", "1,015", "1.015,5", "1 015", "1'015", ".5"
std::optional<Figures> NumberReader::run()
{
    if (!isFigure(at(0)) && !(isDecimalSign(at(0)) && isFigure(at(1))))
        return std::nullopt;
    std::vector<std::string_view> groups{digits()};
    std::string separators;
    while (true) {
        const char sign = at(0);
        const std::size_t before = groups.back().size();
        const std::size_t most = sign == ' ' ? m_place.mostBeforeBlank : groupSize;
        const bool decimal = isDecimalSign(sign) && isFigure(at(1));
        const char behind = at(groupSize + (at(groupSize + 1) == ' ' ? 2 : 1));
        const bool group = (sign == ' ' || sign == '\'' || sign == '_') && before > 0
                           && before <= most && (separators.empty() || separators.back() == sign)
                           && isGroup(m_rest.substr(1)) && behind != '/'; // "5 100/2"
        if (!decimal && !group)
            break;
        separators += sign;
        m_rest.remove_prefix(1);
        groups.push_back(digits());
    }
    endSign();
    return readingsOf(groups, separators);
}

/// "3/4"
std::optional<double> NumberReader::fraction(bool alone, double& step)
{
    constexpr double largest = 64.0; // of an inch, as rules are divided
    constexpr std::array ofRules{2.0, 3.0, 4.0, 8.0, 16.0, 32.0};
    const std::string_view before = m_rest;
    const auto mayPart = [&] {
        if (!m_place.ranges) // "3 / 4" is one
            blanks();
    };
    const std::string above(digits());
    mayPart();
    if (!above.empty() && take("/")) {
        mayPart();
        const std::string below(digits());
        const double divisor = valueOf(below);
        const bool divides =
            alone && m_place.ranges
                ? std::find(ofRules.begin(), ofRules.end(), divisor) != ofRules.end()
                : divisor >= 2.0 && divisor <= largest;
        if (divides && valueOf(above) < divisor) {
            step = 1.0 / divisor;
            endSign();
            return valueOf(above) / divisor;
        }
    }
    m_rest = before;
    return std::nullopt;
}

/// "10", "1/2", "10 1/2" or "10-1/2"
std::optional<Figures> NumberReader::figures()
{
    Figures alone;
    if ((alone.decimal = fraction(true, alone.step)))
        return alone;
    auto figures = run();
    if (!figures || !figures->whole)
        return figures;
    const std::string_view before = m_rest;
    blanks();
    if (dash())
        blanks();
    if (const auto part = fraction(false, figures->step)) {
        figures->decimal = figures->first() + *part;
        figures->grouped.reset();
        figures->whole = false;
    } else {
        m_rest = before;
    }
    return figures;
}

std::optional<WrittenNumber> NumberReader::part(bool ofAngle)
{
    const auto read = figures();
    if (!read)
        return std::nullopt;
    WrittenNumber part;
    part.figures = *read;
    const std::string_view behind = m_rest;
    blanks();
    const std::string_view begin = m_rest;
    if (take("''") || take("\""))
        part.unit = ofAngle ? Unit::ArcSecond : Unit::Inch;
    else if (take("'"))
        part.unit = ofAngle ? Unit::ArcMinute : Unit::Foot;
    else if (take("°"))
        part.unit = Unit::Degree;
    else if (take("%"))
        part.unit = Unit::Percent;
    else if (const std::string_view found = word(); !found.empty()) {
        part.unit = unitNamed(found, m_words);
        const bool capital = found.size() == 1 && found.front() < 'a'; // "54 M" is a size
        if (part.unit == Unit::None && !capital)
            part.unit = unitIn(m_words.behindFigures, found);
        part.notAUnit = part.unit == Unit::None ? found : std::string_view();
    }
    if (part.unit == Unit::None) {
        m_rest = behind;
        return part;
    }
    part.unitText = begin.substr(0, begin.size() - m_rest.size());
    if (isLetter(part.unitText.front()) && at(1) != '.')
        take("."); // of an abbreviation
    return part;
}

/// A smaller part behind the last, as the last one; false, and nothing read, where there is none.
bool NumberReader::addPart(WrittenNumber& number, WrittenNumber& last)
{
    if (last.unit == Unit::None || !last.figures.whole)
        return false;
    const std::string_view before = m_rest;
    const UnitFacts& larger = factsOf(last.unit);
    blanks();
    if (last.unit == Unit::Foot && !number.unitText.empty()) // 5'-10"
        dash();
    auto next = part(larger.kind == NumberKind::Angle);
    const bool footnote = at(0) == ')' || at(0) == ']' || at(0) == '/'; // or another number
    double size = 0.0;
    if (next && next->unit == Unit::None && next->notAUnit.empty() && !footnote) {
        constexpr int mostDecimals = 3;
        const int digits = next->figures.wholeDigits;
        next->unit = larger.leftOut;
        if (next->unit != Unit::None)
            size = factsOf(next->unit).size;
        else if (last.unit == Unit::Metre && digits >= 1 && digits <= mostDecimals)
            size = larger.size * std::pow(10.0, -digits); // 1m79
    } else if (next && factsOf(next->unit).kind == larger.kind) {
        size = factsOf(next->unit).size;
    } else if (next) {
        number.notAUnit = next->notAUnit.empty() ? next->unitText : next->notAUnit;
    }
    const double times = size > 0.0 ? larger.size / size : 0.0;
    const bool isPart = times > 1.0 && std::abs(times - std::round(times)) <= rounding * times;
    const double amount = next ? next->figures.first() * size : 0.0;
    number.tooMany = isPart && amount >= larger.size * (1.0 - rounding);
    if (!isPart || number.tooMany) {
        m_rest = before;
        return false;
    }
    const double whole = factsOf(number.unit).size;
    number.figures.decimal = number.figures.first() + amount / whole;
    number.figures.grouped.reset();
    number.figures.step = next->figures.step * size / whole;
    number.figures.digits = std::max(number.figures.digits, next->figures.digits);
    ++number.parts;
    last = *next;
    return true;
}

std::optional<WrittenNumber> NumberReader::number(Unit assumed)
{
    const std::string_view before = m_rest;
    blanks();
    const bool negative = dash();
    if (!negative)
        take("+");
    blanks();
    auto number = part(m_place.kind == NumberKind::Angle);
    if (!number) {
        m_rest = before;
        return std::nullopt;
    }
    if (number->unit == Unit::None)
        number->unit = assumed;
    for (WrittenNumber last = *number; addPart(*number, last);)
        ;
    if (negative)
        for (auto* reading : {&number->figures.decimal, &number->figures.grouped})
            if (*reading)
                *reading = -**reading;
    return number;
}

} // namespace tripoise
