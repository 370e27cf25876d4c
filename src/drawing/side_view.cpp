// SPDX-License-Identifier: MIT
#include "drawing/side_view.h"

#include "drawing/bike_sketch.h"
#include "drawing/rider_sketch.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

Use mostRidden(const Mix& mix)
{
    const auto most = std::max_element(mix.share.begin(), mix.share.end());
    return allUses[static_cast<std::size_t>(most - mix.share.begin())];
}

BikeSketch sketchOf(const Candidate& candidate, const Prepared& prepared, const Tables& tables)
{
    return sketchBike(prepared.sizes[candidate.size],
                      candidate.best ? &candidate.best->setup : nullptr, prepared, tables);
}

/// The runner-up; without one, the next candidate in rank order.
const Candidate* otherOf(const Advice& advice)
{
    if (advice.verdict.other)
        return &advice.candidates[*advice.verdict.other];
    for (std::size_t i = 0; i < advice.candidates.size(); ++i)
        if (i != advice.verdict.named)
            return &advice.candidates[i];
    return nullptr;
}

class Differences {
public:
    Differences(const BikeSketch& chosen, const BikeSketch& other, const Point& offset)
        : m_chosen(chosen), m_other(other), m_offset(offset)
    {
        frame();
        if (chosen.cockpit && other.cockpit)
            cockpit(*chosen.cockpit, *other.cockpit);
        if (chosen.saddle && other.saddle)
            saddle(*chosen.saddle, *other.saddle);
        if (chosen.crank && other.crank)
            tell(LeaderKind::CrankLonger, other.crank->lengthMm - chosen.crank->lengthMm,
                 other.crank->low);
        std::stable_sort(m_leaders.begin(), m_leaders.end(),
                         [](const Leader& a, const Leader& b) { return a.at.y() > b.at.y(); });
    }

    std::vector<Leader> take() { return std::move(m_leaders); }

private:
    void tell(LeaderKind kind, double differenceMm, const Point& onOther)
    {
        if (std::abs(differenceMm) >= leastLeaderMm)
            m_leaders.push_back({kind, differenceMm, onOther + m_offset});
    }

    /// How much higher above the ground.
    double higher(const Point& chosen, const Point& other) const
    {
        return (other.y() - m_other.groundY) - (chosen.y() - m_chosen.groundY);
    }

    void frame()
    {
        const auto middle = [](const TubeSketch& tube) -> Point {
            return 0.5 * (tube.from + tube.to);
        };
        tell(LeaderKind::HeadTubeHigher, higher(m_chosen.headTube.from, m_other.headTube.from),
             m_other.headTube.from);
        tell(LeaderKind::TopTubeHigher, higher(middle(m_chosen.topTube), middle(m_other.topTube)),
             middle(m_other.topTube));
        const auto wheelbase = [](const BikeSketch& bike) {
            return bike.front.axle.x() - bike.rear.axle.x();
        };
        tell(LeaderKind::FrontWheelFurther, wheelbase(m_other) - wheelbase(m_chosen),
             m_other.front.axle + Point(m_other.front.radiusMm, 0.0));
    }

    void cockpit(const CockpitSketch& chosen, const CockpitSketch& other)
    {
        tell(LeaderKind::BarHigher, higher(chosen.grip, other.grip), other.grip);
        tell(LeaderKind::BarFurther, other.grip.x() - chosen.grip.x(), other.grip);
        tell(LeaderKind::StemLonger,
             m_other.figures->stem.lengthMm - m_chosen.figures->stem.lengthMm, other.stem.from);
        tell(LeaderKind::SpacersMore, m_other.figures->spacersMm - m_chosen.figures->spacersMm,
             other.stem.from);
    }

    void saddle(const SaddleSketch& chosen, const SaddleSketch& other)
    {
        tell(LeaderKind::SaddleHigher, higher(chosen.point, other.point), other.tail);
        tell(LeaderKind::SaddleFurtherBack, chosen.point.x() - other.point.x(), other.tail);
    }

    const BikeSketch& m_chosen;
    const BikeSketch& m_other;
    Point m_offset;
    std::vector<Leader> m_leaders;
};

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
    return box.bounds();
}

SideView makeSideView(const Advice& advice, const Mix& mix, const Prepared& prepared,
                      const Tables& tables)
{
    SideView view;
    if (advice.candidates.empty())
        return view;
    view.drawn = true;
    const Candidate& chosen = advice.candidates[advice.verdict.named];
    view.chosen = sketchOf(chosen, prepared, tables);
    if (chosen.best && !chosen.best->uses.empty()) {
        view.rider =
            sketchRider(advice.person, *chosen.best, mostRidden(mix), mix, prepared, tables);
        const Point sole = view.rider->near.toe - view.rider->near.heel;
        view.chosen.crank->pedalPitch = -angleOf(sole);
    }
    if (const Candidate* other = otherOf(advice)) {
        view.other = sketchOf(*other, prepared, tables);
        view.otherOffset = {view.chosen.rear.axle.x() - view.other->rear.axle.x(),
                            view.chosen.groundY - view.other->groundY};
        view.leaders = Differences(view.chosen, *view.other, view.otherOffset).take();
    }
    return view;
}

} // namespace tripoise
