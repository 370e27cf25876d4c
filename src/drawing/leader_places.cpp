// SPDX-License-Identifier: MIT
#include "drawing/leader_places.h"

#include "drawing/labels.h"
#include "drawing/layout.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

/// Over the words on the right, or over those on the left where there are no others.
void placeHeading(DrawingLayout& layout, const std::vector<Interval>& intervals, double column,
                  double row)
{
    const double width =
        widthOf(layout.leadersHeading, fontOf(layout.steps.small, QFont::DemiBold)) + 2.0;
    if (!intervals.empty()) {
        layout.leadersHeadingBox = {column, intervals.front().top - row,
                                    std::min(width, layout.sheet.right() - column), row};
        return;
    }
    const QRectF& label = layout.leaders.front().label;
    layout.leadersHeadingBox = {std::max(layout.sheet.left(), label.right() - width),
                                label.top() - row, width, row};
}

/// Behind the saddle, level with it; false where there is no room.
bool placeLeftwards(LeaderPlace& place, const DrawingLayout& layout)
{
    const QSizeF size(widestOf(place.rows, fontOf(layout.steps.small)),
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

} // namespace

std::vector<LeaderPlace> gathered(const DrawingLayout& layout, const std::vector<Leader>& leaders)
{
    std::vector<LeaderPlace> places;
    const Point* before = nullptr;
    for (const Leader& leader : leaders) {
        if (!before || *before != leader.at) {
            LeaderPlace place;
            place.kind = leader.kind;
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

double widestOf(const QStringList& rows, const QFont& font)
{
    double width = 0.0;
    for (const QString& row : rows)
        width = std::max(width, widthOf(row, font));
    return width + 2.0;
}

double widthOf(const QString& text, const QFont& font)
{
    return QFontMetricsF(font).horizontalAdvance(text);
}

double leadersWidth(const DrawingLayout& layout, const SideView& view)
{
    const Steps& steps = layout.steps;
    double width = widthOf(layout.leadersHeading, fontOf(steps.small, QFont::DemiBold));
    for (const Leader& leader : view.leaders)
        width = std::max(width, widthOf(leaderLabel(leader), fontOf(steps.small)));
    return width > 0.0 ? width + 2.5 * steps.small : 0.0;
}

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

void placeLeaders(DrawingLayout& layout, const SideView& view)
{
    layout.leaders = gathered(layout, view.leaders);
    const Steps& steps = layout.steps;
    const double row = rowPitch * steps.small;
    const double column = layout.fit.toPx(view.bounds().high).x() + 2.5 * steps.small;
    std::vector<Interval> intervals;
    double widest = widthOf(layout.leadersHeading, fontOf(steps.small, QFont::DemiBold));
    for (LeaderPlace& place : layout.leaders) {
        place.leftwards = place.leftwards && placeLeftwards(place, layout);
        if (place.leftwards)
            continue;
        const double height = (static_cast<double>(place.rows.size()) + leaderGap) * row;
        intervals.push_back({place.at.y() - 0.5 * row, height});
        widest = std::max(widest, widestOf(place.rows, fontOf(steps.small)));
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
        placeHeading(layout, intervals, column, row);
}

} // namespace tripoise
