// SPDX-License-Identifier: MIT
#include "handover/moves_picture.h"

#include "drawing/canvas.h"
#include "wording/visit_words.h"

#include <QPainter>

#include <algorithm>

namespace tripoise {
namespace {

constexpr double gridMm = 5.0;
constexpr double leastAcrossMm = 30.0; // of a map
constexpr double dot = 0.28;           // of the letters

/// A place and the visits it stood from: those after which it was where it had been are no others.
struct Stood {
    Point at;
    QString from;
};

std::vector<Stood> placesOf(const std::vector<Point>& path)
{
    std::vector<Stood> places;
    for (std::size_t i = 0; i < path.size(); ++i)
        if (places.empty() || (path[i] - places.back().at).norm() > 0.05)
            places.push_back({path[i], QString::number(i)});
    return places;
}

double across(const std::vector<Stood>& places, const Point& middle)
{
    double most = 0.5 * leastAcrossMm;
    for (const Stood& place : places)
        most = std::max({most, std::abs(place.at.x() - middle.x()) + gridMm,
                         std::abs(place.at.y() - middle.y()) + gridMm});
    return 2.0 * most;
}

Point middleOf(const std::vector<Stood>& places)
{
    Point low = places.front().at;
    Point high = low;
    for (const Stood& place : places) {
        low = low.cwiseMin(place.at);
        high = high.cwiseMax(place.at);
    }
    return 0.5 * (low + high);
}

void paintMap(QPainter& painter, const QRectF& area, const Theme& theme, double letters,
              const QString& title, const std::vector<Stood>& places, double acrossMm)
{
    const Point middle = middleOf(places);
    const double scale = std::min(area.width(), area.height()) / acrossMm;
    const auto px = [&](const Point& at) {
        return QPointF(area.center().x() + scale * (at.x() - middle.x()),
                       area.center().y() - scale * (at.y() - middle.y()));
    };
    painter.save();
    painter.setClipRect(area);
    painter.setPen(QPen(theme.hair, 1.0, Qt::DotLine));
    const QPointF start = px(places.front().at);
    for (double by = 0.0; by <= acrossMm; by += gridMm)
        for (const double sign : {-1.0, 1.0}) {
            const double x = start.x() + sign * scale * by;
            const double y = start.y() + sign * scale * by;
            painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
        }
    painter.setPen(QPen(theme.ink, 1.5));
    for (std::size_t i = 1; i < places.size(); ++i)
        painter.drawLine(px(places[i - 1].at), px(places[i].at));
    painter.setFont(fontOf(letters));
    for (std::size_t i = 0; i < places.size(); ++i) {
        const bool last = i + 1 == places.size();
        painter.setPen(QPen(theme.ink, 1.5));
        painter.setBrush(last ? theme.ink : theme.paper);
        painter.drawEllipse(px(places[i].at), dot * letters, dot * letters);
        painter.drawText(px(places[i].at) + QPointF(0.5 * letters, -0.4 * letters), places[i].from);
    }
    painter.restore();
    painter.setPen(QPen(theme.hair, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area);
    painter.setFont(fontOf(letters));
    painter.setPen(theme.soft);
    painter.drawText(QPointF(area.left(), area.top() - 0.4 * letters), title);
}

} // namespace

MovesPicture::MovesPicture(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &MovesPicture::changed, this, [this] { update(); });
}

void MovesPicture::setVisits(VisitsModel* visits)
{
    if (m_visits == visits)
        return;
    if (m_visits)
        m_visits->disconnect(this);
    m_visits = visits;
    if (m_visits)
        connect(m_visits, &VisitsModel::told, this, [this] { update(); });
    emit changed();
}

void MovesPicture::paint(QPainter* painter)
{
    if (!m_visits || m_visits->saddlePath().empty())
        return;
    const std::vector<Stood> saddle = placesOf(m_visits->saddlePath());
    const std::vector<Stood> hands = placesOf(m_visits->handsPath());
    const double acrossMm =
        std::max(across(saddle, middleOf(saddle)), across(hands, middleOf(hands)));
    const Theme theme = m_night ? Theme::night() : Theme::day();
    painter->setRenderHint(QPainter::Antialiasing);
    const double gap = m_letters;
    const double top = 1.5 * m_letters;
    const double side = std::min(0.5 * (width() - gap) - 1.0, height() - top - 1.0);
    if (side < 2.0 * m_letters)
        return;
    paintMap(*painter, {0.5, top, side, side}, theme, m_letters, movesOfSaddle(gridMm), saddle,
             acrossMm);
    paintMap(*painter, {side + gap, top, side, side}, theme, m_letters, movesOfHands(), hands,
             acrossMm);
}

} // namespace tripoise
