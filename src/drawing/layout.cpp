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
constexpr double rowPitch = 1.55;     // of the letters' height
constexpr double spareBelow = 0.35;
constexpr double leaderGap = 0.3; // of a row, between leaders

double widthOf(const QString& text, const QFont& font)
{
    return QFontMetricsF(font).horizontalAdvance(text);
}

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

double leadersWidth(const SideView& view, const Steps& steps)
{
    double width = view.leaders.empty()
                       ? 0.0
                       : widthOf(leadersHeading(view), fontOf(steps.small, QFont::DemiBold));
    for (const Leader& leader : view.leaders)
        width = std::max(width, widthOf(leaderLabel(leader), fontOf(steps.small)));
    return width > 0.0 ? width + 2.5 * steps.small : 0.0;
}

DrawingFit fitInto(const QRectF& scene, const SideView& view)
{
    const SideView::Bounds bounds = view.bounds();
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

/// Over the words on the right, or over those on the left where there are no others.
void placeHeading(Layout& layout, const SideView& view, const std::vector<Interval>& intervals,
                  double column, double row)
{
    const double width =
        widthOf(leadersHeading(view), fontOf(layout.steps.small, QFont::DemiBold)) + 2.0;
    if (!intervals.empty()) {
        layout.leadersHeading = {column, intervals.front().top - row,
                                 std::min(width, layout.sheet.right() - column), row};
        return;
    }
    const QRectF& label = layout.leaders.front().label;
    layout.leadersHeading = {std::max(layout.sheet.left(), label.right() - width),
                             label.top() - row, width, row};
}

/// Leaders grouped by the point they speak of, highest first.
std::vector<LeaderPlace> gathered(const Layout& layout, const SideView& view)
{
    std::vector<LeaderPlace> places;
    const Point* before = nullptr;
    for (const Leader& leader : view.leaders) {
        if (!before || *before != leader.at) {
            LeaderPlace place;
            place.at = layout.fit.toPx(leader.at);
            place.leftwards = leader.kind == LeaderKind::SaddleHigher
                              || leader.kind == LeaderKind::SaddleFurtherBack;
            places.push_back(place);
        }
        places.back().rows << leaderLabel(leader);
        before = &leader.at;
    }
    return places;
}

double widthOf(const QStringList& rows, const QFont& font)
{
    double width = 0.0;
    for (const QString& row : rows)
        width = std::max(width, widthOf(row, font));
    return width + 2.0;
}

/// Behind the saddle, level with it; false where there is no room.
bool placeLeftwards(LeaderPlace& place, const Layout& layout)
{
    const QSizeF size(widthOf(place.rows, fontOf(layout.steps.small)),
                      static_cast<double>(place.rows.size()) * rowPitch * layout.steps.small);
    const double right = place.at.x() - 2.5 * layout.steps.small;
    if (right - size.width() < layout.sheet.left())
        return false;
    place.label = {right - size.width(), place.at.y() - 0.5 * size.height(), size.width(),
                   size.height()};
    place.end = {right + 0.4 * layout.steps.small, place.at.y()};
    place.knee = place.end;
    return true;
}

void placeLeaders(Layout& layout, const SideView& view)
{
    layout.leaders = gathered(layout, view);
    const Steps& steps = layout.steps;
    const double row = rowPitch * steps.small;
    const double column = layout.fit.toPx(view.bounds().high).x() + 2.5 * steps.small;
    std::vector<Interval> intervals;
    double widest = layout.leaders.empty()
                        ? 0.0
                        : widthOf(leadersHeading(view), fontOf(steps.small, QFont::DemiBold));
    for (LeaderPlace& place : layout.leaders) {
        place.leftwards = place.leftwards && placeLeftwards(place, layout);
        if (place.leftwards)
            continue;
        const double height = (static_cast<double>(place.rows.size()) + leaderGap) * row;
        intervals.push_back({place.at.y() - 0.5 * row, height});
        widest = std::max(widest, widthOf(place.rows, fontOf(steps.small)));
    }
    const double width = std::min(widest, layout.sheet.right() - column);
    const QRectF reach(column, layout.scene.top(), width, layout.scene.height());
    const double apart = 1.5 * steps.small;
    const double bottom = reach.intersects(layout.block.box.adjusted(-apart, 0.0, apart, 0.0))
                              ? layout.block.box.top() - steps.small
                              : layout.scene.bottom();
    spread(intervals, layout.scene.top() + row, bottom);
    auto interval = intervals.begin();
    for (LeaderPlace& place : layout.leaders) {
        if (place.leftwards)
            continue;
        place.label = {column, interval->top, width, interval->height - leaderGap * row};
        const double level = interval->top + 0.5 * row;
        place.end = {column - 0.5 * steps.small, level};
        // Up or down at a slant, then level to the words.
        const double run = std::min(0.7 * std::abs(level - place.at.y()),
                                    std::max(0.0, place.end.x() - place.at.x() - steps.body));
        place.knee = {place.at.x() + run, level};
        ++interval;
    }
    if (!layout.leaders.empty())
        placeHeading(layout, view, intervals, column, row);
}

} // namespace

void spread(std::vector<Interval>& intervals, double low, double high)
{
    // Least squares under an order: neighbours that would overlap move as one run, by the mean of
    // what they wanted (pool adjacent violators).
    struct Run {
        double wanted = 0.0; ///< sum of the tops its members want for the run
        double height = 0.0;
        double count = 0.0;

        double top() const { return wanted / count; }
    };
    std::vector<Run> runs;
    for (const Interval& interval : intervals) {
        runs.push_back({interval.top, interval.height, 1.0});
        while (runs.size() > 1) {
            Run& last = runs.back();
            Run& before = runs[runs.size() - 2];
            if (before.top() + before.height <= last.top())
                break;
            before.wanted += last.wanted - last.count * before.height;
            before.height += last.height;
            before.count += last.count;
            runs.pop_back();
        }
    }
    auto interval = intervals.begin();
    for (const Run& run : runs) {
        double top = run.top();
        for (double i = 0.0; i < run.count; i += 1.0, ++interval) {
            interval->top = top;
            top += interval->height;
        }
    }
    double least = low;
    for (Interval& each : intervals) {
        each.top = std::max(each.top, least);
        least = each.top + each.height;
    }
    double most = high;
    for (auto each = intervals.rbegin(); each != intervals.rend(); ++each) {
        each->top = std::min(each->top, most - each->height);
        most = each->top;
    }
}

Layout layOut(const QRectF& area, const SideView& view, const DrawingText& text)
{
    Layout layout;
    layout.steps = stepsFor(area.size());
    layout.words = area.width() >= leastReadableWidth && area.height() >= leastReadableHeight;
    const double margin =
        (layout.words ? marginShare : 0.02) * std::min(area.width(), area.height());
    layout.sheet = area.adjusted(margin, margin, -margin, -margin);
    layout.scene = layout.sheet;
    if (!layout.words) {
        layout.fit = fitInto(layout.scene, view);
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
        layout.fit = fitInto(layout.scene, view);
        return layout;
    }
    layout.fit = fitInto(layout.scene, view);
    placeLeaders(layout, view);
    layout.jointLabels = placeJointLabels(layout, view);
    return layout;
}

} // namespace tripoise
