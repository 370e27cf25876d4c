// SPDX-License-Identifier: MIT
#include "decision/rows_model.h"

namespace tripoise {

RowsModel::RowsModel(QObject* parent) : RowList(parent) {}

void RowsModel::setSession(Session* session)
{
    if (m_session == session)
        return;
    if (m_session)
        m_session->disconnect(this);
    m_session = session;
    if (session) {
        connect(session, &Session::answerChanged, this, [this] { renew(); });
    }
    emit sessionChanged();
    renew();
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
