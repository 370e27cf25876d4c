// SPDX-License-Identifier: MIT
#include "drawing/layout_board.h"

#include "drawing/board_leaders.h"
#include "drawing/drawn_strokes.h"
#include "drawing/joint_labels.h"
#include "drawing/pulled_places.h"

#include <algorithm>
#include <array>

namespace tripoise::drawing {
namespace {

// In letters' heights: less than this is a picture without words.
constexpr double aboveTape = 0.06; // of the height, for a line above saddle and bar
constexpr double leastWidth = 20.0;
constexpr double leastHeight = 14.0;
constexpr double scaleFrom = 22.0;   // a board so high has room for the scale
constexpr double twoRowsFrom = 40.0; // and for a second row of legend

constexpr double standsBelow = 0.15; // of spare height: words stand above

// What a smaller drawing costs, and what is lost where words are.
constexpr std::array shares{1.0, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7};
constexpr double weightOfGround = 50.0;
constexpr double costOfShare = 10.0;
constexpr double costOfLeader = 0.45;
constexpr double costOfLabel = 3.0;
constexpr double costOfPlace = 0.08;
constexpr double goodPlace = 12.0;

/// In lines from left to right; as much of the first as leaves few enough lines.
void placeLegend(DrawingLayout& layout, const SideView& view, const DrawingOptions& options)
{
    const double small = layout.steps.small;
    const QFont font = fontOf(small);
    const QRectF& sheet = layout.sheet;
    const std::vector<LegendRow> rows = legendRows(view, options.layers);
    const int most = sheet.height() > twoRowsFrom * small ? 2 : 1;
    const qsizetype forms = rows.empty() ? 0 : rows.front().texts.size();
    for (qsizetype form = 0; form < forms; ++form) {
        layout.legend.clear();
        QPointF at = sheet.topLeft();
        int lines = 1;
        bool fits = true;
        for (const LegendRow& row : rows) {
            const QString text = row.texts.value(std::min(form, row.texts.size() - 1));
            const double width = legendSample * small + widthOf(text, font) + 2.0;
            if (at.x() > sheet.left() && at.x() + width > sheet.right()) {
                at = {sheet.left(), at.y() + rowPitch * small};
                ++lines;
            }
            layout.legend.push_back({row, text, {at.x(), at.y(), width, rowPitch * small}});
            fits = fits && at.x() + width <= sheet.right();
            at.rx() += width + 1.6 * small;
        }
        if (fits && lines <= most)
            break;
    }
    // A name wider than the board is not written.
    std::erase_if(layout.legend, [&sheet](const LegendPlace& place) {
        return !sheet.contains(place.box.adjusted(0.0, 0.0, -0.01, -0.01));
    });
}

bool tellsLeaders(const SideView& view, const Layers& layers)
{
    return layers.other && !layers.dimensions && !view.advised;
}

/// The scale under the ground, if there is room; no other words there.
void standOnGround(DrawingLayout& layout, const SideView& view, const Layers& layers,
                   Clearance& clearance)
{
    const double small = layout.steps.small;
    if (!layers.dimensions && layout.sheet.height() > scaleFrom * small) {
        const ScalePlace scale = placeScale(layout, view);
        if (clearance.clear(scale.words)) {
            layout.scale = scale;
            clearance.take(scale.words);
            clearance.takeLine(scale.line);
        }
    }
    const double y = layout.fit.toPx(Point(0.0, view.chosen.groundY)).y() + 1.2 * small;
    clearance.avoid({layout.sheet.left(), y, layout.sheet.right(), y}, 1.2 * small, weightOfGround);
}

/// The words of a drawing whose fit is known.
void write(DrawingLayout& layout, const SideView& view, const DrawingOptions& options)
{
    const Layers& layers = options.layers;
    Clearance clearance(layout.sheet);
    for (const LegendPlace& place : layout.legend)
        clearance.take(place.box);
    avoidDrawn(clearance, view, layout.fit, layers, true);
    if (layers.dimensions)
        layout.dimensions = placeDimensions(layout, view, options.tape, clearance);
    if (layers.ground)
        standOnGround(layout, view, layers, clearance);
    if (tellsLeaders(view, layers))
        placeLeadersOnBoard(layout, view, clearance);
    if (layers.rider && layers.angles)
        placeJointLabels(layout, view, options, clearance);
    placePulled(layout, view, clearance);
}

/// A smaller drawing at the left, in the middle or at the right of its place.
DrawingFit fitAs(const QRectF& scene, const SideView::Bounds& bounds, double share, double side)
{
    DrawingFit fit = fitInto(scene, bounds);
    fit.pxPerMm *= share;
    const double width = fit.pxPerMm * (bounds.high.x() - bounds.low.x());
    const double height = fit.pxPerMm * (bounds.high.y() - bounds.low.y());
    fit.origin = {scene.left() + side * (scene.width() - width) - fit.pxPerMm * bounds.low.x(),
                  scene.bottom() - standsBelow * (scene.height() - height)
                      + fit.pxPerMm * bounds.low.y()};
    return fit;
}

/// What of the words found no room, as a cost.
double untold(const DrawingLayout& layout, const SideView& view, const Layers& layers)
{
    double cost = 0.0;
    if (tellsLeaders(view, layers)) {
        double rows = 0.0;
        for (const LeaderPlace& leader : layout.leaders)
            rows += static_cast<double>(leader.rows.size());
        cost += costOfLeader * std::max(0.0, static_cast<double>(view.leaders.size()) - rows);
    }
    for (const JointLabelPlace& place : layout.jointLabels)
        cost +=
            place.box.isEmpty() ? costOfLabel : costOfPlace * std::max(0.0, place.cost - goodPlace);
    return cost;
}

} // namespace

DrawingLayout layOutBoard(const QRectF& area, const SideView& view, const DrawingOptions& options)
{
    DrawingLayout layout;
    layout.steps = stepsFor(area.size(), options.lettersPx);
    const double small = layout.steps.small;
    layout.words =
        options.words && area.width() >= leastWidth * small && area.height() >= leastHeight * small;
    const double margin = layout.words ? 0.9 * small : 2.0;
    layout.sheet = area.adjusted(margin, margin, -margin, -margin);
    layout.scene = layout.sheet;
    if (!layout.words || !view.drawn) {
        layout.fit = options.viewport.value_or(fitInto(layout.scene, view.bounds()));
        return layout;
    }
    if (!options.tape)
        placeLegend(layout, view, options);
    if (!view.leaders.empty())
        layout.leadersHeading = leadersHeading(view);
    if (!layout.legend.empty())
        layout.scene.setTop(layout.legend.back().box.bottom() + 0.4 * small);
    if (options.layers.dimensions) {
        const QSizeF room = roomForDimensions(layout.steps);
        layout.scene.adjust(
            0.0, options.tape ? aboveTape * layout.scene.height() + rowPitch * small : 0.0,
            -room.width(), -room.height());
    } else if (options.layers.ground && layout.sheet.height() > scaleFrom * small) {
        layout.scene.setBottom(layout.scene.bottom() - 2.4 * small);
    }
    if (options.viewport) {
        layout.fit = *options.viewport;
        write(layout, view, options);
        return layout;
    }
    const SideView::Bounds bounds = view.bounds();
    std::optional<DrawingLayout> best;
    double least = 0.0;
    for (const double share : shares) {
        for (const double side : {0.5, 0.25, 0.0, 0.75}) {
            const double smaller = costOfShare * (1.0 - share);
            if (best && smaller >= least)
                return *best;
            DrawingLayout tried = layout;
            tried.fit = fitAs(layout.scene, bounds, share, side);
            write(tried, view, options);
            const double cost = smaller + untold(tried, view, options.layers);
            if (!best || cost < least) {
                best = std::move(tried);
                least = cost;
            }
        }
    }
    return *best;
}

} // namespace tripoise::drawing
