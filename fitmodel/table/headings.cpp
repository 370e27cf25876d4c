// SPDX-License-Identifier: MIT
#include "table/headings.h"

#include "table/plain.h"

#include <algorithm>

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

class Reader {
public:
    Reader(std::string_view text, const HeadingTable& table) : m_table(table)
    {
        if (text.size() > longestHeading)
            return;
        m_words = wordsOf(text);
        if (text.find("°") != std::string_view::npos)
            m_read.unit = PrintUnit::Degree;
        else if (text.find('"') != std::string_view::npos)
            m_read.unit = PrintUnit::Inch;
        m_signs = m_read.unit != PrintUnit::None;
        match();
    }

    HeadingRead take() { return std::move(m_read); }

private:
    bool matches(const std::vector<std::string>& words)
    {
        if (words.empty())
            return false;
        const std::string key = exactKey(words);
        if (m_table.sizes.contains(key)) {
            m_read.isSize = true;
            return true;
        }
        auto found = m_table.columns.find(key);
        if (found == m_table.columns.end()) {
            found = m_table.loosely.find(looseKey(words, m_table.fillers));
            if (found == m_table.loosely.end())
                return false;
        }
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
            return;
        }
        if (matches(words))
            return;
        if (words.size() == 1 && isLetter(words.front())) {
            m_read.letter = words.front();
            return;
        }
        // Footnote figures, then a drawing letter before or behind.
        while (words.size() > 1 && isFigures(words.back()))
            words.pop_back();
        if (matches(words))
            return;
        if (words.size() > 1 && isLetter(words.front())
            && matches({words.begin() + 1, words.end()}))
            return;
        if (words.size() > 1 && isLetter(words.back()))
            matches({words.begin(), words.end() - 1});
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

std::string looseKey(const std::vector<std::string>& words,
                     const std::unordered_set<std::string>& fillers)
{
    std::vector<std::string> kept = without(words, fillers);
    std::sort(kept.begin(), kept.end());
    return joined(kept);
}

HeadingRead readHeading(std::string_view text, const HeadingTable& table)
{
    return Reader(text, table).take();
}

} // namespace tripoise
