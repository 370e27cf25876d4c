// SPDX-License-Identifier: MIT
//
// The bars as they look from the side. Every outline passes through the places where the model says
// the hands are (cockpit/grips.h); the shapes between them are ordinary ones.
#include "drawing/bike_sketch.h"
#include "drawing/curve.h"

#include <algorithm>

namespace tripoise::drawing {
namespace {

using Line = std::vector<Point>;

/// Straight to the bend, then back to the palm; the ends are seen nearly head-on.
BarSketch flatBar(const Bar& bar, const PartDefaults& defaults)
{
    const Grip grip = gripOn(bar, GripPlace::Flat, defaults);
    const Point tube = grip.fromClamp - Point(0.0, defaults.flatPalmUpMm); // the palm lies on top
    const double swept = std::max(1.0, grip.halfWidthMm - defaults.straightCentreMm);
    // What a millimetre along the bar goes back; half a grip, as projected.
    const double back = std::clamp(-tube.x() / swept, -1.0, 1.0);
    const Point halfGrip{back * defaults.palmFromBarEndMm, 0.0};

    BarSketch sketch;
    sketch.curve = {Point::Zero()};
    curveTo(sketch.curve, Point(0.0, 0.6 * tube.y()), tube + halfGrip, tube);
    sketch.curve.push_back(tube - halfGrip);
    sketch.held = {tube + halfGrip, tube - halfGrip};
    const Point pivot = tube + halfGrip + Point(14.0, -4.0);
    sketch.lever = {pivot};
    curveTo(sketch.lever, pivot + Point(26.0, -8.0), pivot + Point(40.0, -30.0),
            pivot + Point(52.0, -58.0));
    return sketch;
}

/// Up and a little ahead, then back to the palms beside the rider.
BarSketch sweptBar(const Bar& bar, const PartDefaults& defaults)
{
    const Point palm = gripOn(bar, GripPlace::Swept, defaults).fromClamp;
    const Point end = along(Angle::degrees(190.0)); // along the grip, a little down
    const double beyond = 0.9 * defaults.palmFromBarEndMm;

    BarSketch sketch;
    sketch.curve = {Point::Zero()};
    const Point start = palm - beyond * end;
    curveTo(sketch.curve, Point(0.42 * -palm.x(), 0.35 * start.y()),
            Point(0.30 * -palm.x(), 1.02 * start.y() + 6.0), start, 20);
    sketch.curve.push_back(palm + beyond * end);
    sketch.held = {start, palm + beyond * end};
    const Point pivot = start + Point(6.0, -8.0);
    sketch.lever = {pivot};
    curveTo(sketch.lever, pivot + Point(4.0, -22.0), pivot + Point(-30.0, -34.0),
            pivot + Point(-70.0, -30.0));
    return sketch;
}

/// Ahead to the bend, round to the drops, with the lever's body on the bend.
BarSketch dropBar(const Bar& bar, const PartDefaults& defaults)
{
    const double reach = bar.reachMm.value_or(defaults.dropReachMm);
    const double drop = bar.dropMm.value_or(defaults.dropDropMm);
    const Point palm = gripOn(bar, GripPlace::Hoods, defaults).fromClamp;

    BarSketch sketch;
    Line& curve = sketch.curve;
    curve = {Point::Zero()};
    curve.push_back({0.45 * reach, 0.0});
    curveTo(curve, {0.86 * reach, -2.0}, {reach, -0.10 * drop}, {reach, -0.34 * drop});
    curveTo(curve, {reach, -0.74 * drop}, {0.80 * reach, -0.985 * drop},
            {0.42 * reach, -0.985 * drop});
    curve.push_back({-0.15 * reach, -drop});
    sketch.held.assign(curve.begin() + 1, curve.end());

    // The palm lies on the body's saddle; its horn rises ahead of the thumb.
    const Point horn = palm + Point(34.0, 6.0);
    const Line body{{0.80 * reach, 8.0},
                    palm + Point(-10.0, -13.0),
                    palm + Point(18.0, -10.0),
                    horn + Point(-6.0, 4.0),
                    horn + Point(8.0, 0.0),
                    horn + Point(9.0, -22.0),
                    Point(reach + 20.0, -0.26 * drop),
                    Point(reach + 2.0, -0.34 * drop)};
    sketch.hood = smoothLoop(body);
    const Point pivot = horn + Point(4.0, -20.0);
    sketch.lever = {pivot};
    curveTo(sketch.lever, pivot + Point(4.0, -0.25 * drop), {reach + 34.0, -0.62 * drop},
            {reach + 16.0, -0.86 * drop});
    return sketch;
}

} // namespace

BarSketch sketchBar(const Bar& bar, const Point& clamp, const PartDefaults& defaults)
{
    BarSketch sketch;
    switch (bar.kind) {
    case BarKind::Flat: sketch = flatBar(bar, defaults); break;
    case BarKind::Swept: sketch = sweptBar(bar, defaults); break;
    case BarKind::Drop: sketch = dropBar(bar, defaults); break;
    }
    sketch.kind = bar.kind;
    for (Line* line : {&sketch.curve, &sketch.held, &sketch.hood, &sketch.lever})
        for (Point& point : *line)
            point += clamp;
    return sketch;
}

} // namespace tripoise::drawing
