// SPDX-License-Identifier: MIT
#include "session/solution.h"

namespace tripoise {
namespace {

bool decidable(const Fitting& fitting)
{
    const auto measured = [&](Quantity quantity) {
        for (const Measurement& measurement : fitting.rider.measurements)
            if (measurement.quantity == quantity)
                return true;
        return false;
    };
    return measured(Quantity::Stature) && measured(Quantity::Inseam) && !fitting.frames.empty()
           && !fitting.stock.cranksMm.empty();
}

} // namespace

bool sameQuestion(const Fitting& a, const Fitting& b)
{
    return a.riding == b.riding && a.frames == b.frames && a.stock == b.stock
           && a.current == b.current && a.rider.sex == b.rider.sex
           && a.rider.flexibility == b.rider.flexibility
           && a.rider.straightLegRaiseDeg == b.rider.straightLegRaiseDeg
           && a.rider.shoe == b.rider.shoe && a.rider.heelHabit == b.rider.heelHabit
           && a.rider.measurements == b.rider.measurements;
}

Solution solve(const Fitting& fitting, const Tables& tables, const Solution& before,
               std::stop_token stop)
{
    Solution solution;
    solution.fitting = fitting;
    solution.tables = std::make_shared<const Tables>(tables);
    if (before.prepared && before.fitting.frames == fitting.frames
        && before.fitting.stock == fitting.stock)
        solution.prepared = before.prepared;
    else
        solution.prepared =
            std::make_shared<const Prepared>(prepare(fitting.frames, fitting.stock, tables));
    solution.posterior =
        infer(fitting.rider.measurements, fitting.rider.sex, tables.populations, tables.tape);
    if (decidable(fitting) && !stop.stop_requested())
        solution.advice = advise(fitting.rider, fitting.riding, fitting.current, *solution.prepared,
                                 *solution.tables, stop);
    return solution;
}

} // namespace tripoise
