// SPDX-License-Identifier: MIT
#include "board/board.h"

#include <QPainter>
#include <QQuickWindow>

#include <utility>

namespace tripoise {
namespace {

// Radii of a handle's marks, px.
constexpr double restingMark = 4.5;
constexpr double hoveredMark = 7.0;
constexpr double focusMark = 10.5;

} // namespace

DrawingOptions Board::drawingOptions() const
{
    DrawingOptions options;
    options.layers = m_layers;
    options.furniture = false;
    options.kneePath = m_crank.has_value();
    options.lettersPx = letters();
    options.viewport = drawingFit();
    options.spots = m_spots;
    options.holdSpots = !m_settlingLabels;
    return options;
}

Board::Stamp Board::stamp() const
{
    return {m_sceneNumber, size(), window() ? window()->effectiveDevicePixelRatio() : 1.0, night(),
            drawingOptions()};
}

PaintOrder Board::paintOrder(const Stamp& stamp) const
{
    const SideView& view = m_scene.view();
    return {stamp.size,   stamp.ratio, theme(), view, layOut(area(), view, {}, stamp.options),
            stamp.options};
}

void Board::paint(QPainter* painter)
{
    if (!m_scene.view().drawn) {
        painter->fillRect(area(), theme().paper);
        return;
    }
    if (const Stamp now = stamp(); std::exchange(m_begun, std::nullopt) != now)
        m_painter.paint(paintOrder(now));
    painter->drawImage(QPointF(), m_painter.finished());
    const DrawingLayout& layout = m_painter.order().layout;
    m_spots = spotsOf(layout);
    m_leftOutBox = layout.moreLeadersBox;
    m_leftOut = layout.leftOut;
    m_settlingLabels = false;

    painter->setRenderHint(QPainter::Antialiasing);
    paintHandles(*painter);
}

void Board::paintHandles(QPainter& painter) const
{
    for (const Handle handle : allHandles) {
        const auto place = placeOfHandle(handle);
        if (!place)
            continue;
        const bool held = m_drag && m_drag->handle == handle && m_drag->moved;
        const bool lit = held || m_hovered == handle || m_focused == handle;
        const double r = lit ? hoveredMark : restingMark;
        painter.setPen(QPen(theme().ink, lit ? 2.0 : 1.0));
        painter.setBrush(held ? theme().ink : theme().paper);
        if (handle == Handle::Spacers) { // moves along the steering axis alone
            painter.save();
            painter.translate(*place);
            painter.rotate(90.0 - m_scene.size()->skeleton.headAngle.deg());
            const QPolygonF diamond(
                {{0.0, -1.35 * r}, {0.9 * r, 0.0}, {0.0, 1.35 * r}, {-0.9 * r, 0.0}});
            painter.drawPolygon(diamond);
            painter.restore();
        } else {
            painter.drawEllipse(*place, r, r);
        }
        if (m_focused == handle && hasActiveFocus()) {
            painter.setPen(QPen(theme().paper, 4.0));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(*place, focusMark, focusMark);
            painter.setPen(QPen(theme().ink, 2.0));
            painter.drawEllipse(*place, focusMark, focusMark);
        }
    }
}

} // namespace tripoise
