// SPDX-License-Identifier: MIT
#include "board/board.h"

#include "drawing/canvas.h"
#include "drawing/painter.h"

#include <QPainter>
#include <QQuickWindow>

namespace tripoise {
namespace {

// Radii of a handle's marks, px.
constexpr double restingMark = 4.5;
constexpr double hoveredMark = 7.0;
constexpr double focusMark = 10.5;

} // namespace

const Theme& Board::theme() const
{
    static const Theme day = Theme::day();
    static const Theme night = Theme::night();
    return m_night ? night : day;
}

DrawingOptions Board::drawingOptions() const
{
    DrawingOptions options;
    options.layers = m_layers;
    options.furniture = false;
    options.kneePath = m_crank.has_value();
    options.lettersPx = m_letters;
    options.viewport = drawingFit();
    options.spots = m_spots;
    options.holdSpots = !m_settlingLabels;
    return options;
}

Board::Behind Board::behindOf(const Layout& layout, const DrawingOptions& options) const
{
    const SideView& view = m_scene.view();
    Behind of;
    of.ratio = window() ? window()->effectiveDevicePixelRatio() : 1.0;
    of.size = (area().size() * of.ratio).toSize();
    of.night = m_night;
    of.layers = options.layers;
    of.fit = layout.fit;
    of.thin = layout.steps.thin;
    of.scene = layout.scene;
    of.groundY = view.chosen.groundY;
    of.wheels[0] = view.chosen.rear;
    of.wheels[1] = view.chosen.front;
    if (view.other) {
        of.wheels[2] = view.other->rear;
        of.wheels[3] = view.other->front;
        of.otherOffset = view.otherOffset;
    }
    return of;
}

const QImage& Board::behind(const Layout& layout, const DrawingOptions& options)
{
    const Behind of = behindOf(layout, options);
    if (m_behindOf == of)
        return m_behind;
    if (m_behind.size() != of.size)
        m_behind = QImage(of.size, QImage::Format_RGB32);
    m_behind.setDevicePixelRatio(of.ratio);
    m_behind.fill(theme().paper);
    QPainter painter(&m_behind);
    painter.setRenderHint(QPainter::Antialiasing);
    paintBehind({painter, theme(), layout.fit, layout.steps}, m_scene.view(), layout, options);
    m_behindOf = of;
    return m_behind;
}

void Board::paint(QPainter* painter)
{
    if (!m_scene.view().drawn) {
        painter->fillRect(area(), theme().paper);
        return;
    }
    const DrawingOptions options = drawingOptions();
    const Layout layout = layOut(area(), m_scene.view(), {}, options);
    m_spots = spotsOf(layout);
    m_leftOutBox = layout.moreLeadersBox;
    m_leftOut = layout.leftOut;
    m_settlingLabels = false;

    painter->setRenderHint(QPainter::Antialiasing);
    painter->drawImage(QPointF(), behind(layout, options));
    paintBefore({*painter, theme(), layout.fit, layout.steps}, m_scene.view(), layout, options);
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
