// SPDX-License-Identifier: MIT
#include "table/tables_apart.h"

#include "table/joined_tables.h"
#include "table/models_beside.h"
#include "table/settings_apart.h"
#include "text/plain.h"

#include <algorithm>

namespace tripoise::table {
namespace {

using Lines = std::vector<PlainLine>;

class Parter {
public:
    explicit Parter(CellReader& reader) : m_reader(reader), m_table(reader.table()) {}

    /// Each table is cut on its own: what is best for one may be wrong for the next.
    void take(const Lines& lines)
    {
        TablePart part = partOf(lines);
        const std::size_t rows = part.layout.rowsRead;
        if (rows < part.grid.rows.size() && hasRoom()
            && takeFrom(lines, part.grid.rows[rows].front().line, part))
            return;
        if (!part.isGeometry() && takeBehindBlank(lines))
            return;
        m_parts.push_back(std::move(part));
    }

    std::vector<TablePart> parts(const Lines& lines)
    {
        take(lines);
        for (TablePart& part : m_parts)
            if (m_parts.size() > 1 && !part.isGeometry())
                takeNotes(part);
        if (std::none_of(m_parts.begin(), m_parts.end(),
                         [](const TablePart& one) { return one.isGeometry(); }))
            return {partOf(lines)};
        std::vector<TablePart> result;
        for (TablePart& part : m_parts) {
            auto whole = result.empty() ? std::nullopt : joined(result.back(), part, m_table);
            if (whole)
                result.back() = partOf(std::move(*whole));
            else {
                // Whose sizes these are is for a person to say.
                if (!result.empty() && mayGoOn(result.back(), part, m_table))
                    part.layout.places.sizes.guessed = true;
                result.push_back(std::move(part));
            }
        }
        m_parts.clear();
        for (TablePart& part : result)
            for (TablePart& one : modelsBeside(std::move(part), m_table))
                for (TablePart& ofSetting : settingsApart(std::move(one)))
                    m_parts.push_back(std::move(ofSetting));
        nameOtherSettings();
        return std::move(m_parts);
    }

private:
    TablePart partOf(const Lines& lines) { return partOf(gridOf(lines, m_reader)); }
    TablePart partOf(Grid grid)
    {
        TablePart part{std::move(grid), {}, {}, {}};
        part.layout = layoutOf(part.grid, m_table);
        return part;
    }

    [[nodiscard]] bool hasRoom() const { return m_parts.size() + 1 < m_table.limits.mostTables; }

    /// The lines before one, and those from it on; with them what is stated above all, units and
    /// letters, if they say nothing without. False where there are none before.
    bool takeFrom(const Lines& lines, std::size_t number, const TablePart& part)
    {
        const auto at = std::find_if(lines.begin(), lines.end(),
                                     [&](const PlainLine& line) { return line.number >= number; });
        if (at == lines.begin() || at == lines.end())
            return false;
        Lines rest(at, lines.end());
        if (!partOf(rest).isGeometry()) {
            Lines notes;
            std::copy_if(lines.begin(), at, std::back_inserter(notes),
                         [&](const PlainLine& line) { return isNoteAbove(part, line.number); });
            rest.insert(rest.begin(), notes.begin(), notes.end());
        }
        take({lines.begin(), at});
        take(rest);
        return true;
    }

    /// "Dunlin", "Low position" above a table, "High position" above the next of the same sizes.
    void nameOtherSettings()
    {
        const TablePart* before = nullptr;
        std::optional<std::string> model;
        for (TablePart& part : m_parts) {
            if (!part.isGeometry())
                continue;
            const auto& own = part.layout.model;
            if (own)
                model = cellAt(part.grid, *own).text;
            else if (before && part.layout.setting
                     && before->layout.places.sizes.names == part.layout.places.sizes.names)
                part.model = model;
            else
                model.reset();
            before = &part;
        }
    }

    static bool isNoteAbove(const TablePart& part, std::size_t number)
    {
        for (std::size_t r = 0; r < part.layout.from; ++r)
            for (const GridCell& cell : part.grid.rows[r])
                if (cell.note && cell.line == number)
                    return true;
        return false;
    }

    /// What letters of a drawing stand for may be said once, below the last table.
    void takeNotes(TablePart& part)
    {
        Grid grid = part.grid;
        std::size_t from = 0; // how many parts
        for (const TablePart& other : m_parts) {
            std::size_t count = 0;
            for (const GridRow& row : other.grid.rows)
                if (!isBlank(row) && row.front().note && &other != &part && ++count > 0)
                    grid.rows.insert(grid.rows.begin(), row);
            from += count > 0 ? 1 : 0;
        }
        if (from != 1)
            return;
        TablePart named = partOf(std::move(grid));
        const auto& lanes = named.layout.lanes;
        const auto known = std::count_if(lanes.begin(), lanes.end(), [](const Lane& lane) {
            return lane.read.column.has_value();
        });
        if (named.isGeometry() && 2 * static_cast<std::size_t>(known) > lanes.size())
            part = std::move(named);
    }

    /// A table of something else stands above: the geometry begins behind one of the blank lines.
    bool takeBehindBlank(const Lines& lines)
    {
        std::size_t bytes = 0;
        for (const PlainLine& line : lines)
            bytes += line.text.size();
        if (bytes > m_table.limits.mostBytesSearched || !hasRoom())
            return false;
        std::size_t tries = 0;
        for (auto at = lines.begin(); at != lines.end(); ++at) {
            const bool begins = at != lines.begin() && trimmed(std::prev(at)->text).empty()
                                && !trimmed(at->text).empty();
            if (!begins)
                continue;
            if (partOf(Lines(at, lines.end())).isGeometry()) {
                m_parts.push_back(partOf(Lines(lines.begin(), at)));
                take({at, lines.end()});
                return true;
            }
            if (++tries == m_table.limits.mostBlankLines)
                return false;
        }
        return false;
    }

    CellReader& m_reader;
    const HeadingTable& m_table;
    std::vector<TablePart> m_parts;
};

} // namespace

bool TablePart::isGeometry() const
{
    return !layout.places.sizes.names.empty()
           && std::any_of(layout.lanes.begin(), layout.lanes.end(),
                          [](const Lane& lane) { return isOfTheFrame(lane.read.column); });
}

std::vector<TablePart> tablesApart(const std::vector<PlainLine>& lines, CellReader& reader)
{
    return Parter(reader).parts(lines);
}

} // namespace tripoise::table
