// SPDX-License-Identifier: MIT
#include "table/layout.h"

#include "table/plain.h"

#include <algorithm>
#include <map>

namespace tripoise {
namespace {

constexpr std::size_t longestTitle = 60;
constexpr double sameHeadings = 0.6; // of the best line's, in the heading line of another table

bool isLength(PrintUnit unit)
{
    return unit == PrintUnit::Millimetre || unit == PrintUnit::Centimetre
           || unit == PrintUnit::Metre || unit == PrintUnit::Inch;
}

std::size_t filled(const GridRow& row)
{
    return static_cast<std::size_t>(std::count_if(row.cells.begin(), row.cells.end(),
                                                  [](const auto& c) { return !c.empty(); }));
}

/// The unit that a note or a title of a group states; "in" is a word there as well.
PrintUnit statedIn(std::string_view text, const HeadingTable& table)
{
    for (const std::string& word : wordsOf(text)) {
        const PrintUnit unit = unitNamed(word, table.numbers);
        if ((isLength(unit) || unit == PrintUnit::Degree) && word != "in")
            return unit;
    }
    return PrintUnit::None;
}

/// What is drawn as A, B, C and named elsewhere: "A = stack, B = reach".
class Legend {
public:
    /// Whether the text is one.
    bool take(std::string_view text, const HeadingTable& table)
    {
        bool any = false;
        std::size_t start = 0;
        while (start < text.size()) {
            const std::size_t end = std::min(text.find_first_of(",;|", start), text.size());
            any = takeOne(trimmed(text.substr(start, end - start)), table) || any;
            start = end + 1;
        }
        return any;
    }
    [[nodiscard]] const HeadingRead* named(const std::string& letter) const
    {
        const auto found = m_named.find(letter);
        return found == m_named.end() ? nullptr : &found->second;
    }

private:
    bool takeOne(std::string_view text, const HeadingTable& table)
    {
        const std::size_t sign = text.find_first_of("=:)-.");
        if (sign == std::string_view::npos || sign + 1 >= text.size())
            return false;
        const auto letter = wordsOf(trimmed(text.substr(0, sign)));
        if (letter.size() != 1 || letter.front().size() > 2)
            return false;
        const HeadingRead heading = readHeading(trimmed(text.substr(sign + 1)), table);
        if (!heading.column)
            return false;
        m_named.try_emplace(letter.front(), heading);
        return true;
    }

    std::map<std::string, HeadingRead> m_named;
};

/// The grid so that headings stand at the start of each line.
class Sheet {
public:
    Sheet(const Grid& grid, std::size_t from, std::size_t to, bool turned)
        : m_grid(grid), m_from(from), m_to(to), m_turned(turned)
    {
        for (std::size_t r = from; r < to; ++r)
            m_widest = std::max(m_widest, grid.rows[r].cells.size());
    }

    [[nodiscard]] std::size_t lines() const { return m_turned ? m_widest : m_to - m_from; }
    [[nodiscard]] std::size_t length() const { return m_turned ? m_to - m_from : m_widest; }
    [[nodiscard]] CellPlace place(std::size_t line, std::size_t at) const
    {
        return m_turned ? CellPlace{m_from + at, line} : CellPlace{m_from + line, at};
    }
    [[nodiscard]] const std::string& text(std::size_t line, std::size_t at) const
    {
        static const std::string none;
        const CellPlace p = place(line, at);
        const auto& cells = m_grid.rows[p.row].cells;
        return p.cell < cells.size() ? cells[p.cell] : none;
    }
    [[nodiscard]] std::optional<CellPlace> existing(std::size_t line, std::size_t at) const
    {
        const CellPlace p = place(line, at);
        return p.cell < m_grid.rows[p.row].cells.size() ? std::optional(p) : std::nullopt;
    }

private:
    const Grid& m_grid;
    std::size_t m_from;
    std::size_t m_to;
    bool m_turned;
    std::size_t m_widest = 0;
};

class Layouter {
public:
    Layouter(const Grid& grid, const HeadingTable& table) : m_grid(grid), m_table(table)
    {
        for (const GridRow& row : grid.rows) {
            m_reads.emplace_back();
            for (const std::string& cell : row.cells)
                m_reads.back().push_back(readHeading(cell, table));
        }
        findRows();
        findNotes();
        findWay();
        if (m_from == m_to)
            return;
        const Sheet sheet(grid, m_from, m_to, m_layout.sizesDown);
        sortPlaces(sheet);
        findSizes(sheet);
        findLanes(sheet);
        findModel(sheet);
    }

    Layout take() { return std::move(m_layout); }

private:
    [[nodiscard]] const HeadingRead& read(CellPlace place) const
    {
        static const HeadingRead none;
        const auto& row = m_reads[place.row];
        return place.cell < row.size() ? row[place.cell] : none;
    }

    [[nodiscard]] bool isHeading(const HeadingRead& heading) const
    {
        return heading.column || (!heading.letter.empty() && m_legend.named(heading.letter));
    }

    /// The table reaches from its first line of two cells to its last.
    void findRows()
    {
        m_from = m_grid.rows.size();
        for (std::size_t r = 0; r < m_grid.rows.size(); ++r) {
            if (filled(m_grid.rows[r]) < 2)
                continue;
            m_from = std::min(m_from, r);
            m_to = r + 1;
        }
        m_from = std::min(m_from, m_to);
    }

    /// Lines outside of the cells may say what the letters are and in which unit all is.
    void findNotes()
    {
        for (std::size_t r = 0; r < m_grid.rows.size(); ++r) {
            const GridRow& row = m_grid.rows[r];
            const auto full = filled(row);
            // A legend with commas may have been cut where the table was.
            std::string whole;
            for (const std::string& cell : row.cells)
                whole += (whole.empty() ? "" : ", ") + cell;
            const bool hasNumber =
                std::any_of(row.cells.begin(), row.cells.end(), [&](const std::string& cell) {
                    return kindOf(cell, m_table) == CellKind::Number;
                });
            const bool legend = !hasNumber && m_legend.take(whole, m_table);
            const bool unit = full == 1 && takeUnit(whole);
            if (!legend && !unit)
                continue;
            for (std::size_t c = 0; c < row.cells.size(); ++c)
                if (!row.cells[c].empty())
                    m_layout.notes.push_back({r, c});
        }
    }

    /// "All dimensions in mm"
    bool takeUnit(std::string_view text)
    {
        if (text.find_first_of("0123456789") != std::string_view::npos)
            return false;
        const PrintUnit unit = statedIn(text, m_table);
        if (isLength(unit))
            m_layout.unit = unit;
        return unit != PrintUnit::None;
    }

    [[nodiscard]] std::size_t headingsInRow(std::size_t r) const
    {
        return static_cast<std::size_t>(
            std::count_if(m_reads[r].begin(), m_reads[r].end(),
                          [&](const HeadingRead& heading) { return isHeading(heading); }));
    }

    void findWay()
    {
        std::size_t most = 0;
        std::map<std::size_t, std::size_t> byCell;
        for (std::size_t r = m_from; r < m_to; ++r) {
            most = std::max(most, headingsInRow(r));
            for (std::size_t c = 0; c < m_reads[r].size(); ++c)
                byCell[c] += isHeading(m_reads[r][c]) ? 1 : 0;
        }
        std::size_t mostDown = 0;
        for (const auto& [cell, count] : byCell)
            mostDown = std::max(mostDown, count);
        m_layout.rowsRead = m_grid.rows.size();
        m_layout.anyHeading = most > 0;
        if (most == 0) {
            m_blind = true;
            m_layout.sizesDown = lettersAcross();
            return;
        }
        m_layout.sizesDown = most > mostDown || (most == mostDown && numbersBelow());
        if (m_layout.sizesDown)
            cutSecondAcross(most);
        else
            cutSecondDown();
    }

    /// No heading is known: "A, B, C" in one line are headings all the same, for a person to name.
    [[nodiscard]] bool lettersAcross() const
    {
        for (std::size_t r = m_from; r < m_to; ++r)
            for (std::size_t c = 0; c + 1 < m_reads[r].size(); ++c)
                if (m_reads[r][c].letter == "a" && m_reads[r][c + 1].letter == "b")
                    return true;
        return false;
    }

    /// Whether a line of the sheet has a heading.
    [[nodiscard]] bool hasHeading(const Sheet& sheet, std::size_t line) const
    {
        if (m_blind)
            return line > 0 && !sheet.text(line, m_headingAt).empty();
        return isHeading(read(sheet.place(line, m_headingAt)));
    }

    /// One heading alone: whether its numbers stand below it.
    [[nodiscard]] bool numbersBelow() const
    {
        for (std::size_t r = m_from; r < m_to; ++r)
            for (std::size_t c = 0; c < m_reads[r].size(); ++c)
                if (isHeading(m_reads[r][c]))
                    return r + 1 < m_to && c < m_grid.rows[r + 1].cells.size()
                           && kindOf(m_grid.rows[r + 1].cells[c], m_table) == CellKind::Number;
        return false;
    }

    void endAt(std::size_t row)
    {
        m_to = row;
        m_layout.rowsRead = row;
        while (m_to > m_from && filled(m_grid.rows[m_to - 1]) < 2)
            --m_to;
    }

    /// Another line of as many headings begins another table.
    void cutSecondAcross(std::size_t most)
    {
        const auto alike = std::max<std::size_t>(
            2, static_cast<std::size_t>(sameHeadings * static_cast<double>(most) + 0.5));
        bool seen = false;
        for (std::size_t r = m_from; r < m_to; ++r) {
            if (headingsInRow(r) < alike)
                continue;
            // Two lines of headings, one below the other, are one heading.
            const bool numbers = r > m_from && seen && hasNumbersBefore(r);
            if (numbers) {
                std::size_t end = r;
                while (end > m_from && filled(m_grid.rows[end - 1]) < 2)
                    --end;
                endAt(end);
                return;
            }
            seen = true;
        }
    }

    [[nodiscard]] bool hasNumbersBefore(std::size_t row) const
    {
        for (std::size_t r = m_from; r < row; ++r) {
            const auto& cells = m_grid.rows[r].cells;
            if (std::count_if(cells.begin(), cells.end(),
                              [&](const std::string& cell) {
                                  return kindOf(cell, m_table) == CellKind::Number;
                              })
                >= 2)
                return true;
        }
        return false;
    }

    /// Where headings come again, two of them or more, another table began: at its line of sizes.
    void cutSecondDown()
    {
        std::vector<Column> seen;
        std::size_t again = 0;
        std::size_t firstAgain = 0;
        for (std::size_t r = m_from; r < m_to; ++r) {
            for (const HeadingRead& heading : m_reads[r]) {
                if (!heading.column)
                    continue;
                if (std::find(seen.begin(), seen.end(), *heading.column) == seen.end()) {
                    seen.push_back(*heading.column);
                } else if (++again == 1) {
                    firstAgain = r;
                } else {
                    std::size_t start = firstAgain;
                    while (start > m_from && headingsInRow(start - 1) == 0)
                        --start;
                    endAt(start);
                    return;
                }
                break;
            }
        }
    }

    // Along the lines of the sheet: which places hold headings, units, letters, values.
    enum class Place { Values, Heading, Unit, Letter, Note };

    void sortPlaces(const Sheet& sheet)
    {
        m_places.assign(sheet.length(), Place::Note);
        std::vector<std::size_t> headings(sheet.length(), 0);
        for (std::size_t at = 0; at < sheet.length(); ++at)
            for (std::size_t line = 0; line < sheet.lines(); ++line)
                headings[at] += isHeading(read(sheet.place(line, at))) ? 1 : 0;
        m_headingAt = static_cast<std::size_t>(std::max_element(headings.begin(), headings.end())
                                               - headings.begin());
        for (std::size_t at = 0; at < sheet.length(); ++at)
            m_places[at] = at == m_headingAt ? Place::Heading : sorted(sheet, at);
    }

    [[nodiscard]] Place sorted(const Sheet& sheet, std::size_t at) const
    {
        std::size_t full = 0;
        std::size_t values = 0;
        std::size_t units = 0;
        std::size_t letters = 0;
        for (std::size_t line = 0; line < sheet.lines(); ++line) {
            if (!hasHeading(sheet, line))
                continue;
            const std::string& text = sheet.text(line, at);
            const HeadingRead& heading = read(sheet.place(line, at));
            switch (kindOf(text, m_table)) {
            case CellKind::Blank: continue;
            case CellKind::Number:
            case CellKind::Missing: ++values; break;
            case CellKind::Unit: ++units; break;
            default: letters += heading.letter.empty() ? 0 : 1; break;
            }
            ++full;
        }
        if (full == 0)
            return Place::Note;
        if (units == full)
            return Place::Unit;
        if (letters == full)
            return Place::Letter;
        return 2 * values >= full ? Place::Values : Place::Note;
    }

    [[nodiscard]] bool isUnitLine(const Sheet& sheet, std::size_t line) const
    {
        bool any = false;
        for (std::size_t at = 0; at < sheet.length(); ++at) {
            const CellKind kind = kindOf(sheet.text(line, at), m_table);
            if (kind != CellKind::Unit && kind != CellKind::Blank)
                return false;
            any = any || kind == CellKind::Unit;
        }
        return any;
    }

    void findSizes(const Sheet& sheet)
    {
        std::vector<std::size_t> values;
        for (std::size_t at = 0; at < sheet.length(); ++at)
            if (m_places[at] == Place::Values)
                values.push_back(at);
        std::optional<std::size_t> line;
        for (std::size_t i = 0; i < sheet.lines() && !line; ++i)
            for (std::size_t at = 0; at < sheet.length(); ++at)
                if (m_places[at] != Place::Values && read(sheet.place(i, at)).isSize)
                    line = i;
        if (!line)
            line = unnamedSizes(sheet, values);
        // A size of which nothing is stated still has its name.
        if (line) {
            for (std::size_t at = 0; at < sheet.length(); ++at)
                if (m_places[at] == Place::Note && !values.empty() && at > values.front()
                    && !sheet.text(*line, at).empty() && isBlankElsewhere(sheet, at, *line))
                    values.push_back(at);
            std::sort(values.begin(), values.end());
        }
        m_values = std::move(values);
        m_sizeLine = line;
        m_layout.sizesNamed = line.has_value();
        for (std::size_t i = 0; i < m_values.size(); ++i) {
            std::string name = line ? sheet.text(*line, m_values[i]) : std::string();
            m_layout.sizeCells.push_back(line ? sheet.existing(*line, m_values[i]) : std::nullopt);
            m_layout.sizes.push_back(name.empty() ? std::to_string(i + 1) : std::move(name));
        }
        if (line)
            for (std::size_t at = 0; at < sheet.length(); ++at)
                if (m_places[at] != Place::Values && read(sheet.place(*line, at)).isSize)
                    m_layout.sizeHeading.push_back(sheet.place(*line, at));
    }

    [[nodiscard]] bool isBlankElsewhere(const Sheet& sheet, std::size_t at, std::size_t line) const
    {
        for (std::size_t i = 0; i < sheet.lines(); ++i)
            if (i != line && !sheet.text(i, at).empty())
                return false;
        return true;
    }

    /// The last line before the first heading that has something for most sizes.
    [[nodiscard]] std::optional<std::size_t>
    unnamedSizes(const Sheet& sheet, const std::vector<std::size_t>& values) const
    {
        std::optional<std::size_t> found;
        for (std::size_t line = 0; line < sheet.lines(); ++line) {
            if (hasHeading(sheet, line))
                break;
            const auto full = std::count_if(values.begin(), values.end(), [&](std::size_t at) {
                return !sheet.text(line, at).empty();
            });
            if (full > 0 && 2 * static_cast<std::size_t>(full) >= values.size()
                && !isUnitLine(sheet, line))
                found = line;
        }
        return found;
    }

    void findLanes(const Sheet& sheet)
    {
        PrintUnit section = PrintUnit::None;
        std::vector<std::string> carried(sheet.length());
        for (std::size_t line = 0; line < sheet.lines(); ++line) {
            if (m_sizeLine == line)
                continue;
            for (std::size_t at = 0; at < sheet.length(); ++at)
                if (m_places[at] != Place::Values)
                    if (!sheet.text(line, at).empty())
                        carried[at] = sheet.text(line, at);
            const bool anyValue =
                std::any_of(m_values.begin(), m_values.end(),
                            [&](std::size_t at) { return !sheet.text(line, at).empty(); });
            if (!anyValue) {
                takeSection(sheet, line, section);
                continue;
            }
            m_layout.lanes.push_back(laneAt(sheet, line, carried, section));
        }
    }

    /// "Angles (degrees)" above a group of headings, or a unit alone.
    void takeSection(const Sheet& sheet, std::size_t line, PrintUnit& section)
    {
        for (std::size_t at = 0; at < sheet.length(); ++at) {
            const std::string& text = sheet.text(line, at);
            if (text.empty())
                continue;
            const PrintUnit unit = readHeading(text, m_table).onlyUnit
                                       ? readHeading(text, m_table).unit
                                       : statedIn(text, m_table);
            if (unit == PrintUnit::None)
                continue;
            section = unit;
            if (const auto place = sheet.existing(line, at))
                m_layout.notes.push_back(*place);
        }
    }

    Lane laneAt(const Sheet& sheet, std::size_t line, const std::vector<std::string>& carried,
                PrintUnit section)
    {
        Lane lane;
        for (const std::size_t at : m_values)
            lane.cells.push_back(sheet.existing(line, at));
        std::string together; // of what stands before the values, a group's name included
        std::string letter;
        for (std::size_t at = 0; at < sheet.length(); ++at) {
            const std::string& text = sheet.text(line, at);
            const Place place = m_places[at];
            if (place == Place::Values)
                continue;
            const auto here = text.empty() ? std::nullopt : sheet.existing(line, at);
            if (place == Place::Unit) {
                const PrintUnit unit = readHeading(carried[at], m_table).unit;
                lane.unit = lane.unit == PrintUnit::None ? unit : lane.unit;
                if (here)
                    lane.unitCells.push_back(*here);
                continue;
            }
            if (place == Place::Letter) {
                letter = read(sheet.place(line, at)).letter;
                if (here)
                    lane.headingCells.push_back(*here);
                continue;
            }
            if (place == Place::Note
                && std::find(m_values.begin(), m_values.end(), at) != m_values.end())
                continue;
            // Of a heading in two lines the first stands over several: "Seat tube", "angle".
            const std::string& part = carried[at];
            if (!part.empty())
                together += (together.empty() ? "" : " ") + part;
            if (here)
                lane.headingCells.push_back(*here);
        }
        name(lane, sheet, line, together, letter);
        if (lane.unit == PrintUnit::None)
            lane.unit = section;
        return lane;
    }

    /// The most that is understood: all that stands before the values, the heading, its letter.
    void name(Lane& lane, const Sheet& sheet, std::size_t line, const std::string& together,
              const std::string& letter) const
    {
        std::vector<std::string> offers{together, sheet.text(line, m_headingAt)};
        for (std::size_t at = 0; at < sheet.length(); ++at)
            if (m_places[at] == Place::Note)
                offers.push_back(sheet.text(line, at));
        for (const std::string& offer : offers) {
            const HeadingRead heading = readHeading(offer, m_table);
            if (lane.unit == PrintUnit::None && &offer != &offers.front())
                lane.unit = heading.unit;
            if (lane.column || lane.isSize)
                continue;
            lane.column = heading.column;
            lane.isSize = heading.isSize;
            if (!heading.letter.empty() && !lane.column)
                takeLegend(lane, heading.letter);
            if (lane.column || lane.isSize) {
                lane.heading = offer;
                lane.unit = lane.unit == PrintUnit::None ? heading.unit : lane.unit;
            }
        }
        if (!lane.column && !lane.isSize && !letter.empty())
            takeLegend(lane, letter);
        for (const std::string_view offer :
             {std::string_view(offers[1]), std::string_view(together), std::string_view(letter)})
            if (lane.heading.empty())
                lane.heading = offer;
    }

    void takeLegend(Lane& lane, const std::string& letter) const
    {
        const HeadingRead* named = m_legend.named(letter);
        if (!named)
            return;
        lane.column = named->column;
        if (lane.unit == PrintUnit::None)
            lane.unit = named->unit;
    }

    /// The first line above the table that is no note; or what stands in its corner.
    void findModel(const Sheet& sheet)
    {
        for (std::size_t r = 0; r < m_from; ++r) {
            const auto& cells = m_grid.rows[r].cells;
            const auto at = std::find_if(cells.begin(), cells.end(),
                                         [](const std::string& cell) { return !cell.empty(); });
            const CellPlace place{r, static_cast<std::size_t>(at - cells.begin())};
            if (at == cells.end() || isNote(place) || at->size() > longestTitle)
                continue;
            if (titleOf(*at, m_table).empty())
                continue;
            m_layout.model = place;
            return;
        }
        if (!m_sizeLine)
            return;
        for (std::size_t at = 0; at < sheet.length(); ++at) {
            const auto place = sheet.existing(*m_sizeLine, at);
            const bool before = m_values.empty() || at < m_values.front();
            if (before && place && !sheet.text(*m_sizeLine, at).empty()
                && !read(*place).understood() && !read(*place).onlyUnit
                && !titleOf(sheet.text(*m_sizeLine, at), m_table).empty()) {
                m_layout.model = place;
                return;
            }
        }
    }

    [[nodiscard]] bool isNote(CellPlace place) const
    {
        return std::find(m_layout.notes.begin(), m_layout.notes.end(), place)
               != m_layout.notes.end();
    }

    const Grid& m_grid;
    const HeadingTable& m_table;
    std::vector<std::vector<HeadingRead>> m_reads;
    Legend m_legend;
    std::size_t m_from = 0;
    std::size_t m_to = 0;
    std::size_t m_headingAt = 0;
    bool m_blind = false; ///< no heading is known
    std::vector<Place> m_places;
    std::vector<std::size_t> m_values;
    std::optional<std::size_t> m_sizeLine;
    Layout m_layout;
};

} // namespace

std::string titleOf(std::string_view text, const HeadingTable& table)
{
    const auto isTitleWord = [&](std::string_view word) {
        const auto words = wordsOf(word);
        return std::all_of(words.begin(), words.end(), [&](const std::string& one) {
            return table.titleWords.contains(one) || table.fillers.contains(one);
        });
    };
    // From both ends, so that a name keeps what is inside it.
    text = trimmed(text);
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (!isTitleWord(text.substr(0, end)))
            break;
        text = trimmed(text.substr(end));
    }
    while (!text.empty()) {
        const std::size_t blank = text.rfind(' ');
        const std::size_t start = blank == std::string_view::npos ? 0 : blank + 1;
        if (!isTitleWord(text.substr(start)))
            break;
        text = trimmed(text.substr(0, start));
    }
    return std::string(text);
}

Layout layoutOf(const Grid& grid, const HeadingTable& table)
{
    return Layouter(grid, table).take();
}

} // namespace tripoise
