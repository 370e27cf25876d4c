// SPDX-License-Identifier: MIT
//
// Where on the sheet everything goes: title above, leaders in a column on the right, title block
// below them (or under the drawing on an upright sheet), the bicycle in what remains. On a board
// there is a legend above, and the drawing has all the rest (layout_board.h).
//
// Nothing that is written lies on anything else written, nothing over the edge, and no word is cut:
// what finds no room is written shorter, or not at all.
#pragma once

#include "drawing/labels.h"
#include "drawing/leader_places.h"
#include "drawing/options.h"
#include "drawing/place_dimensions.h"
#include "drawing/steps.h"

#include <QLineF>
#include <QStringList>

#include <optional>

namespace tripoise {

/// The sentences above the drawing; everything else written on it comes from
/// drawing/labels.h.
struct DrawingText {
    QString title;    ///< the verdict
    QString subtitle; ///< one quiet line
};

/// Lines of a sentence, as much of it as there is room for.
struct LinesPlace {
    QStringList lines;
    QRectF box;
};

/// The title block: its words and measures.
struct BlockPlace {
    QString title;
    QString chosen; ///< names of the sizes
    QString other;
    int columns = 1; ///< of sizes
    std::vector<BlockRow> rows;
    QStringList notes; ///< below the rows
    QRectF box;
    double rowHeight = 0.0;
    double labelWidth = 0.0;
    double valueWidth = 0.0; ///< of each size's column
};

/// A line of the legend, with as much of its words as there is room for.
struct LegendPlace {
    LegendRow row;
    QString text;
    QRectF box;
};

struct ScalePlace {
    QLineF line;
    QString text;
    QRectF words;
};

/// Where a joint's label stands, in which form, and what ties it to its arc.
struct JointLabelPlace {
    LabelSpot spot;
    QRectF box; ///< empty where it is not written
    std::optional<QLineF> tie;
    double cost = 0.0; ///< how far from where it would best be
    QString text;
    QString range; ///< on a line below; empty where there is no room for it
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

struct DrawingLayout {
    Steps steps;
    bool words = true; ///< false where the area is too small to read in
    QRectF sheet;      ///< inside the margins
    LinesPlace title;
    LinesPlace subtitle;
    QRectF scene; ///< what the drawing is fitted into
    DrawingFit fit;
    BlockPlace block;
    std::vector<LegendPlace> legend;
    std::optional<ScalePlace> scale;
    QString leadersHeading; ///< empty where there are no leaders
    QRectF leadersHeadingBox;
    std::vector<LeaderPlace> leaders;
    QString moreLeaders; ///< that there are some for which there was no room
    QStringList leftOut; ///< and what these would say
    QRectF moreLeadersBox;
    std::vector<DimensionPlace> dimensions;
    std::vector<PulledPlace> pulled;
    std::vector<JointLabelPlace> jointLabels; ///< in the order of the rider's angles
};

/// Where joint labels stand, for the next layout to keep them there.
[[nodiscard]] std::vector<LabelSpot> spotsOf(const DrawingLayout& layout);

[[nodiscard]] DrawingLayout layOut(const QRectF& area, const SideView& view,
                                   const DrawingText& text, const DrawingOptions& options = {});

/// The whole drawing as large as a rectangle holds it, standing on its floor.
[[nodiscard]] DrawingFit fitInto(const QRectF& scene, const SideView::Bounds& bounds);

/// A length to read off the drawing, under the ground.
[[nodiscard]] ScalePlace placeScale(const DrawingLayout& layout, const SideView& view);

} // namespace tripoise
