// SPDX-License-Identifier: MIT
#include "story/reason_picture.h"

#include "drawing/knee_room.h"
#include "drawing/paint_bike.h"
#include "drawing/paint_plan.h"
#include "drawing/paint_rider.h"
#include "drawing/painter.h"
#include "story/picture_marks.h"
#include "wording/speech.h"
#include "wording/trial_words.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace tripoise {
namespace {

// Shares of stature around a joint that a body takes.
constexpr double aroundHead = 0.085;
constexpr double aroundBody = 0.06;
constexpr double aroundBarMm = 25.0;
constexpr double aroundTubeMm = 110.0; // where one stands over it
constexpr double aroundShoeMm = 20.0;
constexpr double wheelHidden = 0.2;   // of its radius, behind the axle
constexpr double besideBarMm = 70.0;  // where the first height is measured, ahead of the bar
constexpr double marginShare = 0.04;  // of the picture's shorter side
constexpr double arrowLetters = 0.34; // of the letters' height
constexpr double thighShown = 0.55;   // of it, above a knee
constexpr double kneeFan = 0.8;       // of the shank
constexpr double rowOfLetters = 1.3;

/// A box that grows.
class Box {
public:
    void add(const Point& point, double around = 0.0)
    {
        const Point by(around, around);
        if (m_empty)
            m_bounds = {point - by, point + by};
        m_bounds.low = m_bounds.low.cwiseMin(point - by);
        m_bounds.high = m_bounds.high.cwiseMax(point + by);
        m_empty = false;
    }
    [[nodiscard]] const SideView::Bounds& bounds() const { return m_bounds; }

private:
    SideView::Bounds m_bounds;
    bool m_empty = true;
};

void addSaddle(Box& box, const BikeSketch& bike)
{
    box.add(bike.saddle->tail, aroundBarMm);
    box.add(bike.saddle->nose, aroundBarMm);
}

void addBar(Box& box, const SideView& view)
{
    for (const Point& point : view.chosen.cockpit->bar.curve)
        box.add(point, aroundBarMm);
    for (const Point& point : view.chosen.cockpit->bar.lever)
        box.add(point);
    box.add(view.rider->grip, 2.0 * aroundBarMm);
}

double barAhead(const SideView& view)
{
    double ahead = view.rider->grip.x();
    for (const Point& point : view.chosen.cockpit->bar.curve)
        ahead = std::max(ahead, point.x());
    for (const Point& point : view.chosen.cockpit->bar.lever)
        ahead = std::max(ahead, point.x());
    return ahead;
}

void add(Box& box, ReasonPicture picture, const SideView& view)
{
    const RiderSketch& rider = *view.rider;
    const double s = rider.statureMm;
    switch (picture) {
    case ReasonPicture::BackAndArms:
        addSaddle(box, view.chosen);
        box.add(rider.head, aroundHead * s);
        box.add(rider.shoulder, aroundBody * s);
        box.add(rider.hip, aroundBody * s);
        addBar(box, view);
        break;
    case ReasonPicture::Knee:
        box.add(rider.near.knee + thighShown * (rider.near.hip - rider.near.knee),
                0.5 * aroundBody * s);
        box.add(rider.near.knee, aroundBody * s);
        box.add(rider.near.heel, 2.0 * aroundBarMm);
        box.add(rider.near.toe, 2.0 * aroundBarMm);
        break;
    case ReasonPicture::KneeAndBar:
        addSaddle(box, view.chosen);
        box.add(rider.near.hip, aroundBody * s);
        box.add(rider.near.knee, aroundBody * s);
        addBar(box, view);
        break;
    case ReasonPicture::Standing:
        box.add(view.chosen.topTube.from, aroundTubeMm);
        box.add(view.chosen.topTube.to, aroundTubeMm);
        break;
    case ReasonPicture::WholeBicycle:
        for (const WheelSketch* wheel : {&view.chosen.rear, &view.chosen.front})
            box.add(wheel->axle, wheel->radiusMm);
        addSaddle(box, view.chosen);
        addBar(box, view);
        break;
    default:
        addSaddle(box, view.chosen);
        addBar(box, view);
        box.add({barAhead(view) + 2.0 * besideBarMm, rider.grip.y()});
        break;
    }
}

/// Shoe and wheel as far as they can meet.
void add(Box& box, const PlanView& plan, const PlanPose& pose)
{
    for (const Point& point : shoeLine(plan, pose, Side::Right))
        box.add(point, aroundShoeMm);
    for (const Point& point : wheelLine(plan, pose))
        if (point.x() < plan.wheel.axle.x() - wheelHidden * plan.wheel.radiusMm)
            box.add(point, plan.wheel.halfWidthMm);
}

const JointAngle& joint(const SideView& view, Joint which)
{
    return *std::find_if(view.rider->angles.begin(), view.rider->angles.end(),
                         [which](const JointAngle& angle) { return angle.joint == which; });
}

/// Where the height of the bar is measured: each size a step further ahead.
Point spanOf(const SideView& view, const SideView& first, int step)
{
    return {barAhead(first) + (1.0 + 0.8 * step) * besideBarMm, view.rider->grip.y()};
}

/// The marks of a picture, on what is drawn.
class Marks {
public:
    Marks(const Canvas& canvas, const SideView& shown, const SideView* beside, double letters)
        : m_c(canvas), m_shown(shown), m_beside(beside), m_letters(letters),
          m_line(std::max(2.0, 0.12 * letters))
    {
    }

    void back(const QRectF& area) const
    {
        const JointAngle& trunk = joint(m_shown, Joint::Trunk);
        const JointAngle& elbow = joint(m_shown, Joint::Elbow);
        const double length = (m_shown.rider->shoulder - m_shown.rider->hip).norm();
        const bool locked = elbow.value < elbow.low;
        if (locked)
            paintFan(m_c, elbow, 0.0, 0.5 * length);
        else
            paintFan(m_c, trunk, 0.0, 1.15 * length);
        if (m_beside)
            lines(bodyLine(*m_beside->rider), m_c.theme.other, Qt::DashLine);
        lines(bodyLine(*m_shown.rider), m_c.theme.ink, Qt::SolidLine);
        verdict(area, trunk.comfortable() && !locked);
    }

    void knee(const QRectF& area) const
    {
        const JointAngle& knee = joint(m_shown, Joint::Knee);
        const LegPoints& leg = m_shown.rider->near;
        const double shank = (leg.ankle - leg.knee).norm();
        paintFan(m_c, knee, 0.0, kneeFan * shank);
        m_c.noFill();
        m_c.pen(m_c.theme.ink, 1.0, Qt::DotLine);
        m_c.line(knee.at, knee.at + 1.1 * kneeFan * shank * along(knee.zero));
        m_c.pen(m_c.theme.ink, 1.5);
        m_c.arc(knee.at, 0.7 * kneeFan * shank, knee.directionOf(knee.value), knee.zero);
        if (m_beside)
            lines(legLine(*m_beside->rider), m_c.theme.other, Qt::DashLine);
        lines(legLine(*m_shown.rider), m_c.theme.ink, Qt::SolidLine);
        // The angle, ahead of what is shaded.
        const QFont font = fontOf(m_letters, QFont::DemiBold);
        const QString words = jointValue(knee);
        const QFontMetricsF metrics(font);
        const QPointF at = m_c.px(knee.at + 0.7 * kneeFan * shank * along(knee.zero));
        QRectF box(0.0, 0.0, metrics.horizontalAdvance(words) + 2.0, metrics.height());
        box.moveCenter(at);
        box.moveLeft(std::min(at.x() + 0.5 * m_letters, area.right() - box.width()));
        write(box, words, font, m_c.theme.ink, Qt::AlignLeft);
        verdict(area, knee.comfortable());
    }

    void kneeAndBar(const QRectF& area, const SideView& turned) const
    {
        const KneeRoom room = roomAtTheKnee(m_shown);
        lines(legLine(*turned.rider), m_c.theme.ink, Qt::SolidLine);
        m_c.noFill();
        m_c.pen(m_c.theme.ink, m_line);
        paintSpan(m_c, m_c.px(room.front), m_c.px(room.bar), arrowLetters * m_letters);
        if (room.mm <= 0.0)
            verdict(area, false);
    }

    void toe(const QRectF& area, const PlanView& plan) const
    {
        if (plan.roomMm && *plan.roomMm < leastToldMm)
            verdict(area, false);
    }

    /// The heights are written in the top right corner, over where they are measured.
    void heights(const QRectF& area) const
    {
        const Point saddle = m_shown.chosen.saddle->point;
        m_c.noFill();
        m_c.pen(m_c.theme.ink, 1.0, Qt::DotLine);
        m_c.line(saddle, {spanOf(m_shown, m_shown, m_beside ? 2 : 1).x(), saddle.y()});
        height(m_shown, 0, m_c.theme.ink, Qt::SolidLine);
        if (m_beside)
            height(*m_beside, 1, m_c.theme.other, Qt::DashLine);
        figures(area, barMeasuredOn(m_shown), m_beside ? barMeasuredOn(*m_beside) : QString());
    }

    /// The crotch over the top tube, in shoes, of both sizes on one ground.
    void standing(const QRectF& area, const RiderStory& story) const
    {
        const auto& shown = story.standing(WhichBike::Shown);
        stood(*shown, m_shown.chosen.groundY, 0, m_c.theme.ink, Qt::SolidLine);
        QString other;
        if (const auto& beside = story.standing(WhichBike::Beside); m_beside && beside) {
            stood(*beside, m_shown.chosen.groundY, 1, m_c.theme.other, Qt::DashLine);
            other = measuredOn(*m_beside, beside->roomMm);
        }
        figures(area, measuredOn(m_shown, shown->roomMm), other);
        if (shown->roomMm < 0.0)
            verdict(area, false);
    }

    /// How far the wheels are apart.
    void wholeBicycle(const QRectF& area) const
    {
        const auto apart = [](const SideView& view) {
            return view.chosen.front.axle.x() - view.chosen.rear.axle.x();
        };
        wheels(m_shown, 0, m_c.theme.ink, Qt::SolidLine);
        QString other;
        if (m_beside) {
            wheels(*m_beside, 1, m_c.theme.other, Qt::DashLine);
            other = measuredOn(*m_beside, apart(*m_beside));
        }
        figures(area, measuredOn(m_shown, apart(m_shown)), other);
    }

private:
    /// A figure of both sizes in the top right corner.
    void figures(const QRectF& area, const QString& shown, const QString& beside) const
    {
        const QFont font = fontOf(m_letters, QFont::DemiBold);
        const double inset = 0.4 * m_letters;
        const QRectF box(inset, inset, area.width() - 2.0 * inset, rowOfLetters * m_letters);
        write(box, shown, font, m_c.theme.ink, Qt::AlignRight);
        if (!beside.isEmpty())
            write(box.translated(0.0, box.height()), beside, font, m_c.theme.otherText,
                  Qt::AlignRight);
    }

    void stood(const RiderStory::Standing& standing, double groundY, int step, const QColor& color,
               Qt::PenStyle style) const
    {
        const TubeSketch& tube = m_shown.chosen.topTube;
        const double x = tube.from.x() + (0.4 + 0.2 * step) * (tube.to.x() - tube.from.x());
        const double crotch = groundY + standing.crotchMm;
        const double frame = crotch - standing.roomMm;
        const double half = 0.16 * (tube.to.x() - tube.from.x());
        m_c.noFill();
        m_c.pen(color, m_line, style);
        m_c.line({x - half, frame}, {x + half, frame});
        if (step == 0)
            m_c.line({tube.from.x(), crotch}, {tube.to.x(), crotch});
        m_c.pen(color, m_line);
        paintSpan(m_c, m_c.px(Point(x, frame)), m_c.px(Point(x, crotch)), arrowLetters * m_letters);
    }

    void wheels(const SideView& view, int step, const QColor& color, Qt::PenStyle style) const
    {
        const double y =
            m_shown.chosen.rear.axle.y() - (0.2 + 0.3 * step) * view.chosen.rear.radiusMm;
        m_c.noFill();
        m_c.pen(color, std::max(1.0, 0.5 * m_line), style);
        for (const WheelSketch* wheel : {&view.chosen.rear, &view.chosen.front})
            m_c.line(wheel->axle, {wheel->axle.x(), y});
        m_c.pen(color, m_line);
        paintSpan(m_c, m_c.px(Point(view.chosen.rear.axle.x(), y)),
                  m_c.px(Point(view.chosen.front.axle.x(), y)), arrowLetters * m_letters);
    }

    void lines(const std::vector<Point>& line, const QColor& color, Qt::PenStyle style) const
    {
        m_c.noFill();
        m_c.pen(color, m_line, style);
        m_c.polyline(line);
    }

    void height(const SideView& view, int step, const QColor& color, Qt::PenStyle style) const
    {
        const Point grip = view.rider->grip;
        const Point span = spanOf(view, m_shown, step);
        m_c.noFill();
        m_c.pen(color, std::max(1.0, 0.5 * m_line), style);
        m_c.line(grip, span + Point(0.3 * besideBarMm, 0.0));
        m_c.pen(color, m_line);
        paintSpan(m_c, m_c.px(Point(span.x(), view.chosen.saddle->point.y())), m_c.px(span),
                  arrowLetters * m_letters);
    }

    void verdict(const QRectF& area, bool kept) const
    {
        const double size = 1.3 * m_letters;
        const double inset = 0.4 * m_letters;
        paintVerdict(m_c, area.topLeft() + QPointF(inset, inset), size, kept);
    }

    void write(const QRectF& box, const QString& words, const QFont& font, const QColor& color,
               Qt::AlignmentFlag aligned) const
    {
        QColor paper = m_c.theme.paper;
        paper.setAlphaF(0.8F);
        m_c.painter.fillRect(box.adjusted(-3.0, 0.0, 3.0, 0.0), paper);
        m_c.painter.setFont(font);
        m_c.painter.setPen(color);
        m_c.painter.drawText(box, aligned | Qt::AlignVCenter, words);
    }

    const Canvas& m_c;
    const SideView& m_shown;
    const SideView* m_beside;
    double m_letters;
    double m_line;
};

/// What is drawn whole.
const SideView& drawnOf(ReasonPicture picture, const RiderStory& story)
{
    return picture == ReasonPicture::KneeAndBar && story.kneeAtBar() ? *story.kneeAtBar()
                                                                     : *story.of(WhichBike::Shown);
}

/// Without what is written beside it.
QRectF pictured(const QSizeF& size, ReasonPicture picture, const RiderStory& story, double letters)
{
    const double margin = marginShare * std::min(size.width(), size.height());
    QRectF area(margin, margin, size.width() - 2.0 * margin, size.height() - 2.0 * margin);
    if (picture == ReasonPicture::BarAgainstSaddle || picture == ReasonPicture::Standing
        || picture == ReasonPicture::WholeBicycle) { // below what is written
        const int rows = story.has(WhichBike::Beside) ? 2 : 1;
        area.setTop(std::min(area.center().y(), (rows * rowOfLetters + 1.6) * letters));
    }
    return area;
}

} // namespace

SideView::Bounds subjectOf(ReasonPicture picture, const RiderStory& story)
{
    Box box;
    if (picture == ReasonPicture::ToeAndWheel) {
        const auto& shown = story.fromAbove(WhichBike::Shown);
        for (const WhichBike which : allRidden)
            if (const auto& plan = story.fromAbove(which))
                add(box, *plan, shown->nearest);
        return box.bounds();
    }
    add(box, picture, drawnOf(picture, story));
    const auto& beside = story.of(WhichBike::Beside);
    if (beside && picture != ReasonPicture::KneeAndBar)
        add(box, picture, *beside);
    return box.bounds();
}

DrawingFit fitOf(const QSizeF& size, ReasonPicture picture, const RiderStory& story, double letters)
{
    const SideView::Bounds bounds = subjectOf(picture, story);
    const QRectF area = pictured(size, picture, story, letters);
    const Point extent = (bounds.high - bounds.low).cwiseMax(1.0);
    const Point middle = 0.5 * (bounds.low + bounds.high);
    DrawingFit fit;
    fit.pxPerMm = std::min(area.width() / extent.x(), area.height() / extent.y());
    // Heights stand under their words; all else in the middle.
    const double spare = area.height() - fit.pxPerMm * extent.y();
    const double down = picture == ReasonPicture::BarAgainstSaddle ? -0.5 * spare : 0.0;
    fit.origin = {area.center().x() - fit.pxPerMm * middle.x(),
                  area.center().y() + down + fit.pxPerMm * middle.y()};
    return fit;
}

void paintReason(QPainter& painter, const QSizeF& size, ReasonPicture picture,
                 const RiderStory& story, const Theme& theme, double letters)
{
    if (!story.has(WhichBike::Shown) || size.width() < 4.0 || size.height() < 4.0)
        return;
    const SideView& shown = *story.of(WhichBike::Shown);
    const auto& other = story.of(WhichBike::Beside);
    const SideView* beside = other ? &*other : nullptr;
    const QRectF area(QPointF(), size);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(area);
    painter.fillRect(area, theme.paper);

    const Canvas c{painter, theme, fitOf(size, picture, story, letters), stepsFor(size, 11.0)};
    const SideView& view = drawnOf(picture, story);
    switch (picture) {
    case ReasonPicture::ToeAndWheel: {
        const PlanView& plan = *story.fromAbove(WhichBike::Shown);
        paintPlan(c, plan, plan.nearest);
        if (const auto& otherPlan = story.fromAbove(WhichBike::Beside))
            paintPlanOutline(c, *otherPlan, plan.nearest);
        break;
    }
    case ReasonPicture::BarAgainstSaddle:
    case ReasonPicture::Standing: paintBike(c, view.chosen); break;
    case ReasonPicture::WholeBicycle:
        paintWheels(c, view.chosen);
        if (beside)
            paintOutline(c, beside->chosen);
        paintBike(c, view.chosen);
        break;
    default: // the far leg and the wheels would only be in the way
        paintFigure(c, *view.rider);
        paintBike(c, view.chosen);
        paintNearLimbs(c, *view.rider);
    }

    const Marks marks(c, shown, beside, letters);
    switch (picture) {
    case ReasonPicture::BackAndArms: marks.back(area); break;
    case ReasonPicture::Knee: marks.knee(area); break;
    case ReasonPicture::KneeAndBar: marks.kneeAndBar(area, view); break;
    case ReasonPicture::Standing: marks.standing(area, story); break;
    case ReasonPicture::WholeBicycle: marks.wholeBicycle(area); break;
    case ReasonPicture::ToeAndWheel: marks.toe(area, *story.fromAbove(WhichBike::Shown)); break;
    case ReasonPicture::BarAgainstSaddle: marks.heights(area); break;
    }
    painter.setPen(QPen(theme.hair, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area.adjusted(0.5, 0.5, -0.5, -0.5));
}

} // namespace tripoise
