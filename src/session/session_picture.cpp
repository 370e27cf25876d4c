// SPDX-License-Identifier: MIT
#include "session/session_picture.h"

namespace tripoise {

SessionPicture::SessionPicture(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void SessionPicture::setSession(Session* session)
{
    if (m_session == session)
        return;
    if (m_session)
        m_session->disconnect(this);
    m_session = session;
    if (session) {
        connect(session, &Session::answerChanged, this, &SessionPicture::remake);
    }
    emit sessionChanged();
    remake();
}

void SessionPicture::setNight(bool night)
{
    if (m_night == night)
        return;
    m_night = night;
    emit lookChanged();
    update();
}

void SessionPicture::setLetters(double px)
{
    if (m_letters == px)
        return;
    m_letters = px;
    emit lookChanged();
    update();
}

void SessionPicture::itemChange(ItemChange change, const ItemChangeData& data)
{
    QQuickPaintedItem::itemChange(change, data);
    if (change == ItemVisibleHasChanged && data.boolValue && m_stale)
        remake();
}

void SessionPicture::remake()
{
    m_stale = !isVisible();
    if (m_stale)
        return;
    const bool answered =
        m_session && m_session->solution().prepared && m_session->solution().tables;
    make(answered ? &m_session->solution() : nullptr);
    emit changed();
    update();
}

} // namespace tripoise
