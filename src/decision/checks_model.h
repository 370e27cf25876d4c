// SPDX-License-Identifier: MIT
//
// What to look at: limits that are broken, on any size, and what is worth telling about the rider
// and the size looked at.
#pragma once

#include "decision/rows_model.h"

namespace tripoise {

class ChecksModel : public RowsModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int limitCount READ limitCount NOTIFY counted)
    Q_PROPERTY(QString summary READ summary NOTIFY counted)
    Q_PROPERTY(int laterCount READ laterCount NOTIFY counted)

public:
    enum Role {
        Told = Qt::UserRole + 1,
        Level, ///< "note", "caution" or "limit"
        LevelWord,
        First,   ///< one of the few that are told before all else
        Heading, ///< over the first of those that belong together; empty where there is one sort
    };

    using RowsModel::RowsModel;

    [[nodiscard]] int limitCount() const { return m_limitCount; }
    [[nodiscard]] QString summary() const { return m_summary; } ///< of those not told first
    [[nodiscard]] int laterCount() const { return m_laterCount; }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void counted();

protected:
    void renew() override;

private:
    struct Row {
        QString told;
        Severity severity = Severity::Note;
        QString levelWord;
        QString heading;
        bool first = false;

        bool operator==(const Row&) const = default;
    };

    std::vector<Row> m_rows;
    int m_limitCount = 0;
    int m_laterCount = 0;
    QString m_summary;
};

} // namespace tripoise
