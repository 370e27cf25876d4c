// SPDX-License-Identifier: MIT
#include "look/look.h"

namespace tripoise {

void Look::setNight(bool night)
{
    if (m_night == night)
        return;
    m_night = night;
    m_theme = night ? Theme::night() : Theme::day();
    emit changed();
}

void Look::setTextScale(qreal scale)
{
    scale = qBound(1.0, scale, 2.0);
    if (qFuzzyCompare(m_textScale, scale))
        return;
    m_textScale = scale;
    emit changed();
}

} // namespace tripoise
