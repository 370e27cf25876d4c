// SPDX-License-Identifier: MIT
#include "frame/faults.h"

#include <algorithm>
#include <cmath>

namespace tripoise::frame {
namespace {

constexpr std::size_t mostFaults = 3; // of one size; beyond, the table is not to be mended

std::vector<Observation> rowsOf(const std::vector<Claim>& claims,
                                const std::vector<Observation>& beyondDoubt,
                                std::size_t without = SIZE_MAX)
{
    std::vector<Observation> rows;
    rows.reserve(claims.size() + beyondDoubt.size());
    for (std::size_t i = 0; i < claims.size(); ++i)
        if (i != without)
            rows.push_back(claims[i].row);
    rows.insert(rows.end(), beyondDoubt.begin(), beyondDoubt.end());
    return rows;
}

/// -2 log likelihood of a step out of the run.
double surprise(double away, double sd, double tail)
{
    const double z = away / sd;
    return (tail + 1.0) * std::log1p(z * z / tail) + 2.0 * std::log(sd);
}

struct Suspect {
    std::size_t claim = 0;
    double evidence = 0.0; ///< chi squared that goes with this entry
    double agrees = 0.0;
    double sd = 0.0;
    double gain = 0.0;
};

/// How much better the run looks with the entry corrected.
double runGain(const Claim& claim, const Suspect& suspect, double tail)
{
    if (!claim.expected)
        return 0.0;
    const Expected& expected = *claim.expected;
    return surprise(claim.row.value - expected.value, expected.sd, tail)
           - surprise(suspect.agrees - expected.value, std::hypot(expected.sd, suspect.sd), tail);
}

/// What the size says of one entry when it is left out.
std::optional<Suspect> suspectAt(std::size_t claim, const std::vector<Claim>& claims,
                                 const std::vector<Observation>& beyondDoubt,
                                 const Adjustment& whole, const ClosureTable& table)
{
    const Adjustment rest = adjust(rowsOf(claims, beyondDoubt, claim), table.ordinary);
    const Reckoned reckoned = reckon(claims[claim].row.column, rest);
    if (!reckoned.determined)
        return std::nullopt;
    Suspect suspect{claim, whole.chiSquared - rest.chiSquared, reckoned.value, reckoned.sd, 0.0};
    suspect.gain = suspect.evidence + runGain(claims[claim], suspect, table.runTail);
    return suspect;
}

/// Those whose error would explain most of what does not agree; the residuals tell in advance which
/// can be among them.
std::vector<Suspect> suspects(const std::vector<Claim>& claims,
                              const std::vector<Observation>& beyondDoubt, const Adjustment& whole,
                              const ClosureTable& table)
{
    constexpr double linearIsWithin = 0.5;
    std::vector<double> evidence(claims.size());
    for (std::size_t i = 0; i < claims.size(); ++i) {
        const double deviation = whole.standardised(static_cast<int>(i));
        evidence[i] = deviation * deviation;
    }
    const double most =
        evidence.empty() ? 0.0 : *std::max_element(evidence.begin(), evidence.end());
    std::vector<Suspect> result;
    if (most < table.leastDeviation * table.leastDeviation)
        return result;
    for (std::size_t i = 0; i < claims.size(); ++i)
        if (evidence[i] > 0.0 && evidence[i] > linearIsWithin * most - table.tieGain)
            if (const auto suspect = suspectAt(i, claims, beyondDoubt, whole, table))
                result.push_back(*suspect);
    return result;
}

std::optional<Suspect> worst(const std::vector<Suspect>& suspects, const ClosureTable& table)
{
    const auto found =
        std::max_element(suspects.begin(), suspects.end(),
                         [](const Suspect& a, const Suspect& b) { return a.gain < b.gain; });
    if (found == suspects.end() || found->gain < table.gainToTell
        || found->evidence < table.leastDeviation * table.leastDeviation)
        return std::nullopt;
    return *found;
}

Fault faultOf(const Suspect& named, const std::vector<Suspect>& all,
              const std::vector<Claim>& claims, const ClosureTable& table)
{
    const Observation& row = claims[named.claim].row;
    Fault fault{row.column, row.value, named.agrees, named.sd, named.gain, {}};
    double most = 0.0;
    for (const Suspect& suspect : all)
        most = std::max(most, suspect.evidence);
    for (const Suspect& suspect : all)
        if (suspect.claim != named.claim && suspect.evidence > most - table.tieGain)
            fault.ties.push_back(claims[suspect.claim].row.column);
    return fault;
}

} // namespace

FaultSearch findFaults(std::vector<Claim> claims, const std::vector<Observation>& beyondDoubt,
                       const ClosureTable& table)
{
    FaultSearch search;
    while (true) {
        search.clean = adjust(rowsOf(claims, beyondDoubt), table.ordinary);
        if (search.faults.size() == mostFaults)
            return search;
        const auto all = suspects(claims, beyondDoubt, search.clean, table);
        const auto named = worst(all, table);
        if (!named)
            return search;
        search.faults.push_back(faultOf(*named, all, claims, table));
        claims.erase(claims.begin() + static_cast<std::ptrdiff_t>(named->claim));
    }
}

} // namespace tripoise::frame
