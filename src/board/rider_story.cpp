// SPDX-License-Identifier: MIT
#include "board/rider_story.h"

#include "advice/shoes.h"
#include "document/builders_choice.h"
#include "drawing/knee_room.h"
#include "wording/visible.h"

#include <algorithm>

namespace tripoise {
namespace {

/// Whether it is of the stem, the spacers and the places, and not of the frame alone.
bool ofSetup(Consideration by)
{
    switch (by) {
    case Consideration::Standover:
    case Consideration::Agility:
    case Consideration::Compactness:
    case Consideration::ToeOverlap:
    case Consideration::Crank:
    case Consideration::RiderHeight: return false;
    default: return true;
    }
}

} // namespace

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
    // A set-up pulled about on the board is ridden until it is put back.
    const Choices& choices = session.fitting().choices;
    const Candidate& looked = advice.candidates[*shown];
    const FrameSize& frame = solution.prepared->sizes[looked.size].frame;
    std::optional<Tried> pulled;
    if (looked.best && choices.trial && choices.trial->on().is(frame))
        pulled = tryContacts(contactsOf(*choices.trial), *looked.best,
                             solution.prepared->sizes[looked.size],
                             {advice.person, riding, *solution.prepared, *solution.tables});
    if (pulled)
        m_setup = choices.trial->chosen ? RiddenSetup::Chosen : RiddenSetup::Tried;
    m_chosen = chosenCandidate(choices, advice, *solution.prepared) == shown;
    const auto tell = [&](WhichBike which, std::size_t candidate) {
        const auto place = static_cast<std::size_t>(which);
        m_views[place] = view(candidate, candidate == *shown && pulled ? &*pulled : nullptr);
        if (m_views[place])
            m_views[place]->advised.reset(); // no marks, and no words of another place
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
    if (pulled) // what the advised set-up does is not what is ridden
        std::erase_if(m_reasons,
                      [](const ToldReason& reason) { return reason.by && ofSetup(*reason.by); });

    if (const auto& ridden = of(WhichBike::Shown)) {
        const KneeRoom room = roomAtTheKnee(*ridden);
        const auto& beside = of(WhichBike::Beside);
        if (std::min(room.mm, beside ? roomAtTheKnee(*beside).mm : room.mm) < barNearKneeMm)
            m_kneeAtBar = view(*shown, pulled ? &*pulled : nullptr, room.crank);
    }

    const Candidate& candidate = looked;
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
