// SPDX-License-Identifier: MIT
#include "wording/rider_words.h"

#include "drawing/proportions.h"
#include "wording/drawing_labels.h"
#include "wording/words.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tripoise {
namespace {

constexpr double leastToldMm = 2.0;
constexpr double leastToldDeg = 1.5;
constexpr double barNearKneeMm = 120.0; // less room than that is told about

class RiderWords {
    Q_DECLARE_TR_FUNCTIONS(RiderWords)
};

QString sizeOf(const SideView& view)
{
    return QString::fromStdString(view.chosen.size);
}

const JointAngle& joint(const SideView& view, Joint which)
{
    return *std::find_if(view.rider->angles.begin(), view.rider->angles.end(),
                         [which](const JointAngle& angle) { return angle.joint == which; });
}

/// Between the front of the knee and the bar, over a turn of the crank; seen from the side.
double roomAtTheKnee(const SideView& view)
{
    const double knee = proportions::kneeHalf * view.rider->statureMm;
    double least = std::numeric_limits<double>::infinity();
    for (const TurnStep& step : view.rider->turn) {
        least = std::min(least, (step.kneeAt - view.rider->grip).norm());
        for (const Point& point : view.chosen.cockpit->bar.curve)
            least = std::min(least, (step.kneeAt - point).norm());
    }
    return least - knee;
}

QString kneeRoomWords(const SideView& view)
{
    return mm(std::max(0.0, roomAtTheKnee(view)));
}

} // namespace

QString riddenName(Ridden which, const SideView& view)
{
    return which == Ridden::Today ? RiderWords::tr("Today") : sizeOf(view);
}

QString riddenTitle(Ridden which, const SideView& view)
{
    if (which == Ridden::Today)
        return RiderWords::tr("Your bicycle today");
    return RiderWords::tr("%1 %2")
        .arg(QString::fromStdString(view.chosen.model), sizeOf(view))
        .trimmed();
}

QString riddenDescription(Ridden which, const SideView& view)
{
    QStringList joints;
    for (const JointAngle& angle : view.rider->angles)
        joints << jointLabel(angle);
    return RiderWords::tr("You on: %1. %2.")
        .arg(riddenTitle(which, view), joints.join(RiderWords::tr(", ")));
}

QString changeWords(Ridden which, const SideView& view, const SideView& shown)
{
    if (which == Ridden::Shown)
        return RiderWords::tr("As we would set it up for you.");
    const Point by = view.rider->grip - shown.rider->grip;
    QStringList ways;
    if (std::abs(by.y()) >= leastToldMm)
        ways << RiderWords::tr(by.y() > 0.0 ? QT_TRANSLATE_NOOP("RiderWords", "%1 higher")
                                            : QT_TRANSLATE_NOOP("RiderWords", "%1 lower"))
                    .arg(mm(std::abs(by.y())));
    if (std::abs(by.x()) >= leastToldMm)
        ways << RiderWords::tr(by.x() > 0.0 ? QT_TRANSLATE_NOOP("RiderWords", "%1 further away")
                                            : QT_TRANSLATE_NOOP("RiderWords", "%1 closer to you"))
                    .arg(mm(std::abs(by.x())));
    if (ways.isEmpty())
        return RiderWords::tr("Your hands are where they are on the %1.").arg(sizeOf(shown));
    return RiderWords::tr("Your hands: %1, against the %2.")
        .arg(ways.join(RiderWords::tr(", ")), sizeOf(shown));
}

QString backTitle()
{
    return RiderWords::tr("Back and arms");
}

QString kneeTitle()
{
    return RiderWords::tr("Knee");
}

QString barTitle()
{
    return RiderWords::tr("Bar and saddle");
}

QString backWords(const SideView& shown, const SideView* beside)
{
    const JointAngle& trunk = joint(shown, Joint::Trunk);
    const QString use = nameOf(shown.rider->use);
    QString words = trunk.comfortable() ? RiderWords::tr("Comfortable for %1.").arg(use)
                    : trunk.value < trunk.low
                        ? RiderWords::tr("Lower than is comfortable for %1.").arg(use)
                        : RiderWords::tr("More upright than %1 asks for.").arg(use);
    const JointAngle& elbow = joint(shown, Joint::Elbow);
    if (elbow.value < elbow.low)
        words = RiderWords::tr("Your arms are almost locked.");
    if (!beside)
        return words;
    const double more = (joint(*beside, Joint::Trunk).value - trunk.value).deg();
    QString comparison = RiderWords::tr("Much the same on the %1.");
    if (more >= leastToldDeg)
        comparison = RiderWords::tr("More upright on the %1.");
    else if (more <= -leastToldDeg)
        comparison = RiderWords::tr("Lower on the %1.");
    return RiderWords::tr("%1 %2").arg(words, comparison.arg(sizeOf(*beside)));
}

QString kneeWords(const SideView& shown, const SideView* beside)
{
    const double least = std::min(roomAtTheKnee(shown), beside ? roomAtTheKnee(*beside) : 1e9);
    if (least < barNearKneeMm) {
        const QString words = RiderWords::tr("%1 between knee and bar.").arg(kneeRoomWords(shown));
        return beside ? RiderWords::tr("%1 On the %2: %3.")
                            .arg(words, sizeOf(*beside), kneeRoomWords(*beside))
                      : words;
    }
    const JointAngle& knee = joint(shown, Joint::Knee);
    return knee.comfortable()      ? RiderWords::tr("Bent as it should be when the pedal is low.")
           : knee.value < knee.low ? RiderWords::tr("Stretched too far when the pedal is low.")
                                   : RiderWords::tr("Bent too much when the pedal is low.");
}

QString barWords(const SideView& shown, const SideView* beside)
{
    const auto told = [](const SideView& view) {
        const double drop = view.chosen.saddle->point.y() - view.rider->grip.y();
        if (std::abs(drop) < leastToldMm)
            return RiderWords::tr("level with the saddle");
        return RiderWords::tr(drop > 0.0 ? QT_TRANSLATE_NOOP("RiderWords", "%1 below the saddle")
                                         : QT_TRANSLATE_NOOP("RiderWords", "%1 above the saddle"))
            .arg(mm(std::abs(drop)));
    };
    if (!beside)
        return RiderWords::tr("The bar: %1.").arg(told(shown));
    return RiderWords::tr("%1: %2. %3: %4.")
        .arg(sizeOf(shown), told(shown), sizeOf(*beside), told(*beside));
}

} // namespace tripoise
