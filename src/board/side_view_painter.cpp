// SPDX-License-Identifier: MIT
#include "board/side_view_painter.h"

#include "drawing/canvas.h"
#include "drawing/painter.h"

#include <QPainter>

#include <utility>

namespace tripoise {
namespace {

/// Its memory stays where its size does.
void makeReady(QImage& image, const QSize& size, double ratio)
{
    if (image.size() != size)
        image = QImage(size, QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
}

} // namespace

SideViewPainter::SideViewPainter()
{
    setAutoDelete(false);
    m_pool.setMaxThreadCount(1);
    m_pool.setExpiryTimeout(-1); // with the thread would go the letters it has at hand
}

SideViewPainter::~SideViewPainter()
{
    finish();
}

void SideViewPainter::begin(PaintOrder order)
{
    finish();
    m_order = std::move(order);
    m_begun = true;
    m_pool.start(this);
}

void SideViewPainter::paint(PaintOrder order)
{
    finish();
    m_order = std::move(order);
    paint();
}

const QImage& SideViewPainter::finished()
{
    finish();
    return m_picture;
}

void SideViewPainter::finish()
{
    if (!std::exchange(m_begun, false))
        return;
    if (m_pool.tryTake(this)) // not started yet: here and now is soonest
        paint();
    else
        m_done.acquire();
}

void SideViewPainter::run()
{
    paint();
    m_done.release();
}

void SideViewPainter::paint()
{
    const auto& [size, ratio, theme, view, layout, options] = m_order;
    const auto canvasOn = [this](QPainter& painter) {
        painter.setRenderHint(QPainter::Antialiasing);
        return Canvas{painter, m_order.theme, m_order.layout.fit, m_order.layout.steps};
    };
    const Behind of = behind();
    if (m_behindOf != of) {
        makeReady(m_behind, of.size, ratio);
        m_behind.fill(theme.paper);
        QPainter painter(&m_behind);
        paintBehind(canvasOn(painter), view, layout, options);
        m_behindOf = of;
    }
    makeReady(m_picture, of.size, ratio);
    QPainter painter(&m_picture);
    painter.drawImage(QPointF(), m_behind);
    paintBefore(canvasOn(painter), view, layout, options);
}

SideViewPainter::Behind SideViewPainter::behind() const
{
    const SideView& view = m_order.view;
    Behind of;
    of.size = (m_order.size * m_order.ratio).toSize();
    of.ratio = m_order.ratio;
    of.theme = m_order.theme;
    of.layers = m_order.options.layers;
    of.fit = m_order.layout.fit;
    of.thin = m_order.layout.steps.thin;
    of.scene = m_order.layout.scene;
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

} // namespace tripoise
