// SPDX-License-Identifier: MIT
//
// What a rider is shown: themselves on the bicycle they ride today, on the size looked at and on
// the one beside it, each on the same bottom bracket, so that going from one to the next shows what
// moves.
#pragma once

#include "document/fitting.h"
#include "drawing/plan_view.h"
#include "story/rider_words.h"
#include "wording/advice_text.h"

#include <array>

namespace tripoise {

/// What is told of, and of which of its sizes.
struct LookedAt {
    const Fitting& fitting; ///< what the advice answers
    const Choices& choices; ///< of the builder since
    const Advice& advice;
    const Prepared& prepared;
    const Tables& tables;
    std::size_t shown = 0; ///< index into the advice's candidates
    std::optional<std::size_t> beside;
};

class RiderStory {
public:
    RiderStory() = default;
    explicit RiderStory(const LookedAt& at);

    /// Empty where there is no such bicycle, or nothing fits it.
    [[nodiscard]] const std::optional<SideView>& of(WhichBike which) const
    {
        return m_views[static_cast<std::size_t>(which)];
    }
    [[nodiscard]] bool has(WhichBike which) const { return of(which).has_value(); }
    /// The size looked at with the crank where the knee is nearest to the bar; empty where it keeps
    /// well clear of it, on the size beside as well.
    [[nodiscard]] const std::optional<SideView>& kneeAtBar() const { return m_kneeAtBar; }
    /// Shoe and wheel from above, of a size; empty where there is none.
    [[nodiscard]] const std::optional<PlanView>& fromAbove(WhichBike which) const
    {
        return m_plans[static_cast<std::size_t>(which)];
    }
    /// Standing over a size in shoes; empty where its table does not tell.
    struct Standing {
        double crotchMm = 0.0; ///< over the ground
        double roomMm = 0.0;   ///< under it
    };
    [[nodiscard]] const std::optional<Standing>& standing(WhichBike which) const
    {
        return m_standing[static_cast<std::size_t>(which)];
    }
    /// What the decision says for the size looked at against the one beside it, strongest first.
    [[nodiscard]] const std::vector<ToldReason>& reasons() const { return m_reasons; }
    [[nodiscard]] const QString& verdict() const { return m_verdict; }
    [[nodiscard]] RiddenSetup setup() const { return m_setup; } ///< of the size looked at
    [[nodiscard]] bool chosen() const { return m_chosen; }      ///< it is the builder's choice
    [[nodiscard]] std::optional<ToeRoom> toeRoom(WhichBike which) const;
    /// On the size looked at or on the one beside it a shoe meets the wheel, or may.
    [[nodiscard]] bool toeNearWheel() const;
    /// Holds all of them.
    [[nodiscard]] SideView::Bounds bounds() const;

private:
    std::array<std::optional<SideView>, allRidden.size()> m_views;
    std::optional<SideView> m_kneeAtBar;
    std::array<std::optional<PlanView>, allRidden.size()> m_plans;
    std::array<std::optional<Standing>, allRidden.size()> m_standing;
    std::vector<ToldReason> m_reasons;
    QString m_verdict;
    RiddenSetup m_setup = RiddenSetup::Advised;
    bool m_chosen = false;
    double m_doubtMm = 0.0;
};

} // namespace tripoise
