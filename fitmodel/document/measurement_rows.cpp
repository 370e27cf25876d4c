// SPDX-License-Identifier: MIT
//
// What the tape says, in a document: one reading, several, or one with its standard deviation.
#include "document/own_rows.h"
#include "document/rows.h"

#include <algorithm>
#include <array>

namespace tripoise::document {
namespace {

constexpr Count readingCount{1, 20};
constexpr double leastSd = 1e-3;
constexpr double mostSd = 200.0;

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

std::string_view unitOf(Quantity quantity)
{
    return quantity == Quantity::Mass ? "kg" : "mm";
}

Limits limitsOf(Quantity quantity, const TapeTable& tape)
{
    const TapeRow& row = tape.of(quantity);
    return {row.low, row.high, unitOf(quantity)};
}

/// A standard deviation is small by nature, so none is taken for a slip of the unit.
void checkSd(double sd, std::string value, std::string path, Quantity quantity, Report& report)
{
    if (sd >= leastSd && sd <= mostSd)
        return;
    Problem problem = problemAt(ProblemCode::OutOfRange, std::move(path), std::move(value));
    problem.low = leastSd;
    problem.high = mostSd;
    problem.unit = unitOf(quantity);
    report.add(std::move(problem));
}

/// Readings as they stand, plausible or not, so that they can be compared.
std::vector<double> readReadings(const Json& json, const std::string& path, const Limits& limits,
                                 Report& report)
{
    std::vector<double> readings;
    const auto take = [&](const Json& one, const std::string& at) {
        (void)numberAt(one, at, limits, report);
        if (one.is_number())
            readings.push_back(one.get<double>());
    };
    if (!json.is_array()) {
        take(json, path);
        return readings;
    }
    if (checkCount(json.size(), path, readingCount, report))
        for (std::size_t i = 0; i < json.size(); ++i)
            take(json[i], joined(path, i));
    return readings;
}

void readOne(Quantity quantity, const Json& json, const std::string& path, Rider& rider,
             Report& report)
{
    const Limits limits = limitsOf(quantity, *report.rules().tape);
    Measurement measurement{quantity, {}, {}};
    if (json.is_object()) {
        Fields stated(json, path, report);
        if (const Json* value = stated.need("value"))
            measurement.readings = readReadings(*value, stated.pathOf("value"), limits, report);
        if (const Json* sd = stated.find("sd")) {
            const std::string at = stated.pathOf("sd");
            if (sd->is_number()) {
                measurement.sd = sd->get<double>();
                checkSd(*measurement.sd, shown(*sd), at, quantity, report);
            } else {
                report.add(wrongType(*sd, at, "number"));
            }
        }
        stated.refuseUnknown();
    } else {
        measurement.readings = readReadings(json, path, limits, report);
    }
    if (!measurement.readings.empty())
        rider.measurements.push_back(std::move(measurement));
}

const Measurement* find(const Rider& rider, Quantity quantity)
{
    const auto at = std::find_if(
        rider.measurements.begin(), rider.measurements.end(),
        [&](const Measurement& measurement) { return measurement.quantity == quantity; });
    return at == rider.measurements.end() ? nullptr : &*at;
}

double meanOf(const Measurement& measurement)
{
    double sum = 0.0;
    for (const double reading : measurement.readings)
        sum += reading;
    return sum / static_cast<double>(measurement.readings.size());
}

Json measurementJson(const Measurement& measurement)
{
    Json value = measurement.readings.size() == 1 ? tidy(measurement.readings.front())
                                                  : numbers(measurement.readings);
    if (!measurement.sd)
        return value;
    return {{"value", std::move(value)}, {"sd", tidy(*measurement.sd)}};
}

/// Values just outside their ranges are compared too: an inseam over the stature is always outside.
/// One far outside, or in another unit, says nothing about the other.
bool comparable(Quantity quantity, double value, const TapeTable& tape)
{
    const TapeRow& row = tape.of(quantity);
    return value >= row.low / 2.0 && value <= row.high * 2.0;
}

void compare(const Smaller& pair, const Rider& rider, const std::string& path, Report& report)
{
    const TapeTable& tape = *report.rules().tape;
    const Measurement* smaller = find(rider, pair.smaller);
    const Measurement* larger = find(rider, pair.larger);
    if (!smaller || !larger)
        return;
    const double small = meanOf(*smaller);
    const double large = meanOf(*larger);
    if (small < large || !comparable(pair.smaller, small, tape)
        || !comparable(pair.larger, large, tape))
        return;
    Problem problem = problemAt(ProblemCode::Contradiction, joined(path, keyOf(pair.smaller)),
                                shown(measurementJson(*smaller)));
    problem.high = large;
    problem.unit = "mm";
    problem.names.push_back(joined(path, keyOf(pair.larger)));
    report.add(std::move(problem));
}

/// What must hold between the measurements, at the path of their object.
void agree(const Rider& rider, const std::string& path, Report& report)
{
    if (!find(rider, Quantity::Stature)) {
        const std::string at = joined(path, keyOf(Quantity::Stature));
        if (!report.mentions(at))
            report.add(missingAt(at, limitsOf(Quantity::Stature, *report.rules().tape)));
    }
    for (const Smaller& pair : smallerOnEveryBody)
        compare(pair, rider, path, report);
}

} // namespace

void readMeasurements(Fields& rider, Rider& to, Kept&)
{
    auto fields = rider.needObject("measurements");
    if (!fields)
        return;
    // In the document's order, so that a rewrite leaves it as it was.
    for (const auto& [key, value] : fields->members()) {
        const auto at = std::find(quantityKeys.begin(), quantityKeys.end(), key);
        if (at != quantityKeys.end() && !value.is_null())
            readOne(static_cast<Quantity>(at - quantityKeys.begin()), value, fields->pathOf(key),
                    to, fields->report());
    }
    for (const auto& key : quantityKeys)
        fields->knows(key);
    fields->refuseUnknown();
    agree(to, fields->path(), fields->report());
}

void writeMeasurements(const Rider& rider, Json& json)
{
    Json measurements = Json::object();
    for (const Measurement& measurement : rider.measurements)
        measurements[std::string(keyOf(measurement.quantity))] = measurementJson(measurement);
    json["measurements"] = std::move(measurements);
}

void checkMeasurements(const Rider& rider, const std::string& path, Report& report)
{
    const std::string all = joined(path, "measurements");
    for (const Measurement& measurement : rider.measurements) {
        const std::string own = joined(all, keyOf(measurement.quantity));
        const std::string at = measurement.sd ? joined(own, "value") : own;
        const Limits limits = limitsOf(measurement.quantity, *report.rules().tape);
        const auto& readings = measurement.readings;
        if (readings.size() != 1)
            checkCount(readings.size(), at, readingCount, report);
        for (std::size_t i = 0; i < readings.size(); ++i)
            checkNumber(readings[i], readings.size() == 1 ? at : joined(at, i), limits, report);
        if (measurement.sd)
            checkSd(*measurement.sd, compact(tidy(*measurement.sd)), joined(own, "sd"),
                    measurement.quantity, report);
    }
    agree(rider, all, report);
}

Json measurementsSchema(const TapeTable& tape)
{
    Json json{{"type", "object"},
              {"properties", Json::object()},
              {"required", {keyOf(Quantity::Stature)}},
              {"additionalProperties", false}};
    for (std::size_t i = 0; i < quantityKeys.size(); ++i) {
        const auto quantity = static_cast<Quantity>(i);
        const Json one = numberSchema(limitsOf(quantity, tape), true, {});
        const Json several = listSchema(one, readingCount, true);
        const Json stated{{"type", "object"},
                          {"properties",
                           {{"value", {{"anyOf", {one, several}}}},
                            {"sd", numberSchema({leastSd, mostSd, unitOf(quantity)}, false, {})}}},
                          {"required", {"value"}},
                          {"additionalProperties", false}};
        Json all = Json::array({one, several, stated});
        if (quantity != Quantity::Stature)
            all.push_back({{"type", "null"}});
        json["properties"][std::string(quantityKeys[i])] = {{"anyOf", std::move(all)}};
    }
    return json;
}

} // namespace tripoise::document
