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

constexpr double aroundDeg = 8.0;        // above and below what is drawn
constexpr double aroundBottomDeg = 26.0; // how wide the range at the bottom is shown
constexpr double legendPitch = 1.5;      // of the letters' height
constexpr double sampleEms = 1.8;        // a bit of line before a name

/// Software draws dashes of a pixel several times as fast as wider ones.
double traceWidth(Qt::PenStyle style)
{
    return style == Qt::SolidLine ? 1.4 : 1.0;
}

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

const JointAngle& kneeOf(const RiderSketch& rider)
{
    return *std::find_if(rider.angles.begin(), rider.angles.end(),
                         [](const JointAngle& angle) { return angle.joint == Joint::Knee; });
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
    if (m_board && m_board->scene().view().rider) {
        const RiderSketch& rider = *m_board->scene().view().rider;
        description = turnWords(rider.turn);
        double low = kneeOf(rider).low.deg();
        double high = kneeOf(rider).high.deg();
        for (const TurnStep& step : rider.turn) {
            low = std::min({low, step.knee.deg(), step.hip.deg()});
            high = std::max({high, step.knee.deg(), step.hip.deg()});
        }
        m_lowDeg = low - aroundDeg;
        m_highDeg = high + aroundDeg;
    }
    if (description != m_description) {
        m_description = description;
        emit descriptionChanged();
    }
    update();
}

QRectF TurnChart::plot() const
{
    const double legend =
        m_board ? std::min(legendPitch * m_board->letters(), 0.5 * height()) : 0.0;
    return {0.0, legend, width(), height() - legend};
}

QPointF TurnChart::placeOf(double crankDeg, double angleDeg) const
{
    const QRectF area = plot();
    return {area.left() + crankDeg / 360.0 * area.width(),
            area.bottom() - area.height() * (angleDeg - m_lowDeg) / (m_highDeg - m_lowDeg)};
}

void TurnChart::paintLegend(QPainter& painter, const Theme& theme) const
{
    const double letters = m_board->letters();
    const QFont font = fontOf(letters);
    const QFontMetricsF metrics(font);
    const double sample = sampleEms * letters;
    const double middle = 0.5 * plot().top();
    double x = 0.0;
    painter.setFont(font);
    const auto entry = [&](const QString& name, const QColor& color, const auto& paintSample) {
        const double wide = sample + 0.5 * letters + metrics.horizontalAdvance(name);
        if (x + wide > width())
            return;
        paintSample(QRectF(x, middle - 0.35 * letters, sample, 0.7 * letters));
        painter.setPen(color);
        painter.drawText(QPointF(x + sample + 0.5 * letters,
                                 middle + 0.5 * (metrics.ascent() - metrics.descent())),
                         name);
        x += wide + 1.2 * letters;
    };
    const auto line = [&](const QColor& color, Qt::PenStyle style) {
        return [&painter, color, style](const QRectF& box) {
            painter.setPen(QPen(color, traceWidth(style), style));
            painter.drawLine(QPointF(box.left(), box.center().y()),
                             QPointF(box.right(), box.center().y()));
        };
    };
    entry(kneeTraceWords(), theme.ink, line(theme.ink, Qt::SolidLine));
    entry(hipTraceWords(), theme.soft, line(theme.soft, Qt::DashLine));
    entry(kneeRangeWords(), theme.soft, [&](const QRectF& box) {
        painter.setPen(QPen(theme.ink, 1.0));
        painter.setBrush(theme.range);
        painter.drawRect(box);
    });
}

/// Where it counts: with the pedal at its lowest.
void TurnChart::paintRange(QPainter& painter, const Theme& theme, const JointAngle& knee) const
{
    const double bottom = m_board->bottomDeg();
    const bool outside = knee.place() == RangePlace::Outside;
    QColor shade = outside ? theme.hazard : theme.range;
    if (outside)
        shade.setAlphaF(0.45F);
    painter.setPen(
        QPen(outside ? theme.hazardText : theme.ink, 1.0, outside ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(shade);
    painter.drawRect(QRectF(placeOf(bottom - aroundBottomDeg, knee.high.deg()),
                            placeOf(bottom + aroundBottomDeg, knee.low.deg())));
}

void TurnChart::paint(QPainter* painter)
{
    if (!m_board || !m_board->scene().view().rider)
        return;
    const Theme theme = m_board->night() ? Theme::night() : Theme::day();
    const RiderSketch& rider = *m_board->scene().view().rider;
    const std::vector<TurnStep> turn = inOrder(rider.turn);
    painter->setRenderHint(QPainter::Antialiasing);
    paintLegend(*painter, theme);

    // Level and upright cranks, the floor.
    painter->setPen(QPen(theme.hair, 0.8));
    for (const double at : {0.0, 90.0, 180.0, 270.0, 360.0})
        painter->drawLine(placeOf(at, m_lowDeg), placeOf(at, m_highDeg));
    painter->drawLine(placeOf(0.0, m_lowDeg), placeOf(360.0, m_lowDeg));
    paintRange(*painter, theme, kneeOf(rider));

    painter->setBrush(Qt::NoBrush);
    const auto trace = [&](const QColor& color, Qt::PenStyle style, Angle TurnStep::*angle) {
        QPolygonF line;
        for (const TurnStep& step : turn)
            line << placeOf(fromTop(step), (step.*angle).deg());
        line << placeOf(360.0 + fromTop(turn.front()), (turn.front().*angle).deg());
        painter->setPen(QPen(color, traceWidth(style), style));
        painter->drawPolyline(line);
    };
    trace(theme.soft, Qt::DashLine, &TurnStep::hip);
    trace(theme.ink, Qt::SolidLine, &TurnStep::knee);

    // The crank as it stands, and the knee with it.
    const double at = m_board->crankDeg();
    painter->setPen(QPen(theme.ink, 1.0));
    painter->drawLine(placeOf(at, m_lowDeg), placeOf(at, m_highDeg));
    painter->setBrush(theme.ink);
    painter->drawEllipse(placeOf(at, kneeOf(rider).value.deg()), 2.6, 2.6);
}

} // namespace tripoise
