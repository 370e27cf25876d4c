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
    perUse(file, "natural_stem_mm", to.naturalStemMm, range);
    to.stemUnitMm = figure(file, "stem_unit_mm");
    to.spacerUnitMm = figure(file, "spacer_unit_mm");
    to.ordinaryStemAngleDeg = figure(file, "ordinary_stem_angle_deg");
    to.ordinaryPostMm = range(file, "ordinary_post_mm");
    to.postUnitMm = figure(file, "post_unit_mm");
    to.wantedStandoverMm = figure(file, "wanted_standover_mm");
    perUse(file, "steadiness_wanted", to.steadinessWanted, figure);
    to.trailInWheelbase = figure(file, "trail_in_wheelbase");
    to.agilitySpreadMm = figure(file, "agility_spread_mm");
    perUse(file, "compactness_wanted", to.compactnessWanted, figure);
    to.compactnessSpreadMm = figure(file, "compactness_spread_mm");
    to.raiseRoomMm = figure(file, "raise_room_mm");
    to.lowerRoomMm = figure(file, "lower_room_mm");
    to.stemRoomMm = figure(file, "stem_room_mm");
    to.crankUnitMm = figure(file, "crank_unit_mm");
    to.barUnitMm = figure(file, "bar_unit_mm");
    to.dropBarBeyondShouldersMm = range(file, "drop_bar_beyond_shoulders_mm");
    to.gravelBarBeyondShouldersMm = range(file, "gravel_bar_beyond_shoulders_mm");
    to.flatBarMm = range(file, "flat_bar_mm");
    to.sweptBarMm = range(file, "swept_bar_mm");
    to.toeUnitMm = figure(file, "toe_unit_mm");
    to.toeInTraffic = figure(file, "toe_in_traffic");
    to.eitherBelow = figure(file, "either_below");
    to.worthBuying = figure(file, "worth_buying");
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
