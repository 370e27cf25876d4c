// SPDX-License-Identifier: MIT
#include "table/layout.h"

#include "table/extent.h"
#include "table/lane_values.h"
#include "table/plain.h"
#include "table/size_name.h"

#include <algorithm>
#include <cmath>

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
    enum class Place { Values, Heading, Unit, Letter, Note, Legend };

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
            m_places[at] = at == m_headingAt     ? Place::Heading
                           : isLegend(sheet, at) ? Place::Legend
                                                 : sorted(sheet, at);
    }

    /// Cells that say what the letters are, cut as those of the table.
    [[nodiscard]] bool isLegend(const Sheet& sheet, std::size_t at) const
    {
        bool any = false;
        for (std::size_t line = 0; line < sheet.lines(); ++line) {
            if (sheet.text(line, at).empty())
                continue;
            if (!isNote(sheet.place(line, at)))
                return false;
            any = true;
        }
        return any;
    }

    [[nodiscard]] bool isLegendLine(const Sheet& sheet, std::size_t line) const
    {
        return !sheet.text(line, 0).empty() && isNote(sheet.place(line, 0))
               && !sheet.text(line, 1).empty();
    }

    [[nodiscard]] Place sorted(const Sheet& sheet, std::size_t at) const
    {
        // "Weight: 1.9 kg" below sizes of many columns is no size.
        constexpr std::size_t least = 3;
        if (m_extent.sizesDown && sheet.lines() > least
            && m_grid.rows[sheet.place(0, at).row].cells.size() < least)
            return Place::Note;
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
        if (!line) {
            line = unnamedSizes(sheet, values);
            const auto below = sizesBelow(sheet, values);
            if (below
                && (!line || likeSizes(sheet, *below, values) > likeSizes(sheet, *line, values)))
                line = below;
        }
        // A size of which nothing is stated still has its name.
        if (line) {
            for (std::size_t at = 0; at < sheet.length(); ++at)
                if (m_places[at] == Place::Note && !values.empty() && at > values.front()
                    && !sheet.text(*line, at).empty() && isBlankElsewhere(sheet, at, *line))
                    values.push_back(at);
            std::sort(values.begin(), values.end());
        }
        if (line)
            setStraysApart(sheet, *line, values);
        m_values = std::move(values);
        m_sizeLine = line;
        m_layout.sizesNamed = line.has_value();
        std::size_t unnamed = 0;
        for (std::size_t i = 0; i < m_values.size(); ++i) {
            std::string name = line ? sheet.text(*line, m_values[i]) : std::string();
            unnamed += name.empty() ? 1 : 0;
            m_layout.sizeCells.push_back(line ? sheet.existing(*line, m_values[i]) : std::nullopt);
            m_layout.sizes.push_back(name.empty() ? std::to_string(i + 1) : std::move(name));
        }
        m_layout.sizesGuessed = line && unnamed > 0;
        if (line)
            nameByNextLine(sheet, *line);
        if (!line && m_values.size() == 1)
            sizeInTitle();
        if (line)
            for (std::size_t at = 0; at < sheet.length(); ++at)
                if (m_places[at] != Place::Values && m_extent.read(sheet.place(*line, at)).isSize)
                    m_layout.sizeHeading.push_back(sheet.place(*line, at));
    }

    /// One size for two sizes of wheel: "M" over "27.5" and "29".
    void nameByNextLine(const Sheet& sheet, std::size_t line)
    {
        std::vector<std::string> names = m_layout.sizes;
        const auto isTwice = [&names] {
            return std::any_of(names.begin(), names.end(), [&](const std::string& name) {
                return std::count(names.begin(), names.end(), name) > 1;
            });
        };
        const std::size_t next = line + 1;
        if (!isTwice() || next >= sheet.lines())
            return;
        const HeadingRead& head = m_extent.read(sheet.place(next, m_headingAt));
        const std::string& text = sheet.text(next, m_headingAt);
        if (!text.empty() && text != sheet.text(line, m_headingAt)
            && head.column != Column::BeadSeat)
            return;
        for (std::size_t i = 0; i < names.size(); ++i)
            if (const std::string& more = sheet.text(next, m_values[i]); !more.empty())
                names[i] += ' ' + more;
        if (isTwice())
            return;
        m_layout.sizes = std::move(names);
        if (head.column)
            return;
        m_secondSizeLine = next;
        for (std::size_t at = 0; at < sheet.length(); ++at)
            if (const auto place = sheet.existing(next, at); place && !textAt(*place).empty())
                m_layout.sizeHeading.push_back(*place);
    }

    /// "Kettlebridge 56" above a single size.
    void sizeInTitle()
    {
        for (std::size_t r = 0; r < m_extent.from && !m_layout.sizesNamed; ++r) {
            const auto& cells = m_grid.rows[r].cells;
            const std::size_t blank = cells.front().rfind(' ');
            if (cells.size() != 1 || blank == std::string::npos)
                continue;
            const std::string last = cells.front().substr(blank + 1);
            const auto number = cellNumber(last, m_table.numbers);
            m_layout.sizesNamed = number ? isSizeNumber(number->value) : isSizeName(last, m_table);
            if (m_layout.sizesNamed)
                m_layout.sizes.front() = last;
            m_layout.sizeInModel = m_layout.sizesNamed;
        }
    }

    /// A place without a name in which few lines have a number is no size: those lines have a cell
    /// too many.
    void setStraysApart(const Sheet& sheet, std::size_t line, std::vector<std::size_t>& values)
    {
        std::size_t headed = 0;
        for (std::size_t i = 0; i < sheet.lines(); ++i)
            headed += hasHeading(sheet, i) ? 1 : 0;
        std::erase_if(values, [&](std::size_t at) {
            if (!sheet.text(line, at).empty())
                return false;
            std::size_t full = 0;
            for (std::size_t i = 0; i < sheet.lines(); ++i)
                full += sheet.text(i, at).empty() ? 0 : 1;
            const bool stray = 2 * full < headed;
            if (stray)
                m_strays.push_back(at);
            return stray;
        });
    }

    [[nodiscard]] bool isBlankElsewhere(const Sheet& sheet, std::size_t at, std::size_t line) const
    {
        for (std::size_t i = 0; i < sheet.lines(); ++i)
            if (i != line && !sheet.text(i, at).empty())
                return false;
        return true;
    }

    /// How much a line looks like one of sizes' names: by letters, figures that are sizes, other
    /// words; not at all by other figures.
    [[nodiscard]] int likeSizes(const Sheet& sheet, std::size_t line,
                                const std::vector<std::size_t>& values) const
    {
        std::size_t full = 0;
        std::size_t sizes = 0;
        std::size_t numbers = 0;
        double last = 0.0;
        bool rising = true;
        for (const std::size_t at : values) {
            const std::string& text = sheet.text(line, at);
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
        if (full == 0 || 2 * full < values.size() || isUnitLine(sheet, line))
            return 0;
        if (numbers == full)
            return rising ? ofNumbers : 0;
        return sizes == full ? ofNumbers + 1 : ofNumbers - 1;
    }

    static constexpr int ofNumbers = 2;

    /// In inches, centimetres or millimetres; common practice, no source.
    static bool isSizeNumber(double value)
    {
        return (value >= 12.0 && value <= 68.0) || (value >= 380.0 && value <= 680.0);
    }

    /// The line before the first heading that looks most like one of sizes, the last of several; of
    /// several of numbers the first.
    [[nodiscard]] std::optional<std::size_t>
    unnamedSizes(const Sheet& sheet, const std::vector<std::size_t>& values) const
    {
        std::optional<std::size_t> found;
        int most = 1;
        for (std::size_t line = 0; line < sheet.lines() && !hasHeading(sheet, line); ++line)
            if (const int like = likeSizes(sheet, line, values);
                like > most || (like == most && like != ofNumbers)) {
                most = like;
                found = line;
            }
        return found;
    }

    /// The last line that has names of sizes, below all headings.
    [[nodiscard]] std::optional<std::size_t>
    sizesBelow(const Sheet& sheet, const std::vector<std::size_t>& values) const
    {
        for (std::size_t line = sheet.lines(); line-- > 0 && !hasHeading(sheet, line);)
            if (likeSizes(sheet, line, values) >= ofNumbers)
                return line;
        return std::nullopt;
    }

    /// Whether other sizes than the first line's are named here: another table begins.
    [[nodiscard]] bool isOtherSizes(const Sheet& sheet, std::size_t line) const
    {
        if (!m_sizeLine || m_extent.sizesDown || m_layout.lanes.size() < 2 || line < *m_sizeLine)
            return false;
        const std::string& head = sheet.text(line, 0);
        if (!head.empty() && head != sheet.text(*m_sizeLine, 0))
            return false;
        bool differ = false;
        bool letters = !head.empty();
        for (const std::size_t at : m_values) {
            const std::string& text = sheet.text(line, at);
            if (!text.empty() && !isSizeName(text, m_table))
                return false;
            letters = letters || (!text.empty() && kindOf(text, m_table) != CellKind::Number);
            differ = differ || text != sheet.text(*m_sizeLine, at);
        }
        return differ && letters;
    }

    void findLanes(const Sheet& sheet)
    {
        PrintUnit section = PrintUnit::None;
        std::vector<std::string> carried(sheet.length());
        // How many cells a row must have so that each stands where it belongs.
        std::size_t places = m_extent.sizesDown || m_values.empty() ? 0 : m_values.back() + 1;
        for (std::size_t r = 0; r < m_extent.from && !m_extent.sizesDown; ++r)
            if (!isNote({r, 0}))
                m_above.push_back(m_grid.rows[r].cells.front());
        for (std::size_t line = 0; line < sheet.lines(); ++line) {
            if (m_sizeLine == line || m_secondSizeLine == line
                || (!m_extent.sizesDown && isLegendLine(sheet, line)))
                continue;
            if (isOtherSizes(sheet, line)) {
                m_layout.rowsRead = sheet.place(line, 0).row;
                break;
            }
            // A heading in two lines, of which the first stands over several: it holds where there
            // is another part of the heading, and a part behind it is of its own line alone.
            bool inTwo = false;
            bool any = false;
            for (std::size_t at = 0; at < sheet.length(); ++at) {
                const bool text = m_places[at] != Place::Values && !sheet.text(line, at).empty();
                any = any || text;
                inTwo = inTwo || (text && m_places[at] == Place::Note);
            }
            for (std::size_t at = 0; at < sheet.length(); ++at) {
                const bool holds = m_places[at] == Place::Unit || m_places[at] == Place::Letter
                                   || (any && (at == m_headingAt ? inTwo : at < m_headingAt));
                if (m_places[at] != Place::Values && (!sheet.text(line, at).empty() || !holds))
                    carried[at] = sheet.text(line, at);
            }
            const bool anyValue =
                std::any_of(m_values.begin(), m_values.end(),
                            [&](std::size_t at) { return !sheet.text(line, at).empty(); });
            if (!anyValue) {
                takeSection(sheet, line, section);
                const std::string& title = sheet.text(line, m_headingAt);
                if (m_above.empty() || m_valuesAbove)
                    m_above.clear();
                m_valuesAbove = false;
                if (!title.empty())
                    m_above.push_back(title);
                continue;
            }
            m_layout.lanes.push_back(laneAt(sheet, line, carried, section));
            m_valuesAbove = true;
            Lane& lane = m_layout.lanes.back();
            if (m_extent.sizesDown && lane.heading.empty() && m_extent.anyHeading)
                m_layout.headingsGuessed = m_layout.headingsGuessed || hasNumbers(lane);
            if (m_extent.sizesDown && !lane.heading.empty())
                places = line + 1;
            if (!m_extent.sizesDown)
                withhold(lane, sheet.place(line, 0).row, places);
        }
        if (m_extent.sizesDown)
            for (std::size_t i = 0; i < m_values.size(); ++i)
                withholdSize(i, sheet.place(0, m_values[i]).row, places);
    }

    /// In half of the sizes or more.
    [[nodiscard]] bool hasNumbers(const Lane& lane) const
    {
        const auto count =
            std::count_if(lane.cells.begin(), lane.cells.end(), [&](const auto& cell) {
                return cell && kindOf(textAt(*cell), m_table) == CellKind::Number;
            });
        return 2 * static_cast<std::size_t>(count) >= lane.cells.size();
    }

    [[nodiscard]] const std::string& textAt(const CellPlace& place) const
    {
        return m_grid.rows[place.row].cells[place.cell];
    }

    /// A row that is too short: one number is of all sizes, several are of none.
    void withhold(Lane& lane, std::size_t row, std::size_t places)
    {
        const auto full = static_cast<std::size_t>(
            std::count_if(lane.cells.begin(), lane.cells.end(),
                          [&](const auto& cell) { return cell && !textAt(*cell).empty(); }));
        const auto& cells = m_grid.rows[row].cells;
        const bool isLong = std::any_of(m_strays.begin(), m_strays.end(), [&](std::size_t at) {
            return at < cells.size() && kindOf(cells[at], m_table) == CellKind::Number;
        });
        if (!isLong && (cells.size() >= places || full < 2))
            return;
        m_layout.shortRows.push_back({row, 0});
        for (auto& cell : lane.cells)
            cell.reset();
    }

    void withholdSize(std::size_t size, std::size_t row, std::size_t places)
    {
        const auto& cells = m_grid.rows[row].cells;
        const bool isLong = !m_layout.headingsGuessed && cells.size() > places
                            && std::any_of(cells.begin() + static_cast<std::ptrdiff_t>(places),
                                           cells.end(), [&](const std::string& cell) {
                                               return kindOf(cell, m_table) == CellKind::Number;
                                           });
        if (!isLong && (cells.size() >= places || cells.size() < 3))
            return;
        m_layout.shortRows.push_back({row, 0});
        m_layout.withheld.resize(m_layout.sizes.size());
        m_layout.withheld[size] = true;
        for (Lane& lane : m_layout.lanes)
            lane.cells[size].reset();
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
        std::string last;
        for (std::size_t at = 0; at < sheet.length(); ++at) {
            const std::string& text = sheet.text(line, at);
            const Place place = m_places[at];
            if (place == Place::Values || place == Place::Legend)
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
            // Text behind the values is no part of their headings.
            if (place == Place::Note && !m_values.empty() && at > m_values.front())
                continue;
            // Of a heading in two lines the first stands over several: "Seat tube", "angle".
            const std::string& part = carried[at]; // a merged cell stands in each of its places
            if (!part.empty() && part != last)
                together += (together.empty() ? "" : " ") + part;
            last = part;
            if (here)
                lane.headingCells.push_back(*here);
        }
        name(lane, sheet, line, together, letter);
        if (lane.unit == PrintUnit::None)
            lane.unit = section;
        return lane;
    }

    /// The most that is understood and that the numbers can be: all that stands directly above,
    /// all before the values, the heading, the title of its group with it, its letter.
    void name(Lane& lane, const Sheet& sheet, std::size_t line, const std::string& together,
              const std::string& letter) const
    {
        const std::string& own = sheet.text(line, m_headingAt);
        std::vector<std::string> offers;
        constexpr std::size_t mostAbove = 3;
        const std::size_t above = std::min(m_above.size(), mostAbove);
        const auto joined = [&](std::size_t count) {
            std::string text;
            for (std::size_t i = m_above.size() - count; i < m_above.size(); ++i)
                text += m_above[i] + ' ';
            return text + own;
        };
        for (std::size_t count = above; count > 0 && !m_valuesAbove; --count)
            offers.push_back(joined(count));
        offers.push_back(together);
        offers.push_back(own);
        if (m_valuesAbove && above > 0)
            offers.push_back(joined(1));
        for (std::size_t at = 0; at < sheet.length(); ++at)
            if (m_places[at] == Place::Note && isBefore(at))
                offers.push_back(sheet.text(line, at));
        std::vector<std::string> cells;
        for (const auto& cell : lane.cells)
            cells.push_back(cell ? textAt(*cell) : std::string());
        const std::string* taken = nullptr;
        for (const std::string& offer : offers) {
            const HeadingRead heading = readHeading(offer, m_table);
            if (lane.unit == PrintUnit::None && &offer != &offers.front() && !taken)
                lane.unit = heading.unit;
            const HeadingRead* named =
                heading.letter.empty() ? nullptr : m_extent.legend.named(heading.letter);
            if (!heading.understood() && !named)
                continue;
            const auto column = named ? named->column : heading.column;
            const bool fits = !column || canBe(*column, cells, m_table);
            if (taken && !fits)
                continue;
            taken = &offer;
            take(lane, named ? *named : heading);
            lane.unit = heading.unit != PrintUnit::None && !named ? heading.unit : lane.unit;
            if (fits)
                break;
        }
        // "Angle" below "Seat tube", which has its own figures.
        if (!taken && !m_layout.lanes.empty()) {
            const HeadingRead heading =
                readHeading(m_layout.lanes.back().heading + ' ' + own, m_table);
            if (heading.column && !m_extent.sizesDown && canBe(*heading.column, cells, m_table)) {
                take(lane, heading);
                lane.guessed = true;
            }
        }
        if (taken)
            lane.heading = *taken;
        else if (const HeadingRead* named = m_extent.legend.named(letter))
            take(lane, *named);
        for (const std::string_view offer :
             {std::string_view(own), std::string_view(together), std::string_view(letter)})
            if (lane.heading.empty())
                lane.heading = offer;
    }

    [[nodiscard]] bool isBefore(std::size_t at) const
    {
        return std::find(m_values.begin(), m_values.end(), at) == m_values.end();
    }

    static void take(Lane& lane, const HeadingRead& heading)
    {
        lane.column = heading.column;
        lane.second = heading.second;
        lane.isSize = heading.isSize;
        lane.byParts = heading.byParts;
        lane.guessed = heading.guessed;
        lane.qualified = heading.qualified;
        if (lane.unit == PrintUnit::None)
            lane.unit = heading.unit;
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
    std::vector<std::size_t> m_strays; ///< places of numbers that belong to no size
    std::vector<std::string> m_above;  ///< lines without values, one below the other
    bool m_valuesAbove = false;        ///< and lines with values since
    std::optional<std::size_t> m_sizeLine;
    std::optional<std::size_t> m_secondSizeLine;
    GridLayout m_layout;
};

} // namespace

GridLayout layoutOf(const Grid& grid, const HeadingTable& table)
{
    return Layouter(grid, table).take();
}

} // namespace tripoise::table
