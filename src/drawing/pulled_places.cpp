// SPDX-License-Identifier: MIT
#include "drawing/pulled_places.h"

#include "wording/trial_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace tripoise::drawing {
namespace {

constexpr double costOfCovering = 0.5; // by weight, against letters' heights away
constexpr double handleRim = 11.0;     // px
constexpr double barClearMm = 20.0;    // words start clear of the hand

class Pulled {
public:
    Pulled(DrawingLayout& layout, Clearance& clearance)
        : m_layout(layout), m_clearance(clearance), m_small(layout.steps.small)
    {
    }

    void add(const QStringList& rows, const Point& from, const Point& to, const Point& beside,
             bool leftwards)
    {
        if (rows.isEmpty())
            return;
        PulledPlace place{rows, m_layout.fit.toPx(from), m_layout.fit.toPx(to), {}, leftwards};
        const QSizeF size(widestOf(rows, fontOf(m_small, QFont::DemiBold)),
                          static_cast<double>(rows.size()) * rowPitch * m_small);
        const QPointF edge = m_layout.fit.toPx(beside);
        const QRectF& board = m_clearance.board();
        // Above it, below it, further up and down: where it covers least of the drawing.
        constexpr std::array rises{-0.6, 1.6, -2.4, 3.4, -4.2, 5.2, -6.0, 7.0, -8.0, 9.0};
        double least = std::numeric_limits<double>::infinity();
        for (const double rise : rises) {
            const double x =
                leftwards ? edge.x() - 1.4 * m_small - size.width() : edge.x() + 1.4 * m_small;
            const double y = edge.y() + rise * m_small - (rise < 0.0 ? size.height() : 0.0);
            QRectF label(QPointF(x, y), size);
            label.moveLeft(
                std::clamp(x, board.left(), std::max(board.left(), board.right() - size.width())));
            const double cost = std::abs(rise) + costOfCovering * m_clearance.covered(label);
            if (cost >= least || !m_clearance.free(label)
                || !m_clearance.freeLine(lineTo(place, label)))
                continue;
            least = cost;
            place.label = label;
        }
        if (place.label.isEmpty())
            return;
        m_clearance.take(place.label);
        m_layout.pulled.push_back(place);
    }

private:
    /// From the handle's rim to the label's lower corner.
    static QLineF lineTo(const PulledPlace& place, const QRectF& label)
    {
        QLineF line(place.to, place.leftwards ? label.bottomRight() : label.bottomLeft());
        line.setP1(line.pointAt(std::min(1.0, handleRim / std::max(1.0, line.length()))));
        return line;
    }

    DrawingLayout& m_layout;
    Clearance& m_clearance;
    double m_small;
};

} // namespace

void placePulled(DrawingLayout& layout, const SideView& view, Clearance& clearance)
{
    if (!view.advised || !view.chosen.saddle || !view.chosen.cockpit)
        return;
    Pulled pulled(layout, clearance);
    const Point saddle = view.chosen.saddle->point;
    const Point grip = view.chosen.cockpit->grip;
    pulled.add(pulledLabel(Contact::Grip, grip - view.advised->grip), view.advised->grip, grip,
               grip + Point(barClearMm, barClearMm), false);
    pulled.add(pulledLabel(Contact::Saddle, saddle - view.advised->saddle), view.advised->saddle,
               saddle, {view.chosen.saddle->tail.x(), saddle.y()}, true);
}

} // namespace tripoise::drawing
