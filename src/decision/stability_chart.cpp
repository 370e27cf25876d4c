// SPDX-License-Identifier: MIT
#include "decision/stability_chart.h"

#include "drawing/steps.h"
#include "wording/ride_chart_words.h"
#include "wording/ride_rows.h"
#include "wording/words.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise {
namespace {

constexpr double toSpeedMmS = 11'000.0; // some 40 km/h: what a bicycle of this kind is ridden at
constexpr std::size_t steps = 56;
constexpr double highestRate = 6.0; // 1/s; standing still it falls about as fast
constexpr double lowestRate = -8.0;
constexpr double swingsFrom = 1e-6; // imaginary part

} // namespace

void StabilityChart::make(const Solution* answer)
{
    m_curves.clear();
    m_description.clear();
    if (!answer)
        return;
    QStringList told;
    for (const auto& index : {session()->shownCandidate(), session()->besideCandidate()}) {
        if (!index)
            continue;
        const Candidate& candidate = answer->advice.candidates[*index];
        if (!candidate.ride || !candidate.ride->model || !candidate.ride->stability)
            continue;
        const QString name =
            sizeLabel(answer->prepared->sizes[candidate.size].frame, *answer->prepared);
        m_curves.push_back({name, rootsOver(*candidate.ride->model, toSpeedMmS, steps),
                            *candidate.ride->stability});
        told << steadyWords(name, steadySpeeds(*candidate.ride->stability));
    }
    m_description = chartWords(told);
}

QRectF StabilityChart::plot() const
{
    const double row = 1.6 * letters();
    return {0.5 * letters(), row, width() - letters(), height() - 2.0 * row};
}

QPointF StabilityChart::placeOf(double speedMmS, double rate) const
{
    const QRectF area = plot();
    return {area.left() + speedMmS / toSpeedMmS * area.width(),
            area.bottom() - (rate - lowestRate) / (highestRate - lowestRate) * area.height()};
}

void StabilityChart::paintBand(QPainter& painter, const Theme& theme) const
{
    const SelfStability& stability = m_curves.front().stability;
    if (!stability.steady)
        return;
    const double from = std::min(stability.weaveMmS.value_or(0.0), toSpeedMmS);
    const double to = std::min(stability.capsizeMmS.value_or(toSpeedMmS), toSpeedMmS);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.range);
    painter.drawRect(QRectF(placeOf(from, highestRate), placeOf(to, lowestRate)));
    const QFont font = fontOf(letters());
    const QString words = steadyBandWords();
    const QFontMetricsF metrics(font);
    const double wide = metrics.horizontalAdvance(words);
    const QRectF area = plot();
    double x = 0.5 * (placeOf(from, 0.0).x() + placeOf(to, 0.0).x()) - 0.5 * wide;
    x = std::clamp(x, area.left(), std::max(area.left(), area.right() - wide));
    if (wide > area.width())
        return;
    painter.setFont(font);
    painter.setPen(theme.ink);
    painter.drawText(QPointF(x, area.bottom() - 0.4 * letters()), words);
}

void StabilityChart::paintAxes(QPainter& painter, const Theme& theme) const
{
    const QRectF area = plot();
    const QFont font = fontOf(letters());
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    const double unit = speedTick();
    for (int i = 0; i * unit <= toSpeedMmS; ++i) {
        const QPointF at = placeOf(i * unit, lowestRate);
        painter.setPen(QPen(theme.hair, 0.8));
        painter.drawLine(at, QPointF(at.x(), area.top()));
        const QString words = speedTickWords(i, (i + 1) * unit > toSpeedMmS);
        const double wide = metrics.horizontalAdvance(words);
        const double x = std::clamp(at.x() - 0.5 * wide, 0.0, std::max(0.0, width() - wide));
        painter.setPen(theme.soft);
        painter.drawText(QPointF(x, area.bottom() + 0.3 * letters() + metrics.ascent()), words);
    }
    painter.setPen(QPen(theme.ink, 1.0));
    painter.drawLine(placeOf(0.0, 0.0), placeOf(toSpeedMmS, 0.0));
    painter.setPen(theme.soft);
    painter.drawText(placeOf(0.0, 0.0) + QPointF(0.5 * letters(), -0.5 * letters()), fallsWords());
    painter.drawText(placeOf(0.0, 0.0)
                         + QPointF(0.5 * letters(), 0.3 * letters() + metrics.ascent()),
                     rightsWords());
}

void StabilityChart::paintCurve(QPainter& painter, const Curve& curve, const QColor& color,
                                Qt::PenStyle style) const
{
    painter.setBrush(Qt::NoBrush);
    for (std::size_t root = 0; root < std::tuple_size_v<Roots>; ++root) {
        for (std::size_t i = 0; i + 1 < curve.roots.size(); ++i) {
            const auto& from = curve.roots[i].roots[root];
            const auto& to = curve.roots[i + 1].roots[root];
            if (std::max(from.real(), to.real()) < lowestRate)
                continue;
            // What swings is drawn stronger than what only leans.
            const bool swings =
                std::abs(from.imag()) > swingsFrom && std::abs(to.imag()) > swingsFrom;
            QPen pen(color, swings ? 2.0 : 1.0, style);
            pen.setCapStyle(Qt::FlatCap);
            painter.setPen(pen);
            painter.drawLine(placeOf(curve.roots[i].speedMmS, from.real()),
                             placeOf(curve.roots[i + 1].speedMmS, to.real()));
        }
    }
}

void StabilityChart::paintLegend(QPainter& painter, const Theme& theme) const
{
    const QFont font = fontOf(letters());
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    double x = plot().left();
    const double middle = 0.5 * plot().top();
    const auto entry = [&](const QString& name, const QPen& pen, const QColor& text) {
        const double sample = 1.8 * letters();
        const double wide = sample + 0.5 * letters() + metrics.horizontalAdvance(name);
        if (x + wide > width())
            return;
        painter.setPen(pen);
        painter.drawLine(QPointF(x, middle), QPointF(x + sample, middle));
        painter.setPen(text);
        painter.drawText(QPointF(x + sample + 0.5 * letters(),
                                 middle + 0.5 * (metrics.ascent() - metrics.descent())),
                         name);
        x += wide + 1.2 * letters();
    };
    if (m_curves.size() > 1) {
        entry(m_curves[0].name, QPen(theme.ink, 1.4), theme.ink);
        entry(m_curves[1].name, QPen(theme.other, 1.4, Qt::DashLine), theme.otherText);
    }
    entry(swingsWords(), QPen(theme.ink, 2.0), theme.soft);
    entry(leansWords(), QPen(theme.ink, 1.0), theme.soft);
}

void StabilityChart::paint(QPainter* painter)
{
    if (m_curves.empty() || plot().height() < 4.0 || plot().width() < 4.0)
        return;
    const Theme theme = this->theme();
    painter->setRenderHint(QPainter::Antialiasing);
    paintBand(*painter, theme);
    paintAxes(*painter, theme);
    painter->setClipRect(plot());
    if (m_curves.size() > 1)
        paintCurve(*painter, m_curves[1], theme.other, Qt::DashLine);
    paintCurve(*painter, m_curves[0], theme.ink, Qt::SolidLine);
    painter->setClipping(false);
    paintLegend(*painter, theme);
}

} // namespace tripoise
