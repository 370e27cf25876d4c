// SPDX-License-Identifier: MIT
//
// The constant tables under assets/.
#include "document/figures.h"
#include "document/read.h"
#include "document/table_file.h"

namespace tripoise {

using namespace document;

namespace {

Population populationFrom(Fields& group)
{
    Population population;
    if (const Json* mean = group.need("mean")) {
        const auto values = row(*mean, group.pathOf("mean"), baseVariableCount, group.report());
        for (int i = 0; i < baseVariableCount; ++i)
            population.mean(i) = values[static_cast<std::size_t>(i)];
    }
    constexpr Count rows{baseVariableCount, baseVariableCount};
    const auto& lower = group.needList("covariance_lower", rows);
    const std::string path = group.pathOf("covariance_lower");
    for (std::size_t i = 0; i < lower.size(); ++i) {
        const auto values = row(lower[i], joined(path, i), i + 1, group.report());
        for (std::size_t j = 0; j <= i; ++j) {
            const auto r = static_cast<int>(i);
            const auto c = static_cast<int>(j);
            population.covariance(r, c) = population.covariance(c, r) = values[j];
        }
    }
    return population;
}

/// The survey's columns must be our base variables in our order, without their units.
void checkVariables(Fields& file)
{
    const auto& names = file.needList("variables", {baseVariableCount, baseVariableCount});
    for (std::size_t i = 0; i < names.size(); ++i) {
        std::string_view key = quantityKeys[i];
        key = key == "mass_kg" ? "weight" : key.substr(0, key.rfind('_'));
        if (names[i] == key)
            continue;
        Problem problem =
            problemAt(ProblemCode::NotOneOf, joined(file.pathOf("variables"), i), shown(names[i]));
        problem.names.emplace_back(key);
        file.report().add(std::move(problem));
    }
}

void readAnthropometry(Fields file, Populations& populations)
{
    populations.unusualOdds = figure(file, "unusual_odds");
    populations.statureSlips = figure(file, "stature_slips");
    checkVariables(file);
    auto groups = file.needObject("groups");
    if (!groups)
        return;
    if (auto female = groups->needObject("female"))
        populations.female = populationFrom(*female);
    if (auto male = groups->needObject("male"))
        populations.male = populationFrom(*male);
    if (auto balanced = groups->needObject("pooled_balanced"))
        populations.balanced = populationFrom(*balanced);
}

void readTape(Fields file, TapeTable& tape)
{
    tape.priorDegreesOfFreedom = figure(file, "prior_degrees_of_freedom");
    auto rows = file.needObject("rows");
    if (!rows)
        return;
    for (std::size_t i = 0; i < quantityKeys.size(); ++i)
        if (auto one = rows->needObject(quantityKeys[i]))
            tape.rows[i] = {figure(*one, "sd"), figure(*one, "guess_sd"), figure(*one, "low"),
                            figure(*one, "high")};
}

void readBody(Fields file, BodyModel& body)
{
    body.shoulderBelowAcromion = figure(file, "shoulder_below_acromion");
    body.trunkChord = figure(file, "trunk_chord");
    body.heelToAnkle = figure(file, "heel_to_ankle");
    body.midHipAboveSaddleMm = figure(file, "mid_hip_above_saddle_mm");
    body.legHipAboveSaddleMm = figure(file, "leg_hip_above_saddle_mm");
    body.tuberosityAheadMm = figure(file, "tuberosity_ahead_mm");
    body.shortestLinkMm = figure(file, "shortest_link_mm");
}

void readWeights(Fields file, WeightTable& to)
{
    if (auto points = file.needObject("points")) {
        for (std::size_t i = 0; i < considerationCount; ++i) {
            auto one = points->needObject(considerations[i].key);
            if (!one)
                continue;
            to.points[i] = one->needNumber("value", anyNumber);
            (void)one->need("unsourced");
            to.unsourced[i] = one->flag("unsourced", true);
        }
    }
    to.postureWithinSize = figure(file, "posture_within_size");
    if (auto stem = file.needObject("natural_stem")) {
        to.naturalStem.statureMm = figure(*stem, "stature_mm");
        to.naturalStem.lengthMm = figure(*stem, "length_mm");
        to.naturalStem.perStature = figure(*stem, "per_stature");
        to.naturalStem.lengthsMm = range(*stem, "lengths_mm");
        perUse(*stem, "offset_mm", to.naturalStem.offsetMm, figure);
        to.naturalStem.halfRangeMm = figure(*stem, "half_range_mm");
        to.naturalStem.soldHalfRangeMm = figure(*stem, "sold_half_range_mm");
    }
    to.stemUnitMm = figure(file, "stem_unit_mm");
    if (auto spacers = file.needObject("ordinary_spacers"))
        to.ordinarySpacers = {figure(*spacers, "stature_mm"), figure(*spacers, "mm"),
                              figure(*spacers, "per_stature"), range(*spacers, "between_mm")};
    to.spacerUnitMm = figure(file, "spacer_unit_mm");
    to.ordinaryStemAngleDeg = figure(file, "ordinary_stem_angle_deg");
    if (auto untidy = file.needObject("untidy")) {
        to.untidy.downDeg = range(*untidy, "down_deg");
        to.untidy.steepDeg = range(*untidy, "steep_deg");
        to.untidy.riseMm = range(*untidy, "rise_mm");
        to.untidy.spacersMm = range(*untidy, "spacers_mm");
        to.untidy.steepSpacersMm = range(*untidy, "steep_spacers_mm");
        to.untidy.uprightSpacersMm = range(*untidy, "upright_spacers_mm");
        perUse(*untidy, "upright", to.untidy.upright, figure);
        perUse(*untidy, "plain", to.untidy.plain, figure);
    }
    to.ordinaryPostMm = range(file, "ordinary_post_mm");
    to.postUnitMm = figure(file, "post_unit_mm");
    perUse(file, "wanted_standover_mm", to.wantedStandoverMm, figure);
    to.leastStandoverMm = figure(file, "least_standover_mm");
    perUse(file, "steadiness_wanted", to.steadinessWanted, figure);
    to.trailInWheelbase = figure(file, "trail_in_wheelbase");
    to.steadinessMm = range(file, "steadiness_mm");
    to.steadinessUnitMm = figure(file, "steadiness_unit_mm");
    perUse(file, "compactness_wanted", to.compactnessWanted, figure);
    to.leastBulkMm = figure(file, "least_bulk_mm");
    to.bulkUnitMm = figure(file, "bulk_unit_mm");
    to.raiseRoomMm = figure(file, "raise_room_mm");
    to.lowerRoomMm = figure(file, "lower_room_mm");
    to.stemRoomMm = figure(file, "stem_room_mm");
    to.crankUnitMm = figure(file, "crank_unit_mm");
    to.barUnitMm = figure(file, "bar_unit_mm");
    to.dropBarBeyondShouldersMm = range(file, "drop_bar_beyond_shoulders_mm");
    to.gravelBarBeyondShouldersMm = range(file, "gravel_bar_beyond_shoulders_mm");
    to.flatBarBeyondShouldersMm = range(file, "flat_bar_beyond_shoulders_mm");
    to.sweptBarBeyondShouldersMm = range(file, "swept_bar_beyond_shoulders_mm");
    to.toeUnitMm = figure(file, "toe_unit_mm");
    to.toeRoomMm = figure(file, "toe_room_mm");
    to.toeRoomFlatMm = figure(file, "toe_room_flat_mm");
    to.toeSteerDeg = range(file, "toe_steer_deg");
    to.toeFar = figure(file, "toe_far");
    to.toeInTraffic = figure(file, "toe_in_traffic");
    if (auto cures = file.needObject("toe_cures")) {
        to.footBack = figure(*cures, "foot_back");
        to.narrowerTyre = figure(*cures, "narrower_tyre");
        to.smallerRim = figure(*cures, "smaller_rim");
    }
    to.riderHeightUnitMm = figure(file, "rider_height_unit_mm");
    to.proportionSds = range(file, "proportion_sds");
    if (auto frame = file.needObject("reference_frame"))
        to.referenceFrame = {figure(*frame, "stack_per_stature"),
                             figure(*frame, "reach_per_stature"), figure(*frame, "head_angle_deg"),
                             figure(*frame, "seat_angle_deg")};
    if (auto fit = file.needObject("fit")) {
        to.fit.leastShare = figure(*fit, "least_share");
        perUse(*fit, "stem_angle_deg", to.fit.stemAngleDeg, figure);
        perUse(*fit, "bar_above_mm", to.fit.barAboveMm, figure);
        perUse(*fit, "bar_beyond_mm", to.fit.barBeyondMm, figure);
        to.fit.heightUnitMm = figure(*fit, "height_unit_mm");
        to.fit.statureMm = figure(*fit, "stature_mm");
        to.fit.ordinaryPostMm = figure(*fit, "ordinary_post_mm");
        to.fit.postPerStature = figure(*fit, "post_per_stature");
        to.fit.postUnitMm = figure(*fit, "post_unit_mm");
        to.fit.most = figure(*fit, "most");
        to.fit.mostHeightMm = figure(*fit, "most_height_mm");
        to.fit.mostReachMm = figure(*fit, "most_reach_mm");
    }
    if (auto felt = file.needObject("felt"))
        to.felt = {figure(*felt, "hand_mm"),           figure(*felt, "knee_mm"),
                   figure(*felt, "stem_mm"),           figure(*felt, "spacers_mm"),
                   figure(*felt, "stem_angle_deg"),    figure(*felt, "standover_mm"),
                   figure(*felt, "easy_standover_mm"), figure(*felt, "wheelbase_mm"),
                   figure(*felt, "trail_mm"),          figure(*felt, "bulk_mm"),
                   figure(*felt, "directions"),        figure(*felt, "toe_mm")};
    to.eitherBelow = figure(file, "either_below");
    to.clearFrom = figure(file, "clear_from");
    to.worthOrdering = figure(file, "worth_ordering");
}

} // namespace

std::variant<Tables, Problems> readTables(const TableTexts& texts)
{
    Tables tables;
    Report report;
    const auto with = [&](std::string name, std::string_view text, auto&& read, auto& to) {
        const TableFile file(name, text, report);
        if (file.readable())
            read(Fields(file.json(), std::move(name), report), to);
    };
    with("anthropometry.json", texts.anthropometry, readAnthropometry, tables.populations);
    with("tape.json", texts.tape, readTape, tables.tape);
    with("body.json", texts.body, readBody, tables.body);
    with("comfort.json", texts.comfort, readComfort, tables.comfort);
    with("parts.json", texts.parts, readParts, tables);
    with("weights.json", texts.weights, readWeights, tables.weights);
    with("segments.json", texts.segments, readSegments, tables.handling.segments);
    with("handling.json", texts.handling, readHandling, tables.handling);
    if (!report.empty())
        return report.take();
    return tables;
}

} // namespace tripoise
