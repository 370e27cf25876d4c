// SPDX-License-Identifier: MIT
//
// The builder's word, held against the advice: the program advises, the builder decides.
#pragma once

#include "advice/trial.h"
#include "document/choices.h"

namespace tripoise {

struct BuildersChoice {
    ChosenSize size;
    bool sizeChosen = false; ///< not only a set-up on the advised size
    /// Index into Advice::candidates; empty where the size is no longer among the frames.
    std::optional<std::size_t> candidate;
    std::optional<Tried> setup; ///< the builder's own, on that candidate
    std::string reason;
};

[[nodiscard]] Contacts contactsOf(const Trial& trial);

/// The builder's word on the size, or none. A set-up that was chosen on another size is only
/// pulled about from then on; without a choice there is no reason for one.
void chooseSize(Choices& choices, std::optional<ChosenSize> size);
/// What was pulled about is the builder's word, on its size, or is no more.
void chooseSetup(Choices& choices, bool chosen);
/// What is pulled about is another set-up, or none. On the same size it is chosen if the one before
/// was.
void pull(Choices& choices, std::optional<Trial> trial);
[[nodiscard]] bool ownSetup(const Choices& choices); ///< one was chosen

/// The candidate that the builder chose; empty without a choice, or where it is none of them.
[[nodiscard]] std::optional<std::size_t>
chosenCandidate(const Choices& choices, const Advice& advice, const Prepared& prepared);

/// Whether two choices say the same of the builder's word.
[[nodiscard]] bool sameWord(const Choices& a, const Choices& b);

/// Empty where the builder chose nothing.
[[nodiscard]] std::optional<BuildersChoice>
buildersChoice(const Choices& choices, const Riding& riding, const Advice& advice,
               const Prepared& prepared, const Tables& tables);

} // namespace tripoise
