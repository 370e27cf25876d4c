// SPDX-License-Identifier: MIT
//
// Paints the view from above, to scale.
#pragma once

#include "drawing/fit.h"
#include "drawing/plan_view.h"
#include "drawing/theme.h"

#include <QRectF>

class QPainter;

namespace tripoise {

/// The whole of it as large as the area holds, in its middle; room is left at the edge for words.
[[nodiscard]] DrawingFit fitPlan(const QRectF& area, const PlanView& view, double letters);

/// What words are written beside, and how.
struct PlanWords {
    QString gap; ///< beside the nearer shoe
    double letters = 11.0;
};

/// Fills the area with paper and paints.
void paintPlan(QPainter& painter, const QRectF& area, const PlanView& view, const PlanPose& pose,
               const Theme& theme, const PlanWords& words);

} // namespace tripoise
