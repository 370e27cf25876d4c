// SPDX-License-Identifier: MIT
#include "drawing/painter.h"

#include "drawing/canvas.h"
#include "drawing/paint_bike.h"
#include "drawing/paint_notes.h"
#include "drawing/paint_rider.h"

namespace tripoise {

using namespace drawing;

namespace {

constexpr double leastExtent = 4.0;

} // namespace

DrawingFit fitSideView(const QRectF& area, const SideView& view, const DrawingText& text,
                       const DrawingOptions& options)
{
    return layOut(area, view, text, options).fit;
}

void paintBehind(const Canvas& c, const SideView& view, const DrawingLayout& layout,
                 const DrawingOptions& options)
{
    if (!view.drawn)
        return;
    if (options.layers.ground)
        paintGround(c, view, layout);
    if (!options.layers.wheels)
        return;
    if (options.layers.bike)
        paintWheels(c, view.chosen);
    if (view.other && options.layers.other && !options.furniture)
        paintOutlineWheels(c.shifted(view.otherOffset), *view.other);
}

void paintBefore(const Canvas& c, const SideView& view, const DrawingLayout& layout,
                 const DrawingOptions& options)
{
    if (!view.drawn)
        return;
    const Layers& layers = options.layers;
    const bool rider = view.rider && layers.rider;
    if (rider)
        paintFarLeg(c, *view.rider);
    if (layers.bike)
        paintFarCrank(c, view.chosen);
    if (rider)
        paintFigure(c, *view.rider);
    if (layers.bike)
        paintBike(c, view.chosen);
    if (rider) {
        paintNearLimbs(c, *view.rider);
        if (options.kneePath)
            paintKneePath(c, *view.rider);
    }
    if (view.ridden && layers.ridden)
        paintRidden(c, *view.ridden, view.chosen);
    if (view.other && layers.other) {
        if (options.furniture && layers.wheels)
            paintOutlineWheels(c.shifted(view.otherOffset), *view.other);
        paintOutline(c.shifted(view.otherOffset), *view.other);
    }
    if (view.advised)
        paintAdvised(c, *view.advised);
    if (!layout.dimensions.empty())
        paintDimensions(c, layout);
    if (rider && layers.angles)
        paintAngles(c, view, layout, !options.furniture);
    if (!layout.words)
        return;
    paintLeaders(c, layout);
    paintPulled(c, layout);
    if (options.furniture) {
        paintBlock(c, layout.block);
    } else {
        paintLegend(c, layout);
    }
    if (layout.scale)
        paintScaleBar(c, *layout.scale);
}

void paintSideView(QPainter& painter, const QRectF& area, const SideView& view, const Theme& theme,
                   const DrawingText& text, const DrawingOptions& options)
{
    if (!(area.width() >= leastExtent && area.height() >= leastExtent))
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(area, theme.paper);
    const DrawingLayout layout = layOut(area, view, text, options);
    const Canvas canvas{painter, theme, layout.fit, layout.steps};
    if (layout.words && options.furniture)
        paintTitle(canvas, layout);
    paintBehind(canvas, view, layout, options);
    paintBefore(canvas, view, layout, options);
    painter.restore();
}

} // namespace tripoise
