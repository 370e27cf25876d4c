// SPDX-License-Identifier: MIT
#include "table/markup.h"

#include "table/page_source.h"
#include "text/plain.h"

#include <algorithm>
#include <array>
#include <deque>
#include <optional>
#include <utility>

namespace tripoise::table {
namespace {

constexpr std::size_t longestRepeated = 200; // bytes of a merged cell that stand in each place

class Page : public PageSink {
public:
    std::variant<std::vector<PageTable>, Problem> read(std::string_view page)
    {
        readPage(page, *this);
        while (!m_open.empty())
            closeTable();
        endLine();
        if (m_refused)
            return *m_refused;
        return std::move(m_tables);
    }

private:
    struct Cell {
        std::string text;
        std::size_t down = 0; ///< rows that it still covers
    };
    struct Open {
        std::size_t index = 0;    ///< of `m_tables`
        std::vector<Cell> covers; ///< from the rows above, by place
        std::optional<Tag> cell;
        std::string text; ///< of the cell
        bool inRow = false;
        std::size_t at = 0;     ///< the next place of the row
        std::size_t stated = 0; ///< cells of the row
        std::size_t widest = 0; ///< places of one cell of it
    };

    [[nodiscard]] bool isFull() const override { return m_refused.has_value(); }

    void refuse(std::size_t count, std::size_t most, const char* what)
    {
        m_refused = Problem{ProblemCode::TooMany,
                            {},
                            std::to_string(count),
                            {},
                            static_cast<double>(most),
                            {},
                            {what}};
    }

    void put(std::string_view text) override
    {
        if (m_hidden > 0)
            return;
        if (m_open.empty())
            addText(m_line, text);
        else if (m_open.back().cell)
            addText(m_open.back().text, text);
    }

    /// A hidden element inside a cell, to its end. A hidden table is kept: a page shows it later.
    bool isHidden(const Tag& tag)
    {
        const bool cells =
            tag.name == "table" || tag.name == "tr" || tag.name == "td" || tag.name == "th";
        if (cells || m_open.empty() || !m_open.back().cell)
            m_hidden = 0;
        else if (m_hidden > 0 && tag.name == m_hiddenName)
            m_hidden = tag.closes ? m_hidden - 1 : m_hidden + 1;
        else if (m_hidden == 0 && tag.hidden && !tag.closes && tag.name != "br" && tag.name != "img"
                 && tag.name != "input") {
            m_hidden = 1;
            m_hiddenName = tag.name;
        }
        return m_hidden > 0;
    }

    void take(const Tag& tag) override
    {
        if (isHidden(tag))
            return;
        if (tag.name == "table") {
            if (tag.closes)
                closeTable();
            else
                openTable();
        } else if (m_open.empty()) {
            if (isTitle(tag) && !tag.closes && !std::exchange(m_titled, true)) {
                endLine();
                m_above.clear(); // what stands before the first title is the page's own
            }
            static constexpr std::array ends{"br", "p",  "div",    "li",   "tr", "h1",
                                             "h2", "h3", "h4",     "h5",   "h6", "ul",
                                             "dt", "dd", "button", "label"};
            if (std::find(ends.begin(), ends.end(), tag.name) != ends.end())
                endLine();
        } else if (tag.name == "tr") {
            closeRow();
            m_open.back().inRow = !tag.closes;
        } else if (tag.name == "td" || tag.name == "th") {
            closeCell();
            if (!tag.closes) {
                m_open.back().inRow = true;
                m_open.back().cell = tag;
            }
        } else if (!isInline(tag.name)) {
            put(" ");
        }
    }

    void endLine()
    {
        const std::string line(trimmed(m_line));
        m_line.clear();
        if (line.empty())
            return;
        m_above.push_back(line);
        if (m_above.size() > mostAbove) // the title stays
            m_above.erase(m_above.begin() + (m_titled ? 1 : 0));
        if (!m_tables.empty() && m_tables.back().below.size() < mostBelow)
            m_tables.back().below.push_back(line);
    }

    void openTable()
    {
        endLine();
        if (m_open.size() == mostTablesNested) {
            refuse(m_open.size() + 1, mostTablesNested, "tables");
            return;
        }
        m_open.emplace_back().index = m_tables.size();
        m_tables.push_back({{}, {m_above.begin(), m_above.end()}, {}});
    }

    void closeTable()
    {
        if (m_open.empty())
            return;
        closeRow();
        m_open.pop_back();
        if (m_open.empty()) {
            m_above.clear();
            m_titled = false;
        }
    }

    std::vector<std::string>& row()
    {
        auto& rows = m_tables[m_open.back().index].rows;
        if (m_open.back().at == 0 && m_open.back().stated == 0)
            rows.emplace_back();
        return rows.back();
    }

    void place(std::vector<std::string>& to, const std::string& text)
    {
        to.push_back(text);
        ++m_open.back().at;
        if (++m_cells > mostMarkupCells)
            refuse(m_cells, mostMarkupCells, "cells");
    }

    void placeCovered(std::vector<std::string>& to)
    {
        Open& open = m_open.back();
        while (open.at < open.covers.size() && open.covers[open.at].down > 0 && !m_refused) {
            --open.covers[open.at].down;
            place(to, open.covers[open.at].text);
        }
    }

    void closeCell()
    {
        Open& open = m_open.back();
        if (!open.cell)
            return;
        std::string text(trimmed(open.text));
        open.text.clear();
        const Tag tag = *open.cell;
        open.cell.reset();
        auto& to = row();
        placeCovered(to);
        ++open.stated;
        open.widest = std::max(open.widest, tag.across);
        for (std::size_t i = 0; i < tag.across && !m_refused; ++i) {
            if (open.covers.size() <= open.at)
                open.covers.resize(open.at + 1);
            // Where another reaches into it, the one that began first stays.
            if (i > 0 && open.covers[open.at].down > 0) {
                --open.covers[open.at].down;
                place(to, open.covers[open.at].text);
                continue;
            }
            open.covers[open.at] = {text.size() <= longestRepeated ? text : std::string(),
                                    tag.down - 1};
            place(to, text);
            if (text.size() > longestRepeated)
                text.clear();
        }
    }

    void closeRow()
    {
        closeCell();
        Open& open = m_open.back();
        if (open.inRow && (open.stated > 0 || !open.covers.empty())) {
            auto& to = row();
            placeCovered(to);
            // The title of a block over all columns is one cell.
            if (open.stated == 1 && open.widest > 1 && open.widest == to.size())
                to.resize(1);
        }
        open.inRow = false;
        open.at = 0;
        open.stated = 0;
        open.widest = 0;
    }

    std::vector<PageTable> m_tables;
    std::vector<Open> m_open; ///< the innermost last
    std::string m_line;       ///< outside of tables
    std::deque<std::string> m_above;
    bool m_titled = false;    ///< since the last table
    std::size_t m_hidden = 0; ///< how deep in elements of the hidden one's name
    std::string m_hiddenName;
    std::size_t m_cells = 0;
    std::optional<Problem> m_refused;
};

} // namespace

bool looksLikeMarkup(std::string_view text)
{
    for (const std::string_view sign : {"<table", "<td", "<tr", "<html", "<div", "</span"})
        if (findSmall(text, sign, 0) != std::string_view::npos)
            return true;
    return false;
}

std::variant<std::vector<PageTable>, Problem> tablesOfPage(std::string_view page)
{
    return Page().read(page);
}

} // namespace tripoise::table
