// SPDX-License-Identifier: MIT
//
// assets/headings.json
#include "document/figures.h"
#include "document/plausible_columns.h"
#include "document/read.h"
#include "document/table_file.h"
#include "text/plain.h"

#include <algorithm>

namespace tripoise {

using namespace document;

namespace {

std::unordered_set<std::string> words(Fields& fields, std::string_view key)
{
    const auto list = wordList(fields, key);
    return {list.begin(), list.end()};
}

/// Terms by language; a term may stand in several, but for one column alone.
class Terms {
public:
    Terms(HeadingTable& table, Report& report) : m_table(table), m_report(report) {}

    void add(const std::string& text, Column column, const std::string& path)
    {
        const auto parts = wordsOf(text);
        const auto [at, isNew] = m_table.columns.try_emplace(exactKey(parts), column);
        if (!isNew && at->second != column) {
            Problem problem = problemAt(ProblemCode::Duplicate, path, text);
            problem.names.emplace_back(keyOf(at->second));
            m_report.add(std::move(problem));
        }
    }

private:
    HeadingTable& m_table;
    Report& m_report;
};

template <typename Each> void eachTerm(Fields& byLanguage, Each&& each)
{
    for (const auto& [language, list] : byLanguage.members()) {
        const std::string path = byLanguage.pathOf(language);
        for (const std::string& text : texts(byLanguage, language))
            each(text, path);
    }
}

/// The words of headings, and which sets of them have a meaning.
class PartsFile {
public:
    PartsFile(HeadingParts& parts, Report& report) : m_parts(parts), m_report(report) {}

    void read(Fields& fields)
    {
        for (const std::string& word : words(fields, "part_fillers"))
            m_parts.fillers.insert(word);
        if (auto terms = fields.needObject("parts"))
            for (const auto& [key, ignored] : terms->members())
                if (auto byLanguage = terms->needObject(key))
                    eachTerm(*byLanguage, [&, parts = partsOf(key, true, {})](
                                              const std::string& term, const std::string&) {
                        addTerm(exactKey(wordsOf(term)), parts);
                    });
        if (auto meanings = fields.needObject("meanings"))
            for (const auto& [key, ignored] : meanings->members()) {
                if (const auto column = columnFromKey(key))
                    for (const std::string& set : texts(*meanings, key))
                        addMeaning(set, *column, meanings->pathOf(key));
                else
                    m_report.add(problemAt(ProblemCode::UnknownKey, meanings->pathOf(key)));
            }
        for (const std::string& word : words(fields, "asides"))
            m_parts.asides.insert(word);
        m_parts.angle = partsOf("angle", false, {});
        m_parts.measures = partsOf("angle length height width", false, {});
        m_parts.qualifiers = partsOf("effective actual horizontal", false, {});
    }

private:
    void addTerm(const std::string& key, PartSet parts)
    {
        if (key.empty())
            return;
        auto& terms = m_parts.terms[static_cast<unsigned char>(key.front())];
        auto at = std::find_if(terms.begin(), terms.end(), [&](const PartTerm& term) {
            return term.text == key || term.text.size() < key.size();
        });
        if (at == terms.end() || at->text != key)
            at = terms.insert(at, {key, {}});
        if (std::find(at->parts.begin(), at->parts.end(), parts) == at->parts.end())
            at->parts.push_back(parts);
    }

    /// The parts named in a text; new ones only where they have terms.
    PartSet partsOf(std::string_view text, bool isNew, const std::string& path)
    {
        constexpr std::size_t most = 64; // bits
        PartSet result = 0;
        for (const std::string& name : namesIn(text)) {
            auto found = std::find(m_names.begin(), m_names.end(), name);
            if (found == m_names.end() && (!isNew || m_names.size() == most)) {
                m_report.add(problemAt(ProblemCode::UnknownKey, path, name));
                continue;
            }
            if (found == m_names.end())
                found = m_names.insert(m_names.end(), name);
            result |= PartSet(1) << static_cast<std::size_t>(found - m_names.begin());
        }
        return result;
    }

    static std::vector<std::string> namesIn(std::string_view text)
    {
        std::vector<std::string> names(1);
        for (const char c : text)
            if (c == ' ')
                names.emplace_back();
            else
                names.back() += c;
        return names;
    }

    /// Every set there is with and without what may be missing.
    void addMeaning(const std::string& set, Column column, const std::string& path)
    {
        std::vector<PartSet> sets{0};
        for (std::string name : namesIn(set)) {
            const bool mayMiss = name.ends_with('?');
            if (mayMiss)
                name.pop_back();
            const PartSet part = partsOf(name, false, path);
            const std::size_t count = sets.size();
            for (std::size_t i = 0; i < count; ++i) {
                if (mayMiss)
                    sets.push_back(sets[i]);
                sets[i] |= part;
            }
        }
        for (const PartSet one : sets) {
            const auto [at, isNew] = m_parts.meanings.try_emplace(one, column);
            if (!isNew && at->second != column) {
                Problem problem = problemAt(ProblemCode::Duplicate, path, set);
                problem.names.emplace_back(keyOf(at->second));
                m_report.add(std::move(problem));
            }
        }
    }

    HeadingParts& m_parts;
    Report& m_report;
    std::vector<std::string> m_names;
};

void readWheels(Fields fields, HeadingTable& table)
{
    for (const auto& [bead, names] : fields.members()) {
        double value = 0.0;
        for (const char c : bead)
            value = value * 10.0 + (c >= '0' && c <= '9' ? c - '0' : 0);
        for (const std::string& name : texts(fields, bead))
            table.wheels.emplace(smallLetters(name), value);
    }
}

void readLimits(Fields& fields, ReadingLimits& to)
{
    to.headingWorth = figure(fields, "heading_worth");
    to.dirtyCost = figure(fields, "dirty_cost");
    to.otherTableShare = figure(fields, "other_table_share");
    to.alikeShare = figure(fields, "alike_share");
    to.pairsShare = figure(fields, "pairs_share");
    to.smallFigureMm = figure(fields, "small_figure_mm");
    to.widestTyreInches = figure(fields, "widest_tyre_in");
    const auto count = [&](std::string_view key) {
        return static_cast<std::size_t>(figure(fields, key));
    };
    to.mostTables = count("most_tables");
    to.mostTwice = count("most_twice");
    to.longestTitle = count("longest_title_bytes");
    to.longestPageNumber = count("longest_page_number");
    to.mostBlankLines = count("most_blank_lines");
    to.mostBytesSearched = count("most_bytes_searched");
    to.mostLinesAbove = count("most_lines_above");
    to.mostTextsInCell = count("most_texts_in_cell");
    to.leastFlatCells = count("least_flat_cells");
    to.leastSentenceWords = count("least_sentence_words");
    to.joinedShare = figure(fields, "joined_share");
    to.leastCounted = count("least_counted");
    to.leastHeadedCells = count("least_headed_cells");
    to.longestNameWords = count("longest_name_words");
    to.longestHeadingWords = count("longest_heading_words");
    to.mostHeadingLineWords = count("most_heading_line_words");
    const auto ends = [&](std::string_view key) {
        auto one = fields.needObject(key);
        return one ? Range{figure(*one, "low"), figure(*one, "high")} : Range{};
    };
    to.sizes = ends("sizes");
    to.sizesMm = ends("sizes_mm");
}

} // namespace

std::variant<HeadingTable, Problems> readHeadingTable(std::string_view text, NumberWords numbers)
{
    HeadingTable table;
    table.numbers = std::move(numbers);
    Report report;
    const std::string name = "headings.json";
    const TableFile file(name, text, report);
    if (!file.readable())
        return report.take();
    Fields fields(file.json(), name, report);
    table.fillers = words(fields, "fillers");
    table.titleWords = words(fields, "title_words");
    table.sizeWords = words(fields, "size_words");
    table.pageWords = words(fields, "page_words");
    table.settingWords = words(fields, "setting_words");
    if (auto settings = fields.needObject("settings"))
        for (const bool high : {false, true})
            for (const std::string& word : words(*settings, high ? "high" : "low"))
                table.settings.emplace(word, high);
    if (auto reading = fields.needObject("reading"))
        readLimits(*reading, table.limits);
    for (const std::string& missing : texts(fields, "missing"))
        table.missing.insert(smallLetters(missing));
    Terms terms(table, report);
    if (auto columns = fields.needObject("columns")) {
        for (const auto& [key, ignored] : columns->members()) {
            const auto column = columnFromKey(key);
            if (!column) {
                report.add(problemAt(ProblemCode::UnknownKey, columns->pathOf(key)));
                continue;
            }
            if (auto byLanguage = columns->needObject(key))
                eachTerm(*byLanguage, [&](const std::string& term, const std::string& path) {
                    terms.add(term, *column, path);
                });
        }
    }
    PartsFile(table.parts, report).read(fields);
    if (auto sizes = fields.needObject("size"))
        eachTerm(*sizes, [&](const std::string& term, const std::string&) {
            table.sizes.insert(exactKey(wordsOf(term)));
            std::vector<std::string> kept = wordsOf(term);
            std::erase_if(kept, [&](const auto& word) { return table.fillers.contains(word); });
            table.sizes.insert(exactKey(kept));
        });
    if (auto wheels = fields.needObject("wheels"))
        readWheels(std::move(*wheels), table);
    for (std::size_t i = 0; i < columnCount; ++i)
        table.plausible[i] = plausibleOf(static_cast<Column>(i));
    if (!report.empty())
        return report.take();
    return table;
}

} // namespace tripoise
