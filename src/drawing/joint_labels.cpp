// SPDX-License-Identifier: MIT
#include "drawing/joint_labels.h"

#include "wording/drawing_labels.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <limits>

namespace tripoise {
namespace {

/// Whether a segment enters a rectangle: the part of it between the rectangle's sides (Liang &
/// Barsky).
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
    Placer(const Layout& layout, const SideView& view) : m_layout(layout)
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
                const QRectF rect = beyond(angle, ring, middle + Angle::degrees(15.0 * turn), size);
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
        m_strokes.push_back({m_layout.fit.toPx(from), m_layout.fit.toPx(to),
                             m_layout.fit.pxPerMm * halfMm, weight});
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
            const double radius = arcRadiusMm(angle.joint);
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
    QRectF beyond(const JointAngle& angle, double further, Angle direction,
                  const QSizeF& size) const
    {
        const Point away = along(direction);
        const QPointF edge =
            m_layout.fit.toPx(angle.at + further * arcRadiusMm(angle.joint) * away);
        // The whole label, whichever way it lies: sideways it hangs by its side.
        const auto lean = [](double share) { return std::clamp(2.0 * share, -1.0, 1.0); };
        QRectF rect(QPointF(), size);
        rect.moveCenter(
            edge
            + QPointF(0.5 * size.width() * lean(away.x()), -0.5 * size.height() * lean(away.y())));
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
    std::vector<QRectF> m_taken;
    std::vector<Stroke> m_strokes;
};

QSizeF sizeOf(const JointAngle& angle, const Steps& steps)
{
    const QFontMetricsF body(fontOf(steps.body, QFont::DemiBold));
    const QFontMetricsF small(fontOf(steps.small));
    return {hazardMarkWidth(angle, steps)
                + std::max(body.horizontalAdvance(jointLabel(angle)),
                           small.horizontalAdvance(jointRange(angle))),
            body.height() + small.height()};
}

} // namespace

double arcRadiusMm(Joint joint)
{
    switch (joint) {
    case Joint::Trunk: return 180.0;
    case Joint::ArmTrunk: return 145.0;
    case Joint::Elbow: return 125.0;
    case Joint::Knee: return 120.0;
    }
    return 150.0;
}

double hazardMarkWidth(const JointAngle& angle, const Steps& steps)
{
    return angle.comfortable() ? 0.0 : 1.4 * steps.body;
}

std::vector<QRectF> placeJointLabels(const Layout& layout, const SideView& view)
{
    std::vector<QRectF> places;
    if (!view.rider)
        return places;
    Placer placer(layout, view);
    for (const JointAngle& angle : view.rider->angles)
        places.push_back(placer.place(angle, sizeOf(angle, layout.steps)));
    return places;
}

} // namespace tripoise
