// SPDX-License-Identifier: MIT
#include "drawing/clearance.h"

#include <algorithm>
#include <cmath>

namespace tripoise {

bool touches(const QRectF& rect, const QLineF& segment)
{
    // The part of it between the rectangle's sides (Liang & Barsky 1984).
    double from = 0.0;
    double to = 1.0;
    const auto clip = [&](double start, double step, double low, double high) {
        if (step == 0.0)
            return start >= low && start <= high;
        const double first = (low - start) / step;
        const double second = (high - start) / step;
        from = std::max(from, std::min(first, second));
        to = std::min(to, std::max(first, second));
        return from <= to;
    };
    return clip(segment.x1(), segment.dx(), rect.left(), rect.right())
           && clip(segment.y1(), segment.dy(), rect.top(), rect.bottom());
}

bool Clearance::Ring::touches(const QRectF& rect) const
{
    const double nearX = std::clamp(centre.x(), rect.left(), rect.right()) - centre.x();
    const double nearY = std::clamp(centre.y(), rect.top(), rect.bottom()) - centre.y();
    const double farX =
        std::max(std::abs(rect.left() - centre.x()), std::abs(rect.right() - centre.x()));
    const double farY =
        std::max(std::abs(rect.top() - centre.y()), std::abs(rect.bottom() - centre.y()));
    return std::hypot(nearX, nearY) < outer && std::hypot(farX, farY) > inner;
}

void Clearance::take(const QRectF& words)
{
    if (!words.isEmpty())
        m_words.push_back(words);
}

void Clearance::takeLine(const QLineF& tie)
{
    m_ties.push_back(tie);
}

void Clearance::avoid(const QLineF& stroke, double half, double weight)
{
    const QRectF around = QRectF(stroke.p1(), stroke.p2()).normalized();
    m_strokes.push_back({stroke, half, weight, around.adjusted(-half, -half, half, half)});
}

void Clearance::avoidRing(const QPointF& centre, double inner, double outer, double weight)
{
    m_rings.push_back({centre, inner, outer, weight});
}

bool Clearance::free(const QRectF& words) const
{
    return m_board.contains(words)
           && std::none_of(m_words.begin(), m_words.end(),
                           [&words](const QRectF& taken) { return taken.intersects(words); })
           && std::none_of(m_ties.begin(), m_ties.end(),
                           [&words](const QLineF& tie) { return touches(words, tie); });
}

bool Clearance::freeLine(const QLineF& tie) const
{
    return std::none_of(m_words.begin(), m_words.end(),
                        [&tie](const QRectF& taken) { return touches(taken, tie); });
}

double Clearance::crossed(const QLineF& tie) const
{
    double weight = 0.0;
    for (const Stroke& stroke : m_strokes) {
        QPointF at;
        if (tie.intersects(stroke.line, &at) == QLineF::BoundedIntersection)
            weight += stroke.weight;
    }
    return weight;
}

double Clearance::covered(const QRectF& words, double enough) const
{
    double weight = 0.0;
    for (const Ring& ring : m_rings)
        if (ring.touches(words) && (weight += ring.weight) > enough)
            return weight;
    for (const Stroke& stroke : m_strokes) {
        // Not intersects(), which finds nothing in an upright or level line without width.
        if (stroke.around.left() > words.right() || stroke.around.right() < words.left()
            || stroke.around.top() > words.bottom() || stroke.around.bottom() < words.top())
            continue;
        if (touches(words.adjusted(-stroke.half, -stroke.half, stroke.half, stroke.half),
                    stroke.line)
            && (weight += stroke.weight) > enough)
            return weight;
    }
    return weight;
}

} // namespace tripoise
