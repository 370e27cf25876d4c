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

std::optional<HandedOver> handedOver(const AsBuilt& built, const Choices& choices,
                                     const Riding& riding, const Advice& advice,
                                     const Prepared& prepared, const Tables& tables)
{
    Choices onIt = choices;
    chooseSize(onIt, ChosenSize{built.model, built.size});
    auto over = handedOver(onIt, riding, advice, prepared, tables);
    if (!over || !over->chosen) // the advised size stands in for one that is gone
        return std::nullopt;
    return over;
}

BuiltCheck checkBuilt(const AsBuilt& built, const HandedOver& over, const Riding& riding,
                      const Advice& advice, const Prepared& prepared, const Tables& tables)
{
    return checkBuilt(built, over.today(), *over.advised, advice.saddleNoseAheadMm,
                      prepared.sizes[advice.candidates[over.candidate].size],
                      {advice.person, riding, prepared, tables});
}

} // namespace tripoise
