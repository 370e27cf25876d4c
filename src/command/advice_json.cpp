// SPDX-License-Identifier: MIT
#include "command/advice_json.h"

#include "wording/advice_text.h"
#include "wording/choice_words.h"
#include "wording/findings.h"
#include "wording/fit_words.h"
#include "wording/handover_words.h"
#include "wording/remedy_words.h"
#include "wording/ride_rows.h"
#include "wording/words.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace tripoise::command {
namespace {

using Json = nlohmann::ordered_json;

constexpr double mmPerMetre = 1000.0;

/// Figures are told to a thousandth: finer than any tape, coarser than rounding noise.
double told(double value)
{
    const double rounded = std::round(value * 1000.0) / 1000.0;
    return rounded == 0.0 ? 0.0 : rounded;
}

Json pointJson(const Point& point)
{
    return {{"x_mm", told(point.x())}, {"y_mm", told(point.y())}};
}

Json rangeJson(const Range& range)
{
    return Json::array({told(range.low), told(range.high)});
}

Json textsJson(const QStringList& texts)
{
    Json list = Json::array();
    for (const QString& text : texts)
        list.push_back(text.toStdString());
    return list;
}

Json findingsJson(const Findings& findings)
{
    Json list = Json::array();
    for (const Finding& finding : findings)
        list.push_back({{"code", keyOf(finding.code).toStdString()},
                        {"severity", keyOf(finding.severity).toStdString()},
                        {"text", sentence(finding).toStdString()}});
    return list;
}

Json setupJson(const Setup& setup, const Prepared& prepared)
{
    return {{"saddle_height_mm", told(setup.saddle.heightMm)},
            {"saddle_setback_mm", told(setup.saddle.setbackMm())},
            {"stem",
             {{"length_mm", setup.stem.lengthMm},
              {"angle_deg", told(setup.stem.angle.deg())},
              {"flipped", setup.cockpit.flipped},
              {"adaptor", setup.stem.joint != StemJoint::Direct}}},
            {"spacers_mm", setup.cockpit.spacersMm},
            {"bar", barName(prepared.stock.bars[setup.cockpit.bar]).toStdString()},
            {"crank_mm", setup.crankMm},
            {"grip", pointJson(setup.grip)},
            {"clamp", pointJson(setup.clamp)},
            {"steerer_cut_mm", told(setup.steererCutMm)}};
}

Json postureByUseJson(const std::vector<UsePosture>& uses)
{
    Json json = Json::object();
    for (const UsePosture& use : uses)
        json[std::string(keyOf(use.use))] = {{"trunk_deg", told(use.posture.trunk.deg())},
                                             {"arm_trunk_deg", told(use.posture.armTrunk.deg())},
                                             {"elbow_deg", told(use.posture.elbow.deg())}};
    return json;
}

Json postureJson(const LegPosture& leg)
{
    return {{"knee_bottom_deg", told(leg.kneeBottom.deg())},
            {"knee_bottom_still_deg",
             {told(leg.kneeBottomStill.low().deg()), told(leg.kneeBottomStill.high().deg())}},
            {"knee_bottom_foot_level_deg", told(leg.kneeBottomFootLevel.deg())},
            {"knee_top_deg", told(leg.kneeTop.deg())},
            {"hip_top_deg", told(leg.hipTop.deg())},
            {"knee_over_spindle_mm", told(leg.kneeOverSpindleMm)},
            {"ankle_deg", {told(leg.ankleLeast.deg()), told(leg.ankleMost.deg())}}};
}

Json handlingJson(const Steering& steering)
{
    Json json{{"trail_mm", told(steering.trailMm)},
              {"mechanical_trail_mm", told(steering.mechanicalTrailMm)},
              {"flop_mm", told(steering.flopMm)},
              {"front_centre_mm", told(steering.frontCentreMm)},
              {"wheelbase_mm", told(steering.wheelbaseMm)},
              {"bb_height_mm", told(steering.bbHeightMm)}};
    if (steering.wheelbaseLongMm != steering.wheelbaseMm) // an adjustable dropout
        json["wheelbase_long_mm"] = told(steering.wheelbaseLongMm);
    return json;
}

/// Absent figures are null: no weave or capsize speed, a shoe that never touches.
template <typename Value, typename Tell> Json orNull(const std::optional<Value>& value, Tell&& tell)
{
    return value ? Json(told(tell(*value))) : Json(nullptr);
}

double asIs(double value)
{
    return value;
}

/// What the rider adds to a size's steering.
void addRide(Json& json, const Ride& ride)
{
    const auto metres = [](double mmPerSecond) { return mmPerSecond / mmPerMetre; };
    std::optional<TouchingSteer> touches;
    if (ride.toe)
        touches = ride.toe->touches;
    std::optional<double> weave, capsize;
    if (ride.stability) {
        weave = ride.stability->weaveMmS;
        capsize = ride.stability->capsizeMmS;
    }
    json["toe_clearance_mm"] =
        orNull(ride.toeClearance, [](const ToeClearance& toe) { return toe.clearanceMm; });
    json["toe_overlap_mm"] = orNull(ride.toe, [](const ToeOverlap& toe) { return toe.overlapMm; });
    json["toe_touch_steer_deg"] =
        orNull(touches, [](const TouchingSteer& steer) { return steer.from.deg(); });
    json["toe_least_clearance_mm"] =
        orNull(ride.leastToeClearance, [](const ToeClearance& toe) { return toe.clearanceMm; });
    json["toe_touch_turn_radius_m"] =
        orNull(ride.touchingTurn, [&](const TightTurn& turn) { return metres(turn.radiusMm); });
    json["toe_touch_speed_m_s"] =
        orNull(ride.touchingTurn, [&](const TightTurn& turn) { return metres(turn.speedMmS); });
    json["front_load_share"] =
        orNull(ride.balance, [](const Balance& balance) { return balance.frontShare(); });
    json["front_load_share_fully_back"] = orNull(ride.frontShareFullyBack, asIs);
    json["hands_share_bound"] = orNull(ride.handsShareBound, asIs);
    json["pitch_over_g"] = orNull(ride.grades, [](const Grades& g) { return g.overTheBarsG; });
    json["pitch_over_downhill_g"] =
        orNull(ride.grades, [](const Grades& g) { return g.overTheBarsDownhillG; });
    json["front_lifts_gradient"] =
        orNull(ride.grades, [](const Grades& g) { return g.liftsUnderPedalling; });
    json["front_lifts_at_rest_gradient"] =
        orNull(ride.grades, [](const Grades& g) { return g.liftsAtRest; });
    json["weave_m_s"] = orNull(weave, metres);
    json["capsize_m_s"] = orNull(capsize, metres);
    json["steady"] = ride.stability && ride.stability->steady;
    json["grips_ahead_mm"] = told(ride.grips.aheadMm);
    json["grip_lever_mm"] = told(ride.grips.leverMm);
    json["pedal_lean_deg"] = told(ride.pedalLean.deg());
    json["heel_to_bag_mm"] =
        orNull(ride.heelToBag, [](const OverTurn& heel) { return heel.clearanceMm; });
    json["knee_to_bar_mm"] = told(ride.kneeToBar.clearanceMm);
    json["knee_to_turned_bar_mm"] = told(ride.kneeToTurnedBar.clearanceMm);
    json["flat_foot_to_ground_mm"] = told(ride.foot.flatMm);
    json["tiptoe_to_ground_mm"] = told(ride.foot.tiptoeMm);
    json["straddle_mm"] = orNull(ride.foot.straddleMm, asIs);
    json["wheel_mm"] = told(ride.wheelMm);
    json["tyre_left_mm"] = orNull(ride.tyreLeftMm, asIs);
    json["system_kg"] =
        orNull(ride.weight, [](const SystemWeight& weight) { return weight.massKg; });
    json["system_left_kg"] = ride.weight ? orNull(ride.weight->leftKg, asIs) : Json(nullptr);
}

Json remediesJson(const Candidate& candidate, const Prepared& prepared)
{
    Json list = Json::array();
    for (const ToeRemedy& remedy : candidate.toeRemedies) {
        Json one{{"kind", keyOf(remedy.kind).toStdString()}};
        if (remedy.kind == RemedyKind::NextSize)
            one["to"] = prepared.sizes[static_cast<std::size_t>(remedy.to)].frame.size;
        else if (remedy.kind != RemedyKind::NoMudguard)
            one["to_mm"] = told(remedy.to);
        one["toe_overlap_mm"] = orNull(remedy.overlapMm, asIs);
        one["bb_higher_mm"] = told(remedy.bbHigherMm);
        one["pedal_lean_deg"] = told(remedy.pedalLean.deg());
        one["trail_more_mm"] = told(remedy.trailMoreMm);
        one["wheelbase_more_mm"] = told(remedy.wheelbaseMoreMm);
        one["development_ratio"] = told(remedy.development);
        one["leverage_ratio"] = told(remedy.leverage);
        one["counted"] = remedy.counted;
        one["text"] = remedySentence(remedy, prepared).toStdString();
        list.push_back(std::move(one));
    }
    return list;
}

Json ledgerJson(const std::vector<LedgerEntry>& ledger)
{
    Json list = Json::array();
    for (const LedgerEntry& entry : ledger)
        list.push_back({{"consideration", std::string(rowOf(entry.consideration).key)},
                        {"value", told(entry.value)},
                        {"unit", std::string(rowOf(entry.consideration).unit)},
                        {"points", entry.points}});
    return list;
}

Json fitJson(const Candidate& candidate, const Prepared& prepared)
{
    Json byUse = Json::object();
    for (const UseFit& use : candidate.fit.byUse)
        byUse[std::string(keyOf(use.use))] = {{"state", keyOf(use.state)},
                                              {"bar_above_mm", told(use.barAboveMm)},
                                              {"bar_beyond_mm", told(use.barBeyondMm)}};
    Json json{{"state", keyOf(candidate.fit.state)},
              {"text", fitSentence(candidate, prepared).toStdString()},
              {"by_use", std::move(byUse)}};
    if (const auto& stem = candidate.fit.stem)
        json["stem_to_order"] = {{"length_mm", stem->lengthMm},
                                 {"angle_deg", told(stem->angle.deg())}};
    if (const auto& length = candidate.fit.postMmToOrder)
        json["post_to_order_mm"] = told(*length);
    return json;
}

Json candidateJson(const Candidate& candidate, const Prepared& prepared)
{
    const PreparedSize& size = prepared.sizes[candidate.size];
    Json json{{"model", size.frame.model},
              {"size", size.frame.size},
              {"rank", candidate.rank},
              {"fit", fitJson(candidate, prepared)},
              {"limits", findingsJson(candidate.limits)}};
    if (candidate.best) {
        json["setup"] = setupJson(candidate.best->setup, prepared);
        if (const auto& step = candidate.firstStep)
            json["first_step"] = {{"saddle_height_mm", told(step->saddle.heightMm)},
                                  {"saddle_setback_mm", told(step->saddle.setbackMm())},
                                  {"grip", pointJson(step->grip)}};
        json["posture_by_use"] = postureByUseJson(candidate.best->uses);
        json["posture"] = postureJson(candidate.best->leg);
        Json byUse = Json::object();
        for (const UseSetup& use : candidate.byUse)
            byUse[std::string(keyOf(use.use))] = setupJson(use.advised.setup, prepared);
        json["setup_by_use"] = std::move(byUse);
    }
    json["handling"] = handlingJson(size.steering);
    if (candidate.ride)
        addRide(json["handling"], *candidate.ride);
    json["toe_remedies"] = remediesJson(candidate, prepared);
    json["ledger"] = candidate.best ? ledgerJson(candidate.best->ledger) : Json::array();
    json["findings"] = findingsJson(candidate.findings);
    return json;
}

Json contactsJson(const SaddlePlace& saddle, const Point& grip)
{
    return {{"saddle_height_mm", told(saddle.heightMm)},
            {"saddle_setback_mm", told(saddle.setbackMm())},
            {"grip_reach_mm", told(grip.x())},
            {"grip_height_mm", told(grip.y())}};
}

/// The builder's word; null where nothing was chosen.
Json choiceJson(const std::optional<BuildersChoice>& choice, const Advice& advice,
                const Prepared& prepared)
{
    if (!choice)
        return nullptr;
    const ChoiceWords words = choiceWords(*choice, advice, prepared);
    return {{"model", choice->size.model},
            {"size", choice->size.size},
            {"among_candidates", choice->candidate.has_value()},
            {"setup", choice->setup
                          ? contactsJson(choice->setup->setup.saddle, choice->setup->setup.grip)
                          : Json(nullptr)},
            {"reason", choice->reason},
            {"cautions", textsJson(words.cautions)},
            {"text", words.sentence.toStdString()},
            {"costs", textsJson(words.costs)},
            {"against_advised_setup", textsJson(words.moves)}};
}

/// The finished bicycle against what was handed over; null where nothing was read off.
Json builtJson(const Fitting& fitting, const Advice& advice, const Prepared& prepared,
               const Tables& tables)
{
    if (!fitting.asBuilt)
        return nullptr;
    const AsBuilt& built = *fitting.asBuilt;
    Json json{{"model", built.model}, {"size", built.size}, {"readings", Json::array()}};
    const auto is = finished(built, fitting.choices, fitting.riding, advice, prepared, tables);
    if (!is)
        return json;
    for (const BuiltReading& reading : is->check->readings)
        json["readings"].push_back({{"place", keyOf(reading.place)},
                                    {"wanted", told(reading.wanted)},
                                    {"read", told(reading.read)},
                                    {"off", reading.off},
                                    {"text", builtSentence(reading).toStdString()}});
    json["effects"] = textsJson(builtEffects(*is));
    return json;
}

const char* kindKey(VerdictKind kind)
{
    switch (kind) {
    case VerdictKind::Clear: return "clear";
    case VerdictKind::Slight: return "slight";
    case VerdictKind::Either: return "either";
    case VerdictKind::None: return "none";
    }
    return "";
}

} // namespace

std::string adviceJson(const Fitting& fitting, const Advice& advice, const Prepared& prepared,
                       const Tables& tables)
{
    Json json;
    if (advice.solved)
        json["target"] = contactsJson(advice.target.saddle, advice.target.grip);
    if (advice.solved) {
        json["published_saddle_heights"] = Json::array();
        for (const PublishedHeight& published : advice.publishedHeights)
            json["published_saddle_heights"].push_back(
                {{"rule", published.name}, {"saddle_height_mm", told(published.heightMm)}});
    }
    json["candidates"] = Json::array();
    for (const Candidate& candidate : advice.candidates)
        json["candidates"].push_back(candidateJson(candidate, prepared));
    if (advice.solved) {
        Json size, model;
        if (advice.verdict.named) {
            const FrameSize& named = prepared.sizes[advice.leading().size].frame;
            size = named.size;
            model = named.model;
        }
        json["verdict"] = {
            {"size", size},
            {"model", model},
            {"kind", kindKey(advice.verdict.kind)},
            {"text", verdictSentence(advice, prepared, fitting.riding).toStdString()},
            {"reasons", textsJson(reasonSentences(advice, prepared))},
            {"given_up", textsJson(givenUpSentences(advice, prepared))},
            {"to_see", contrastSentence(advice, prepared).toStdString()},
            {"to_sit_the_same", sameSeatSentence(advice, prepared).toStdString()},
            {"rides", rideDifference(advice, prepared).toStdString()}};
        json["asks_for"] = {{"stack_mm", rangeJson(advice.asked.stackMm)},
                            {"reach_mm", rangeJson(advice.asked.reachMm)}};
        if (const auto& part = advice.part)
            json["worth_buying"] = {
                {"stem",
                 {{"length_mm", part->stem.lengthMm}, {"angle_deg", told(part->stem.angle.deg())}}},
                {"nearer_mm", orNull(part->nearerMm, asIs)}};
    }
    json["choice"] =
        choiceJson(buildersChoice(fitting.choices, fitting.riding, advice, prepared, tables),
                   advice, prepared);
    json["as_built"] = builtJson(fitting, advice, prepared, tables);
    json["findings"] = findingsJson(advice.riderFindings);
    return json.dump(2) + "\n";
}

} // namespace tripoise::command
