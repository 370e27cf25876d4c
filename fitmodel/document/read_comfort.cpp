// SPDX-License-Identifier: MIT
//
// assets/comfort.json
#include "document/fields.h"
#include "document/figures.h"

namespace tripoise::document {
namespace {

constexpr std::size_t longestRuleName = 40;

constexpr auto placeWords = [] {
    Vocabulary<GripPlace, allGripPlaces.size()> words{};
    for (const GripPlace place : allGripPlaces)
        words[indexOf(place)] = {keyOf(place), place};
    return words;
}();

void readUpperBody(Fields upper, ComfortTable& comfort)
{
    comfort.trunkHalfWidth = angle(upper, "trunk_half_width_deg");
    comfort.armTrunkHalfWidth = angle(upper, "arm_trunk_half_width_deg");
    comfort.elbowCentre = angle(upper, "elbow_deg");
    comfort.elbowHalfWidth = angle(upper, "elbow_half_width_deg");

    const auto& centres = upper.needList("centres", anyCount);
    for (std::size_t i = 0; i < centres.size(); ++i) {
        const std::string path = joined(upper.pathOf("centres"), i);
        if (!centres[i].is_object()) {
            upper.report().add(wrongType(centres[i], path, "object"));
            continue;
        }
        Fields centre(centres[i], path, upper.report());
        const auto use = centre.needWord("use", useWords);
        const auto place = centre.needWord("grip", placeWords);
        const UpperCentre angles{angle(centre, "trunk_deg"), angle(centre, "arm_trunk_deg")};
        if (use && place)
            comfort.calibrated[indexOf(*use)][indexOf(*place)] = angles;
    }

    const auto line = [](Fields& lines, GripPlace place) {
        auto fields = lines.needObject(keyOf(place));
        return fields ? ArmTrunkLine{angle(*fields, "arm_trunk_deg"),
                                     angle(*fields, "at_trunk_deg"), figure(*fields, "slope")}
                      : ArmTrunkLine{};
    };
    if (auto lines = upper.needObject("fallback")) {
        for (const GripPlace place : {GripPlace::Hoods, GripPlace::Flat, GripPlace::Swept})
            comfort.fallback[indexOf(place)] = line(*lines, place);
        // Tops and drops are taken from the hoods, by what `away_from_hoods` says.
        for (const GripPlace place : {GripPlace::Tops, GripPlace::Drops})
            comfort.fallback[indexOf(place)] = comfort.fallback[indexOf(GripPlace::Hoods)];
    }
    if (auto away = upper.needObject("away_from_hoods"))
        for (const GripPlace place : {GripPlace::Tops, GripPlace::Drops})
            if (auto change = away->needObject(keyOf(place)))
                comfort.awayFromHoods[indexOf(place)] = {angle(*change, "trunk_deg"),
                                                         angle(*change, "arm_trunk_deg")};
}

void readCrankBands(Fields cranks, ComfortTable& comfort)
{
    const auto& bands = cranks.needList("bands", anyCount);
    for (std::size_t i = 0; i < bands.size(); ++i) {
        const std::string path = joined(cranks.pathOf("bands"), i);
        if (!bands[i].is_object()) {
            cranks.report().add(wrongType(bands[i], path, "object"));
            continue;
        }
        Fields band(bands[i], path, cranks.report());
        const bool last = i + 1 == bands.size();
        const double below = last ? largest : figure(band, "below_inseam_mm");
        if (!comfort.cranks.empty() && below <= comfort.cranks.back().belowInseamMm) {
            Problem problem = problemAt(ProblemCode::OutOfRange, band.pathOf("below_inseam_mm"),
                                        std::to_string(below));
            problem.low = comfort.cranks.back().belowInseamMm;
            cranks.report().add(std::move(problem));
        }
        comfort.cranks.push_back({below, figure(band, "low_mm"), figure(band, "high_mm")});
    }
}

void readSaddleRules(Fields& file, ComfortTable& comfort)
{
    const auto& rules = file.needList("saddle_rules", anyCount);
    for (std::size_t i = 0; i < rules.size(); ++i) {
        const std::string path = joined(file.pathOf("saddle_rules"), i);
        if (!rules[i].is_object()) {
            file.report().add(wrongType(rules[i], path, "object"));
            continue;
        }
        Fields rule(rules[i], path, file.report());
        comfort.saddleRules.push_back(
            {rule.text("name", longestRuleName), figure(rule, "constant_mm"),
             figure(rule, "per_inseam"), figure(rule, "per_knee_mm"),
             figure(rule, "per_inseam_seat_angle"), rule.flag("from_pedal", false),
             figure(rule, "least_inseam_mm")});
    }
}

/// Of a complaint, in the order they are tried.
std::vector<ChangeStep> changesAt(Fields& changes, std::string_view key)
{
    std::vector<ChangeStep> steps;
    const auto& entries = changes.needList(key, anyCount);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        Fields one(entries[i], joined(changes.pathOf(key), i), changes.report());
        const auto change = one.needWord("change", changeWords);
        if (change)
            steps.push_back(
                {*change, one.number("mm", anyNumber).value_or(0.0), one.flag("taught", false)});
    }
    return steps;
}

} // namespace

void readComfort(Fields file, ComfortTable& comfort)
{
    if (auto upper = file.needObject("upper_body"))
        readUpperBody(*upper, comfort);
    if (auto ease = file.needObject("ease"))
        comfort.ease = {figure(*ease, "within"), figure(*ease, "from_cost"),
                        figure(*ease, "full_cost")};
    if (auto stature = file.needObject("stature")) {
        comfort.averageStatureMm = figure(*stature, "average_mm");
        comfort.lowerPerStature = angle(*stature, "trunk_lower_deg_per_mm");
    }
    if (auto flexibility = file.needObject("flexibility")) {
        comfort.stiffShift = angle(*flexibility, "stiff_trunk_shift_deg");
        comfort.suppleShift = angle(*flexibility, "supple_trunk_shift_deg");
        comfort.stiffBelow = angle(*flexibility, "stiff_below_leg_raise_deg");
        comfort.suppleAbove = angle(*flexibility, "supple_above_leg_raise_deg");
    }
    if (auto knee = file.needObject("knee")) {
        perUse(*knee, "bottom_deg", comfort.kneeCentre, angle);
        comfort.kneeHalfWidth = angle(*knee, "half_width_deg");
        comfort.stillLess = angle(*knee, "held_still_less_deg");
        comfort.stillHalfWidth = angle(*knee, "held_still_half_width_deg");
    }
    if (auto knee = file.needObject("knee_over_spindle")) {
        perUse(*knee, "ahead_mm", comfort.kneeOverSpindleMm, figure);
        comfort.kneeOverSpindleHalfWidthMm = figure(*knee, "half_width_mm");
    }
    if (auto foot = file.needObject("foot")) {
        comfort.pitchBottom = angle(*foot, "pitch_bottom_deg");
        comfort.pitchForward = angle(*foot, "pitch_forward_deg");
        comfort.lowHeelShift = angle(*foot, "low_heel_shift_deg");
        comfort.toeDownShift = angle(*foot, "toe_down_shift_deg");
    }
    perUse(file, "drop_bar_time", comfort.dropBarTime, [](Fields& byUse, std::string_view use) {
        PerGripPlace<double> shares{};
        if (auto time = byUse.needObject(use))
            for (const GripPlace place : {GripPlace::Hoods, GripPlace::Tops, GripPlace::Drops})
                shares[indexOf(place)] = figure(*time, keyOf(place));
        return shares;
    });
    readSaddleRules(file, comfort);
    if (auto cranks = file.needObject("cranks"))
        readCrankBands(*cranks, comfort);
    if (auto saddle = file.needObject("saddle_height_sd")) {
        comfort.ridingSaddleSdMm = figure(*saddle, "from_body_mm");
        comfort.weeksSaddleSdMm = figure(*saddle, "ridden_weeks_mm");
        comfort.seasonSaddleSdMm = figure(*saddle, "ridden_season_mm");
        comfort.yearsSaddleSdMm = figure(*saddle, "ridden_years_mm");
    }
    if (auto ridden = file.needObject("ridden")) {
        comfort.doubtedKneeBelow = angle(*ridden, "doubted_below_deg");
        comfort.doubtedKneeAbove = angle(*ridden, "doubted_above_deg");
        comfort.steepestRiddenAxis = angle(*ridden, "steepest_axis_deg");
        comfort.keptWeight = figure(*ridden, "kept_weight");
        comfort.keptAgainstSizes = figure(*ridden, "kept_weight_against_sizes");
        comfort.mostFirstStepMm = figure(*ridden, "first_step_mm");
    }
    if (auto feet = file.needObject("feet_down")) {
        comfort.oneToeLowersMm = figure(*feet, "one_toe_mm");
        comfort.toesLowerMm = figure(*feet, "toes_mm");
        comfort.flatLowersMm = figure(*feet, "flat_mm");
        comfort.mostLoweredKnee = angle(*feet, "most_knee_deg");
    }
    if (auto complaints = file.needObject("complaints")) {
        for (const auto& [key, complaint] : complaintWords)
            if (auto one = complaints->needObject(key))
                comfort.complaintSteps[indexOf(complaint)] = {figure(*one, "hand_up_mm"),
                                                              figure(*one, "hand_back_mm"),
                                                              figure(*one, "saddle_up_mm")};
        if (auto changes = complaints->needObject("changes"))
            for (const auto& [key, complaint] : complaintWords)
                comfort.changes[indexOf(complaint)] = changesAt(*changes, key);
        comfort.mostHandsForComplaintMm = figure(*complaints, "most_hands_mm");
        comfort.mostSaddleForComplaintMm = figure(*complaints, "most_saddle_mm");
    }
    if (auto bends = file.needObject("bends_not_freely")) {
        comfort.notBendingShift = angle(*bends, "trunk_shift_deg");
        comfort.notBendingCrankMm = figure(*bends, "crank_shift_mm");
    }
}

} // namespace tripoise::document
