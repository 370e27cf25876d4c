// SPDX-License-Identifier: MIT
#include "drawing/drawn_strokes.h"

#include "drawing/joint_labels.h"

namespace tripoise::drawing {
namespace {

constexpr double weightOfLine = 8.0;
constexpr double weightOfFace = 24.0;
constexpr double handlePx = 7.0; // around what a pointer takes hold of

class Strokes {
public:
    Strokes(Clearance& clearance, const DrawingFit& fit, bool onBoard)
        : m_clearance(clearance), m_fit(fit), m_onBoard(onBoard)
    {
    }

    void bike(const BikeSketch& bike, const Point& offset, bool wheels)
    {
        for (const TubeSketch* tube : {&bike.headTube, &bike.seatTube, &bike.topTube,
                                       &bike.downTube, &bike.seatstay, &bike.chainstay, &bike.fork})
            stroke(tube->from + offset, tube->to + offset, 20.0);
        if (bike.cockpit) {
            stroke(bike.cockpit->stem.from + offset, bike.cockpit->stem.to + offset, 30.0);
            const std::vector<Point>& bar = bike.cockpit->bar.curve;
            for (std::size_t i = 1; i < bar.size(); ++i)
                stroke(bar[i - 1] + offset, bar[i] + offset, 15.0);
        }
        if (bike.saddle) {
            stroke(bike.saddle->tail + offset, bike.saddle->nose + offset, 25.0);
            stroke(bike.saddle->post.from + offset, bike.saddle->post.to + offset, 20.0);
        }
        if (!wheels)
            return;
        for (const WheelSketch* wheel : {&bike.rear, &bike.front}) {
            if (m_onBoard)
                m_clearance.avoidRing(
                    m_fit.toPx(wheel->axle + offset),
                    m_fit.pxPerMm * (wheel->beadSeatRadiusMm - 30.0),
                    m_fit.pxPerMm * (wheel->mudguardRadiusMm.value_or(wheel->radiusMm) + 8.0),
                    weightOfLine);
            else
                stroke(wheel->axle + offset, wheel->axle + offset, 0.9 * wheel->radiusMm);
        }
    }

    void rider(const RiderSketch& rider, bool angles)
    {
        const double s = rider.statureMm;
        const double farWeight = m_onBoard ? 6.0 : 1.5;
        stroke(rider.hip, rider.shoulder, 0.058 * s);
        stroke(rider.shoulder, rider.elbow, 0.027 * s);
        stroke(rider.elbow, rider.grip, 0.024 * s);
        stroke(rider.shoulder, rider.head, 0.060 * s);
        stroke(rider.head, rider.head, 0.080 * s, weightOfFace);
        stroke(rider.near.hip, rider.near.knee, 0.044 * s);
        stroke(rider.near.knee, rider.near.ankle, 0.033 * s);
        stroke(rider.near.heel, rider.near.toe, 0.015 * s);
        stroke(rider.far.hip, rider.far.knee, 0.040 * s, farWeight);
        stroke(rider.far.knee, rider.far.ankle, 0.030 * s, farWeight);
        if (!angles)
            return;
        for (const JointAngle& angle : rider.angles) {
            const double radius = arcRadiusMm(angle.joint);
            constexpr int parts = 6;
            for (int i = 0; i <= parts; ++i) {
                const Angle to = (static_cast<double>(i) / parts) * angle.value;
                const Point on = angle.at + radius * along(angle.directionOf(to));
                stroke(on, on, 8.0);
            }
            stroke(angle.at, angle.at + 1.12 * radius * along(angle.zero), 6.0);
        }
    }

    /// What is taken hold of stays uncovered.
    void handle(const Point& at)
    {
        const QPointF px = m_fit.toPx(at);
        m_clearance.take({px.x() - handlePx, px.y() - handlePx, 2.0 * handlePx, 2.0 * handlePx});
    }

private:
    void stroke(const Point& from, const Point& to, double halfMm, double weight = weightOfLine)
    {
        m_clearance.avoid({m_fit.toPx(from), m_fit.toPx(to)}, m_fit.pxPerMm * halfMm, weight);
    }

    Clearance& m_clearance;
    const DrawingFit& m_fit;
    bool m_onBoard;
};

} // namespace

void avoidDrawn(Clearance& clearance, const SideView& view, const DrawingFit& fit,
                const Layers& layers, bool onBoard)
{
    Strokes strokes(clearance, fit, onBoard);
    strokes.bike(view.chosen, Point::Zero(), layers.wheels);
    if (view.other && layers.other)
        strokes.bike(*view.other, view.otherOffset, layers.wheels);
    if (view.rider && layers.rider)
        strokes.rider(*view.rider, layers.angles);
    if (!onBoard)
        return;
    if (view.chosen.cockpit) {
        strokes.handle(view.chosen.cockpit->grip);
        strokes.handle(view.chosen.cockpit->stem.from);
    }
    if (view.chosen.saddle)
        strokes.handle(view.chosen.saddle->point);
}

} // namespace tripoise::drawing
