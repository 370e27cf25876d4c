// SPDX-License-Identifier: MIT
//
// Where on the sheet everything goes: title above, leaders in a column on the right, title block
// below them (or under the drawing on an upright sheet), the bicycle in what remains.
#pragma once

#include "drawing/canvas.h"

#include <QStringList>

namespace tripoise {

/// Leaders to one point share a line and stand below each other.
struct LeaderPlace {
    QStringList rows;
    QPointF at;   ///< on the other size
    QPointF knee; ///< where the line turns level
    QPointF end;  ///< beside the words
    QRectF label;
    bool leftwards = false;
};

/// The title block's measures.
struct BlockPlace {
    QRectF box;
    double rowHeight = 0.0;
    double labelWidth = 0.0;
    double valueWidth = 0.0; ///< of each size's column
};

struct Layout {
    Steps steps;
    bool words = true; ///< false where the area is too small to read in
    QRectF sheet;      ///< inside the margins
    QRectF title;
    QRectF subtitle;
    QRectF scene; ///< what the drawing is fitted into
    DrawingFit fit;
    BlockPlace block;
    QRectF leadersHeading;
    std::vector<LeaderPlace> leaders;
    std::vector<QRectF> jointLabels; ///< in the order of the rider's angles
};

[[nodiscard]] Layout layOut(const QRectF& area, const SideView& view, const DrawingText& text);

/// An interval of a column, from top to top + height.
struct Interval {
    double top = 0.0;
    double height = 0.0;
};
/// Moves intervals apart, keeping their order, as little as needed and above `high`. Their tops
/// ascend; where they do not all fit, the lowest stay inside.
void spread(std::vector<Interval>& intervals, double low, double high);

} // namespace tripoise
