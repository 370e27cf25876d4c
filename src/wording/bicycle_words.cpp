// SPDX-License-Identifier: MIT
#include "wording/bicycle_words.h"

#include "wording/entry_words.h"
#include "wording/speech.h"
#include "wording/words.h"

namespace tripoise {

QString mountingText(const Mounting& mounting)
{
    const QString tyre = mounting.tyreMm ? Words::tr("%1 tyres").arg(partMm(*mounting.tyreMm))
                                         : Words::tr("tyres not stated");
    return mounting.mudguard ? Words::tr("%1 and mudguards").arg(tyre) : tyre;
}

QString bicycleSummary(const Bicycle& bicycle)
{
    QStringList parts{mountingText(mountingOf(bicycle))};
    if (bicycle.barKind)
        switch (*bicycle.barKind) {
        case BarKind::Flat: parts << Words::tr("flat bar"); break;
        case BarKind::Swept: parts << Words::tr("swept bar"); break;
        case BarKind::Drop: parts << Words::tr("drop bar"); break;
        }
    if (bicycle.crankMm)
        parts << Words::tr("cranks of %1").arg(halfMm(*bicycle.crankMm));
    return parts.join(Words::tr(", ", "between items of a list"));
}

QString wheelsDifferText(std::span<const FrameSize> frames, const Bicycle& bicycle)
{
    QStringList sizes;
    for (const FrameSize& frame : frames)
        sizes << Words::tr("%1: %2", "size: its wheels")
                     .arg(frameName(frame), mountingText(*mountedOn(frame, bicycle).mounting));
    return Words::tr(
               "The sizes are on different wheels (%1), so it is not only the frames that are "
               "compared. Which wheels does the bicycle have?")
        .arg(sizes.join(Words::tr("; ", "between items of a list that have commas")));
}

QString wheelsDifferSummary()
{
    return Words::tr("the sizes are on different wheels");
}

QString mudguardStep()
{
    return Words::tr("Mudguards");
}

QString bicycleBarStep()
{
    return Words::tr("Kind of bar");
}

QString oneMountingStep()
{
    return Words::tr("the same wheels on all sizes");
}

} // namespace tripoise
