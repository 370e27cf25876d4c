// SPDX-License-Identifier: MIT
#include "drawing/paint_notes.h"

#include <cmath>

namespace tripoise::drawing {
namespace {

constexpr double arrowLength = 0.75; // of the letters' height
constexpr double arrowHalf = 0.17;
constexpr double fromPoint = 0.35; // extension lines start clear of what they measure

QPointF unit(const QLineF& line)
{
    const double length = line.length();
    return length > 0.0 ? (line.p2() - line.p1()) / length : QPointF(1.0, 0.0);
}

/// A slim arrowhead whose tip is at a point, flying along a direction.
void paintArrow(const Canvas& c, const QPointF& tip, const QPointF& along)
{
    const QPointF back = tip - arrowLength * c.steps.small * along;
    const QPointF side = arrowHalf * c.steps.small * QPointF(-along.y(), along.x());
    c.painter.drawPolygon(QPolygonF({tip, back + side, back - side}));
}

void paintLines(const Canvas& c, const DimensionPlace& place)
{
    c.pen(c.theme.hair, c.steps.hair);
    for (const QLineF& extension : place.extensions) {
        const QPointF way = unit(extension);
        if (extension.length() > fromPoint * c.steps.small)
            c.painter.drawLine(extension.p1() + fromPoint * c.steps.small * way, extension.p2());
    }
    const QPointF way = unit(place.line);
    const double tail = 1.8 * arrowLength * c.steps.small;
    c.pen(c.theme.soft, c.steps.hair);
    if (place.outside)
        c.painter.drawLine(place.line.p1() - tail * way, place.line.p2() + tail * way);
    else
        c.painter.drawLine(place.line);
    c.noPen();
    c.fill(c.theme.soft);
    paintArrow(c, place.line.p1(), place.outside ? way : -way);
    paintArrow(c, place.line.p2(), place.outside ? -way : way);
}

void paintWords(const Canvas& c, const DimensionPlace& place)
{
    const QFont font = fontOf(c.steps.small);
    c.painter.save();
    c.painter.translate(place.middle);
    c.painter.rotate(place.turnDeg);
    const QRectF box(-0.5 * place.size.width(), -0.5 * place.size.height(), place.size.width(),
                     place.size.height());
    paintHalo(c, box);
    c.painter.setFont(font);
    c.painter.setPen(c.theme.ink);
    c.painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, place.text);
    c.painter.setPen(c.theme.otherText);
    c.painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, place.more);
    c.painter.restore();
}

} // namespace

void paintDimensions(const Canvas& c, const DrawingLayout& layout)
{
    for (const DimensionPlace& place : layout.dimensions)
        paintLines(c, place);
    for (const DimensionPlace& place : layout.dimensions)
        paintWords(c, place);
}

} // namespace tripoise::drawing
