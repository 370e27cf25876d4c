// SPDX-License-Identifier: MIT
//
// Lines, sizes and notes of a geometry table, for QML.
#pragma once

#include "geometry/table_lines.h"
#include "geometry/table_notes.h"
#include "session/row_list.h"

namespace tripoise {

class TableLinesModel : public RowList {
    Q_OBJECT
    QML_ANONYMOUS

public:
    enum Role {
        Heading = Qt::UserRole + 1,
        Meaning,
        Open,     ///< not understood
        SetAside, ///< of no use for a frame
        Assigned,
        Printed, ///< there is a column of the table behind it
        Figures, ///< of { text, mark, told, spoken, acts }, by size
    };

    using RowList::RowList;

    void show(std::vector<TableLine> lines, const std::vector<std::string>& sizes);
    [[nodiscard]] const std::vector<TableLine>& lines() const { return m_lines; }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    [[nodiscard]] QVariantList figures(const TableLine& line) const;

    std::vector<TableLine> m_lines;
    std::vector<std::string> m_sizes;
};

class TableSizesModel : public RowList {
    Q_OBJECT
    QML_ANONYMOUS

public:
    enum Role { Name = Qt::UserRole + 1, Able, Ticked, Why };

    struct Row {
        QString name;
        bool able = false; ///< a candidate can be made of it
        bool ticked = false;
        QString why; ///< it is not able

        bool operator==(const Row&) const = default;
    };

    using RowList::RowList;

    void show(std::vector<Row> rows) { replace(m_rows, std::move(rows)); }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<Row> m_rows;
};

class TableNotesModel : public RowList {
    Q_OBJECT
    QML_ANONYMOUS

public:
    enum Role { Told = Qt::UserRole + 1, Level, StepText };

    using RowList::RowList;

    void show(std::vector<TableNote> notes) { replace(m_notes, std::move(notes)); }
    [[nodiscard]] const std::vector<TableNote>& notes() const { return m_notes; }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<TableNote> m_notes;
};

} // namespace tripoise
