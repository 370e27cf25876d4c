// SPDX-License-Identifier: MIT
//
// Which part of the drawing the board shows: all of it, or what was zoomed and panned to.
#pragma once

#include "drawing/fit.h"

#include <QRectF>

#include <optional>

namespace tripoise {

class Viewport {
public:
    /// What shows all. An own view stays where it is.
    void setWhole(const DrawingFit& whole) { m_whole = whole; }
    void showAll() { m_own.reset(); }

    [[nodiscard]] const std::optional<DrawingFit>& whole() const { return m_whole; }

    [[nodiscard]] DrawingFit fit() const
    {
        return m_own ? *m_own : m_whole.value_or(DrawingFit{1.0, {}});
    }
    [[nodiscard]] bool all() const { return !m_own; }
    [[nodiscard]] double zoom() const { return m_whole ? fit().pxPerMm / m_whole->pxPerMm : 1.0; }

    /// Larger by a factor, with what is under a pixel staying there; within limits.
    void zoomBy(double factor, const QPointF& about);
    void panBy(const QPointF& px);

private:
    std::optional<DrawingFit> m_whole;
    std::optional<DrawingFit> m_own;
};

} // namespace tripoise
