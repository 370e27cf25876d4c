// SPDX-License-Identifier: MIT
#include "board/turn_chart.h"

#include "drawing/steps.h"
#include "wording/board_words.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double mostDeg = 130.0;        // no joint of the leg is drawn beyond
constexpr double aroundBottomDeg = 14.0; // how wide the range at the bottom is shown

/// Clockwise from the top.
double fromTop(const TurnStep& step)
{
    const double degrees = 90.0 - step.crank.deg();
    return degrees < 0.0 ? degrees + 360.0 : degrees;
}

std::vector<TurnStep> inOrder(const std::vector<TurnStep>& turn)
{
    std::vector<TurnStep> ordered = turn;
    std::sort(ordered.begin(), ordered.end(),
              [](const TurnStep& a, const TurnStep& b) { return fromTop(a) < fromTop(b); });
    return ordered;
}

} // namespace

TurnChart::TurnChart(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void TurnChart::setBoard(Board* board)
{
    if (m_board == board)
        return;
    if (m_board)
        m_board->disconnect(this);
    m_board = board;
    if (m_board) {
        connect(m_board, &Board::readoutsChanged, this, &TurnChart::follow);
        connect(m_board, &Board::crankChanged, this, &TurnChart::follow);
        connect(m_board, &Board::lookChanged, this, &TurnChart::follow);
    }
    emit boardChanged();
    follow();
}

void TurnChart::follow()
{
    QString description;
    if (m_board && m_board->scene().view().rider)
        description = turnWords(m_board->scene().view().rider->turn);
    if (description != m_description) {
        m_description = description;
        emit descriptionChanged();
    }
    update();
}

QPointF TurnChart::placeOf(double crankDeg, double angleDeg) const
{
    return {crankDeg / 360.0 * width(), height() * (1.0 - angleDeg / mostDeg)};
}

void TurnChart::paint(QPainter* painter)
{
    if (!m_board || !m_board->scene().view().rider)
        return;
    const Theme theme = m_board->night() ? Theme::night() : Theme::day();
    const RiderSketch& rider = *m_board->scene().view().rider;
    const std::vector<TurnStep> turn = inOrder(rider.turn);
    painter->setRenderHint(QPainter::Antialiasing);

    // Level and upright cranks, the floor.
    painter->setPen(QPen(theme.hair, 0.8));
    for (const double at : {0.0, 90.0, 180.0, 270.0, 360.0})
        painter->drawLine(placeOf(at, 0.0), placeOf(at, mostDeg));
    painter->drawLine(placeOf(0.0, 0.0), placeOf(360.0, 0.0));

    // The knee's range, where it counts.
    for (const JointAngle& angle : rider.angles) {
        if (angle.joint != Joint::Knee)
            continue;
        const double bottom = m_board->bottomDeg();
        const QRectF range(placeOf(bottom - aroundBottomDeg, angle.high.deg()),
                           placeOf(bottom + aroundBottomDeg, angle.low.deg()));
        QColor shade = angle.place() == RangePlace::Outside ? theme.hazard : theme.range;
        if (angle.place() == RangePlace::Outside)
            shade.setAlphaF(0.45F);
        painter->fillRect(range, shade);
    }

    // The two cross about where the crank lies level: each has its name where it is away from the
    // other.
    const auto trace = [&](const QString& name, const QColor& color, Qt::PenStyle style,
                           int namedAtDeg, bool under, auto&& value) {
        QPolygonF line;
        for (const TurnStep& step : turn)
            line << placeOf(fromTop(step), value(step).deg());
        line << placeOf(360.0 + fromTop(turn.front()), value(turn.front()).deg());
        painter->setPen(QPen(color, 1.4, style));
        painter->drawPolyline(line);
        const QFont font = fontOf(m_board->letters());
        painter->setFont(font);
        painter->setPen(color);
        const QFontMetricsF letters(font);
        const std::size_t at = turn.size() * static_cast<std::size_t>(namedAtDeg) / 360;
        const QPointF by = placeOf(namedAtDeg, value(turn[at]).deg());
        painter->drawText(QPointF(std::min(by.x() + 6.0, width() - letters.horizontalAdvance(name)),
                                  by.y() + (under ? letters.ascent() + 3.0 : -3.0)),
                          name);
    };
    trace(kneeTraceWords(), theme.ink, Qt::SolidLine, 282, false,
          [](const TurnStep& s) { return s.knee; });
    trace(hipTraceWords(), theme.soft, Qt::DashLine, 130, true,
          [](const TurnStep& s) { return s.hip; });

    const double at = m_board->crankDeg();
    painter->setPen(QPen(theme.ink, 1.0));
    painter->drawLine(placeOf(at, 0.0), placeOf(at, mostDeg));
}

} // namespace tripoise
