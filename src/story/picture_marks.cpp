// SPDX-License-Identifier: MIT
#include "story/picture_marks.h"

#include <QLineF>

namespace tripoise {
namespace {

constexpr int fanSteps = 24;

Point onFan(const JointAngle& angle, Angle at, double radiusMm)
{
    return angle.at + radiusMm * along(angle.directionOf(at));
}

void paintArrow(const Canvas& c, const QPointF& tip, const QPointF& along, double length)
{
    const QPointF back = tip - length * along;
    const QPointF side = 0.38 * length * QPointF(-along.y(), along.x());
    c.painter.drawPolygon(QPolygonF({tip, back + side, back - side}));
}

} // namespace

std::vector<Point> bodyLine(const RiderSketch& rider)
{
    return {rider.hip, rider.shoulder, rider.elbow, rider.grip};
}

std::vector<Point> legLine(const RiderSketch& rider)
{
    return {rider.near.hip, rider.near.knee, rider.near.ankle};
}

void paintFan(const Canvas& c, const JointAngle& angle, double fromMm, double toMm)
{
    std::vector<Point> outline;
    const auto at = [&angle](int i) {
        return angle.low + (static_cast<double>(i) / fanSteps) * (angle.high - angle.low);
    };
    for (int i = 0; i <= fanSteps; ++i)
        outline.push_back(onFan(angle, at(i), toMm));
    for (int i = fanSteps; i >= 0; --i)
        outline.push_back(onFan(angle, at(i), fromMm));
    QColor shade = angle.comfortable() ? c.theme.range : c.theme.hazard;
    if (!angle.comfortable())
        shade.setAlphaF(0.5F);
    c.fill(shade);
    c.pen(c.theme.ink, 1.0);
    c.polygon(outline);
}

void paintVerdict(const Canvas& c, const QPointF& topLeft, double size, bool kept)
{
    const QRectF box(topLeft, QSizeF(size, size));
    const auto at = [&box](double x, double y) {
        return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
    };
    const double line = std::max(2.0, 0.1 * size);
    if (kept) {
        c.noPen();
        c.fill(c.theme.ink);
        c.painter.drawEllipse(box);
        c.noFill();
        c.pen(c.theme.paper, line);
        c.painter.drawPolyline(QPolygonF({at(0.28, 0.52), at(0.44, 0.68), at(0.73, 0.34)}));
        return;
    }
    c.fill(c.theme.hazard);
    c.pen(c.theme.ink, 1.0);
    c.painter.drawPolygon(QPolygonF({at(0.5, 0.02), at(1.0, 0.94), at(0.0, 0.94)}));
    c.pen(c.theme.hazardInk, line);
    c.painter.drawLine(at(0.5, 0.36), at(0.5, 0.62));
    c.painter.drawLine(at(0.5, 0.78), at(0.5, 0.79));
}

void paintSpan(const Canvas& c, const QPointF& from, const QPointF& to, double arrow)
{
    const QLineF line(from, to);
    if (line.length() <= 0.0)
        return;
    const QPointF way = (to - from) / line.length();
    const bool inside = line.length() > 2.4 * arrow;
    const double tail = inside ? 0.0 : 1.6 * arrow;
    c.painter.drawLine(from - tail * way, to + tail * way);
    const QPen pen = c.painter.pen();
    c.fill(pen.color());
    c.noPen();
    paintArrow(c, from, inside ? -way : way, arrow);
    paintArrow(c, to, inside ? way : -way, arrow);
    c.painter.setPen(pen);
    c.noFill();
}

} // namespace tripoise
