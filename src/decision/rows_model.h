// SPDX-License-Identifier: MIT
//
// A list that is made anew from every answer of a session. Rows that stay keep their delegates, so
// that the keys stay where they were.
#pragma once

#include "session/session.h"

#include <QAbstractListModel>
#include <QPointer>
#include <QtQml/qqmlregistration.h>

#include <algorithm>
#include <vector>

namespace tripoise {

class RowsModel : public QAbstractListModel {
    using Said = QHash<int, QVariant>; ///< by role

    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    explicit RowsModel(QObject* parent = nullptr);

    [[nodiscard]] Session* session() const { return m_session; }
    void setSession(Session* session);
    [[nodiscard]] int count() const { return rowCount({}); }

signals:
    void sessionChanged();
    void countChanged();

protected:
    /// The answer to make rows of; null where there is none yet.
    [[nodiscard]] const Solution* solution() const;
    /// The candidate looked at, and the one beside it; null where there is none.
    [[nodiscard]] const Candidate* shown() const;
    [[nodiscard]] const Candidate* beside() const;

    virtual void renew() = 0;

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

private:
    [[nodiscard]] Said saidOf(int row) const;
    /// The roles that say another thing: the rest of the row need not be looked at again.
    [[nodiscard]] static QList<int> otherwise(const Said& before, const Said& now);
    [[nodiscard]] const Candidate* candidate(const std::optional<std::size_t>& index) const;

    QPointer<Session> m_session;
};

} // namespace tripoise
