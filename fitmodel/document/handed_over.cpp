// SPDX-License-Identifier: MIT
#include "document/handed_over.h"

namespace tripoise {

Setup HandedOver::today() const
{
    Setup today = setup();
    if (!firstStep)
        return today;
    today.clamp += firstStep->grip - today.grip;
    today.saddle = firstStep->saddle;
    today.grip = firstStep->grip;
    return today;
}

std::optional<HandedOver> handedOver(const Choices& choices, const Riding& riding,
                                     const Advice& advice, const Prepared& prepared,
                                     const Tables& tables)
{
    if (!advice.solved)
        return std::nullopt;
    HandedOver over;
    auto choice = buildersChoice(choices, riding, advice, prepared, tables);
    over.chosen = choice && choice->candidate;
    over.candidate = over.chosen ? *choice->candidate : advice.verdict.named.value_or(0);
    const Candidate& candidate = advice.candidates[over.candidate];
    if (!candidate.best)
        return std::nullopt;
    over.advised = &*candidate.best;
    if (over.chosen)
        over.own = std::move(choice->setup);
    if (!over.own)
        over.firstStep = candidate.firstStep;
    return over;
}

std::optional<Finished> finished(const std::optional<AsBuilt>& built, const Choices& choices,
                                 const Riding& riding, const Advice& advice,
                                 const Prepared& prepared, const Tables& tables)
{
    Choices onIt = choices;
    if (built) // whatever is advised by now
        chooseSize(onIt, ChosenSize{built->model, built->size});
    auto over = handedOver(onIt, riding, advice, prepared, tables);
    if (!over || (built && !over->chosen)) // the advised size stands in for one that is gone
        return std::nullopt;
    Finished result{std::move(*over), {}};
    if (built)
        result.check =
            checkBuilt(*built, result.over.today(), *result.over.advised, advice.saddleNoseAheadMm,
                       prepared.sizes[advice.candidates[result.over.candidate].size],
                       {advice.person, riding, prepared, tables});
    return result;
}

} // namespace tripoise
