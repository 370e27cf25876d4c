// SPDX-License-Identifier: MIT
#include "table/blocks.h"

#include "table/cuts.h"
#include "table/grid.h"
#include "table/page_source.h"
#include "table/read_table.h"
#include "text/plain.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <utility>

namespace tripoise::table {
namespace {

struct Leaf {
    std::string text;
    bool title = false;
};

/// Rows of leaves, from one to before another.
struct Found {
    TextRows rows;
    std::size_t from = 0;
    std::size_t to = 0;
    double worth = 0.0;
    std::size_t width = 0; ///< of most rows
    std::size_t cells = 0;

    [[nodiscard]] double perCell() const { return worth / static_cast<double>(cells); }
};

struct Block {
    std::size_t from = 0; ///< leaves
    std::size_t to = 0;
    std::vector<Block> children; ///< none of a leaf; never one alone
    std::vector<Found> found;    ///< in it, in their order

    [[nodiscard]] std::size_t leaves() const { return to - from; }
};

/// The tree of a page's elements. Those without text are left out, those with one child are that.
class Page : public PageSink {
public:
    explicit Page(CellReader& reader) : m_reader(reader) { m_open.emplace_back(); }

    std::vector<PageTable> take()
    {
        while (m_open.size() > 1)
            close();
        flush();
        const Block whole = blockOf(std::move(m_open.front()));
        std::vector<PageTable> tables;
        std::size_t last = 0;
        for (const Found& one : whole.found) {
            if (!isOfGeometry(one))
                continue;
            PageTable& table = tables.emplace_back();
            table.rows = one.rows;
            table.above = linesAbove(last, one.from);
            for (std::size_t i = one.to; i < std::min(m_leaves.size(), one.to + mostBelow); ++i)
                table.below.push_back(m_leaves[i].text);
            last = one.to;
        }
        return tables;
    }

    void put(std::string_view text) override
    {
        if (m_hidden == 0)
            addText(m_open.back().text, text);
    }

    [[nodiscard]] bool isFull() const override { return m_leaves.size() > mostBlockTexts; }

    void take(const Tag& tag) override
    {
        static constexpr std::array voids{"br",   "img",    "input", "hr",  "meta",
                                          "link", "source", "wbr",   "area"};
        if (std::find(voids.begin(), voids.end(), tag.name) != voids.end())
            addText(m_open.back().text, " ");
        else if (tag.closes)
            closeTo(tag.name);
        else
            open(tag);
    }

private:
    struct Open {
        std::string name;
        std::string text;
        bool merges = false; ///< into the line of text in which it stands
        bool hides = false;
        bool title = false;
        std::vector<Block> children;
    };

    bool isOfGeometry(const Found& found)
    {
        bool headed = false;
        bool numbers = false;
        for (const auto& row : found.rows)
            for (const std::string& text : row) {
                const GridCell cell = m_reader.cell(plainSigns(text), 0);
                headed = headed || isOfTheFrame(cell.heading->column);
                numbers = numbers || cell.kind == CellKind::Number;
            }
        return headed && numbers;
    }

    static bool isOfLine(std::string_view name)
    {
        return isInline(name) || name == "i" || name == "em" || name == "small" || name == "label"
               || name == "abbr" || name == "time";
    }

    /// Elements that end where the next of their kind begins.
    static bool endsAt(std::string_view open, std::string_view next)
    {
        static constexpr std::array kinds{"p", "li", "tr", "option"};
        const bool pair = (open == "dt" || open == "dd") && (next == "dt" || next == "dd");
        const bool cells = (open == "td" || open == "th") && (next == "td" || next == "th");
        return pair || cells
               || (open == next && std::find(kinds.begin(), kinds.end(), open) != kinds.end());
    }

    void open(const Tag& tag)
    {
        if (endsAt(m_open.back().name, tag.name))
            close();
        if (m_open.size() >= mostBlocksNested) {
            ++m_beyond;
            return;
        }
        const bool ofLine = isOfLine(tag.name);
        const bool merges = ofLine && !trimmed(m_open.back().text).empty();
        if (!merges)
            flush();
        Open one;
        one.name = tag.name;
        one.merges = merges;
        one.hides = ofLine && tag.hidden; // a block may be one that a page shows later
        one.title = isTitle(tag) || m_open.back().title;
        m_hidden += one.hides ? 1 : 0;
        m_open.push_back(std::move(one));
    }

    /// The text before an element, as a leaf of its own.
    void flush()
    {
        std::size_t first = m_open.size() - 1;
        while (m_open[first].merges)
            --first;
        for (std::size_t i = first; i < m_open.size(); ++i) {
            Open& one = m_open[i];
            if (const std::string_view text = trimmed(one.text); !text.empty()) {
                one.children.push_back({m_leaves.size(), m_leaves.size() + 1, {}, {}});
                m_leaves.push_back({std::string(text), one.title});
            }
            one.text.clear();
        }
    }

    void closeTo(const std::string& name)
    {
        if (m_beyond > 0) {
            --m_beyond;
            return;
        }
        std::size_t at = m_open.size() - 1;
        while (at > 0 && m_open[at].name != name) {
            if (isOfLine(name) && !isOfLine(m_open[at].name))
                return; // it closes no block
            --at;
        }
        while (at > 0 && m_open.size() > at)
            close();
    }

    void close()
    {
        if (m_open.back().merges && m_open.back().children.empty()) {
            const std::string text = std::move(m_open.back().text);
            m_hidden -= m_open.back().hides ? 1 : 0;
            m_open.pop_back();
            std::string& line = m_open.back().text;
            line += (!line.empty() && isLetter(line.back()) ? " " : "") + text;
            return;
        }
        flush();
        Open one = std::move(m_open.back());
        m_hidden -= one.hides ? 1 : 0;
        m_open.pop_back();
        m_open.back().children.push_back(blockOf(std::move(one)));
    }

    /// Without text it is a blank one: no leaf, but the place of a value that is missing.
    Block blockOf(Open open)
    {
        const auto isBlank = [](const Block& child) { return child.leaves() == 0; };
        auto& children = open.children;
        const auto blanks = std::count_if(children.begin(), children.end(), isBlank);
        if (static_cast<std::size_t>(blanks) + 1 >= children.size())
            std::erase_if(children, isBlank);
        if (children.size() == 1)
            return std::move(children.front());
        Block block{m_leaves.size(), m_leaves.size(), {}, {}};
        if (children.empty())
            return block;
        block.from = children.front().from;
        block.to = children.back().to;
        block.children = std::move(children);
        find(block);
        return block;
    }

    void find(Block& block)
    {
        std::vector<Found> below;
        for (Block& child : block.children) {
            std::move(child.found.begin(), child.found.end(), std::back_inserter(below));
            child.found.clear();
        }
        below = joined(std::move(below));
        double worth = 0.0;
        std::size_t cells = 0;
        for (const Found& one : below) {
            worth += one.worth;
            cells += one.cells;
        }
        const double share = m_reader.table().limits.joinedShare;
        std::optional<Found> best;
        const auto offer = [&](TextRows rows) {
            if (rows.empty())
                return;
            Found one = found(std::move(rows), block.from, block.to);
            const double least = one.cells < cells ? worth : share * worth; // it loses none
            if (one.worth >= least && (!best || one.perCell() > best->perCell()))
                best = std::move(one);
        };
        offer(oneRow(block));
        offer(rowsOf(block, 0));
        offer(rowsOf(block, 1));
        offer(flatRows(block));
        block.found = best ? std::vector<Found>{std::move(*best)} : std::move(below);
    }

    /// Without a heading it is worth nothing.
    Found found(TextRows rows, std::size_t from, std::size_t to)
    {
        Found one{std::move(rows), from, to, 0.0, 0, 0};
        std::map<std::size_t, std::size_t> widths;
        bool headed = false;
        for (const auto& row : one.rows) {
            widths[row.size()] += row.size() > 1 ? 1 : 0;
            one.cells += row.size();
            for (const std::string& cell : row)
                headed = headed || m_reader.kindOf(plainSigns(cell)) == CellKind::Heading;
        }
        one.width = usualOf(widths);
        one.worth = headed ? std::max(0.0, worthOf(one.rows, m_reader)) : 0.0;
        return one;
    }

    /// An explanation beside a heading.
    [[nodiscard]] bool isSentence(const std::string& text) const
    {
        const std::size_t words =
            static_cast<std::size_t>(std::count(text.begin(), text.end(), ' '));
        return text.ends_with('.') && words >= m_reader.table().limits.leastSentenceWords;
    }

    [[nodiscard]] std::string textOf(const Block& block) const
    {
        std::string text;
        for (std::size_t i = block.from; i < block.to; ++i)
            if (text.empty() || !isSentence(m_leaves[i].text))
                text += (text.empty() ? "" : " ") + m_leaves[i].text;
        return text;
    }

    /// The children as cells, or their children as well; those that are blank where it says so.
    template <typename Add>
    static void eachCell(const Block& block, int deeper, bool blanks, const Add& add)
    {
        const auto tell = [&](const Block& cell) {
            if (blanks || cell.leaves() > 0)
                add(cell);
        };
        if (block.children.empty())
            tell(block);
        for (const Block& child : block.children) {
            if (deeper == 0 || child.children.empty()) {
                tell(child);
                continue;
            }
            for (const Block& grandchild : child.children)
                tell(grandchild);
        }
    }

    std::vector<std::string> cellsOf(const Block& block, int deeper, bool blanks = false) const
    {
        std::vector<std::string> cells;
        eachCell(block, deeper, blanks, [&](const Block& cell) { cells.push_back(textOf(cell)); });
        return cells;
    }

    static std::size_t countOf(const Block& block, int deeper, bool blanks)
    {
        std::size_t count = 0;
        eachCell(block, deeper, blanks, [&](const Block&) { ++count; });
        return count;
    }

    /// Whether numbers and headings alternate more than once in a row: it is several.
    bool runsOn(const std::vector<std::string>& row)
    {
        int headings = 0;
        bool number = false;
        for (const std::string& cell : row) {
            const CellKind kind = m_reader.kindOf(plainSigns(cell));
            headings += number && kind == CellKind::Heading ? 1 : 0;
            number = kind == CellKind::Number;
        }
        return headings > 1;
    }

    [[nodiscard]] bool canBeCells(std::size_t leaves, std::size_t cells) const
    {
        return cells > 1 && leaves <= m_reader.table().limits.mostTextsInCell * cells;
    }

    TextRows oneRow(const Block& block)
    {
        if (block.children.size() > mostTableSizes + 1
            || !canBeCells(block.leaves(), block.children.size()))
            return {};
        auto row = cellsOf(block, 0);
        return runsOn(row) ? TextRows() : TextRows{std::move(row)};
    }

    /// Where most children have as many cells as each other.
    TextRows rowsOf(const Block& block, int deeper)
    {
        std::map<std::size_t, std::size_t> counts;
        std::size_t cells = 0;
        for (const Block& child : block.children) {
            const std::size_t count = countOf(child, deeper, false);
            ++counts[count];
            cells += count;
        }
        const std::size_t usual = usualOf(counts);
        if (usual < 2 || usual > mostTableSizes + 1 || counts[usual] < 2
            || 2 * counts[usual] < block.children.size() || !canBeCells(block.leaves(), cells))
            return {};
        TextRows rows;
        for (const Block& child : block.children) {
            const bool isShort = countOf(child, deeper, false) < usual;
            rows.push_back(
                cellsOf(child, deeper, isShort && countOf(child, deeper, true) == usual));
            if (runsOn(rows.back()))
                return {};
        }
        return rows;
    }

    /// Cells that run from heading to heading.
    TextRows flatRows(const Block& block)
    {
        if (block.children.size() < m_reader.table().limits.leastFlatCells
            || !canBeCells(block.leaves(), block.children.size()))
            return {};
        std::vector<PlainLine> lines;
        for (const std::string& cell : cellsOf(block, 0))
            lines.push_back({lines.size() + 1, plainSigns(cell)});
        TextRows rows;
        for (const GridRow& row : cutByHeadings(lines, m_reader)) {
            rows.emplace_back();
            for (const GridCell& cell : row)
                rows.back().push_back(cell.text);
        }
        return rows;
    }

    /// Neighbours of like rows, with a few lines of text between, put together where that is worth
    /// as much or little less.
    std::vector<Found> joined(std::vector<Found> all)
    {
        std::vector<Found> result;
        for (std::size_t i = 0; i < all.size();) {
            std::size_t end = i + 1;
            double worth = all[i].worth;
            while (end < all.size() && all[end].from <= all[end - 1].to + mostAbove
                   && all[end].width <= all[end - 1].width + 1
                   && all[end - 1].width <= all[end].width + 1)
                worth += all[end++].worth;
            TextRows rows;
            for (std::size_t j = i; j < end && end > i + 1; ++j) {
                for (std::size_t leaf = j > i ? all[j - 1].to : all[j].from; leaf < all[j].from;
                     ++leaf)
                    rows.push_back({m_leaves[leaf].text});
                rows.insert(rows.end(), all[j].rows.begin(), all[j].rows.end());
            }
            auto whole = rows.empty()
                             ? std::nullopt
                             : std::optional(found(std::move(rows), all[i].from, all[end - 1].to));
            if (whole && whole->worth >= m_reader.table().limits.joinedShare * worth)
                result.push_back(std::move(*whole));
            else
                std::move(all.begin() + static_cast<std::ptrdiff_t>(i),
                          all.begin() + static_cast<std::ptrdiff_t>(end),
                          std::back_inserter(result));
            i = end;
        }
        return result;
    }

    /// The first title since the table before, and the last lines.
    [[nodiscard]] std::vector<std::string> linesAbove(std::size_t from, std::size_t to) const
    {
        const auto begin = m_leaves.begin() + static_cast<std::ptrdiff_t>(from);
        const auto end = m_leaves.begin() + static_cast<std::ptrdiff_t>(to);
        const auto title = std::find_if(begin, end, [](const Leaf& leaf) { return leaf.title; });
        const auto first = title == end ? begin : title;
        std::vector<std::string> lines;
        for (auto leaf = first; leaf != end; ++leaf)
            if (leaf == title || end - leaf <= static_cast<std::ptrdiff_t>(mostAbove))
                lines.push_back(leaf->text);
        return lines;
    }

    CellReader& m_reader;
    std::vector<Leaf> m_leaves;
    std::vector<Open> m_open; ///< the innermost last, the page itself first
    std::size_t m_beyond = 0; ///< open elements that are nested too deep
    std::size_t m_hidden = 0;
};

} // namespace

std::variant<std::vector<PageTable>, Problem> blockTablesOfPage(std::string_view page,
                                                                CellReader& reader)
{
    Page read(reader);
    readPage(page, read);
    if (read.isFull())
        return Problem{ProblemCode::TooMany,
                       {},
                       std::to_string(mostBlockTexts + 1),
                       {},
                       static_cast<double>(mostBlockTexts),
                       {},
                       {"cells"}};
    return read.take();
}

} // namespace tripoise::table
