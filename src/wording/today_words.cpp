// SPDX-License-Identifier: MIT
#include "wording/today_words.h"

#include "wording/words.h"

#include <cmath>

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
    const QString along = gripFromBar.x() < 0.0 ? Words::tr("%1 behind").arg(mm(-gripFromBar.x()))
                                                : Words::tr("%1 ahead of").arg(mm(gripFromBar.x()));
    const QString up = gripFromBar.y() < 0.0 ? Words::tr("%1 below").arg(mm(-gripFromBar.y()))
                                             : Words::tr("%1 above").arg(mm(gripFromBar.y()));
    return Words::tr("%1 The hand is %2 and %3 the bar's middle (%4).",
                     "sentence about the nose; behind or ahead; above or below; name of a bar")
        .arg(saddle, along, up, barName(bar));
}

QString neededForGripText(const QStringList& names)
{
    return Words::tr("For the grip still needed: %1.").arg(listed(names));
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

QString comfortableStep()
{
    return Words::tr("comfortable or not");
}

QString clearStep()
{
    return Words::tr("cleared");
}

} // namespace tripoise
