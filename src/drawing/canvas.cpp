// SPDX-License-Identifier: MIT
#include "drawing/canvas.h"

#include "drawing/curve.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise {

using namespace drawing;

namespace {

// One scale of letters and lines, at the size of an ordinary picture; smaller areas keep letters
// that can still be read.
constexpr double ordinaryWidth = 1600.0;
constexpr double ordinaryHeight = 1000.0;
constexpr double smallestScale = 0.72;

/// Round a line with a width at either end, between which it goes over; `beyond` the ends.
std::vector<Point> ribbonOutline(std::span<const Point> line, double width, double endWidth,
                                 double beyond)
{
    const std::size_t last = line.size() - 1;
    std::vector<Point> outline(2 * line.size());
    for (std::size_t i = 0; i <= last; ++i) {
        const Point left = leftOf(line[i < last ? i + 1 : last] - line[i > 0 ? i - 1 : 0]);
        const Point ahead(left.y(), -left.x());
        const double t = static_cast<double>(i) / static_cast<double>(last);
        const double half = 0.5 * std::max(0.0, (1.0 - t) * width + t * endWidth);
        const double on = i == 0 ? -beyond : i == last ? beyond : 0.0;
        outline[i] = line[i] + half * left + on * ahead;
        outline[outline.size() - 1 - i] = line[i] - half * left + on * ahead;
    }
    return outline;
}

} // namespace

Steps stepsFor(const QSizeF& area, std::optional<double> smallPx)
{
    const double s = std::max(
        smallestScale, std::min(area.width() / ordinaryWidth, area.height() / ordinaryHeight));
    if (!smallPx)
        return {.title = 27.0 * s,
                .body = 16.0 * s,
                .small = 13.0 * s,
                .hair = 0.9 * s,
                .thin = 1.3 * s,
                .medium = 1.9 * s,
                .bold = 3.0 * s};
    // Letters as in the columns beside the board. No line but the tubes' is wider than a pixel: up
    // to there software draws it several times as fast.
    return {.title = 1.9 * *smallPx,
            .body = 1.18 * *smallPx,
            .small = *smallPx,
            .hair = std::min(0.8, 0.9 * s),
            .thin = 1.0,
            .medium = std::min(1.9, 1.9 * s),
            .bold = std::min(2.6, 3.0 * s)};
}

QFont fontOf(double px, QFont::Weight weight)
{
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(px))));
    font.setWeight(weight);
    return font;
}

QPolygonF Canvas::px(std::span<const Point> line) const
{
    QPolygonF polygon;
    polygon.reserve(static_cast<qsizetype>(line.size()));
    for (const Point& point : line)
        polygon << px(point);
    return polygon;
}

void Canvas::pen(const QColor& color, double width, Qt::PenStyle style) const
{
    QPen pen(color, width);
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    if (style == Qt::DashLine) {
        pen.setCapStyle(Qt::FlatCap);
        pen.setDashPattern({5.0, 3.5});
    } else if (style == Qt::DotLine) {
        pen.setCapStyle(Qt::FlatCap);
        pen.setDashPattern({1.5, 3.0});
    }
    painter.setPen(pen);
}

void Canvas::fill(const QColor& color) const
{
    painter.setBrush(color);
}

void Canvas::line(const Point& from, const Point& to) const
{
    painter.drawLine(px(from), px(to));
}

void Canvas::polyline(std::span<const Point> line) const
{
    painter.drawPolyline(px(line));
}

void Canvas::polygon(std::span<const Point> outline) const
{
    painter.drawPolygon(px(outline), Qt::WindingFill);
}

void Canvas::circle(const Point& centre, double radiusMm) const
{
    painter.drawEllipse(px(centre), px(radiusMm), px(radiusMm));
}

void Canvas::arc(const Point& centre, double radiusMm, Angle from, Angle to) const
{
    const QPointF middle = px(centre);
    const double r = px(radiusMm);
    const auto sixteenths = [](Angle angle) {
        return static_cast<int>(std::lround(16.0 * angle.deg()));
    };
    painter.drawArc(QRectF(middle.x() - r, middle.y() - r, 2.0 * r, 2.0 * r), sixteenths(from),
                    sixteenths(to - from));
}

void Canvas::ribbon(std::span<const Point> centreLine, double widthMm, double endWidthMm,
                    const QColor& body, const QColor& edge, double edgeWidth, bool closed) const
{
    if (centreLine.size() < 2)
        return;
    // All of it in the edge's colour, then what lies inside: filling is quicker than stroking.
    const double edgeMm = edgeWidth / fit.pxPerMm;
    noPen();
    fill(edge);
    polygon(ribbonOutline(centreLine, widthMm + edgeMm, endWidthMm + edgeMm,
                          closed ? 0.5 * edgeMm : 0.0));
    fill(body);
    polygon(ribbonOutline(centreLine, widthMm - edgeMm, endWidthMm - edgeMm,
                          closed ? -0.5 * edgeMm : 0.0));
}

void Canvas::ribbon(const TubeSketch& tube, double widthMm, double endWidthMm, const QColor& body,
                    const QColor& edge, double edgeWidth, bool closed) const
{
    const std::array line{tube.from, tube.to};
    ribbon(line, widthMm, endWidthMm, body, edge, edgeWidth, closed);
}

} // namespace tripoise
