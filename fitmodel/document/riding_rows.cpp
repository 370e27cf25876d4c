// SPDX-License-Identifier: MIT
//
// The mix of uses in a document.
#include "document/nearest.h"
#include "document/own_rows.h"
#include "document/rows.h"

#include <cmath>
#include <numeric>

namespace tripoise::document {
namespace {

constexpr Limits shareLimits{0, 1, ""};
constexpr double shareTolerance = 1e-6;
// Shares nearer to 1 than this are as near as doubles come, and stay as they were written.
constexpr double exactShares = 1e-12;

double sumOf(const Mix& mix)
{
    return std::accumulate(mix.share.begin(), mix.share.end(), 0.0);
}

void checkSum(const Mix& mix, const std::string& path, Report& report)
{
    const double sum = sumOf(mix);
    if (std::abs(sum - 1.0) <= shareTolerance || report.mentions(path))
        return;
    Problem problem = problemAt(ProblemCode::SharesSum, path, compact(tidy(sum)));
    problem.low = problem.high = 1.0;
    report.add(std::move(problem));
}

} // namespace

void readMix(Fields& riding, Riding& to, Kept&)
{
    auto fields = riding.needObject("mix");
    if (!fields)
        return;
    Report& report = fields->report();
    Mix mix;
    for (const auto& [key, value] : fields->members()) {
        if (report.full())
            break;
        const auto use = useFromKey(key);
        if (!use) {
            Problem problem =
                problemAt(ProblemCode::NotOneOf, fields->pathOf(key), shortened(key, 60));
            problem.names = byNearness(key, useKeys);
            report.add(std::move(problem));
        } else if (!value.is_null()) {
            mix.share[indexOf(*use)] =
                numberAt(value, fields->pathOf(key), shareLimits, report).value_or(0.0);
        }
    }
    checkSum(mix, fields->path(), report);
    const double sum = sumOf(mix);
    if (std::abs(sum - 1.0) <= shareTolerance && std::abs(sum - 1.0) > exactShares)
        for (double& share : mix.share)
            share /= sum;
    to.mix = mix;
}

void writeMix(const Riding& riding, Json& json)
{
    Json mix = Json::object();
    for (const Use use : allUses)
        if (riding.mix.of(use) != 0.0)
            mix[std::string(keyOf(use))] = tidy(riding.mix.of(use));
    json["mix"] = std::move(mix);
}

void checkMix(const Riding& riding, const std::string& path, Report& report)
{
    const std::string at = joined(path, "mix");
    for (const Use use : allUses)
        checkNumber(riding.mix.of(use), joined(at, keyOf(use)), shareLimits, report);
    checkSum(riding.mix, at, report);
}

Json mixSchema(const TapeTable&)
{
    Json json{{"type", "object"},
              {"description", "shares that sum to 1"},
              {"properties", Json::object()},
              {"additionalProperties", false}};
    for (const Use use : allUses)
        json["properties"][std::string(keyOf(use))] = numberSchema(shareLimits, false, {});
    return json;
}

} // namespace tripoise::document
