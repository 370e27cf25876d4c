// SPDX-License-Identifier: MIT
#include "wording/complaint_words.h"

#include "wording/visible.h"
#include "wording/words.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double leastToldMm = 1.0;

/// Where the hands go, as a step of "hands up, hands back"; what is less than a millimetre is not
/// told.
QString movedHands(double upMm, double backMm)
{
    QStringList ways;
    if (std::abs(upMm) >= leastToldMm)
        ways << (upMm > 0.0 ? Words::tr("%1 higher") : Words::tr("%1 lower"))
                    .arg(mm(std::abs(upMm)));
    if (std::abs(backMm) >= leastToldMm)
        ways << (backMm > 0.0 ? Words::tr("%1 nearer") : Words::tr("%1 further"))
                    .arg(mm(std::abs(backMm)));
    return listed(ways);
}

/// What else there is to look at where the hands are not to move that way any further.
QString elsewhere(Complaint complaint)
{
    switch (complaint) {
    case Complaint::Hands:
        return Words::tr(
            "Look at the saddle's tilt, the bar's sweep and width and the grips first.");
    case Complaint::Neck:
        return Words::tr("Look at the saddle's tilt, the helmet and the glasses first.");
    case Complaint::LowerBack: return Words::tr("Look at the saddle's height and tilt first.");
    default: return Words::tr("Look at the saddle's setback and the reach of the levers first.");
    }
}

QString handsSentence(Complaint complaint, const std::vector<double>& numbers)
{
    const double up = numbers.at(0);
    const double back = numbers.at(1);
    const QString name = nameOf(complaint);
    if (std::max(std::abs(up), std::abs(back)) < leastToldMm)
        return Words::tr(
                   "%1: where the bar of today is, is not known or is another kind of bike's; "
                   "measure it, and the hands go away from there.",
                   "a complaint")
            .arg(name);
    const bool helped = complaint == Complaint::Cramped     ? back < 0.0
                        : complaint == Complaint::Stretched ? back > 0.0
                                                            : up > 0.0 || back > 0.0;
    if (!helped)
        return Words::tr(
                   "%1: today the bar is already further that way than this body asks for, and "
                   "the hands come %2.",
                   "a complaint, where the hands go")
                   .arg(name, movedHands(up, back))
               + QLatin1Char(' ') + elsewhere(complaint);
    QString told = Words::tr("%1: against today the hands come %2.", "a complaint, where they go")
                       .arg(name, movedHands(up, back));
    if (const QString own = movedHands(numbers.at(3), numbers.at(4)); !own.isEmpty())
        told += QLatin1Char(' ')
                + Words::tr("Of that %1 is for the complaint, the rest for the body.", "where to")
                      .arg(own);
    return told;
}

QString kneeSentence(Complaint complaint, double upMm)
{
    const QString name = nameOf(complaint);
    if (std::abs(upMm) < leastToldMm)
        return Words::tr("%1: the saddle stays as high as it is; look at its setback, the cranks "
                         "and the gears.",
                         "a complaint")
            .arg(name);
    return (upMm > 0.0 ? Words::tr("%1: the saddle comes %2 higher than today.", "a complaint")
                       : Words::tr("%1: the saddle comes %2 lower than today.", "a complaint"))
        .arg(name, mm(std::abs(upMm)));
}

QString whoHelps(Complaint complaint)
{
    switch (complaint) {
    case Complaint::Stretched:
    case Complaint::Cramped:
    case Complaint::Nervous:
    case Complaint::ToeTouches: return {};
    case Complaint::Hands:
    case Complaint::Feet:
    case Complaint::Saddle:
        return QLatin1Char(' ')
               + Words::tr(
                   "Numbness that lasts after the ride, or is back after one change, belongs "
                   "to a health professional.");
    default:
        return QLatin1Char(' ') + Words::tr("Pain that lasts belongs to a health professional.");
    }
}

} // namespace

QString nameOf(Complaint complaint)
{
    switch (complaint) {
    case Complaint::Hands: return Words::tr("Numb hands");
    case Complaint::Neck: return Words::tr("Neck");
    case Complaint::LowerBack: return Words::tr("Lower back");
    case Complaint::Saddle: return Words::tr("Sore seat");
    case Complaint::KneeFront: return Words::tr("Front of the knee");
    case Complaint::KneeBack: return Words::tr("Back of the knee");
    case Complaint::Feet: return Words::tr("Numb feet");
    case Complaint::Stretched: return Words::tr("Too stretched");
    case Complaint::Cramped: return Words::tr("Too cramped");
    case Complaint::Nervous: return Words::tr("Nervous steering");
    case Complaint::ToeTouches: return Words::tr("Toe touches the wheel");
    }
    return {};
}

QString inOwnWords(const std::vector<std::string>& complaints)
{
    QStringList words;
    for (const std::string& complaint : complaints)
        words << asName(complaint);
    return words.isEmpty() ? QString()
                           : Words::tr("Also: %1. Nothing is made of this.", "own words")
                                 .arg(words.join(QStringLiteral("; ")));
}

QString complaintSentence(const Finding& finding)
{
    const auto* key = std::find(complaintKeys.begin(), complaintKeys.end(), finding.name);
    const auto complaint = allComplaints[static_cast<std::size_t>(key - complaintKeys.begin())];
    switch (complaint) {
    case Complaint::KneeFront:
    case Complaint::KneeBack:
        return kneeSentence(complaint, finding.numbers.at(2)) + whoHelps(complaint);
    case Complaint::Saddle:
        return Words::tr("Sore seat: the saddle's tilt and width first, then its height; another "
                         "saddle is "
                         "tried before anything else is moved.")
               + whoHelps(complaint);
    case Complaint::Feet:
        return Words::tr("Numb feet: shoes that are wider or less tight first, then the foot "
                         "further forward on the pedal; saddle and bar stay.")
               + whoHelps(complaint);
    case Complaint::Nervous:
        return Words::tr("Nervous steering: the play of the headset, the tyres' pressure and the "
                         "luggage first; how calmly each size steers is told where it rides.");
    case Complaint::ToeTouches:
        return Words::tr("Toe touches the wheel: the room between shoe and wheel is worked out for "
                         "each size, and what gives more of it.");
    default: return handsSentence(complaint, finding.numbers) + whoHelps(complaint);
    }
}

} // namespace tripoise
