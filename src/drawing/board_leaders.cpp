// SPDX-License-Identifier: MIT
#include "drawing/board_leaders.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise::drawing {
namespace {

/// What a rider feels first; the parts that bring it about last.
constexpr std::array byWeight{LeaderKind::BarHigher,      LeaderKind::BarFurther,
                              LeaderKind::SaddleHigher,   LeaderKind::SaddleFurtherBack,
                              LeaderKind::HeadTubeHigher, LeaderKind::FrontWheelFurther,
                              LeaderKind::TopTubeHigher,  LeaderKind::StemLonger,
                              LeaderKind::SpacersMore,    LeaderKind::CrankLonger};

constexpr double aheadOfArm = 9.0; // of the letters' height

std::ptrdiff_t rankOf(const Leader& leader)
{
    return std::find(byWeight.begin(), byWeight.end(), leader.kind) - byWeight.begin();
}

bool ofSaddle(const Leader& leader)
{
    return leader.kind == LeaderKind::SaddleHigher || leader.kind == LeaderKind::SaddleFurtherBack;
}

class Column {
public:
    Column(DrawingLayout& layout, const SideView& view, const Clearance& clearance)
        : m_layout(layout), m_view(view), m_clearance(clearance), m_small(layout.steps.small),
          m_row(rowPitch * layout.steps.small)
    {
    }

    /// All of them in one run of free rows; false where there is none.
    bool place(const std::vector<Leader>& leaders, const QString& more)
    {
        std::vector<LeaderPlace> places = gathered(m_layout, leaders);
        const QFont small = fontOf(m_small);
        const double heading =
            widthOf(m_layout.leadersHeading, fontOf(m_small, QFont::DemiBold)) + 2.0;
        double width = std::max(heading, more.isEmpty() ? 0.0 : widthOf(more, small) + 2.0);
        double rows = 1.0 + (more.isEmpty() ? 0.0 : 1.0);
        for (const LeaderPlace& place : places) {
            width = std::max(width, widestOf(place.rows, small));
            rows += static_cast<double>(place.rows.size()) + leaderGap;
        }
        const QRectF& board = m_clearance.board();
        const double far = m_layout.fit.toPx(m_view.bounds().high).x();
        // Clear of the drawing, with room for a joint's label between where there is enough.
        const double nearest = far + 2.0 * m_small;
        const double spare = board.right() - width - nearest;
        const double left = nearest + std::min(spare, aheadOfArm * m_small);
        if (left < board.left())
            return false;
        const auto free = freeRun(left, width, rows * m_row, places);
        if (!free)
            return false;

        std::vector<Interval> intervals;
        for (const LeaderPlace& place : places)
            intervals.push_back({place.at.y() - 0.5 * m_row,
                                 (static_cast<double>(place.rows.size()) + leaderGap) * m_row});
        spread(intervals, free->top + m_row,
               free->top + free->height - (more.isEmpty() ? 0.0 : m_row));
        const QRectF title(left, intervals.front().top - m_row, heading, m_row);
        const QRectF rest(left, intervals.back().top + intervals.back().height, width,
                          more.isEmpty() ? 0.0 : m_row);
        for (std::size_t i = 0; i < places.size(); ++i) {
            places[i].label = {left, intervals[i].top, width,
                               intervals[i].height - leaderGap * m_row};
            tie(places[i],
                i + 1 == places.size() ? std::max(rest.bottom(), places[i].label.bottom()) : 0.0);
        }
        if (!tiesAreClear(places, title, rest))
            return false;
        m_layout.leaders.insert(m_layout.leaders.end(), places.begin(), places.end());
        m_layout.leadersHeadingBox = title;
        if (!more.isEmpty()) {
            m_layout.moreLeaders = more;
            m_layout.moreLeadersBox = rest;
        }
        return true;
    }

private:
    /// Rows one below the other that are clear across a width: of the runs that are high enough the
    /// one nearest to what it speaks of.
    std::optional<Interval> freeRun(double left, double width, double height,
                                    const std::vector<LeaderPlace>& places) const
    {
        const double aside = 0.5 * m_small;
        const double step = 0.5 * m_row;
        double wanted = 0.0;
        for (const LeaderPlace& place : places)
            wanted += place.at.y() / static_cast<double>(places.size());
        std::optional<Interval> nearest;
        double least = 0.0;
        Interval run{m_clearance.board().top(), 0.0};
        const auto close = [&] {
            if (run.height < height)
                return;
            const double away = std::abs(
                std::clamp(wanted, run.top + 0.5 * height, run.top + run.height - 0.5 * height)
                - wanted);
            if (!nearest || away < least) {
                nearest = run;
                least = away;
            }
        };
        double y = run.top;
        for (; y + step <= m_layout.scene.bottom(); y += step) {
            const QRectF band(left - aside, y, width + aside, step);
            if (m_clearance.clear(band.adjusted(0.0, 0.1, -0.1, -0.1))) {
                run.height = y + step - run.top;
                continue;
            }
            close();
            run = {y + step, 0.0};
        }
        close();
        return nearest;
    }

    /// From a point up or down at a slant, then level to the words. To the lowest words, past
    /// whose bottom a line may run, from below where their point lies under the column.
    void tie(LeaderPlace& place, double columnBottom) const
    {
        const double level = place.label.top() + 0.5 * m_row;
        place.end = {place.label.left() - 0.5 * m_small, level};
        const bool wheel = place.kind == LeaderKind::FrontWheelFurther;
        if (wheel)
            place.at = onTyre(place.end);
        const double away = place.end.x() - place.at.x();
        if (away > 0.0) {
            const double run = std::min(0.7 * std::abs(level - place.at.y()),
                                        std::max(0.0, away - m_layout.steps.body));
            place.knee = {place.at.x() + run, level};
            return;
        }
        const bool lowest = columnBottom > 0.0;
        if (lowest && columnBottom <= place.label.bottom())
            place.end = {
                std::clamp(place.at.x(), place.label.left() + m_small, place.label.center().x()),
                place.label.bottom()};
        else if (lowest) {
            place.knee = {place.end.x(), columnBottom};
            return;
        }
        if (wheel)
            place.at = onTyre(place.end);
        place.knee = place.end;
    }

    /// Whether no line runs over words of the column.
    static bool tiesAreClear(const std::vector<LeaderPlace>& places, const QRectF& title,
                             const QRectF& rest)
    {
        const auto over = [](const LeaderPlace& tied, const QRectF& words) {
            const QRectF inner = words.adjusted(0.5, 0.5, -0.5, -0.5);
            return !words.isEmpty()
                   && (touches(inner, {tied.at, tied.knee})
                       || touches(inner, {tied.knee, tied.end}));
        };
        return std::none_of(places.begin(), places.end(), [&](const LeaderPlace& tied) {
            return over(tied, title) || over(tied, rest)
                   || std::any_of(places.begin(), places.end(), [&](const LeaderPlace& other) {
                          return over(tied, other.label);
                      });
        });
    }

    QPointF wheelCentre() const
    {
        return m_layout.fit.toPx(m_view.other->front.axle + m_view.otherOffset);
    }
    double wheelRadius() const { return m_layout.fit.pxPerMm * m_view.other->front.radiusMm; }
    /// The point of the other's front tyre, ahead and above, that is nearest to where a line comes
    /// from.
    QPointF onTyre(const QPointF& from) const
    {
        const QPointF way = from - wheelCentre();
        constexpr double steepest = 75.0;
        const double degrees =
            std::clamp(Angle::radians(std::atan2(-way.y(), way.x())).deg(), 0.0, steepest);
        const Point ahead = along(Angle::degrees(degrees));
        return wheelCentre() + wheelRadius() * QPointF(ahead.x(), -ahead.y());
    }

    DrawingLayout& m_layout;
    const SideView& m_view;
    const Clearance& m_clearance;
    double m_small;
    double m_row;
};

/// Behind the saddle: level with it if that is clear, else higher or lower, there also up to the
/// board's edge.
std::optional<LeaderPlace> behindSaddle(LeaderPlace place, const DrawingLayout& layout,
                                        const Clearance& clearance)
{
    const double small = layout.steps.small;
    const double row = rowPitch * small;
    const QSizeF size(widestOf(place.rows, fontOf(small)),
                      static_cast<double>(place.rows.size()) * row);
    const double hung = place.at.x() - 2.5 * small - size.width();
    constexpr int mostSteps = 14;
    for (int step = 0; step <= 2 * mostSteps; ++step) {
        // 0, half a row down, half a row up, a row down, …
        const double lower = 0.5 * row * (step % 2 == 1 ? (step + 1) / 2 : -step / 2);
        const double left = std::max(hung, clearance.board().left());
        place.label = {QPointF(left, place.at.y() - 0.5 * size.height() + lower), size};
        if (!clearance.clear(place.label))
            continue;
        const QRectF around = place.label.adjusted(0.0, 0.0, 0.4 * small, 0.0);
        if (around.contains(place.at))
            continue;
        place.end = {std::min(around.right(), place.at.x()),
                     std::clamp(place.at.y(), place.label.top(), place.label.bottom())};
        if (around.right() < place.at.x())
            place.end.setY(place.label.center().y());
        place.knee = place.end;
        return place;
    }
    return std::nullopt;
}

/// Heading and count for leaders of the saddle where the column has none; without room for those,
/// there are no leaders.
bool placeSaddleAlone(DrawingLayout& layout, const Clearance& clearance)
{
    const double row = rowPitch * layout.steps.small;
    const auto widthIn = [&layout](const QString& text, QFont::Weight weight) {
        return widthOf(text, fontOf(layout.steps.small, weight)) + 2.0;
    };
    const QRectF& label = layout.leaders.front().label;
    const double heading = widthIn(layout.leadersHeading, QFont::DemiBold);
    layout.leadersHeadingBox = {label.right() - heading, label.top() - row, heading, row};
    bool room = clearance.clear(layout.leadersHeadingBox);
    if (!layout.leftOut.isEmpty()) {
        layout.moreLeaders = leadersLeftOut(std::size_t(layout.leftOut.size()));
        const double more = widthIn(layout.moreLeaders, QFont::Normal);
        layout.moreLeadersBox = {label.right() - more, label.bottom(), more, row};
        room = room && clearance.clear(layout.moreLeadersBox);
    }
    if (room)
        return true;
    layout.leaders.clear();
    layout.leadersHeadingBox = layout.moreLeadersBox = {};
    layout.moreLeaders.clear();
    return false;
}

} // namespace

void placeLeadersOnBoard(DrawingLayout& layout, const SideView& view, Clearance& clearance)
{
    std::vector<Leader> column;
    std::vector<Leader> saddle;
    QStringList untold;
    // What is looked past, on a board zoomed in, is not told. An edge of the drawing may be the
    // board's.
    const QRectF seen = layout.sheet.adjusted(-1.0, -1.0, 1.0, 1.0);
    for (const Leader& leader : view.leaders)
        if (seen.contains(layout.fit.toPx(leader.at)))
            (ofSaddle(leader) ? saddle : column).push_back(leader);
    for (const LeaderPlace& place : gathered(layout, saddle)) {
        if (const auto placed = behindSaddle(place, layout, clearance))
            layout.leaders.push_back(*placed);
        else
            untold << place.rows;
    }
    const auto first = layout.leaders.size();
    Column places(layout, view, clearance);
    while (!column.empty()
           && !places.place(
               column, untold.isEmpty() ? QString() : leadersLeftOut(std::size_t(untold.size())))) {
        const auto last =
            std::max_element(column.begin(), column.end(), [](const Leader& a, const Leader& b) {
                return rankOf(a) < rankOf(b);
            });
        untold << leaderLabel(*last);
        column.erase(last);
    }
    layout.leftOut = untold;
    if (layout.leaders.empty())
        return;
    if (column.empty() && !placeSaddleAlone(layout, clearance))
        return;
    for (std::size_t i = 0; i < layout.leaders.size(); ++i) {
        const LeaderPlace& leader = layout.leaders[i];
        clearance.take(leader.label);
        clearance.takeLine({leader.at, leader.knee});
        if (i >= first)
            clearance.takeLine({leader.knee, leader.end});
    }
    clearance.take(layout.leadersHeadingBox);
    clearance.take(layout.moreLeadersBox);
}

} // namespace tripoise::drawing
