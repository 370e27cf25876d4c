// SPDX-License-Identifier: MIT
#include "wording/brief_words.h"

#include "base/units.h"
#include "wording/speech.h"
#include "wording/words.h"

#include <QStringList>

namespace tripoise {

QString soleLabel()
{
    return Words::tr("thickness of the sole");
}

QString shoeLengthLabel()
{
    return Words::tr("length of the shoe, outside");
}

QString luggageLabel(bool front)
{
    return front ? Words::tr("luggage in front") : Words::tr("luggage behind");
}

QString inferredWords(Quantity quantity, double value, double sd)
{
    const bool imperial = speech().units == Units::Imperial;
    const bool mass = quantity == Quantity::Mass;
    const double unit = imperial ? factsOf(mass ? Unit::Pound : Unit::Inch).size : 1.0;
    const int decimals = imperial && !mass ? 1 : 0;
    return Words::tr("≈ %1 ± %2", "inferred value and its uncertainty")
        .arg(plain(value / unit, decimals), plain(sd / unit, decimals));
}

QString riderSummary(const Rider& rider)
{
    QStringList parts;
    for (const Measurement& measurement : rider.measurements) {
        double mean = 0.0;
        for (const double reading : measurement.readings)
            mean += reading / double(measurement.readings.size());
        if (measurement.quantity == Quantity::Stature)
            parts.prepend(bodyLength(mean));
        else if (measurement.quantity == Quantity::Inseam)
            parts << Words::tr("inseam %1").arg(mm(mean));
    }
    const int more = int(rider.measurements.size()) - int(parts.size());
    if (more > 0)
        parts << Words::tr("%n more", "measurements", more);
    return parts.join(Words::tr(", ", "between items of a list"));
}

QString ridingSummary(const Riding& riding)
{
    return nameOf(riding.mix);
}

QString nameOf(UsualMix usual)
{
    const Mix mix = mixOf(usual);
    QStringList uses;
    for (const Use use : allUses)
        if (mix.of(use) > 0.0)
            uses << nameOf(use);
    return listed(uses);
}

QString nameOf(Standard standard)
{
    switch (standard) {
    case Standard::Cfr1512: return QStringLiteral("16 CFR 1512");
    case Standard::IsoCity: return Words::tr("ISO 4210, city");
    case Standard::IsoYoungAdult: return Words::tr("ISO 4210, young adults");
    case Standard::IsoMountain: return Words::tr("ISO 4210, mountain");
    case Standard::IsoRacing: return Words::tr("ISO 4210, racing");
    }
    return {};
}

} // namespace tripoise
