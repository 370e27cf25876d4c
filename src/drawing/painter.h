// SPDX-License-Identifier: MIT
//
// Paints a side view, to scale, into a rectangle: the one function behind the window, the picture
// files and the sheet. Separate primitives throughout, which software rendering draws fastest.
#pragma once

#include "drawing/layout.h"
#include "drawing/theme.h"

class QPainter;

namespace tripoise {

struct Canvas;

/// The same fit that paintSideView uses; for dragging, and for tests.
[[nodiscard]] DrawingFit fitSideView(const QRectF& area, const SideView& view,
                                     const DrawingText& text, const DrawingOptions& options = {});

/// Fills the area with paper and paints. An area too small to read in is painted without words; one
/// without any extent not at all.
void paintSideView(QPainter& painter, const QRectF& area, const SideView& view, const Theme& theme,
                   const DrawingText& text, const DrawingOptions& options = {});

/// The same in two parts: what lies behind the rider and stays while contacts are pulled about, and
/// the rest. For a window, which keeps the first as a picture.
void paintBehind(const Canvas& canvas, const SideView& view, const DrawingLayout& layout,
                 const DrawingOptions& options);
void paintBefore(const Canvas& canvas, const SideView& view, const DrawingLayout& layout,
                 const DrawingOptions& options);

} // namespace tripoise
