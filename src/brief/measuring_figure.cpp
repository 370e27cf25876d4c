// SPDX-License-Identifier: MIT
#include "brief/measuring_figure.h"

#include "drawing/theme.h"
#include "rider/measurements.h"

#include <QPainter>
#include <QPainterPath>

#include <cmath>
#include <optional>

namespace tripoise {
namespace {

// Points in shares of the stature, x to the right, y up from the floor.
using P = QPointF;

struct Limb {
    QList<P> line;
    double width;
};

struct Pose {
    QRectF extent; ///< what must fit; top is the lower end
    QList<Limb> limbs;
    P head;
    bool face = true;
    QList<QList<P>> things; ///< stool, wall, rod, the lines of a bicycle
    QList<P> wheels = {};   ///< their axles
};

struct Line {
    P from;
    P to;
    P shift; ///< the dimension line stands aside of the body
};

const QRectF standing(-0.34, -0.03, 0.68, 1.07);

Pose standingPose(bool armsOut)
{
    Pose pose;
    pose.extent = armsOut ? QRectF(-0.55, -0.03, 1.1, 1.07) : standing;
    pose.head = {0.0, 0.935};
    pose.limbs = {{{P(0, 0.87), P(0, 0.80)}, 0.055},
                  {{P(0, 0.79), P(0, 0.66), P(0, 0.52)}, 0.175},
                  {{P(-0.052, 0.52), P(-0.058, 0.27), P(-0.055, 0.04)}, 0.078},
                  {{P(0.052, 0.52), P(0.058, 0.27), P(0.055, 0.04)}, 0.078},
                  {{P(-0.055, 0.015), P(-0.09, 0.012)}, 0.035},
                  {{P(0.055, 0.015), P(0.09, 0.012)}, 0.035}};
    if (armsOut) {
        pose.limbs << Limb{{P(-0.11, 0.80), P(-0.30, 0.805), P(-0.50, 0.81)}, 0.045}
                   << Limb{{P(0.11, 0.80), P(0.30, 0.805), P(0.50, 0.81)}, 0.045};
    } else {
        pose.limbs << Limb{{P(-0.115, 0.795), P(-0.145, 0.63), P(-0.16, 0.485), P(-0.165, 0.42)},
                           0.048}
                   << Limb{{P(0.115, 0.795), P(0.145, 0.63), P(0.16, 0.485), P(0.165, 0.42)},
                           0.048};
        pose.things = {{P(0.135, 0.435), P(0.20, 0.435)}}; // the rod in the hand, seen from its end
    }
    return pose;
}

Pose seatedPose(bool rod)
{
    Pose pose;
    pose.extent = {-0.24, -0.03, 0.68, 0.86};
    pose.head = {0.0, 0.715};
    pose.limbs = {{{P(-0.01, 0.64), P(-0.015, 0.58)}, 0.055},
                  {{P(-0.02, 0.57), P(-0.02, 0.44), P(-0.01, 0.31)}, 0.12},
                  {{P(0.0, 0.295), P(0.13, 0.30), P(0.27, 0.295)}, 0.085},
                  {{P(0.275, 0.285), P(0.272, 0.16), P(0.268, 0.04)}, 0.066},
                  {{P(0.255, 0.015), P(0.36, 0.012)}, 0.034},
                  {{P(-0.01, 0.555), P(-0.005, 0.40), P(0.14, 0.40), P(0.20, 0.40)}, 0.044}};
    pose.things = {{P(-0.08, 0.245), P(0.18, 0.245)},
                   {P(-0.05, 0.245), P(-0.05, 0.0)},
                   {P(0.15, 0.245), P(0.15, 0.0)}};
    if (rod)
        pose.things << QList<P>{P(0.205, 0.33), P(0.205, 0.47)};
    return pose;
}

Pose footPose()
{
    Pose pose;
    pose.extent = {-0.07, -0.05, 0.27, 0.30};
    pose.face = false;
    pose.limbs = {{{P(0.03, 0.19), P(0.03, 0.06)}, 0.05},
                  {{P(0.012, 0.03), P(0.07, 0.032), P(0.115, 0.016)}, 0.042},
                  {{P(0.105, 0.012), P(0.142, 0.010)}, 0.024}};
    pose.things = {{P(-0.018, 0.15), P(-0.018, -0.0)}};
    return pose;
}

struct Figure {
    Pose pose;
    Line line;
    QList<QList<P>> dotted = {}; ///< from what is measured to where the line runs
};

// A bicycle of ordinary proportions, in the same scale.
const P bracket(0.0, 0.155);
const P saddlePoint(-0.13, 0.565);
const P saddleNose(-0.045, 0.565);
const P barClamp(0.30, 0.505);
const P palm(0.275, 0.515);
constexpr double wheelRadius = 0.195;

Pose bicyclePose()
{
    const P seatTop(-0.085, 0.42);
    const P headTop(0.235, 0.475);
    const P headBottom(0.262, 0.395);
    const P rear(-0.235, wheelRadius);
    const P front(0.345, wheelRadius);
    Pose pose;
    pose.extent = {-0.46, -0.07, 1.03, 0.75};
    pose.face = false;
    pose.wheels = {rear, front};
    pose.things = {{bracket, seatTop, P(-0.125, 0.55)},
                   {seatTop, P(0.243, 0.45)},
                   {bracket, P(0.258, 0.405)},
                   {bracket, rear, seatTop},
                   {headTop, headBottom, front},
                   {headTop, barClamp, palm},
                   {P(-0.20, 0.57), saddlePoint, saddleNose}};
    return pose;
}

/// A straight line aside of what is measured, a level one under it, or a plumb one ahead of it.
Figure beside(const P& from, const P& to, const P& shift)
{
    return {bicyclePose(), {from, to, shift}};
}
Figure level(const P& from, const P& to, double y)
{
    const P start(from.x(), y);
    const P end(to.x(), y);
    return {bicyclePose(), {start, end, {}}, {{from, start}, {to, end}}};
}
Figure plumb(const P& from, const P& to, double x)
{
    const P start(x, from.y());
    const P end(x, to.y());
    return {bicyclePose(), {start, end, {}}, {{from, start}, {to, end}}};
}

/// Of a place on a bicycle, by the key of its field.
std::optional<Figure> figureOf(const QString& place)
{
    constexpr double under = -0.03;
    constexpr double ahead = 0.5;
    if (place == QLatin1String("today_height"))
        return beside(bracket, saddlePoint, P(-0.10, -0.03));
    if (place == QLatin1String("today_setback"))
        return level(saddlePoint, bracket, under);
    if (place == QLatin1String("today_nose"))
        return level(saddleNose, bracket, under);
    if (place == QLatin1String("today_reach"))
        return level(bracket, palm, under);
    if (place == QLatin1String("today_grip_height"))
        return plumb(bracket, palm, ahead);
    if (place == QLatin1String("today_below"))
        return plumb(barClamp, saddleNose, ahead);
    if (place == QLatin1String("today_tape"))
        return beside(saddleNose, barClamp, P(0.01, 0.06));
    return std::nullopt;
}

std::optional<Figure> figureOf(Quantity quantity)
{
    const P left(-0.27, 0.0);
    const auto upright = [&](double top) {
        return Figure{standingPose(false), {P(0.0, 0.0), P(0.0, top), left}};
    };
    switch (quantity) {
    case Quantity::Stature: return upright(1.0);
    case Quantity::Inseam: return upright(0.475);
    case Quantity::SternalNotchHeight: return upright(0.815);
    case Quantity::AcromialHeight: return upright(0.82);
    case Quantity::TrochanterionHeight: return upright(0.52);
    case Quantity::KneeHeight: return upright(0.275);
    case Quantity::AnkleHeight: return upright(0.042);
    case Quantity::SittingHeight:
        return Figure{seatedPose(false), {P(0.0, 0.248), P(0.0, 0.78), P(-0.19, 0.0)}};
    case Quantity::KneeHeightSitting:
        return Figure{seatedPose(false), {P(0.29, 0.0), P(0.29, 0.34), P(0.12, 0.0)}};
    case Quantity::ButtockKnee:
        return Figure{seatedPose(false), {P(-0.085, 0.29), P(0.315, 0.29), P(0.0, -0.13)}};
    case Quantity::UpperArm:
        return Figure{standingPose(false), {P(0.118, 0.82), P(0.145, 0.63), P(0.12, 0.0)}};
    case Quantity::Forearm:
        return Figure{standingPose(false), {P(0.145, 0.63), P(0.160, 0.485), P(0.12, 0.0)}};
    case Quantity::Hand:
        return Figure{standingPose(false), {P(0.160, 0.485), P(0.166, 0.395), P(0.12, 0.0)}};
    case Quantity::WristToGrip:
        return Figure{standingPose(false), {P(0.160, 0.485), P(0.164, 0.435), P(0.12, 0.0)}};
    case Quantity::ElbowRearToGrip:
        return Figure{seatedPose(true), {P(-0.03, 0.40), P(0.205, 0.40), P(0.0, 0.11)}};
    case Quantity::Foot: return Figure{footPose(), {P(-0.012, 0.0), P(0.154, 0.0), P(0.0, -0.03)}};
    case Quantity::BallOfFoot:
        return Figure{footPose(), {P(-0.012, 0.0), P(0.108, 0.0), P(0.0, -0.03)}};
    case Quantity::Biacromial:
        return Figure{standingPose(false), {P(-0.118, 0.82), P(0.118, 0.82), P(0.0, 0.045)}};
    case Quantity::HipBreadth:
        return Figure{standingPose(false), {P(-0.098, 0.50), P(0.098, 0.50), P(0.0, -0.02)}};
    case Quantity::Span:
        return Figure{standingPose(true), {P(-0.52, 0.81), P(0.52, 0.81), P(0.0, 0.10)}};
    case Quantity::ArmToGrip:
        return Figure{standingPose(false), {P(0.118, 0.82), P(0.164, 0.435), P(0.12, 0.0)}};
    case Quantity::Mass: return Figure{standingPose(false), {}};
    }
    return std::nullopt;
}

class Pen {
public:
    Pen(QPainter& painter, const Theme& theme, const QRectF& area, const QRectF& extent)
        : m_painter(painter), m_theme(theme),
          m_scale(std::min(area.width() / extent.width(), area.height() / extent.height())),
          m_origin(area.center().x() - m_scale * extent.center().x(),
                   area.center().y() + m_scale * extent.center().y())
    {
    }

    void body(const Pose& pose)
    {
        // Twice: the edge, then the body over it, so that limbs grow out of one another.
        for (const double rim : {2.0, 0.0}) {
            const QColor color = rim > 0.0 ? m_theme.riderLine : m_theme.rider;
            for (const Limb& limb : pose.limbs) {
                m_painter.setPen(QPen(color, limb.width * m_scale + rim, Qt::SolidLine,
                                      Qt::RoundCap, Qt::RoundJoin));
                m_painter.setBrush(Qt::NoBrush);
                m_painter.drawPolyline(px(limb.line));
            }
            if (pose.face) {
                m_painter.setPen(Qt::NoPen);
                m_painter.setBrush(color);
                m_painter.drawEllipse(px(pose.head), 0.048 * m_scale + 0.5 * rim,
                                      0.065 * m_scale + 0.5 * rim);
            }
        }
    }
    void things(const Pose& pose)
    {
        m_painter.setPen(QPen(m_theme.ink, 1.5, Qt::SolidLine, Qt::RoundCap));
        for (const QList<P>& line : pose.things)
            m_painter.drawPolyline(px(line));
    }
    void wheels(const Pose& pose)
    {
        m_painter.setPen(QPen(m_theme.tyre, 2.0));
        m_painter.setBrush(Qt::NoBrush);
        for (const P& axle : pose.wheels)
            m_painter.drawEllipse(px(axle), wheelRadius * m_scale, wheelRadius * m_scale);
    }
    void dotted(const QList<QList<P>>& lines)
    {
        m_painter.setPen(QPen(m_theme.soft, 1.0, Qt::DotLine));
        for (const QList<P>& line : lines)
            m_painter.drawPolyline(px(line));
    }
    void floor(const QRectF& extent)
    {
        m_painter.setPen(QPen(m_theme.hair, 1.0));
        m_painter.drawLine(px({extent.left(), 0.0}), px({extent.right(), 0.0}));
    }
    void dimension(const Line& line)
    {
        const P from = px(line.from + line.shift);
        const P to = px(line.to + line.shift);
        m_painter.setPen(QPen(m_theme.soft, 1.0, Qt::DotLine));
        m_painter.drawLine(px(line.from), from);
        m_painter.drawLine(px(line.to), to);
        m_painter.setPen(QPen(m_theme.ink, 2.0, Qt::SolidLine, Qt::FlatCap));
        m_painter.drawLine(from, to);
        const P along = to - from;
        const double length = std::hypot(along.x(), along.y());
        if (length <= 0.0)
            return;
        const P across(-along.y() / length * 5.0, along.x() / length * 5.0);
        for (const P& end : {from, to})
            m_painter.drawLine(end - across, end + across);
    }
    void plate()
    {
        m_painter.setPen(QPen(m_theme.ink, 1.5));
        m_painter.setBrush(m_theme.part);
        m_painter.drawRect(QRectF(px({-0.15, 0.0}), px({0.15, -0.022})));
    }

private:
    [[nodiscard]] P px(const P& p) const
    {
        return {m_origin.x() + m_scale * p.x(), m_origin.y() - m_scale * p.y()};
    }
    [[nodiscard]] QPolygonF px(const QList<P>& line) const
    {
        QPolygonF polygon;
        for (const P& p : line)
            polygon << px(p);
        return polygon;
    }

    QPainter& m_painter;
    const Theme& m_theme;
    double m_scale;
    P m_origin;
};

std::optional<Quantity> quantityOf(const QString& key)
{
    for (int i = 0; i < quantityCount; ++i) {
        const std::string_view name = quantityKeys[std::size_t(i)];
        if (key == QLatin1String(name.data(), qsizetype(name.size())))
            return static_cast<Quantity>(i);
    }
    return std::nullopt;
}

} // namespace

MeasuringFigure::MeasuringFigure(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &MeasuringFigure::changed, this, [this] { update(); });
}

void MeasuringFigure::setQuantity(const QString& quantity)
{
    if (m_quantity == quantity)
        return;
    m_quantity = quantity;
    emit changed();
}

void MeasuringFigure::paint(QPainter* painter)
{
    const auto quantity = quantityOf(m_quantity);
    const auto figure = quantity ? figureOf(*quantity) : figureOf(m_quantity);
    if (!figure)
        return;
    const Theme theme = m_night ? Theme::night() : Theme::day();
    painter->setRenderHint(QPainter::Antialiasing);
    Pen pen(*painter, theme, boundingRect(), figure->pose.extent);
    pen.floor(figure->pose.extent);
    pen.wheels(figure->pose);
    pen.body(figure->pose);
    pen.things(figure->pose);
    pen.dotted(figure->dotted);
    if (quantity == Quantity::Mass)
        pen.plate();
    else
        pen.dimension(figure->line);
}

bool MeasuringFigure::shows(const QString& quantity)
{
    return figureOf(quantity).has_value();
}

} // namespace tripoise
