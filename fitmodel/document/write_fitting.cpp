// SPDX-License-Identifier: MIT
//
// A fitting as JSON, in the order a person would fill it in. What is absent, or as it is by
// default, is left out.
#include "document/json_text.h"
#include "document/put_back.h"
#include "document/read.h"
#include "document/sections.h"
#include "document/words.h"
#include "document/write_json.h"

#include <cmath>

namespace tripoise {

using namespace document;

namespace {

/// Degrees that read back as exactly this angle; the shortest of those near by.
double degreesOf(Angle angle)
{
    constexpr double decimals = 1e9;
    constexpr int steps = 4; // the maker's two roundings lose fewer
    const double nearest = angle.deg();
    const double rounded = std::round(nearest * decimals) / decimals;
    if (Angle::degrees(rounded) == angle)
        return rounded;
    double below = nearest;
    double above = nearest;
    for (int step = 0; step <= steps; ++step) {
        if (Angle::degrees(below) == angle)
            return below;
        if (Angle::degrees(above) == angle)
            return above;
        below = std::nextafter(below, -HUGE_VAL);
        above = std::nextafter(above, HUGE_VAL);
    }
    return nearest;
}

Json measurementJson(const Measurement& measurement)
{
    Json value = measurement.readings.size() == 1 ? tidy(measurement.readings.front())
                                                  : numbers(measurement.readings);
    if (!measurement.sd)
        return value;
    Json stated = Json::object();
    stated["value"] = std::move(value);
    put(stated, "sd", measurement.sd);
    return stated;
}

Json riderJson(const Rider& rider)
{
    Json json = Json::object();
    putText(json, "label", rider.label);
    putWord(json, "sex", rider.sex, sexWords);
    putWord(json, "flexibility", rider.flexibility, flexibilityWords);
    put(json, "straight_leg_raise_deg", rider.straightLegRaiseDeg);
    if (!rider.bendsFreely)
        json["bends_freely"] = false;
    Json shoe = Json::object();
    put(shoe, "sole_mm", rider.shoe.soleMm);
    put(shoe, "length_mm", rider.shoe.lengthMm);
    putFilled(json, "shoe", std::move(shoe));
    if (rider.heelHabit != HeelHabit::Level)
        json["heel_habit"] = wordOf(heelHabitWords, rider.heelHabit);
    putText(json, "notes", rider.notes);
    Json measurements = Json::object();
    for (const Measurement& measurement : rider.measurements)
        measurements[std::string(keyOf(measurement.quantity))] = measurementJson(measurement);
    json["measurements"] = std::move(measurements);
    return json;
}

Json ridingJson(const Riding& riding)
{
    Json json = Json::object();
    Json mix = Json::object();
    for (const Use use : allUses)
        if (riding.mix.of(use) != 0.0)
            mix[std::string(keyOf(use))] = tidy(riding.mix.of(use));
    json["mix"] = std::move(mix);
    json["traffic"] = riding.traffic;
    json["foot_retention"] = riding.footRetention;
    if (riding.luggage != Luggage{}) {
        json["luggage_kg"] = {{"front", tidy(riding.luggage.frontKg)},
                              {"rear", tidy(riding.luggage.rearKg)}};
    }
    putWord(json, "feet_down", riding.feetDown, feetDownWords);
    putWord(json, "sold_under", riding.soldUnder, standardWords);
    return json;
}

Json framesJson(const std::vector<FrameSize>& frames)
{
    Json json = Json::array();
    for (const FrameSize& frame : frames)
        json.push_back(frameJson(frame));
    return json;
}

Json stemJson(const Stem& stem)
{
    Json json = Json::object();
    putNeeded(json, "length_mm", stem.lengthMm);
    put(json, "angle_deg", degreesOf(stem.angle));
    if (!stem.reversible)
        json["reversible"] = false;
    put(json, "bar_clamp_mm", stem.barClampMm);
    put(json, "steerer_mm", stem.steererMm);
    put(json, "clamp_height_mm", stem.clampHeightMm);
    if (!stem.inStock)
        json["in_stock"] = false;
    put(json, "quill_mm", stem.quillMm);
    put(json, "raise_mm", stem.raiseMm);
    return json;
}

Json barJson(const Bar& bar)
{
    Json json = Json::object();
    putText(json, "name", bar.name);
    json["kind"] = wordOf(barKindWords, bar.kind);
    putNeeded(json, "width_mm", bar.widthMm);
    put(json, "backsweep_deg", bar.backsweepDeg);
    put(json, "rise_mm", bar.riseMm);
    put(json, "grip_back_mm", bar.gripBackMm);
    put(json, "reach_mm", bar.reachMm);
    put(json, "drop_mm", bar.dropMm);
    put(json, "hood_forward_mm", bar.hoodForwardMm);
    put(json, "hood_up_mm", bar.hoodUpMm);
    put(json, "bar_clamp_mm", bar.barClampMm);
    return json;
}

Json stockJson(const Stock& stock)
{
    Json json = Json::object();
    Json stems = Json::array();
    for (const Stem& stem : stock.stems)
        stems.push_back(stemJson(stem));
    json["stems"] = std::move(stems);
    putFilled(json, "spacers_mm", numbers(stock.spacersMm));
    putFilled(json, "cranks_mm", numbers(stock.cranksMm));
    put(json, "fitted_crank_mm", stock.fittedCrankMm);
    Json bars = Json::array();
    for (const Bar& bar : stock.bars)
        bars.push_back(barJson(bar));
    json["bars"] = std::move(bars);
    Json saddle = Json::object();
    put(saddle, "length_mm", stock.saddle.lengthMm);
    put(saddle, "stack_mm", stock.saddle.stackMm);
    put(saddle, "rail_travel_mm", stock.saddle.railTravelMm);
    putFilled(json, "saddle", std::move(saddle));
    Json pedal = Json::object();
    put(pedal, "stack_mm", stock.pedal.stackMm);
    put(pedal, "lateral_mm", stock.pedal.lateralMm);
    putFilled(json, "pedal", std::move(pedal));
    return json;
}

Json currentJson(const CurrentBike& current)
{
    Json json = Json::object();
    putWord(json, "use", current.use, useWords);
    putWord(json, "bar_kind", current.barKind, barKindWords);
    put(json, "saddle_height_mm", current.saddleHeightMm);
    put(json, "saddle_setback_mm", current.saddleSetbackMm);
    put(json, "grip_reach_mm", current.gripReachMm);
    put(json, "grip_height_mm", current.gripHeightMm);
    put(json, "saddle_length_mm", current.saddleLengthMm);
    put(json, "nose_setback_mm", current.noseSetbackMm);
    put(json, "nose_to_bar_mm", current.noseToBarMm);
    put(json, "bar_below_saddle_mm", current.barBelowSaddleMm);
    put(json, "crank_mm", current.crankMm);
    putWord(json, "ridden", current.ridden, riddenWords);
    json["comfortable"] = current.comfortable;
    Json complaints = Json::array();
    for (const Complaint complaint : current.complaints)
        complaints.push_back(std::string(wordOf(complaintWords, complaint)));
    for (const std::string& other : current.otherComplaints)
        complaints.push_back(other);
    if (!complaints.empty())
        json["complaints"] = std::move(complaints);
    return json;
}

Json choicesJson(const Choices& choices)
{
    Json json = Json::object();
    Json weights = Json::object();
    for (std::size_t i = 0; i < considerationCount; ++i)
        if (choices.weightFactor[i] != 1.0)
            weights[std::string(considerations[i].key)] = tidy(choices.weightFactor[i]);
    putFilled(json, "weights", std::move(weights));
    if (const auto& trial = choices.trial) {
        Json inside = Json::object();
        putText(inside, "model", trial->model);
        putText(inside, "size", trial->size);
        putNeeded(inside, "saddle_height_mm", trial->saddleHeightMm);
        put(inside, "saddle_setback_mm", trial->saddleSetbackMm);
        putNeeded(inside, "grip_reach_mm", trial->gripReachMm);
        putNeeded(inside, "grip_height_mm", trial->gripHeightMm);
        json[trial->chosen ? "setup" : "trial"] = std::move(inside);
    }
    if (const auto& size = choices.size) {
        Json inside = Json::object();
        putText(inside, "model", size->model);
        putText(inside, "size", size->size);
        json["size"] = std::move(inside);
    }
    putText(json, "reason", choices.reason);
    putWord(json, "position", choices.position, positionWords);
    if (choices.toeTold)
        json["toe_overlap_told"] = true;
    putFilled(json, "unfinished_frames", framesJson(choices.unfinished));
    return json;
}

} // namespace

std::string writeFitting(const Fitting& fitting)
{
    Json json = Json::object();
    json["format"] = "tripoise.fitting";
    json["version"] = fittingVersion;
    json["rider"] = riderJson(fitting.rider);
    json["riding"] = ridingJson(fitting.riding);
    json["frames"] = framesJson(fitting.frames);
    json["stock"] = stockJson(fitting.stock);
    if (fitting.current)
        json["current"] = currentJson(*fitting.current);
    putFilled(json, "choices", choicesJson(fitting.choices));
    for (const KeptJson& piece : fitting.kept)
        putBack(json, piece);
    const std::string text =
        json.dump(indentOfDocuments, ' ', false, Json::error_handler_t::replace) + '\n';
    return text.size() <= mostBytes ? text : compact(json);
}

} // namespace tripoise
