// SPDX-License-Identifier: MIT
#include "drawing/paint_notes.h"

#include <QFontMetricsF>

#include <algorithm>
#include <array>

namespace tripoise::drawing {
namespace {

void write(const Canvas& c, const QRectF& box, const QString& text, const QFont& font,
           const QColor& color, int flags = Qt::AlignLeft | Qt::AlignVCenter)
{
    c.painter.setFont(font);
    c.painter.setPen(color);
    const QString fitting = QFontMetricsF(font).elidedText(text, Qt::ElideRight, box.width());
    c.painter.drawText(box, flags, fitting);
}

/// A bit of line as the size is drawn with, beside its name.
void writeSize(const Canvas& c, const QRectF& cell, const QString& name, bool other)
{
    const double sample = 2.4 * c.steps.small;
    const double middle = cell.center().y();
    if (other)
        c.pen(c.theme.other, c.steps.thin, Qt::DashLine);
    else
        c.pen(c.theme.ink, c.steps.bold);
    c.painter.drawLine(QPointF(cell.left(), middle), QPointF(cell.left() + sample, middle));
    write(c, cell.adjusted(sample + 0.6 * c.steps.small, 0.0, 0.0, 0.0), name,
          fontOf(c.steps.small, QFont::DemiBold), other ? c.theme.otherText : c.theme.ink);
}

void rule(const Canvas& c, const QRectF& box, double y)
{
    c.pen(c.theme.hair, c.steps.hair);
    c.painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
}

} // namespace

void paintHalo(const Canvas& c, const QRectF& box)
{
    QColor paper = c.theme.paper;
    paper.setAlphaF(0.78F);
    c.painter.fillRect(box.adjusted(-2.0, 0.0, 2.0, 0.0).toRect(), paper);
}

void paintDot(const Canvas& c, const QPointF& at)
{
    const double r = std::max(2.2, 1.8 * c.steps.thin);
    c.noPen();
    c.painter.drawEllipse(at, r, r);
}

void paintLeaders(const Canvas& c, const DrawingLayout& layout)
{
    if (layout.leaders.empty())
        return;
    for (const LeaderPlace& leader : layout.leaders) {
        c.pen(c.theme.other, c.steps.hair);
        c.noFill();
        c.painter.drawPolyline(QPolygonF({leader.at, leader.knee, leader.end}));
        c.fill(c.theme.other);
        paintDot(c, leader.at);
        QRectF row = leader.label;
        row.setHeight(leader.label.height() / static_cast<double>(leader.rows.size()));
        for (const QString& text : leader.rows) {
            write(c, row, text, fontOf(c.steps.small), c.theme.otherText,
                  (leader.leftwards ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
            row.translate(0.0, row.height());
        }
    }
    write(c, layout.leadersHeadingBox, layout.leadersHeading,
          fontOf(c.steps.small, QFont::DemiBold), c.theme.otherText);
    if (!layout.moreLeaders.isEmpty())
        write(c, layout.moreLeadersBox, layout.moreLeaders, fontOf(c.steps.small),
              c.theme.otherText);
}

void paintTitle(const Canvas& c, const DrawingLayout& layout)
{
    const auto paint = [&c](const LinesPlace& place, double px, const QColor& color) {
        c.painter.setFont(fontOf(px));
        c.painter.setPen(color);
        QRectF row = place.box;
        row.setHeight(place.box.height() / static_cast<double>(place.lines.size()));
        for (const QString& line : place.lines) {
            c.painter.drawText(row, Qt::AlignLeft | Qt::AlignTop | Qt::TextSingleLine, line);
            row.translate(0.0, row.height());
        }
    };
    paint(layout.title, c.steps.title, c.theme.ink);
    paint(layout.subtitle, c.steps.body, c.theme.soft);
}

void paintBlock(const Canvas& c, const BlockPlace& block)
{
    const QRectF& box = block.box;
    const QFont small = fontOf(c.steps.small);
    const double gap = 1.2 * c.steps.small;
    c.pen(c.theme.soft, c.steps.thin);
    c.fill(c.theme.paper);
    c.painter.drawRect(box);

    double y = box.top() + 0.35 * block.rowHeight;
    const auto nextRow = [&] {
        const QRectF row(box.left(), y, box.width(), block.rowHeight);
        y += block.rowHeight;
        return row;
    };
    const auto cell = [&](const QRectF& row, int column) {
        return QRectF(row.left() + block.labelWidth + column * block.valueWidth, row.top(),
                      block.valueWidth - 0.4 * gap, row.height());
    };
    write(c, nextRow().adjusted(gap, 0.0, -gap, 0.0), block.title,
          fontOf(c.steps.small, QFont::DemiBold), c.theme.ink);
    rule(c, box, y);
    const QRectF names = nextRow();
    writeSize(c, cell(names, 0), block.chosen, false);
    if (block.columns > 1)
        writeSize(c, cell(names, 1), block.other, true);
    for (const BlockRow& row : block.rows) {
        const QRectF line = nextRow();
        write(c, line.adjusted(gap, 0.0, 0.0, 0.0), row.label, small, c.theme.soft);
        write(c, cell(line, 0), row.chosen, small, c.theme.ink);
        write(c, cell(line, 1), row.other, small, c.theme.otherText);
    }
    if (!block.notes.isEmpty())
        rule(c, box, y);
    for (const QString& note : block.notes)
        write(c, nextRow().adjusted(gap, 0.0, -gap, 0.0), note, small, c.theme.soft);
}

void paintGround(const Canvas& c, const SideView& view, const DrawingLayout& layout)
{
    const double y = c.px(Point(0.0, view.chosen.groundY)).y();
    c.pen(c.theme.hair, c.steps.medium);
    c.painter.drawLine(QPointF(layout.scene.left(), y), QPointF(layout.scene.right(), y));
}

void paintLegend(const Canvas& c, const DrawingLayout& layout)
{
    for (const LegendPlace& place : layout.legend) {
        paintHalo(c, place.box);
        QColor color = c.theme.ink;
        switch (place.row.line) {
        case LegendLine::Whole: c.pen(c.theme.ink, c.steps.bold); break;
        case LegendLine::Dashed:
            color = c.theme.otherText;
            c.pen(c.theme.other, c.steps.medium, Qt::DashLine);
            break;
        case LegendLine::Dotted:
            color = c.theme.soft;
            c.pen(c.theme.soft, c.steps.medium, Qt::DotLine);
            break;
        }
        const QPointF start(place.box.left(), place.box.center().y());
        c.painter.drawLine(start, start + QPointF((legendSample - 0.8) * c.steps.small, 0.0));
        write(c, place.box.adjusted(legendSample * c.steps.small, 0.0, 0.0, 0.0), place.text,
              fontOf(c.steps.small), color);
    }
}

void paintPulled(const Canvas& c, const DrawingLayout& layout)
{
    for (const PulledPlace& place : layout.pulled) {
        const QPointF corner(place.leftwards ? place.label.right() : place.label.left(),
                             place.label.bottom());
        c.pen(c.theme.ink, c.steps.hair);
        c.painter.drawLine(place.from, place.to);
        c.painter.drawLine(place.to, corner);
        paintHalo(c, place.label);
        QRectF row = place.label;
        row.setHeight(rowPitch * c.steps.small);
        for (const QString& text : place.rows) {
            write(c, row, text, fontOf(c.steps.small, QFont::DemiBold), c.theme.ink,
                  (place.leftwards ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
            row.translate(0.0, row.height());
        }
    }
}

void paintScaleBar(const Canvas& c, const ScalePlace& scale)
{
    const double tick = 0.35 * c.steps.small;
    c.pen(c.theme.soft, c.steps.thin);
    c.painter.drawLine(scale.line);
    for (const QPointF& end : {scale.line.p1(), scale.line.center(), scale.line.p2()})
        c.painter.drawLine(end - QPointF(0.0, tick), end + QPointF(0.0, tick));
    write(c, scale.words, scale.text, fontOf(c.steps.small), c.theme.soft);
}

} // namespace tripoise::drawing
