// SPDX-License-Identifier: MIT
#include "drawing/joint_labels.h"
#include "drawing/paint_notes.h"
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace tripoise::drawing {
namespace {

/// A band of the ring between two directions.
std::vector<Point> band(const Point& at, double inner, double outer, Angle from, Angle to)
{
    constexpr int steps = 16;
    std::vector<Point> outline;
    for (int i = 0; i <= steps; ++i)
        outline.push_back(at
                          + outer * along(from + (static_cast<double>(i) / steps) * (to - from)));
    for (int i = steps; i >= 0; --i)
        outline.push_back(at
                          + inner * along(from + (static_cast<double>(i) / steps) * (to - from)));
    return outline;
}

void paintRange(const Canvas& c, const JointAngle& angle, bool onBoard)
{
    const double radius = arcRadiusMm(angle.joint);
    const std::vector<Point> sector =
        band(angle.at, 0.74 * radius, radius, angle.directionOf(angle.low),
             angle.directionOf(angle.high));
    c.noPen();
    c.fill(c.theme.range);
    if (onBoard && angle.place() == RangePlace::Outside) {
        QColor warning = c.theme.hazard;
        warning.setAlphaF(0.45F);
        c.fill(warning);
    }
    c.polygon(sector);
    if (onBoard && angle.place() == RangePlace::NearEdge) {
        // Hatched: seen without a second colour.
        QColor hatch = c.theme.ink;
        hatch.setAlphaF(0.5F);
        c.painter.setBrush(QBrush(hatch, Qt::BDiagPattern));
        c.polygon(sector);
    }
}

void paintArc(const Canvas& c, const JointAngle& angle, bool onBoard)
{
    const double radius = arcRadiusMm(angle.joint);
    const bool fine = angle.comfortable();
    if (!angle.atBottom)
        paintRange(c, angle, onBoard);
    c.noFill();
    c.pen(c.theme.soft, c.steps.hair, Qt::DotLine);
    c.line(angle.at, angle.at + 1.12 * radius * along(angle.zero));

    const QColor& mark = fine ? c.theme.ink : c.theme.hazard;
    const Angle end = angle.directionOf(angle.value);
    c.pen(mark, fine ? c.steps.hair : c.steps.medium, fine ? Qt::SolidLine : Qt::DashLine);
    if (angle.sense > 0.0)
        c.arc(angle.at, radius, angle.zero, end);
    else
        c.arc(angle.at, radius, end, angle.zero);
    c.pen(c.theme.ink, c.steps.hair);
    c.line(angle.at, angle.at + 0.76 * radius * along(end));
    c.pen(mark, c.steps.bold);
    c.line(angle.at + 0.76 * radius * along(end), angle.at + 1.05 * radius * along(end));
}

/// A triangle with an exclamation mark: seen without its colour.
void paintHazardMark(const Canvas& c, const QRectF& box)
{
    const double side = 1.1 * c.steps.body;
    const QPointF top(box.left() + 0.5 * side, box.top() + 0.1 * side);
    c.fill(c.theme.hazard);
    c.pen(c.theme.ink, c.steps.hair);
    c.painter.drawPolygon(QPolygonF(
        {top, top + QPointF(0.5 * side, 0.9 * side), top + QPointF(-0.5 * side, 0.9 * side)}));
    c.pen(c.theme.hazardInk, c.steps.medium);
    c.painter.drawLine(top + QPointF(0.0, 0.32 * side), top + QPointF(0.0, 0.58 * side));
    c.painter.drawLine(top + QPointF(0.0, 0.74 * side), top + QPointF(0.0, 0.75 * side));
}

/// Inside: a full dot. Near the edge: half a dot.
void paintCalmSign(const Canvas& c, const QRectF& box, bool nearEdge)
{
    const double r = 0.3 * c.steps.body;
    const QPointF middle(box.left() + 0.55 * c.steps.body, box.top() + 0.62 * c.steps.body);
    const QRectF dot(middle.x() - r, middle.y() - r, 2.0 * r, 2.0 * r);
    c.pen(c.theme.ink, c.steps.thin);
    c.fill(nearEdge ? c.theme.paper : c.theme.ink);
    c.painter.drawEllipse(dot);
    if (nearEdge) {
        c.fill(c.theme.ink);
        c.painter.drawPie(dot, 90 * 16, 180 * 16);
    }
}

/// Ties a label to its arc where it had to stand aside.
void paintTie(const Canvas& c, const QLineF& tie)
{
    c.pen(c.theme.ink, c.steps.hair);
    c.painter.drawLine(tie);
    c.fill(c.theme.ink);
    paintDot(c, tie.p1());
}

void paintWords(const Canvas& c, const JointAngle& angle, const JointLabelPlace& place,
                bool onBoard)
{
    const QRectF& box = place.box;
    const bool fine = angle.comfortable();
    const double left = box.left() + signWidth(angle, c.steps, onBoard);
    if (onBoard)
        paintHalo(c, box);
    if (!fine)
        paintHazardMark(c, box);
    else if (onBoard)
        paintCalmSign(c, box, angle.place() == RangePlace::NearEdge);
    const QFont body = fontOf(c.steps.body, QFont::DemiBold);
    const QFontMetricsF metrics(body);
    c.painter.setFont(body);
    c.pen(fine ? c.theme.ink : c.theme.hazardText, c.steps.hair);
    c.painter.drawText(QPointF(left, box.top() + metrics.ascent()), place.text);
    if (place.range.isEmpty())
        return;
    const QFont small = fontOf(c.steps.small);
    c.painter.setFont(small);
    c.pen(c.theme.soft, c.steps.hair);
    c.painter.drawText(QPointF(left, box.top() + metrics.height() + QFontMetricsF(small).ascent()),
                       place.range);
}

} // namespace

void paintAngles(const Canvas& c, const SideView& view, const DrawingLayout& layout, bool onBoard)
{
    if (!view.rider)
        return;
    for (const JointAngle& angle : view.rider->angles)
        paintArc(c, angle, onBoard);
    for (std::size_t i = 0; i < layout.jointLabels.size(); ++i) {
        const JointLabelPlace& place = layout.jointLabels[i];
        if (place.box.isEmpty())
            continue;
        if (place.tie)
            paintTie(c, *place.tie);
        paintWords(c, view.rider->angles[i], place, onBoard);
    }
}

} // namespace tripoise::drawing
