// SPDX-License-Identifier: MIT
#include "board/rider_board.h"

#include "board/vignette.h"
#include "drawing/canvas.h"
#include "drawing/painter.h"
#include "wording/rider_words.h"
#include "wording/words.h"

#include <QPainter>

#include <utility>

namespace tripoise {
namespace {

constexpr double marginShare = 0.02;
constexpr qsizetype mostReasons = 3;

Vignette::Kind pictureOf(std::optional<Consideration> by)
{
    switch (by.value_or(Consideration::StemLength)) {
    case Consideration::Posture: return Vignette::BackAndArms;
    case Consideration::Setback:
    case Consideration::Crank: return Vignette::Knee;
    case Consideration::Standover: return Vignette::Standing;
    case Consideration::Agility:
    case Consideration::Compactness:
    case Consideration::RiderHeight: return Vignette::WholeBicycle;
    case Consideration::ToeOverlap: return Vignette::ToeAndWheel;
    default: return Vignette::BarAgainstSaddle; // what carries the bar
    }
}

QString titleOf(Vignette::Kind kind)
{
    switch (kind) {
    case Vignette::BackAndArms: return backTitle();
    case Vignette::Knee: return kneeTitle();
    case Vignette::KneeAndBar: return kneeAndBarTitle();
    case Vignette::ToeAndWheel: return toeTitle();
    case Vignette::BarAgainstSaddle: return barTitle();
    case Vignette::Standing: return standingTitle();
    case Vignette::WholeBicycle: return wholeTitle();
    }
    return {};
}

} // namespace

RiderBoard::RiderBoard(QQuickItem* parent) : SessionCanvas(parent)
{
    setOpaquePainting(true);
}

void RiderBoard::answered()
{
    m_story = RiderStory();
    if (session())
        m_story.make(*session());
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
    if (!m_story.has(WhichBike::Shown))
        return reasons;
    const SideView& shown = *m_story.of(WhichBike::Shown);
    const SideView* beside =
        m_story.has(WhichBike::Beside) ? &*m_story.of(WhichBike::Beside) : nullptr;
    QList<int> kinds;
    const auto add = [&](Vignette::Kind kind, const QString& words) {
        if (reasons.size() == mostReasons || kinds.contains(kind))
            return;
        kinds << kind;
        reasons << QVariant::fromValue(RiderReason{kind, titleOf(kind), unbroken(words)});
    };
    // What the decision says, in its words; then what may hurt; then what is as it should be.
    for (const ToldReason& reason : m_story.reasons())
        if (const Vignette::Kind kind = pictureOf(reason.by); canBeDrawn(kind))
            add(kind, reason.sentence);
    if (m_story.kneeAtBar())
        add(Vignette::KneeAndBar, kneeAndBarWords(shown, beside));
    if (m_story.toeNearWheel() && canBeDrawn(Vignette::ToeAndWheel))
        add(Vignette::ToeAndWheel,
            toeWords(*m_story.toeRoom(WhichBike::Shown), m_story.toeRoom(WhichBike::Beside)));
    add(Vignette::BackAndArms, backWords(shown, beside));
    add(Vignette::Knee, kneeWords(shown, beside));
    add(Vignette::BarAgainstSaddle, barWords(shown, beside));
    return reasons;
}

bool RiderBoard::canBeDrawn(int kind) const
{
    if (kind == Vignette::ToeAndWheel)
        return m_story.toeRoom(WhichBike::Shown).has_value();
    return kind != Vignette::Standing || m_story.standing(WhichBike::Shown).has_value();
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
