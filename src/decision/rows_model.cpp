// SPDX-License-Identifier: MIT
#include "decision/rows_model.h"

namespace tripoise {

RowsModel::RowsModel(QObject* parent) : QAbstractListModel(parent) {}

void RowsModel::setSession(Session* session)
{
    if (m_session == session)
        return;
    if (m_session)
        m_session->disconnect(this);
    m_session = session;
    if (session) {
        connect(session, &Session::solutionChanged, this, [this] { renew(); });
        connect(session, &Session::lookChanged, this, [this] { renew(); });
        connect(session, &Session::speechChanged, this, [this] { renew(); });
    }
    emit sessionChanged();
    renew();
}

RowsModel::Said RowsModel::saidOf(int row) const
{
    Said said;
    const QHash<int, QByteArray> roles = roleNames();
    for (auto role = roles.keyBegin(); role != roles.keyEnd(); ++role)
        said[*role] = data(index(row), *role);
    return said;
}

QList<int> RowsModel::otherwise(const Said& before, const Said& now)
{
    QList<int> roles;
    for (auto said = now.begin(); said != now.end(); ++said)
        if (before.value(said.key()) != said.value())
            roles << said.key();
    return roles;
}

const Solution* RowsModel::solution() const
{
    return m_session && m_session->solution().prepared ? &m_session->solution() : nullptr;
}

const Candidate* RowsModel::candidate(const std::optional<std::size_t>& index) const
{
    return solution() && index ? &solution()->advice.candidates[*index] : nullptr;
}

const Candidate* RowsModel::shown() const
{
    return m_session ? candidate(m_session->shownCandidate()) : nullptr;
}

const Candidate* RowsModel::beside() const
{
    return m_session ? candidate(m_session->besideCandidate()) : nullptr;
}

} // namespace tripoise
