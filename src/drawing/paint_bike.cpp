// SPDX-License-Identifier: MIT
#include "drawing/paint_bike.h"

#include "drawing/bike_sketch.h"
#include "drawing/curve.h"
#include "drawing/proportions.h"

#include <array>
#include <cmath>

namespace tripoise {

using namespace drawing;

namespace {

namespace draw = proportions;
using Line = std::vector<Point>;

constexpr Angle fullTurn = Angle::degrees(360.0);

/// Spokes leave the hub's flange at a tangent, every second one the other way round.
void paintSpokes(const Canvas& c, const WheelSketch& wheel, double hubRadius)
{
    const double rim = wheel.beadSeatRadiusMm - draw::rimDepth;
    c.pen(c.theme.hair, 0.75 * c.steps.hair);
    for (int i = 0; i < draw::spokes; ++i) {
        const Angle at = (static_cast<double>(i) / draw::spokes) * fullTurn;
        const Angle lean = Angle::degrees(i % 2 ? 75.0 : -75.0);
        c.line(wheel.axle + hubRadius * along(at + lean), wheel.axle + rim * along(at));
    }
}

void paintWheel(const Canvas& c, const WheelSketch& wheel, double hubDiameter)
{
    const double tyre = wheel.radiusMm - wheel.beadSeatRadiusMm;
    c.noFill();
    paintSpokes(c, wheel, 0.42 * hubDiameter);
    c.pen(c.theme.part, c.px(draw::rimDepth));
    c.circle(wheel.axle, wheel.beadSeatRadiusMm - 0.5 * draw::rimDepth);
    c.pen(c.theme.tyre, c.px(tyre));
    c.circle(wheel.axle, wheel.beadSeatRadiusMm + 0.5 * tyre);
    c.pen(c.theme.ink, c.steps.thin);
    c.circle(wheel.axle, wheel.radiusMm - 0.5 * c.steps.thin / c.fit.pxPerMm);
    c.pen(c.theme.ink, c.steps.hair);
    c.circle(wheel.axle, wheel.beadSeatRadiusMm);
    c.circle(wheel.axle, wheel.beadSeatRadiusMm - draw::rimDepth);
    c.fill(c.theme.part);
    c.circle(wheel.axle, 0.5 * hubDiameter);
}

void paintMudguard(const Canvas& c, const WheelSketch& wheel, Angle from, Angle to)
{
    if (!wheel.mudguardRadiusMm)
        return;
    c.noFill();
    c.pen(c.theme.ink, c.steps.bold);
    c.arc(wheel.axle, *wheel.mudguardRadiusMm, from, to);
    c.pen(c.theme.ink, c.steps.hair);
    for (const double share : {0.72, 0.97})
        c.line(wheel.axle,
               wheel.axle + *wheel.mudguardRadiusMm * along(from + share * (to - from)));
}

void paintAxle(const Canvas& c, const Point& axle)
{
    c.pen(c.theme.ink, c.steps.thin);
    c.fill(c.theme.tube);
    c.circle(axle, 9.0);
}

void paintFrame(const Canvas& c, const BikeSketch& bike)
{
    const QColor& body = c.theme.tube;
    const QColor& ink = c.theme.ink;
    const double edge = c.steps.medium;
    c.ribbon(bike.seatstay, draw::seatstayDiameter, draw::seatstayDiameter, body, ink, edge);
    c.ribbon(bike.chainstay, draw::chainstayAtShell, draw::chainstayAtAxle, body, ink, edge);
    c.ribbon(bike.topTube, draw::topTubeDiameter, draw::topTubeDiameter, body, ink, edge);
    c.ribbon(bike.downTube, draw::downTubeDiameter, draw::downTubeDiameter, body, ink, edge);
    c.ribbon(bike.seatTube, draw::seatTubeDiameter, draw::seatTubeDiameter, body, ink, edge, true);
    c.ribbon(bike.headTube, draw::headTubeDiameter, draw::headTubeDiameter, body, ink, edge, true);
    c.pen(ink, edge);
    c.fill(body);
    c.circle(Point::Zero(), 0.5 * draw::shellDiameter);
}

void paintFork(const Canvas& c, const BikeSketch& bike)
{
    c.ribbon(forkBlade(bike), draw::forkAtCrown, draw::forkAtAxle, c.theme.tube, c.theme.ink,
             c.steps.medium);
    c.ribbon(bike.lowerHeadset, draw::headTubeDiameter + 2.0, draw::headTubeDiameter, c.theme.part,
             c.theme.ink, c.steps.thin, true);
    c.ribbon(bike.upperHeadset, draw::headTubeDiameter, draw::headTubeDiameter - 2.0, c.theme.part,
             c.theme.ink, c.steps.thin, true);
}

Line saddleOutline(const SaddleSketch& saddle)
{
    const double ahead = saddle.nose.x() - saddle.point.x();
    const double behind = saddle.point.x() - saddle.tail.x();
    Line line{{-behind, -6.0},         {-0.80 * behind, 5.0},
              {-0.40 * behind, 3.0},   {0.0, 0.0},
              {0.40 * ahead, -2.0},    {0.85 * ahead, -2.0},
              {ahead, -10.0},          {0.92 * ahead, -20.0},
              {0.50 * ahead, -22.0},   {0.05 * ahead, -27.0},
              {-0.55 * behind, -36.0}, {-0.90 * behind, -32.0}};
    for (Point& point : line)
        point += saddle.point;
    return smoothLoop(line, 6);
}

void paintSaddle(const Canvas& c, const BikeSketch& bike)
{
    if (!bike.saddle)
        return;
    const SaddleSketch& saddle = *bike.saddle;
    const Point up = upTube(bike.seatAngle);
    const double length = (saddle.post.to - saddle.post.from).dot(up);
    // The head bends from the post's axis to the clamp over its last bit.
    const Point neck = saddle.post.to - std::min(34.0, std::max(0.0, length)) * up;
    if (length > 0.0)
        c.ribbon(TubeSketch{saddle.post.from, neck}, draw::postDiameter, draw::postDiameter,
                 c.theme.part, c.theme.ink, c.steps.thin, true);
    c.ribbon(TubeSketch{neck, saddle.railClamp - Point(0.0, 4.0)}, draw::postDiameter, 30.0,
             c.theme.part, c.theme.ink, c.steps.thin, true);

    const double ahead = saddle.nose.x() - saddle.point.x();
    const double behind = saddle.point.x() - saddle.tail.x();
    const double level = saddle.railClamp.y();
    const double x = saddle.point.x();
    const Line rails{{x + 0.62 * ahead, saddle.point.y() - 20.0},
                     {x + 0.30 * ahead, level},
                     {x - 0.38 * behind, level},
                     {x - 0.72 * behind, saddle.point.y() - 32.0}};
    c.noFill();
    c.pen(c.theme.ink, c.steps.medium);
    c.polyline(rails);
    const Point half(19.0, 0.0);
    c.ribbon(TubeSketch{saddle.railClamp - half, saddle.railClamp + half}, 15.0, 15.0, c.theme.part,
             c.theme.ink, c.steps.thin, true);
    // Collar of the seat tube.
    c.ribbon(TubeSketch{bike.seatTube.to - 14.0 * up, bike.seatTube.to},
             draw::seatTubeDiameter + 7.0, draw::seatTubeDiameter + 7.0, c.theme.part, c.theme.ink,
             c.steps.thin, true);
    c.pen(c.theme.ink, c.steps.thin);
    c.fill(c.theme.rubber);
    c.polygon(saddleOutline(saddle));
}

void paintBar(const Canvas& c, const BarSketch& bar)
{
    const double diameter = bar.kind == BarKind::Drop ? draw::barDiameter : draw::barDiameterSwept;
    c.noFill();
    c.pen(c.theme.ink, c.steps.bold);
    c.polyline(bar.lever);
    c.ribbon(bar.curve, diameter, diameter, c.theme.part, c.theme.ink, c.steps.thin);
    const double held = bar.kind == BarKind::Drop ? draw::tapeDiameter : draw::gripDiameter;
    c.noFill();
    c.pen(c.theme.ink, c.px(held));
    c.polyline(bar.held);
    c.pen(c.theme.rubber, std::max(0.0, c.px(held) - 2.0 * c.steps.thin));
    c.polyline(bar.held);
    if (!bar.hood.empty()) {
        c.pen(c.theme.ink, c.steps.thin);
        c.fill(c.theme.rubber);
        c.polygon(bar.hood);
    }
}

void paintCockpit(const Canvas& c, const BikeSketch& bike)
{
    if (!bike.cockpit)
        return;
    const CockpitSketch& cockpit = *bike.cockpit;
    const double spacer = bike.steererMm + draw::spacerBeyondSteerer;
    for (const TubeSketch& piece : cockpit.spacers)
        c.ribbon(piece, spacer, spacer, c.theme.tube, c.theme.ink, c.steps.thin, true);

    const double clamp = bike.steererMm + draw::steererClampBeyondSteerer;
    const Point up = upTube(bike.headAngle);
    c.ribbon(TubeSketch{cockpit.steererClamp.to, cockpit.steererClamp.to + draw::topCapHeight * up},
             clamp - 4.0, clamp - 8.0, c.theme.part, c.theme.ink, c.steps.thin, true);
    c.ribbon(cockpit.stem, draw::stemDiameter + 2.0, draw::stemDiameter - 2.0, c.theme.part,
             c.theme.ink, c.steps.thin);
    c.ribbon(cockpit.steererClamp, clamp, clamp, c.theme.part, c.theme.ink, c.steps.thin, true);
    paintBar(c, cockpit.bar);
    c.pen(c.theme.ink, c.steps.thin);
    c.fill(c.theme.part);
    c.circle(cockpit.stem.to, 0.5 * draw::stemClampDiameter);
    c.fill(c.theme.tube);
    c.circle(cockpit.stem.to, 0.5 * draw::barDiameter);
}

void paintPedal(const Canvas& c, const Point& spindle, Angle pitch, double stackMm,
                const QColor& body, const QColor& edge)
{
    const Point half = 0.5 * draw::pedalLength * along(-pitch);
    const double thick = 1.6 * stackMm;
    c.ribbon(TubeSketch{spindle - half, spindle + half}, thick, thick, body, edge, c.steps.thin,
             true);
}

void paintDrive(const Canvas& c, const BikeSketch& bike)
{
    const Point cog = bike.rear.axle;
    c.noFill();
    c.pen(c.theme.ink, c.steps.thin);
    // The runs of the chain are the outer tangents of chainring and cog.
    const double turn = std::acos((draw::chainringRadius - draw::cogRadius) / cog.norm());
    for (const double side : {1.0, -1.0}) {
        const Point normal = along(angleOf(cog) + Angle::radians(side * turn));
        c.line(draw::chainringRadius * normal, cog + draw::cogRadius * normal);
    }
    c.circle(cog, draw::cogRadius);
    if (!bike.crank)
        return;
    c.pen(c.theme.ink, c.steps.medium);
    c.circle(Point::Zero(), draw::chainringRadius);
    c.pen(c.theme.ink, c.steps.hair);
    c.circle(Point::Zero(), draw::chainringRadius - 12.0);
    c.ribbon(TubeSketch{Point::Zero(), bike.crank->near}, draw::crankAtShell, draw::crankAtPedal,
             c.theme.part, c.theme.ink, c.steps.thin, true);
    c.fill(c.theme.part);
    c.circle(Point::Zero(), 0.5 * draw::crankAtShell + 3.0);
    paintPedal(c, bike.crank->near, bike.crank->nearPitch, bike.crank->pedalStackMm, c.theme.part,
               c.theme.ink);
    c.fill(c.theme.tube);
    c.circle(bike.crank->near, 6.0);
}

} // namespace

void paintFarCrank(const Canvas& c, const BikeSketch& bike)
{
    if (!bike.crank)
        return;
    c.ribbon(TubeSketch{Point::Zero(), bike.crank->far}, draw::crankAtShell, draw::crankAtPedal,
             c.theme.tube, c.theme.soft, c.steps.hair, true);
    paintPedal(c, bike.crank->far, bike.crank->farPitch, bike.crank->pedalStackMm, c.theme.tube,
               c.theme.soft);
}

void paintWheels(const Canvas& c, const BikeSketch& bike)
{
    paintWheel(c, bike.rear, draw::rearHubDiameter);
    paintWheel(c, bike.front, draw::frontHubDiameter);
    paintMudguard(c, bike.rear, Angle::degrees(-12.0), Angle::degrees(205.0));
    paintMudguard(c, bike.front, Angle::degrees(52.0), Angle::degrees(218.0));
}

void paintBike(const Canvas& c, const BikeSketch& bike)
{
    paintFrame(c, bike);
    paintFork(c, bike);
    paintAxle(c, bike.rear.axle);
    paintAxle(c, bike.front.axle);
    paintDrive(c, bike);
    paintSaddle(c, bike);
    paintCockpit(c, bike);
}

void paintOutlineWheels(const Canvas& c, const BikeSketch& bike)
{
    c.noFill();
    c.pen(c.theme.other, c.steps.thin, Qt::DashLine);
    for (const WheelSketch* wheel : {&bike.rear, &bike.front})
        c.circle(wheel->axle, wheel->radiusMm);
}

void paintOutline(const Canvas& c, const BikeSketch& bike)
{
    c.noFill();
    c.pen(c.theme.other, c.steps.thin, Qt::DashLine);
    const auto tube = [&](const TubeSketch& line, double diameter) {
        const Point side = 0.5 * diameter * leftOf(line.to - line.from);
        c.line(line.from + side, line.to + side);
        c.line(line.from - side, line.to - side);
    };
    tube(bike.topTube, draw::topTubeDiameter);
    tube(bike.downTube, draw::downTubeDiameter);
    tube(bike.seatTube, draw::seatTubeDiameter);
    tube(bike.headTube, draw::headTubeDiameter);
    c.line(bike.chainstay.from, bike.chainstay.to);
    c.line(bike.seatstay.from, bike.seatstay.to);
    c.polyline(forkBlade(bike));
    if (bike.saddle) {
        c.line(bike.saddle->post.from, bike.saddle->post.to);
        c.polygon(saddleOutline(*bike.saddle));
    }
    if (bike.cockpit) {
        c.line(bike.upperHeadset.to, bike.cockpit->steererClamp.to);
        c.line(bike.cockpit->stem.from, bike.cockpit->stem.to);
        c.polyline(bike.cockpit->bar.curve);
        if (!bike.cockpit->bar.hood.empty())
            c.polygon(bike.cockpit->bar.hood);
        c.circle(bike.cockpit->stem.to, 0.5 * draw::stemClampDiameter);
    }
}

void paintRidden(const Canvas& c, const RiddenSketch& ridden, const BikeSketch& chosen)
{
    c.noFill();
    c.pen(c.theme.soft, c.steps.medium, Qt::DotLine);
    if (ridden.saddle) {
        // A saddle like the chosen one's; of a bare frame, as long as they ordinarily are.
        SaddleSketch saddle;
        const Point ahead = chosen.saddle ? Point(chosen.saddle->nose - chosen.saddle->point)
                                          : Point(draw::saddleAhead, 0.0);
        const Point behind = chosen.saddle ? Point(chosen.saddle->tail - chosen.saddle->point)
                                           : Point(-draw::saddleBehind, 0.0);
        saddle.point = *ridden.saddle;
        saddle.nose = saddle.point + ahead;
        saddle.tail = saddle.point + behind;
        c.polygon(saddleOutline(saddle));
    }
    if (ridden.grip) {
        c.circle(*ridden.grip, 0.5 * draw::gripDiameter);
        c.circle(*ridden.grip, 2.0);
    }
    // Only cranks of another length are to be seen.
    if (ridden.crankMm && chosen.crank
        && std::abs(*ridden.crankMm - chosen.crank->lengthMm) >= leastLeaderMm) {
        const Angle low = angleOf(chosen.crank->near);
        c.arc(Point::Zero(), *ridden.crankMm, low - draw::riddenCrankArc,
              low + draw::riddenCrankArc);
    }
}

void paintAdvised(const Canvas& c, const AdvisedMarks& advised)
{
    c.noFill();
    c.pen(c.theme.soft, c.steps.thin);
    for (const Point& mark : {advised.saddle, advised.grip}) {
        const Point across(draw::advisedMark, 0.0);
        const Point up(0.0, draw::advisedMark);
        c.line(mark - across, mark + across);
        c.line(mark - up, mark + up);
        c.circle(mark, 0.6 * draw::advisedMark);
    }
}

} // namespace tripoise
