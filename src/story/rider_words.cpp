// SPDX-License-Identifier: MIT
#include "story/rider_words.h"

#include "drawing/knee_room.h"
#include "drawing/labels.h"
#include "wording/advice_text.h"
#include "wording/setup_rows.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double leastShownMm = 2.0; // to a rider, from two metres off
constexpr double leastToldDeg = 1.5;

class RiderWords {
    Q_DECLARE_TR_FUNCTIONS(RiderWords)
};

QString sizeOf(const SideView& view)
{
    return asName(view.chosen.size);
}

const JointAngle& joint(const SideView& view, Joint which)
{
    return *std::find_if(view.rider->angles.begin(), view.rider->angles.end(),
                         [which](const JointAngle& angle) { return angle.joint == which; });
}

/// Where an angle stands against its comfortable range.
enum class Stand { Less, Fine, More };
Stand standOf(const JointAngle& angle)
{
    const Angle value = angle.atBottom.value_or(angle.value);
    return value < angle.low ? Stand::Less : value > angle.high ? Stand::More : Stand::Fine;
}

/// A sentence of the size looked at, and one of the one beside it.
QString both(const QString& shown, const QString& beside)
{
    return RiderWords::tr("%1 %2", "two sentences").arg(shown, beside);
}

QString asWellOn(const QString& size)
{
    return RiderWords::tr("On the %1 as well.").arg(size);
}

QString armsWords(const SideView* beside)
{
    const QString words = RiderWords::tr("Your arms are almost locked.");
    if (!beside)
        return words;
    const bool locked = standOf(joint(*beside, Joint::Elbow)) == Stand::Less;
    return both(words, locked ? asWellOn(sizeOf(*beside))
                              : RiderWords::tr("On the %1 they are not.").arg(sizeOf(*beside)));
}

/// Where the bar is against the saddle.
enum class Height { Below, Level, Above };
double dropOf(const SideView& view)
{
    return view.chosen.saddle->point.y() - view.rider->grip.y();
}
Height heightOf(const SideView& view)
{
    const double drop = dropOf(view);
    return std::abs(drop) < leastShownMm ? Height::Level
           : drop > 0.0                  ? Height::Below
                                         : Height::Above;
}

QString barAlone(const SideView& shown)
{
    switch (heightOf(shown)) {
    case Height::Below: return RiderWords::tr("The bar is %1 below the saddle.");
    case Height::Level: return RiderWords::tr("The bar is level with the saddle.");
    case Height::Above: return RiderWords::tr("The bar is %1 above the saddle.");
    }
    return {};
}

/// Of two sizes on which it is told alike.
QString barAlike(const SideView& shown)
{
    switch (heightOf(shown)) {
    case Height::Below: return RiderWords::tr("The bar is %1 below the saddle, on the %2 as well.");
    case Height::Level:
        return RiderWords::tr("The bar is level with the saddle, on the %2 as well.");
    case Height::Above: return RiderWords::tr("The bar is %1 above the saddle, on the %2 as well.");
    }
    return {};
}

QString barOnBoth(Height shown, Height beside)
{
    switch (shown) {
    case Height::Below:
        switch (beside) {
        case Height::Below: return RiderWords::tr("The bar is %1 below the saddle, on the %2 %3.");
        case Height::Level:
            return RiderWords::tr("The bar is %1 below the saddle, on the %2 level with it.");
        case Height::Above:
            return RiderWords::tr("The bar is %1 below the saddle, on the %2 %3 above it.");
        }
        break;
    case Height::Level:
        return beside == Height::Below
                   ? RiderWords::tr("The bar is level with the saddle, on the %2 %3 below it.")
                   : RiderWords::tr("The bar is level with the saddle, on the %2 %3 above it.");
    case Height::Above:
        switch (beside) {
        case Height::Below:
            return RiderWords::tr("The bar is %1 above the saddle, on the %2 %3 below it.");
        case Height::Level:
            return RiderWords::tr("The bar is %1 above the saddle, on the %2 level with it.");
        case Height::Above: return RiderWords::tr("The bar is %1 above the saddle, on the %2 %3.");
        }
        break;
    }
    return {};
}

/// Where the shoe is against the turned wheel.
enum class Toe { Meets, JustClears, Clears, Passes };
Toe toeOf(const ToeRoom& room)
{
    return !room.mm                  ? Toe::Passes
           : *room.mm < leastToldMm  ? Toe::Meets
           : *room.mm < room.doubtMm ? Toe::JustClears
                                     : Toe::Clears;
}

/// Not every form has all three places. The name comes last, so that nothing in it is taken for a
/// place.
QString filled(QString sentence, const QString& shown, const QString& size, const QString& beside)
{
    return sentence.replace(QStringLiteral("%1"), shown)
        .replace(QStringLiteral("%3"), beside)
        .replace(QStringLiteral("%2"), size);
}

} // namespace

QString riddenName(WhichBike which, const SideView& view)
{
    return which == WhichBike::Today ? RiderWords::tr("Today") : sizeOf(view);
}

QString riddenTitle(WhichBike which, const SideView& view)
{
    if (which == WhichBike::Today)
        return RiderWords::tr("Your bicycle today");
    return RiderWords::tr("%1 %2").arg(asName(view.chosen.model), sizeOf(view)).trimmed();
}

QString riddenDescription(WhichBike which, const SideView& view)
{
    QStringList joints;
    for (const JointAngle& angle : view.rider->angles)
        joints << jointLabel(angle);
    return RiderWords::tr("You on: %1. %2.")
        .arg(riddenTitle(which, view), joints.join(RiderWords::tr(", ")));
}

QString setupWords(RiddenSetup setup, bool chosen)
{
    switch (setup) {
    case RiddenSetup::Advised: break;
    case RiddenSetup::Tried:
        return chosen ? RiderWords::tr("Chosen with you. Set up as just tried.")
                      : RiderWords::tr("Set up as just tried.");
    case RiddenSetup::Chosen: return RiderWords::tr("Chosen with you, and set up as chosen.");
    }
    return chosen ? RiderWords::tr("Chosen with you. As we would set it up for you.")
                  : RiderWords::tr("As we would set it up for you.");
}

QString changeWords(const SideView& view, const SideView& shown)
{
    const Point by = view.rider->grip - shown.rider->grip;
    QStringList ways;
    if (std::abs(by.y()) >= leastShownMm)
        ways << RiderWords::tr(by.y() > 0.0 ? QT_TRANSLATE_NOOP("RiderWords", "%1 higher")
                                            : QT_TRANSLATE_NOOP("RiderWords", "%1 lower"))
                    .arg(mm(std::abs(by.y())));
    if (std::abs(by.x()) >= leastShownMm)
        ways << RiderWords::tr(by.x() > 0.0 ? QT_TRANSLATE_NOOP("RiderWords", "%1 further away")
                                            : QT_TRANSLATE_NOOP("RiderWords", "%1 closer to you"))
                    .arg(mm(std::abs(by.x())));
    if (ways.isEmpty())
        return RiderWords::tr("Your hands are where they are on the %1.").arg(sizeOf(shown));
    return RiderWords::tr("Your hands are %1 than on the %2.").arg(listed(ways), sizeOf(shown));
}

QString fitsYou(const Advice& advice, std::size_t shown, const Prepared& prepared)
{
    const Verdict& verdict = advice.verdict;
    const QString doubted = provisionalSentence(advice);
    if (!doubted.isEmpty())
        return doubted;
    if (!verdict.named)
        return advice.candidates.size() > 1 ? RiderWords::tr("None of these fits you.")
                                            : RiderWords::tr("This one does not fit you.");
    const auto size = [&](std::size_t candidate) {
        return asName(prepared.sizes[advice.candidates[candidate].size].frame.size);
    };
    if (!verdict.other)
        return RiderWords::tr("The %1 fits you.", "a size").arg(size(*verdict.named));
    if (verdict.kind == VerdictKind::Either)
        return RiderWords::tr("Either fits you, the %1 and the %2.", "two sizes")
            .arg(size(*verdict.named), size(*verdict.other));
    return shown == *verdict.named
               ? RiderWords::tr("The %1 fits you best.", "a size").arg(size(shown))
               : RiderWords::tr("The %1 fits you better.", "a size").arg(size(*verdict.named));
}

QString standingTitle()
{
    return RiderWords::tr("Standing over it");
}

QString wholeTitle()
{
    return RiderWords::tr("The whole bicycle");
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

QString kneeAndBarTitle()
{
    return RiderWords::tr("Knee and bar");
}

QString toeTitle()
{
    return RiderWords::tr("Shoe and wheel");
}

QString backWords(const SideView& shown, const SideView* beside)
{
    if (standOf(joint(shown, Joint::Elbow)) == Stand::Less)
        return armsWords(beside);
    const JointAngle& trunk = joint(shown, Joint::Trunk);
    const Stand stand = standOf(trunk);
    const QString words = stand == Stand::Fine ? RiderWords::tr("Your back is comfortable.")
                          : stand == Stand::Less
                              ? RiderWords::tr("You lean lower than is comfortable.")
                              : RiderWords::tr("You sit more upright than your riding asks for.");
    if (!beside)
        return words;
    const JointAngle& other = joint(*beside, Joint::Trunk);
    const double more = (other.value - trunk.value).deg();
    QString comparison;
    if (standOf(other) != stand)
        comparison = standOf(other) == Stand::Fine   ? RiderWords::tr("Comfortable on the %1.")
                     : standOf(other) == Stand::Less ? RiderWords::tr("Too low on the %1.")
                                                     : RiderWords::tr("Too upright on the %1.");
    else if (std::abs(more) < leastToldDeg)
        return both(words, asWellOn(sizeOf(*beside)));
    else
        comparison = more > 0.0 ? RiderWords::tr("More upright on the %1.")
                                : RiderWords::tr("Lower on the %1.");
    return both(words, comparison.arg(sizeOf(*beside)));
}

QString kneeWords(const SideView& shown, const SideView* beside)
{
    const Stand stand = standOf(joint(shown, Joint::Knee));
    const QString words = stand == Stand::Fine   ? RiderWords::tr("Your knee bends as it should.")
                          : stand == Stand::Less ? RiderWords::tr("Your leg is stretched too far.")
                                                 : RiderWords::tr("Your knee bends too much.");
    if (!beside)
        return words;
    const Stand other = standOf(joint(*beside, Joint::Knee));
    if (other == stand)
        return both(words, asWellOn(sizeOf(*beside)));
    const QString comparison = other == Stand::Fine ? RiderWords::tr("As it should on the %1.")
                               : other == Stand::Less
                                   ? RiderWords::tr("Stretched too far on the %1.")
                                   : RiderWords::tr("Bent too much on the %1.");
    return both(words, comparison.arg(sizeOf(*beside)));
}

QString kneeAndBarWords(const SideView& shown, const SideView* beside)
{
    const double room = roomAtTheKnee(shown).mm;
    const double other = beside ? roomAtTheKnee(*beside).mm : 0.0;
    if (room <= 0.0) {
        const QString words = RiderWords::tr("Your knee would touch the bar.");
        if (!beside)
            return words;
        return both(
            words,
            other <= 0.0
                ? asWellOn(sizeOf(*beside))
                : RiderWords::tr("On the %1 it has %2 of room.").arg(sizeOf(*beside), mm(other)));
    }
    if (!beside)
        return RiderWords::tr("Your knee has %1 of room to the bar.").arg(mm(room));
    if (other <= 0.0)
        return both(RiderWords::tr("Your knee has %1 of room to the bar.").arg(mm(room)),
                    RiderWords::tr("On the %1 it would touch it.").arg(sizeOf(*beside)));
    return RiderWords::tr("Your knee has %1 of room to the bar, on the %2 %3.")
        .arg(mm(room), sizeOf(*beside), mm(other));
}

QString barWords(const SideView& shown, const SideView* beside)
{
    const QString drop = mm(std::abs(dropOf(shown)));
    if (!beside)
        return filled(barAlone(shown), drop, {}, {});
    const QString other = mm(std::abs(dropOf(*beside)));
    const Height height = heightOf(shown);
    const bool alike = height == heightOf(*beside) && (height == Height::Level || drop == other);
    return filled(alike ? barAlike(shown) : barOnBoth(height, heightOf(*beside)), drop,
                  sizeOf(*beside), other);
}

QString toeWords(const ToeRoom& shown, const std::optional<ToeRoom>& beside)
{
    const Toe toe = toeOf(shown);
    QString words;
    switch (toe) {
    case Toe::Meets:
        words = RiderWords::tr("In tight turns your shoe meets the front wheel.");
        break;
    case Toe::JustClears:
        words = RiderWords::tr("In tight turns your shoe only just clears the front wheel.");
        break;
    case Toe::Clears:
        words = RiderWords::tr("In tight turns your shoe clears the front wheel by %1.")
                    .arg(mm(*shown.mm));
        break;
    case Toe::Passes: words = RiderWords::tr("Your shoe passes beside the front wheel."); break;
    }
    if (!beside)
        return words;
    const Toe other = toeOf(*beside);
    if (other == Toe::Clears)
        return both(
            words,
            RiderWords::tr("On the %1 it clears it by %2.").arg(beside->size, mm(*beside->mm)));
    if (other == toe)
        return both(words, asWellOn(beside->size));
    const QString comparison = other == Toe::Meets ? RiderWords::tr("On the %1 they meet.")
                               : other == Toe::JustClears
                                   ? RiderWords::tr("On the %1 it only just clears it.")
                                   : RiderWords::tr("On the %1 it passes beside it.");
    return both(words, comparison.arg(beside->size));
}

QString measuredOn(const SideView& view, double valueMm)
{
    return RiderWords::tr("%1: %2", "a size and a length on it").arg(sizeOf(view), mm(valueMm));
}

QString barMeasuredOn(const SideView& view)
{
    return RiderWords::tr("%1: %2", "a size and a length on it")
        .arg(sizeOf(view), againstSaddle(dropOf(view)));
}

} // namespace tripoise
