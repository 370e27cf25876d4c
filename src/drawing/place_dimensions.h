// SPDX-License-Identifier: MIT
//
// Where dimension lines run: level ones in rows under the ground, upright ones in columns ahead of
// the front wheel, straight ones beside what they measure.
#pragma once

#include "drawing/clearance.h"
#include "drawing/dimensions.h"

#include <QLineF>
#include <QPointF>
#include <QRectF>
#include <QString>

#include <vector>

namespace tripoise {

struct DrawingLayout;
struct Steps;

struct DimensionPlace {
    DimensionKind kind = DimensionKind::SaddleHeight;
    QString text;
    QString more; ///< what the size beside has more or less; empty where alike
    QLineF line;  ///< between the arrows' tips
    QLineF extensions[2];
    QPointF middle;       ///< of the words
    QSizeF size;          ///< of the words, unturned
    double turnDeg = 0.0; ///< of the words, clockwise
    bool outside = false; ///< arrows point inwards, from outside

    /// The words' extent as they stand.
    [[nodiscard]] QRectF extent() const;
};

/// What they take under the ground and ahead of the front wheel.
[[nodiscard]] QSizeF roomForDimensions(const Steps& steps);

/// All of the bicycle's, or those of a tape; those whose words find room: the name goes first, then
/// what the size beside has more; they take it from what is clear. The layout must have its fit.
[[nodiscard]] std::vector<DimensionPlace>
placeDimensions(const DrawingLayout& layout, const SideView& view, bool tape, Clearance& clearance);

} // namespace tripoise
