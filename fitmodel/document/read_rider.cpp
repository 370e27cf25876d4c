// SPDX-License-Identifier: MIT
#include "document/nearest.h"
#include "document/plausible.h"
#include "document/sections.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace tripoise::document {
namespace {

constexpr std::size_t mostReadings = 20;
constexpr double shareTolerance = 1e-6;
// Shares nearer to 1 than this are as near as doubles come, and stay as they were written.
constexpr double exactShares = 1e-12;

/// The first quantity is less than the second on every body.
struct Smaller {
    Quantity smaller;
    Quantity larger;
};
constexpr std::array smallerOnEveryBody{
    Smaller{Quantity::Inseam, Quantity::Stature},
    Smaller{Quantity::SternalNotchHeight, Quantity::Stature},
    Smaller{Quantity::AcromialHeight, Quantity::Stature},
    Smaller{Quantity::TrochanterionHeight, Quantity::Stature},
    Smaller{Quantity::SittingHeight, Quantity::Stature},
    Smaller{Quantity::KneeHeight, Quantity::Inseam},
    Smaller{Quantity::AnkleHeight, Quantity::KneeHeight},
    Smaller{Quantity::BallOfFoot, Quantity::Foot},
    Smaller{Quantity::WristToGrip, Quantity::Hand},
    Smaller{Quantity::UpperArm, Quantity::ArmToGrip},
    Smaller{Quantity::Forearm, Quantity::ArmToGrip},
    Smaller{Quantity::Biacromial, Quantity::Span},
};

Limits limitsOf(Quantity quantity, const TapeTable& tape)
{
    const TapeRow& row = tape.of(quantity);
    return {row.low, row.high, quantity == Quantity::Mass ? "kg" : "mm"};
}

/// Mean of a measurement's readings as they stand, plausible or not; nothing when it cannot be
/// formed.
std::optional<double> meanAsFound(const Json* json)
{
    if (json && json->is_object()) {
        const auto value = json->find("value");
        json = value == json->end() ? nullptr : &*value;
    }
    if (!json)
        return std::nullopt;
    if (json->is_number())
        return json->get<double>();
    if (!json->is_array() || json->empty())
        return std::nullopt;
    double sum = 0.0;
    for (const Json& reading : *json) {
        if (!reading.is_number())
            return std::nullopt;
        sum += reading.get<double>();
    }
    return sum / static_cast<double>(json->size());
}

class Measurements {
public:
    Measurements(Fields fields, const TapeTable& tape) : m_fields(std::move(fields)), m_tape(tape)
    {
    }

    std::vector<Measurement> read()
    {
        // In the document's order, so that a rewrite leaves it as it was.
        for (const auto& [key, value] : m_fields.members()) {
            const auto at = std::find(quantityKeys.begin(), quantityKeys.end(), key);
            if (at != quantityKeys.end() && !value.is_null())
                readOne(static_cast<Quantity>(at - quantityKeys.begin()), value);
        }
        for (const auto& key : quantityKeys)
            m_fields.knows(key);
        if (!m_fields.find(keyOf(Quantity::Stature)))
            m_fields.missing(keyOf(Quantity::Stature), limitsOf(Quantity::Stature, m_tape));
        m_fields.refuseUnknown();
        for (const Smaller& pair : smallerOnEveryBody)
            compare(pair);
        return std::move(m_result);
    }

private:
    void readOne(Quantity quantity, const Json& json)
    {
        const std::string path = m_fields.pathOf(keyOf(quantity));
        if (!json.is_object()) {
            finish({quantity, readings(quantity, json, path), std::nullopt});
            return;
        }
        Fields stated(json, path, m_fields.report());
        Measurement measurement{quantity, {}, {}};
        if (const Json* value = stated.need("value"))
            measurement.readings = readings(quantity, *value, stated.pathOf("value"));
        Limits sd = plausible::readingSd;
        sd.unit = limitsOf(quantity, m_tape).unit;
        if (const Json* given = stated.find("sd"))
            measurement.sd = sdAt(*given, stated.pathOf("sd"), sd);
        stated.refuseUnknown();
        finish(std::move(measurement));
    }

    /// A standard deviation is small by nature, so none is taken for a slip of the unit.
    std::optional<double> sdAt(const Json& json, const std::string& path, const Limits& limits)
    {
        Report own;
        const auto sd = numberAt(json, path, {limits.low, limits.high, ""}, own);
        for (Problem& problem : own.take()) {
            problem.unit = limits.unit;
            m_fields.report().add(std::move(problem));
        }
        return sd;
    }

    std::vector<double> readings(Quantity quantity, const Json& json, const std::string& path)
    {
        Report& report = m_fields.report();
        const Limits limits = limitsOf(quantity, m_tape);
        if (!json.is_array()) {
            const auto value = numberAt(json, path, limits, report);
            return value ? std::vector{*value} : std::vector<double>{};
        }
        if (json.empty() || json.size() > mostReadings) {
            Problem problem = problemAt(json.empty() ? ProblemCode::TooFew : ProblemCode::TooMany,
                                        path, std::to_string(json.size()));
            problem.low = 1.0;
            problem.high = static_cast<double>(mostReadings);
            report.add(std::move(problem));
            return {};
        }
        std::vector<double> values;
        for (std::size_t i = 0; i < json.size(); ++i)
            if (const auto value = numberAt(json[i], joined(path, i), limits, report))
                values.push_back(*value);
        return values;
    }

    void finish(Measurement measurement)
    {
        if (!measurement.readings.empty())
            m_result.push_back(std::move(measurement));
    }

    /// Values just outside their ranges are compared too: an inseam over the stature is always
    /// outside. One far outside, or in another unit, says nothing about the other.
    bool comparable(Quantity quantity, double value) const
    {
        const TapeRow& row = m_tape.of(quantity);
        return value >= row.low / 2.0 && value <= row.high * 2.0;
    }

    void compare(const Smaller& pair)
    {
        const Json* found = m_fields.find(keyOf(pair.smaller));
        const auto small = meanAsFound(found);
        const auto large = meanAsFound(m_fields.find(keyOf(pair.larger)));
        if (!small || !large || !comparable(pair.smaller, *small)
            || !comparable(pair.larger, *large) || *small < *large)
            return;
        Problem problem = problemAt(ProblemCode::Contradiction,
                                    m_fields.pathOf(keyOf(pair.smaller)), shown(*found));
        problem.high = *large;
        problem.unit = "mm";
        problem.names.push_back(m_fields.pathOf(keyOf(pair.larger)));
        m_fields.report().add(std::move(problem));
    }

    Fields m_fields;
    const TapeTable& m_tape;
    std::vector<Measurement> m_result;
};

Mix readMix(Fields fields)
{
    Mix mix;
    bool sound = true;
    for (const auto& [key, value] : fields.members()) {
        if (fields.report().full())
            return mix;
        const auto use = useFromKey(key);
        if (!use) {
            Problem problem =
                problemAt(ProblemCode::NotOneOf, fields.pathOf(key), shortened(key, 60));
            problem.names = byNearness(key, useKeys);
            fields.report().add(std::move(problem));
            sound = false;
        } else if (!value.is_null()) {
            const auto share =
                numberAt(value, fields.pathOf(key), plausible::share, fields.report());
            mix.share[indexOf(*use)] = share.value_or(0.0);
            sound = sound && share;
        }
    }
    if (!sound)
        return mix;
    const double sum = std::accumulate(mix.share.begin(), mix.share.end(), 0.0);
    if (std::abs(sum - 1.0) > shareTolerance) {
        Problem problem = problemAt(ProblemCode::SharesSum, fields.path(), compact(tidy(sum)));
        problem.low = problem.high = 1.0;
        fields.report().add(std::move(problem));
    } else if (std::abs(sum - 1.0) > exactShares) {
        for (double& share : mix.share)
            share /= sum;
    }
    return mix;
}

} // namespace

Rider readRider(Fields fields, const TapeTable& tape, Kept& kept)
{
    Rider rider;
    rider.label = fields.text("label", longestName);
    rider.sex = fields.word("sex", sexWords);
    rider.flexibility = fields.word("flexibility", flexibilityWords);
    rider.straightLegRaiseDeg = fields.number("straight_leg_raise_deg", plausible::legRaise);
    rider.bendsFreely = fields.flag("bends_freely", true);
    if (auto shoe = fields.object("shoe")) {
        rider.shoe.soleMm = shoe->number("sole_mm", plausible::sole);
        rider.shoe.lengthMm = shoe->number("length_mm", plausible::shoeLength);
        shoe->keepUnknown(kept);
    }
    rider.heelHabit = fields.word("heel_habit", heelHabitWords).value_or(HeelHabit::Level);
    rider.notes = fields.text("notes", longestNotes);
    if (auto measurements = fields.needObject("measurements"))
        rider.measurements = Measurements(std::move(*measurements), tape).read();
    fields.keepUnknown(kept);
    return rider;
}

Riding readRiding(Fields fields, Kept& kept)
{
    Riding riding;
    if (auto mix = fields.needObject("mix"))
        riding.mix = readMix(std::move(*mix));
    riding.traffic = fields.flag("traffic", false);
    riding.footRetention = fields.flag("foot_retention", false);
    if (auto luggage = fields.object("luggage_kg")) {
        riding.luggage.frontKg = luggage->number("front", plausible::luggage).value_or(0.0);
        riding.luggage.rearKg = luggage->number("rear", plausible::luggage).value_or(0.0);
        luggage->keepUnknown(kept);
    }
    riding.feetDown = fields.word("feet_down", feetDownWords);
    riding.soldUnder = fields.word("sold_under", standardWords);
    fields.keepUnknown(kept);
    return riding;
}

CurrentBike readCurrent(Fields fields, Kept& kept)
{
    CurrentBike current;
    current.use = fields.word("use", useWords);
    current.barKind = fields.word("bar_kind", barKindWords);
    current.saddleHeightMm = fields.number("saddle_height_mm", plausible::saddleHeight);
    current.saddleSetbackMm = fields.number("saddle_setback_mm", plausible::saddleSetback);
    current.gripReachMm = fields.number("grip_reach_mm", plausible::gripReach);
    current.gripHeightMm = fields.number("grip_height_mm", plausible::gripHeight);
    current.saddleLengthMm = fields.number("saddle_length_mm", plausible::saddleLength);
    current.noseSetbackMm = fields.number("nose_setback_mm", plausible::noseBehind);
    current.noseToBarMm = fields.number("nose_to_bar_mm", plausible::noseToBar);
    current.barBelowSaddleMm = fields.number("bar_below_saddle_mm", plausible::barBelow);
    current.crankMm = fields.number("crank_mm", plausible::crank);
    current.ridden = fields.word("ridden", riddenWords);
    current.comfortable = fields.flag("comfortable", false);
    for (std::string& text : fields.texts("complaints", {0, mostComplaints}, longestName)) {
        if (const auto complaint = valueOf(complaintWords, text))
            current.complaints.push_back(*complaint);
        else
            current.otherComplaints.push_back(std::move(text));
    }
    fields.keepUnknown(kept);
    return current;
}

} // namespace tripoise::document
