// SPDX-License-Identifier: MIT
#include "board/top_view.h"

#include "wording/board_words.h"
#include "wording/plan_words.h"
#include "wording/ride_rows.h"
#include "wording/words.h"

#include <QCursor>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double mostDeg = 80.0; // a bar hardly turns further
constexpr double fineDeg = 1.0;
constexpr double coarseDeg = 5.0;
constexpr double crankStepDeg = 5.0;
constexpr double aroundShoeMm = 60.0;
constexpr double aroundBarMm = 60.0;

double nearTo(const std::vector<Point>& line, const Point& at)
{
    double least = 1e9;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Point way = line[i + 1] - line[i];
        const double square = std::max(1e-9, way.squaredNorm());
        const double share = std::clamp((at - line[i]).dot(way) / square, 0.0, 1.0);
        least = std::min(least, (at - line[i] - share * way).norm());
    }
    return least;
}

} // namespace

TopView::TopView(QQuickItem* parent) : SessionPicture(parent)
{
    setAcceptedMouseButtons(Qt::LeftButton);
    setAcceptHoverEvents(true);
    setActiveFocusOnTab(true);
}

void TopView::sessionSet()
{
    m_pose.reset();
    on(&Session::started, [this] { m_pose.reset(); });
    SessionPicture::sessionSet();
}

void TopView::make(const Solution* answer)
{
    m_view = PlanView();
    m_told.clear();
    if (const auto shown = answer ? session()->shownCandidate() : std::nullopt) {
        const Candidate& candidate = answer->advice.candidates[*shown];
        m_view = makePlanView(candidate, answer->advice.person, *answer->prepared, *answer->tables);
        if (candidate.ride)
            m_told = unbroken(toeSentence(*candidate.ride));
    }
    measure();
}

void TopView::measure()
{
    m_gapMm = m_view.drawn ? gapMm(m_view, pose()) : 0.0;
}

void TopView::turnTo(const std::optional<PlanPose>& pose)
{
    if (pose == m_pose)
        return;
    m_pose = pose;
    measure();
    emit changed();
    update();
}

void TopView::turn(const PlanPose& pose)
{
    if (pose != this->pose())
        turnTo(pose);
}

double TopView::mostSteerDeg() const
{
    return mostDeg;
}

void TopView::setSteerDeg(double degrees)
{
    if (std::isfinite(degrees))
        turn({Angle::degrees(std::clamp(degrees, -mostDeg, mostDeg)), pose().crank});
}

double TopView::crankDeg() const
{
    const double clockwise = std::fmod(90.0 - pose().crank.deg(), 360.0);
    return clockwise < 0.0 ? clockwise + 360.0 : clockwise;
}

void TopView::setCrankDeg(double degrees)
{
    if (std::isfinite(degrees))
        turn({pose().steer, Angle::degrees(90.0 - degrees)});
}

void TopView::toNearest()
{
    turnTo(std::nullopt);
}

QString TopView::steerText() const
{
    return steerWords(steerDeg());
}

QString TopView::crankText() const
{
    return crankWords(crankDeg());
}

QString TopView::gapText() const
{
    return m_view.drawn ? gapWords(m_gapMm, m_view.mudguard) : QString();
}

QString TopView::nothingText() const
{
    return m_view.drawn ? QString() : nothingDrawnWords();
}

QString TopView::description() const
{
    return m_view.drawn ? planWords(steerDeg(), crankText(), m_gapMm, m_view.mudguard)
                        : nothingDrawnWords();
}

DrawingFit TopView::drawingFit() const
{
    return fitPlan(area(), m_view, letters());
}

void TopView::paint(QPainter* painter)
{
    paintPlan(*painter, area(), m_view, pose(), theme(), {gapText(), letters()});
}

std::optional<TopView::Grabbed> TopView::grabbedAt(const Point& at) const
{
    if (!m_view.drawn)
        return std::nullopt;
    for (const Side side : {Side::Right, Side::Left})
        if (nearTo(shoeLine(m_view, pose(), side), at) < 0.5 * aroundShoeMm
            || (pedalAt(m_view, pose(), side) - at).norm() < aroundShoeMm)
            return Grabbed::Crank;
    if (nearTo(barLine(m_view, pose()), at) < aroundBarMm)
        return Grabbed::Bar;
    if (nearTo(wheelLine(m_view, pose()), at) < aroundShoeMm)
        return Grabbed::Wheel;
    return std::nullopt;
}

void TopView::mousePressEvent(QMouseEvent* event)
{
    forceActiveFocus(Qt::MouseFocusReason);
    const Point at = drawingFit().toMm(event->position());
    m_drag.reset();
    if (const auto what = grabbedAt(at))
        m_drag = Drag{*what, at};
    setKeepMouseGrab(m_drag.has_value());
    event->accept();
}

void TopView::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_drag)
        return;
    const Point at = drawingFit().toMm(event->position());
    const Point before = m_drag->last;
    m_drag->last = at;
    PlanPose next = pose();
    if (m_drag->what == Grabbed::Crank) {
        // Back is pedalling on: at the level crank a foot only goes back either way.
        next.crank = next.crank + Angle::radians((at.x() - before.x()) / m_view.pedalling.crankMm);
    } else {
        const Point pivot(m_drag->what == Grabbed::Bar
                              ? m_view.headTop.x()
                              : m_view.wheel.axle.x() - m_view.wheel.offsetMm,
                          0.0);
        const Angle by = angleOf(at - pivot) - angleOf(before - pivot);
        const double turned = std::remainder(by.deg(), 360.0);
        next.steer = Angle::degrees(std::clamp(next.steer.deg() + turned, -mostDeg, mostDeg));
    }
    turn(next);
}

void TopView::mouseReleaseEvent(QMouseEvent*)
{
    m_drag.reset();
    setKeepMouseGrab(false);
}

void TopView::mouseDoubleClickEvent(QMouseEvent*)
{
    m_drag.reset();
    toNearest();
}

void TopView::mouseUngrabEvent()
{
    m_drag.reset();
    setKeepMouseGrab(false);
}

void TopView::hoverMoveEvent(QHoverEvent* event)
{
    const auto what = grabbedAt(drawingFit().toMm(event->position()));
    setCursor(!what                     ? Qt::ArrowCursor
              : *what == Grabbed::Crank ? Qt::SizeHorCursor
                                        : Qt::SizeAllCursor);
}

void TopView::keyPressEvent(QKeyEvent* event)
{
    const bool coarse = event->modifiers().testFlag(Qt::ShiftModifier);
    const double steer = coarse ? coarseDeg : fineDeg;
    switch (event->key()) {
    case Qt::Key_Left: setSteerDeg(steerDeg() + steer); break;
    case Qt::Key_Right: setSteerDeg(steerDeg() - steer); break;
    case Qt::Key_Down: setCrankDeg(crankDeg() + crankStepDeg); break;
    case Qt::Key_Up: setCrankDeg(crankDeg() - crankStepDeg); break;
    case Qt::Key_Home: toNearest(); break;
    default: event->ignore(); return;
    }
    event->accept();
}

} // namespace tripoise
