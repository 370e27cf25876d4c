// SPDX-License-Identifier: MIT
//
// Where on the sheet everything goes: title above, leaders in a column on the right, title block
// below them (or under the drawing on an upright sheet), the bicycle in what remains. On a board
// there is only a legend, and the drawing has all of it.
#pragma once

#include "drawing/leader_places.h"
#include "drawing/options.h"
#include "drawing/place_dimensions.h"
#include "drawing/steps.h"

#include <QStringList>

namespace tripoise {

/// The sentences above the drawing; everything else written on it comes from
/// wording/drawing_labels.h.
struct DrawingText {
    QString title;    ///< the verdict
    QString subtitle; ///< one quiet line
};

/// The title block's measures.
struct BlockPlace {
    QRectF box;
    double rowHeight = 0.0;
    double labelWidth = 0.0;
    double valueWidth = 0.0; ///< of each size's column
};

/// What a contact was pulled by, in words beside it.
struct PulledPlace {
    QStringList rows;
    QPointF from; ///< as advised
    QPointF to;   ///< as tried
    QRectF label;
    bool leftwards = false;
};

/// Of the letters' height: a bit of line before a name, from row to row.
inline constexpr double legendSample = 3.0;
inline constexpr double rowPitch = 1.55;

struct Layout {
    Steps steps;
    bool words = true; ///< false where the area is too small to read in
    QRectF sheet;      ///< inside the margins
    QRectF title;
    QRectF subtitle;
    QRectF scene; ///< what the drawing is fitted into
    DrawingFit fit;
    BlockPlace block;
    QRectF legend;
    QRectF leadersHeading;
    std::vector<LeaderPlace> leaders;
    std::vector<DimensionPlace> dimensions;
    std::vector<PulledPlace> pulled;
    std::vector<QRectF> jointLabels; ///< in the order of the rider's angles; empty ones not written
    std::vector<LabelSpot> spots;    ///< of those labels
};

[[nodiscard]] Layout layOut(const QRectF& area, const SideView& view, const DrawingText& text,
                            const DrawingOptions& options = {});

/// The whole drawing as large as a rectangle holds it, standing on its floor.
[[nodiscard]] DrawingFit fitInto(const QRectF& scene, const SideView::Bounds& bounds);

} // namespace tripoise
