// SPDX-License-Identifier: MIT
#include "drawing/joint_labels.h"

#include "wording/trial_words.h"

#include <QFontMetricsF>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace tripoise::drawing {
namespace {

/// A distance of a label from its joint, in radii of its arc, and what it costs.
struct Distance {
    double radii;
    double cost;
};
constexpr std::array rings{Distance{1.06, 1.0}, Distance{0.9, 2.0},  Distance{0.7, 3.0},
                           Distance{1.2, 4.0},  Distance{1.35, 5.0}, Distance{1.5, 6.0},
                           Distance{1.7, 7.0},  Distance{0.55, 4.0}, Distance{2.0, 8.0},
                           Distance{2.4, 9.0}};
constexpr int ringCount = static_cast<int>(rings.size());
constexpr int leftMargin = ringCount; // past the rings
constexpr int rightMargin = ringCount + 1;
constexpr int ringsOnSheet = 7; // a board, which is smaller, has them all and the margins
constexpr int halfTurn = 12;    // of steps round a ring
constexpr int marginSteps = 30; // up or down a margin

constexpr double costOfTurn = 0.6;
constexpr double costOfMargin = 7.0;
constexpr double costOfMarginStep = 0.15;
constexpr double costOfTie = 0.35;     // by the height of letters
constexpr double worthMoving = 6.0;    // a spot must be so much better for a label to move there
constexpr double farAway = 2.4;        // of the letters' height: further off a label is tied
constexpr double gapBeside = 1.0;      // of the letters' height, from figure to margin
constexpr double nearerJoint = 0.7;    // a tie goes to the joint where that is so much nearer
constexpr double costOfCrossing = 0.2; // by the weight of what a tie runs over

/// What it costs to write less, and what a label of that form may cover, by its weight.
struct Form {
    LabelForm form;
    double cost;
    double covers;
    double costOfCovering;
};
constexpr std::array forms{Form{LabelForm::Whole, 0.0, 8.0, 1.0},
                           Form{LabelForm::Name, 5.0, 8.0, 1.0},
                           Form{LabelForm::Value, 19.0, 40.0, 0.5}};

QPointF nearestOn(const QRectF& box, const QPointF& point)
{
    return {std::clamp(point.x(), box.left(), box.right()),
            std::clamp(point.y(), box.top(), box.bottom())};
}

QString textOf(const JointAngle& angle, LabelForm form)
{
    return form == LabelForm::Value ? jointValue(angle) : jointLabel(angle);
}

class Placer {
public:
    Placer(const DrawingLayout& layout, const SideView& view, bool onBoard,
           const Clearance& clearance)
        : m_layout(layout), m_steps(layout.steps), m_onBoard(onBoard), m_clearance(clearance)
    {
        const SideView::Bounds bounds = view.bounds();
        m_figure = {layout.fit.toPx({bounds.low.x(), bounds.high.y()}),
                    layout.fit.toPx({bounds.high.x(), bounds.low.y()})};
    }

    /// `before` is kept unless another spot is much better; empty where not even the angle fits.
    JointLabelPlace place(const JointAngle& angle, const LabelSpot* before) const
    {
        Search search{angle, before, std::numeric_limits<double>::infinity(), {}};
        // The old spot first: where it does, few others are worth a look.
        for (const Form& form : forms)
            if (before && before->form == form.form)
                look(search, form, *before, sizeOf(angle, form.form));
        for (const Form& form : forms)
            look(search, form);
        return search.found;
    }

    /// At its old spot; empty where that is no longer free.
    std::optional<JointLabelPlace> held(const JointAngle& angle, const LabelSpot& spot) const
    {
        JointLabelPlace place = at(angle, spot, sizeOf(angle, spot.form));
        if (!fits(place))
            return std::nullopt;
        return place;
    }

private:
    struct Search {
        const JointAngle& angle;
        const LabelSpot* before;
        double least;
        JointLabelPlace found;
    };

    void look(Search& search, const Form& form) const
    {
        const QSizeF size = sizeOf(search.angle, form.form);
        const int ringsHere = m_onBoard ? ringCount : ringsOnSheet;
        for (int ring = 0; ring < ringsHere; ++ring)
            for (int turn = -halfTurn; turn <= halfTurn; ++turn)
                look(search, form, {ring, turn, form.form}, size);
        if (!m_onBoard)
            return;
        for (const int margin : {leftMargin, rightMargin})
            for (int step = -marginSteps; step <= marginSteps; ++step)
                look(search, form, {margin, step, form.form}, size);
    }

    static double costOf(const LabelSpot& spot)
    {
        const int steps = std::abs(spot.turn);
        return spot.ring < ringCount
                   ? rings[static_cast<std::size_t>(spot.ring)].cost + costOfTurn * steps
                   : costOfMargin + costOfMarginStep * steps;
    }

    void look(Search& search, const Form& form, const LabelSpot& spot, const QSizeF& size) const
    {
        double cost = form.cost + costOf(spot);
        if (search.before && *search.before == spot)
            cost -= worthMoving;
        if (cost >= search.least)
            return;
        const JointLabelPlace place = at(search.angle, spot, size);
        if (place.tie)
            cost += costOfTie * place.tie->length() / m_steps.small;
        if (cost >= search.least || !fits(place))
            return;
        if (place.tie && m_onBoard)
            cost += costOfCrossing * m_clearance.crossed(*place.tie);
        // On a sheet a label is always whole, whatever it covers.
        const double most = m_onBoard ? form.covers : std::numeric_limits<double>::infinity();
        const double covered = m_clearance.covered(
            place.box, std::min(most, (search.least - cost) / form.costOfCovering));
        if (covered > most || cost + form.costOfCovering * covered >= search.least)
            return;
        search.least = cost + form.costOfCovering * covered;
        search.found = place;
        search.found.cost = std::max(0.0, search.least);
    }

    bool fits(const JointLabelPlace& place) const
    {
        return m_clearance.free(place.box) && (!place.tie || m_clearance.freeLine(*place.tie));
    }

    QSizeF sizeOf(const JointAngle& angle, LabelForm form) const
    {
        const QFontMetricsF body(fontOf(m_steps.body, QFont::DemiBold));
        QSizeF size(body.horizontalAdvance(textOf(angle, form)), body.height());
        if (form == LabelForm::Whole) {
            const QFontMetricsF small(fontOf(m_steps.small));
            size.setWidth(std::max(size.width(), small.horizontalAdvance(jointRange(angle))));
            size.rheight() += small.height();
        }
        size.rwidth() += signWidth(angle, m_steps, m_onBoard) + 1.0;
        return size;
    }

    JointLabelPlace at(const JointAngle& angle, const LabelSpot& spot, const QSizeF& size) const
    {
        JointLabelPlace place;
        place.spot = spot;
        if (spot.ring < ringCount) {
            const Angle middle = angle.directionOf(0.5 * angle.value);
            place.box = beyond(angle, rings[static_cast<std::size_t>(spot.ring)].radii,
                               middle + Angle::degrees(15.0 * spot.turn), size);
        } else {
            place.box = beside(angle, spot, size);
        }
        place.tie = tieOf(angle, place.box);
        return place;
    }

    /// Outside a circle round the joint.
    QRectF beyond(const JointAngle& angle, double further, Angle direction,
                  const QSizeF& size) const
    {
        const Point away = along(direction);
        const QPointF edge =
            m_layout.fit.toPx(angle.at + further * arcRadiusMm(angle.joint) * away);
        // The whole label, whichever way it lies: sideways it hangs by its side.
        const auto lean = [](double share) { return std::clamp(2.0 * share, -1.0, 1.0); };
        QRectF rect(QPointF(), size);
        rect.moveCenter(
            edge
            + QPointF(0.5 * size.width() * lean(away.x()), -0.5 * size.height() * lean(away.y())));
        return rect;
    }

    /// Left or right of the whole figure, or at the board's edge.
    QRectF beside(const JointAngle& angle, const LabelSpot& spot, const QSizeF& size) const
    {
        const QRectF& board = m_clearance.board();
        const double gap = gapBeside * m_steps.body;
        QRectF rect(QPointF(), size);
        rect.moveCenter(
            {0.0, m_layout.fit.toPx(angle.at).y() + 0.5 * rowPitch * m_steps.small * spot.turn});
        if (spot.ring == leftMargin)
            rect.moveLeft(std::max(board.left(), m_figure.left() - gap - size.width()));
        else
            rect.moveLeft(std::min(m_figure.right() + gap, board.right() - size.width()));
        return rect;
    }

    /// From the tick, or from the joint where that is much nearer; none where the label is near.
    std::optional<QLineF> tieOf(const JointAngle& angle, const QRectF& box) const
    {
        const double aside = 0.4 * m_steps.body;
        const QRectF around = box.adjusted(-aside, 0.0, aside, 0.0);
        const auto from = [&around](const QPointF& point) {
            return QLineF(point, nearestOn(around, point));
        };
        const double radius = arcRadiusMm(angle.joint);
        const QLineF joint = from(m_layout.fit.toPx(angle.at));
        QLineF tie =
            from(m_layout.fit.toPx(angle.at + radius * along(angle.directionOf(angle.value))));
        if (joint.length() < nearerJoint * tie.length())
            tie = joint;
        if (tie.length() < farAway * m_steps.body)
            return std::nullopt;
        return tie;
    }

    const DrawingLayout& m_layout;
    const Steps& m_steps;
    bool m_onBoard;
    const Clearance& m_clearance;
    QRectF m_figure;
};

} // namespace

double arcRadiusMm(Joint joint)
{
    switch (joint) {
    case Joint::Trunk: return 180.0;
    case Joint::ArmTrunk: return 145.0;
    case Joint::Elbow: return 125.0;
    case Joint::Knee: return 120.0;
    }
    return 150.0;
}

double signWidth(const JointAngle& angle, const Steps& steps, bool onBoard)
{
    return angle.comfortable() && !onBoard ? 0.0 : 1.4 * steps.body;
}

void placeJointLabels(DrawingLayout& layout, const SideView& view, const DrawingOptions& options,
                      Clearance& clearance)
{
    if (!view.rider)
        return;
    const Placer placer(layout, view, !options.furniture, clearance);
    for (std::size_t i = 0; i < view.rider->angles.size(); ++i) {
        const JointAngle& angle = view.rider->angles[i];
        const LabelSpot* before = i < options.spots.size() ? &options.spots[i] : nullptr;
        JointLabelPlace place;
        if (layout.sheet.contains(layout.fit.toPx(angle.at))) {
            std::optional<JointLabelPlace> held;
            if (options.holdSpots && before)
                held = placer.held(angle, *before);
            place = held ? *held : placer.place(angle, before);
        }
        if (place.box.isEmpty() && before)
            place.spot = *before;
        place.text = textOf(angle, place.spot.form);
        if (place.spot.form == LabelForm::Whole)
            place.range = jointRange(angle);
        clearance.take(place.box);
        if (place.tie)
            clearance.takeLine(*place.tie);
        layout.jointLabels.push_back(place);
    }
}

} // namespace tripoise::drawing
