// SPDX-License-Identifier: MIT
#pragma once

#include "base/finding.h"
#include "rider/measurements.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString keyOf(FindingCode code);         ///< "post_too_short", for documents
[[nodiscard]] QString keyOf(Severity severity);        ///< "caution"
[[nodiscard]] QString severityWord(Severity severity); ///< "look here"
[[nodiscard]] QString sentence(const Finding& finding);
/// The measurement that a finding is about, and an amount of it.
[[nodiscard]] Quantity quantityOf(const Finding& finding);
[[nodiscard]] QString amountOf(Quantity quantity, double value);
/// "1 limit broken, 4 to look at"
[[nodiscard]] QString checksSummary(int limits, int others);

} // namespace tripoise
