// SPDX-License-Identifier: MIT
#include "board/rider_board.h"

#include "drawing/canvas.h"
#include "drawing/painter.h"
#include "story/rider_reasons.h"
#include "story/rider_words.h"
#include "wording/words.h"

#include <QPainter>

#include <utility>

namespace tripoise {
namespace {

constexpr double marginShare = 0.02;

} // namespace

RiderBoard::RiderBoard(QQuickItem* parent) : SessionCanvas(parent)
{
    setOpaquePainting(true);
}

void RiderBoard::answered()
{
    m_story = RiderStory();
    if (const auto shown = session() ? session()->shownCandidate() : std::nullopt) {
        const Solution& solution = session()->solution();
        if (solution.prepared && solution.tables)
            m_story = RiderStory({solution.fitting, session()->fitting().choices, solution.advice,
                                  *solution.prepared, *solution.tables, *shown,
                                  session()->besideCandidate()});
    }
    if (!m_story.has(m_which))
        m_which = WhichBike::Shown;
    emit storyChanged();
    emit whichChanged();
    update();
}

void RiderBoard::setWhich(int which)
{
    if (which < 0 || which >= static_cast<int>(allRidden.size()))
        return;
    const WhichBike ridden = allRidden[static_cast<std::size_t>(which)];
    if (ridden == m_which || !m_story.has(ridden))
        return;
    m_before = std::exchange(m_which, ridden);
    emit whichChanged();
    update();
}

void RiderBoard::step(int by)
{
    for (int next = which() + by; next >= 0 && next < static_cast<int>(allRidden.size());
         next += by) {
        if (m_story.has(allRidden[static_cast<std::size_t>(next)]))
            return setWhich(next);
        if (by == 0)
            return;
    }
}

void RiderBoard::turnOver()
{
    setWhich(static_cast<int>(m_before));
}

QString RiderBoard::title() const
{
    return m_story.has(m_which) ? riddenTitle(m_which, *m_story.of(m_which)) : QString();
}

QString RiderBoard::change() const
{
    if (!m_story.has(m_which) || !m_story.has(WhichBike::Shown))
        return {};
    return unbroken(m_which == WhichBike::Shown
                        ? m_story.verdict() + QLatin1Char(' ')
                              + setupWords(m_story.setup(), m_story.chosen())
                        : changeWords(*m_story.of(m_which), *m_story.of(WhichBike::Shown)));
}

QString RiderBoard::description() const
{
    return m_story.has(m_which) ? riddenDescription(m_which, *m_story.of(m_which)) : QString();
}

QVariantList RiderBoard::choices() const
{
    QVariantList choices;
    for (const WhichBike which : allRidden)
        if (m_story.has(which))
            choices << QVariant::fromValue(
                RiderChoice{static_cast<int>(which), riddenName(which, *m_story.of(which))});
    return choices;
}

QVariantList RiderBoard::reasons() const
{
    QVariantList reasons;
    for (const PicturedReason& reason : reasonsOf(m_story))
        reasons << QVariant::fromValue(
            RiderReason{static_cast<int>(reason.picture), reason.title, unbroken(reason.words)});
    return reasons;
}

DrawingFit RiderBoard::drawingFit() const
{
    const double margin = marginShare * std::min(width(), height());
    const QRectF scene(margin, margin, width() - 2.0 * margin, height() - 2.0 * margin);
    return fitInto(scene, m_story.bounds());
}

void RiderBoard::paint(QPainter* painter)
{
    if (!m_story.has(m_which)) {
        painter->fillRect(area(), theme().paper);
        return;
    }
    DrawingOptions options;
    options.furniture = false;
    options.words = false;
    options.viewport = drawingFit();
    options.layers.angles = false;
    // Of today's bicycle only the contacts are known.
    options.layers.bike = options.layers.wheels = options.layers.ground =
        m_which != WhichBike::Today;
    paintSideView(*painter, area(), *m_story.of(m_which), theme(), {}, options);
}

} // namespace tripoise
