// SPDX-License-Identifier: MIT
#include "board/board.h"

#include "wording/trial_words.h"

#include <QCursor>
#include <QMouseEvent>

#include <cmath>
#include <utility>

namespace tripoise {
namespace {

constexpr double reachPx = 14.0; // a handle is caught from as far
constexpr double leastDragPx = 2.0;
constexpr double magnetPx = 3.0;   // a contact this near to its advised place lands there
constexpr double wheelZoom = 1.15; // for one click of a wheel
constexpr double wheelClick = 120.0;
constexpr double panPx = 40.0; // by key
constexpr double fineMm = 1.0;
constexpr double coarseMm = 5.0;

double distance(const QPointF& a, const QPointF& b)
{
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

} // namespace

std::optional<Handle> Board::handleAt(const QPointF& px) const
{
    std::optional<Handle> nearest;
    double least = reachPx;
    for (const Handle handle : allHandles) {
        const auto place = placeOfHandle(handle);
        if (place && distance(*place, px) < least) {
            least = distance(*place, px);
            nearest = handle;
        }
    }
    return nearest;
}

void Board::setFocused(std::optional<Handle> handle)
{
    if (m_focused == handle)
        return;
    m_focused = handle;
    sealStep();
    emit handleChanged();
    update();
}

void Board::setHovered(std::optional<Handle> handle)
{
    if (m_hovered == handle)
        return;
    m_hovered = handle;
    setCursor(handle ? Qt::SizeAllCursor : Qt::ArrowCursor);
    update();
}

void Board::setHoverText(const QString& text)
{
    if (std::exchange(m_hoverText, text) != text)
        emit hoverChanged();
}

void Board::mousePressEvent(QMouseEvent* event)
{
    forceActiveFocus(Qt::MouseFocusReason);
    Drag drag;
    drag.from = drag.last = event->position();
    if (event->button() == Qt::LeftButton)
        drag.handle = handleAt(event->position());
    if (drag.handle)
        drag.before = m_scene.contacts();
    setFocused(drag.handle);
    setHovered(drag.handle);
    m_drag = drag;
    setKeepMouseGrab(true);
    event->accept();
}

void Board::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_drag)
        return;
    if (!m_drag->moved && distance(event->position(), m_drag->from) < leastDragPx)
        return;
    m_drag->moved = true;
    if (m_drag->handle) {
        pullTo(event->position());
    } else {
        m_viewport.panBy(event->position() - m_drag->last);
        setCursor(Qt::ClosedHandCursor);
        emit viewportChanged();
        update();
    }
    m_drag->last = event->position();
}

void Board::pullTo(const QPointF& px)
{
    const auto bench = m_scene.bench();
    if (!bench || !m_drag->before)
        return;
    const QPointF by = (px - m_drag->from) / drawingFit().pxPerMm;
    m_live = tripoise::pulled(*m_drag->before, *m_drag->handle, {by.x(), -by.y()}, *bench,
                              magnetPx / drawingFit().pxPerMm);
    remake();
}

void Board::mouseReleaseEvent(QMouseEvent* event)
{
    letGo();
    setHovered(handleAt(event->position()));
}

void Board::mouseUngrabEvent()
{
    letGo();
}

void Board::letGo()
{
    setKeepMouseGrab(false);
    if (!m_drag)
        return;
    const Drag drag = *m_drag;
    m_drag.reset();
    if (!drag.moved)
        return;
    if (drag.handle && m_live) {
        const Contacts contacts = *m_live;
        commit(contacts, {});
    } else {
        setCursor(Qt::ArrowCursor);
    }
    m_settlingLabels = true;
    update();
}

void Board::commit(const Contacts& contacts, const QString& mergeKey)
{
    const auto bench = m_scene.bench();
    if (!bench)
        return;
    const FrameSize frame = m_scene.size()->frame;
    const bool saddle = m_focused == Handle::Saddle;
    Fitting next = fitting();
    pull(next.choices, trialOf(contacts, bench->advised, frame));
    edit(std::move(next), pulledStep(saddle), mergeKey);
    m_live.reset();
    remake();
}

void Board::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (!handleAt(event->position()))
        fit();
    event->accept();
}

void Board::wheelEvent(QWheelEvent* event)
{
    if (m_drag || !drawn() || event->angleDelta().y() == 0)
        return;
    m_viewport.zoomBy(std::pow(wheelZoom, event->angleDelta().y() / wheelClick), event->position());
    m_settlingLabels = true;
    emit viewportChanged();
    update();
    event->accept();
}

void Board::hoverMoveEvent(QHoverEvent* event)
{
    if (!m_drag)
        setHovered(handleAt(event->position()));
    setHoverText(!m_drag && m_leftOutBox.contains(event->position())
                     ? m_leftOut.join(QLatin1Char('\n'))
                     : QString());
}

void Board::hoverLeaveEvent(QHoverEvent*)
{
    if (!m_drag)
        setHovered(std::nullopt);
    setHoverText({});
}

bool Board::walkHandles(bool onwards)
{
    if (!m_scene.contacts())
        return false;
    const int count = static_cast<int>(allHandles.size());
    const int at = m_focused ? static_cast<int>(*m_focused) : onwards ? -1 : count;
    const int next = at + (onwards ? 1 : -1);
    if (next < 0 || next >= count) {
        setFocused(std::nullopt);
        return false;
    }
    setFocused(allHandles[static_cast<std::size_t>(next)]);
    return true;
}

void Board::nudge(const Point& by)
{
    const auto bench = m_scene.bench();
    if (!bench || !m_focused || m_drag)
        return;
    const Contacts contacts = nudged(*m_scene.contacts(), *m_focused, by, *bench);
    commit(contacts, QStringLiteral("pull %1").arg(static_cast<int>(*m_focused)));
}

void Board::keyPressEvent(QKeyEvent* event)
{
    const double step = event->modifiers() & Qt::ShiftModifier ? coarseMm : fineMm;
    const auto arrow = [&](double x, double y) {
        if (m_focused) {
            nudge({step * x, step * y});
        } else {
            m_viewport.panBy({-panPx * x, panPx * y});
            viewportMoved();
        }
    };
    event->accept();
    switch (event->key()) {
    case Qt::Key_Left: return arrow(-1.0, 0.0);
    case Qt::Key_Right: return arrow(1.0, 0.0);
    case Qt::Key_Up: return arrow(0.0, 1.0);
    case Qt::Key_Down: return arrow(0.0, -1.0);
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
        if (!walkHandles(event->key() == Qt::Key_Tab))
            event->ignore();
        return;
    case Qt::Key_Escape:
        if (m_drag && m_drag->handle) { // as it was before the pull
            m_drag.reset();
            m_live.reset();
            remake();
        } else if (m_focused) {
            setFocused(std::nullopt);
        } else {
            event->ignore();
        }
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        if (!(event->modifiers() & Qt::ControlModifier))
            return zoomIn();
        break;
    case Qt::Key_Minus:
        if (!(event->modifiers() & Qt::ControlModifier))
            return zoomOut();
        break;
    case Qt::Key_F: return fit();
    case Qt::Key_Delete:
    case Qt::Key_Backspace: return backToAdvised();
    default: break;
    }
    event->ignore();
}

void Board::focusInEvent(QFocusEvent* event)
{
    QQuickPaintedItem::focusInEvent(event);
    if (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason) {
        setFocused(std::nullopt);
        walkHandles(event->reason() == Qt::TabFocusReason);
    }
    update();
}

void Board::focusOutEvent(QFocusEvent* event)
{
    QQuickPaintedItem::focusOutEvent(event);
    sealStep();
    update();
}

} // namespace tripoise
