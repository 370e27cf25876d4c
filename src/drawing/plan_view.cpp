// SPDX-License-Identifier: MIT
#include "drawing/plan_view.h"

#include "advice/shoes.h"
#include "drawing/proportions.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double aroundMm = 25.0;
constexpr double wheelShown = 0.35; // of its radius, ahead of the axle
constexpr int stepsOfShoe = 16;
constexpr int stepsOfWheel = 48;
constexpr int stepsOfSweep = 24;

Point fromAbove(const Spot& spot)
{
    return {spot.x(), -spot.z()};
}

/// A pose as the right foot would see it: the left one's mirror image.
PlanPose asRight(const PlanPose& pose, Side side)
{
    if (side == Side::Right)
        return pose;
    return {-1.0 * pose.steer, pose.crank + Angle::degrees(180.0)};
}

Point mirrored(const Point& point, Side side)
{
    return side == Side::Right ? point : Point(point.x(), -point.y());
}

Spot tipOf(const PlanView& view, const PlanPose& pose)
{
    return shoeSpot(view.shoe, view.pedalling, pose.crank, Angle());
}

} // namespace

PlanView::Bounds PlanView::bounds() const
{
    const double side = grip.z() + barBeyondPalmMm + aroundMm;
    const double back = pedalling.crankMm + heelBehindBallMm + aroundMm;
    return {{-back, -side}, {wheel.axle.x() + wheelShown * wheel.radiusMm, side}};
}

PlanView makePlanView(const Candidate& candidate, const Person& person, const Prepared& prepared,
                      const Tables& tables)
{
    PlanView view;
    if (!candidate.best)
        return view;
    const PreparedSize& size = prepared.sizes[candidate.size];
    const Setup& setup = candidate.best->setup;
    const Bar& bar = prepared.stock.bars[setup.cockpit.bar];
    view.drawn = true;
    view.wheel = sweptWheel(size.skeleton);
    view.shoe = shoeOn(prepared.bicycle.pedal, person, tables);
    view.pedalling = {person.foothold, setup.saddle.point(), setup.crankMm};
    view.heelBehindBallMm = person.body.ballMm + tables.handling.clearance.shoeBehindHeelMm;
    view.pedalWidthMm = tables.parts.pedalWidthMm;
    const double half = gripOn(bar, mainPlace(bar.kind), tables.parts).halfWidthMm;
    view.headTop = Spot(size.skeleton.headTop.x(), size.skeleton.headTop.y(), 0.0);
    view.clamp = Spot(setup.clamp.x(), setup.clamp.y(), 0.0);
    view.grip = Spot(setup.grip.x(), setup.grip.y(), half);
    view.barBeyondPalmMm = tables.handling.clearance.barBeyondPalmMm;
    view.mudguard = size.skeleton.mudguard.has_value();
    if (candidate.ride && candidate.ride->toe) {
        view.nearest = {candidate.ride->toe->steer, candidate.ride->toe->crank};
        view.roomMm = -candidate.ride->toe->overlapMm;
    }
    return view;
}

double gapMm(const PlanView& view, const PlanPose& pose, Side side)
{
    const PlanPose right = asRight(pose, side);
    return shoeGap(view.wheel, view.shoe, view.pedalling, right.steer, right.crank);
}

double gapMm(const PlanView& view, const PlanPose& pose)
{
    return std::min(gapMm(view, pose, Side::Right), gapMm(view, pose, Side::Left));
}

std::vector<Point> shoeLine(const PlanView& view, const PlanPose& pose, Side side)
{
    const PlanPose right = asRight(pose, side);
    const auto spot = [&](double degrees) {
        return fromAbove(shoeSpot(view.shoe, view.pedalling, right.crank, Angle::degrees(degrees)));
    };
    std::vector<Point> line;
    for (int i = 0; i <= stepsOfShoe; ++i)
        line.push_back(spot(-90.0 + 180.0 / stepsOfShoe * i));
    // Straight back from the ball, and round the heel.
    const Point inner = line.front();
    const Point outer = line.back();
    const Point ball = 0.5 * (inner + outer);
    const Point ahead = (spot(0.0) - ball) / view.shoe.tipAheadOfBallMm;
    const Point across = proportions::heelOfForefoot * (outer - ball);
    const double round = across.norm();
    const Point heel = ball - (view.heelBehindBallMm - round) * ahead;
    for (int i = 0; i <= stepsOfShoe; ++i) {
        const Point at = along(Angle::degrees(180.0 / stepsOfShoe * i));
        line.push_back(heel + at.x() * across - at.y() * round * ahead);
    }
    for (Point& point : line)
        point = mirrored(point, side);
    return line;
}

Point pedalAt(const PlanView& view, const PlanPose& pose, Side side)
{
    const double x = view.pedalling.crankMm * std::cos(asRight(pose, side).crank.rad());
    return mirrored({x, -view.shoe.outMm}, side);
}

std::vector<Point> wheelLine(const PlanView& view, const PlanPose& pose)
{
    const HeldWheel held(view.wheel, pose.steer);
    std::vector<Point> line;
    for (int i = 0; i <= stepsOfWheel; ++i)
        line.push_back(fromAbove(held.ringSpot(Angle::degrees(360.0 / stepsOfWheel * i))));
    return line;
}

std::optional<std::array<Point, 2>> wheelAtShoe(const PlanView& view, const PlanPose& pose,
                                                Side side)
{
    const double height = tipOf(view, asRight(pose, side)).y();
    const HeldWheel held(view.wheel, pose.steer);
    std::vector<Point> crossings;
    for (int i = 0; i < stepsOfWheel; ++i) {
        const Spot one = held.ringSpot(Angle::degrees(360.0 / stepsOfWheel * i));
        const Spot next = held.ringSpot(Angle::degrees(360.0 / stepsOfWheel * (i + 1)));
        const double below = one.y() - height;
        const double above = next.y() - height;
        if ((below < 0.0) != (above < 0.0))
            crossings.push_back(fromAbove(one + below / (below - above) * (next - one)));
    }
    if (crossings.size() != 2)
        return std::nullopt;
    if (crossings[0].x() > crossings[1].x())
        std::swap(crossings[0], crossings[1]);
    return std::array{crossings[0], crossings[1]};
}

std::vector<Point> sweptLine(const PlanView& view, const PlanPose& pose, Side side)
{
    const double height = tipOf(view, asRight(pose, side)).y();
    const double reach = view.wheel.radiusMm;
    std::vector<Point> line;
    for (int i = -stepsOfSweep; i <= stepsOfSweep; ++i) {
        const double out = reach * i / stepsOfSweep;
        if (const auto touch = touchAhead(view.wheel, Spot(0.0, height, out)))
            line.push_back(fromAbove(Spot(touch->forwardMm, height, out)));
    }
    return line;
}

std::vector<Point> barLine(const PlanView& view, const PlanPose& pose)
{
    const HeldWheel held(view.wheel, pose.steer);
    const Spot right = view.grip;
    const Spot left(right.x(), right.y(), -right.z());
    const Spot beyond(0.0, 0.0, view.barBeyondPalmMm);
    std::vector<Point> line;
    for (const Spot& spot : {Spot(right + beyond), right, view.clamp, left, Spot(left - beyond)})
        line.push_back(fromAbove(held.turned(spot)));
    return line;
}

} // namespace tripoise
