// SPDX-License-Identifier: MIT
#include "advice/advise.h"

#include "advice/assess.h"

#include <algorithm>
#include <numeric>
#include <set>
#include <tuple>

namespace tripoise {
namespace {

constexpr double leastGainTold = 0.01; // points; a smaller difference decides nothing
constexpr double weakerFactor = 0.5;
constexpr double strongerFactor = 2.0;

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
            if (m_stop.stop_requested())
                return m_advice;
            addCandidate(i);
        }
        rank();
        Candidate& first = m_advice.candidates.front();
        if (!first.best)
            return m_advice;
        m_advice.verdict = verdict();
        target(first);
        m_advice.asked = asked(first);
        m_advice.part = partWorthBuying(first);
        m_advice.solved = true;
        return m_advice;
    }

private:
    const PreparedSize& sizeOf(const Candidate& candidate) const
    {
        return m_prepared.sizes[candidate.size];
    }

    void addCandidate(std::size_t index)
    {
        const PreparedSize& size = m_prepared.sizes[index];
        Candidate candidate;
        candidate.size = index;
        m_searches.emplace_back(m_person, m_riding.mix, size, m_prepared, m_tables);
        SizeSearch& search = m_searches.back();
        if (const auto choice = search.best(m_tables.weights.points)) {
            candidate.best =
                assess(*choice, search, m_person, m_riding.mix, size, m_prepared, m_tables);
            candidate.limits =
                limitsOf(*candidate.best, size, m_person, m_riding, m_prepared, m_tables);
            candidate.findings =
                findingsOf(*candidate.best, search.wantedSetbackMm(choice->crank), size, m_person,
                           m_riding, m_prepared, m_tables);
            for (const UsePosture& posture : candidate.best->uses)
                candidate.byUse.push_back(forUse(posture.use, size));
        } else {
            candidate.limits.push_back({FindingCode::NoCockpitFits, Severity::Limit, {}, {}, {}});
        }
        m_advice.candidates.push_back(std::move(candidate));
    }

    UseSetup forUse(Use use, const PreparedSize& size) const
    {
        const Mix mix = Mix::only(use);
        SizeSearch search(m_person, mix, size, m_prepared, m_tables);
        const auto choice = search.best(m_tables.weights.points);
        return {use, assess(*choice, search, m_person, mix, size, m_prepared, m_tables)};
    }

    /// Sound before broken, solved before not, then points; names last, so that the order of the
    /// candidates never decides.
    void rank()
    {
        const auto key = [this](const Candidate& candidate) {
            const FrameSize& frame = sizeOf(candidate).frame;
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

    /// Candidates that can be named: the sound ones, or all with a set-up where none is sound.
    std::vector<std::size_t> inTheRunning() const
    {
        std::vector<std::size_t> running;
        for (std::size_t i = 0; i < m_advice.candidates.size(); ++i) {
            const Candidate& candidate = m_advice.candidates[i];
            if (candidate.best && candidate.limits.empty() == m_advice.anySound())
                running.push_back(i);
        }
        return running;
    }

    /// The size that other weights would name.
    std::size_t bestUnder(const PerConsideration<double>& weights,
                          const std::vector<std::size_t>& running)
    {
        std::size_t best = running.front();
        double least = 0.0;
        for (const std::size_t i : running) {
            const double points = m_searches[m_advice.candidates[i].size].best(weights)->points;
            if (i == running.front() || points < least) {
                best = i;
                least = points;
            }
        }
        return best;
    }

    Verdict verdict()
    {
        Verdict verdict;
        const std::vector<std::size_t> running = inTheRunning();
        verdict.named = running.front();
        verdict.kind = VerdictKind::Clear;
        if (running.size() < 2)
            return verdict;

        verdict.other = running[1];
        const Candidate& named = m_advice.candidates[verdict.named];
        const Candidate& other = m_advice.candidates[*verdict.other];
        verdict.lead = other.best->points - named.best->points;
        for (std::size_t i = 0; i < considerationCount; ++i) {
            if (!m_tables.weights.unsourced[i])
                continue;
            for (const double factor : {weakerFactor, strongerFactor}) {
                PerConsideration<double> weights = m_tables.weights.points;
                weights[i] *= factor;
                const std::size_t best = bestUnder(weights, running);
                if (best != verdict.named)
                    verdict.tilts.push_back({static_cast<Consideration>(i), factor, best});
            }
        }
        if (verdict.lead < m_tables.weights.eitherBelow)
            verdict.kind = VerdictKind::Either;
        else if (!verdict.tilts.empty())
            verdict.kind = VerdictKind::Slight;

        compare(named, other, verdict);
        verdict.contrast = contrast(named, other);
        return verdict;
    }

    static void compare(const Candidate& named, const Candidate& other, Verdict& verdict)
    {
        for (std::size_t i = 0; i < considerationCount; ++i) {
            const LedgerEntry& mine = named.best->ledger[i];
            const LedgerEntry& theirs = other.best->ledger[i];
            const Reason reason{mine.consideration, mine.value, theirs.value,
                                theirs.points - mine.points};
            if (reason.gain >= leastGainTold)
                verdict.reasons.push_back(reason);
            if (reason.gain <= -leastGainTold)
                verdict.givenUp.push_back(reason);
        }
        const auto stronger = [](const Reason& a, const Reason& b) {
            return std::abs(a.gain) > std::abs(b.gain);
        };
        std::stable_sort(verdict.reasons.begin(), verdict.reasons.end(), stronger);
        std::stable_sort(verdict.givenUp.begin(), verdict.givenUp.end(), stronger);
    }

    Contrast contrast(const Candidate& named, const Candidate& other) const
    {
        const PreparedSize& mine = sizeOf(named);
        const PreparedSize& theirs = sizeOf(other);
        const Setup& parts = named.best->setup;
        const auto clamp = [&](const PreparedSize& size) {
            return clampCentre(size.skeleton, parts.stem, parts.cockpit.spacersMm, m_tables.parts);
        };
        const Point apart = clamp(mine) - clamp(theirs);
        Contrast contrast;
        contrast.barHigherMm = apart.y() - mine.skeleton.groundY() + theirs.skeleton.groundY();
        contrast.barFurtherMm = apart.x();
        contrast.wheelbaseMm = mine.steering.wheelbaseMm - theirs.steering.wheelbaseMm;
        contrast.frontCentreMm = mine.steering.frontCentreMm - theirs.steering.frontCentreMm;
        if (mine.skeleton.standoverMm && theirs.skeleton.standoverMm)
            contrast.standoverMm =
                mine.skeleton.standoverMm->value - theirs.skeleton.standoverMm->value;
        return contrast;
    }

    /// On the saddle the knee asks for with the named size's crank, and its bar.
    void target(const Candidate& first)
    {
        const Setup& setup = first.best->setup;
        const LegTarget leg = legTarget(m_tables.comfort, m_riding.mix, m_person.kneeShift);
        m_advice.target.saddle = saddleForKnee(m_person.body, m_tables.body, m_person.foothold,
                                               setup.crankMm, leg.knee, leg.kneeOverSpindleMm);
        const Bar& bar = m_prepared.stock.bars[setup.cockpit.bar];
        const Point hip = midHip(m_advice.target.saddle.point(), m_tables.body);
        m_advice.target.grip =
            comfortableClamp(holdsOf(m_person, m_riding.mix, bar, m_tables), hip)
            + (setup.grip - setup.clamp);
    }

    /// Back from the target grip over the stems and spacers one would rather use.
    FrameAsked asked(const Candidate& first) const
    {
        const PreparedSize& size = sizeOf(first);
        const Setup& setup = first.best->setup;
        Range lengths;
        for (const Use use : allUses) {
            const Range& natural = m_tables.weights.naturalStemMm[indexOf(use)];
            lengths.low += m_riding.mix.of(use) * natural.low;
            lengths.high += m_riding.mix.of(use) * natural.high;
        }
        const Point clamp = m_advice.target.grip - (setup.grip - setup.clamp);
        FrameAsked asked;
        bool any = false;
        for (const double length : {lengths.low, lengths.high}) {
            for (const double spacers : {0.0, m_tables.weights.spacerUnitMm}) {
                Stem stem = setup.stem;
                stem.lengthMm = length;
                const Point headTop =
                    clamp
                    - (clampCentre(size.skeleton, stem, spacers, m_tables.parts)
                       - size.skeleton.headTop);
                const auto widen = [any](Range& range, double value) {
                    range.low = any ? std::min(range.low, value) : value;
                    range.high = any ? std::max(range.high, value) : value;
                };
                widen(asked.stackMm, headTop.y());
                widen(asked.reachMm, headTop.x());
                any = true;
            }
        }
        return asked;
    }

    /// The stem that can ordinarily be bought and would save most, where that is worth it.
    std::optional<PartWorthBuying> partWorthBuying(const Candidate& first) const
    {
        const PreparedSize& size = sizeOf(first);
        Stock market = m_prepared.stock;
        market.stems.clear();
        for (const Stem& made : m_tables.marketStems) {
            std::set<double> clamps;
            for (const Bar& bar : market.bars)
                clamps.insert(bar.barClampMm.value_or(m_tables.parts.barClampMm));
            for (const double clamp : clamps) {
                Stem stem = made;
                stem.barClampMm = clamp;
                stem.steererMm = size.skeleton.steererMm;
                market.stems.push_back(stem);
            }
        }
        Prepared prepared = prepare(std::span(&size.frame, 1), market, m_tables);
        prepared.cranksMm = {first.best->setup.crankMm};
        PreparedSize& offered = prepared.sizes.front();
        offered.steadiness = size.steadiness;
        offered.steadinessMost = size.steadinessMost;
        offered.bulk = size.bulk;
        // A fuller box leaves more room to adjust; that alone is no reason to buy.
        PerConsideration<double> weights = m_tables.weights.points;
        weights[indexOf(Consideration::Adjustment)] = 0.0;
        SizeSearch search(m_person, m_riding.mix, offered, prepared, m_tables);
        const auto choice = search.best(weights);
        if (!choice)
            return std::nullopt;
        const auto points = [&weights](const AdvisedSetup& advised) {
            double sum = 0.0;
            for (const LedgerEntry& entry : advised.ledger)
                if (weights[indexOf(entry.consideration)] > 0.0)
                    sum += entry.points;
            return sum;
        };
        const AdvisedSetup bought = assess(*choice, search, m_person, m_riding.mix, offered,
                                           prepared, m_tables);
        PartWorthBuying part;
        part.stem = bought.setup.stem;
        part.pointsSaved = points(*first.best) - points(bought);
        const auto off = [](const AdvisedSetup& advised) {
            return advised.ledger[indexOf(Consideration::Posture)].value;
        };
        part.nearerMm = off(*first.best) - off(bought);
        if (part.pointsSaved < m_tables.weights.worthBuying)
            return std::nullopt;
        return part;
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
    person.foothold =
        footholdOf(rider, prepared.stock.pedal, tables.comfort, tables.parts);
    if (current)
        person = withRiddenHeight(person, *current, mix, prepared.cranksMm.front(), tables, findings);
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
