// SPDX-License-Identifier: MIT
//
// Words of the brief: what the rider and the riding come to in a line.
#pragma once

#include "advice/mix.h"
#include "advice/riding.h"
#include "rider/measurements.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString soleLabel();
[[nodiscard]] QString shoeLengthLabel();
[[nodiscard]] QString luggageLabel(bool front);
/// "≈ 612 ± 16 mm", of what was not measured.
[[nodiscard]] QString inferredWords(Quantity quantity, double value, double sd);
[[nodiscard]] QString riderSummary(const Rider& rider);
[[nodiscard]] QString ridingSummary(const Riding& riding);

[[nodiscard]] QString nameOf(UsualMix usual); ///< "touring", by its kinds of riding
[[nodiscard]] QString nameOf(Standard standard);

} // namespace tripoise
