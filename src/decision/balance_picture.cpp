// SPDX-License-Identifier: MIT
#include "decision/balance_picture.h"

#include "drawing/canvas.h"
#include "drawing/painter.h"
#include "wording/ride_chart_words.h"

#include <QFontMetricsF>
#include <QPainter>

namespace tripoise {
namespace {

constexpr double rowOfLetters = 1.7;
constexpr double arrowLetters = 3.2; // for all of the weight on one wheel
constexpr double markLetters = 0.75; // radius
constexpr double quarter = 90.0 * 16.0;

/// The mark of a centre of mass, quartered, as engineers draw it.
void paintCentre(const Canvas& c, const QPointF& at, double radius)
{
    const QRectF box(at.x() - radius, at.y() - radius, 2.0 * radius, 2.0 * radius);
    c.pen(c.theme.ink, c.steps.thin);
    c.fill(c.theme.paper);
    c.painter.drawEllipse(box);
    c.fill(c.theme.ink);
    c.painter.drawPie(box, 0, static_cast<int>(quarter));
    c.painter.drawPie(box, static_cast<int>(2.0 * quarter), static_cast<int>(quarter));
}

/// An arrow up at a wheel's contact, as long as its share; the share below it.
void paintShare(const Canvas& c, const Point& contact, double share, double letters)
{
    const QPointF foot = c.px(contact);
    const QPointF head = foot - QPointF(0.0, arrowLetters * share * letters);
    const double barb = 0.35 * letters;
    c.pen(c.theme.ink, 2.0);
    c.painter.drawLine(foot, head);
    c.painter.drawLine(head, head + QPointF(-barb, barb));
    c.painter.drawLine(head, head + QPointF(barb, barb));
    const QFont font = fontOf(1.15 * letters, QFont::DemiBold);
    const QFontMetricsF metrics(font);
    const QString words = wheelCarriesWords(share);
    c.painter.setFont(font);
    c.painter.setPen(c.theme.ink);
    c.painter.drawText(QPointF(foot.x() - 0.5 * metrics.horizontalAdvance(words),
                               foot.y() + 0.25 * letters + metrics.ascent()),
                       words);
}

} // namespace

void BalancePicture::make(const Solution* answer)
{
    m_view = SideView();
    m_balance.reset();
    m_description.clear();
    const auto shown = answer ? session()->shownCandidate() : std::nullopt;
    if (!shown)
        return;
    const Candidate& candidate = answer->advice.candidates[*shown];
    if (!candidate.ride || !candidate.ride->balance)
        return;
    m_balance = candidate.ride->balance;
    m_description = balanceWords(*m_balance);
    Shown alone;
    alone.chosen = *shown;
    alone.crank = Angle(); // level, as the masses are reckoned
    m_view = makeSideView(answer->advice, alone, answer->fitting.riding.mix, *answer->prepared,
                          *answer->tables);
}

void BalancePicture::paint(QPainter* painter)
{
    const double under = rowOfLetters * letters();
    const QRectF all = this->area();
    const QRectF area = all.adjusted(0.0, 0.0, 0.0, -under);
    if (!m_balance || !m_view.drawn || area.height() < 2.0 * under)
        return;
    const Theme theme = this->theme();
    DrawingOptions options;
    options.furniture = false;
    options.words = false;
    options.lettersPx = letters();
    options.layers.angles = false;
    options.layers.other = false;
    options.layers.ridden = false;
    painter->setRenderHint(QPainter::Antialiasing);
    painter->fillRect(all, theme.paper);
    paintSideView(*painter, area, m_view, theme, {}, options);
    const DrawingFit fit = fitSideView(area, m_view, {}, options);
    const Canvas c{*painter, theme, fit, stepsFor(area.size(), letters())};
    const double ground = m_view.chosen.groundY;
    const Point rear(m_view.chosen.rear.axle.x(), ground);
    const Point centre = rear + m_balance->centre;
    c.pen(theme.ink, 1.0, Qt::DashLine);
    c.line(centre, Point(centre.x(), ground));
    paintShare(c, rear, 1.0 - m_balance->frontShare(), letters());
    paintShare(c, rear + Point(m_balance->wheelbaseMm, 0.0), m_balance->frontShare(), letters());
    paintCentre(c, c.px(centre), markLetters * letters());
    const QFont font = fontOf(letters());
    const QFontMetricsF metrics(font);
    const QString words = centreWords(*m_balance);
    QRectF box(QPointF(),
               QSizeF(metrics.horizontalAdvance(words) + 0.6 * letters(), 1.3 * letters()));
    box.moveTopLeft(c.px(centre) + QPointF(1.1 * letters(), -0.65 * letters()));
    painter->setPen(Qt::NoPen);
    painter->setBrush(theme.paper);
    painter->drawRect(box);
    painter->setFont(font);
    painter->setPen(theme.ink);
    painter->drawText(box, Qt::AlignCenter, words);
}

} // namespace tripoise
