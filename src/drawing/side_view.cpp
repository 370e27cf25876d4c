// SPDX-License-Identifier: MIT
#include "drawing/side_view.h"

#include "drawing/bike_sketch.h"
#include "drawing/differences.h"
#include "drawing/rider_sketch.h"

#include <algorithm>

namespace tripoise {

using namespace drawing;

namespace {

constexpr double edgeShare = 0.25; // of a range's half-width, at either end, is near its edge

Use mostRidden(const Mix& mix)
{
    const auto most = std::max_element(mix.share.begin(), mix.share.end());
    return allUses[static_cast<std::size_t>(most - mix.share.begin())];
}

/// A box that grows to hold points.
class Box {
public:
    explicit Box(const Point& first) : m_bounds{first, first} {}

    void add(const Point& point, double around = 0.0)
    {
        m_bounds.low = m_bounds.low.cwiseMin(point - Point(around, around));
        m_bounds.high = m_bounds.high.cwiseMax(point + Point(around, around));
    }
    void add(const BikeSketch& bike, const Point& offset)
    {
        for (const WheelSketch* wheel : {&bike.rear, &bike.front})
            add(wheel->axle + offset, wheel->mudguardRadiusMm.value_or(wheel->radiusMm));
        add(bike.upperHeadset.to + offset);
        add(bike.seatTube.to + offset);
        if (bike.saddle) {
            add(bike.saddle->nose + offset);
            add(bike.saddle->tail + offset);
        }
        if (bike.cockpit) {
            add(bike.cockpit->steererClamp.to + offset);
            for (const Point& point : bike.cockpit->bar.curve)
                add(point + offset);
        }
    }
    const SideView::Bounds& bounds() const { return m_bounds; }

private:
    SideView::Bounds m_bounds;
};

RiddenSketch sketchOf(const CurrentBike& bike)
{
    RiddenSketch ridden;
    if (bike.saddleHeightMm && bike.saddleSetbackMm)
        ridden.saddle = saddleFrom(*bike.saddleHeightMm, *bike.saddleSetbackMm).point();
    if (bike.gripReachMm && bike.gripHeightMm)
        ridden.grip = Point(*bike.gripReachMm, *bike.gripHeightMm);
    ridden.crankMm = bike.crankMm;
    return ridden;
}

/// The near crank turned; the pedals keep to the feet.
void turnCrank(CrankSketch& crank, const std::optional<Angle>& angle,
               const std::optional<RiderSketch>& rider)
{
    if (angle) {
        crank.near = crank.lengthMm * along(*angle);
        crank.far = -crank.near;
    }
    if (rider) {
        crank.nearPitch = -angleOf(rider->near.toe - rider->near.heel);
        crank.farPitch = -angleOf(rider->far.toe - rider->far.heel);
    }
}

} // namespace

SideView::Bounds SideView::bounds() const
{
    Box box(Point::Zero());
    box.add(chosen, Point::Zero());
    if (other)
        box.add(*other, otherOffset);
    if (rider) {
        box.add(rider->head, 0.075 * rider->statureMm);
        box.add(rider->shoulder, 0.05 * rider->statureMm);
        box.add(rider->hip, 0.05 * rider->statureMm);
        box.add(rider->near.heel);
        box.add(rider->near.toe);
    }
    if (ridden)
        for (const auto& contact : {ridden->saddle, ridden->grip})
            if (contact)
                box.add(*contact, 20.0);
    return box.bounds();
}

RangePlace JointAngle::place() const
{
    const Angle angle = atBottom.value_or(value);
    if (angle < low || angle > high)
        return RangePlace::Outside;
    const Angle edge = (0.5 * edgeShare) * (high - low);
    return angle < low + edge || angle > high - edge ? RangePlace::NearEdge : RangePlace::Inside;
}

Shown asAdvised(const Advice& advice)
{
    Shown shown;
    shown.chosen = advice.verdict.named.value_or(0);
    shown.other = advice.verdict.other;
    for (std::size_t i = 0; i < advice.candidates.size() && !shown.other; ++i)
        if (i != shown.chosen)
            shown.other = i;
    return shown;
}

SideView makeSideView(const Advice& advice, const Shown& shown, const Mix& mix,
                      const Prepared& prepared, const Tables& tables)
{
    SideView view;
    if (shown.chosen >= advice.candidates.size())
        return view;
    const auto sketch = [&](const Candidate& candidate, const Setup* setup) {
        return sketchBike(prepared.sizes[candidate.size], setup, prepared, tables);
    };
    const auto advisedOn = [](const Candidate& candidate) {
        return candidate.best ? &candidate.best->setup : nullptr;
    };
    view.drawn = true;
    const Candidate& chosen = advice.candidates[shown.chosen];
    view.chosen = sketch(chosen, shown.tried ? &shown.tried->setup : advisedOn(chosen));
    if (chosen.best && !chosen.best->uses.empty()) {
        const Seat seat = shown.tried
                              ? Seat{shown.tried->setup, shown.tried->uses, shown.tried->leg}
                              : Seat{chosen.best->setup, chosen.best->uses, chosen.best->leg};
        view.rider = sketchRider(advice.person, seat, shown.use.value_or(mostRidden(mix)),
                                 shown.crank, mix, prepared, tables);
        if (shown.tried)
            view.rider->kneeToBarMm = shown.tried->kneeToBarMm;
        else if (chosen.ride)
            view.rider->kneeToBarMm = chosen.ride->kneeToBar.clearanceMm;
    }
    if (view.chosen.crank)
        turnCrank(*view.chosen.crank, shown.crank, view.rider);
    if (shown.tried && chosen.best)
        view.advised = {chosen.best->setup.saddle.point(), chosen.best->setup.grip};
    if (shown.ridden)
        view.ridden = sketchOf(*shown.ridden);
    view.registration = shown.registration;
    if (shown.other && *shown.other < advice.candidates.size()) {
        const Candidate& other = advice.candidates[*shown.other];
        view.other = sketch(other, advisedOn(other));
        if (shown.registration == Registration::Ground)
            view.otherOffset = {view.chosen.rear.axle.x() - view.other->rear.axle.x(),
                                view.chosen.groundY - view.other->groundY};
        view.leaders = differencesOf(view.chosen, *view.other, view.otherOffset);
    }
    return view;
}

SideView makeSideView(const Advice& advice, const Mix& mix, const Prepared& prepared,
                      const Tables& tables)
{
    return makeSideView(advice, asAdvised(advice), mix, prepared, tables);
}

} // namespace tripoise
