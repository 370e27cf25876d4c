// SPDX-License-Identifier: MIT
//
// What goes to the workshop, and what came of it.
#pragma once

#include "advice/as_built.h"
#include "document/builders_choice.h"

namespace tripoise {

/// The size that the builder chose, or that was advised, set up as they chose or as advised. It
/// points into the advice that was asked.
struct HandedOver {
    std::size_t candidate = 0;             ///< index into Advice::candidates
    bool chosen = false;                   ///< by the builder
    std::optional<Tried> own;              ///< their own set-up
    const AdvisedSetup* advised = nullptr; ///< of that size
    std::optional<FirstStep> firstStep;    ///< where the set-up is too far for one visit

    [[nodiscard]] const Setup& setup() const { return own ? own->setup : advised->setup; }
    /// What is set when it is built: the set-up, or the first step of the way to it.
    [[nodiscard]] Setup today() const;
    /// What that leaves of the way, for saddle and hands together.
    [[nodiscard]] Point toGo() const { return setup().saddle.point() - today().saddle.point(); }
    [[nodiscard]] const std::vector<UsePosture>& uses() const
    {
        return own ? own->uses : advised->uses;
    }
    [[nodiscard]] const LegPosture& leg() const { return own ? own->leg : advised->leg; }
};
/// Empty where that size carries no set-up.
[[nodiscard]] std::optional<HandedOver> handedOver(const Choices& choices, const Riding& riding,
                                                   const Advice& advice, const Prepared& prepared,
                                                   const Tables& tables);

/// What was handed over, and the finished bicycle held against it where that was read off.
struct Finished {
    HandedOver over;
    std::optional<BuiltCheck> check;

    /// Where it has saddle and hands; as handed over where nothing was read off.
    [[nodiscard]] Contacts contacts() const
    {
        return check ? check->contacts : contactsOf(over.today());
    }
};
/// Empty where there is nothing to hand over, or what was built is no longer among the sizes.
[[nodiscard]] std::optional<Finished> finished(const std::optional<AsBuilt>& built,
                                               const Choices& choices, const Riding& riding,
                                               const Advice& advice, const Prepared& prepared,
                                               const Tables& tables);

} // namespace tripoise
