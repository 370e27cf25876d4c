// SPDX-License-Identifier: MIT
#include "document/lacks.h"

#include "document/read.h"

#include <algorithm>
#include <set>
#include <string_view>

namespace tripoise {
namespace {

Lack lackOf(const Problem& problem)
{
    const std::string_view path = problem.path;
    if (problem.code == ProblemCode::NothingFits)
        return Lack::NothingFits;
    if (problem.code == ProblemCode::TooManySetups)
        return Lack::TooManySetups;
    if (problem.code == ProblemCode::Contradiction || problem.code == ProblemCode::Duplicate)
        return Lack::Agreement;
    if (path == "/rider/measurements/stature_mm")
        return Lack::Stature;
    if (path.starts_with("/riding/mix"))
        return Lack::Mix;
    if (path.starts_with("/frames"))
        return Lack::Frame;
    if (path.starts_with("/stock/stems"))
        return Lack::Stem;
    if (path.starts_with("/stock/bars"))
        return Lack::Bar;
    if (path.starts_with("/stock/cranks_mm") || path == "/bicycle/crank_mm")
        return Lack::Crank;
    return Lack::Agreement; // a figure that no field would have let in
}

} // namespace

Problems objections(const Fitting& fitting, const Tables& tables)
{
    Fitting brief = fitting; // what is carried along has no part in a decision
    brief.kept = {};
    brief.choices.trial.reset();
    brief.choices.size.reset();
    brief.choices.reason.clear();
    brief.choices.unfinished.clear();
    return validate(brief, tables);
}

std::vector<Lack> lacks(const Fitting& fitting, const Tables& tables)
{
    std::set<Lack> found;
    for (const Problem& problem : objections(fitting, tables))
        found.insert(lackOf(problem));
    return {found.begin(), found.end()};
}

std::optional<std::size_t> trialFrame(const Fitting& fitting)
{
    const auto& trial = fitting.choices.trial;
    if (!trial)
        return std::nullopt;
    const auto at = std::find_if(fitting.frames.begin(), fitting.frames.end(),
                                 [&](const FrameSize& frame) { return trial->on().is(frame); });
    if (at == fitting.frames.end())
        return std::nullopt;
    return static_cast<std::size_t>(at - fitting.frames.begin());
}

} // namespace tripoise
