// SPDX-License-Identifier: MIT
//
// Paints a side view, to scale, into a rectangle: the one function behind the window, the picture
// files and the sheet. Separate primitives throughout, which software rendering draws fastest.
#pragma once

#include "drawing/side_view.h"
#include "drawing/theme.h"

#include <QPointF>
#include <QRectF>
#include <QString>

class QPainter;

namespace tripoise {

/// The sentences above the drawing; everything else written on it comes from
/// wording/drawing_labels.h.
struct DrawingText {
    QString title;    ///< the verdict
    QString subtitle; ///< one quiet line
};

/// Where millimetres of the bike axes come to lie in the area.
struct DrawingFit {
    double pxPerMm = 0.0;
    QPointF origin; ///< of the bottom bracket of the chosen size

    [[nodiscard]] QPointF toPx(const Point& point) const
    {
        return {origin.x() + pxPerMm * point.x(), origin.y() - pxPerMm * point.y()};
    }
    [[nodiscard]] Point toMm(const QPointF& px) const
    {
        return {(px.x() - origin.x()) / pxPerMm, (origin.y() - px.y()) / pxPerMm};
    }
};

/// The same fit that paintSideView uses; for dragging, and for tests.
[[nodiscard]] DrawingFit fitSideView(const QRectF& area, const SideView& view,
                                     const DrawingText& text);

/// Fills the area with paper and paints. An area too small to read in is painted without words; one
/// without any extent not at all.
void paintSideView(QPainter& painter, const QRectF& area, const SideView& view, const Theme& theme,
                   const DrawingText& text);

} // namespace tripoise
