// SPDX-License-Identifier: MIT
#include "table/layout.h"

#include "table/lane_values.h"
#include "table/titles.h"

#include <algorithm>
#include <map>

namespace tripoise::table {
namespace {

class Layouter {
public:
    Layouter(Grid& grid, const HeadingTable& table)
        : m_grid(grid), m_table(table), m_extent(extentOf(grid, table)),
          m_sheet(grid, m_extent.from, m_extent.to, m_extent.sizesDown)
    {
        m_layout.unit = m_extent.unit;
        m_layout.rowsRead = m_extent.rowsRead;
        m_layout.sizesDown = m_extent.sizesDown;
        m_layout.from = m_extent.from;
        m_layout.to = m_extent.to;
        if (m_extent.from == m_extent.to)
            return;
        m_places = placesOf(grid, m_sheet, m_extent, table);
        findLanes();
        findModel();
        m_places.sizes.guessed = m_places.sizes.guessed || isMixed();
        m_layout.places = std::move(m_places);
    }

    GridLayout take() { return std::move(m_layout); }

private:
    [[nodiscard]] bool isValue(std::size_t at) const { return m_places.of[at] == Place::Values; }

    [[nodiscard]] bool namesSize(const CellPlace& place) const
    {
        const auto& cells = m_places.sizes.cells;
        return std::find(cells.begin(), cells.end(), place) != cells.end();
    }

    /// Whether sizes are named here, others or the first line's again: another table begins.
    [[nodiscard]] bool isOtherSizes(std::size_t line) const
    {
        const auto sizes = m_places.sizeLine;
        if (!sizes || m_extent.sizesDown || m_layout.lanes.size() < 2 || line < *sizes)
            return false;
        const std::string& head = m_sheet.text(line, 0);
        if (!head.empty() && head != m_sheet.text(*sizes, 0))
            return false;
        bool differ = false;
        bool letters = !head.empty();
        for (const std::size_t at : m_places.values) {
            const GridCell& cell = m_sheet.cell(line, at);
            if (!cell.text.empty() && !isSizeName(cell.text, m_table))
                return false;
            letters = letters || (!cell.text.empty() && cell.kind != CellKind::Number);
            differ = differ || cell.text != m_sheet.text(*sizes, at);
        }
        return letters || !differ;
    }

    void findLanes()
    {
        const bool across = !m_extent.sizesDown;
        m_carried.resize(m_sheet.length(), &noCell());
        // How many cells a row must have so that each stands where it belongs.
        std::size_t places = across && !m_places.values.empty() ? m_places.values.back() + 1 : 0;
        for (std::size_t r = 0; r < m_extent.from && across; ++r) {
            const GridCell& cell = m_grid.rows[r].front();
            if (!cell.note && !settingIn(cell.text, m_table) && !namesSize({r, 0}))
                m_above.push_back(cell.text);
        }
        for (std::size_t line = 0; line < m_sheet.lines(); ++line) {
            if (line == m_places.sizeLine || line == m_places.secondSizeLine)
                continue;
            if (isOtherSizes(line)) {
                m_layout.rowsRead = withTitle(m_grid.rows, m_sheet.place(line, 0).row, m_table);
                break;
            }
            carry(line);
            const bool anyValue =
                std::any_of(m_places.values.begin(), m_places.values.end(),
                            [&](std::size_t at) { return !m_sheet.text(line, at).empty(); });
            if (!anyValue || (across && isUnitLine(m_sheet, line))) {
                // One heading too many, and nothing says which.
                m_layout.headingsGuessed = m_layout.headingsGuessed || isBehindRows(line);
                takeSection(line);
                continue;
            }
            m_layout.lanes.push_back(laneAt(line));
            m_valuesAbove = true;
            const Lane& lane = m_layout.lanes.back();
            if (across)
                withhold(m_layout.lanes.back(), m_sheet.place(line, 0).row, places);
            else if (!lane.heading.empty())
                places = line + 1;
            else if (m_extent.anyHeading && (hasNumbers(lane) || isBehindHeadings(line)))
                m_layout.headingsGuessed = true;
        }
        for (std::size_t i = 0; i < m_places.values.size() && !across; ++i)
            withholdSize(i, m_sheet.place(0, m_places.values[i]).row, places);
    }

    static int settingOf(const Lane& lane)
    {
        const auto& settings = lane.read.settings;
        return settings.size() != 1 ? 0 : settings.front().high ? 2 : 1;
    }

    /// Whether it looks like several tables that nothing parts: columns come again, or rows of
    /// sizes stand among rows of headings.
    [[nodiscard]] bool isMixed() const
    {
        std::map<std::pair<Column, int>, std::size_t> columns; // and settings
        std::size_t sizes = 0;
        std::size_t above = 0; // the line of sizes
        std::size_t again = 0;
        for (const Lane& lane : m_layout.lanes) {
            if (isOfTheFrame(lane.read.column))
                again += ++columns[{*lane.read.column, settingOf(lane)}] == 2 ? 1 : 0;
            else
                sizes += !m_extent.sizesDown && isSizeName(lane.heading, m_table) ? 1 : 0;
            const bool isAbove =
                !m_extent.sizesDown && m_places.sizeLine && !lane.headingCells.empty()
                && lane.headingCells.front().row < m_extent.from + *m_places.sizeLine;
            above += isAbove && !lane.cells.empty() ? 1 : 0;
        }
        const std::size_t most = m_table.limits.mostTwice;
        const bool between = above > most && above + 1 < m_layout.lanes.size();
        return !columns.empty() && (again > most || sizes > most || between);
    }

    /// Whether a heading stands where no row of values reaches.
    [[nodiscard]] bool isBehindRows(std::size_t line) const
    {
        return m_extent.sizesDown && !m_sheet.text(line, m_places.headingAt).empty()
               && std::none_of(m_places.values.begin(), m_places.values.end(), [&](std::size_t at) {
                      return m_sheet.existing(line, at).has_value();
                  });
    }

    /// Whether in half of the sizes or more something stands behind the last heading.
    [[nodiscard]] bool isBehindHeadings(std::size_t line) const
    {
        const auto count =
            std::count_if(m_places.values.begin(), m_places.values.end(),
                          [&](std::size_t at) { return !m_sheet.text(line, at).empty(); });
        return !m_sheet.existing(line, m_places.headingAt)
               && 2 * static_cast<std::size_t>(count) >= m_places.values.size();
    }

    /// Whether a row has so few cells that they stand above no column: a title, cut in pieces.
    [[nodiscard]] bool isTitleRow(std::size_t at) const
    {
        return m_extent.sizesDown
               && 2 * m_grid.rows[m_sheet.place(0, at).row].size() < m_sheet.lines();
    }

    /// A heading in two lines, of which the first stands over several: it holds where there is
    /// another part of the heading, and a part behind it is of its own line alone.
    void carry(std::size_t line)
    {
        bool inTwo = false;
        bool any = false;
        for (std::size_t at = 0; at < m_sheet.length(); ++at) {
            const bool text = !isValue(at) && !m_sheet.text(line, at).empty();
            any = any || text;
            inTwo = inTwo || (text && m_places.of[at] == Place::Note);
        }
        for (std::size_t at = 0; at < m_sheet.length(); ++at) {
            const Place place = m_places.of[at];
            const bool holds =
                place == Place::Unit || place == Place::Letter
                || (any && (place == Place::Heading ? inTwo : at < m_places.headingAt));
            if (place != Place::Values && !isTitleRow(at)
                && (!m_sheet.text(line, at).empty() || !holds))
                m_carried[at] = &m_sheet.cell(line, at);
        }
    }

    /// In half of the sizes or more.
    [[nodiscard]] bool hasNumbers(const Lane& lane) const
    {
        const auto count =
            std::count_if(lane.cells.begin(), lane.cells.end(), [&](const auto& cell) {
                return cell && cellAt(m_grid, *cell).kind == CellKind::Number;
            });
        return 2 * static_cast<std::size_t>(count) >= lane.cells.size();
    }

    /// A row that is too short, or runs on into the next heading: one number is of all sizes,
    /// several are of none.
    void withhold(Lane& lane, std::size_t row, std::size_t places)
    {
        const auto full =
            std::count_if(lane.cells.begin(), lane.cells.end(), [&](const auto& cell) {
                return cell && !cellAt(m_grid, *cell).text.empty();
            });
        const bool runsOn =
            std::any_of(lane.cells.begin(), lane.cells.end(), [&](const auto& cell) {
                return cell && cellAt(m_grid, *cell).heading->column;
            });
        if ((m_grid.rows[row].size() >= places && !runsOn) || full < 2)
            return;
        m_layout.shortRows.push_back({row, 0});
        for (auto& cell : lane.cells)
            cell.reset();
    }

    void withholdSize(std::size_t size, std::size_t row, std::size_t places)
    {
        const GridRow& cells = m_grid.rows[row];
        const bool isLong = !m_layout.headingsGuessed
                            && cells.size() > places + countOf(CellKind::Blank, cells, places);
        if (!isLong && (cells.size() >= places || cells.size() < 3))
            return;
        m_layout.shortRows.push_back({row, 0});
        m_layout.withheld.resize(m_places.values.size());
        m_layout.withheld[size] = true;
        for (Lane& lane : m_layout.lanes)
            lane.cells[size].reset();
    }

    /// "Angles (degrees)" above a group of headings, or a unit alone; a setting; the first part of
    /// a heading.
    void takeSection(std::size_t line)
    {
        if (const std::string& title = m_sheet.text(line, m_places.headingAt); !title.empty()) {
            m_setting = settingIn(title, m_table);
            if (m_setting) {
                const CellPlace place = m_sheet.place(line, m_places.headingAt);
                m_grid.rows[place.row][place.cell].note = true;
                return;
            }
        }
        bool stated = false;
        for (std::size_t at = 0; at < m_sheet.length(); ++at) {
            const GridCell& cell = m_sheet.cell(line, at);
            const Unit unit =
                cell.heading->onlyUnit ? cell.heading->unit : statedIn(cell.text, m_table);
            if (cell.text.empty() || unit == Unit::None)
                continue;
            m_section = std::exchange(stated, true) ? m_section : unit;
            const CellPlace place = m_sheet.place(line, at);
            m_grid.rows[place.row][place.cell].note = true;
        }
        if (std::exchange(m_valuesAbove, false))
            m_above.clear();
        if (const std::string& title = m_sheet.text(line, m_places.headingAt); !title.empty())
            m_above.push_back(title);
    }

    Lane laneAt(std::size_t line)
    {
        Lane lane;
        for (const std::size_t at : m_places.values)
            lane.cells.push_back(m_sheet.existing(line, at));
        std::string together; // of what stands before the values, a group's name included
        std::string letter;
        std::string last;
        Unit unit = Unit::None;
        for (std::size_t at = 0; at < m_sheet.length(); ++at) {
            const Place place = m_places.of[at];
            // Text behind the values is no part of their headings.
            if (place == Place::Values || (place == Place::Note && !m_places.isBeforeValues(at)))
                continue;
            const bool isUnit = place == Place::Unit;
            if (!m_sheet.text(line, at).empty())
                (isUnit ? lane.unitCells : lane.headingCells).push_back(m_sheet.place(line, at));
            if (isUnit) {
                unit = unit == Unit::None ? m_carried[at]->heading->unit : unit;
            } else if (place == Place::Letter) {
                letter = m_sheet.cell(line, at).heading->letter;
            } else {
                // Of a heading in two lines the first stands over several: "Seat tube", "angle".
                const std::string& part = m_carried[at]->text;
                if (!part.empty() && part != last) // a merged cell stands in each of its places
                    together += (together.empty() ? "" : " ") + part;
                last = part;
            }
        }
        lane.read.unit = unit;
        name(lane, line, together, letter);
        if (lane.read.unit == Unit::None)
            lane.read.unit = m_section;
        for (const auto& cell : lane.cells)
            if (cell && lane.read.settings.empty())
                lane.read.settings = cellAt(m_grid, *cell).heading->settings;
        if (m_setting && lane.read.column && lane.read.settings.empty())
            lane.read.settings.push_back(*m_setting);
        return lane;
    }

    /// What can be the heading: all that stands directly above, all before the values, the heading,
    /// the title of its group with it, notes beside.
    [[nodiscard]] std::vector<std::string> offers(std::size_t line, const std::string& together,
                                                  bool hasNumbers) const
    {
        const std::string& own = m_sheet.text(line, m_places.headingAt);
        std::vector<std::string> all;
        const auto joined = [&](std::size_t count) {
            std::string text;
            for (std::size_t i = m_above.size() - count; i < m_above.size(); ++i)
                text += m_above[i] + ' ';
            return text + own;
        };
        const std::size_t above =
            hasNumbers ? std::min(m_above.size(), m_table.limits.mostLinesAbove) : 0;
        for (std::size_t count = above; count > 0 && !m_valuesAbove; --count)
            all.push_back(joined(count));
        all.push_back(together);
        all.push_back(own);
        if (m_valuesAbove && !m_above.empty())
            all.push_back(joined(1));
        for (std::size_t at = 0; at < m_sheet.length(); ++at)
            if (m_places.of[at] == Place::Note)
                all.push_back(m_sheet.text(line, at));
        return all;
    }

    /// The most that is understood and that the numbers can be.
    void name(Lane& lane, std::size_t line, const std::string& together,
              const std::string& letter) const
    {
        std::vector<std::string> cells;
        for (const auto& cell : lane.cells)
            cells.push_back(cell ? cellAt(m_grid, *cell).text : std::string());
        Unit& unit = lane.read.unit;
        bool first = true;
        for (const std::string& offer : offers(line, together, hasNumbers(lane))) {
            const HeadingRead heading = readHeading(offer, m_table);
            const bool isNote = offer.find_first_of("0123456789") != std::string::npos;
            if (unit == Unit::None && !first && lane.heading.empty() && !isNote)
                unit = heading.unit;
            first = false;
            const HeadingRead* named = m_extent.legend.named(heading.letter);
            const auto column = named ? named->column : heading.column;
            const bool fits = !column || canBe(*column, cells, m_table);
            if ((!heading.understood() && !named) || (!lane.heading.empty() && !fits))
                continue;
            lane.heading = offer;
            take(lane, named ? *named : heading);
            if (heading.unit != Unit::None && !named)
                unit = heading.unit;
            if (fits)
                break;
        }
        if (!lane.heading.empty())
            return;
        if (const HeadingRead* named = m_extent.legend.named(letter))
            take(lane, *named);
        for (const std::string& offer : {m_sheet.text(line, m_places.headingAt), together, letter})
            if (lane.heading.empty())
                lane.heading = offer;
    }

    static void take(Lane& lane, const HeadingRead& heading)
    {
        const Unit unit = lane.read.unit;
        lane.read = heading;
        if (unit != Unit::None)
            lane.read.unit = unit;
    }

    /// The first line above the table that is no note, or behind titles of the page and before
    /// others of them: what stands before those is the shop's. Or what stands in the corner.
    void findModel()
    {
        bool behind = false; // titles of the page
        for (std::size_t r = 0; r < m_extent.from; ++r) {
            const GridRow& row = m_grid.rows[r];
            const GridCell* title = titleIn(row, m_table);
            if (!title) {
                behind = behind || isOfAPage(row, m_table);
                continue;
            }
            const CellPlace place{r, static_cast<std::size_t>(title - row.data())};
            if (namesSize(place))
                continue;
            auto& to = settingIn(title->text, m_table) ? m_layout.setting : m_layout.model;
            // "Plover", the page's, then "Plover 29", the table's.
            const bool before = r + 1 < m_extent.from && isOfAPage(m_grid.rows[r + 1], m_table);
            if (!to || (behind && before)
                || title->text.starts_with(cellAt(m_grid, *to).text + ' '))
                to = place;
        }
        for (std::size_t at = 0; m_places.sizeLine && !m_layout.model && at < m_sheet.length();
             ++at)
            if (m_places.isBeforeValues(at)
                && isTitle(m_sheet.cell(*m_places.sizeLine, at), m_table))
                m_layout.model = m_sheet.existing(*m_places.sizeLine, at);
    }

    Grid& m_grid;
    const HeadingTable& m_table;
    const Extent m_extent;
    const Sheet m_sheet;
    Places m_places;
    std::vector<const GridCell*> m_carried; ///< by place, the last cell that holds
    std::vector<std::string> m_above;       ///< lines without values, one below the other
    bool m_valuesAbove = false;             ///< and lines with values since
    Unit m_section = Unit::None;            ///< that the last of these lines states
    std::optional<Setting> m_setting;       ///< that it names
    GridLayout m_layout;
};

} // namespace

GridLayout layoutOf(Grid& grid, const HeadingTable& table)
{
    return Layouter(grid, table).take();
}

} // namespace tripoise::table
