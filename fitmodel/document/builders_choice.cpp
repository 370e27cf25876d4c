// SPDX-License-Identifier: MIT
#include "document/builders_choice.h"

#include <algorithm>
#include <utility>

namespace tripoise {
namespace {

void forgetReason(Choices& choices)
{
    if (!choices.size && !ownSetup(choices))
        choices.reason.clear();
}

/// The size that was chosen, or the one whose set-up was.
std::optional<ChosenSize> sizeOf(const Choices& choices)
{
    return choices.size || !ownSetup(choices) ? choices.size : choices.trial->on();
}

} // namespace

bool ownSetup(const Choices& choices)
{
    return choices.trial && choices.trial->chosen;
}

void chooseSize(Choices& choices, std::optional<ChosenSize> size)
{
    choices.size = std::move(size);
    if (ownSetup(choices) && choices.size != choices.trial->on())
        choices.trial->chosen = false;
    forgetReason(choices);
}

void chooseSetup(Choices& choices, bool chosen)
{
    if (!choices.trial)
        return;
    choices.trial->chosen = chosen;
    if (chosen)
        choices.size = choices.trial->on();
    forgetReason(choices);
}

void pull(Choices& choices, std::optional<Trial> trial)
{
    const bool chosen = trial && ownSetup(choices) && trial->on() == choices.trial->on();
    choices.trial = std::move(trial);
    if (choices.trial)
        choices.trial->chosen = chosen;
    forgetReason(choices);
}

Contacts contactsOf(const Trial& trial)
{
    return {saddleFrom(trial.saddleHeightMm, trial.saddleSetbackMm),
            {trial.gripReachMm, trial.gripHeightMm},
            {}};
}

bool sameWord(const Choices& a, const Choices& b)
{
    return a.size == b.size && a.reason == b.reason && ownSetup(a) == ownSetup(b)
           && (!ownSetup(a) || a.trial == b.trial);
}

std::optional<std::size_t> chosenCandidate(const Choices& choices, const Advice& advice,
                                           const Prepared& prepared)
{
    const auto size = sizeOf(choices);
    if (!size)
        return std::nullopt;
    const auto at =
        std::find_if(advice.candidates.begin(), advice.candidates.end(), [&](const Candidate& one) {
            return size->is(prepared.sizes[one.size].frame);
        });
    if (at == advice.candidates.end())
        return std::nullopt;
    return static_cast<std::size_t>(at - advice.candidates.begin());
}

std::optional<BuildersChoice> buildersChoice(const Choices& choices, const Riding& riding,
                                             const Advice& advice, const Prepared& prepared,
                                             const Tables& tables)
{
    const auto size = sizeOf(choices);
    if (!size)
        return std::nullopt;
    BuildersChoice choice{*size,
                          choices.size.has_value(),
                          chosenCandidate(choices, advice, prepared),
                          {},
                          choices.reason};
    if (!choice.candidate || !ownSetup(choices) || choices.trial->on() != *size)
        return choice;
    const Candidate& candidate = advice.candidates[*choice.candidate];
    if (candidate.best)
        choice.setup =
            tryContacts(contactsOf(*choices.trial), *candidate.best, prepared.sizes[candidate.size],
                        {advice.person, riding, prepared, tables});
    return choice;
}

} // namespace tripoise
