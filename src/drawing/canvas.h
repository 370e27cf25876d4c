// SPDX-License-Identifier: MIT
//
// A painter with a scale: millimetres in, separate primitives out. Line weights and letters come in
// a few fixed steps.
#pragma once

#include "drawing/fit.h"
#include "drawing/side_view.h"
#include "drawing/steps.h"
#include "drawing/theme.h"

#include <QFont>
#include <QPainter>
#include <QPen>
#include <QPolygonF>

#include <span>
#include <vector>

namespace tripoise {

struct Canvas {
    QPainter& painter;
    const Theme& theme;
    DrawingFit fit;
    Steps steps;
    Point shift = Point::Zero(); ///< added to every point

    /// The same canvas for a bicycle that stands elsewhere.
    [[nodiscard]] Canvas shifted(const Point& by) const { return {painter, theme, fit, steps, by}; }

    [[nodiscard]] QPointF px(const Point& mm) const { return fit.toPx(mm + shift); }
    [[nodiscard]] double px(double mm) const { return fit.pxPerMm * mm; }
    /// Parts of a curve from point to point, of so many at the size of a picture.
    [[nodiscard]] int fineness(int ofPicture) const
    {
        return fit.pxPerMm < 0.6 ? (ofPicture + 1) / 2 : ofPicture;
    }
    [[nodiscard]] QPolygonF px(std::span<const Point> line) const;

    void pen(const QColor& color, double width, Qt::PenStyle style = Qt::SolidLine) const;
    void fill(const QColor& color) const;
    void noPen() const { painter.setPen(Qt::NoPen); }
    void noFill() const { painter.setBrush(Qt::NoBrush); }

    void line(const Point& from, const Point& to) const;
    void polyline(std::span<const Point> line) const;
    void polygon(std::span<const Point> outline) const;
    void circle(const Point& centre, double radiusMm) const;
    /// From one direction to another, counterclockwise.
    void arc(const Point& centre, double radiusMm, Angle from, Angle to) const;

    /// A line with a body: filled, with an edge on either side, open or closed at its ends.
    void ribbon(std::span<const Point> centreLine, double widthMm, double endWidthMm,
                const QColor& body, const QColor& edge, double edgeWidth,
                bool closed = false) const;
    void ribbon(const TubeSketch& tube, double widthMm, double endWidthMm, const QColor& body,
                const QColor& edge, double edgeWidth, bool closed = false) const;
};

} // namespace tripoise
