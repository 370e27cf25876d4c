// SPDX-License-Identifier: MIT
#include "table/places.h"

#include "table/titles.h"
#include "text/plain.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tripoise::table {
namespace {

class Finder {
public:
    Finder(const Grid& grid, const Sheet& sheet, const Extent& extent, const HeadingTable& table)
        : m_grid(grid), m_sheet(sheet), m_extent(extent), m_table(table)
    {
        sortPlaces();
        for (std::size_t at = 0; at < m_sheet.length(); ++at)
            if (m_result.of[at] == Place::Values)
                m_result.values.push_back(at);
        findSizeLine();
        leaveOtherUnits();
        nameSizes();
    }

    Places take() { return std::move(m_result); }

private:
    /// Whether a line of the sheet has a heading.
    [[nodiscard]] bool hasHeading(std::size_t line) const
    {
        const GridCell& cell = m_sheet.cell(line, m_result.headingAt);
        return m_extent.anyHeading ? m_extent.isHeading(cell) : line > 0 && !cell.text.empty();
    }

    void sortPlaces()
    {
        std::vector<std::size_t> headings(m_sheet.length(), 0);
        for (std::size_t at = 0; at < m_sheet.length(); ++at)
            for (std::size_t line = 0; line < m_sheet.lines(); ++line)
                headings[at] += m_extent.isHeading(m_sheet.cell(line, at)) ? 1 : 0;
        m_result.headingAt = static_cast<std::size_t>(
            std::max_element(headings.begin(), headings.end()) - headings.begin());
        for (std::size_t at = 0; at < m_sheet.length(); ++at)
            m_result.of.push_back(at == m_result.headingAt ? Place::Heading : sorted(at));
    }

    [[nodiscard]] Place sorted(std::size_t at) const
    {
        // "Weight: 1.9 kg" below sizes of many columns is no size.
        const GridRow& row = m_grid.rows[m_sheet.place(0, at).row];
        if (m_extent.sizesDown && 2 * row.size() < m_sheet.lines()
            && !isSizeName(row.front().text, m_table))
            return Place::Note;
        std::size_t full = 0;
        std::size_t values = 0;
        std::size_t units = 0;
        std::size_t letters = 0;
        for (std::size_t line = 0; line < m_sheet.lines(); ++line) {
            const GridCell& cell = m_sheet.cell(line, at);
            if (cell.text.empty() || !hasHeading(line))
                continue;
            ++full;
            if (cell.isValue())
                ++values;
            else if (cell.kind == CellKind::Unit)
                ++units;
            else
                letters += cell.heading->letter.empty() ? 0 : 1;
        }
        return full == 0                           ? Place::Note
               : units == full                     ? Place::Unit
               : letters == full || isCounting(at) ? Place::Letter
               : 2 * values >= full                ? Place::Values
                                                   : Place::Note;
    }

    /// "1", "2", "3": the numbers of the rows, or of a drawing.
    [[nodiscard]] bool isCounting(std::size_t at) const
    {
        std::size_t lines = 0;
        std::size_t count = 0;
        double last = 0.0;
        for (std::size_t line = 0; line < m_sheet.lines(); ++line) {
            if (!hasHeading(line))
                continue;
            const auto number = cellNumber(m_sheet.text(line, at), m_table.numbers);
            ++lines;
            if (!number)
                continue;
            const double value = number->value;
            if (value <= last || value != std::floor(value) || (count == 0 && value > 2.0))
                return false;
            last = value;
            ++count;
        }
        return count >= m_table.limits.leastCounted && 2 * count >= lines;
    }

    void findSizeLine()
    {
        auto& line = m_result.sizeLine;
        std::size_t first = m_grid.rows.size(); // of the rows with such a heading
        for (std::size_t i = 0; i < m_sheet.lines(); ++i)
            for (std::size_t at = 0; at < m_sheet.length(); ++at)
                if (const std::size_t row = m_sheet.place(i, at).row;
                    row < first && isSizeHeading(i, at)) {
                    line = i;
                    first = row;
                }
        m_sizesUnnamed = !line;
        if (line && isOfTitles(*line))
            ++*line;
        if (m_sizesUnnamed)
            findUnnamed();
    }

    /// Whether the line of sizes holds names of models, merged over sizes in the line below: their
    /// heading stands in both.
    [[nodiscard]] bool isOfTitles(std::size_t line) const
    {
        if (line + 1 >= m_sheet.lines())
            return false;
        std::set<std::string> names;
        for (const std::size_t at : m_result.values) {
            const std::string& below = m_sheet.text(line + 1, at);
            const auto number = cellNumber(below, m_table.numbers);
            names.insert(m_sheet.text(line, at));
            if (isSizeName(m_sheet.text(line, at), m_table)
                || !(number ? isSizeNumber(number->value) : isSizeName(below, m_table)))
                return false;
        }
        const std::string& heading = m_sheet.text(line + 1, m_result.headingAt);
        return 2 * names.size() <= m_result.values.size()
               && (heading.empty() || heading == m_sheet.text(line, m_result.headingAt));
    }

    [[nodiscard]] bool isSizeHeading(std::size_t line, std::size_t at) const
    {
        return m_result.of[at] != Place::Values && m_sheet.cell(line, at).heading->isSize;
    }

    /// How much a line looks like one of sizes' names: by letters, figures that are sizes, other
    /// words; not at all by other figures, or if they are all the same.
    [[nodiscard]] int likeSizes(std::size_t line) const
    {
        std::size_t full = 0;
        std::size_t sizes = 0;
        std::size_t numbers = 0;
        double last = 0.0;
        bool rising = true;
        bool same = true;
        for (const std::size_t at : m_result.values) {
            const std::string& text = m_sheet.text(line, at);
            same = same && text == m_sheet.text(line, m_result.values.front());
            const auto number = cellNumber(text, m_table.numbers);
            full += text.empty() ? 0 : 1;
            sizes += isSizeName(text, m_table) ? 1 : 0;
            if (!number)
                continue;
            ++numbers;
            const double twice = 2.0 * number->value;
            rising = rising && number->value > last && isSizeNumber(number->value)
                     && twice == std::floor(twice);
            last = number->value;
        }
        if (full == 0 || 2 * full < m_result.values.size() || (same && full > 1)
            || isUnitLine(m_sheet, line))
            return 0;
        if (numbers == full)
            return rising ? ofNumbers : 0;
        return sizes == full ? ofNumbers + 1 : ofNumbers - 1;
    }

    static constexpr int ofNumbers = 2;

    [[nodiscard]] bool isSizeNumber(double value) const
    {
        const auto in = [value](const Range& range) {
            return value >= range.low && value <= range.high;
        };
        return in(m_table.limits.sizes) || in(m_table.limits.sizesMm);
    }

    /// Of the lines before the first heading the one that looks most like names of sizes, the last
    /// of several, of several of numbers the first; or the last below all headings, if it looks
    /// more like it.
    void findUnnamed()
    {
        int most = 1;
        const auto offer = [&](std::size_t line, int like) {
            most = like;
            m_result.sizeLine = line;
        };
        for (std::size_t line = 0; line < m_sheet.lines() && !hasHeading(line); ++line)
            if (const int like = isMeasure(line) ? 0 : likeSizes(line);
                like > most || (like == most && like != ofNumbers))
                offer(line, like);
        for (std::size_t line = m_sheet.lines(); line-- > 0 && !hasHeading(line);)
            if (const int like = isMeasure(line) ? 0 : likeSizes(line); like >= ofNumbers) {
                if (!m_result.sizeLine || like > most)
                    offer(line, like);
                return;
            }
    }

    /// A line of units below the sizes: a size that stands twice, or without a name behind another,
    /// is the same in another unit.
    void leaveOtherUnits()
    {
        const std::size_t next = m_result.sizeLine.value_or(m_sheet.lines()) + 1;
        if (next >= m_sheet.lines() || !isUnitLine(m_sheet, next))
            return;
        std::vector<std::size_t> kept;
        for (const std::size_t at : m_result.values) {
            const std::string& name = m_sheet.text(next - 1, at);
            const bool again = !kept.empty()
                               && (name.empty() || name == m_sheet.text(next - 1, kept.back()))
                               && m_sheet.cell(next, at).heading->unit
                                      != m_sheet.cell(next, kept.back()).heading->unit;
            if (again)
                m_result.of[at] = Place::Note;
            else
                kept.push_back(at);
        }
        m_result.values = std::move(kept);
    }

    void nameSizes()
    {
        SizesFound& sizes = m_result.sizes;
        const auto line = m_result.sizeLine;
        sizes.named = line.has_value();
        findSettings();
        std::string name;
        for (std::size_t i = 0; i < m_result.values.size(); ++i) {
            const std::size_t at = m_result.values[i];
            const std::string own = line ? m_sheet.text(*line, at) : std::string();
            // A name merged over its settings is copied as the first alone.
            name = own.empty() && !sizes.settings.empty() ? name : own;
            sizes.guessed = sizes.guessed || (line && name.empty());
            sizes.cells.push_back(line ? m_sheet.existing(*line, at) : std::nullopt);
            sizes.names.push_back(name.empty() ? std::to_string(i + 1) : name);
        }
        sizes.guessed = sizes.guessed || (line && m_sizesUnnamed && isMeasureMaybe(*line));
        if (line && sizes.settings.empty())
            takeSettings();
        if (line && sizes.settings.empty())
            nameByNextLine(*line);
        else if (!line && m_result.values.size() == 1)
            sizeInTitle();
        for (std::size_t at = 0; line && at < m_sheet.length(); ++at)
            if (isSizeHeading(*line, at))
                sizes.headings.push_back(m_sheet.place(*line, at));
    }

    /// "Bike reach": a word of it is one that headings are made of.
    [[nodiscard]] bool isMeasure(std::size_t line) const
    {
        if (!isMeasureMaybe(line))
            return false;
        const std::vector<std::string> words = wordsOf(m_sheet.text(line, m_result.headingAt));
        return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
            const auto& terms = m_table.parts.terms[static_cast<unsigned char>(word.front())];
            return std::any_of(terms.begin(), terms.end(),
                               [&](const PartTerm& term) { return term.text == word; });
        });
    }

    /// "Sedge", 48, 51, 54: numbers behind words that are no title of a table.
    [[nodiscard]] bool isMeasureMaybe(std::size_t line) const
    {
        const std::vector<std::string> words = wordsOf(m_sheet.text(line, m_result.headingAt));
        const std::string& head = m_sheet.text(line, m_result.headingAt);
        const bool titled = std::any_of(words.begin(), words.end(), [&](const std::string& word) {
            return m_table.titleWords.contains(word);
        });
        return likeSizes(line) == ofNumbers && !words.empty()
               && (!titled || readHeading(titleOf(head, m_table), m_table).understood());
    }

    /// A line that says of each size in which setting it is: "Low", "High".
    void findSettings()
    {
        for (std::size_t line = 0; line < m_sheet.lines() && m_result.sizeLine; ++line) {
            std::vector<Setting> settings;
            for (const std::size_t at : m_result.values)
                if (auto one = settingIn(m_sheet.text(line, at), m_table))
                    settings.push_back(std::move(*one));
            if (line == m_result.sizeLine || !areSettings(settings))
                continue;
            m_result.sizes.settings = std::move(settings);
            m_result.secondSizeLine = line;
            for (std::size_t at = 0; at < m_sheet.length(); ++at)
                if (!m_sheet.text(line, at).empty())
                    m_result.sizes.headings.push_back(m_sheet.place(line, at));
            return;
        }
    }

    /// One of each size, and both of them.
    [[nodiscard]] bool areSettings(const std::vector<Setting>& settings) const
    {
        const auto isHigh = [](const Setting& one) { return one.high; };
        return settings.size() == m_result.values.size()
               && std::any_of(settings.begin(), settings.end(), isHigh)
               && !std::all_of(settings.begin(), settings.end(), isHigh);
    }

    /// "S low", "S (high)"
    void takeSettings()
    {
        constexpr std::string_view signs = " (-/,";
        SizesFound& sizes = m_result.sizes;
        std::vector<std::string> names;
        std::vector<Setting> settings;
        for (const std::string& name : sizes.names) {
            const std::size_t sign = name.find_last_of(signs);
            const std::size_t end =
                sign == std::string::npos ? sign : name.find_last_not_of(signs, sign);
            if (end == std::string::npos)
                return;
            if (auto one = settingIn(name.substr(sign), m_table))
                settings.push_back(std::move(*one));
            names.push_back(name.substr(0, end + 1));
        }
        if (!areSettings(settings))
            return;
        sizes.names = std::move(names);
        sizes.settings = std::move(settings);
    }

    /// One size for two sizes of wheel: "M" over "27.5" and "29".
    void nameByNextLine(std::size_t line)
    {
        std::vector<std::string> names = m_result.sizes.names;
        const auto isTwice = [&names] {
            return std::any_of(names.begin(), names.end(), [&](const std::string& name) {
                return std::count(names.begin(), names.end(), name) > 1;
            });
        };
        const std::size_t next = line + 1;
        if (!isTwice() || next >= m_sheet.lines())
            return;
        const GridCell& head = m_sheet.cell(next, m_result.headingAt);
        if (!head.text.empty() && head.text != m_sheet.text(line, m_result.headingAt)
            && head.heading->column != Column::BeadSeat)
            return;
        for (std::size_t i = 0; i < names.size(); ++i)
            if (const std::string& more = m_sheet.text(next, m_result.values[i]); !more.empty())
                names[i] += ' ' + more;
        if (isTwice())
            return;
        m_result.sizes.names = std::move(names);
        if (head.heading->column)
            return;
        m_result.secondSizeLine = next;
        for (std::size_t at = 0; at < m_sheet.length(); ++at)
            if (!m_sheet.text(next, at).empty())
                m_result.sizes.headings.push_back(m_sheet.place(next, at));
    }

    /// "Kettlebridge 56" above a single size, or its name alone; of several names above nothing
    /// says which it is.
    void sizeInTitle()
    {
        SizesFound& sizes = m_result.sizes;
        std::vector<std::size_t> names;
        for (std::size_t r = 0; r < m_extent.from; ++r)
            if (namesOneSize(m_grid.rows[r], m_table))
                names.push_back(r);
        if (!names.empty()) {
            sizes.named = names.size() == 1;
            if (sizes.named) {
                sizes.names.front() = m_grid.rows[names.front()].front().text;
                sizes.cells.front() = CellPlace{names.front(), 0};
            }
            return;
        }
        for (std::size_t r = 0; r < m_extent.from && !sizes.named; ++r) {
            const std::string& title = m_grid.rows[r].front().text;
            const std::size_t blank = title.rfind(' ');
            if (m_grid.rows[r].size() != 1 || blank == std::string::npos)
                continue;
            const std::string last = title.substr(blank + 1);
            const auto number = cellNumber(last, m_table.numbers);
            sizes.named = number ? isSizeNumber(number->value) : isSizeName(last, m_table);
            if (sizes.named)
                sizes.names.front() = last;
            sizes.inModel = sizes.named;
        }
    }

    const Grid& m_grid;
    const Sheet& m_sheet;
    const Extent& m_extent;
    const HeadingTable& m_table;
    bool m_sizesUnnamed = false; ///< no heading says which line names the sizes
    Places m_result;
};

} // namespace

bool isUnitLine(const Sheet& sheet, std::size_t line)
{
    std::size_t units = 0;
    for (std::size_t at = 0; at < sheet.length(); ++at) {
        const CellKind kind = sheet.cell(line, at).kind;
        if (kind != CellKind::Unit && kind != CellKind::Blank)
            return false;
        units += kind == CellKind::Unit ? 1 : 0;
    }
    return units > 0;
}

Places placesOf(const Grid& grid, const Sheet& sheet, const Extent& extent,
                const HeadingTable& table)
{
    return Finder(grid, sheet, extent, table).take();
}

} // namespace tripoise::table
