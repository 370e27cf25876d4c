// SPDX-License-Identifier: MIT
#include "table/cell_number.h"

#include "table/plain.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>

namespace tripoise {
namespace {

constexpr std::size_t longestCell = 60;
constexpr std::string_view degreeSign = "°";

/// Reads from the left of a cell, a piece at a time.
class Scanner {
public:
    explicit Scanner(std::string_view text) : m_rest(text) {}

    [[nodiscard]] bool atEnd() const { return m_rest.empty(); }
    [[nodiscard]] std::string_view rest() const { return m_rest; }
    void go(std::string_view rest) { m_rest = rest; }
    void blanks()
    {
        m_rest = m_rest.substr(std::min(m_rest.find_first_not_of(' '), m_rest.size()));
    }
    bool take(std::string_view sign)
    {
        if (!m_rest.starts_with(sign))
            return false;
        m_rest.remove_prefix(sign.size());
        return true;
    }
    [[nodiscard]] std::string_view figures()
    {
        std::size_t count = 0;
        while (count < m_rest.size() && isFigure(m_rest[count]))
            ++count;
        const std::string_view result = m_rest.substr(0, count);
        m_rest.remove_prefix(count);
        return result;
    }
    /// Letters with points inside them, "n.d."; or bytes beyond ASCII.
    [[nodiscard]] std::string_view word()
    {
        std::size_t count = 0;
        while (count < m_rest.size()
               && (std::isalpha(static_cast<unsigned char>(m_rest[count])) || (m_rest[count] & 0x80)
                   || (count > 0 && m_rest[count] == '.')))
            ++count;
        const std::string_view result = m_rest.substr(0, count);
        m_rest.remove_prefix(count);
        return result;
    }

private:
    std::string_view m_rest;
};

double numberOf(const std::string& digits)
{
    double value = 0.0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
}

double stepOf(std::size_t decimals)
{
    return std::pow(10.0, -static_cast<double>(decimals));
}

/// " 015": three figures behind a blank, as the last thousand is grouped.
std::string groupBehind(Scanner& scanner)
{
    const std::string_view before = scanner.rest();
    const bool blank = scanner.take(" ");
    std::string figures(scanner.figures());
    if (blank && figures.size() == 3 && !scanner.rest().starts_with('/'))
        return figures;
    scanner.go(before);
    return {};
}

/// "1", "1.5", "1,015", "1.015,5", "1 015", ".5"
std::optional<CellNumber> plainNumber(Scanner& scanner)
{
    const std::string_view start = scanner.rest();
    std::string whole(scanner.figures());
    std::vector<std::pair<char, std::string>> parts;
    while (!scanner.atEnd() && (scanner.rest().front() == '.' || scanner.rest().front() == ',')) {
        const std::string_view before = scanner.rest();
        const char sign = before.front();
        scanner.go(before.substr(1));
        std::string figures(scanner.figures());
        if (figures.empty()) { // the end of a sentence
            scanner.go(before);
            break;
        }
        parts.emplace_back(sign, std::move(figures));
    }
    constexpr std::size_t mostFigures = 9;
    if ((whole.empty() && parts.empty()) || whole.size() > mostFigures || parts.size() > 3) {
        scanner.go(start);
        return std::nullopt;
    }
    if (whole.empty())
        whole = "0";
    CellNumber number;
    if (parts.empty()) {
        number.value = numberOf(whole);
        if (whole.size() == 1)
            number.value = numberOf(whole + groupBehind(scanner));
        return number;
    }
    for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        if (parts[i].second.size() != 3 || parts[i].first == parts.back().first)
            return std::nullopt;
        whole += parts[i].second;
    }
    const std::string& last = parts.back().second;
    if (last.size() > mostFigures)
        return std::nullopt;
    number.value = numberOf(whole + '.' + last);
    number.step = stepOf(last.size());
    if (parts.size() == 1 && last.size() == 3 && whole.size() <= 3 && whole != "0")
        number.grouped = numberOf(whole + last);
    return number;
}

/// " 1/2" after a whole number, or "3/4" alone: numerator and denominator.
std::optional<std::pair<double, double>> fraction(Scanner& scanner)
{
    const std::string_view start = scanner.rest();
    scanner.blanks();
    const std::string above(scanner.figures());
    if (!above.empty() && above.size() <= 2 && scanner.take("/")) {
        const std::string below(scanner.figures());
        const bool divides = below == "2" || below == "3" || below == "4" || below == "8"
                             || below == "16" || below == "32";
        if (divides && numberOf(above) < numberOf(below))
            return std::pair(numberOf(above), numberOf(below));
    }
    scanner.go(start);
    return std::nullopt;
}

PrintUnit unitAt(Scanner& scanner, const NumberWords& words)
{
    scanner.blanks();
    if (scanner.take(degreeSign))
        return PrintUnit::Degree;
    if (scanner.take("\"") || scanner.take("''"))
        return PrintUnit::Inch;
    const std::string_view before = scanner.rest();
    const PrintUnit unit = unitNamed(scanner.word(), words);
    if (unit == PrintUnit::None)
        scanner.go(before);
    return unit;
}

/// "30'" after a degree sign
void minutes(Scanner& scanner, CellNumber& number)
{
    const std::string_view before = scanner.rest();
    scanner.blanks();
    const std::string figures(scanner.figures());
    constexpr double perDegree = 60.0;
    if (!figures.empty() && figures.size() <= 2 && scanner.take("'")
        && numberOf(figures) < perDegree) {
        number.value += numberOf(figures) / perDegree;
        number.step = 1.0 / perDegree;
    } else {
        scanner.go(before);
    }
}

/// 5'8", 5 ft 8
bool feet(Scanner& scanner, CellNumber& number)
{
    constexpr double most = 7.0; // a person's height
    constexpr double inchesPerFoot = 12.0;
    const std::string_view before = scanner.rest();
    scanner.blanks();
    if (number.step != 1.0 || number.value > most || before.starts_with("''")
        || !(scanner.take("'") || scanner.take("ft"))) {
        scanner.go(before);
        return false;
    }
    scanner.blanks();
    const std::string inches(scanner.figures().substr(0, 2));
    number.value = inchesPerFoot * number.value + (inches.empty() ? 0.0 : numberOf(inches));
    number.unit = PrintUnit::Inch;
    scanner.blanks();
    for (const std::string_view sign : {"\"", "''", "in"})
        if (scanner.take(sign))
            break;
    return true;
}

std::optional<CellNumber> oneNumber(Scanner& scanner, const NumberWords& words)
{
    scanner.blanks();
    const bool negative = scanner.take("-");
    if (!negative)
        scanner.take("+");
    std::optional<CellNumber> number;
    if (const auto alone = fraction(scanner)) {
        number = CellNumber{alone->first / alone->second, {}, {}, {}, 1.0 / alone->second, {}};
    } else {
        number = plainNumber(scanner);
        if (!number)
            return std::nullopt;
        if (number->step == 1.0) {
            if (const auto part = fraction(scanner)) {
                number->value += part->first / part->second;
                number->step = 1.0 / part->second;
            }
        }
    }
    if (!feet(scanner, *number))
        number->unit = unitAt(scanner, words);
    if (number->unit == PrintUnit::Degree && number->step == 1.0)
        minutes(scanner, *number);
    if (negative) {
        number->value = -number->value;
        if (number->grouped)
            number->grouped = -*number->grouped;
    }
    return number;
}

/// Between the ends of a range.
bool rangeSign(Scanner& scanner, const NumberWords& words)
{
    scanner.blanks();
    for (const std::string_view sign : {"-", "–", "—", "...", "…", "..", "/", "~"})
        if (scanner.take(sign))
            return true;
    const auto key = wordsOf(scanner.word());
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

/// "565 mm (22.2\")", "22.2 in / 565 mm", "565 mm 22.2\""
bool sameInAnotherUnit(Scanner scanner, const CellNumber& number, const NumberWords& words)
{
    scanner.blanks();
    const bool bracket = scanner.take("(") || scanner.take("[");
    if (!bracket)
        scanner.take("/");
    const auto other = oneNumber(scanner, words);
    scanner.blanks();
    const bool closed = !bracket || scanner.take(")") || scanner.take("]");
    return other && closed && onlyMarks(scanner.rest()) && number.unit != PrintUnit::None
           && other->unit != PrintUnit::None && other->unit != number.unit;
}

} // namespace

PrintUnit unitNamed(std::string_view word, const NumberWords& words)
{
    if (word.empty())
        return PrintUnit::None;
    std::string key(word);
    if (const auto parts = wordsOf(word); parts.size() == 1)
        key = parts.front();
    else if (!parts.empty())
        return PrintUnit::None;
    for (const auto& [name, unit] : words.units)
        if (name == key)
            return unit;
    return PrintUnit::None;
}

std::optional<CellNumber> cellNumber(std::string_view cell, const NumberWords& words)
{
    cell = trimmed(cell);
    if (cell.empty() || cell.size() > longestCell)
        return std::nullopt;
    Scanner scanner(cell);
    for (const std::string& about : words.about) {
        if (scanner.take(about))
            break;
    }
    auto number = oneNumber(scanner, words);
    if (!number)
        return std::nullopt;
    if (onlyMarks(scanner.rest()) || sameInAnotherUnit(scanner, *number, words))
        return number;
    if (!rangeSign(scanner, words))
        return std::nullopt;
    const bool slash = cell.substr(0, cell.size() - scanner.rest().size()).ends_with('/');
    const auto high = oneNumber(scanner, words);
    number->first = high && slash && high->value < number->value;
    if (!high || !onlyMarks(scanner.rest()) || (high->value < number->value && !slash))
        return std::nullopt;
    if (number->first) {
        number->unit = number->unit == PrintUnit::None ? high->unit : number->unit;
        return number;
    }
    number->high = high->value;
    number->step = std::min(number->step, high->step);
    if (number->grouped && high->grouped)
        number->groupedHigh = high->grouped;
    else
        number->grouped.reset();
    if (number->unit == PrintUnit::None)
        number->unit = high->unit;
    return number;
}

} // namespace tripoise
