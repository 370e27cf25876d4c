// SPDX-License-Identifier: MIT
#include "wording/ledger_words.h"

#include "wording/words.h"

#include <cmath>

namespace tripoise {
namespace {

constexpr double leastKneeToldMm = 0.5;
constexpr double leastHandMm = 0.5;

QString kneeValue(double aheadMm)
{
    if (std::abs(aheadMm) < leastKneeToldMm)
        return Words::tr("in its place", "the knee");
    return (aheadMm > 0.0 ? Words::tr("%1 too far forward", "the knee")
                          : Words::tr("%1 too far back", "the knee"))
        .arg(mm(std::abs(aheadMm)));
}

/// With as many decimals as it takes, at most two.
QString figure(double value)
{
    const auto left = [value](double step) {
        return std::abs(value - std::round(value / step) * step) > 0.05 * step;
    };
    return plain(value, !left(1.0) ? 0 : !left(0.1) ? 1 : 2);
}

QString waysValue(double ways)
{
    const double told = std::round(ways * 10.0) / 10.0;
    return Words::tr("%1 of %2 ways", "a bar can still be moved")
        .arg(figure(told), plain(barDirections));
}

} // namespace

QString ledgerName(Consideration consideration)
{
    switch (consideration) {
    case Consideration::Posture: return Words::tr("hands", "for and against");
    case Consideration::Setback: return Words::tr("knee over pedal", "for and against");
    case Consideration::StemLength: return Words::tr("stem length", "for and against");
    case Consideration::Spacers: return Words::tr("spacers", "for and against");
    case Consideration::StemAngle: return Words::tr("stem angle", "for and against");
    case Consideration::ExposedPost: return Words::tr("seat post showing", "for and against");
    case Consideration::Standover: return Words::tr("standing room", "for and against");
    case Consideration::Agility: return Words::tr("agile or steady: wheelbase", "for and against");
    case Consideration::Compactness:
        return Words::tr("small to carry: stack + reach", "for and against");
    case Consideration::Adjustment: return Words::tr("room to adjust", "for and against");
    case Consideration::Crank: return Words::tr("crank length", "for and against");
    case Consideration::BarWidth: return Words::tr("bar width", "for and against");
    case Consideration::ToeOverlap: return Words::tr("toe overlap", "for and against");
    }
    return {};
}

QString ledgerValue(const LedgerEntry& entry, const PreparedSize& size)
{
    switch (entry.consideration) {
    case Consideration::Posture: return Words::tr("%1 off", "the hands").arg(mm(entry.value));
    case Consideration::Setback: return kneeValue(entry.value);
    case Consideration::StemLength:
    case Consideration::Spacers:
    case Consideration::Crank:
    case Consideration::BarWidth: return halfMm(entry.value);
    case Consideration::StemAngle: return signedDegrees(entry.value);
    case Consideration::ExposedPost:
        return size.skeleton.seatTubeMm ? partMm(entry.value)
                                        : Words::tr("not known", "seat post showing");
    case Consideration::Standover:
        return size.skeleton.standoverMm ? mm(entry.value)
                                         : Words::tr("not known", "standing room");
    case Consideration::Agility:
    case Consideration::Compactness: return partMm(entry.value);
    case Consideration::Adjustment: return waysValue(entry.value);
    case Consideration::ToeOverlap:
        return entry.value > 0.0 ? mm(entry.value) : Words::tr("none", "toe overlap");
    }
    return {};
}

QString ledgerMeaning(Consideration consideration)
{
    switch (consideration) {
    case Consideration::Posture:
        return Words::tr(
            "How far the hands are from where back, arms and elbows would be easiest, "
            "over all of the riding. The box of parts seldom meets that place exactly.");
    case Consideration::Setback:
        return Words::tr(
            "Where the knee comes to stand over the level pedal, against what suits the "
            "riding. Rails and seat post may not let the saddle go there.");
    case Consideration::StemLength:
        return Words::tr(
            "The stem this size needs. A stem of the length usual for the riding steers "
            "as one expects; far longer or shorter ones do not.");
    case Consideration::Spacers:
        return Words::tr(
            "Spacers under the stem. Few look right and keep the steerer short; a tall "
            "stack says that the frame is low for the rider.");
    case Consideration::StemAngle:
        return Words::tr(
            "The stem's angle as mounted. A steep one says that the frame is too low or "
            "too high for the rider.");
    case Consideration::ExposedPost:
        return Words::tr(
            "Seat post between seat tube and saddle. Little leaves no room for a bag, a "
            "shorter rider or a suspension post; much flexes and looks tall.");
    case Consideration::Standover:
        return Words::tr(
            "Room between the rider and the top tube when standing over it, shoes on.");
    case Consideration::Agility:
        return Words::tr("A short wheelbase turns quickly, a long one holds its line. Quick riding "
                         "in traffic wants the one, touring with bags the other.");
    case Consideration::Compactness:
        return Words::tr(
            "Stack and reach together stand for how much bicycle there is to lift, park "
            "and lock.");
    case Consideration::Adjustment:
        return Words::tr(
            "Whether the bar can still go up, down, nearer and further with what is in "
            "the box, should the rider ask for it after a month.");
    case Consideration::Crank:
        return Words::tr("Cranks against what suits the length of the leg. Those in the box that "
                         "come nearest are taken.");
    case Consideration::BarWidth:
        return Words::tr("The bar's width against the rider's shoulders, or what the riding is "
                         "used to. A wide bar can often be cut down.");
    case Consideration::ToeOverlap:
        return Words::tr("How far the shoe reaches into where tyre or mudguard turns: a hazard at "
                         "walking pace. In traffic it counts twice.");
    }
    return {};
}

QString ledgerHeavier(Consideration consideration)
{
    switch (consideration) {
    case Consideration::Posture:
        return Words::tr(
            "Weighing more, it lets the best place for the hands decide over all else.");
    case Consideration::Setback:
        return Words::tr("Weighing more, it favours the size whose saddle can go where the knee "
                         "wants it.");
    case Consideration::StemLength:
        return Words::tr("Weighing more, it favours the size that takes a stem of usual length.");
    case Consideration::Spacers:
        return Words::tr("Weighing more, it favours the size that needs fewer spacers.");
    case Consideration::StemAngle:
        return Words::tr("Weighing more, it favours the size that does without a steep stem.");
    case Consideration::ExposedPost:
        return Words::tr(
            "Weighing more, it favours the size that shows an ordinary length of post.");
    case Consideration::Standover:
        return Words::tr("Weighing more, it favours the size with more room over its top tube.");
    case Consideration::Agility:
        return Words::tr("Weighing more, it favours the size that handles as this riding wants.");
    case Consideration::Compactness:
        return Words::tr("Weighing more, it favours the smaller size.");
    case Consideration::Adjustment:
        return Words::tr("Weighing more, it favours the size whose bar can still be moved.");
    case Consideration::Crank:
        return Words::tr("Weighing more, it favours cranks that suit the leg over those fitted.");
    case Consideration::BarWidth:
        return Words::tr("Weighing more, it favours a bar of the right width.");
    case Consideration::ToeOverlap:
        return Words::tr("Weighing more, it favours the size and the cranks that keep the shoe "
                         "clear of the front wheel.");
    }
    return {};
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
    return Words::tr("counts %1 times", "a weight").arg(figure(factor));
}

QString weightSign(double factor)
{
    return factor == 0.5 ? QStringLiteral("×½") : QStringLiteral("×") + figure(factor);
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
