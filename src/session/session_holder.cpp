// SPDX-License-Identifier: MIT
#include "session/session_holder.h"

namespace tripoise {

void SessionHolder::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_link = std::make_unique<QObject>(); // the connections to the one before end here
    m_session = session;
    on(&QObject::destroyed, [this] { sessionSet(); }); // the pointer is null by then
    sessionSet();
}

const Fitting& SessionHolder::fitting() const
{
    static const Fitting none;
    return m_session ? m_session->fitting() : none;
}

void SessionHolder::edit(Fitting next, const QString& what, const QString& mergeKey) const
{
    if (m_session)
        m_session->edit(std::move(next), what, mergeKey);
}

void SessionHolder::sealStep() const
{
    if (m_session)
        m_session->sealStep();
}

} // namespace tripoise
