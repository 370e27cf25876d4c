// SPDX-License-Identifier: MIT
#include "table/settings_apart.h"

#include <algorithm>
#include <array>
#include <set>

namespace tripoise::table {
namespace {

class Splitter {
public:
    explicit Splitter(TablePart part) : m_part(std::move(part)), m_layout(m_part.layout)
    {
        for (const Setting& one : m_layout.places.sizes.settings)
            note(one);
        for (const Lane& lane : m_layout.lanes)
            if (isOfTheFrame(lane.read.column)
                && (lane.read.settings.size() < 2 || inTwoPieces(lane)))
                for (const Setting& one : lane.read.settings)
                    note(one);
    }

    std::vector<TablePart> parts()
    {
        const bool bySizes = !m_layout.places.sizes.settings.empty();
        if (!bySizes && !tellsColumnTwice())
            return {std::move(m_part)};
        std::vector<TablePart> result;
        for (const bool high : {m_firstHigh, !m_firstHigh})
            result.push_back(bySizes ? withSizesOf(high) : withLanesOf(high));
        return result;
    }

private:
    void note(const Setting& setting)
    {
        if (m_names[0].empty() && m_names[1].empty())
            m_firstHigh = setting.high;
        if (std::string& name = m_names[setting.high ? 1 : 0]; name.empty())
            name = setting.name;
    }

    [[nodiscard]] bool inTwoPieces(const Lane& lane) const
    {
        std::size_t full = 0;
        std::size_t two = 0;
        for (const auto& cell : lane.cells) {
            full += cell && !textAt(*cell).empty() ? 1 : 0;
            two += cell && textAt(*cell).find_first_of("/|") != std::string::npos ? 1 : 0;
        }
        return two > 0 && 2 * two >= full;
    }

    [[nodiscard]] const std::string& textAt(const CellPlace& place) const
    {
        return cellAt(m_part.grid, place).text;
    }

    /// Of one setting and of the other, or of none.
    [[nodiscard]] bool tellsColumnTwice() const
    {
        std::set<std::pair<Column, int>> told;
        for (const Lane& lane : m_layout.lanes) {
            const auto& settings = lane.read.settings;
            if (!isOfTheFrame(lane.read.column))
                continue;
            if (settings.size() == 2 && inTwoPieces(lane))
                return true;
            told.emplace(*lane.read.column, settings.size() != 1    ? 0
                                            : settings.front().high ? 1
                                                                    : 2);
        }
        const auto again =
            std::adjacent_find(told.begin(), told.end(), [](const auto& one, const auto& other) {
                return one.first == other.first;
            });
        return again != told.end();
    }

    /// Whether a lane tells of a setting and of no other.
    static bool isOf(const Lane& lane, bool high)
    {
        const auto& settings = lane.read.settings;
        return settings.size() == 1 && settings.front().high == high;
    }

    /// What the height and the tilt of the frame change.
    static bool changesWithSetting(std::optional<Column> column)
    {
        static constexpr std::array changing{
            Column::Stack,           Column::Reach,       Column::SeatAngle,
            Column::SeatAngleActual, Column::HeadAngle,   Column::TopTube,
            Column::BbDrop,          Column::BbHeight,    Column::BbRise,
            Column::Wheelbase,       Column::FrontCentre, Column::FrontCentreHorizontal,
            Column::Standover,       Column::Trail};
        return std::find(changing.begin(), changing.end(), column) != changing.end();
    }

    TablePart titled(bool high) const
    {
        TablePart one = m_part;
        const std::string& name = m_names[high ? 1 : 0];
        if (!name.empty())
            one.title = one.title ? *one.title + ' ' + name : name;
        return one;
    }

    TablePart withLanesOf(bool high) const
    {
        TablePart one = titled(high);
        one.layout.lanes.clear();
        for (const Lane& lane : m_layout.lanes) {
            const bool other = isOf(lane, !high)
                               || (lane.read.settings.empty() && lane.read.column
                                   && std::any_of(m_layout.lanes.begin(), m_layout.lanes.end(),
                                                  [&](const Lane& own) {
                                                      return isOf(own, high)
                                                             && own.read.column == lane.read.column;
                                                  }));
            if (other) {
                setAside(one.layout, lane.headingCells);
                setAside(one.layout, lane.unitCells);
                for (const auto& cell : lane.cells)
                    if (cell)
                        one.layout.aside.push_back(*cell);
                continue;
            }
            Lane& kept = one.layout.lanes.emplace_back(lane);
            // A table is of its first setting where it does not say.
            kept.ofFirstSetting = lane.read.settings.empty() && high != m_firstHigh
                                  && changesWithSetting(lane.read.column);
            kept.read.guessed =
                lane.read.settings.empty() && (lane.read.guessed || kept.ofFirstSetting);
            if (lane.read.settings.size() == 2)
                kept.piece = lane.read.settings.front().high == high ? 0 : 1;
        }
        return one;
    }

    TablePart withSizesOf(bool high) const
    {
        TablePart one = titled(high);
        const auto isKept = [&](std::size_t i) {
            return m_layout.places.sizes.settings[i].high == high;
        };
        const auto keep = [&](auto& list) {
            std::size_t kept = 0;
            for (std::size_t i = 0; i < list.size(); ++i)
                if (isKept(i) && kept++ != i)
                    list[kept - 1] = std::move(list[i]);
            list.resize(kept);
        };
        Places& places = one.layout.places;
        for (Lane& lane : one.layout.lanes) {
            for (std::size_t i = 0; i < lane.cells.size(); ++i)
                if (!isKept(i) && lane.cells[i])
                    one.layout.aside.push_back(*lane.cells[i]);
            keep(lane.cells);
        }
        for (std::size_t i = 0; i < places.sizes.cells.size(); ++i)
            if (!isKept(i) && places.sizes.cells[i])
                one.layout.aside.push_back(*places.sizes.cells[i]);
        keep(places.values);
        keep(places.sizes.names);
        keep(places.sizes.cells);
        if (!one.layout.withheld.empty())
            keep(one.layout.withheld);
        places.sizes.settings.clear();
        return one;
    }

    static void setAside(GridLayout& layout, const std::vector<CellPlace>& cells)
    {
        layout.aside.insert(layout.aside.end(), cells.begin(), cells.end());
    }

    TablePart m_part;
    const GridLayout& m_layout;
    bool m_firstHigh = false;
    std::array<std::string, 2> m_names; ///< of low and high
};

} // namespace

std::vector<TablePart> settingsApart(TablePart part)
{
    return Splitter(std::move(part)).parts();
}

} // namespace tripoise::table
