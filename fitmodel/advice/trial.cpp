// SPDX-License-Identifier: MIT
#include "advice/trial.h"

#include "advice/assess.h"
#include "setup/limits.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double toldMm = 0.5; // less is not told about

/// The advised set-up with its contacts, and all that follows from them, elsewhere.
Setup pulled(const Contacts& contacts, const Setup& advised, const Skeleton& skeleton,
             const PartDefaults& parts)
{
    Setup setup = advised;
    setup.saddle = contacts.saddle;
    setup.grip = contacts.grip;
    setup.crankMm = contacts.crankMm.value_or(advised.crankMm);
    setup.clamp = contacts.grip - (advised.grip - advised.clamp);
    const StemAndSpacers carrying = stemCarrying(skeleton, setup.clamp, advised.stem, parts);
    setup.stem.lengthMm = carrying.stemLengthMm;
    setup.cockpit.spacersMm = carrying.spacersMm;
    setup.steererCutMm = steererCut(skeleton, setup.stem, carrying.spacersMm, parts);
    return setup;
}

/// Limits that the pull breaks; what the size breaks anyway is told elsewhere.
Findings newLimits(const Setup& setup, const Setup& advised, const PreparedSize& size,
                   const Basis& basis)
{
    Findings broken = limitsOf(setup, size, basis);
    const Findings known = limitsOf(advised, size, basis);
    std::erase_if(broken, [&known](const Finding& finding) {
        return std::find(known.begin(), known.end(), finding) != known.end();
    });
    const Range rails =
        saddleBehindRange(size.skeleton, basis.prepared.bicycle.saddle, basis.tables.parts);
    const double behind = behindTube(setup.saddle, size.skeleton.seatAngle);
    if (outside(behind, rails) > toldMm) {
        const double setback = setup.saddle.setbackMm();
        broken.push_back({FindingCode::SaddleBeyondRails,
                          Severity::Limit,
                          {setback, setback + std::clamp(behind, rails.low, rails.high) - behind},
                          {},
                          {}});
    }
    return broken;
}

/// Stem and spacers that cannot be had.
Findings partsFindings(const Setup& setup, const std::vector<UsePosture>& uses,
                       const PreparedSize& size, const Basis& basis)
{
    const Tables& tables = basis.tables;
    Findings findings;
    if (setup.cockpit.spacersMm < -toldMm)
        findings.push_back(
            {FindingCode::BarBelowStem, Severity::Caution, {-setup.cockpit.spacersMm}, {}, {}});
    const auto [shortest, longest] =
        std::minmax_element(tables.marketStems.begin(), tables.marketStems.end(),
                            [](const Stem& a, const Stem& b) { return a.lengthMm < b.lengthMm; });
    const double length = setup.stem.lengthMm;
    if (shortest != tables.marketStems.end()
        && outside(length, {shortest->lengthMm, longest->lengthMm}) > toldMm) {
        findings.push_back({FindingCode::StemNotMade,
                            Severity::Caution,
                            {length, shortest->lengthMm, longest->lengthMm},
                            {},
                            {}});
        return findings;
    }
    for (Finding& finding : stemFindings(length, uses, size, basis))
        findings.push_back(std::move(finding));
    return findings;
}

void append(Findings& findings, const Findings& more)
{
    findings.insert(findings.end(), more.begin(), more.end());
}

} // namespace

std::optional<Contacts> contactsOf(const CurrentBike& bike)
{
    if (!bike.saddleHeightMm || !bike.saddleSetbackMm || !bike.gripReachMm || !bike.gripHeightMm)
        return std::nullopt;
    return Contacts{saddleFrom(*bike.saddleHeightMm, *bike.saddleSetbackMm),
                    {*bike.gripReachMm, *bike.gripHeightMm},
                    bike.crankMm};
}

std::optional<NearestCockpit> nearestCockpit(const Point& grip, std::size_t preferredBar,
                                             const PreparedSize& size, const Prepared& prepared,
                                             const Tables& tables)
{
    const Stock& stock = prepared.stock;
    const BarKind kind = stock.bars[preferredBar].kind;
    NearestRow nearest;
    for (const bool preferred : {true, false})
        for (const BarRun& run : size.bars) {
            const Bar& bar = stock.bars[run.bar];
            if ((run.bar == preferredBar) != preferred || bar.kind != kind)
                continue;
            const Point fromClamp = gripOn(bar, mainPlace(kind), tables.parts).fromClamp;
            NearestRow found = nearestRow(size, run, grip - fromClamp);
            found.clamp += fromClamp;
            if (found.offMm < nearest.offMm)
                nearest = found;
        }
    if (!std::isfinite(nearest.offMm))
        return std::nullopt;
    NearestCockpit found{size.cockpitAt(nearest.row), {}, nearest.clamp, nearest.offMm};
    found.stem = stock.stems[found.cockpit.stem];
    found.stem.angle = effectiveAngle(found.stem, found.cockpit.flipped);
    return found;
}

Tried tryContacts(const Contacts& contacts, const AdvisedSetup& advised, const PreparedSize& size,
                  const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    const Setup& from = advised.setup;
    const Bar& bar = prepared.stock.bars[from.cockpit.bar];
    Tried tried;
    tried.setup = pulled(contacts, from, size.skeleton, tables.parts);
    tried.uses =
        usePostures(holdsOf(person, riding.mix, bar, tables), bar.kind,
                    midHip(contacts.saddle.point(), person.body, tables.body), contacts.grip);
    tried.leg =
        legPosture(person, contacts.saddle, tried.setup.crankMm, lowestTrunk(tried.uses), tables);
    tried.gripAheadOfSteeringMm = aheadOfSteering(size.skeleton, contacts.grip);
    tried.advisedAheadOfSteeringMm = aheadOfSteering(size.skeleton, from.grip);
    tried.kneeToBarMm = kneeToBarOn(tried.setup, tried.uses, size, basis).clearanceMm;
    tried.load = loadOn(tried.setup, tried.uses, size, basis);
    tried.nearest = nearestCockpit(contacts.grip, from.cockpit.bar, size, prepared, tables);

    tried.findings = newLimits(tried.setup, from, size, basis);
    append(tried.findings, postureFindings(tried.uses, tried.leg, riding.mix, tables));
    append(tried.findings, partsFindings(tried.setup, tried.uses, size, basis));
    return tried;
}

} // namespace tripoise
