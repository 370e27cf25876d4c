// SPDX-License-Identifier: MIT
//
// A list whose rows are made anew as a whole. Rows that stay keep their delegates, so that the keys
// stay where they were.
#pragma once

#include <QAbstractListModel>
#include <QHash>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

#include <algorithm>
#include <vector>

namespace tripoise {

class RowList : public QAbstractListModel {
    using Said = QHash<int, QVariant>; ///< by role

    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int count() const { return rowCount({}); }

signals:
    void countChanged();

protected:
    template <typename Row> void replace(std::vector<Row>& rows, std::vector<Row> next)
    {
        const std::size_t before = rows.size();
        const std::size_t kept = std::min(before, next.size());
        if (kept < before) {
            beginRemoveRows({}, int(kept), int(before) - 1);
            rows.resize(kept);
            endRemoveRows();
        }
        for (std::size_t i = 0; i < kept; ++i) {
            if (rows[i] == next[i])
                continue;
            const Said said = saidOf(int(i));
            rows[i] = std::move(next[i]);
            emit dataChanged(index(int(i)), index(int(i)), otherwise(said, saidOf(int(i))));
        }
        if (kept < next.size()) {
            beginInsertRows({}, int(kept), int(next.size()) - 1);
            for (std::size_t i = kept; i < next.size(); ++i)
                rows.push_back(std::move(next[i]));
            endInsertRows();
        }
        if (before != rows.size())
            emit countChanged();
    }

    /// Of rows that are gadgets: each property is a role, and the first is what is displayed.
    [[nodiscard]] static QHash<int, QByteArray> rolesOf(const QMetaObject& row);
    [[nodiscard]] static QVariant said(const QMetaObject& gadget, const void* row, int role);

private:
    [[nodiscard]] Said saidOf(int row) const;
    /// The roles that say another thing: the rest of the row need not be looked at again.
    [[nodiscard]] static QList<int> otherwise(const Said& before, const Said& now);
};

/// A list of such rows.
template <typename Row, typename Base = RowList> class ListOf : public Base {
public:
    using Base::Base;

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override
    {
        return parent.isValid() ? 0 : int(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override
    {
        using Check = QAbstractItemModel::CheckIndexOption;
        if (!this->checkIndex(index, Check::IndexIsValid | Check::ParentIsInvalid))
            return {};
        return RowList::said(Row::staticMetaObject, &m_rows[std::size_t(index.row())], role);
    }
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override
    {
        return RowList::rolesOf(Row::staticMetaObject);
    }

protected:
    std::vector<Row> m_rows;
};

} // namespace tripoise
