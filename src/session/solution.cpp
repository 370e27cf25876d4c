// SPDX-License-Identifier: MIT
#include "session/solution.h"

#include <algorithm>

namespace tripoise {

bool sameQuestion(const Fitting& a, const Fitting& b)
{
    return a.riding == b.riding && a.bicycle == b.bicycle && a.frames == b.frames
           && a.stock == b.stock && a.current == b.current && a.rider.sex == b.rider.sex
           && a.rider.flexibility == b.rider.flexibility
           && a.rider.straightLegRaiseDeg == b.rider.straightLegRaiseDeg
           && a.rider.shoe == b.rider.shoe && a.rider.heelHabit == b.rider.heelHabit
           && a.rider.measurements == b.rider.measurements
           && a.rider.bendsFreely == b.rider.bendsFreely && a.choices.position == b.choices.position
           && a.choices.weightFactor == b.choices.weightFactor;
}

Solution solve(const Fitting& fitting, const Tables& tables, const Solution& before,
               std::stop_token stop)
{
    Solution solution;
    solution.fitting = fitting;
    solution.tables = std::make_shared<const Tables>(weighted(tables, fitting.choices));
    solution.posterior =
        infer(fitting.rider.measurements, fitting.rider.sex, tables.populations, tables.tape);
    solution.lacks = lacks(fitting, tables);
    if (before.prepared && before.fitting.frames == fitting.frames
        && before.fitting.bicycle == fitting.bicycle && before.fitting.stock == fitting.stock)
        solution.prepared = before.prepared;
    else if (std::find(solution.lacks.begin(), solution.lacks.end(), Lack::Frame)
             == solution.lacks.end())
        solution.prepared = std::make_shared<const Prepared>(
            prepare(fitting.frames, fitting.bicycle, fitting.stock, tables, stop));
    if (solution.lacks.empty() && !stop.stop_requested())
        solution.advice =
            advise(fitting.rider, solution.posterior, fitting.riding, fitting.current,
                   *solution.prepared, *solution.tables, stop, fitting.choices.position);
    const bool onlyAFrame = solution.lacks == std::vector{Lack::Frame} && fitting.frames.empty();
    if (onlyAFrame && !stop.stop_requested())
        solution.first = firstAnswer(fitting.rider, solution.posterior, fitting.riding,
                                     fitting.current, fitting.bicycle, fitting.stock,
                                     *solution.tables, stop, fitting.choices.position);
    return solution;
}

} // namespace tripoise
