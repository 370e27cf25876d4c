// SPDX-License-Identifier: MIT
#include "advice/advise.h"

#include "advice/assess.h"
#include "advice/verdict.h"
#include "advice/wishes.h"

#include <algorithm>
#include <tuple>

namespace tripoise {

using namespace advice;

namespace {

class Decision {
public:
    Decision(const Person& person, const Riding& riding, const Prepared& prepared,
             const Tables& tables, std::stop_token stop)
        : m_person(person), m_riding(riding), m_prepared(prepared), m_tables(tables),
          m_stop(std::move(stop))
    {
    }

    Advice run()
    {
        m_advice.person = m_person;
        m_searches.reserve(m_prepared.sizes.size());
        for (std::size_t i = 0; i < m_prepared.sizes.size(); ++i) {
            addCandidate(i);
            if (m_stop.stop_requested())
                return std::move(m_advice);
        }
        rank();
        if (m_advice.candidates.empty() || !m_advice.candidates.front().best)
            return m_advice;
        const Candidate& first = m_advice.candidates.front();
        const PreparedSize& size = m_prepared.sizes[first.size];
        m_advice.verdict = verdictOf(m_advice.candidates, m_searches, m_prepared, m_tables);
        target(first.best->setup);
        m_advice.asked =
            frameAsked(m_advice.target, first.best->setup, m_riding.mix, size.skeleton, m_tables);
        m_advice.part = partWorthBuying(*first.best, size, m_person, m_riding, m_prepared.stock,
                                        m_tables, m_stop);
        otherCranks(first);
        m_advice.solved = !m_stop.stop_requested();
        return std::move(m_advice);
    }

private:
    void addCandidate(std::size_t index)
    {
        const PreparedSize& size = m_prepared.sizes[index];
        Candidate candidate;
        candidate.size = index;
        m_searches.emplace_back(m_person, m_riding, size, m_prepared, m_tables, m_stop);
        SizeSearch& search = m_searches.back();
        if (const auto choice = search.best(m_tables.weights.points)) {
            candidate.best =
                assess(*choice, search, m_person, m_riding.mix, size, m_prepared, m_tables);
            candidate.limits =
                limitsOf(candidate.best->setup, size, m_person, m_riding, m_prepared, m_tables);
            candidate.findings = findingsOf(*candidate.best, search.wantedSetbackMm(choice->crank),
                                            size, m_person, m_riding, m_prepared, m_tables);
            ride(candidate, size);
            for (const UsePosture& posture : candidate.best->uses)
                if (auto alone = forUse(posture.use, size))
                    candidate.byUse.push_back(std::move(*alone));
        } else {
            candidate.limits.push_back({FindingCode::NoCockpitFits, Severity::Limit, {}, {}, {}});
        }
        m_advice.candidates.push_back(std::move(candidate));
    }

    void ride(Candidate& candidate, const PreparedSize& size) const
    {
        const HandlingTables& handling = m_tables.handling;
        candidate.ride = rideOf(*candidate.best, size, m_person, m_riding, m_prepared, m_tables);
        for (Finding& finding : rideFindings(*candidate.ride, size.skeleton, handling))
            candidate.findings.push_back(std::move(finding));
        const auto& toe = candidate.ride->toe;
        if (toe && toe->overlapMm > -handling.toe.checkRoomMm)
            candidate.toeRemedies =
                toeRemediesOf(*candidate.best, candidate.size, m_person, m_prepared, m_tables);
    }

    /// Empty where it was stopped.
    std::optional<UseSetup> forUse(Use use, const PreparedSize& size) const
    {
        Riding alone = m_riding;
        alone.mix = Mix::only(use);
        SizeSearch search(m_person, alone, size, m_prepared, m_tables, m_stop);
        const auto choice = search.best(m_tables.weights.points);
        if (!choice)
            return std::nullopt;
        return UseSetup{use,
                        assess(*choice, search, m_person, alone.mix, size, m_prepared, m_tables)};
    }

    /// Sound before broken, solved before not, then points; names last, so that the order of the
    /// candidates never decides.
    void rank()
    {
        const auto key = [this](const Candidate& candidate) {
            const FrameSize& frame = m_prepared.sizes[candidate.size].frame;
            return std::tuple(!candidate.limits.empty(), !candidate.best,
                              candidate.best ? candidate.best->points : 0.0,
                              std::string_view(frame.model), std::string_view(frame.size));
        };
        auto& candidates = m_advice.candidates;
        std::sort(candidates.begin(), candidates.end(),
                  [&](const Candidate& a, const Candidate& b) { return key(a) < key(b); });
        for (std::size_t i = 0; i < candidates.size(); ++i)
            candidates[i].rank = static_cast<int>(i) + 1;
    }

    /// On the saddle the knee asks for with the named size's crank, and its bar.
    void target(const Setup& setup)
    {
        const LegTarget leg = legTarget(m_tables.comfort, m_riding.mix, m_person.kneeShift);
        m_advice.target.saddle = saddleForKnee(m_person.body, m_tables.body, m_person.foothold,
                                               setup.crankMm, leg.knee, leg.kneeOverSpindleMm);
        m_advice.saddleNoseAheadMm = noseAhead(m_prepared.stock.saddle, m_tables.parts);
        for (const SaddleRule& rule : m_tables.comfort.saddleRules)
            m_advice.publishedHeights.push_back(
                {rule.name, heightByRule(rule, m_person.body.inseamMm, leg.knee,
                                         m_advice.target.saddle.seatAxis, setup.crankMm)});
        const Bar& bar = m_prepared.stock.bars[setup.cockpit.bar];
        const Point hip = midHip(m_advice.target.saddle.point(), m_tables.body);
        m_advice.target.grip = comfortableClamp(holdsOf(m_person, m_riding.mix, bar, m_tables), hip)
                               + (setup.grip - setup.clamp);
    }

    void otherCranks(const Candidate& named)
    {
        const Setup& setup = named.best->setup;
        const Angle trunk = lowestTrunk(named.best->uses);
        for (std::size_t i = 0; i < m_prepared.cranksMm.size(); ++i) {
            const double crankMm = m_prepared.cranksMm[i];
            if (crankMm == setup.crankMm)
                continue;
            m_advice.otherCranks.push_back(
                {crankMm, crankMm / setup.crankMm,
                 legPosture(m_person, m_searches[named.size].saddle(i), crankMm, trunk, m_tables),
                 setup.crankMm - crankMm});
        }
    }

    const Person& m_person;
    const Riding& m_riding;
    const Prepared& m_prepared;
    const Tables& m_tables;
    std::stop_token m_stop;
    std::vector<SizeSearch> m_searches; ///< one a size, in the order of Prepared::sizes
    Advice m_advice;
};

} // namespace

Person personOf(const Rider& rider, const Posterior& posterior,
                const std::optional<CurrentBike>& current, const Mix& mix, const Prepared& prepared,
                const Tables& tables, Findings& findings)
{
    Person person;
    person.body = bodyFrom(posterior.mean, tables.body);
    person.flexibility = flexibilityOf(tables.comfort, rider);
    person.foothold = footholdOf(rider, prepared.stock.pedal, tables.comfort, tables.parts);
    person.sex = rider.sex;
    person.shoeLengthMm = rider.shoe.lengthMm;
    person.soleMm = rider.shoe.soleMm;
    if (current)
        person =
            withRiddenHeight(person, *current, mix, prepared.cranksMm.front(), tables, findings);
    return person;
}

Advice decide(const Person& person, const Riding& riding, const Prepared& prepared,
              const Tables& tables, std::stop_token stop)
{
    return Decision(person, riding, prepared, tables, std::move(stop)).run();
}

Advice advise(const Rider& rider, const Riding& riding, const std::optional<CurrentBike>& current,
              const Prepared& prepared, const Tables& tables, std::stop_token stop)
{
    const Posterior posterior =
        infer(rider.measurements, rider.sex, tables.populations, tables.tape);
    Findings findings = posterior.findings;
    if (!rider.sex)
        findings.push_back({FindingCode::SexNotStated, Severity::Note, {}, {}, {}});
    const Person person =
        personOf(rider, posterior, current, riding.mix, prepared, tables, findings);
    Advice advice = decide(person, riding, prepared, tables, std::move(stop));
    advice.riderFindings = std::move(findings);
    return advice;
}

} // namespace tripoise
