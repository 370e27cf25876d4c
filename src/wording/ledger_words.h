// SPDX-License-Identifier: MIT
//
// For and against, one consideration a line, each in its own unit.
#pragma once

#include "advice/advise.h"

#include <QString>
#include <QStringList>

namespace tripoise {

/// With as many decimals as it takes, at most two.
[[nodiscard]] QString shortestFigure(double value);
/// Why a size is the better one though its value looks like the worse; empty where it does not.
[[nodiscard]] QString ledgerRemark(const LedgerEntry& better, const LedgerEntry& worse);
[[nodiscard]] QString ledgerSide(const QString& size); ///< "for M", over what speaks for it
/// "counts twice"; how heavy the builder made it.
[[nodiscard]] QString weightWord(double factor);
[[nodiscard]] QString weightSign(double factor); ///< "×2", "×½"
/// A whole line, for those who do not see it. `besideValue` is empty with one size, `better` where
/// neither is, `remark` where the values need none, `weight` where it counts as usual.
[[nodiscard]] QString ledgerSpoken(const QString& name, const QString& shownValue,
                                   const QString& besideValue, const QString& better,
                                   const QString& remark, const QString& weight);
/// "agile or steady: wheelbase counts twice"
[[nodiscard]] QString countedOtherwise(const QString& name, const QString& weight);
[[nodiscard]] QString weightsSentence(const QStringList& counted); ///< of all that count otherwise

// What can be undone.
[[nodiscard]] QString weightStep(const QString& name);
[[nodiscard]] QString weightsAsUsualStep();

} // namespace tripoise
