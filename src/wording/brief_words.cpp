// SPDX-License-Identifier: MIT
#include "wording/brief_words.h"

#include "wording/speech.h"
#include "wording/words.h"

#include <QStringList>

#include <array>

namespace tripoise {
namespace {

constexpr double mmPerInch = 25.4;
constexpr double kgPerPound = 0.45359237;

} // namespace

QString useName(Use use)
{
    return nameOf(use);
}

QString soleLabel()
{
    return Words::tr("thickness of the sole");
}

QString shoeLengthLabel()
{
    return Words::tr("length of the shoe, outside");
}

QString secondReading()
{
    return Words::tr("second reading");
}

QString luggageLabel(bool front)
{
    return front ? Words::tr("luggage in front") : Words::tr("luggage behind");
}

QString inferredWords(Quantity quantity, double value, double sd)
{
    const bool imperial = speech().units == Units::Imperial;
    const double unit = quantity == Quantity::Mass ? (imperial ? kgPerPound : 1.0)
                        : imperial                 ? mmPerInch
                                                   : 1.0;
    const int decimals = imperial && quantity != Quantity::Mass ? 1 : 0;
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

Mix presetMix(int preset)
{
    const auto of = [](std::initializer_list<std::pair<Use, double>> shares) {
        Mix mix;
        for (const auto& [use, share] : shares)
            mix.share[indexOf(use)] = share;
        return mix;
    };
    switch (preset) {
    case 0: return Mix::only(Use::City);
    case 1: return Mix::only(Use::Commuting);
    case 2: return Mix::only(Use::FastCommuting);
    case 3: return of({{Use::FastCommuting, 0.7}, {Use::Touring, 0.3}});
    case 4: return Mix::only(Use::Touring);
    case 5: return of({{Use::Road, 0.6}, {Use::Gravel, 0.4}});
    default: return Mix::only(Use::Commuting);
    }
}

QString presetName(int preset)
{
    switch (preset) {
    case 0: return Words::tr("errands");
    case 1: return Words::tr("to work");
    case 2: return Words::tr("to work, fast");
    case 3: return Words::tr("work and away");
    case 4: return Words::tr("long trips");
    case 5: return Words::tr("for sport");
    default: return {};
    }
}

} // namespace tripoise
