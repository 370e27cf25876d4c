// SPDX-License-Identifier: MIT
#include "geometry/table_lines.h"

#include "wording/table_page_words.h"
#include "wording/table_words.h"

#include <algorithm>
#include <set>

namespace tripoise {
namespace {

class Lines {
public:
    Lines(const TableAnswer& answer, bool asHeaded) : m_answer(answer), m_asHeaded(asHeaded)
    {
        m_texts.resize(answer.read.columns.size() * answer.read.sizes.size());
        for (const auto& row : answer.read.rows)
            for (const TableCell& cell : row)
                if (cell.column && cell.size && *cell.column < answer.read.columns.size())
                    m_texts[*cell.column * answer.read.sizes.size() + *cell.size] = &cell;
    }

    std::vector<TableLine> take()
    {
        std::vector<TableLine> lines;
        std::set<Column> told;
        for (std::size_t i = 0; i < m_answer.read.columns.size(); ++i) {
            lines.push_back(printed(i));
            if (lines.back().column)
                told.insert(*lines.back().column);
        }
        std::set<Column> others;
        for (const ClosedSize& size : m_answer.closed.sizes)
            for (const ClosedValue& value : size.values)
                if (!told.contains(value.column))
                    others.insert(value.column);
        for (const Column column : others)
            lines.push_back(following(column));
        return lines;
    }

private:
    [[nodiscard]] TableLine printed(std::size_t index) const
    {
        const ReadColumn& read = m_answer.read.columns[index];
        TableLine line;
        line.readColumn = index;
        line.heading = QString::fromStdString(read.heading);
        line.assigned = read.assigned;
        line.open = !read.meaning && !read.assigned;
        line.setAside = read.meaning ? isSetAside(*read.meaning) : read.assigned;
        if (read.meaning) {
            line.column = takenFor(*read.meaning, m_answer, m_asHeaded);
            line.meaning = nameOf(*line.column);
        }
        for (std::size_t size = 0; size < m_answer.read.sizes.size(); ++size)
            line.figures.push_back(line.column && !line.setAside
                                       ? figure(*line.column, size, textAt(index, size))
                                       : asItStands(index, size, line.setAside));
        return line;
    }

    [[nodiscard]] TableLine following(Column column) const
    {
        TableLine line;
        line.column = column;
        line.meaning = nameOf(column);
        for (std::size_t size = 0; size < m_answer.closed.sizes.size(); ++size)
            line.figures.push_back(figure(column, size, {}));
        return line;
    }

    [[nodiscard]] const TableCell* cellAt(std::size_t column, std::size_t size) const
    {
        return m_texts[column * m_answer.read.sizes.size() + size];
    }
    /// What stands there and is no figure.
    [[nodiscard]] QString textAt(std::size_t column, std::size_t size) const
    {
        const TableCell* cell = cellAt(column, size);
        return cell && cell->state == CellState::NotUnderstood ? QString::fromStdString(cell->text)
                                                               : QString();
    }

    [[nodiscard]] TableFigure asItStands(std::size_t column, std::size_t size, bool setAside) const
    {
        const TableCell* cell = cellAt(column, size);
        if (!cell || cell->text.empty())
            return {};
        const auto mark = setAside ? FigureMark::SetAside : FigureMark::NotUnderstood;
        return {QString::fromStdString(cell->text), mark, {}, {}};
    }

    [[nodiscard]] TableFigure figure(Column column, std::size_t size, const QString& odd) const
    {
        const Entry* entry = entryOf(column, m_answer.geometry.sizes[size]);
        if (!entry && !odd.isEmpty())
            return {odd, FigureMark::NotUnderstood, notUnderstoodText(), {}};
        if (!entry)
            return inferred(column, size);
        TableFigure result{entryText(*entry), FigureMark::Given, {}, {}};
        if (const Correction* correction = correctionOf(size, column, m_answer)) {
            result.mark = FigureMark::Corrected;
            result.told = correctedText(column, correction->printed, correction->taken);
            return result;
        }
        for (const Contradiction& one : m_answer.closed.contradictions) {
            if (one.size != size)
                continue;
            if (one.column == column) {
                result.mark = FigureMark::Contradicts;
                result.told = sentence(one, m_answer.closed);
                result.agree = one.agreesWithRest;
                return result;
            }
            const auto& ties = one.indistinguishableFrom;
            if (std::find(ties.begin(), ties.end(), column) != ties.end()) {
                result.mark = FigureMark::Doubtful;
                result.told = sentence(one, m_answer.closed);
            }
        }
        for (const UnusualValue& one : m_answer.closed.unusual)
            if (one.size == size && one.column == column && result.mark == FigureMark::Given) {
                result.mark = FigureMark::Unusual;
                result.told = sentence(one, m_answer.closed);
            }
        return result;
    }

    [[nodiscard]] TableFigure inferred(Column column, std::size_t size) const
    {
        const ClosedValue* value = m_answer.closed.valueOf(size, column);
        if (!value)
            return {};
        const bool follows = value->value.origin != Origin::Assumed;
        return {standInFigure(*value),
                follows ? FigureMark::Follows : FigureMark::Assumed,
                follows ? followsText() : assumedText(*value),
                {}};
    }

    const TableAnswer& m_answer;
    bool m_asHeaded;
    std::vector<const TableCell*> m_texts; ///< by column and size
};

} // namespace

std::vector<TableLine> tableLines(const TableAnswer& answer, bool asHeaded)
{
    return Lines(answer, asHeaded).take();
}

} // namespace tripoise
