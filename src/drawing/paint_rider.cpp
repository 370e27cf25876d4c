// SPDX-License-Identifier: MIT
#include "drawing/paint_rider.h"

#include "drawing/curve.h"
#include "drawing/proportions.h"

#include <QPaintEngine>

#include <cmath>

namespace tripoise {

using namespace drawing;

namespace {

namespace draw = proportions;
using Line = std::vector<Point>;

constexpr float overBike = 0.62F; ///< how much the near limbs cover

/// Half the thickness of a limb a share of the way along it; both as shares, of length and stature.
struct Girth {
    double at;
    double half;
};
using Girths = std::vector<Girth>;

const Girths thigh{{0.0, 0.046}, {0.25, 0.047}, {0.6, 0.040}, {1.0, draw::kneeHalf}};
const Girths shank{{0.0, draw::kneeHalf}, {0.3, 0.031}, {0.65, 0.023}, {1.0, 0.018}};
const Girths upperArm{{0.0, 0.031}, {0.4, 0.026}, {1.0, 0.021}};
const Girths forearm{{0.0, 0.021}, {0.35, 0.021}, {1.0, 0.0145}};
const Girths hand{{0.0, 0.0145}, {0.55, 0.019}, {1.0, 0.020}};
const Girths neck{{0.0, 0.044}, {0.35, 0.035}, {0.7, 0.030}, {1.0, 0.030}};

struct Shape {
    Line outline;
    std::vector<Line> sides; ///< of a limb, without its round ends
};
using Shapes = std::vector<Shape>;

/// A limb with round ends.
Shape limb(const Point& from, const Point& to, const Girths& girths, double stature, int fineness)
{
    constexpr std::size_t inCap = 3;
    const Point line = to - from;
    const Point side = leftOf(line);
    const Point ahead(side.y(), -side.x());
    Line outline;
    for (const Girth& girth : girths)
        outline.push_back(from + girth.at * line + girth.half * stature * side);
    const auto cap = [&](const Point& end, double half, double sense) {
        for (const double degrees : {45.0, 90.0, 135.0}) {
            const double turn = Angle::degrees(degrees).rad();
            outline.push_back(
                end + half * stature * sense * (std::cos(turn) * side + std::sin(turn) * ahead));
        }
    };
    cap(to, girths.back().half, 1.0);
    for (auto girth = girths.rbegin(); girth != girths.rend(); ++girth)
        outline.push_back(from + girth->at * line - girth->half * stature * side);
    cap(from, girths.front().half, -1.0);
    Shape shape{smoothLoop(outline, fineness), {}};
    const auto parts = static_cast<std::size_t>(fineness);
    const std::size_t side1 = (girths.size() - 1) * parts;
    const std::size_t side2 = (girths.size() + inCap) * parts;
    const auto part = [&shape](std::size_t begin, std::size_t end) {
        return Line(shape.outline.begin() + static_cast<std::ptrdiff_t>(begin),
                    shape.outline.begin() + static_cast<std::ptrdiff_t>(end) + 1);
    };
    // Short of the joints, where the next limb takes over.
    const std::size_t trim = parts / 2;
    shape.sides = {part(trim, side1 - trim), part(side2 + trim, side2 + side1 - trim)};
    return shape;
}

/// An outline given along and left of a direction, from an origin.
Line shaped(const Point& origin, const Point& direction, const Line& local, int fineness)
{
    const Point left = leftOf(direction);
    Line outline;
    for (const Point& point : local)
        outline.push_back(origin + point.x() * direction + point.y() * left);
    return smoothLoop(outline, fineness);
}

Line torso(const Canvas& c, const RiderSketch& rider)
{
    const Point trunk = rider.shoulder - rider.hip;
    const double length = trunk.norm();
    const double s = rider.statureMm;
    // Along the trunk as a share of it, and towards the back as a share of stature: the back is
    // round.
    const Line shares{{-0.10, -0.005}, {-0.09, 0.040}, {0.08, 0.066},  {0.32, 0.070},
                      {0.58, 0.076},   {0.82, 0.070},  {1.00, 0.046},  {1.09, 0.012},
                      {1.05, -0.022},  {0.92, -0.046}, {0.74, -0.058}, {0.48, -0.050},
                      {0.22, -0.052},  {0.00, -0.044}};
    Line local;
    for (const Point& share : shares)
        local.push_back({share.x() * length, share.y() * s});
    return shaped(rider.hip, trunk / length, local, c.fineness(6));
}

Line head(const Canvas& c, const RiderSketch& rider)
{
    // Up and back of the head's centre, as shares of its height; the face looks forward.
    const Line shares{{0.50, 0.04},    {0.46, -0.16},  {0.36, -0.30},   {0.20, -0.375},
                      {0.08, -0.395},  {0.01, -0.385}, {-0.06, -0.43},  {-0.12, -0.465},
                      {-0.16, -0.405}, {-0.22, -0.41}, {-0.29, -0.385}, {-0.39, -0.385},
                      {-0.46, -0.31},  {-0.42, -0.14}, {-0.34, 0.02},   {-0.30, 0.15},
                      {-0.20, 0.33},   {0.02, 0.435},  {0.25, 0.415},   {0.42, 0.26}};
    const double height = draw::headHeight * rider.statureMm;
    Line local;
    for (const Point& share : shares)
        local.push_back(height * share);
    return shaped(rider.head, along(rider.gaze), local, c.fineness(6));
}

Shape neckOf(const Canvas& c, const RiderSketch& rider)
{
    const Point nape = rider.head - 0.22 * draw::headHeight * rider.statureMm * along(rider.gaze)
                       + 0.06 * draw::headHeight * rider.statureMm * leftOf(along(rider.gaze));
    return limb(rider.neck, nape, neck, rider.statureMm, c.fineness(5));
}

Line shoe(const Canvas& c, const RiderSketch& rider, const LegPoints& leg)
{
    const Point foot = leg.toe - leg.heel;
    const double length = foot.norm();
    const Point direction = foot / length;
    const double ankleAt = (leg.ankle - leg.heel).dot(direction);
    const double ankleUp = rider.ankleHeightMm;
    const double beyond = rider.shoeBeyondFootMm;
    const double sole = rider.soleMm;
    return shaped(leg.heel, direction,
                  {{-beyond, -sole},
                   {0.30 * length, -sole},
                   {0.72 * length, -sole},
                   {length, -0.8 * sole},
                   {length + beyond, 0.08 * ankleUp},
                   {0.97 * length, 0.38 * ankleUp},
                   {0.72 * length, 0.74 * ankleUp},
                   {ankleAt + 0.62 * ankleUp, 1.05 * ankleUp},
                   {ankleAt - 0.02 * length, 1.10 * ankleUp},
                   {0.05 * length, 0.95 * ankleUp},
                   {-0.035 * length, 0.40 * ankleUp}},
                  c.fineness(6));
}

/// The underside of a shoe, from heel to toe.
TubeSketch soleOf(const RiderSketch& rider, const LegPoints& leg)
{
    const Point direction = (leg.toe - leg.heel).normalized();
    const Point down = -0.9 * rider.soleMm * leftOf(direction);
    return {leg.heel + down, leg.toe + down - 8.0 * direction};
}

Shapes legShapes(const Canvas& c, const RiderSketch& rider, const LegPoints& leg)
{
    const int fineness = c.fineness(5);
    return {limb(leg.hip, leg.knee, thigh, rider.statureMm, fineness),
            limb(leg.knee, leg.ankle, shank, rider.statureMm, fineness),
            {shoe(c, rider, leg), {}}};
}

Shapes armShapes(const Canvas& c, const RiderSketch& rider)
{
    const int fineness = c.fineness(5);
    return {limb(rider.shoulder, rider.elbow, upperArm, rider.statureMm, fineness),
            limb(rider.elbow, rider.wrist, forearm, rider.statureMm, fineness),
            limb(rider.wrist, rider.grip, hand, rider.statureMm, fineness)};
}

/// All of a rectangle, begun where scales of a quarter have whole pixels, too.
QRect wholePixels(const QRectF& rect)
{
    QRect box = rect.toAlignedRect();
    box.setLeft(box.left() & ~3);
    box.setTop(box.top() & ~3);
    return box;
}

/// An outline moved outwards by so much.
Line widened(const Line& outline, double by)
{
    double twiceArea = 0.0;
    const std::size_t n = outline.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point& a = outline[i];
        const Point& b = outline[(i + 1) % n];
        twiceArea += a.x() * b.y() - a.y() * b.x();
    }
    const double outwards = twiceArea > 0.0 ? -by : by; // to the right of a way round to the left
    Line wide;
    wide.reserve(n);
    for (std::size_t i = 0; i < n; ++i)
        wide.push_back(outline[i]
                       + outwards * leftOf(outline[(i + 1) % n] - outline[(i + n - 1) % n]));
    return wide;
}

/// One silhouette: every body a little larger in the edge's colour first, then every body. Filling
/// is quicker than stroking a line of that width.
void paintSilhouette(const Canvas& c, const Shapes& shapes, const QColor& body, double edge)
{
    c.noPen();
    c.fill(c.theme.riderLine);
    for (const Shape& shape : shapes)
        c.polygon(widened(shape.outline, edge / c.fit.pxPerMm));
    c.fill(body);
    for (const Shape& shape : shapes)
        c.polygon(shape.outline);
}

/// The shapes in one half clear tint, each anew where `painter` sets and does not blend.
void paintTint(QPainter& painter, const Canvas& c, const Shapes& shapes)
{
    QColor clear = c.theme.rider;
    clear.setAlphaF(overBike);
    painter.setPen(Qt::NoPen);
    painter.setBrush(clear);
    for (const Shape& shape : shapes)
        painter.drawPolygon(c.px(shape.outline), Qt::WindingFill);
}

/// Over ink the tint dims. For the screen it is painted apart and laid over as a picture: what is
/// clear and large is blended by threads of Qt's, and a drawing would wait for each of their turns.
void paintVeil(const Canvas& c, const Shapes& shapes)
{
    if (c.painter.paintEngine()->type() != QPaintEngine::Raster)
        return paintTint(c.painter, c, shapes);
    QRectF around;
    for (const Shape& shape : shapes)
        around |= c.px(shape.outline).boundingRect();
    const QRect box = wholePixels(around & QRectF(c.painter.window()));
    const double ratio = c.painter.device()->devicePixelRatioF();
    QImage veil((QSizeF(box.size()) * ratio).toSize(), QImage::Format_ARGB32_Premultiplied);
    if (veil.isNull())
        return;
    veil.setDevicePixelRatio(ratio);
    veil.fill(Qt::transparent);
    QPainter painter(&veil);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setCompositionMode(QPainter::CompositionMode_Source);
    painter.translate(-box.topLeft());
    paintTint(painter, c, shapes);
    painter.end();
    c.painter.drawImage(box.topLeft(), veil);
}

} // namespace

void paintFarLeg(const Canvas& c, const RiderSketch& rider)
{
    paintSilhouette(c, legShapes(c, rider, rider.far), c.theme.riderFar, c.steps.hair);
}

void paintFigure(const Canvas& c, const RiderSketch& rider)
{
    Shapes shapes = legShapes(c, rider, rider.near);
    shapes.push_back({torso(c, rider), {}});
    shapes.push_back(neckOf(c, rider));
    shapes.push_back({head(c, rider), {}});
    for (Shape& shape : armShapes(c, rider))
        shapes.push_back(std::move(shape));
    paintSilhouette(c, shapes, c.theme.rider, c.steps.thin);
}

void paintNearLimbs(const Canvas& c, const RiderSketch& rider)
{
    for (const Shapes& shapes : {legShapes(c, rider, rider.near), armShapes(c, rider)}) {
        paintVeil(c, shapes);
        QColor edge = c.theme.riderLine;
        c.noFill();
        edge.setAlphaF(0.7F);
        c.pen(edge, c.steps.hair);
        for (const Shape& shape : shapes)
            for (const Line& side : shape.sides)
                c.polyline(side);
    }
    c.pen(c.theme.sole, c.steps.bold);
    const TubeSketch sole = soleOf(rider, rider.near);
    c.line(sole.from, sole.to);
    // Joint centres, as the model has them.
    c.pen(c.theme.ink, c.steps.hair);
    c.fill(c.theme.paper);
    for (const Point& joint :
         {rider.hip, rider.shoulder, rider.elbow, rider.near.knee, rider.near.ankle, rider.grip})
        c.circle(joint, 8.0);
}

void paintKneePath(const Canvas& c, const RiderSketch& rider)
{
    std::vector<Point> path;
    path.reserve(rider.turn.size());
    for (const TurnStep& step : rider.turn)
        path.push_back(step.kneeAt);
    if (path.size() < 3)
        return;
    c.noFill();
    c.pen(c.theme.soft, c.steps.hair);
    c.polygon(path);
}

} // namespace tripoise
