// SPDX-License-Identifier: MIT
#include "table/layout.h"

#include "table/extent.h"
#include "table/plain.h"

#include <algorithm>

namespace tripoise::table {
namespace {

constexpr std::size_t longestTitle = 60;

class Layouter {
public:
    Layouter(const Grid& grid, const HeadingTable& table)
        : m_grid(grid), m_table(table), m_extent(extentOf(grid, table))
    {
        m_layout.notes = m_extent.notes;
        m_layout.unit = m_extent.unit;
        m_layout.rowsRead = m_extent.rowsRead;
        m_layout.sizesDown = m_extent.sizesDown;
        if (m_extent.from == m_extent.to)
            return;
        const Sheet sheet(grid, m_extent.from, m_extent.to, m_extent.sizesDown);
        sortPlaces(sheet);
        findSizes(sheet);
        findLanes(sheet);
        findModel(sheet);
    }

    GridLayout take() { return std::move(m_layout); }

private:
    /// Whether a line of the sheet has a heading.
    [[nodiscard]] bool hasHeading(const Sheet& sheet, std::size_t line) const
    {
        if (!m_extent.anyHeading)
            return line > 0 && !sheet.text(line, m_headingAt).empty();
        return m_extent.isHeading(m_extent.read(sheet.place(line, m_headingAt)));
    }

    // Along the lines of the sheet: which places hold headings, units, letters, values.
    enum class Place { Values, Heading, Unit, Letter, Note };

    void sortPlaces(const Sheet& sheet)
    {
        m_places.assign(sheet.length(), Place::Note);
        std::vector<std::size_t> headings(sheet.length(), 0);
        for (std::size_t at = 0; at < sheet.length(); ++at)
            for (std::size_t line = 0; line < sheet.lines(); ++line)
                headings[at] += m_extent.isHeading(m_extent.read(sheet.place(line, at))) ? 1 : 0;
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
            const HeadingRead& heading = m_extent.read(sheet.place(line, at));
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
                if (m_places[at] != Place::Values && m_extent.read(sheet.place(i, at)).isSize)
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
                if (m_places[at] != Place::Values && m_extent.read(sheet.place(*line, at)).isSize)
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
                letter = m_extent.read(sheet.place(line, at)).letter;
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
        const HeadingRead* named = m_extent.legend.named(letter);
        if (!named)
            return;
        lane.column = named->column;
        if (lane.unit == PrintUnit::None)
            lane.unit = named->unit;
    }

    /// The first line above the table that is no note; or what stands in its corner.
    void findModel(const Sheet& sheet)
    {
        for (std::size_t r = 0; r < m_extent.from; ++r) {
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
                && !m_extent.read(*place).understood() && !m_extent.read(*place).onlyUnit
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
    const Extent m_extent;
    std::size_t m_headingAt = 0;
    std::vector<Place> m_places;
    std::vector<std::size_t> m_values;
    std::optional<std::size_t> m_sizeLine;
    GridLayout m_layout;
};

} // namespace

GridLayout layoutOf(const Grid& grid, const HeadingTable& table)
{
    return Layouter(grid, table).take();
}

} // namespace tripoise::table
