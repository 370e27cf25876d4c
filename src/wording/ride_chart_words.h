// SPDX-License-Identifier: MIT
//
// What stands on the pictures of steadiness and of balance.
#pragma once

#include "advice/advise.h"

#include <QString>
#include <QStringList>

namespace tripoise {

[[nodiscard]] QString steadyBandWords(); ///< "steady by itself"
[[nodiscard]] QString fallsWords();      ///< above the line
[[nodiscard]] QString rightsWords();     ///< below it
[[nodiscard]] QString swingsWords();     ///< of a stronger line
[[nodiscard]] QString leansWords();      ///< of a finer line
/// From mark to mark of the speeds, mm/s: ten of the units that are spoken.
[[nodiscard]] double speedTick();
[[nodiscard]] QString speedTickWords(int tick, bool last); ///< "20", "40 km/h"
/// "M steady by itself 18–28 km/h"
[[nodiscard]] QString steadyWords(const QString& size, const QString& speeds);
/// For those who do not see it.
[[nodiscard]] QString chartWords(const QStringList& sizes);

/// "35 %" at a wheel.
[[nodiscard]] QString wheelCarriesWords(double share);
/// "all of it: 1050 mm up" – beside the centre of mass.
[[nodiscard]] QString centreWords(const Balance& balance);
[[nodiscard]] QString balanceWords(const Balance& balance); ///< for those who do not see it

} // namespace tripoise
