// SPDX-License-Identifier: MIT
//
// For and against, one consideration a line, each in its own unit.
#pragma once

#include "advice/advise.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString ledgerName(Consideration consideration); ///< "standing room"
/// "18 mm off", "+6°", "2.5 of 4 ways"; says so where the frame's table does not tell.
[[nodiscard]] QString ledgerValue(const LedgerEntry& entry, const PreparedSize& size);
/// What it is and why it counts; one or two sentences.
[[nodiscard]] QString ledgerMeaning(Consideration consideration);
/// What happens where it is made to weigh more.
[[nodiscard]] QString ledgerHeavier(Consideration consideration);
/// "counts twice"; how heavy the builder made it.
[[nodiscard]] QString weightWord(double factor);
[[nodiscard]] QString weightSign(double factor); ///< "×2", "×½"
/// A whole line, for those who do not see it. `besideValue` is empty with one size, `better` where
/// neither is, `weight` where it counts as usual.
[[nodiscard]] QString ledgerSpoken(const QString& name, const QString& shownValue,
                                   const QString& besideValue, const QString& better,
                                   const QString& weight);

} // namespace tripoise
