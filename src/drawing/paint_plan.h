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

struct Canvas;

/// The whole of it as large as the area holds, in its middle; room is left at the edge for words.
[[nodiscard]] DrawingFit fitPlan(const QRectF& area, const PlanView& view, double letters);

/// What words are written beside, and how.
struct PlanWords {
    QString gap; ///< beside the nearer shoe
    double letters = 11.0;
};

/// Of the nearer shoe and the wheel the hazard's colours tell that they meet.
void paintPlan(const Canvas& canvas, const PlanView& view, const PlanPose& pose);
/// The nearer shoe and the wheel of another size, as dashed lines.
void paintPlanOutline(const Canvas& canvas, const PlanView& view, const PlanPose& pose);

/// Fills the area with paper and paints, words and all.
void paintPlan(QPainter& painter, const QRectF& area, const PlanView& view, const PlanPose& pose,
               const Theme& theme, const PlanWords& words);

} // namespace tripoise
