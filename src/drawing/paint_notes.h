// SPDX-License-Identifier: MIT
//
// What is written on and around the drawing.
#pragma once

#include "drawing/canvas.h"
#include "drawing/layout.h"

namespace tripoise::drawing {

/// Arc, comfortable range and tick at every joint, with its label. On a board the range's shade and
/// a sign beside the label say whether the angle is inside, near the edge or outside.
void paintAngles(const Canvas& canvas, const SideView& view, const DrawingLayout& layout,
                 bool onBoard);
/// Paper over what lies under words, half clear.
void paintHalo(const Canvas& canvas, const QRectF& box);
/// Where a line from words ends, in the brush's colour.
void paintDot(const Canvas& canvas, const QPointF& at);
void paintLeaders(const Canvas& canvas, const DrawingLayout& layout);
void paintTitle(const Canvas& canvas, const DrawingLayout& layout);
void paintBlock(const Canvas& canvas, const BlockPlace& block);
void paintGround(const Canvas& canvas, const SideView& view, const DrawingLayout& layout);
void paintLegend(const Canvas& canvas, const DrawingLayout& layout);
void paintPulled(const Canvas& canvas, const DrawingLayout& layout);
void paintDimensions(const Canvas& canvas, const DrawingLayout& layout);
void paintScaleBar(const Canvas& canvas, const ScalePlace& scale);

} // namespace tripoise::drawing
