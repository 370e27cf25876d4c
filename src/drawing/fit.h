// SPDX-License-Identifier: MIT
//
// The scale of a drawing: from millimetres of the bike axes to the area's own unit, and back.
#pragma once

#include "base/axes.h"

#include <QPointF>

namespace tripoise {

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

    bool operator==(const DrawingFit&) const = default;
};

} // namespace tripoise
