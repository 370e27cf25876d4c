// SPDX-License-Identifier: MIT
#include "board/vignette.h"

#include "drawing/canvas.h"
#include "drawing/paint_rider.h"
#include "drawing/painter.h"

#include <QPainter>

#include <algorithm>

namespace tripoise {
namespace {

constexpr double besideMm = 70.0;  // around what is looked at
constexpr double lowerLimbs = 0.5; // of the thigh, above the knee

/// A box round points.
SideView::Bounds around(std::initializer_list<Point> points, double by)
{
    SideView::Bounds bounds{*points.begin(), *points.begin()};
    for (const Point& point : points) {
        bounds.low = bounds.low.cwiseMin(point);
        bounds.high = bounds.high.cwiseMax(point);
    }
    bounds.low -= Point(by, by);
    bounds.high += Point(by, by);
    return bounds;
}

SideView::Bounds boundsOf(int kind, const SideView& view)
{
    const RiderSketch& rider = *view.rider;
    switch (kind) {
    case Vignette::BackAndArms:
        return around({rider.hip, rider.shoulder, rider.head, rider.grip}, 1.6 * besideMm);
    case Vignette::Knee:
        return around({rider.near.toe, rider.near.heel, rider.far.knee, rider.near.knee,
                       rider.near.knee + lowerLimbs * (rider.near.hip - rider.near.knee),
                       rider.grip},
                      besideMm);
    default: break;
    }
    return around({view.chosen.saddle->tail, view.chosen.saddle->point, rider.grip}, besideMm);
}

void paintLines(const Canvas& c, const RiderSketch& rider)
{
    const std::vector<Point> body{rider.hip, rider.shoulder, rider.elbow, rider.grip};
    const std::vector<Point> leg{rider.near.hip, rider.near.knee, rider.near.ankle};
    c.noFill();
    c.pen(c.theme.other, 2.0, Qt::DashLine);
    c.polyline(body);
    c.polyline(leg);
}

/// How far the bar is below or above the saddle, between two levels.
void paintDrop(const Canvas& c, const SideView& view, const QColor& color, Qt::PenStyle style,
               double ahead)
{
    const Point saddle = view.chosen.saddle->point;
    const Point grip = view.rider->grip;
    const double x = grip.x() + ahead;
    c.noFill();
    c.pen(color, 1.0, Qt::DotLine);
    c.line(saddle, {x + besideMm, saddle.y()});
    c.pen(color, 2.0, style);
    c.line(grip, {x + 0.4 * besideMm, grip.y()});
    c.line({x, saddle.y()}, {x, grip.y()});
}

} // namespace

Vignette::Vignette(QQuickItem* parent) : QQuickPaintedItem(parent) {}

void Vignette::setBoard(RiderBoard* board)
{
    if (m_board == board)
        return;
    if (m_board)
        m_board->disconnect(this);
    m_board = board;
    if (m_board) {
        connect(m_board, &RiderBoard::storyChanged, this, [this] { update(); });
        connect(m_board, &RiderBoard::nightChanged, this, [this] { update(); });
    }
    emit boardChanged();
    update();
}

void Vignette::setKind(int kind)
{
    if (m_kind == kind)
        return;
    m_kind = kind;
    emit kindChanged();
    update();
}

DrawingFit Vignette::drawingFit() const
{
    const RiderStory& story = m_board->story();
    SideView::Bounds bounds = boundsOf(m_kind, *story.of(Ridden::Shown));
    if (story.has(Ridden::Beside)) {
        const SideView::Bounds beside = boundsOf(m_kind, *story.of(Ridden::Beside));
        bounds.low = bounds.low.cwiseMin(beside.low);
        bounds.high = bounds.high.cwiseMax(beside.high);
    }
    const Point size = bounds.high - bounds.low;
    const Point middle = 0.5 * (bounds.low + bounds.high);
    DrawingFit fit;
    fit.pxPerMm = std::min(width() / size.x(), height() / size.y());
    fit.origin = {0.5 * width() - fit.pxPerMm * middle.x(),
                  0.5 * height() + fit.pxPerMm * middle.y()};
    return fit;
}

void Vignette::paint(QPainter* painter)
{
    if (!m_board || !m_board->story().has(Ridden::Shown) || width() < 4.0 || height() < 4.0)
        return;
    const SideView& shown = *m_board->story().of(Ridden::Shown);
    const Theme theme = m_board->night() ? Theme::night() : Theme::day();
    const QRectF area(0.0, 0.0, width(), height());
    DrawingOptions options;
    options.furniture = false;
    options.words = false;
    options.viewport = drawingFit();
    options.layers.angles = false;
    options.layers.ground = false;
    options.layers.rider = m_kind != BarAgainstSaddle;
    painter->setClipRect(area);
    paintSideView(*painter, area, shown, theme, {}, options);

    painter->setRenderHint(QPainter::Antialiasing);
    const Canvas c{*painter, theme, *options.viewport, stepsFor(area.size(), 11.0)};
    const auto& beside = m_board->story().of(Ridden::Beside);
    if (m_kind == BarAgainstSaddle) {
        paintDrop(c, shown, theme.ink, Qt::SolidLine, besideMm);
        if (beside)
            paintDrop(c, *beside, theme.other, Qt::DashLine, 1.6 * besideMm);
    } else if (beside) {
        paintLines(c, *beside->rider);
    }
    painter->setPen(QPen(theme.hair, 1.0));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(area.adjusted(0.5, 0.5, -0.5, -0.5));
}

} // namespace tripoise
