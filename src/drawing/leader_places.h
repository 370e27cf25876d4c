// SPDX-License-Identifier: MIT
//
// Where the differences of the two sizes are told: beside the drawing, each tied to its point.
#pragma once

#include "drawing/fit.h"
#include "drawing/side_view.h"
#include "drawing/steps.h"

#include <QRectF>
#include <QStringList>

#include <vector>

namespace tripoise {

struct DrawingLayout;

/// Leaders to one point share a line and stand below each other.
struct LeaderPlace {
    LeaderKind kind = LeaderKind::BarHigher; ///< of the first
    QStringList rows;
    QPointF at;   ///< on the other size
    QPointF knee; ///< where the line turns level
    QPointF end;  ///< beside the words
    QRectF label;
    bool leftwards = false;
};

inline constexpr double leaderGap = 0.3; ///< of a row, between leaders

/// An interval of a column, from top to top + height.
struct Interval {
    double top = 0.0;
    double height = 0.0;
};
/// Moves intervals apart, keeping their order, as little as needed and above `high`. Their tops
/// ascend; where they do not all fit, the lowest stay inside.
void spread(std::vector<Interval>& intervals, double low, double high);

[[nodiscard]] double widthOf(const QString& text, const QFont& font);
[[nodiscard]] double widestOf(const QStringList& rows, const QFont& font);
/// Leaders grouped by the point they speak of, highest first.
[[nodiscard]] std::vector<LeaderPlace> gathered(const DrawingLayout& layout,
                                                const std::vector<Leader>& leaders);
[[nodiscard]] double leadersWidth(const DrawingLayout& layout, const SideView& view);

/// Beside the drawing of a sheet, whose fit and block are known.
void placeLeaders(DrawingLayout& layout, const SideView& view);

} // namespace tripoise
