// SPDX-License-Identifier: MIT
#include "wording/plan_words.h"

#include "wording/words.h"

#include <cmath>

namespace tripoise {

QString steerWords(double degreesToLeft)
{
    if (std::abs(degreesToLeft) < 0.5)
        return Words::tr("straight ahead", "how the bar is turned");
    return (degreesToLeft > 0.0 ? Words::tr("%1 to the left", "how the bar is turned")
                                : Words::tr("%1 to the right", "how the bar is turned"))
        .arg(degrees(std::abs(degreesToLeft)));
}

QString gapWords(double gapMm, bool mudguard)
{
    if (gapMm >= 0.0)
        return Words::tr("%1 clear", "shoe and front wheel").arg(mm(gapMm));
    return (mudguard ? Words::tr("%1 into the mudguard", "the shoe")
                     : Words::tr("%1 into the tyre", "the shoe"))
        .arg(mm(-gapMm));
}

QString planWords(double degreesToLeft, const QString& crank, double gapMm, bool mudguard)
{
    return Words::tr("seen from above: bar %1, right crank at %2, shoe %3",
                     "how the bar is turned; an angle; how near the shoe comes to the wheel")
        .arg(steerWords(degreesToLeft), crank, gapWords(gapMm, mudguard));
}

} // namespace tripoise
