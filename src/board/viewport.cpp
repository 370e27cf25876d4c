// SPDX-License-Identifier: MIT
#include "board/viewport.h"

#include <algorithm>

namespace tripoise {
namespace {

constexpr double leastZoom = 0.5;
constexpr double mostZoom = 12.0;

} // namespace

void Viewport::zoomBy(double factor, const QPointF& about)
{
    if (!m_whole)
        return;
    const DrawingFit before = fit();
    const Point under = before.toMm(about);
    DrawingFit after = before;
    after.pxPerMm = std::clamp(before.pxPerMm * factor, leastZoom * m_whole->pxPerMm,
                               mostZoom * m_whole->pxPerMm);
    after.origin += about - after.toPx(under);
    m_own = after;
}

void Viewport::panBy(const QPointF& px)
{
    if (!m_whole)
        return;
    DrawingFit moved = fit();
    moved.origin += px;
    m_own = moved;
}

} // namespace tripoise
