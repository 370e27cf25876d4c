// SPDX-License-Identifier: MIT
#include "wording/findings.h"

#include "wording/complaint_words.h"
#include "wording/ride_findings.h"
#include "wording/words.h"

#include <array>
#include <cmath>

namespace tripoise {

Quantity quantityOf(const Finding& finding)
{
    for (int i = 0; i < quantityCount; ++i)
        if (quantityKeys[static_cast<std::size_t>(i)] == finding.name)
            return static_cast<Quantity>(i);
    return Quantity::Stature;
}

QString amountOf(Quantity quantity, double value)
{
    switch (quantity) {
    case Quantity::Mass: return mass(value);
    case Quantity::Stature: return bodyLength(value);
    default: return mm(value);
    }
}

namespace {

QString geometryAmount(const Finding& finding)
{
    const bool angle = finding.name.ends_with("_deg");
    return angle ? degrees(finding.numbers[0], 1) : partMm(finding.numbers[0]);
}

} // namespace

QString keyOf(Severity severity)
{
    switch (severity) {
    case Severity::Note: return QStringLiteral("note");
    case Severity::Caution: return QStringLiteral("caution");
    case Severity::Limit: return QStringLiteral("limit");
    }
    return {};
}

QString severityWord(Severity severity)
{
    switch (severity) {
    case Severity::Note: return Words::tr("note");
    case Severity::Caution: return Words::tr("take care");
    case Severity::Limit: return Words::tr("limit broken");
    }
    return {};
}

QString checksSummary(int limits, int others)
{
    QStringList parts;
    if (limits > 0)
        parts << Words::tr("%n limit(s) broken", nullptr, limits);
    if (others > 0)
        parts << Words::tr("%n to look at", nullptr, others);
    return parts.join(Words::tr(", ", "between items of a list"));
}

namespace {

/// Saddle higher, further back; from the saddle point, hand further ahead, higher.
QString keptMissedSentence(const std::vector<double>& missed)
{
    static constexpr std::array more{QT_TRANSLATE_NOOP("Words", "the saddle %1 higher"),
                                     QT_TRANSLATE_NOOP("Words", "the saddle %1 further back"),
                                     QT_TRANSLATE_NOOP("Words", "the hand %1 further ahead"),
                                     QT_TRANSLATE_NOOP("Words", "the hand %1 higher")};
    static constexpr std::array less{QT_TRANSLATE_NOOP("Words", "the saddle %1 lower"),
                                     QT_TRANSLATE_NOOP("Words", "the saddle %1 further forward"),
                                     QT_TRANSLATE_NOOP("Words", "the hand %1 nearer"),
                                     QT_TRANSLATE_NOOP("Words", "the hand %1 lower")};
    constexpr double toldMm = 1.0;
    QStringList parts;
    for (std::size_t i = 0; i < more.size(); ++i)
        if (const double off = missed.at(i); std::abs(off) >= toldMm)
            parts << Words::tr(off > 0.0 ? more[i] : less[i]).arg(mm(std::abs(off)));
    return Words::tr("Of the kept position these parts miss: %1.").arg(listed(parts));
}

/// An angle and the range it is outside of, in whole degrees unless these would hide that it is.
QString outsideOf(const QString& sentence, const Finding& finding)
{
    const double value = finding.numbers[0];
    const double low = finding.numbers[1];
    const double high = finding.numbers[2];
    const bool hidden =
        std::round(value) >= std::round(low) && std::round(value) <= std::round(high);
    return sentence.arg(degrees(value, hidden ? 1 : 0),
                        hidden ? Words::tr("%1–%2", "from, to").arg(plain(low, 1), plain(high, 1))
                               : range(low, high));
}

} // namespace

QString keyOf(FindingCode code)
{
    switch (code) {
    case FindingCode::SuspiciousMeasurement: return QStringLiteral("suspicious_measurement");
    case FindingCode::ReadingsDisagree: return QStringLiteral("readings_disagree");
    case FindingCode::WheelsDiffer: return QStringLiteral("wheels_differ");
    case FindingCode::UnusualBody: return QStringLiteral("unusual_body");
    case FindingCode::RiddenHeightCounts: return QStringLiteral("ridden_height_counts");
    case FindingCode::RiddenForAnotherUse: return QStringLiteral("ridden_for_another_use");
    case FindingCode::SexNotStated: return QStringLiteral("sex_not_stated");
    case FindingCode::InseamNotTold: return QStringLiteral("inseam_not_told");
    case FindingCode::RiddenSaddleDoubtful: return QStringLiteral("ridden_saddle_doubtful");
    case FindingCode::NoseForSaddlePoint: return QStringLiteral("nose_for_saddle_point");
    case FindingCode::PositionKept: return QStringLiteral("position_kept");
    case FindingCode::Complained: return QStringLiteral("complained");
    case FindingCode::FeetDownLowers: return QStringLiteral("feet_down_lowers");
    case FindingCode::KeptPositionMissed: return QStringLiteral("kept_position_missed");
    case FindingCode::FirstStep: return QStringLiteral("first_step");
    case FindingCode::FeetStayUp: return QStringLiteral("feet_stay_up");
    case FindingCode::GeometryAssumed: return QStringLiteral("geometry_assumed");
    case FindingCode::GeometryDerived: return QStringLiteral("geometry_derived");
    case FindingCode::NoCockpitFits: return QStringLiteral("no_cockpit_fits");
    case FindingCode::PostTooShort: return QStringLiteral("post_too_short");
    case FindingCode::SaddleCannotGoLow: return QStringLiteral("saddle_cannot_go_low");
    case FindingCode::SpacersOverLimit: return QStringLiteral("spacers_over_limit");
    case FindingCode::SteererTooShort: return QStringLiteral("steerer_too_short");
    case FindingCode::TyreTooWide: return QStringLiteral("tyre_too_wide");
    case FindingCode::OverSystemWeight: return QStringLiteral("over_system_weight");
    case FindingCode::NoStandover: return QStringLiteral("no_standover");
    case FindingCode::PedalStrikes: return QStringLiteral("pedal_strikes");
    case FindingCode::StandoverTight: return QStringLiteral("standover_tight");
    case FindingCode::SetbackOutOfRails: return QStringLiteral("setback_out_of_rails");
    case FindingCode::StemOutOfNaturalRange: return QStringLiteral("stem_out_of_natural_range");
    case FindingCode::BarOutOfReach: return QStringLiteral("bar_out_of_reach");
    case FindingCode::TrunkOutOfRange: return QStringLiteral("trunk_out_of_range");
    case FindingCode::ArmTrunkOutOfRange: return QStringLiteral("arm_trunk_out_of_range");
    case FindingCode::KneeOutOfRange: return QStringLiteral("knee_out_of_range");
    case FindingCode::CrankSwap: return QStringLiteral("crank_swap");
    case FindingCode::BarCutDown: return QStringLiteral("bar_cut_down");
    case FindingCode::LeaveSteererLong: return QStringLiteral("leave_steerer_long");
    case FindingCode::QuillMark: return QStringLiteral("quill_mark");
    case FindingCode::HosesShort: return QStringLiteral("hoses_short");
    case FindingCode::ToeUnderStandard: return QStringLiteral("toe_under_standard");
    case FindingCode::ToeOverlaps: return QStringLiteral("toe_overlaps");
    case FindingCode::ToeNear: return QStringLiteral("toe_near");
    case FindingCode::HeelNearBag: return QStringLiteral("heel_near_bag");
    case FindingCode::KneeNearBar: return QStringLiteral("knee_near_bar");
    case FindingCode::PitchesEarly: return QStringLiteral("pitches_early");
    case FindingCode::FrontWheelLight: return QStringLiteral("front_wheel_light");
    case FindingCode::FrontLiftsClimbing: return QStringLiteral("front_lifts_climbing");
    case FindingCode::NoSteadySpeed: return QStringLiteral("no_steady_speed");
    case FindingCode::NoCapsizeSpeed: return QStringLiteral("no_capsize_speed");
    case FindingCode::SteeringOutOfAdvice: return QStringLiteral("steering_out_of_advice");
    case FindingCode::SaddleBeyondRails: return QStringLiteral("saddle_beyond_rails");
    case FindingCode::BarBelowStem: return QStringLiteral("bar_below_stem");
    case FindingCode::StemNotMade: return QStringLiteral("stem_not_made");
    }
    return {};
}

QString sentence(const Finding& finding)
{
    const auto number = [&finding](std::size_t i) { return finding.numbers.at(i); };
    const QString use = finding.use ? nameOf(*finding.use) : QString();
    switch (finding.code) {
    case FindingCode::SuspiciousMeasurement: {
        const Quantity quantity = quantityOf(finding);
        return Words::tr(
                   "Measure the %1 again: %2 does not go with the rest, which foretells about "
                   "%3 (odds %4). It is left out until then.")
            .arg(nameOf(quantity), amountOf(quantity, number(0)), amountOf(quantity, number(1)),
                 oneIn(number(2)));
    }
    case FindingCode::ReadingsDisagree: {
        const Quantity quantity = quantityOf(finding);
        return Words::tr("Measure the %1 again: the readings run from %2 to %3.")
            .arg(nameOf(quantity), amountOf(quantity, number(0)), amountOf(quantity, number(1)));
    }
    case FindingCode::WheelsDiffer:
        if (number(0) == number(1))
            return Words::tr(
                "Some of the sizes have mudguards and some have none, so it is not only the frames "
                "that are compared: say which the bicycle has.");
        return Words::tr(
                   "The sizes are on different tyres, %1 to %2, so it is not only the frames that "
                   "are compared: say which the bicycle has.")
            .arg(partMm(number(0)), partMm(number(1)));
    case FindingCode::UnusualBody:
        return Words::tr("These measurements together are rare (%1): a slip of the tape, or a body "
                         "that formulas know little of.")
            .arg(oneIn(number(0)));
    case FindingCode::RiddenHeightCounts:
        return Words::tr("The saddle ridden without complaint at %1 counts: body measures alone "
                         "would say %2, so the target moves by %3.")
            .arg(mm(number(0)), mm(number(1)), mm(number(2)));
    case FindingCode::RiddenForAnotherUse:
        return Words::tr("The bike ridden today is another kind of bike: its saddle height counts, "
                         "where its bar is does not.");
    case FindingCode::SexNotStated:
        return Words::tr("Sex is not stated, so what was not measured is inferred for either, less "
                         "sharply.");
    case FindingCode::InseamNotTold:
        return Words::tr("The size is provisional: the inseam is inferred from the height. Measure "
                         "it before anything is ordered.");
    case FindingCode::RiddenSaddleDoubtful:
        return Words::tr("The saddle ridden today, %1 high, is doubted: on it the knee would be "
                         "bent %2 at the lowest pedal. It is not kept; measure it again.")
            .arg(mm(number(0)), degrees(number(1)));
    case FindingCode::NoseForSaddlePoint:
        return Words::tr("A setback of %1 is that of a saddle's nose; it is taken for the nose's, "
                         "so that the saddle point is %2 behind the bottom bracket. Measure again "
                         "where the plumb line hung.")
            .arg(mm(number(0)), mm(number(1)));
    case FindingCode::PositionKept:
        if (finding.numbers.size() < 4)
            return Words::tr("Today's saddle is kept: %1 high, %2 back.")
                .arg(mm(number(0)), mm(number(1)));
        return (number(3) < 0.0
                    ? Words::tr("Today's position is kept: saddle %1 high, %2 back; the "
                                "hand %3 ahead of the saddle point, %4 below it.")
                    : Words::tr("Today's position is kept: saddle %1 high, %2 back; the "
                                "hand %3 ahead of the saddle point, %4 above it."))
            .arg(mm(number(0)), mm(number(1)), mm(number(2)), mm(std::abs(number(3))));
    case FindingCode::Complained: return complaintSentence(finding);
    case FindingCode::FeetDownLowers:
        return Words::tr("For a foot on the ground the saddle is %1 lower, and the knee bent %3 at "
                         "the lowest pedal instead of %2.")
            .arg(mm(number(0)), degrees(number(1)), degrees(number(2)));
    case FindingCode::KeptPositionMissed: return keptMissedSentence(finding.numbers);
    case FindingCode::FirstStep:
        return Words::tr("Today the saddle to %1 high, %2 back, the hand %3 forward and %4 up; the "
                         "rest when that has been ridden.")
            .arg(mm(number(0)), mm(number(1)), mm(number(2)), mm(number(3)));
    case FindingCode::FeetStayUp:
        return Words::tr("Sitting on this saddle the feet are still %1 above the ground: feet down "
                         "from the saddle is another kind of frame.")
            .arg(mm(number(0)));
    case FindingCode::GeometryAssumed:
        return Words::tr("The table does not give the %1; %2 is assumed.")
            .arg(geometryName(finding.name), geometryAmount(finding));
    case FindingCode::GeometryDerived:
        return Words::tr("The %1, %2, follows from the rest of the table.")
            .arg(geometryName(finding.name), geometryAmount(finding));
    case FindingCode::NoCockpitFits:
        return Words::tr("Nothing in the box of parts fits this size's steerer and a bar.");
    case FindingCode::PostTooShort:
        return Words::tr("The seat post is too short by %1: at least %2 of it must stay inside.")
            .arg(partMm(number(1) - number(0)), partMm(number(1)));
    case FindingCode::SaddleCannotGoLow:
        return Words::tr("The saddle cannot go low enough: with the seat post all the way in it is "
                         "still %1 too high.")
            .arg(mm(number(1) - number(0)));
    case FindingCode::SpacersOverLimit:
        return Words::tr("%1 of spacers is more than the %2 allowed.")
            .arg(halfMm(number(0)), halfMm(number(1)));
    case FindingCode::SteererTooShort:
        return Words::tr("The steerer is too short: this set-up needs %1 of it, and it is %2 long.")
            .arg(partMm(number(0)), partMm(number(1)));
    case FindingCode::TyreTooWide:
        return articled(Words::tr("A %1 tyre is wider than the %2 the frame allows.")
                            .arg(halfMm(number(0)), halfMm(number(1))));
    case FindingCode::OverSystemWeight:
        return Words::tr("Rider, bicycle and luggage weigh %1; the frame allows %2.")
            .arg(mass(number(0)), mass(number(1)));
    case FindingCode::NoStandover:
        return Words::tr("The top tube is %1 too high to stand over.").arg(mm(-number(0)));
    case FindingCode::PedalStrikes:
        return Words::tr("The pedal meets the ground at %1 of lean; at least %2 is required.")
            .arg(degrees(number(0)), degrees(number(1)));
    case FindingCode::StandoverTight:
        if (number(0) < 0.0)
            return Words::tr("The top tube is %1 higher than the rider standing over it in shoes; "
                             "%2 of room is wanted.")
                .arg(mm(-number(0)), mm(number(1)));
        return Words::tr("Only %1 of standover clearance; %2 is wanted.")
            .arg(mm(number(0)), mm(number(1)));
    case FindingCode::SetbackOutOfRails:
        return Words::tr("The knee asks for %1 of saddle setback; rails and post reach %2.")
            .arg(mm(number(0)), mm(number(1)));
    case FindingCode::StemOutOfNaturalRange:
        return articled(Words::tr("A %1 stem is outside the %2 mm usual for %3.")
                            .arg(halfMm(number(0)), range(number(1), number(2)), use));
    case FindingCode::BarOutOfReach:
        return Words::tr("The bar is %1 out of reach for %2.").arg(mm(number(0)), use);
    case FindingCode::TrunkOutOfRange:
        return outsideOf(Words::tr("The back, at %1 from the horizontal, is outside the %2° "
                                   "comfortable for %3."),
                         finding)
            .arg(use);
    case FindingCode::ArmTrunkOutOfRange:
        return outsideOf(
                   Words::tr(
                       "The arms, at %1 to the back, are outside the %2° comfortable for %3."),
                   finding)
            .arg(use);
    case FindingCode::KneeOutOfRange:
        return outsideOf(
            Words::tr("The knee, bent %1 at the bottom, is outside the comfortable %2°."), finding);
    case FindingCode::CrankSwap:
        return Words::tr("The %1 cranks come off; %2 goes on.")
            .arg(halfMm(number(0)), halfMm(number(1)));
    case FindingCode::BarCutDown:
        return Words::tr("The bar, %1 wide, wants cutting to %2 where its maker allows it.")
            .arg(halfMm(number(0)), halfMm(number(1)));
    case FindingCode::LeaveSteererLong:
        return Words::tr("Leave the steerer %1 mm long above the stem on the first build, under a "
                         "spacer; cut to %2 after the second visit.")
            .arg(range(number(1), number(2)), partMm(number(0)));
    case FindingCode::QuillMark:
        return Words::tr(
                   "Raise the quill by %1; its mark stays inside the steerer, here %2 at most.")
            .arg(partMm(number(0)), partMm(number(1)));
    case FindingCode::HosesShort:
        return Words::tr("The bar is about %1 from where it is as sold: hoses and cables may be "
                         "short.")
            .arg(mm(number(0)));
    case FindingCode::ToeUnderStandard:
    case FindingCode::ToeOverlaps:
    case FindingCode::ToeNear:
    case FindingCode::HeelNearBag:
    case FindingCode::KneeNearBar:
    case FindingCode::PitchesEarly:
    case FindingCode::FrontWheelLight:
    case FindingCode::FrontLiftsClimbing:
    case FindingCode::NoSteadySpeed:
    case FindingCode::NoCapsizeSpeed:
    case FindingCode::SteeringOutOfAdvice: return rideSentence(finding);
    case FindingCode::SaddleBeyondRails:
        return Words::tr("Rails and post let the saddle stand %1 behind, not %2.")
            .arg(mm(number(1)), mm(number(0)));
    case FindingCode::BarBelowStem:
        return Words::tr(
                   "Without any spacer, a stem at this angle still holds the bar %1 too high: "
                   "another angle, or a lower bar.")
            .arg(mm(number(0)));
    case FindingCode::StemNotMade:
        return Words::tr("Stems are ordinarily made from %1 to %2 mm; this would want %3.")
            .arg(plain(number(1)), plain(number(2)), partMm(number(0)));
    }
    return {};
}

} // namespace tripoise
