// SPDX-License-Identifier: MIT
#include "wording/ledger_words.h"

#include "wording/words.h"

#include <cmath>

namespace tripoise {
namespace {

constexpr double leastHandMm = 0.5;

} // namespace

QString shortestFigure(double value)
{
    const auto left = [value](double step) {
        return std::abs(value - std::round(value / step) * step) > 0.05 * step;
    };
    return plain(value, !left(1.0) ? 0 : !left(0.1) ? 1 : 2);
}

QString ledgerRemark(const LedgerEntry& better, const LedgerEntry& worse)
{
    // Millimetres back and millimetres up are not alike to back and arms; all other values are
    // weighed by themselves alone.
    if (better.consideration != Consideration::Posture || better.value < worse.value + leastHandMm)
        return {};
    return Words::tr("further off, yet easier on back and arms", "the hands");
}

QString ledgerSide(const QString& size)
{
    return Words::tr("for %1", "a size; over what speaks for it").arg(size);
}

QString weightWord(double factor)
{
    if (factor == 0.0)
        return Words::tr("does not count", "a weight");
    if (factor == 0.5)
        return Words::tr("counts half", "a weight");
    if (factor == 1.0)
        return Words::tr("counts as usual", "a weight");
    if (factor == 2.0)
        return Words::tr("counts twice", "a weight");
    return Words::tr("counts %1 times", "a weight").arg(shortestFigure(factor));
}

QString weightSign(double factor)
{
    return factor == 0.5 ? QStringLiteral("×½") : QStringLiteral("×") + shortestFigure(factor);
}

QString ledgerSpoken(const QString& name, const QString& shownValue, const QString& besideValue,
                     const QString& better, const QString& remark, const QString& weight)
{
    QStringList parts{besideValue.isEmpty()
                          ? Words::tr("%1: %2", "a consideration, its value").arg(name, shownValue)
                          : Words::tr("%1: %2 against %3", "a consideration, two values")
                                .arg(name, shownValue, besideValue)};
    if (!better.isEmpty())
        parts << Words::tr("speaks for %1", "a size").arg(better);
    for (const QString& more : {remark, weight})
        if (!more.isEmpty())
            parts << more;
    return parts.join(Words::tr(", ", "between items of a list"));
}

QString countedOtherwise(const QString& name, const QString& weight)
{
    return Words::tr("%1 %2", "a consideration, how it counts").arg(name, weight);
}

QString weightsSentence(const QStringList& counted)
{
    return Words::tr("With weights of your own: %1.", "how they count").arg(listed(counted));
}

QString weightStep(const QString& name)
{
    return Words::tr("weight of %1", "an edit").arg(name);
}

QString weightsAsUsualStep()
{
    return Words::tr("weights as usual", "an edit");
}

} // namespace tripoise
