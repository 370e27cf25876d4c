// SPDX-License-Identifier: MIT
#include "table/markup.h"

#include "text/encoding.h"
#include "text/plain.h"

#include <algorithm>
#include <array>
#include <deque>
#include <optional>
#include <utility>

namespace tripoise::table {
namespace {

constexpr std::size_t mostAbove = 4;
constexpr std::size_t mostBelow = 12;
constexpr std::size_t longestRepeated = 200; // bytes of a merged cell that stand in each place
constexpr std::size_t mostAcross = 200;
constexpr std::size_t mostDown = 1000;

std::size_t findSmall(std::string_view text, std::string_view what, std::size_t from)
{
    const auto at =
        std::search(text.begin() + static_cast<std::ptrdiff_t>(from), text.end(), what.begin(),
                    what.end(), [](char a, char b) { return smallLetter(a) == b; });
    return at == text.end() ? std::string_view::npos : static_cast<std::size_t>(at - text.begin());
}

/// Of the named characters those that stand in such tables, each name before its character.
constexpr std::string_view named = " amp & lt < gt > quot \" apos ' deg ° ndash – mdash — minus − "
                                   "hellip … frac12 ½ frac14 ¼ frac34 ¾"
                                   " prime ′ Prime ″ times × bull • middot · rsquo ’ lsquo ‘ ldquo "
                                   "“ rdquo ” auml ä ouml ö uuml ü Auml Ä"
                                   " Ouml Ö Uuml Ü szlig ß eacute é egrave è ecirc ê agrave à "
                                   "aacute á acirc â atilde ã aring å aelig æ"
                                   " ccedil ç iacute í ntilde ñ oacute ó ocirc ô otilde õ oslash ø "
                                   "uacute ú Aacute Á Eacute É Aring Å"
                                   " Oslash Ø ";

/// The character that "&…;" stands for; as it is where it stands for none.
std::string unescaped(std::string_view name)
{
    if (name.starts_with('#')) {
        const bool hex = name.size() > 1 && smallLetter(name[1]) == 'x';
        std::uint32_t value = 0;
        for (const char c : name.substr(hex ? 2 : 1)) {
            const int digit = c >= '0' && c <= '9' ? c - '0'
                              : hex && smallLetter(c) >= 'a' && smallLetter(c) <= 'f'
                                  ? smallLetter(c) - 'a' + 10
                                  : -1;
            if (digit < 0 || value > 0x10FFFF)
                return '&' + std::string(name) + ';';
            value = value * (hex ? 16 : 10) + static_cast<std::uint32_t>(digit);
        }
        std::string text;
        if (value > 0 && value <= 0x10FFFF && (value < 0xD800 || value >= 0xE000))
            appendUtf8(text, value);
        return text;
    }
    if (name == "nbsp" || name.ends_with("sp")) // thinsp, ensp, emsp
        return " ";
    const std::string key = ' ' + std::string(name) + ' ';
    const std::size_t at = named.find(key);
    if (at == std::string_view::npos || name.size() < 2)
        return '&' + std::string(name) + ';';
    const std::string_view rest = named.substr(at + key.size());
    return std::string(rest.substr(0, rest.find(' ')));
}

/// Adds text with one blank for any blanks, tabs and line breaks.
void addText(std::string& to, std::string_view text)
{
    constexpr std::size_t longestName = 10;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const std::size_t end = c == '&' ? text.substr(i, longestName).find(';') : 0;
        if (c == '&' && end != std::string_view::npos && end > 1) {
            to += unescaped(text.substr(i + 1, end - 1));
            i += end;
        } else if (c == ' ' || (c >= '\t' && c <= '\r')) {
            if (!to.empty() && to.back() != ' ')
                to += ' ';
        } else if (static_cast<unsigned char>(c) >= 0x20) {
            to += c;
        }
    }
}

struct Tag {
    std::string name; ///< small letters
    bool closes = false;
    bool hidden = false; ///< is not shown: a duplicate for small screens, the other unit
    std::size_t across = 1;
    std::size_t down = 1;
};

/// "1", "*", "a, b" in `<sup>`: a footnote mark, or the ring of a degree sign.
bool isMark(std::string_view text)
{
    constexpr std::size_t longest = 4;
    return !text.empty() && text.size() <= longest
           && std::all_of(text.begin(), text.end(), [](char c) {
                  return isFigure(c)
                         || std::string_view("*,() abcdeo").find(c) != std::string_view::npos;
              });
}

std::size_t countOf(std::string_view value, std::size_t most)
{
    std::size_t count = 0;
    for (const char c : trimmed(value)) {
        if (!isFigure(c))
            break;
        count = std::min(most, count * 10 + static_cast<std::size_t>(c - '0'));
    }
    return std::max<std::size_t>(1, count);
}

class Page {
public:
    explicit Page(std::string_view text) : m_text(text) {}

    std::variant<std::vector<PageTable>, Problem> read()
    {
        while (m_at < m_text.size() && !m_refused) {
            const std::size_t open = std::min(m_text.find('<', m_at), m_text.size());
            put(m_text.substr(m_at, open - m_at));
            m_at = open;
            if (m_at < m_text.size())
                markup();
        }
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

    void put(std::string_view text)
    {
        if (m_hidden > 0)
            return;
        if (m_open.empty())
            addText(m_line, text);
        else if (m_open.back().cell)
            addText(m_open.back().text, text);
    }

    /// A comment, a tag, or a sign that is neither.
    void markup()
    {
        const std::string_view rest = m_text.substr(m_at);
        if (rest.starts_with("<!--")) {
            skipBehind("-->", m_at + 4);
        } else if (rest.starts_with("<!") || rest.starts_with("<?")) {
            skipBehind(">", m_at + 2);
        } else if (rest.size() > 1 && (isLetter(rest[1]) || (rest[1] == '/' && rest.size() > 2))) {
            const bool behindTag = m_at > 0 && m_text[m_at - 1] == '>';
            const Tag tag = readTag();
            if (behindTag && !tag.closes && isInline(tag.name))
                put(" "); // what stands in two elements is no word
            if (tag.name == "sup" && !tag.closes)
                skipMark();
            if (!tag.closes && isPassedOver(tag.name)) {
                const std::size_t end = findSmall(m_text, "</" + tag.name, m_at);
                m_at = std::min(end, m_text.size());
            } else {
                take(tag);
            }
        } else {
            put("<");
            ++m_at;
        }
    }

    void skipBehind(std::string_view sign, std::size_t from)
    {
        const std::size_t end = m_text.find(sign, from);
        m_at = end == std::string_view::npos ? m_text.size() : end + sign.size();
    }

    /// A fraction's numerator, before "/", is none, but a number of its own.
    void skipMark()
    {
        constexpr std::size_t most = 4;
        const std::string_view rest = m_text.substr(m_at, most + 1);
        const std::string_view mark = rest.substr(0, rest.find('<'));
        if (mark.size() == rest.size() || !isMark(mark))
            return;
        const std::size_t end = m_text.find('>', m_at);
        if (end != std::string_view::npos && m_text.substr(end + 1).starts_with('/'))
            put(" ");
        else
            m_at += mark.size();
    }

    static bool isInline(std::string_view name)
    {
        static constexpr std::array all{"span", "b", "sup", "sub", "strong", "a", "font"};
        return std::find(all.begin(), all.end(), name) != all.end();
    }

    static bool isPassedOver(std::string_view name)
    {
        static constexpr std::array passed{"script", "style",  "title",  "noscript", "textarea",
                                           "svg",    "iframe", "select", "template", "object"};
        return std::find(passed.begin(), passed.end(), name) != passed.end();
    }

    /// From "<" to behind ">", which may stand in an attribute's quotes.
    Tag readTag()
    {
        Tag tag;
        ++m_at;
        tag.closes = m_text[m_at] == '/';
        m_at += tag.closes ? 1 : 0;
        constexpr std::size_t longest = 12;
        for (; m_at < m_text.size() && (isLetter(m_text[m_at]) || isFigure(m_text[m_at])); ++m_at)
            if (tag.name.size() < longest)
                tag.name += smallLetter(m_text[m_at]);
        while (m_at < m_text.size() && m_text[m_at] != '>')
            readAttribute(tag);
        m_at += m_at < m_text.size() ? 1 : 0;
        return tag;
    }

    void readAttribute(Tag& tag)
    {
        const std::size_t start = m_at;
        std::string name;
        while (m_at < m_text.size() && isLetter(m_text[m_at]))
            name += smallLetter(m_text[m_at++]);
        if (m_at == start) {
            ++m_at; // a blank, a slash, a stray sign
            return;
        }
        if (m_text[start - 1] == '-')
            name.clear(); // "aria-hidden", "data-style"
        tag.hidden = tag.hidden || name == "hidden";
        if (m_at >= m_text.size() || m_text[m_at] != '=')
            return;
        ++m_at;
        const bool quoted = m_at < m_text.size() && (m_text[m_at] == '"' || m_text[m_at] == '\'');
        const std::string_view ends = quoted ? m_text.substr(m_at++, 1) : " \t\r\n>";
        const std::size_t end = std::min(m_text.find_first_of(ends, m_at), m_text.size());
        const std::string_view value = m_text.substr(m_at, end - m_at);
        m_at = std::min(end + (quoted ? 1 : 0), m_text.size());
        if (name == "colspan")
            tag.across = countOf(value, mostAcross);
        else if (name == "rowspan")
            tag.down = countOf(value, mostDown);
        else if (name == "style")
            for (const std::string_view none :
                 {"display:none", "display: none", "visibility:hidden"})
                tag.hidden = tag.hidden || findSmall(value, none, 0) != std::string_view::npos;
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

    void take(const Tag& tag)
    {
        if (isHidden(tag))
            return;
        if (tag.name == "table") {
            if (tag.closes)
                closeTable();
            else
                openTable();
        } else if (m_open.empty()) {
            const bool title = tag.name.size() == 2 && tag.name[0] == 'h' && tag.name[1] <= '3';
            if (title && !tag.closes && !std::exchange(m_titled, true)) {
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
        if (m_above.size() > mostAbove)
            m_above.pop_front();
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

    std::string_view m_text;
    std::size_t m_at = 0;
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
    return Page(page).read();
}

} // namespace tripoise::table
