// SPDX-License-Identifier: MIT
#include "board/scene.h"

#include "document/builders_choice.h"

namespace tripoise {
namespace {

/// Those of the fitting's trial, where it is on a size.
std::optional<Contacts> triedOn(const Fitting& fitting, const FrameSize& frame)
{
    const auto& trial = fitting.choices.trial;
    return trial && trial->on().is(frame) ? std::optional(contactsOf(*trial)) : std::nullopt;
}

} // namespace

void Scene::make(const Session& session, const SceneOptions& options,
                 const std::optional<Contacts>& live)
{
    clear();
    const Solution& solution = session.solution();
    const auto candidate = session.shownCandidate();
    if (!candidate || !solution.prepared || !solution.tables)
        return;
    m_prepared = solution.prepared;
    m_tables = solution.tables;
    m_candidate = solution.advice.candidates[*candidate];
    const Riding& riding = solution.fitting.riding;
    m_hasRidden = solution.fitting.current && contactsOf(*solution.fitting.current);

    Shown shown;
    shown.chosen = *candidate;
    if (options.beside)
        shown.other = session.besideCandidate();
    shown.registration = options.registration;
    if (options.ridden && solution.fitting.current)
        shown.ridden = &*solution.fitting.current;
    m_still = makeSideView(solution.advice, shown, riding.mix, *m_prepared, *m_tables);

    if (const AdvisedSetup* set = advised()) {
        m_contacts = live ? live : triedOn(session.fitting(), size()->frame);
        if (m_contacts)
            m_tried = tryContacts(*m_contacts, *set, *size(),
                                  {solution.advice.person, riding, *m_prepared, *m_tables});
        else
            m_contacts = contactsOf(set->setup);
    }
    shown.tried = m_tried ? &*m_tried : nullptr;
    shown.crank = options.crank;
    m_view = shown.tried || shown.crank
                 ? makeSideView(solution.advice, shown, riding.mix, *m_prepared, *m_tables)
                 : m_still;
    m_ownSetup = m_tried && tripoise::ownSetup(session.fitting().choices);
    const auto word = chosenCandidate(session.fitting().choices, solution.advice, *m_prepared);
    m_view.chosen.byBuilder = word && word == candidate;
    if (m_view.other)
        m_view.other->byBuilder = word && word == shown.other;
}

const AdvisedSetup* Scene::advised() const
{
    return m_candidate && m_candidate->best ? &*m_candidate->best : nullptr;
}

const Ride* Scene::ride() const
{
    return m_candidate && m_candidate->ride ? &*m_candidate->ride : nullptr;
}

const PreparedSize* Scene::size() const
{
    return m_candidate ? &m_prepared->sizes[m_candidate->size] : nullptr;
}

std::optional<Bench> Scene::bench() const
{
    if (!advised())
        return std::nullopt;
    return Bench{advised()->setup, size()->skeleton, m_prepared->stock, m_tables->parts};
}

} // namespace tripoise
