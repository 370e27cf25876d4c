// SPDX-License-Identifier: MIT
#include "drawing/paint_notes.h"

#include "wording/drawing_labels.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <limits>

namespace tripoise {
namespace {

constexpr double farAway = 2.4; // of the letters' height: a label further from its tick is tied to it

double radiusOf(Joint joint)
{
    switch (joint) {
    case Joint::Trunk: return 180.0;
    case Joint::ArmTrunk: return 145.0;
    case Joint::Elbow: return 125.0;
    case Joint::Knee: return 120.0;
    }
    return 150.0;
}

/// A band of the ring between two directions.
std::vector<Point> band(const Point& at, double inner, double outer, Angle from, Angle to)
{
    constexpr int steps = 16;
    std::vector<Point> outline;
    for (int i = 0; i <= steps; ++i)
        outline.push_back(at + outer * along(from + (static_cast<double>(i) / steps) * (to - from)));
    for (int i = steps; i >= 0; --i)
        outline.push_back(at + inner * along(from + (static_cast<double>(i) / steps) * (to - from)));
    return outline;
}

void paintArc(const Canvas& c, const JointAngle& angle)
{
    const double radius = radiusOf(angle.joint);
    const bool fine = angle.comfortable();
    const Angle low = angle.directionOf(angle.low);
    const Angle high = angle.directionOf(angle.high);
    c.noPen();
    c.fill(c.theme.range);
    c.polygon(band(angle.at, 0.74 * radius, radius, low, high));
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

struct Words {
    QString label;
    QString range;
    QSizeF size;
};

/// Whether a segment enters a rectangle: the part of it between the rectangle's sides (Liang & Barsky).
bool touches(const QRectF& rect, const QPointF& a, const QPointF& b)
{
    double from = 0.0;
    double to = 1.0;
    const auto clip = [&](double start, double step, double low, double high) {
        if (step == 0.0)
            return start >= low && start <= high;
        const double first = (low - start) / step;
        const double second = (high - start) / step;
        from = std::max(from, std::min(first, second));
        to = std::min(to, std::max(first, second));
        return from <= to;
    };
    return clip(a.x(), b.x() - a.x(), rect.left(), rect.right())
           && clip(a.y(), b.y() - a.y(), rect.top(), rect.bottom());
}

/// Something a label should not lie on: a line, with what surrounds it.
struct Stroke {
    QPointF from;
    QPointF to;
    double half = 0.0;
    double weight = 8.0;
};

/// Puts each label where it covers least, near the middle of its arc if it can.
class Placer {
public:
    Placer(const Layout& layout, const Canvas& canvas, const SideView& view)
        : m_layout(layout), m_canvas(canvas)
    {
        for (const LeaderPlace& leader : layout.leaders) {
            m_strokes.push_back({leader.at, leader.knee});
            m_strokes.push_back({leader.knee, leader.end});
            m_taken.push_back(leader.label);
        }
        m_taken.push_back(layout.block.box);
        m_taken.push_back(layout.leadersHeading);
        avoid(view.chosen, Point::Zero());
        if (view.other)
            avoid(*view.other, view.otherOffset);
        avoid(*view.rider);
    }

    QRectF place(const JointAngle& angle, const QSizeF& size)
    {
        QRectF best;
        double least = std::numeric_limits<double>::infinity();
        const Angle middle = angle.directionOf(0.5 * angle.value);
        double dearer = 0.0;
        for (const double ring : {1.06, 0.9, 0.7, 1.2, 1.35, 1.5, 1.7}) {
            dearer += 1.0;
            for (int turn = -12; turn <= 12; ++turn) {
                const QRectF rect =
                    beyond(angle, ring, middle + Angle::degrees(15.0 * turn), size);
                const double cost = dearer + 0.6 * std::abs(turn) + costOf(rect);
                if (cost < least) {
                    least = cost;
                    best = rect;
                }
            }
        }
        m_taken.push_back(best);
        return best;
    }

private:
    void avoid(const Point& from, const Point& to, double halfMm, double weight = 8.0)
    {
        m_strokes.push_back({m_canvas.px(from), m_canvas.px(to), m_canvas.px(halfMm), weight});
    }

    void avoid(const BikeSketch& bike, const Point& offset)
    {
        for (const TubeSketch* tube : {&bike.headTube, &bike.seatTube, &bike.topTube,
                                       &bike.downTube, &bike.seatstay, &bike.chainstay, &bike.fork})
            avoid(tube->from + offset, tube->to + offset, 20.0);
        if (bike.cockpit)
            avoid(bike.cockpit->stem.from + offset, bike.cockpit->stem.to + offset, 30.0);
        if (bike.saddle)
            avoid(bike.saddle->tail + offset, bike.saddle->nose + offset, 25.0);
        for (const WheelSketch* wheel : {&bike.rear, &bike.front})
            avoid(wheel->axle + offset, wheel->axle + offset, 0.9 * wheel->radiusMm);
    }

    void avoid(const RiderSketch& rider)
    {
        const double s = rider.statureMm;
        avoid(rider.hip, rider.shoulder, 0.058 * s);
        avoid(rider.shoulder, rider.elbow, 0.027 * s);
        avoid(rider.elbow, rider.grip, 0.024 * s);
        avoid(rider.shoulder, rider.head, 0.060 * s);
        avoid(rider.near.hip, rider.near.knee, 0.044 * s);
        avoid(rider.near.knee, rider.near.ankle, 0.033 * s);
        avoid(rider.far.hip, rider.far.knee, 0.040 * s, 1.5);
        avoid(rider.far.knee, rider.far.ankle, 0.030 * s, 1.5);
        for (const JointAngle& angle : rider.angles) {
            const double radius = radiusOf(angle.joint);
            constexpr int parts = 6;
            for (int i = 0; i <= parts; ++i) {
                const Angle to = (static_cast<double>(i) / parts) * angle.value;
                const Point on = angle.at + radius * along(angle.directionOf(to));
                avoid(on, on, 8.0);
            }
            avoid(angle.at, angle.at + 1.12 * radius * along(angle.zero), 6.0);
        }
    }

    /// Outside a circle round the joint.
    QRectF beyond(const JointAngle& angle, double further, Angle direction, const QSizeF& size) const
    {
        const Point away = along(direction);
        const QPointF edge = m_canvas.px(angle.at + further * radiusOf(angle.joint) * away);
        // The whole label, whichever way it lies: sideways it hangs by its side.
        const auto lean = [](double share) { return std::clamp(2.0 * share, -1.0, 1.0); };
        QRectF rect(QPointF(), size);
        rect.moveCenter(edge
                        + QPointF(0.5 * size.width() * lean(away.x()),
                                  -0.5 * size.height() * lean(away.y())));
        return rect;
    }

    double costOf(const QRectF& rect) const
    {
        double cost = 0.0;
        for (const QRectF& taken : m_taken)
            if (taken.intersects(rect))
                cost += 100.0;
        for (const Stroke& stroke : m_strokes)
            if (touches(rect.adjusted(-stroke.half, -stroke.half, stroke.half, stroke.half),
                        stroke.from, stroke.to))
                cost += stroke.weight;
        const QRectF free(m_layout.sheet.left(), m_layout.scene.top(), m_layout.sheet.width(),
                          m_layout.sheet.bottom() - m_layout.scene.top());
        return free.contains(rect) ? cost : cost + 200.0;
    }

    const Layout& m_layout;
    const Canvas& m_canvas;
    std::vector<QRectF> m_taken;
    std::vector<Stroke> m_strokes;
};

Words wordsOf(const Canvas& c, const JointAngle& angle)
{
    Words words;
    words.label = jointLabel(angle);
    words.range = jointRange(angle);
    const QFontMetricsF body(fontOf(c.steps.body, QFont::DemiBold));
    const QFontMetricsF small(fontOf(c.steps.small));
    const double mark = angle.comfortable() ? 0.0 : 1.4 * c.steps.body;
    words.size = {mark
                      + std::max(body.horizontalAdvance(words.label),
                                 small.horizontalAdvance(words.range)),
                  body.height() + small.height()};
    return words;
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

/// Ties a label to its arc where it had to stand aside.
void paintTie(const Canvas& c, const JointAngle& angle, const QRectF& box)
{
    const double radius = radiusOf(angle.joint);
    const QRectF around = box.adjusted(-0.4 * c.steps.body, 0.0, 0.4 * c.steps.body, 0.0);
    const auto nearest = [&around](const QPointF& point) {
        return QPointF(std::clamp(point.x(), around.left(), around.right()),
                       std::clamp(point.y(), around.top(), around.bottom()));
    };
    const auto away = [&nearest](const QPointF& point) {
        const QPointF apart = nearest(point) - point;
        return std::hypot(apart.x(), apart.y());
    };
    // To the tick, or to the joint where that is much nearer.
    const QPointF joint = c.px(angle.at);
    QPointF tied = c.px(angle.at + radius * along(angle.directionOf(angle.value)));
    if (away(joint) < 0.7 * away(tied))
        tied = joint;
    if (away(tied) < farAway * c.steps.body)
        return;
    c.pen(c.theme.soft, c.steps.hair);
    c.painter.drawLine(tied, nearest(tied));
}

void paintWords(const Canvas& c, const JointAngle& angle, const Words& words, const QRectF& box)
{
    const bool fine = angle.comfortable();
    const double mark = fine ? 0.0 : 1.4 * c.steps.body;
    if (!fine)
        paintHazardMark(c, box);
    const QFont body = fontOf(c.steps.body, QFont::DemiBold);
    const QFontMetricsF metrics(body);
    c.painter.setFont(body);
    c.pen(fine ? c.theme.ink : c.theme.hazardText, c.steps.hair);
    c.painter.drawText(QPointF(box.left() + mark, box.top() + metrics.ascent()), words.label);
    const QFont small = fontOf(c.steps.small);
    c.painter.setFont(small);
    c.pen(c.theme.soft, c.steps.hair);
    c.painter.drawText(QPointF(box.left() + mark,
                               box.top() + metrics.height() + QFontMetricsF(small).ascent()),
                       words.range);
}

} // namespace

void paintAngles(const Canvas& c, const SideView& view, const Layout& layout)
{
    if (!view.rider)
        return;
    for (const JointAngle& angle : view.rider->angles)
        paintArc(c, angle);
    if (!layout.words)
        return;
    Placer placer(layout, c, view);
    for (const JointAngle& angle : view.rider->angles) {
        const Words words = wordsOf(c, angle);
        const QRectF box = placer.place(angle, words.size);
        paintTie(c, angle, box);
        paintWords(c, angle, words, box);
    }
}

} // namespace tripoise
