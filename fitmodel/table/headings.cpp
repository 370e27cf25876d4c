// SPDX-License-Identifier: MIT
#include "table/headings.h"

#include "text/plain.h"

#include <algorithm>
#include <utility>

namespace tripoise {
namespace {

constexpr std::size_t longestHeading = 120;

/// "a", "b1"
bool isDrawnAs(const std::string& word)
{
    return isLetter(word[0]) && (word.size() == 1 || (word.size() == 2 && isFigure(word[1])));
}

/// "α" of a drawing's angle, as it stands: no word has it.
bool isGreek(std::string_view text)
{
    return text.size() == 2 && (text[0] == '\xCE' || text[0] == '\xCF');
}

bool isFigures(const std::string& word)
{
    return std::all_of(word.begin(), word.end(), isFigure);
}

/// Takes words apart into terms of parts, longest first: every set of parts that they can stand
/// for, worked out once for each place from which it is asked.
class PartsReader {
public:
    PartsReader(const std::vector<std::string>& words, const HeadingParts& parts) : m_parts(parts)
    {
        for (const std::string& word : words) {
            m_starts.push_back(m_text.size());
            m_text += word;
        }
        m_starts.push_back(m_text.size());
        m_sets.resize(m_text.size() + 1);
    }

    /// The first meaning.
    std::optional<Column> column()
    {
        for (const PartSet set : sets())
            if (const auto at = m_parts.meanings.find(set); at != m_parts.meanings.end())
                return at->second;
        return std::nullopt;
    }

    std::vector<PartSet> sets()
    {
        std::vector<PartSet> result = setsFrom(0);
        std::erase(result, PartSet(0));
        return result;
    }

private:
    static constexpr std::size_t mostSets = 64;
    static constexpr std::size_t shortTerm = 2; // "st", "bb": only as words of their own

    [[nodiscard]] bool isStart(std::size_t at) const
    {
        return std::binary_search(m_starts.begin(), m_starts.end(), at)
               || (at > 0 && at < m_text.size() && ((m_text[at] ^ m_text[at - 1]) & 0x80) != 0);
    }

    const std::vector<PartSet>& setsFrom(std::size_t at)
    {
        if (!m_sets[at])
            m_sets[at] = workedOut(at);
        return *m_sets[at];
    }

    std::vector<PartSet> workedOut(std::size_t at)
    {
        if (at == m_text.size())
            return {0};
        std::vector<PartSet> found;
        const auto add = [&](PartSet one, std::size_t to) {
            for (const PartSet rest : setsFrom(to))
                if (found.size() < mostSets
                    && std::find(found.begin(), found.end(), one | rest) == found.end())
                    found.push_back(one | rest);
        };
        const std::string_view text = std::string_view(m_text).substr(at);
        const bool starts = isStart(at);
        for (const auto& [term, parts] : m_parts.terms[static_cast<unsigned char>(text.front())]) {
            const bool isShort = term.size() <= shortTerm && (term.front() & 0x80) == 0;
            if (text.starts_with(term) && (!isShort || (starts && isStart(at + term.size()))))
                for (const PartSet one : parts)
                    add(one, at + term.size());
        }
        if (starts) {
            const std::size_t to = *std::upper_bound(m_starts.begin(), m_starts.end(), at);
            if (m_parts.fillers.contains(text.substr(0, to - at)))
                add(0, to);
            return found;
        }
        // What joins the pieces of a compound.
        for (const std::string_view link : {"s", "en", "n", "ns"})
            if (text.starts_with(link))
                add(0, at + link.size());
        return found;
    }

    const HeadingParts& m_parts;
    std::string m_text;
    std::vector<std::size_t> m_starts;                       ///< of words, and the end
    std::vector<std::optional<std::vector<PartSet>>> m_sets; ///< by place
};

class Reader {
public:
    Reader(std::string_view text, const HeadingTable& table) : m_table(table)
    {
        for (const std::string_view sign : {"ⓘ", "ℹ"}) // an explanation behind it, copied along
            text = text.substr(0, std::max<std::size_t>(1, text.find(sign)));
        if (text.size() > longestHeading)
            return;
        m_words = wordsOf(text);
        if (m_words.empty() && isGreek(trimmed(text)))
            m_read.letter = std::string(trimmed(text));
        if (text.find("°") != std::string_view::npos)
            m_read.unit = Unit::Degree;
        else if (const std::size_t quote = text.find('"');
                 quote != std::string_view::npos && quote > 0
                 && isFigures(std::string(text.substr(quote - 1, 1))))
            ; // of the wheels, (29")
        else if (quote != std::string_view::npos)
            m_read.unit = Unit::Inch;
        m_signs = m_read.unit != Unit::None;
        match();
        if (m_read.unit == Unit::Degree)
            takeAsAngle();
        for (const std::string& word : m_words)
            for (const auto& [term, parts] :
                 m_table.parts.terms[static_cast<unsigned char>(word.front())])
                for (const PartSet one : parts)
                    m_read.qualified |= term == word && (one & m_table.parts.qualifiers) != 0;
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
        std::vector<std::string> kept = words;
        std::erase_if(kept, [&](const auto& word) { return m_table.fillers.contains(word); });
        if (m_table.sizes.contains(key) || m_table.sizes.contains(exactKey(kept))
            || isSizes(words)) {
            m_read.isSize = true;
            return true;
        }
        const auto found = m_table.columns.find(key);
        if (found == m_table.columns.end())
            return false;
        m_read.column = found->second;
        return true;
    }

    /// "Größe / Size"
    [[nodiscard]] bool isSizes(const std::vector<std::string>& words) const
    {
        return std::all_of(words.begin(), words.end(),
                           [&](const std::string& word) { return m_table.sizes.contains(word); });
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
            m_read.onlyUnit = m_read.unit != Unit::None;
            if (m_words.size() == 1 && isDrawnAs(m_words.front()))
                m_read.letter = m_words.front(); // "G" is grams, or what is drawn as G
            return;
        }
        if (matches(words))
            return;
        if (words.size() == 1 && isDrawnAs(words.front())) {
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
        const bool before = words.size() > 1 && isDrawnAs(words.front());
        const bool behind = words.size() > 1 && isDrawnAs(words.back());
        if (before && matches({words.begin() + 1, words.end()}))
            return;
        if (behind && matches({words.begin(), words.end() - 1}))
            return;
        if (matchesSetting() || matchesParts(words))
            return;
        if (std::find(m_words.begin(), m_words.end(), "in") != m_words.end()) { // or a preposition
            std::vector<std::string> all = m_words;
            std::erase_if(all, [&](const std::string& word) {
                return word != "in" && unitNamed(word, m_table.numbers) != Unit::None;
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
        if (m_read.column && unitOf(*m_read.column) == Unit::Degree)
            return;
        std::vector<std::string> words = m_words;
        takeUnits(words);
        for (const PartSet parts : PartsReader(words, m_table.parts).sets()) {
            const auto found = m_table.parts.meanings.find(parts | m_table.parts.angle);
            if (found == m_table.parts.meanings.end() || unitOf(found->second) != Unit::Degree)
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

    /// "Head angle (low / high)": which rows are of which setting shows where there are others, so
    /// that one alone is a guess.
    bool matchesSetting()
    {
        std::vector<std::string> words = m_words;
        std::vector<Setting> settings;
        std::erase_if(words, [&](const std::string& word) {
            const auto found = m_table.settings.find(word);
            if (found == m_table.settings.end())
                return false;
            settings.push_back({found->second, word});
            return true;
        });
        const bool two = settings.size() == 2 && settings.front().high != settings.back().high;
        if (settings.size() != 1 && !two)
            return false;
        takeUnits(words);
        std::vector<std::string> fewer = words;
        std::erase_if(fewer, [&](const auto& word) { return m_table.settingWords.contains(word); });
        m_read.guessed =
            matches(words) || matchesParts(words) || matches(fewer) || matchesParts(fewer);
        if (std::exchange(m_read.isSize, false))
            m_read.guessed = false;
        if (m_read.guessed)
            m_read.settings = std::move(settings);
        return m_read.guessed;
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
            if (words.size() > 1 && isDrawnAs(words.back()))
                words.pop_back();
            if (words.size() > 1 && (isDrawnAs(words.front()) || isFigures(words.front())))
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
            const Unit unit = unitNamed(word, m_table.numbers);
            if (unit == Unit::None)
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

std::string withoutSettings(std::string_view text, const HeadingTable& table,
                            std::vector<Setting>& settings)
{
    const auto isOfWord = [](char c) { return isLetter(c) || (c & 0x80) != 0; };
    std::string rest;
    for (std::size_t i = 0; i < text.size();) {
        std::size_t end = i;
        while (end < text.size() && isOfWord(text[end]))
            ++end;
        const std::vector<std::string> words = wordsOf(text.substr(i, end - i));
        const auto found =
            words.size() == 1 ? table.settings.find(words.front()) : table.settings.end();
        if (found == table.settings.end()) {
            end = std::max(end, i + 1);
            rest += text.substr(i, end - i);
        } else {
            settings.push_back({found->second, words.front()});
            const bool bracket = rest.ends_with('(') && end < text.size() && text[end] == ')';
            rest.resize(rest.size() - (bracket ? 1 : 0));
            end += bracket ? 1 : 0;
        }
        i = end;
    }
    return rest;
}

std::string exactKey(const std::vector<std::string>& words)
{
    std::string key;
    for (const std::string& word : words)
        key += word;
    return key;
}

HeadingRead readHeading(std::string_view text, const HeadingTable& table)
{
    return Reader(text, table).take();
}

} // namespace tripoise
