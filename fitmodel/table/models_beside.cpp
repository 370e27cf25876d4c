// SPDX-License-Identifier: MIT
#include "table/models_beside.h"

#include "table/titles.h"
#include "text/plain.h"

#include <algorithm>
#include <set>

namespace tripoise::table {
namespace {

class Splitter {
public:
    Splitter(TablePart part, const HeadingTable& table)
        : m_part(std::move(part)), m_layout(m_part.layout), m_places(m_layout.places),
          m_table(table), m_sheet(m_part.grid, m_layout.from, m_layout.to, m_layout.sizesDown)
    {
    }

    std::vector<TablePart> parts()
    {
        std::vector<TablePart> result;
        if (!findTitles()) {
            result.push_back(std::move(m_part));
            return result;
        }
        std::vector<std::string> models;
        for (const std::string& title : m_titles)
            if (std::find(models.begin(), models.end(), title) == models.end())
                models.push_back(title);
        for (const std::string& model : models) {
            TablePart one{m_layout.sizesDown ? rowsOf(model) : placesOf(model), {}, {}, {}};
            one.layout = layoutOf(one.grid, m_table);
            if (!model.empty())
                one.title = model;
            if (one.layout.sizesDown != m_layout.sizesDown
                || one.layout.places.sizes.names != namesOf(model)) {
                m_part.layout.places.sizes.guessed = true; // of which model they are
                return {std::move(m_part)};
            }
            result.push_back(std::move(one));
        }
        return result;
    }

private:
    [[nodiscard]] std::vector<std::string> namesOf(const std::string& model) const
    {
        std::vector<std::string> names;
        for (std::size_t i = 0; i < m_titles.size(); ++i)
            if (m_titles[i] == model)
                names.push_back(m_places.sizes.names[i]);
        return names;
    }

    bool findTitles()
    {
        if (!m_places.sizeLine || m_places.values.empty())
            return false;
        if (m_layout.sizesDown && findTitleRows())
            return true;
        const std::vector<std::string>& names = m_places.sizes.names;
        m_namedTwice = std::set<std::string>(names.begin(), names.end()).size() < names.size();
        const std::size_t end = m_layout.sizesDown ? m_sheet.lines() : *m_places.sizeLine;
        for (std::size_t line = 0; line < end; ++line)
            if (line != m_places.sizeLine && takeTitles(line))
                return true;
        return false;
    }

    /// Names over the sizes, each over the sizes from it on to the next; with them each size is
    /// there once.
    bool takeTitles(std::size_t line)
    {
        m_titles.clear();
        std::string title;
        std::set<std::string> models;
        std::set<std::pair<std::string, std::string>> sizes;
        for (std::size_t i = 0; i < m_places.values.size(); ++i) {
            const GridCell& cell = m_sheet.cell(line, m_places.values[i]);
            if (cell.heading->understood() || isSizeName(cell.text, m_table))
                return false;
            title = cell.text.empty() ? title : cell.text;
            m_titles.push_back(title);
            models.insert(title);
            if (title.empty() || !sizes.emplace(title, m_places.sizes.names[i]).second)
                return false;
        }
        m_titleLine = line;
        return models.size() > 1 && (m_namedTwice || (!m_layout.sizesDown && areOfModels(models)));
    }

    /// Whether titles over sizes that all have names of their own are of models, not of wheels.
    [[nodiscard]] bool areOfModels(const std::set<std::string>& titles) const
    {
        return 2 * titles.size() <= m_titles.size()
               && std::all_of(titles.begin(), titles.end(), [&](const std::string& title) {
                      const std::vector<std::string> words = wordsOf(title);
                      return !words.empty() && isLetter(words.front().front())
                             && words.front().size() >= 3
                             && std::none_of(words.begin(), words.end(), [&](const auto& word) {
                                    return m_table.wheels.contains(word)
                                           || m_table.pageWords.contains(word);
                                });
                  });
    }

    /// A row that is a name alone, above the rows of its sizes and behind those of another.
    bool findTitleRows()
    {
        std::string title;
        bool between = false;
        for (std::size_t at = 0; at < m_sheet.length(); ++at) {
            const std::size_t row = m_layout.from + at;
            const bool isSize =
                std::binary_search(m_places.values.begin(), m_places.values.end(), at);
            if (isSize)
                m_titles.push_back(title);
            else if (const GridCell* name = nameAlone(m_part.grid.rows[row])) {
                title = name->text;
                between = between || !m_titles.empty();
                m_titleRows.insert(row);
            }
        }
        between = between && !m_titles.empty() && m_titles.front() != m_titles.back();
        if (!between)
            m_titles.clear();
        return between;
    }

    [[nodiscard]] const GridCell* nameAlone(const GridRow& row) const
    {
        const GridCell* name = nullptr;
        for (const GridCell& cell : row) {
            if (cell.text.empty())
                continue;
            if (name && name->text != cell.text)
                return nullptr;
            name = &cell;
        }
        return name && isTitle(*name, m_table) && !isSizeName(name->text, m_table) ? name : nullptr;
    }

    [[nodiscard]] bool isOf(const std::string& model, std::size_t at) const
    {
        const auto found = std::lower_bound(m_places.values.begin(), m_places.values.end(), at);
        return found == m_places.values.end() || *found != at
               || m_titles[static_cast<std::size_t>(found - m_places.values.begin())] == model;
    }

    /// The rows of other models' sizes left out, and the names.
    [[nodiscard]] Grid rowsOf(const std::string& model) const
    {
        Grid grid;
        for (std::size_t r = 0; r < m_part.grid.rows.size(); ++r) {
            const bool inside = r >= m_layout.from && r < m_layout.to;
            GridRow row = m_part.grid.rows[r];
            if (inside && m_titleRows.contains(r)) {
                if (const GridCell* name = nameAlone(row); name->text == model)
                    grid.told.push_back(*name);
                continue;
            }
            if (inside && !isOf(model, r - m_layout.from))
                continue;
            if (inside && m_titleLine && *m_titleLine < row.size()) {
                const auto at = row.begin() + static_cast<std::ptrdiff_t>(*m_titleLine);
                if (!at->text.empty())
                    grid.told.push_back(*at);
                row.erase(at);
            }
            grid.rows.push_back(std::move(row));
        }
        return grid;
    }

    /// The cells of other models' sizes left out of each row. Nothing says whose the numbers of a
    /// row are that lacks a cell: it has none.
    [[nodiscard]] Grid placesOf(const std::string& model) const
    {
        Grid grid;
        for (std::size_t r = 0; r < m_part.grid.rows.size(); ++r) {
            GridRow row = m_part.grid.rows[r];
            if (r < m_layout.from || r >= m_layout.to) {
                grid.rows.push_back(std::move(row));
                continue;
            }
            const bool isShort =
                std::any_of(m_layout.shortRows.begin(), m_layout.shortRows.end(),
                            [r](const CellPlace& place) { return place.row == r; });
            GridRow kept;
            std::string unsaid;
            for (std::size_t at = 0; at < row.size(); ++at) {
                const bool value = at >= m_places.values.front();
                const bool title = r == m_layout.from + *m_titleLine;
                const bool again = title && row[at].heading->isSize; // "Frame size (cm)"
                if ((!value && !again) || (!isShort && !title && isOf(model, at)))
                    kept.push_back(row[at]);
                else if (again || (title && row[at].text == model))
                    grid.told.push_back(row[at]);
                else if (isShort && !row[at].text.empty())
                    unsaid += (unsaid.empty() ? "" : " ") + row[at].text;
            }
            if (!unsaid.empty())
                kept.push_back({unsaid, row.front().line, CellKind::Text, noCell().heading});
            if (!isBlank(kept))
                grid.rows.push_back(std::move(kept));
        }
        return grid;
    }

    TablePart m_part;
    const GridLayout m_layout;
    const Places& m_places;
    const HeadingTable& m_table;
    const Sheet m_sheet;
    std::vector<std::string> m_titles; ///< by size
    bool m_namedTwice = false;         ///< a size
    std::optional<std::size_t> m_titleLine;
    std::set<std::size_t> m_titleRows;
};

} // namespace

std::vector<TablePart> modelsBeside(TablePart part, const HeadingTable& table)
{
    return Splitter(std::move(part), table).parts();
}

} // namespace tripoise::table
