// SPDX-License-Identifier: MIT
#include "wording/problems.h"

#include "wording/words.h"

#include <QStringList>

namespace tripoise {
namespace {

QString shortest(double value)
{
    return QString::number(value, 'g', 12);
}

/// "300 to 900 mm"
QString accepted(const Problem& problem)
{
    const QString unit =
        problem.unit.empty() ? QString() : QLatin1Char(' ') + QString::fromStdString(problem.unit);
    if (problem.low && problem.high && *problem.low == *problem.high)
        return shortest(*problem.low) + unit;
    if (problem.low && problem.high)
        return Words::tr("%1 to %2%3").arg(shortest(*problem.low), shortest(*problem.high), unit);
    if (problem.low)
        return Words::tr("at least %1%2").arg(shortest(*problem.low), unit);
    if (problem.high)
        return Words::tr("at most %1%2").arg(shortest(*problem.high), unit);
    return {};
}

QStringList names(const Problem& problem)
{
    QStringList result;
    for (const std::string& name : problem.names)
        result << QString::fromStdString(name);
    return result;
}

QString text(const Problem& problem)
{
    const QString value = QString::fromStdString(problem.value);
    const QString list = names(problem).join(QStringLiteral(", "));
    const QString first = problem.names.empty() ? QString() : names(problem).first();
    switch (problem.code) {
    case ProblemCode::NotReadable: return Words::tr("cannot be read: %1").arg(value);
    case ProblemCode::TooLarge:
        return Words::tr("%1 bytes: too large for a fitting; accepted: %2")
            .arg(value, accepted(problem));
    case ProblemCode::NotJson: return Words::tr("not JSON: %1").arg(value);
    case ProblemCode::TooDeep:
        return Words::tr("%1: nested too deeply; accepted: %2").arg(value, accepted(problem));
    case ProblemCode::DuplicateKey:
        return Words::tr("the key stands twice in one object: %1").arg(value);
    case ProblemCode::WrongFormat:
        return Words::tr("%1: not a fitting; accepted: %2").arg(value, list);
    case ProblemCode::NewerVersion:
        return Words::tr("version %1 is newer than this program knows; accepted: %2")
            .arg(value, accepted(problem));
    case ProblemCode::WrongType: return Words::tr("%1: wrong type; accepted: %2").arg(value, list);
    case ProblemCode::UnknownKey:
        return list.isEmpty()
                   ? Words::tr("unknown key, with the value %1").arg(value)
                   : Words::tr("unknown key, with the value %1; did you mean: %2").arg(value, list);
    case ProblemCode::Missing:
        return list.isEmpty() ? Words::tr("missing; accepted: %1").arg(accepted(problem))
                              : Words::tr("missing; accepted: %1").arg(list);
    case ProblemCode::OutOfRange:
        return Words::tr("%1: out of range; accepted: %2").arg(value, accepted(problem));
    case ProblemCode::UnitSlip:
        return Words::tr("%1: out of range, but likely in %2; accepted: %3")
            .arg(value, names(problem).join(Words::tr(" or ")), accepted(problem));
    case ProblemCode::NotOneOf: return Words::tr("%1: not known; accepted: %2").arg(value, list);
    case ProblemCode::TooFew:
        if (first == QLatin1String("in_stock"))
            return Words::tr("none of them is in stock; accepted: at least one with in_stock true");
        return Words::tr("%1 entries: too few; accepted: %2").arg(value, accepted(problem));
    case ProblemCode::TooMany:
        return Words::tr("%1 entries: too many; accepted: %2").arg(value, accepted(problem));
    case ProblemCode::SharesSum:
        return Words::tr("the shares sum to %1; accepted: shares that sum to 1").arg(value);
    case ProblemCode::Contradiction:
        return Words::tr("%1: contradicts %2, which leaves %3")
            .arg(value, first, accepted(problem));
    case ProblemCode::Duplicate:
        return Words::tr("%1: the same as %2; accepted: each size once").arg(value, first);
    case ProblemCode::NothingFits:
        return Words::tr(
                   "no stem fits a frame and a bar: steerer/clamp of the stems is %1; accepted: "
                   "a steerer of %2 mm with a clamp of %3 mm")
            .arg(value, first, names(problem).value(1));
    }
    return value;
}

} // namespace

QString sentence(const Problem& problem)
{
    const QString path =
        problem.path.empty() ? Words::tr("the document") : QString::fromStdString(problem.path);
    return Words::tr("%1: %2").arg(path, text(problem));
}

} // namespace tripoise
