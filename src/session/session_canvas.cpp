// SPDX-License-Identifier: MIT
#include "session/session_canvas.h"

namespace tripoise {

void SessionCanvas::sessionSet()
{
    on(&Session::answerArrived, this, &SessionCanvas::answered);
    emit sessionChanged();
    answered();
}

void SessionCanvas::setNight(bool night)
{
    if (m_night == night)
        return;
    m_night = night;
    emit lookChanged();
    update();
}

void SessionCanvas::setLetters(double px)
{
    if (m_letters == px)
        return;
    m_letters = px;
    emit lookChanged();
    update();
}

const Theme& SessionCanvas::theme() const
{
    static const Theme day = Theme::day();
    static const Theme night = Theme::night();
    return m_night ? night : day;
}

} // namespace tripoise
