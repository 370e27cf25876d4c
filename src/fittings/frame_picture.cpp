// SPDX-License-Identifier: MIT
#include "fittings/frame_picture.h"

#include "drawing/theme.h"

#include <QPainter>

#include <algorithm>

namespace tripoise {
namespace {

constexpr qsizetype ofFrame = 11; ///< numbers
constexpr qsizetype withSetup = 17;
constexpr double headroom = 0.55;    ///< above the head tube for saddle and bar, of its height
constexpr double saddleHalfMm = 130; ///< as it is drawn
constexpr double widest = 0.035;     ///< of the item's height: a tube

} // namespace

FramePicture::FramePicture(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &FramePicture::changed, this, [this] { update(); });
}

void FramePicture::paint(QPainter* painter)
{
    if (m_points.size() < ofFrame)
        return;
    const Theme theme = m_night ? Theme::night() : Theme::day();
    const double radius = std::max(1.0, m_points[10]);
    const auto mm = [this](qsizetype i) { return QPointF(m_points[2 * i], m_points[2 * i + 1]); };
    const double left = mm(0).x() - radius;
    const double bottom = mm(0).y() - radius;
    const double across = std::max(1.0, mm(4).x() + radius - left);
    const double high = std::max(1.0, (1.0 + headroom) * mm(2).y() - bottom);
    const double line = std::max(1.0, widest * height());
    const double scale = std::min((width() - 2.0 * line) / across, (height() - 2.0 * line) / high);
    const auto px = [&](const QPointF& at) {
        return QPointF(0.5 * (width() - scale * across) + scale * (at.x() - left),
                       height() - line - scale * (at.y() - bottom));
    };
    const auto draw = [&](const QPointF& from, const QPointF& to) {
        painter->drawLine(px(from), px(to));
    };
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(theme.tyre, line));
    for (const qsizetype axle : {0, 4})
        painter->drawEllipse(px(mm(axle)), scale * radius, scale * radius);
    painter->setPen(QPen(theme.ink, 1.4 * line, Qt::SolidLine, Qt::RoundCap));
    const QPointF bottomBracket;
    draw(bottomBracket, mm(0));
    draw(mm(0), mm(1));
    draw(bottomBracket, mm(1));
    draw(mm(1), mm(2));
    draw(bottomBracket, mm(3));
    draw(mm(2), mm(3));
    draw(mm(3), mm(4));
    if (m_points.size() < withSetup)
        return;
    const auto setup = [this](qsizetype i) {
        return QPointF(m_points[ofFrame + 2 * i], m_points[ofFrame + 2 * i + 1]);
    };
    painter->setPen(QPen(theme.rubber, 1.4 * line, Qt::SolidLine, Qt::RoundCap));
    draw(mm(1), setup(0));
    draw(setup(0) - QPointF(saddleHalfMm, 0), setup(0) + QPointF(saddleHalfMm, 0));
    draw(mm(2), setup(1));
    draw(setup(1), setup(2));
}

} // namespace tripoise
