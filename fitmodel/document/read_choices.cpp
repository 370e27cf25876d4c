// SPDX-License-Identifier: MIT
#include "document/nearest.h"
#include "document/plausible.h"
#include "document/sections.h"

#include <algorithm>

namespace tripoise::document {
namespace {

constexpr Limits factorLimits{weightFactorRange.low, weightFactorRange.high, ""};

/// A number under a name that is no consideration would weigh nothing, so it is refused; a remark
/// is kept.
PerConsideration<double> readFactors(Fields fields, Kept& kept)
{
    PerConsideration<double> factors = Choices::ordinary();
    PerConsideration<std::string_view> keys;
    for (std::size_t i = 0; i < considerationCount; ++i) {
        keys[i] = considerations[i].key;
        factors[i] = fields.number(keys[i], factorLimits).value_or(1.0);
    }
    for (const auto& [name, value] : fields.members()) {
        const bool known = std::find(keys.begin(), keys.end(), name) != keys.end();
        if (known || !value.is_number())
            continue;
        if (fields.report().full())
            return factors;
        Problem problem = problemAt(ProblemCode::UnknownKey, fields.pathOf(name), shown(value));
        problem.names = nearestOf(name, keys);
        fields.report().add(std::move(problem));
    }
    fields.keepUnknown(kept);
    return factors;
}

ChosenSize readChosenSize(Fields fields, Kept& kept)
{
    ChosenSize chosen;
    chosen.model = fields.text("model", longestName);
    chosen.size = readSize(fields);
    fields.keepUnknown(kept);
    return chosen;
}

Trial readTrial(Fields fields, Kept& kept)
{
    Trial trial;
    trial.model = fields.text("model", longestName);
    trial.size = readSize(fields);
    trial.saddleHeightMm = fields.needNumber("saddle_height_mm", plausible::saddleHeight);
    trial.saddleSetbackMm = fields.needNumber("saddle_setback_mm", plausible::saddleSetback);
    trial.gripReachMm = fields.needNumber("grip_reach_mm", plausible::gripReach);
    trial.gripHeightMm = fields.needNumber("grip_height_mm", plausible::gripHeight);
    fields.keepUnknown(kept);
    return trial;
}

/// What a size lacks is no problem here. Its unknown keys are not kept: only the program writes it.
std::vector<FrameSize> readUnfinished(Fields& fields)
{
    constexpr std::string_view key = "unfinished_frames";
    Report& report = fields.report();
    const Demand demand = report.demand();
    report.demand(Demand::Draft);
    std::vector<FrameSize> frames;
    const auto& entries = fields.list(key, {0, mostFrames});
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::string path = joined(fields.pathOf(key), i);
        Kept kept;
        if (entries[i].is_object())
            frames.push_back(readFrame(Fields(entries[i], path, report), kept));
        else
            report.add(wrongType(entries[i], path, "object"));
    }
    report.demand(demand);
    return frames;
}

} // namespace

Choices readChoices(Fields fields, Kept& kept)
{
    Choices choices;
    if (auto weights = fields.object("weights"))
        choices.weightFactor = readFactors(std::move(*weights), kept);
    if (auto trial = fields.object("trial"))
        choices.trial = readTrial(std::move(*trial), kept);
    if (auto setup = fields.object("setup")) {
        if (choices.trial) { // one of them alone is drawn
            Problem problem =
                problemAt(ProblemCode::Duplicate, fields.pathOf("trial"), choices.trial->size);
            problem.names = {setup->path()};
            fields.report().add(std::move(problem));
        }
        choices.trial = readTrial(std::move(*setup), kept);
        choices.trial->chosen = true;
    }
    if (auto size = fields.object("size"))
        choices.size = readChosenSize(std::move(*size), kept);
    choices.reason = fields.text("reason", longestName);
    choices.position = fields.word("position", positionWords);
    choices.toeTold = fields.flag("toe_overlap_told", false);
    choices.unfinished = readUnfinished(fields);
    fields.keepUnknown(kept);
    return choices;
}

} // namespace tripoise::document
