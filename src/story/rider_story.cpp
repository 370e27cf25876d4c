// SPDX-License-Identifier: MIT
#include "story/rider_story.h"

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

RiderStory::RiderStory(const LookedAt& at)
{
    const Riding& riding = at.fitting.riding;
    const Choices& choices = at.choices;
    const Advice& advice = at.advice;
    const Prepared& prepared = at.prepared;
    const Tables& tables = at.tables;
    const std::size_t shown = at.shown;
    const auto view = [&](std::size_t candidate, const Tried* tried,
                          std::optional<Angle> crank = {}) {
        Shown what;
        what.chosen = candidate;
        what.registration = Registration::Contacts;
        what.tried = tried;
        what.crank = crank;
        SideView made = makeSideView(advice, what, riding.mix, prepared, tables);
        return made.rider ? std::optional(std::move(made)) : std::nullopt;
    };
    m_doubtMm = tables.handling.toe.checkRoomMm;
    // A set-up pulled about on the board is ridden until it is put back.
    const Candidate& looked = advice.candidates[shown];
    const FrameSize& frame = prepared.sizes[looked.size].frame;
    std::optional<Tried> pulled;
    if (looked.best && choices.trial && choices.trial->on().is(frame))
        pulled = tryContacts(contactsOf(*choices.trial), *looked.best, prepared.sizes[looked.size],
                             {advice.person, riding, prepared, tables});
    if (pulled)
        m_setup = choices.trial->chosen ? RiddenSetup::Chosen : RiddenSetup::Tried;
    m_chosen = chosenCandidate(choices, advice, prepared) == shown;
    const auto tell = [&](WhichBike which, std::size_t candidate) {
        const auto place = static_cast<std::size_t>(which);
        m_views[place] = view(candidate, candidate == shown && pulled ? &*pulled : nullptr);
        if (m_views[place])
            m_views[place]->advised.reset(); // no marks, and no words of another place
        const PlanView plan =
            makePlanView(advice.candidates[candidate], advice.person, prepared, tables);
        if (plan.drawn)
            m_plans[place] = plan;
        const Skeleton& skeleton = prepared.sizes[advice.candidates[candidate].size].skeleton;
        const PartDefaults& parts = tables.parts;
        if (const auto room = standoverInShoes(skeleton, advice.person, parts))
            m_standing[place] = {advice.person.body.inseamMm + soleOf(advice.person, parts), *room};
    };
    tell(WhichBike::Shown, shown);
    if (at.beside)
        tell(WhichBike::Beside, *at.beside);
    const Verdict& verdict = advice.verdict;
    m_verdict = fitsYou(advice, shown, prepared);
    if (!verdict.named || (at.beside && verdict.named == shown && verdict.other == at.beside))
        m_reasons = reasonsFor(advice, prepared);
    else if (verdict.other == shown && verdict.named == at.beside)
        m_reasons = reasonsAgainst(advice, prepared);
    if (pulled) // what the advised set-up does is not what is ridden
        std::erase_if(m_reasons,
                      [](const ToldReason& reason) { return reason.by && ofSetup(*reason.by); });

    if (const auto& ridden = of(WhichBike::Shown)) {
        const KneeRoom room = roomAtTheKnee(*ridden);
        const auto& beside = of(WhichBike::Beside);
        if (std::min(room.mm, beside ? roomAtTheKnee(*beside).mm : room.mm) < barNearKneeMm)
            m_kneeAtBar = view(shown, pulled ? &*pulled : nullptr, room.crank);
    }

    const auto contacts = at.fitting.current ? contactsOf(*at.fitting.current) : std::nullopt;
    if (!contacts || !looked.best)
        return;
    // Of that bicycle only contacts are known: they are ridden with the bar of the size looked at.
    const Tried today = tryContacts(*contacts, *looked.best, prepared.sizes[looked.size],
                                    {advice.person, riding, prepared, tables});
    auto& made = m_views[static_cast<std::size_t>(WhichBike::Today)];
    made = view(shown, &today);
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
