// SPDX-License-Identifier: MIT
#include "session/session_picture.h"

namespace tripoise {

SessionPicture::SessionPicture(QQuickItem* parent) : SessionCanvas(parent)
{
    setAntialiasing(true);
}

void SessionPicture::itemChange(ItemChange change, const ItemChangeData& data)
{
    SessionCanvas::itemChange(change, data);
    if (change == ItemVisibleHasChanged && data.boolValue && m_stale)
        answered();
}

void SessionPicture::answered()
{
    m_stale = !isVisible();
    if (m_stale)
        return;
    const bool known = session() && session()->solution().prepared && session()->solution().tables;
    make(known ? &session()->solution() : nullptr);
    emit changed();
    update();
}

} // namespace tripoise
