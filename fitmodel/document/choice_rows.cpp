// SPDX-License-Identifier: MIT
//
// Of the builder's choices: how much each consideration counts, and a set-up that was pulled about
// or chosen.
#include "document/field_table.h"
#include "document/nearest.h"

#include <algorithm>

namespace tripoise::document {
namespace {

constexpr Limits factorLimits{weightFactorRange.low, weightFactorRange.high, ""};

std::string_view factorKey(std::size_t consideration)
{
    return considerations[consideration].key;
}

void readInto(Fields inside, bool chosen, Choices& to, Kept& kept)
{
    Trial trial;
    readRows(inside, trial, kept);
    trial.chosen = chosen;
    to.trial = std::move(trial);
}

} // namespace

/// A number under a name that is no consideration would weigh nothing, so it is refused; a remark
/// is kept.
void readFactors(Fields& choices, Choices& to, Kept& kept)
{
    auto fields = choices.object("weights");
    if (!fields)
        return;
    PerConsideration<std::string_view> keys;
    for (std::size_t i = 0; i < considerationCount; ++i) {
        keys[i] = factorKey(i);
        to.weightFactor[i] = fields->number(keys[i], factorLimits).value_or(1.0);
    }
    for (const auto& [name, value] : fields->members()) {
        const bool known = std::find(keys.begin(), keys.end(), name) != keys.end();
        if (known || !value.is_number())
            continue;
        if (fields->report().full())
            return;
        Problem problem = problemAt(ProblemCode::UnknownKey, fields->pathOf(name), shown(value));
        problem.names = nearestOf(name, keys);
        fields->report().add(std::move(problem));
    }
    fields->keepUnknown(kept);
}

void writeFactors(const Choices& choices, Json& json)
{
    Json weights = Json::object();
    for (std::size_t i = 0; i < considerationCount; ++i)
        if (choices.weightFactor[i] != 1.0)
            weights[std::string(factorKey(i))] = tidy(choices.weightFactor[i]);
    if (!weights.empty())
        json["weights"] = std::move(weights);
}

void checkFactors(const Choices& choices, const std::string& path, Report& report)
{
    const std::string at = joined(path, "weights");
    for (std::size_t i = 0; i < considerationCount; ++i)
        checkNumber(choices.weightFactor[i], joined(at, factorKey(i)), factorLimits, report);
}

Json factorsSchema(const TapeTable&)
{
    Json json{{"type", {"object", "null"}}, {"properties", Json::object()}};
    for (std::size_t i = 0; i < considerationCount; ++i)
        json["properties"][std::string(factorKey(i))] = numberSchema(factorLimits, false, {});
    return json;
}

void readTrial(Fields& choices, Choices& to, Kept& kept)
{
    if (auto inside = choices.object("trial"))
        readInto(std::move(*inside), false, to, kept);
}

void readOwnSetup(Fields& choices, Choices& to, Kept& kept)
{
    auto inside = choices.object("setup");
    if (!inside)
        return;
    if (to.trial) { // one of them alone is drawn
        Problem problem =
            problemAt(ProblemCode::Duplicate, choices.pathOf("trial"), to.trial->size);
        problem.names = {inside->path()};
        choices.report().add(std::move(problem));
    }
    readInto(std::move(*inside), true, to, kept);
}

void writeTrial(const Choices& choices, Json& json)
{
    if (choices.trial && !choices.trial->chosen)
        json["trial"] = jsonOf(*choices.trial);
}

void writeOwnSetup(const Choices& choices, Json& json)
{
    if (choices.trial && choices.trial->chosen)
        json["setup"] = jsonOf(*choices.trial);
}

void checkTrial(const Choices& choices, const std::string& path, Report& report)
{
    if (choices.trial && !choices.trial->chosen)
        checkRows(*choices.trial, joined(path, "trial"), report);
}

void checkOwnSetup(const Choices& choices, const std::string& path, Report& report)
{
    if (choices.trial && choices.trial->chosen)
        checkRows(*choices.trial, joined(path, "setup"), report);
}

Json trialSchema(const TapeTable& tape)
{
    Json json = schemaOf<Trial>(tape, false);
    json["description"] =
        R"(pulled about on the board; as "setup", chosen by the builder: one of the two)";
    return json;
}

} // namespace tripoise::document
