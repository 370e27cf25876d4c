// SPDX-License-Identifier: MIT
#include "wording/today_words.h"

#include "wording/complaint_words.h"
#include "wording/words.h"

#include <array>
#include <cmath>
#include <utility>

namespace tripoise {

QString todaySummary(const std::optional<CurrentBike>& bike)
{
    if (!bike)
        return Words::tr("Not taken");
    QStringList parts;
    if (bike->saddleHeightMm)
        parts << Words::tr("saddle %1").arg(mm(*bike->saddleHeightMm));
    if (bike->gripReachMm && bike->gripHeightMm)
        parts << Words::tr("grip %1 forward, %2 up")
                     .arg(mm(*bike->gripReachMm), mm(*bike->gripHeightMm));
    if (bike->crankMm)
        parts << Words::tr("crank %1").arg(halfMm(*bike->crankMm));
    if (bike->comfortable)
        parts << Words::tr("comfortable");
    for (const Complaint complaint : bike->complaints)
        parts << nameOf(complaint);
    return parts.isEmpty() ? Words::tr("Nothing measured yet")
                           : parts.join(Words::tr(", ", "between items of a list"));
}

QString conversionText(double saddleLengthMm, bool saddleMeasured, double noseAheadMm,
                       const Bar& bar, const Point& gripFromBar)
{
    const QString saddle =
        (saddleMeasured
             ? Words::tr("The nose is taken to be %1 ahead of the saddle point (saddle %2 long).")
             : Words::tr("The nose is taken to be %1 ahead of the saddle point (saddle %2 long, as "
                         "they usually are)."))
            .arg(mm(noseAheadMm), mm(saddleLengthMm));
    const QString across = mm(std::abs(gripFromBar.x()));
    const QString up = mm(std::abs(gripFromBar.y()));
    const bool behind = gripFromBar.x() < 0.0;
    const char* hand =
        gripFromBar.y() < 0.0
            ? (behind ? QT_TRANSLATE_NOOP(
                   "Words", "The hand is %1 behind and %2 below the bar's middle (%3).")
                      : QT_TRANSLATE_NOOP(
                          "Words", "The hand is %1 ahead of and %2 below the bar's middle (%3)."))
            : (behind ? QT_TRANSLATE_NOOP(
                   "Words", "The hand is %1 behind and %2 above the bar's middle (%3).")
                      : QT_TRANSLATE_NOOP(
                          "Words", "The hand is %1 ahead of and %2 above the bar's middle (%3)."));
    return saddle + QLatin1Char(' ') + Words::tr(hand).arg(across, up, barName(bar));
}

QString neededForGripText(const std::vector<std::string_view>& keys)
{
    // As they stand within a sentence: a field's name begins with a capital, a German noun keeps
    // it.
    static const std::array<std::pair<std::string_view, const char*>, 4> names{
        {{"today_height", QT_TRANSLATE_NOOP("Words", "saddle height")},
         {"today_nose", QT_TRANSLATE_NOOP("Words", "nose behind bottom bracket")},
         {"today_below", QT_TRANSLATE_NOOP("Words", "bar below saddle")},
         {"today_tape", QT_TRANSLATE_NOOP("Words", "nose to bar")}}};
    QStringList needed;
    for (const std::string_view key : keys)
        for (const auto& [known, name] : names)
            if (known == key)
                needed << Words::tr(name);
    return Words::tr("For the grip still needed: %1.").arg(listed(needed));
}

QString tapeTooShortText()
{
    return Words::tr("The tape from nose to bar cannot be shorter than the bar is low or high.");
}

QString notBelievableText()
{
    return Words::tr("These four do not go together on a bicycle; one of them is wrong.");
}

QString todayStep(const QString& what)
{
    return Words::tr("Today's bicycle: %1").arg(what);
}

QString barKindStep()
{
    return Words::tr("kind of bar");
}

QString useStep()
{
    return Words::tr("what it is ridden for");
}

QString riddenStep()
{
    return Words::tr("how long it has been ridden");
}

QString positionStep()
{
    return Words::tr("keep the position or advise one");
}

QString comfortableStep()
{
    return Words::tr("comfortable or not");
}

QString complaintStep()
{
    return Words::tr("what bothers");
}

QString clearStep()
{
    return Words::tr("cleared");
}

} // namespace tripoise
