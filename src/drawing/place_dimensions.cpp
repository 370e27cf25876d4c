// SPDX-License-Identifier: MIT
#include "drawing/place_dimensions.h"

#include "drawing/curve.h"
#include "drawing/labels.h"
#include "drawing/layout.h"

#include <QTransform>

#include <algorithm>
#include <cmath>
#include <utility>

namespace tripoise {

using namespace drawing;

namespace {

constexpr double pitch = 2.0;          // of the letters' height, from row to row
constexpr double besideSaddleMm = 150; // the saddle height's line runs behind the saddle's tail
constexpr double belowAxleMm = 60;     // the front centre's under the axle
constexpr double overSaddleMm = 60;    // that from nose to bar above both
constexpr double beyond = 0.45;        // of the letters' height: extension lines end past the line
constexpr double arrow = 0.75;         // of the letters' height
constexpr double weightOfLine = 6.0;   // words would rather not lie on one

class Placer {
public:
    Placer(const DrawingLayout& layout, const SideView& view)
        : m_fit(layout.fit), m_small(layout.steps.small)
    {
        const SideView::Bounds bounds = view.bounds();
        double ground = view.chosen.groundY;
        double ahead = view.chosen.front.axle.x() + view.chosen.front.radiusMm;
        if (view.other) {
            ground = std::min(ground, view.other->groundY + view.otherOffset.y());
            ahead = std::max(ahead, view.other->front.axle.x() + view.other->front.radiusMm
                                        + view.otherOffset.x());
        }
        m_firstRow = m_fit.toPx({0.0, ground}).y() + 1.1 * pitch * m_small;
        m_firstColumn =
            m_fit.toPx({std::max(ahead, bounds.low.x()), 0.0}).x() + 0.9 * pitch * m_small;
    }

    DimensionPlace place(const Dimension& dimension, const QString& text, const QString& more) const
    {
        DimensionPlace place;
        place.kind = dimension.kind;
        place.text = text;
        place.more = more;
        const QPointF from = m_fit.toPx(dimension.from);
        const QPointF to = m_fit.toPx(dimension.to);
        switch (dimension.kind) {
        case DimensionKind::Setback:
        case DimensionKind::GripReach:
        case DimensionKind::BarReach: inRow(place, from, to, 0); break;
        case DimensionKind::Reach:
        case DimensionKind::NoseSetback: inRow(place, from, to, 1); break;
        case DimensionKind::Wheelbase: inRow(place, from, to, 2); break;
        case DimensionKind::Stack: inColumn(place, from, to, 0); break;
        case DimensionKind::GripHeight: inColumn(place, from, to, 1); break;
        case DimensionKind::SaddleToBarDrop: inColumn(place, from, to, 2); break;
        case DimensionKind::BarHeight:
        case DimensionKind::BarBelowSaddle: inColumn(place, from, to, 0); break;
        case DimensionKind::SaddleHeight:
            beside(place, from, to, m_fit.pxPerMm * besideSaddleMm);
            break;
        case DimensionKind::FrontCentre:
            beside(place, from, to, -m_fit.pxPerMm * belowAxleMm);
            break;
        case DimensionKind::NoseToBar: beside(place, from, to, m_fit.pxPerMm * overSaddleMm); break;
        }
        write(place);
        return place;
    }

private:
    void inRow(DimensionPlace& place, const QPointF& from, const QPointF& to, int row) const
    {
        const double y = m_firstRow + row * pitch * m_small;
        set(place, from, to, {from.x(), y}, {to.x(), y});
    }
    void inColumn(DimensionPlace& place, const QPointF& from, const QPointF& to, int column) const
    {
        const double x = m_firstColumn + column * pitch * m_small;
        set(place, from, to, {x, from.y()}, {x, to.y()});
    }
    /// Left of the way from one to the other, seen on the bicycle.
    void beside(DimensionPlace& place, const QPointF& from, const QPointF& to, double px) const
    {
        const QPointF way = to - from;
        const double length = std::max(1.0, std::hypot(way.x(), way.y()));
        const QPointF left = px / length * QPointF(way.y(), -way.x());
        set(place, from, to, from + left, to + left);
    }

    void set(DimensionPlace& place, const QPointF& from, const QPointF& to, const QPointF& start,
             const QPointF& end) const
    {
        place.line = {start, end};
        const auto extension = [this](const QPointF& point, const QPointF& tip) {
            const QPointF way = tip - point;
            const double length = std::max(1.0, std::hypot(way.x(), way.y()));
            return QLineF(point, tip + beyond * m_small / length * way);
        };
        place.extensions[0] = extension(from, start);
        place.extensions[1] = extension(to, end);
    }

    /// Over the middle of the line; past its end where it is too short.
    void write(DimensionPlace& place) const
    {
        const QFont font = fontOf(m_small);
        place.size = {
            widthOf(place.text, font)
                + (place.more.isEmpty() ? 0.0 : widthOf(place.more, font) + 0.6 * m_small),
            1.25 * m_small};
        const double length = place.line.length();
        if (place.kind == DimensionKind::BarBelowSaddle) { // level, as the bar is near the saddle
            place.outside = length < 3.2 * arrow * m_small;
            place.turnDeg = 0.0;
            place.middle =
                place.line.center() + QPointF(0.5 * place.size.width() + 0.8 * m_small, 0.0);
            return;
        }
        place.outside = length < 3.2 * arrow * m_small;
        QPointF way = length > 0.0 ? (place.line.p2() - place.line.p1()) / length : QPointF(1, 0);
        place.turnDeg = std::atan2(way.y(), way.x()) * 180.0 / M_PI;
        // Read from below or from the right.
        if (place.turnDeg > 89.0)
            place.turnDeg -= 180.0;
        else if (place.turnDeg <= -91.0)
            place.turnDeg += 180.0;
        const Angle turn = Angle::degrees(place.turnDeg);
        const QPointF over(std::sin(turn.rad()), -std::cos(turn.rad()));
        place.middle = place.line.center() + 0.78 * m_small * over;
        if (place.size.width() + 2.4 * arrow * m_small <= length)
            return;
        const bool back = place.kind == DimensionKind::Setback
                          || place.kind == DimensionKind::NoseSetback
                          || place.kind == DimensionKind::NoseToBar;
        if (back)
            way = -way;
        const QPointF end = back ? place.line.p1() : place.line.p2();
        place.middle =
            end + (0.5 * place.size.width() + (place.outside ? 2.2 : 1.0) * arrow * m_small) * way;
    }

    const DrawingFit& m_fit;
    double m_small;
    double m_firstRow = 0.0;
    double m_firstColumn = 0.0;
};

} // namespace

QRectF DimensionPlace::extent() const
{
    QTransform turn;
    turn.translate(middle.x(), middle.y());
    turn.rotate(turnDeg);
    return turn.mapRect(
        QRectF(-0.5 * size.width(), -0.5 * size.height(), size.width(), size.height()));
}

QSizeF roomForDimensions(const Steps& steps)
{
    return {2.9 * pitch * steps.small + 0.8 * steps.small,
            3.1 * pitch * steps.small + 0.8 * steps.small};
}

std::vector<DimensionPlace> placeDimensions(const DrawingLayout& layout, const SideView& view,
                                            bool tape, Clearance& clearance)
{
    std::vector<DimensionPlace> places;
    const Placer placer(layout, view);
    for (const Dimension& dimension : tape ? tapeDimensionsOf(view) : dimensionsOf(view)) {
        const QString value = dimensionValue(dimension);
        const QString more = dimensionMore(dimension);
        for (const auto& [text, beside] : {std::pair(dimensionLabel(dimension), more),
                                           std::pair(value, more), std::pair(value, QString())}) {
            const DimensionPlace place = placer.place(dimension, text, beside);
            if (!clearance.free(place.extent()))
                continue;
            clearance.take(place.extent());
            places.push_back(place);
            break;
        }
    }
    for (const DimensionPlace& place : places)
        clearance.avoid(place.line, 3.0, weightOfLine);
    return places;
}

} // namespace tripoise
