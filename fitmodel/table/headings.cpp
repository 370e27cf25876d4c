// SPDX-License-Identifier: MIT
#include "table/headings.h"

#include "table/plain.h"

#include <algorithm>
#include <utility>

namespace tripoise {
namespace {

constexpr std::size_t longestHeading = 120;

bool isLetter(const std::string& word)
{
    const auto isAlpha = [](char c) { return c >= 'a' && c <= 'z'; };
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    return (word.size() == 1 && isAlpha(word[0]))
           || (word.size() == 2 && isAlpha(word[0]) && isDigit(word[1]));
}

bool isFigures(const std::string& word)
{
    return std::all_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::vector<std::string> without(const std::vector<std::string>& words,
                                 const std::unordered_set<std::string>& fillers)
{
    std::vector<std::string> kept;
    for (const std::string& word : words)
        if (!fillers.contains(word))
            kept.push_back(word);
    return kept.empty() ? words : kept;
}

std::string joined(const std::vector<std::string>& words)
{
    std::string key;
    for (const std::string& word : words)
        key += word;
    return key;
}

/// Takes words apart into terms of parts, longest first; every way of doing so until one has a
/// meaning.
class PartsReader {
public:
    PartsReader(const std::vector<std::string>& words, const HeadingParts& parts) : m_parts(parts)
    {
        for (const std::string& word : words) {
            m_starts.push_back(m_text.size());
            m_text += word;
        }
        m_starts.push_back(m_text.size());
    }

    /// The first meaning.
    std::optional<Column> column()
    {
        std::optional<Column> found;
        each([&](PartSet parts) {
            const auto at = m_parts.meanings.find(parts);
            if (at != m_parts.meanings.end())
                found = at->second;
            return found.has_value();
        });
        return found;
    }

    /// Every set that the words can stand for.
    std::vector<PartSet> sets()
    {
        std::vector<PartSet> result;
        each([&](PartSet parts) {
            result.push_back(parts);
            return false;
        });
        return result;
    }

private:
    static constexpr std::size_t mostSteps = 300;
    static constexpr std::size_t shortTerm = 2; // "st", "bb": only as words of their own

    template <typename Done> void each(Done&& done)
    {
        m_steps = 0;
        m_dead.assign(m_text.size() + 1, false);
        step(0, 0, done);
    }

    [[nodiscard]] bool isStart(std::size_t at) const
    {
        return std::binary_search(m_starts.begin(), m_starts.end(), at)
               || (at > 0 && at < m_text.size() && ((m_text[at] ^ m_text[at - 1]) & 0x80) != 0);
    }

    /// Whether it is done.
    template <typename Done> bool step(std::size_t at, PartSet parts, Done& done)
    {
        if (at == m_text.size()) {
            m_reached = true;
            return parts != 0 && done(parts);
        }
        if (m_dead[at])
            return false;
        if (++m_steps > mostSteps)
            return true;
        const bool before = std::exchange(m_reached, false);
        const bool isDone = stepFrom(at, parts, done);
        m_dead[at] = !m_reached && !isDone;
        m_reached = m_reached || before;
        return isDone;
    }

    template <typename Done> bool stepFrom(std::size_t at, PartSet parts, Done& done)
    {
        const std::string_view text = m_text;
        const std::size_t most = std::min(m_parts.longestTerm, m_text.size() - at);
        const bool starts = isStart(at);
        for (std::size_t length = most; length > 0; --length) {
            if (length <= shortTerm && (m_text[at] & 0x80) == 0
                && !(starts && isStart(at + length)))
                continue;
            const auto term = m_parts.terms.find(text.substr(at, length));
            if (term == m_parts.terms.end())
                continue;
            for (const PartSet one : term->second)
                if (step(at + length, parts | one, done))
                    return true;
        }
        if (starts) {
            const auto end = std::upper_bound(m_starts.begin(), m_starts.end(), at);
            const std::size_t to = end == m_starts.end() ? m_text.size() : *end;
            return m_parts.fillers.contains(text.substr(at, to - at)) && step(to, parts, done);
        }
        // What joins the pieces of a compound.
        for (const std::string_view link : {"s", "en", "n", "ns"})
            if (m_text.compare(at, link.size(), link) == 0 && step(at + link.size(), parts, done))
                return true;
        return false;
    }

    const HeadingParts& m_parts;
    std::string m_text;
    std::vector<std::size_t> m_starts; ///< of words, and the end
    std::size_t m_steps = 0;
    std::vector<bool> m_dead; ///< places from which the end cannot be reached
    bool m_reached = false;
};

class Reader {
public:
    Reader(std::string_view text, const HeadingTable& table) : m_table(table)
    {
        if (text.size() > longestHeading)
            return;
        m_words = wordsOf(text);
        if (text.find("°") != std::string_view::npos)
            m_read.unit = PrintUnit::Degree;
        else if (const std::size_t quote = text.find('"');
                 quote != std::string_view::npos && quote > 0
                 && isFigures(std::string(text.substr(quote - 1, 1))))
            ; // of the wheels, (29")
        else if (quote != std::string_view::npos)
            m_read.unit = PrintUnit::Inch;
        m_signs = m_read.unit != PrintUnit::None;
        match();
        if (m_read.unit == PrintUnit::Degree)
            takeAsAngle();
        for (const std::string& word : m_words)
            if (const auto at = m_table.parts.terms.find(word); at != m_table.parts.terms.end())
                for (const PartSet parts : at->second)
                    m_read.qualified |= (parts & m_table.parts.qualifiers) != 0;
        if (!m_read.understood() && m_read.letter.empty() && !m_read.onlyUnit)
            matchTwo(text);
        if (!m_read.understood() && m_read.letter.empty() && !m_read.onlyUnit)
            matchRest(text);
        // "Stack+" is more than the frame's.
        if (m_read.column && !m_read.second && text.find('+') != std::string_view::npos)
            m_read.guessed = true;
    }

    HeadingRead take() { return std::move(m_read); }

private:
    bool matches(const std::vector<std::string>& words)
    {
        if (words.empty())
            return false;
        const std::string key = exactKey(words);
        if (m_table.sizes.contains(key)
            || m_table.sizes.contains(joined(without(words, m_table.fillers)))) {
            m_read.isSize = true;
            return true;
        }
        const auto found = m_table.columns.find(key);
        if (found == m_table.columns.end())
            return false;
        m_read.column = found->second;
        return true;
    }

    /// With and without what stands beside a heading. Words that name a unit are one only where the
    /// rest is a heading, so that a term that holds them is found first.
    void match()
    {
        std::vector<std::string> words = m_words;
        if (matches(words))
            return;
        takeUnits(words);
        if (words.empty()) {
            m_read.onlyUnit = m_read.unit != PrintUnit::None;
            if (m_words.size() == 1 && isLetter(m_words.front()))
                m_read.letter = m_words.front(); // "G" is grams, or what is drawn as G
            return;
        }
        if (matches(words))
            return;
        if (words.size() == 1 && isLetter(words.front())) {
            m_read.letter = words.front();
            return;
        }
        // Footnote figures and numbers of a drawing, then a drawing letter before or behind.
        constexpr std::size_t mostFigures = 2;
        if (words.size() > 1 && isFigures(words.front()) && words.front().size() <= mostFigures)
            words.erase(words.begin());
        while (words.size() > 1 && isFigures(words.back()))
            words.pop_back();
        if (matches(words))
            return;
        const bool before = words.size() > 1 && isLetter(words.front());
        const bool behind = words.size() > 1 && isLetter(words.back());
        if (before && matches({words.begin() + 1, words.end()}))
            return;
        if (behind && matches({words.begin(), words.end() - 1}))
            return;
        if (matchesParts(words))
            return;
        if (std::find(m_words.begin(), m_words.end(), "in") != m_words.end()) { // or a preposition
            std::vector<std::string> all = m_words;
            std::erase_if(all, [&](const std::string& word) {
                return word != "in" && unitNamed(word, m_table.numbers) != PrintUnit::None;
            });
            if (matchesParts(all))
                return;
        }
        if (before && matchesParts({words.begin() + 1, words.end()}))
            return;
        if (behind)
            matchesParts({words.begin(), words.end() - 1});
    }

    bool matchesParts(const std::vector<std::string>& words)
    {
        constexpr std::size_t most = 14; // words: longer is prose
        if (words.size() > most)
            return false;
        m_read.column = PartsReader(words, m_table.parts).column();
        m_read.byParts = m_read.column.has_value();
        return m_read.byParts;
    }

    /// "Head (°)", "Seat tube in degrees": the unit says that it is the angle.
    void takeAsAngle()
    {
        if (m_read.column && unitOf(*m_read.column) == ColumnUnit::Degree)
            return;
        std::vector<std::string> words = m_words;
        takeUnits(words);
        for (const PartSet parts : PartsReader(words, m_table.parts).sets()) {
            const auto found = m_table.parts.meanings.find(parts | m_table.parts.angle);
            if (found == m_table.parts.meanings.end()
                || unitOf(found->second) != ColumnUnit::Degree)
                continue;
            m_read.column = found->second;
            m_read.byParts = true;
            return;
        }
    }

    /// Without what is told in brackets or behind "at".
    void matchRest(std::string_view text)
    {
        std::string rest;
        int open = 0;
        for (const char c : text) {
            open += c == '(' || c == '[' ? 1 : 0;
            if (open == 0)
                rest += c == '@' ? ' ' : c;
            open -= (c == ')' || c == ']') && open > 0 ? 1 : 0;
        }
        const std::size_t at = text.find('@');
        std::vector<std::string> words = wordsOf(std::string_view(rest).substr(0, at));
        const auto aside = std::find_if(words.begin(), words.end(), [&](const std::string& word) {
            return m_table.parts.asides.contains(word);
        });
        words.erase(aside, words.end());
        takeUnits(words);
        m_read.guessed = words.size() < m_words.size() && !words.empty()
                         && (matches(words) || matchesParts(words)) && !m_read.isSize;
        m_read.isSize = m_read.isSize && m_read.guessed;
    }

    /// "Head / seat angle": a part of the tube each, and the measure of the last.
    void matchTwo(std::string_view text)
    {
        const std::size_t sign = text.find_first_of("/&+");
        if (sign == std::string_view::npos)
            return;
        const auto setsOf = [&](std::string_view part) {
            std::vector<std::string> words = wordsOf(part);
            takeUnits(words);
            if (words.size() > 1 && isLetter(words.back()))
                words.pop_back();
            if (words.size() > 1 && (isLetter(words.front()) || isFigures(words.front())))
                words.erase(words.begin());
            return PartsReader(words, m_table.parts).sets();
        };
        const HeadingParts& parts = m_table.parts;
        const auto last = setsOf(text.substr(sign + 1));
        for (const PartSet one : setsOf(text.substr(0, sign)))
            for (const PartSet other : last) {
                const auto first = parts.meanings.find(one | (other & parts.measures));
                const auto second = parts.meanings.find(other);
                if (first == parts.meanings.end() || second == parts.meanings.end()
                    || first->second == second->second
                    || unitOf(first->second) != unitOf(second->second))
                    continue;
                m_read.column = first->second;
                m_read.second = second->second;
                m_read.byParts = true;
                return;
            }
    }

    void takeUnits(std::vector<std::string>& words)
    {
        std::erase_if(words, [&](const std::string& word) {
            const PrintUnit unit = unitNamed(word, m_table.numbers);
            if (unit == PrintUnit::None)
                return false;
            if (!m_signs)
                m_read.unit = unit;
            return true;
        });
    }

    const HeadingTable& m_table;
    std::vector<std::string> m_words;
    bool m_signs = false;
    HeadingRead m_read;
};

} // namespace

std::string exactKey(const std::vector<std::string>& words)
{
    return joined(words);
}

HeadingRead readHeading(std::string_view text, const HeadingTable& table)
{
    return Reader(text, table).take();
}

} // namespace tripoise
