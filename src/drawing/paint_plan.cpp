// SPDX-License-Identifier: MIT
#include "drawing/paint_plan.h"

#include "drawing/canvas.h"
#include "drawing/proportions.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <array>

namespace tripoise {
namespace {

namespace draw = proportions;

constexpr double leastExtent = 4.0;

/// A line drawn with a body in millimetres.
void thick(const Canvas& c, const QPolygonF& line, double widthMm, const QColor& color,
           Qt::PenCapStyle cap)
{
    QPen pen(color, std::max(0.5, c.px(widthMm)));
    pen.setCapStyle(cap);
    pen.setJoinStyle(Qt::RoundJoin);
    c.painter.setPen(pen);
    c.noFill();
    c.painter.drawPolyline(line);
}

/// The same with an edge round it.
void edged(const Canvas& c, const std::vector<Point>& line, double widthMm, const QColor& body,
           const QColor& edge, Qt::PenCapStyle cap)
{
    const QPolygonF px = c.px(line);
    thick(c, px, widthMm + 2.0 * c.steps.thin / c.fit.pxPerMm, edge, cap);
    thick(c, px, widthMm, body, cap);
}

double widthOf(const SweptWheel& wheel)
{
    return 2.0 * std::max(wheel.sectionMm, wheel.halfWidthMm);
}

void paintWheel(const Canvas& c, const PlanView& view, const PlanPose& pose, Side side, bool meets)
{
    const double width = widthOf(view.wheel);
    const Qt::PenCapStyle cap = view.mudguard ? Qt::FlatCap : Qt::RoundCap;
    // All of it as seen from above, pale; at the shoe's height, where they would meet, in full.
    edged(c, wheelLine(view, pose), width, c.theme.riderFar, c.theme.riderLine, cap);
    if (const auto cut = wheelAtShoe(view, pose, side))
        edged(c, {(*cut)[0], (*cut)[1]}, width, meets ? c.theme.hazard : c.theme.tyre, c.theme.ink,
              cap);
}

void paintBicycle(const Canvas& c, const PlanView& view, const PlanPose& pose)
{
    const Theme& t = c.theme;
    for (const double sign : {1.0, -1.0})
        c.ribbon(TubeSketch{Point(0.0, 0.4 * sign * draw::staysOut),
                            Point(-draw::staysBehind, sign * draw::staysOut)},
                 draw::chainstayAtAxle, draw::chainstayAtAxle, t.tube, t.ink, c.steps.thin);
    c.ribbon(TubeSketch{Point::Zero(), Point(view.headTop.x(), 0.0)}, draw::downTubeDiameter,
             draw::downTubeDiameter, t.tube, t.ink, c.steps.thin, true);
    const std::vector<Point> bar = barLine(view, pose);
    edged(c, {Point(view.headTop.x(), 0.0), bar[2]}, draw::stemDiameter, t.part, t.ink,
          Qt::RoundCap);
    edged(c, bar, draw::barDiameter, t.part, t.ink, Qt::RoundCap);
    for (const auto& [from, to] : {std::pair{bar[0], bar[1]}, std::pair{bar[4], bar[3]}})
        edged(c, {from, Point(to + (to - from))}, draw::gripDiameter, t.rubber, t.ink,
              Qt::RoundCap);
}

void paintFoot(const Canvas& c, const PlanView& view, const PlanPose& pose, Side side, bool near,
               bool meets)
{
    const Theme& t = c.theme;
    const Point pedal = pedalAt(view, pose, side);
    const double sign = side == Side::Right ? -1.0 : 1.0;
    const Point inPlane(0.0, sign * draw::crankOut);
    const Point end(pedal.x(), sign * draw::crankOut);
    edged(c, {inPlane, end}, draw::crankAtPedal, t.part, t.ink, Qt::RoundCap);
    edged(c, {end, pedal}, 0.5 * draw::crankAtPedal, t.part, t.ink, Qt::FlatCap);
    const double half = 0.5 * view.pedalWidthMm;
    const double fore = 0.5 * draw::pedalLength;
    const std::array plate{Point(pedal + Point(fore, half)), Point(pedal + Point(-fore, half)),
                           Point(pedal + Point(-fore, -half)), Point(pedal + Point(fore, -half))};
    c.fill(t.rubber);
    c.pen(t.ink, c.steps.thin);
    c.polygon(plate);
    QColor body = near ? t.sole : t.rider;
    body.setAlphaF(near ? 0.85F : 0.7F);
    c.fill(body);
    if (meets)
        c.pen(t.hazardText, c.steps.bold, Qt::DashLine);
    else
        c.pen(near ? t.ink : t.riderLine, c.steps.thin);
    c.polygon(shoeLine(view, pose, side));
}

/// The shoe that comes nearer to the wheel.
struct Nearer {
    Side side = Side::Right;
    bool meets = false;
};
Nearer nearerOf(const PlanView& view, const PlanPose& pose)
{
    const double right = gapMm(view, pose, Side::Right);
    const double left = gapMm(view, pose, Side::Left);
    return {left < right ? Side::Left : Side::Right, std::min(left, right) < 0.0};
}

/// The room that the wheel takes as it is steered.
void paintSweep(const Canvas& c, const PlanView& view, const PlanPose& pose)
{
    c.pen(c.theme.soft, c.steps.thin, Qt::DashLine);
    c.noFill();
    c.polyline(sweptLine(view, pose, nearerOf(view, pose).side));
}

void paintGap(const Canvas& c, const QRectF& area, const PlanView& view, const PlanPose& pose,
              const PlanWords& words)
{
    const auto [side, meets] = nearerOf(view, pose);
    const std::vector<Point> shoe = shoeLine(view, pose, side);
    const Point tip = *std::max_element(
        shoe.begin(), shoe.end(), [](const Point& a, const Point& b) { return a.x() < b.x(); });
    const QFont font = fontOf(1.15 * words.letters, QFont::DemiBold);
    const QFontMetricsF metrics(font);
    QRectF box(QPointF(),
               QSizeF(metrics.horizontalAdvance(words.gap) + words.letters, 1.6 * words.letters));
    // Outside of the shoe, whichever side it is on, and inside the area.
    const double outside = side == Side::Right ? 1.0 : -1.0;
    const QPointF at =
        c.px(tip) + QPointF(0.0, outside * (c.px(0.5 * view.pedalWidthMm) + 1.8 * words.letters));
    box.moveCenter(at);
    const QRectF within = area.adjusted(4.0, 4.0, -4.0, -4.0);
    box.moveLeft(std::clamp(box.left(), within.left(),
                            std::max(within.left(), within.right() - box.width())));
    box.moveTop(std::clamp(box.top(), within.top(),
                           std::max(within.top(), within.bottom() - box.height())));
    c.pen(meets ? c.theme.hazardText : c.theme.edge, c.steps.thin);
    c.fill(c.theme.paper);
    c.painter.drawRect(box);
    c.painter.setFont(font);
    c.painter.setPen(meets ? c.theme.hazardText : c.theme.ink);
    c.painter.drawText(box, Qt::AlignCenter, words.gap);
}

} // namespace

DrawingFit fitPlan(const QRectF& area, const PlanView& view, double letters)
{
    const QRectF inside = area.adjusted(letters, letters, -letters, -letters);
    const PlanView::Bounds bounds = view.bounds();
    const Point size = (bounds.high - bounds.low).cwiseMax(1.0);
    const Point middle = 0.5 * (bounds.low + bounds.high);
    DrawingFit fit;
    fit.pxPerMm = std::max(1e-3, std::min(inside.width() / size.x(), inside.height() / size.y()));
    fit.origin = inside.center() - QPointF(fit.pxPerMm * middle.x(), -fit.pxPerMm * middle.y());
    return fit;
}

void paintPlan(const Canvas& c, const PlanView& view, const PlanPose& pose)
{
    const auto [nearer, meets] = nearerOf(view, pose);
    paintWheel(c, view, pose, nearer, meets);
    for (const Side side : {Side::Left, Side::Right})
        paintFoot(c, view, pose, side, side == nearer, meets && side == nearer);
    paintBicycle(c, view, pose);
}

void paintPlanOutline(const Canvas& c, const PlanView& view, const PlanPose& pose)
{
    QPainterPath wheel;
    wheel.addPolygon(c.px(wheelLine(view, pose)));
    QPainterPathStroker stroker;
    stroker.setWidth(c.px(widthOf(view.wheel)));
    stroker.setJoinStyle(Qt::RoundJoin);
    c.noFill();
    c.pen(c.theme.other, c.steps.medium, Qt::DashLine);
    c.painter.drawPath(stroker.createStroke(wheel).united(wheel)); // not the hole in it
    c.polygon(shoeLine(view, pose, nearerOf(view, pose).side));
}

void paintPlan(QPainter& painter, const QRectF& area, const PlanView& view, const PlanPose& pose,
               const Theme& theme, const PlanWords& words)
{
    if (!(area.width() >= leastExtent && area.height() >= leastExtent))
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(area, theme.paper);
    if (view.drawn) {
        painter.setClipRect(area);
        const Canvas c{painter, theme, fitPlan(area, view, words.letters),
                       stepsFor(area.size(), words.letters)};
        paintPlan(c, view, pose);
        paintSweep(c, view, pose);
        paintGap(c, area, view, pose, words);
    }
    painter.restore();
}

} // namespace tripoise
