// SPDX-License-Identifier: MIT
//
// What the view from above says of shoe, wheel and crank.
#pragma once

#include <QString>

namespace tripoise {

/// "23° to the left", "straight ahead"; positive is to the left.
[[nodiscard]] QString steerWords(double degreesToLeft);
/// "12 mm into the tyre", "34 mm clear"
[[nodiscard]] QString gapWords(double gapMm, bool mudguard);
/// All of it, for those who do not see it.
[[nodiscard]] QString planWords(double degreesToLeft, const QString& crank, double gapMm,
                                bool mudguard);

} // namespace tripoise
