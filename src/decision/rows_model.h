// SPDX-License-Identifier: MIT
//
// A list that is made anew from every answer of a session.
#pragma once

#include "session/row_list.h"
#include "session/session.h"

#include <QPointer>

namespace tripoise {

class RowsModel : public RowList {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)

public:
    explicit RowsModel(QObject* parent = nullptr);

    [[nodiscard]] Session* session() const { return m_session; }
    void setSession(Session* session);

signals:
    void sessionChanged();

protected:
    /// The answer to make rows of; null where there is none yet.
    [[nodiscard]] const Solution* solution() const;
    /// The candidate looked at, and the one beside it; null where there is none.
    [[nodiscard]] const Candidate* shown() const;
    [[nodiscard]] const Candidate* beside() const;

    virtual void renew() = 0;

private:
    [[nodiscard]] const Candidate* candidate(const std::optional<std::size_t>& index) const;

    QPointer<Session> m_session;
};

} // namespace tripoise
