// SPDX-License-Identifier: MIT
#include "advice/verdict.h"

#include "advice/felt.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tripoise::advice {
namespace {

constexpr double leastGainTold = 0.01; // points; a smaller difference decides nothing
constexpr double leastFault = 1e-6;
constexpr double weakerFactor = 0.5;
constexpr double strongerFactor = 2.0;

/// Candidates of the first one's class.
std::vector<std::size_t> inTheRunning(const std::vector<Candidate>& candidates)
{
    std::vector<std::size_t> running;
    for (std::size_t i = 0; i < candidates.size(); ++i)
        if (candidates[i].best
            && classOf(candidates[i].fit.state) == classOf(candidates.front().fit.state))
            running.push_back(i);
    return running;
}

/// The size that some weights would name.
std::size_t bestUnder(const PerConsideration<double>& weights,
                      const std::vector<std::size_t>& running,
                      const std::vector<Candidate>& candidates, std::vector<SizeSearch>& searches)
{
    std::size_t best = running.front();
    double least = 0.0;
    for (const std::size_t i : running) {
        const auto choice = searches[candidates[i].size].best(weights);
        if (!choice) // stopped
            break;
        if (i == running.front() || choice->points < least) {
            best = i;
            least = choice->points;
        }
    }
    return best;
}

/// Every unsourced weight, halved and doubled, that names another size than the first.
std::vector<Tilt> tiltsOf(double lead, const std::vector<std::size_t>& running,
                          const std::vector<Candidate>& candidates,
                          std::vector<SizeSearch>& searches, const WeightTable& table)
{
    const AdvisedSetup& named = *candidates[running.front()].best;
    std::vector<Tilt> tilts;
    for (std::size_t i = 0; i < considerationCount; ++i) {
        if (!table.unsourced[i])
            continue;
        for (const double factor : {weakerFactor, strongerFactor}) {
            // A heavier weight lightens no other size; the lead may be more than it can cost.
            if (factor > 1.0 && (factor - 1.0) * named.ledger[i].points < lead)
                continue;
            PerConsideration<double> weights = table.points;
            weights[i] *= factor;
            const std::size_t best = bestUnder(weights, running, candidates, searches);
            if (best != running.front())
                tilts.push_back({static_cast<Consideration>(i), factor, best});
        }
    }
    return tilts;
}

/// What a rider notices of two sizes: for the named one, and for the other.
struct Compared {
    std::vector<Reason> reasons;
    std::vector<Reason> givenUp;
};

Compared compared(const Candidate& named, const Candidate& other, const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    const WeightTable& weights = tables.weights;
    const Pair pair{named, other, prepared.sizes[named.size], prepared.sizes[other.size],
                    riding.footRetention ? weights.toeRoomMm : weights.toeRoomFlatMm};
    Compared compared;
    for (std::size_t i = 0; i < considerationCount; ++i) {
        const LedgerEntry& mine = pair.named.best->ledger[i];
        const LedgerEntry& theirs = pair.other.best->ledger[i];
        const Reason reason{mine.consideration, mine.value, theirs.value,
                            theirs.points - mine.points,
                            std::min(mine.points, theirs.points) < leastFault};
        if (std::abs(reason.gain) >= leastGainTold && felt(reason, pair, weights.felt))
            (reason.gain > 0.0 ? compared.reasons : compared.givenUp).push_back(reason);
    }
    const auto stronger = [](const Reason& a, const Reason& b) {
        return std::abs(a.gain) > std::abs(b.gain);
    };
    std::stable_sort(compared.reasons.begin(), compared.reasons.end(), stronger);
    std::stable_sort(compared.givenUp.begin(), compared.givenUp.end(), stronger);
    return compared;
}

Contrast contrastOf(const PreparedSize& mine, const PreparedSize& theirs, const Setup& parts,
                    const PartDefaults& defaults)
{
    const auto clamp = [&](const PreparedSize& size) {
        return clampCentre(size.skeleton, parts.stem, parts.cockpit.spacersMm, defaults);
    };
    const Point apart = clamp(mine) - clamp(theirs);
    Contrast contrast;
    contrast.barHigherMm = apart.y() - mine.skeleton.groundY() + theirs.skeleton.groundY();
    contrast.barFurtherMm = apart.x();
    contrast.wheelbaseMm = mine.steering.wheelbaseMm - theirs.steering.wheelbaseMm;
    if (mine.skeleton.standoverMm && theirs.skeleton.standoverMm)
        contrast.standoverMm =
            mine.skeleton.standoverMm->value - theirs.skeleton.standoverMm->value;
    const StemAndSpacers same = stemCarrying(theirs.skeleton, parts.clamp, parts.stem, defaults);
    contrast.same = {same.stemLengthMm - parts.stem.lengthMm,
                     std::max(0.0, same.spacersMm) - parts.cockpit.spacersMm,
                     std::max(0.0, -same.spacersMm)};
    return contrast;
}

} // namespace

std::vector<Reason> costsOf(const Candidate& other, const Candidate& named, const Basis& basis)
{
    return other.best && named.best ? compared(named, other, basis).reasons : std::vector<Reason>();
}

Verdict verdictOf(const std::vector<Candidate>& candidates, std::vector<SizeSearch>& searches,
                  const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    Verdict verdict;
    if (!fitsAtAll(candidates.front().fit.state)) {
        verdict.kind = VerdictKind::None;
        return verdict;
    }
    verdict.named = 0;
    verdict.kind = VerdictKind::Clear;
    if (candidates.size() < 2 || !candidates[1].best)
        return verdict;

    verdict.other = 1;
    const Candidate& named = candidates.front();
    const Candidate& other = candidates[*verdict.other];
    const std::vector<std::size_t> running = inTheRunning(candidates);
    const WeightTable& weights = tables.weights;
    auto [reasons, givenUp] = compared(named, other, basis);
    verdict.reasons = std::move(reasons);
    verdict.givenUp = std::move(givenUp);
    if (running.size() > 1) {
        verdict.lead = other.best->points - named.best->points;
        if (verdict.lead < weights.eitherBelow || verdict.reasons.empty()) {
            verdict.kind = VerdictKind::Either;
        } else {
            verdict.tilts = tiltsOf(verdict.lead, running, candidates, searches, weights);
            if (verdict.lead < weights.clearFrom || !verdict.tilts.empty())
                verdict.kind = VerdictKind::Slight;
        }
    } else {
        verdict.givenUp.clear(); // nothing is, by not taking a size that does not fit
    }
    verdict.contrast = contrastOf(prepared.sizes[named.size], prepared.sizes[other.size],
                                  named.best->setup, tables.parts);
    return verdict;
}

} // namespace tripoise::advice
