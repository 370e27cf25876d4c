// SPDX-License-Identifier: MIT
#include "decision/hatch.h"

#include <QPainter>

namespace tripoise {
namespace {

constexpr double stepPx = 4.0; // between strokes

} // namespace

void Hatch::setColor(const QColor& color)
{
    if (m_color == color)
        return;
    m_color = color;
    emit colorChanged();
    update();
}

void Hatch::paint(QPainter* painter)
{
    const QRectF area = boundingRect().adjusted(0.5, 0.5, -0.5, -0.5);
    if (!area.isValid())
        return;
    painter->setPen(QPen(m_color, 1.0));
    painter->drawRect(area);
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setClipRect(area);
    for (double x = area.left(); x < area.right() + area.height(); x += stepPx)
        painter->drawLine(QPointF(x, area.top()), QPointF(x - area.height(), area.bottom()));
}

} // namespace tripoise
