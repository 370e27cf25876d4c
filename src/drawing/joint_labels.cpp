// SPDX-License-Identifier: MIT
#include "drawing/joint_labels.h"

#include "wording/drawing_labels.h"

#include <QFontMetricsF>

#include <algorithm>
#include <array>
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

/// Rim and tyre of a wheel; inside there are only spokes.
struct Ring {
    QPointF centre;
    double inner = 0.0;
    double outer = 0.0;

    [[nodiscard]] bool touches(const QRectF& rect) const
    {
        const double nearX = std::clamp(centre.x(), rect.left(), rect.right()) - centre.x();
        const double nearY = std::clamp(centre.y(), rect.top(), rect.bottom()) - centre.y();
        const double farX =
            std::max(std::abs(rect.left() - centre.x()), std::abs(rect.right() - centre.x()));
        const double farY =
            std::max(std::abs(rect.top() - centre.y()), std::abs(rect.bottom() - centre.y()));
        return std::hypot(nearX, nearY) < outer && std::hypot(farX, farY) > inner;
    }
};

/// A distance of a label from its joint, in radii of its arc, and what it costs.
struct Distance {
    double radii;
    double cost;
};
constexpr std::array rings{Distance{1.06, 1.0}, Distance{0.9, 2.0},  Distance{0.7, 3.0},
                           Distance{1.2, 4.0},  Distance{1.35, 5.0}, Distance{1.5, 6.0},
                           Distance{1.7, 7.0},  Distance{0.55, 4.0}, Distance{2.0, 8.0},
                           Distance{2.4, 9.0}};
constexpr int ringsOnSheet = 7;     // a board, which is smaller, has them all
constexpr double worthMoving = 6.0; // a spot must be so much better for a label to move there

/// Puts each label where it covers least, near the middle of its arc if it can.
class Placer {
public:
    Placer(const Layout& layout, const SideView& view, bool onBoard)
        : m_layout(layout), m_onBoard(onBoard)
    {
        for (const LeaderPlace& leader : layout.leaders) {
            m_strokes.push_back({leader.at, leader.knee});
            m_strokes.push_back({leader.knee, leader.end});
            m_taken.push_back(leader.label);
        }
        m_taken.push_back(layout.block.box);
        m_taken.push_back(layout.leadersHeading);
        m_taken.push_back(layout.legend);
        for (const DimensionPlace& dimension : layout.dimensions) {
            m_taken.push_back(dimension.extent());
            m_strokes.push_back({dimension.line.p1(), dimension.line.p2(), 3.0, 6.0});
        }
        for (const PulledPlace& pulled : layout.pulled)
            m_taken.push_back(pulled.label);
        avoid(view.chosen, Point::Zero());
        if (view.other)
            avoid(*view.other, view.otherOffset);
        avoid(*view.rider);
    }

    /// `before` is kept unless another spot is much better.
    LabelSpot place(const JointAngle& angle, const QSizeF& size, const LabelSpot* before)
    {
        LabelSpot best;
        double least = std::numeric_limits<double>::infinity();
        const int ringCount = m_onBoard ? static_cast<int>(rings.size()) : ringsOnSheet;
        for (int ring = 0; ring < ringCount; ++ring) {
            for (int turn = -12; turn <= 12; ++turn) {
                const LabelSpot spot{ring, turn};
                const double cost = rings[static_cast<std::size_t>(ring)].cost
                                    + 0.6 * std::abs(turn) + costOf(at(angle, spot, size))
                                    - (before && *before == spot ? worthMoving : 0.0);
                if (cost < least) {
                    least = cost;
                    best = spot;
                }
            }
        }
        return best;
    }

    QRectF take(const JointAngle& angle, const LabelSpot& spot, const QSizeF& size)
    {
        m_taken.push_back(at(angle, spot, size));
        return m_taken.back();
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
        for (const WheelSketch* wheel : {&bike.rear, &bike.front}) {
            if (m_onBoard)
                m_rings.push_back(
                    {m_layout.fit.toPx(wheel->axle + offset),
                     m_layout.fit.pxPerMm * (wheel->beadSeatRadiusMm - 30.0),
                     m_layout.fit.pxPerMm
                         * (wheel->mudguardRadiusMm.value_or(wheel->radiusMm) + 8.0)});
            else
                avoid(wheel->axle + offset, wheel->axle + offset, 0.9 * wheel->radiusMm);
        }
    }

    void avoid(const RiderSketch& rider)
    {
        const double farWeight = m_onBoard ? 6.0 : 1.5;
        const double s = rider.statureMm;
        avoid(rider.hip, rider.shoulder, 0.058 * s);
        avoid(rider.shoulder, rider.elbow, 0.027 * s);
        avoid(rider.elbow, rider.grip, 0.024 * s);
        avoid(rider.shoulder, rider.head, 0.060 * s);
        avoid(rider.near.hip, rider.near.knee, 0.044 * s);
        avoid(rider.near.knee, rider.near.ankle, 0.033 * s);
        avoid(rider.far.hip, rider.far.knee, 0.040 * s, farWeight);
        avoid(rider.far.knee, rider.far.ankle, 0.030 * s, farWeight);
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

    QRectF at(const JointAngle& angle, const LabelSpot& spot, const QSizeF& size) const
    {
        const Angle middle = angle.directionOf(0.5 * angle.value);
        return beyond(angle, rings[static_cast<std::size_t>(spot.ring)].radii,
                      middle + Angle::degrees(15.0 * spot.turn), size);
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
        for (const Ring& ring : m_rings)
            if (ring.touches(rect))
                cost += 8.0;
        const QRectF free(m_layout.sheet.left(), m_layout.scene.top(), m_layout.sheet.width(),
                          m_layout.sheet.bottom() - m_layout.scene.top());
        return free.contains(rect) ? cost : cost + 200.0;
    }

    const Layout& m_layout;
    bool m_onBoard;
    std::vector<Ring> m_rings;
    std::vector<QRectF> m_taken;
    std::vector<Stroke> m_strokes;
};

QSizeF sizeOf(const JointAngle& angle, const Steps& steps, bool onBoard)
{
    const QFontMetricsF body(fontOf(steps.body, QFont::DemiBold));
    const QFontMetricsF small(fontOf(steps.small));
    return {signWidth(angle, steps, onBoard)
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

double signWidth(const JointAngle& angle, const Steps& steps, bool onBoard)
{
    return angle.comfortable() && !onBoard ? 0.0 : 1.4 * steps.body;
}

void placeJointLabels(Layout& layout, const SideView& view, const DrawingOptions& options)
{
    if (!view.rider)
        return;
    Placer placer(layout, view, !options.furniture);
    for (std::size_t i = 0; i < view.rider->angles.size(); ++i) {
        const JointAngle& angle = view.rider->angles[i];
        const LabelSpot* before = i < options.spots.size() ? &options.spots[i] : nullptr;
        if (!layout.sheet.contains(layout.fit.toPx(angle.at))) {
            layout.spots.push_back(before ? *before : LabelSpot());
            layout.jointLabels.push_back({});
            continue;
        }
        const QSizeF size = sizeOf(angle, layout.steps, !options.furniture);
        layout.spots.push_back(options.holdSpots && before ? *before
                                                           : placer.place(angle, size, before));
        layout.jointLabels.push_back(placer.take(angle, layout.spots.back(), size));
    }
}

} // namespace tripoise
