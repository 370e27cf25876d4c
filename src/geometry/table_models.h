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

/// A size of the table, to be ticked.
struct TableSizeRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(bool able MEMBER able)
    Q_PROPERTY(bool ticked MEMBER ticked)
    Q_PROPERTY(QString why MEMBER why)

public:
    QString name;
    bool able = false; ///< a candidate can be made of it
    bool ticked = false;
    QString why; ///< it is not able

    bool operator==(const TableSizeRow&) const = default;
};

class TableSizesModel : public ListOf<TableSizeRow> {
    Q_OBJECT
    QML_ANONYMOUS

public:
    using ListOf::ListOf;

    void show(std::vector<TableSizeRow> rows) { replace(m_rows, std::move(rows)); }
};

class TableNotesModel : public ListOf<TableNote> {
    Q_OBJECT
    QML_ANONYMOUS

public:
    using ListOf::ListOf;

    void show(std::vector<TableNote> notes) { replace(m_rows, std::move(notes)); }
    [[nodiscard]] const std::vector<TableNote>& notes() const { return m_rows; }
};

} // namespace tripoise
