// SPDX-License-Identifier: MIT
#include "drawing/layout.h"

#include "drawing/joint_labels.h"
#include "wording/drawing_labels.h"

#include <QFontMetricsF>

#include <algorithm>

namespace tripoise {
namespace {

constexpr double marginShare = 0.03; // of the area's shorter side
constexpr double leastReadableWidth = 420.0;
constexpr double leastReadableHeight = 300.0;
constexpr double uprightBelow = 1.2;  // width over height
constexpr double columnAtMost = 0.34; // of the sheet's width
constexpr double spareBelow = 0.35;
constexpr double leastBoardWidth = 240.0;
constexpr double leastBoardHeight = 200.0;

QSizeF blockSize(const SideView& view, const Steps& steps, double mostWidth, BlockPlace& block)
{
    const QFont small = fontOf(steps.small);
    const QFont strong = fontOf(steps.small, QFont::DemiBold);
    const double sample = 3.2 * steps.small; // a bit of line beside a name
    double label = 0.0;
    double value =
        std::max(widthOf(chosenName(view), strong), widthOf(otherName(view), strong)) + sample;
    const std::vector<BlockRow> rows = blockRows(view);
    for (const BlockRow& row : rows) {
        label = std::max(label, widthOf(row.label, small));
        value = std::max({value, widthOf(row.chosen, small), widthOf(row.other, small)});
    }
    const double gap = 1.2 * steps.small;
    const int columns = view.other ? 2 : 1;
    double notes = widthOf(blockTitle(view), strong);
    if (view.rider)
        notes = std::max(
            {notes, widthOf(positionLine(*view.rider), small), widthOf(rangeKey(), small)});
    const double wanted =
        std::max(gap + label + columns * (gap + value) + gap, notes + 2.0 * gap) + 2.0;
    const double width = std::min(wanted, mostWidth);
    block.rowHeight = rowPitch * steps.small;
    block.labelWidth = gap + label + gap;
    block.valueWidth = (width - block.labelWidth) / columns;
    const double lines = 2.0 + static_cast<double>(rows.size()) + (view.rider ? 2.0 : 0.0);
    return {width, (lines + 0.7) * block.rowHeight};
}

void placeTitle(Layout& layout, const DrawingText& text)
{
    QRectF& sheet = layout.sheet;
    double y = sheet.top();
    const auto place = [&](const QString& words, double px, double most) {
        if (words.isEmpty())
            return QRectF(sheet.left(), y, sheet.width(), 0.0);
        const QRectF free(sheet.left(), y, sheet.width(), most);
        const QRectF used =
            QFontMetricsF(fontOf(px)).boundingRect(free, Qt::TextWordWrap | Qt::AlignLeft, words);
        const QRectF taken(sheet.left(), y, sheet.width(), std::min(used.height(), most));
        y = taken.bottom() + 0.25 * px;
        return taken;
    };
    layout.title = place(text.title, layout.steps.title, 2.6 * layout.steps.title);
    layout.subtitle = place(text.subtitle, layout.steps.body, 2.6 * layout.steps.body);
    layout.scene.setTop(y + layout.steps.body);
}

/// A line of words a contact was pulled with: ahead of the grips, behind the saddle.
void placePulled(Layout& layout, const SideView& view)
{
    if (!view.advised || !view.chosen.saddle || !view.chosen.cockpit)
        return;
    const auto add = [&layout](const QStringList& rows, const Point& from, const Point& to,
                               const Point& beside, bool leftwards) {
        if (rows.isEmpty())
            return;
        PulledPlace place{rows, layout.fit.toPx(from), layout.fit.toPx(to), {}, leftwards};
        const double small = layout.steps.small;
        double width = 0.0;
        for (const QString& row : rows)
            width = std::max(width, widthOf(row, fontOf(small, QFont::DemiBold)) + 2.0);
        const QSizeF size(width, static_cast<double>(rows.size()) * rowPitch * small);
        const QPointF edge = layout.fit.toPx(beside);
        const double x = leftwards ? edge.x() - 1.4 * small - width : edge.x() + 1.4 * small;
        place.label = {QPointF(x, edge.y() - size.height() - 0.6 * small), size};
        place.label.moveLeft(std::clamp(
            x, layout.sheet.left(), std::max(layout.sheet.left(), layout.sheet.right() - width)));
        layout.pulled.push_back(place);
    };
    const Point saddle = view.chosen.saddle->point;
    const Point grip = view.chosen.cockpit->grip;
    add(pulledLabel(Contact::Grip, grip - view.advised->grip), view.advised->grip, grip,
        grip + Point(20.0, 20.0), false);
    add(pulledLabel(Contact::Saddle, saddle - view.advised->saddle), view.advised->saddle, saddle,
        {view.chosen.saddle->tail.x(), saddle.y()}, true);
}

QSizeF legendSize(const SideView& view, const DrawingOptions& options, const Steps& steps)
{
    const std::vector<LegendRow> rows = legendRows(view, options.layers);
    double width = 0.0;
    for (const LegendRow& row : rows)
        width = std::max(width, widthOf(row.text, fontOf(steps.small)));
    return {width + legendSample * steps.small + 2.0,
            static_cast<double>(rows.size()) * rowPitch * steps.small};
}

/// Where the drawing's words may not be: its head.
QRectF headOf(const SideView& view, const DrawingFit& fit)
{
    if (!view.rider)
        return {};
    const double half = 0.085 * view.rider->statureMm * fit.pxPerMm;
    const QPointF head = fit.toPx(view.rider->head);
    return {head.x() - half, head.y() - half, 2.0 * half, 2.0 * half};
}

/// Left of the middle, as far as leaders on the right can use.
DrawingFit fitOnBoard(const QRectF& scene, const SideView& view, double leaders)
{
    const SideView::Bounds bounds = view.bounds();
    DrawingFit fit = fitInto(scene, bounds);
    const double spare = scene.width() - fit.pxPerMm * (bounds.high.x() - bounds.low.x());
    fit.origin.rx() -= 0.5 * std::min(spare, leaders);
    return fit;
}

Layout layOutBoard(const QRectF& area, const SideView& view, const DrawingOptions& options)
{
    Layout layout;
    layout.steps = stepsFor(area.size(), options.lettersPx);
    const Steps& steps = layout.steps;
    layout.words =
        options.words && area.width() >= leastBoardWidth && area.height() >= leastBoardHeight;
    const double margin = layout.words ? 0.9 * steps.small : 2.0;
    layout.sheet = area.adjusted(margin, margin, -margin, -margin);
    layout.scene = layout.sheet.adjusted(0.0, 0.6 * steps.small, 0.0, 0.0);
    if (!layout.words || !view.drawn) {
        layout.fit = options.viewport.value_or(fitInto(layout.scene, view.bounds()));
        return layout;
    }
    const bool leaders = options.layers.other && !options.layers.dimensions && !view.advised;
    layout.legend = {layout.sheet.topLeft(), legendSize(view, options, steps)};
    if (options.layers.dimensions) {
        const QSizeF room = roomForDimensions(steps);
        layout.scene.adjust(0.0, 0.0, -room.width(), -room.height());
    } else if (options.layers.ground) {
        layout.scene.setBottom(layout.scene.bottom() - 2.4 * steps.small);
    }
    const double aside = leaders ? leadersWidth(view, steps) : 0.0;
    layout.fit = fitOnBoard(layout.scene, view, aside);
    if (headOf(view, layout.fit).intersects(layout.legend)) {
        layout.scene.setTop(layout.legend.bottom());
        layout.fit = fitOnBoard(layout.scene, view, aside);
    }
    if (options.viewport)
        layout.fit = *options.viewport;
    if (options.layers.dimensions)
        layout.dimensions = placeDimensions(layout, view);
    if (leaders)
        placeLeadersOnBoard(layout, view);
    placePulled(layout, view);
    if (options.layers.rider && options.layers.angles)
        placeJointLabels(layout, view, options);
    return layout;
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

Layout layOut(const QRectF& area, const SideView& view, const DrawingText& text,
              const DrawingOptions& options)
{
    if (!options.furniture)
        return layOutBoard(area, view, options);
    Layout layout;
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
    const QSizeF block =
        blockSize(view, steps, upright ? layout.sheet.width() : most, layout.block);
    layout.block.box = {layout.sheet.right() - block.width(),
                        layout.sheet.bottom() - block.height(), block.width(), block.height()};
    const double leaders = std::min(leadersWidth(view, steps), most);
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
    placeJointLabels(layout, view, options);
    return layout;
}

} // namespace tripoise
