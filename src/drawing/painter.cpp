// SPDX-License-Identifier: MIT
#include "drawing/painter.h"

#include "drawing/paint_bike.h"
#include "drawing/paint_notes.h"
#include "drawing/paint_rider.h"

namespace tripoise {
namespace {

constexpr double leastExtent = 4.0;

} // namespace

DrawingFit fitSideView(const QRectF& area, const SideView& view, const DrawingText& text)
{
    return layOut(area, view, text).fit;
}

void paintSideView(QPainter& painter, const QRectF& area, const SideView& view, const Theme& theme,
                   const DrawingText& text)
{
    if (!(area.width() >= leastExtent && area.height() >= leastExtent))
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(area, theme.paper);
    const Layout layout = layOut(area, view, text);
    const Canvas canvas{painter, theme, layout.fit, layout.steps};
    if (view.drawn) {
        paintGround(canvas, view, layout);
        if (view.rider)
            paintFarLeg(canvas, *view.rider);
        paintFarCrank(canvas, view.chosen);
        if (view.rider)
            paintFigure(canvas, *view.rider);
        paintBike(canvas, view.chosen);
        if (view.rider)
            paintNearLimbs(canvas, *view.rider);
        if (view.other)
            paintOutline(canvas.shifted(view.otherOffset), *view.other);
        paintAngles(canvas, view, layout);
    }
    if (layout.words) {
        paintTitle(canvas, text, layout);
        if (view.drawn) {
            paintLeaders(canvas, view, layout);
            paintBlock(canvas, view, layout);
            paintScaleBar(canvas, view, layout);
        }
    }
    painter.restore();
}

} // namespace tripoise
