// SPDX-License-Identifier: MIT
#include "drawing/layout.h"

#include "drawing/drawn_strokes.h"
#include "drawing/joint_labels.h"
#include "drawing/labels.h"
#include "drawing/layout_board.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>

namespace tripoise {

using namespace drawing;

namespace {

constexpr double marginShare = 0.03; // of the area's shorter side
constexpr double leastReadableWidth = 420.0;
constexpr double leastReadableHeight = 300.0;
constexpr double uprightBelow = 1.2;  // width over height
constexpr double columnAtMost = 0.34; // of the sheet's width
constexpr double spareBelow = 0.35;
constexpr qsizetype mostTitleLines = 2;

void writeBlock(BlockPlace& block, const SideView& view)
{
    block.title = blockTitle(view);
    block.chosen = chosenName(view);
    block.other = otherName(view);
    block.columns = view.other ? 2 : 1;
    block.rows = blockRows(view);
    if (view.rider)
        block.notes = QStringList{positionLine(*view.rider), rangeKey()};
}

QSizeF blockSize(const Steps& steps, double mostWidth, BlockPlace& block)
{
    const QFont small = fontOf(steps.small);
    const QFont strong = fontOf(steps.small, QFont::DemiBold);
    const double sample = 3.2 * steps.small; // a bit of line beside a name
    double label = 0.0;
    double value = std::max(widthOf(block.chosen, strong), widthOf(block.other, strong)) + sample;
    for (const BlockRow& row : block.rows) {
        label = std::max(label, widthOf(row.label, small));
        value = std::max({value, widthOf(row.chosen, small), widthOf(row.other, small)});
    }
    const double gap = 1.2 * steps.small;
    double notes = widthOf(block.title, strong);
    for (const QString& note : block.notes)
        notes = std::max(notes, widthOf(note, small));
    const double wanted =
        std::max(gap + label + block.columns * (gap + value) + gap, notes + 2.0 * gap) + 2.0;
    const double width = std::min(wanted, mostWidth);
    block.rowHeight = rowPitch * steps.small;
    block.labelWidth = gap + label + gap;
    block.valueWidth = (width - block.labelWidth) / block.columns;
    const double lines =
        2.0 + static_cast<double>(block.rows.size()) + static_cast<double>(block.notes.size());
    return {width, (lines + 0.7) * block.rowHeight};
}

/// Broken between words where these are no wider than a line; what finds no room is left out.
QStringList broken(const QString& text, const QFont& font, double width)
{
    QTextOption wrap;
    wrap.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    QTextLayout layout(text, font);
    layout.setTextOption(wrap);
    layout.beginLayout();
    QStringList lines;
    for (QTextLine line = layout.createLine(); line.isValid() && lines.size() < mostTitleLines;
         line = layout.createLine()) {
        line.setLineWidth(width);
        lines << (lines.size() + 1 < mostTitleLines
                      ? text.mid(line.textStart(), line.textLength()).trimmed()
                      : QFontMetricsF(font).elidedText(text.mid(line.textStart()), Qt::ElideRight,
                                                       width));
    }
    layout.endLayout();
    return lines;
}

void placeTitle(DrawingLayout& layout, const DrawingText& text)
{
    double y = layout.sheet.top();
    const auto place = [&](const QString& words, double px) {
        const QFont font = fontOf(px);
        LinesPlace placed{broken(words, font, layout.sheet.width()), {}};
        placed.box = {layout.sheet.left(), y, layout.sheet.width(),
                      static_cast<double>(placed.lines.size()) * QFontMetricsF(font).lineSpacing()};
        if (!placed.lines.isEmpty())
            y = placed.box.bottom() + 0.25 * px;
        return placed;
    };
    layout.title = place(text.title, layout.steps.title);
    layout.subtitle = place(text.subtitle, layout.steps.body);
    layout.scene.setTop(y + layout.steps.body);
}

double roundLength(double pxPerMm, double wantedPx)
{
    for (const double mm : {500.0, 200.0, 100.0})
        if (mm * pxPerMm <= wantedPx)
            return mm;
    return 100.0;
}

} // namespace

DrawingFit fitInto(const QRectF& scene, const SideView::Bounds& bounds)
{
    const Point size = (bounds.high - bounds.low).cwiseMax(1.0);
    DrawingFit fit;
    fit.pxPerMm = std::min(scene.width() / size.x(), scene.height() / size.y());
    const Point middle = 0.5 * (bounds.low + bounds.high);
    // Stands on the bottom of its place, as on a floor; raised a little where there is height to
    // spare.
    const double spare = scene.height() - fit.pxPerMm * size.y();
    fit.origin = {scene.center().x() - fit.pxPerMm * middle.x(),
                  scene.bottom() + fit.pxPerMm * bounds.low.y() - spareBelow * spare};
    return fit;
}

ScalePlace placeScale(const DrawingLayout& layout, const SideView& view)
{
    const double small = layout.steps.small;
    const double length = roundLength(layout.fit.pxPerMm, 0.3 * layout.scene.width());
    const double ground = layout.fit.toPx(Point(0.0, view.chosen.groundY)).y();
    const QPointF left(layout.scene.left(), ground + 1.6 * small);
    const QPointF right = left + QPointF(layout.fit.pxPerMm * length, 0.0);
    ScalePlace place{{left, right}, scaleLabel(length), {}};
    place.words = {right.x() + 0.8 * small, left.y() - 0.5 * rowPitch * small,
                   widthOf(place.text, fontOf(small)) + 2.0, rowPitch * small};
    return place;
}

std::vector<LabelSpot> spotsOf(const DrawingLayout& layout)
{
    std::vector<LabelSpot> spots;
    for (const JointLabelPlace& place : layout.jointLabels)
        spots.push_back(place.spot);
    return spots;
}

DrawingLayout layOut(const QRectF& area, const SideView& view, const DrawingText& text,
                     const DrawingOptions& options)
{
    if (!options.furniture)
        return layOutBoard(area, view, options);
    DrawingLayout layout;
    layout.steps = stepsFor(area.size());
    layout.words = area.width() >= leastReadableWidth && area.height() >= leastReadableHeight;
    const double margin =
        (layout.words ? marginShare : 0.02) * std::min(area.width(), area.height());
    layout.sheet = area.adjusted(margin, margin, -margin, -margin);
    layout.scene = layout.sheet;
    if (!layout.words) {
        layout.fit = fitInto(layout.scene, view.bounds());
        return layout;
    }

    const Steps& steps = layout.steps;
    placeTitle(layout, text);
    const bool upright = area.width() < uprightBelow * area.height();
    const double most = columnAtMost * layout.sheet.width();
    writeBlock(layout.block, view);
    if (!view.leaders.empty())
        layout.leadersHeading = leadersHeading(view);
    const QSizeF block = blockSize(steps, upright ? layout.sheet.width() : most, layout.block);
    layout.block.box = {layout.sheet.right() - block.width(),
                        layout.sheet.bottom() - block.height(), block.width(), block.height()};
    const double leaders = std::min(leadersWidth(layout, view), most);
    const double column = upright ? leaders : std::max(leaders, block.width());
    layout.scene.setRight(layout.sheet.right() - column - (column > 0.0 ? steps.body : 0.0));
    // Room under the ground for the scale, and for the block on an upright sheet.
    const double under = upright ? block.height() + 2.0 * steps.body : 3.4 * steps.small;
    layout.scene.setBottom(layout.sheet.bottom() - under);
    if (layout.scene.height() < 1.0 || layout.scene.width() < 1.0) {
        layout.words = false;
        layout.scene = layout.sheet;
        layout.fit = fitInto(layout.scene, view.bounds());
        return layout;
    }
    layout.fit = fitInto(layout.scene, view.bounds());
    placeLeaders(layout, view);
    layout.scale = placeScale(layout, view);
    Clearance clearance(
        {QPointF(layout.sheet.left(), layout.scene.top()), layout.sheet.bottomRight()});
    for (const LeaderPlace& leader : layout.leaders) {
        clearance.take(leader.label);
        clearance.takeLine({leader.at, leader.knee});
        clearance.takeLine({leader.knee, leader.end});
    }
    clearance.take(layout.block.box);
    clearance.take(layout.leadersHeadingBox);
    avoidDrawn(clearance, view, layout.fit, options.layers, false);
    placeJointLabels(layout, view, options, clearance);
    return layout;
}

} // namespace tripoise
