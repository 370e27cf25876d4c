// SPDX-License-Identifier: MIT
//
// The rows of one list of the box, in the order of the shelf. Rows that stay are moved, not made
// anew, so that the keys stay where they are.
#pragma once

#include "brief/parts_model.h"

#include "brief/part_kinds.h"

namespace tripoise {

template <typename List> class PartLines : public PartsModel {
protected:
    using Part = typename List::Part;
    using Line = BoxLine<Part>;

public:
    explicit PartLines(Bench bench) : m_bench(std::move(bench)) {}

    int rowCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : int(m_lines.size());
    }
    QVariant data(const QModelIndex& index, int role) const override
    {
        if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
            return {};
        const Line& line = m_lines[std::size_t(index.row())];
        switch (role) {
        case Qt::DisplayRole:
        case TextRole: return textOf(line.part);
        case ClampsRole: return clampsOf(line.part);
        case NoteRole: return noteOf(line.part, m_bench);
        case TickedRole: return line.ticked;
        default: return {};
        }
    }
    int tickedCount() const override
    {
        return int(std::count_if(m_lines.begin(), m_lines.end(),
                                 [](const Line& line) { return line.ticked; }));
    }

protected:
    const Line* lineAt(int row) const
    {
        return row >= 0 && row < int(m_lines.size()) ? &m_lines[std::size_t(row)] : nullptr;
    }
    std::size_t lineCount(const Part& part) const
    {
        return std::size_t(std::count_if(m_lines.begin(), m_lines.end(), [&](const Line& line) {
            return samePart(line.part, part);
        }));
    }

    /// The row of a changed part goes where the shelf's order wants it, and stays the same row.
    void placeChanged(std::size_t row, const Part& part)
    {
        m_lines[row].part = part;
        emit dataChanged(index(int(row)), index(int(row)));
        std::size_t to = row;
        while (to > 0 && List::before(part, m_lines[to - 1].part))
            --to;
        while (to + 1 < m_lines.size() && List::before(m_lines[to + 1].part, part))
            ++to;
        move(row, to);
    }
    void moveLines(const std::vector<Line>& next)
    {
        for (std::size_t row = 0; row < next.size(); ++row) {
            std::size_t from = row;
            while (from < m_lines.size() && !samePart(m_lines[from].part, next[row].part))
                ++from;
            if (from == m_lines.size()) {
                beginInsertRows({}, int(row), int(row));
                m_lines.insert(m_lines.begin() + std::ptrdiff_t(row), next[row]);
                endInsertRows();
            } else {
                move(from, row);
            }
            if (m_lines[row] != next[row]) {
                m_lines[row] = next[row];
                emit dataChanged(index(int(row)), index(int(row)));
            }
        }
        if (m_lines.size() > next.size()) {
            beginRemoveRows({}, int(next.size()), int(m_lines.size()) - 1);
            m_lines.resize(next.size());
            endRemoveRows();
        }
        if (!m_lines.empty()) // what fits what may have changed anywhere
            emit dataChanged(index(0), index(int(m_lines.size()) - 1), {NoteRole});
        emit countChanged();
        emit benchChanged();
    }

    Bench m_bench;
    std::vector<Line> m_lines;

private:
    void move(std::size_t from, std::size_t to)
    {
        if (from == to)
            return;
        beginMoveRows({}, int(from), int(from), {}, int(to > from ? to + 1 : to));
        const Line line = m_lines[from];
        m_lines.erase(m_lines.begin() + std::ptrdiff_t(from));
        m_lines.insert(m_lines.begin() + std::ptrdiff_t(to), line);
        endMoveRows();
    }
};

} // namespace tripoise
