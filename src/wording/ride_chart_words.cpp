// SPDX-License-Identifier: MIT
#include "wording/ride_chart_words.h"

#include "wording/words.h"

namespace tripoise {
namespace {

constexpr double unitsPerTick = 10.0;

} // namespace

QString steadyBandWords()
{
    return Words::tr("steady by itself", "speeds in a picture");
}

QString fallsWords()
{
    return Words::tr("falls", "a bicycle left to itself");
}

QString rightsWords()
{
    return Words::tr("rights itself", "a bicycle left to itself");
}

QString swingsWords()
{
    return Words::tr("swinging", "how a bicycle falls or rights itself");
}

QString leansWords()
{
    return Words::tr("leaning", "how a bicycle falls or rights itself");
}

double speedTick()
{
    return unitsPerTick * speedUnitMmS();
}

QString speedTickWords(int tick, bool last)
{
    return last ? speed(tick * speedTick()) : plain(tick * unitsPerTick);
}

QString steadyWords(const QString& size, const QString& speeds)
{
    return Words::tr("%1 steady by itself %2", "a size; speeds, or at no speed").arg(size, speeds);
}

QString chartWords(const QStringList& sizes)
{
    return sizes.isEmpty()
               ? QString()
               : Words::tr("Falling and righting over the speed: %1", "sizes").arg(listed(sizes));
}

QString wheelCarriesWords(double share)
{
    return percent(share);
}

QString centreWords(const Balance& balance)
{
    return Words::tr("%1 up", "the middle of all weight").arg(mm(balance.centre.y()));
}

QString balanceWords(const Balance& balance)
{
    return Words::tr("The middle of all weight is %1 up; the front wheel carries %2, the rear one "
                     "%3.")
        .arg(mm(balance.centre.y()), percent(balance.frontShare()),
             percent(1.0 - balance.frontShare()));
}

} // namespace tripoise
