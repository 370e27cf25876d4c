// SPDX-License-Identifier: MIT
#include "wording/ride_findings.h"

#include "wording/words.h"

namespace tripoise {
namespace {

/// How to make sure.
QString byHand()
{
    return Words::tr("Sit the rider on in the shoes that will be worn, pedals level, and turn the "
                     "bar both ways.");
}

QString overlapSentence(const Finding& finding)
{
    const bool mudguard = finding.name == "mudguard";
    QStringList sentences;
    sentences << (mudguard ? Words::tr("The shoe reaches %1 into where the mudguard turns.")
                           : Words::tr("The shoe reaches %1 into where the front tyre turns."))
                     .arg(mm(finding.numbers.at(0)));
    if (finding.numbers.size() > 3)
        sentences << Words::tr(
                         "While pedalling it touches from %1 of steering on, in turns of %2 and "
                         "tighter, ridden below about %3: a hazard when going slowly that the "
                         "rider has to know of.")
                         .arg(degrees(finding.numbers[1]), distance(finding.numbers[2]),
                              speed(finding.numbers[3]));
    else
        sentences << Words::tr("A hazard at walking pace that the rider has to know of.");
    if (mudguard)
        sentences << Words::tr("The mudguard's stays must break away.");
    return (sentences << byHand()).join(QLatin1Char(' '));
}

QString nearSentence(const Finding& finding)
{
    return (finding.name == "mudguard"
                ? Words::tr("Only %1 between shoe and mudguard as worked out, and shoes differ by "
                            "as much.")
                : Words::tr("Only %1 between shoe and front tyre as worked out, and shoes differ "
                            "by as much."))
               .arg(mm(finding.numbers.at(0)))
           + QLatin1Char(' ') + byHand();
}

QString heelSentence(double roomMm, double wantedMm)
{
    return roomMm < 0.0
               ? Words::tr("The heel strikes a large rear bag by %1: hang it further back, or take "
                           "a smaller one.")
                     .arg(mm(-roomMm))
               : Words::tr("The heel passes a large rear bag by %1; %2 is wanted. Hang it as far "
                           "back as the carrier lets it.")
                     .arg(mm(roomMm), mm(wantedMm));
}

QString kneeSentence(double roomMm, double wantedMm, double steerDeg)
{
    if (steerDeg > 0.0)
        return roomMm < 0.0
                   ? Words::tr("The knee meets the bar when it is turned by %1.")
                         .arg(degrees(steerDeg))
                   : Words::tr("The knee comes within %1 of the bar turned by %2; %3 is wanted.")
                         .arg(mm(roomMm), degrees(steerDeg), mm(wantedMm));
    return roomMm < 0.0 ? Words::tr("The knee meets the bar at the top of the stroke.")
                        : Words::tr("The knee comes within %1 of the bar; %2 is wanted.")
                              .arg(mm(roomMm), mm(wantedMm));
}

} // namespace

QString rideSentence(const Finding& finding)
{
    const auto number = [&finding](std::size_t i) { return finding.numbers.at(i); };
    switch (finding.code) {
    case FindingCode::ToeUnderStandard:
        return Words::tr("From pedal to front wheel there are %1; at least %2 is required.")
            .arg(partMm(number(0)), partMm(number(1)));
    case FindingCode::ToeOverlaps: return overlapSentence(finding);
    case FindingCode::ToeNear: return nearSentence(finding);
    case FindingCode::HeelNearBag: {
        const QString told = heelSentence(number(0), number(1));
        if (finding.numbers.size() < 3)
            return told;
        return told + QLatin1Char(' ')
               + (number(2) < 0.0
                      ? Words::tr("With the wheel at the back of its dropouts it still strikes.")
                      : Words::tr("With the wheel at the back of its dropouts it passes by %1.")
                            .arg(mm(number(2))));
    }
    case FindingCode::KneeNearBar: return kneeSentence(number(0), number(1), number(2));
    case FindingCode::PitchesEarly:
        return Words::tr(
            "Hard braking lifts the rear wheel sooner than one counts on. Weight lower "
            "or further back helps.");
    case FindingCode::FrontWheelLight:
        return Words::tr("With the rider sitting fully back the front wheel carries %1 of the "
                         "load; at least %2 is asked for.")
            .arg(percent(number(0)), percent(number(1)));
    case FindingCode::FrontLiftsClimbing:
        return Words::tr("Pedalling seated, the front wheel lifts from a gradient of %1 on; roads "
                         "of %2 are met with. A bag in front helps.")
            .arg(percent(number(0)), percent(number(1)));
    case FindingCode::NoSteadySpeed:
        return Words::tr("By the model there is no speed at which the bicycle keeps itself "
                         "upright. Many good ones do not; it compares sizes and certifies "
                         "nothing.");
    case FindingCode::NoCapsizeSpeed:
        return Words::tr("By the model the bicycle keeps itself upright from %1 on, however fast; "
                         "that compares sizes and certifies nothing.")
            .arg(speed(number(0)));
    case FindingCode::SteeringOutOfAdvice:
        return Words::tr("Head angle %1; plumb under the front axle the steering axis passes at %2 "
                         "of the wheel's radius. The advice is %3° and %4 %; many touring and "
                         "small-wheeled bicycles lie outside.")
            .arg(degrees(number(0), 1), percent(number(3)), range(number(1), number(2)),
                 range(100.0 * number(4), 100.0 * number(5)));
    default: return {};
    }
}

} // namespace tripoise
