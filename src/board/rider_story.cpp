// SPDX-License-Identifier: MIT
#include "board/rider_story.h"

#include "advice/shoes.h"
#include "advice/trial.h"
#include "drawing/knee_room.h"
#include "wording/visible.h"

#include <algorithm>

namespace tripoise {

void RiderStory::make(const Session& session)
{
    const Solution& solution = session.solution();
    const auto shown = session.shownCandidate();
    if (!shown || !solution.prepared || !solution.tables)
        return;
    const Advice& advice = solution.advice;
    const Riding& riding = solution.fitting.riding;
    const auto view = [&](std::size_t candidate, const Tried* tried,
                          std::optional<Angle> crank = {}) {
        Shown what;
        what.chosen = candidate;
        what.registration = Registration::Contacts;
        what.tried = tried;
        what.crank = crank;
        SideView made =
            makeSideView(advice, what, riding.mix, *solution.prepared, *solution.tables);
        return made.rider ? std::optional(std::move(made)) : std::nullopt;
    };
    m_doubtMm = solution.tables->handling.toe.checkRoomMm;
    const auto tell = [&](WhichBike which, std::size_t candidate) {
        const auto place = static_cast<std::size_t>(which);
        m_views[place] = view(candidate, nullptr);
        const PlanView plan = makePlanView(advice.candidates[candidate], advice.person,
                                           *solution.prepared, *solution.tables);
        if (plan.drawn)
            m_plans[place] = plan;
        const Skeleton& skeleton =
            solution.prepared->sizes[advice.candidates[candidate].size].skeleton;
        const PartDefaults& parts = solution.tables->parts;
        if (const auto room = standoverInShoes(skeleton, advice.person, parts))
            m_standing[place] = {advice.person.body.inseamMm + soleOf(advice.person, parts), *room};
    };
    tell(WhichBike::Shown, *shown);
    const auto besides = session.besideCandidate();
    if (besides)
        tell(WhichBike::Beside, *besides);
    const Verdict& verdict = advice.verdict;
    m_verdict = fitsYou(advice, *shown, *solution.prepared);
    if (!verdict.named || (besides && verdict.named == shown && verdict.other == besides))
        m_reasons = reasonsFor(advice, *solution.prepared);
    else if (verdict.other == shown && verdict.named == besides)
        m_reasons = reasonsAgainst(advice, *solution.prepared);

    if (const auto& ridden = of(WhichBike::Shown)) {
        const KneeRoom room = roomAtTheKnee(*ridden);
        const auto& beside = of(WhichBike::Beside);
        if (std::min(room.mm, beside ? roomAtTheKnee(*beside).mm : room.mm) < barNearKneeMm)
            m_kneeAtBar = view(*shown, nullptr, room.crank);
    }

    const Candidate& candidate = advice.candidates[*shown];
    const auto contacts =
        solution.fitting.current ? contactsOf(*solution.fitting.current) : std::nullopt;
    if (!contacts || !candidate.best)
        return;
    // Of that bicycle only contacts are known: they are ridden with the bar of the size looked at.
    const Tried today =
        tryContacts(*contacts, *candidate.best, solution.prepared->sizes[candidate.size],
                    {advice.person, riding, *solution.prepared, *solution.tables});
    auto& made = m_views[static_cast<std::size_t>(WhichBike::Today)];
    made = view(*shown, &today);
    if (made) {
        made->advised.reset();
        made->ridden = RiddenSketch{contacts->saddle.point(), contacts->grip, contacts->crankMm};
    }
}

std::optional<ToeRoom> RiderStory::toeRoom(WhichBike which) const
{
    if (!has(which) || !fromAbove(which))
        return std::nullopt;
    return ToeRoom{asName(of(which)->chosen.size), fromAbove(which)->roomMm, m_doubtMm};
}

bool RiderStory::toeNearWheel() const
{
    return std::any_of(m_plans.begin(), m_plans.end(), [this](const auto& plan) {
        return plan && plan->roomMm && *plan->roomMm < m_doubtMm;
    });
}

SideView::Bounds RiderStory::bounds() const
{
    std::optional<SideView::Bounds> all;
    for (const auto& view : m_views) {
        if (!view)
            continue;
        const SideView::Bounds each = view->bounds();
        if (!all)
            all = each;
        all->low = all->low.cwiseMin(each.low);
        all->high = all->high.cwiseMax(each.high);
    }
    return all.value_or(SideView::Bounds());
}

} // namespace tripoise
