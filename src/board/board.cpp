// SPDX-License-Identifier: MIT
#include "board/board.h"

#include "drawing/painter.h"
#include "wording/board_words.h"
#include "wording/trial_words.h"

#include <QQuickWindow>

#include <cmath>

namespace tripoise {
namespace {

constexpr double zoomStep = 1.25;
// A new drawing keeps the old scale while it fills this much of what it could.
constexpr double fillsEnough = 0.93;
constexpr int pauseMs = 250;           // in editing, before the drawing is fitted anew
constexpr double barelyMovedMm = 10.0; // of the view's edges since it was fitted

} // namespace

Board::Board(QQuickItem* parent) : SessionCanvas(parent)
{
    setAcceptedMouseButtons(Qt::LeftButton | Qt::MiddleButton);
    setAcceptHoverEvents(true);
    setActiveFocusOnTab(true);
    setOpaquePainting(true);
    setFlag(ItemIsFocusScope, false);
    m_pause.setSingleShot(true);
    m_pause.setInterval(pauseMs);
    connect(&m_pause, &QTimer::timeout, this, [this] { refit(true); });
    connect(this, &Board::lookChanged, this, [this] {
        if (std::exchange(m_fittedLetters, letters()) != letters())
            refit(false);
    });
}

void Board::sessionSet()
{
    on(&Session::fittingChanged, [this] {
        m_live.reset();
        if (session()->settled()) // else the answer will be drawn
            remake();
    });
    on(&Session::started, this, &Board::begin);
    on(&Session::speechChanged, [this] {
        emit crankChanged();
        emit handleChanged();
    });
    begin();
    SessionCanvas::sessionSet();
}

/// Another fitting: it is looked at anew.
void Board::begin()
{
    m_live.reset();
    m_crank.reset();
    m_viewport.showAll();
    m_drag.reset();
    emit crankChanged();
    viewportMoved();
}

void Board::setLayer(bool& layer, bool on)
{
    if (layer == on)
        return;
    layer = on;
    m_sceneOptions.beside = m_layers.other;
    m_sceneOptions.ridden = m_layers.ridden;
    m_settlingLabels = true;
    emit layersChanged();
    remake();
    refit(false);
    update();
}

bool Board::onContacts() const
{
    return m_sceneOptions.registration == Registration::Contacts;
}

void Board::setOnContacts(bool on)
{
    if (onContacts() == on)
        return;
    m_sceneOptions.registration = on ? Registration::Contacts : Registration::Ground;
    m_settlingLabels = true;
    emit layersChanged();
    remake();
    refit(true);
    update();
}

double Board::crankDeg() const
{
    return m_crank.value_or(bottomDeg());
}

double Board::bottomDeg() const
{
    if (m_scene.contacts())
        return 90.0 - bottomOfTurn(m_scene.contacts()->saddle.point()).deg();
    const SideView& view = m_scene.still();
    return view.drawn && view.chosen.crank ? 90.0 - angleOf(view.chosen.crank->near).deg() : 180.0;
}

void Board::setCrankDeg(double degrees)
{
    if (!std::isfinite(degrees) || m_crank == degrees || (!m_crank && crankDeg() == degrees))
        return;
    m_crank = degrees;
    emit crankChanged();
    remake();
}

QString Board::crankText() const
{
    return crankWords(crankDeg());
}

void Board::crankToBottom()
{
    if (!m_crank)
        return;
    m_crank.reset();
    m_settlingLabels = true;
    emit crankChanged();
    remake();
}

void Board::zoomIn()
{
    m_viewport.zoomBy(zoomStep, area().center());
    viewportMoved();
}

void Board::zoomOut()
{
    m_viewport.zoomBy(1.0 / zoomStep, area().center());
    viewportMoved();
}

void Board::fit()
{
    m_viewport.showAll();
    refit(false);
    viewportMoved();
}

void Board::viewportMoved()
{
    m_settlingLabels = true;
    emit viewportChanged();
    update();
}

bool Board::hasBeside() const
{
    return session() && session()->besideCandidate().has_value();
}

std::optional<QPointF> Board::placeOfHandle(Handle handle) const
{
    const auto bench = m_scene.bench();
    if (!bench || !m_scene.contacts())
        return std::nullopt;
    return drawingFit().toPx(placeOf(handle, *m_scene.contacts(), *bench));
}

QString Board::nothingText() const
{
    return nothingDrawnWords();
}

QString Board::handleText() const
{
    if (!m_focused || !m_scene.contacts())
        return {};
    const Contacts& contacts = *m_scene.contacts();
    switch (*m_focused) {
    case Handle::Grip: return gripHandleWords(contacts.grip);
    case Handle::Saddle: return saddleHandleWords(contacts.saddle);
    case Handle::Spacers:
        return spacersHandleWords(m_scene.tried() ? m_scene.tried()->setup
                                                  : m_scene.advised()->setup);
    }
    return {};
}

void Board::backToAdvised()
{
    if (!m_scene.tried())
        return;
    m_live.reset();
    Fitting next = fitting();
    pull(next.choices, std::nullopt);
    m_settlingLabels = true;
    edit(std::move(next), backToAdvisedStep());
    remake();
}

void Board::answered()
{
    m_settlingLabels = true;
    makeScene();
    if (fitHolds())
        m_pause.start();
    else
        refit(true);
    if (drawn() && isVisible() && window() && window()->isExposed()) {
        m_begun = stamp();
        m_painter.begin(paintOrder(*m_begun));
    }
    tellScene();
}

bool Board::fitHolds() const
{
    if (!m_viewport.whole())
        return false;
    const DrawingFit& fit = *m_viewport.whole();
    const SideView::Bounds bounds = m_scene.still().bounds();
    return area().contains(QRectF(fit.toPx({bounds.low.x(), bounds.high.y()}),
                                  fit.toPx({bounds.high.x(), bounds.low.y()})));
}

void Board::remake()
{
    makeScene();
    tellScene();
}

void Board::makeScene()
{
    ++m_sceneNumber;
    m_sceneOptions.crank = m_crank ? std::optional(Angle::degrees(90.0 - *m_crank)) : std::nullopt;
    if (session())
        m_scene.make(*session(), m_sceneOptions, m_live);
    else
        m_scene.clear();
}

void Board::tellScene()
{
    if (!m_scene.contacts()) {
        m_drag.reset();
        setFocused(std::nullopt);
    }
    m_readouts = readoutsOf(m_scene);
    setHoverText({}); // what was left out may be told now
    emit readoutsChanged();
    if (m_focused)
        emit handleChanged();
    if (!m_crank)
        emit crankChanged(); // the bottom of the turn lies where the saddle says
    update();
}

void Board::refit(bool patiently)
{
    const SideView& view = m_scene.still();
    if (!view.drawn || width() < 1.0 || height() < 1.0)
        return;
    const SideView::Bounds bounds = view.bounds();
    const double moved = std::max((bounds.low - m_fittedTo.low).cwiseAbs().maxCoeff(),
                                  (bounds.high - m_fittedTo.high).cwiseAbs().maxCoeff());
    if (patiently && m_viewport.whole() && moved < barelyMovedMm)
        return;
    DrawingOptions options = drawingOptions();
    options.viewport.reset();
    const DrawingFit whole = fitSideView(area(), view, {}, options);
    if (patiently && m_viewport.whole()) {
        const double ratio = m_viewport.whole()->pxPerMm / whole.pxPerMm;
        if (fitHolds() && ratio > fillsEnough && ratio <= 1.0 / fillsEnough) {
            m_fittedTo = bounds;
            return;
        }
    }
    m_viewport.setWhole(whole);
    m_fittedTo = bounds;
    emit viewportChanged();
    update();
}

void Board::geometryChange(const QRectF& now, const QRectF& before)
{
    SessionCanvas::geometryChange(now, before);
    if (now.size() == before.size())
        return;
    m_settlingLabels = true;
    refit(false);
    update();
}

void Board::itemChange(ItemChange change, const ItemChangeData& data)
{
    if (change == ItemDevicePixelRatioHasChanged)
        update();
    SessionCanvas::itemChange(change, data);
}

} // namespace tripoise
