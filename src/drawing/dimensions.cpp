// SPDX-License-Identifier: MIT
#include "drawing/dimensions.h"

namespace tripoise {
namespace {

/// In the bicycle's own axes.
std::vector<Dimension> of(const BikeSketch& bike)
{
    std::vector<Dimension> dimensions;
    const auto add = [&dimensions](DimensionKind kind, const Point& from, const Point& to,
                                   double value) {
        dimensions.push_back({kind, from, to, value, {}});
    };
    const Point bracket = Point::Zero();
    const Point head = bike.headTube.from;
    if (bike.saddle) {
        const Point& saddle = bike.saddle->point;
        add(DimensionKind::SaddleHeight, bracket, saddle, saddle.norm());
        add(DimensionKind::Setback, saddle, bracket, -saddle.x());
    }
    if (bike.cockpit) {
        const Point& grip = bike.cockpit->grip;
        if (bike.saddle)
            add(DimensionKind::SaddleToBarDrop, grip, bike.saddle->point,
                bike.saddle->point.y() - grip.y());
        add(DimensionKind::GripReach, bracket, grip, grip.x());
        add(DimensionKind::GripHeight, bracket, grip, grip.y());
    }
    add(DimensionKind::Stack, bracket, head, head.y());
    add(DimensionKind::Reach, bracket, head, head.x());
    add(DimensionKind::FrontCentre, bracket, bike.front.axle, bike.front.axle.norm());
    add(DimensionKind::Wheelbase, bike.rear.axle, bike.front.axle,
        bike.front.axle.x() - bike.rear.axle.x());
    return dimensions;
}

} // namespace

std::vector<Dimension> dimensionsOf(const SideView& view)
{
    std::vector<Dimension> dimensions = of(view.chosen);
    if (view.other)
        for (const Dimension& theirs : of(*view.other))
            for (Dimension& mine : dimensions)
                if (mine.kind == theirs.kind)
                    mine.otherMm = theirs.valueMm;
    return dimensions;
}

std::vector<Dimension> tapeDimensionsOf(const SideView& view)
{
    const BikeSketch& bike = view.chosen;
    if (!bike.saddle || !bike.cockpit)
        return {};
    const Point bracket = Point::Zero();
    const Point& saddle = bike.saddle->point;
    const Point& nose = bike.saddle->nose;
    const Point& bar = bike.cockpit->stem.to;
    return {{DimensionKind::SaddleHeight, bracket, saddle, saddle.norm(), {}},
            {DimensionKind::NoseSetback, nose, bracket, -nose.x(), {}},
            {DimensionKind::NoseToBar, nose, bar, (bar - nose).norm(), {}},
            {DimensionKind::BarBelowSaddle, bar, saddle, saddle.y() - bar.y(), {}},
            {DimensionKind::BarReach, bracket, bar, bar.x(), {}},
            {DimensionKind::BarHeight, bracket, bar, bar.y(), {}}};
}

} // namespace tripoise
