// SPDX-License-Identifier: MIT
#include "advice/assess.h"

#include "advice/shoes.h"
#include "base/two_link.h"
#include "setup/limits.h"

#include <cmath>

namespace tripoise {
namespace {

constexpr double roundingMm = 1e-6; // the end of a range belongs to it
constexpr int stepsOfTurn = 36;
constexpr double leastShareMentioned = 0.1;   // a use with less is not told about by itself
constexpr double leastDegreesMentioned = 0.5; // no eye and no goniometer sees less

} // namespace

Angle lowestTrunk(const std::vector<UsePosture>& uses)
{
    Angle lowest = Angle::degrees(180.0);
    for (const UsePosture& use : uses)
        lowest = std::min(lowest, use.posture.trunk);
    return lowest;
}

std::vector<UsePosture> usePostures(const std::vector<Hold>& holds, BarKind kind, const Point& hip,
                                    const Point& grip)
{
    std::vector<UsePosture> uses;
    for (const Hold& hold : holds)
        if (hold.place == mainPlace(kind))
            uses.push_back(
                {hold.use, solveUpperBody(hold.limbs, hip, grip, hold.windows), hold.windows});
    return uses;
}

std::vector<TurnStep> legOverTurn(const Person& person, const SaddlePlace& saddle, double crankMm,
                                  Angle trunk, const Tables& tables)
{
    std::vector<TurnStep> turn;
    turn.reserve(stepsOfTurn);
    for (int step = 0; step < stepsOfTurn; ++step) {
        const Angle crank = Angle::degrees(360.0 / stepsOfTurn * step);
        const LegPoints leg =
            legAt(person.body, tables.body, person.foothold, saddle.point(), crankMm, crank);
        turn.push_back({crank, leg.kneeFlexion, trunk - angleOf(leg.knee - leg.hip),
                        angleOf(leg.knee - leg.ankle) - angleOf(leg.toe - leg.heel), leg.knee});
    }
    return turn;
}

LegPosture legPosture(const Person& person, const SaddlePlace& saddle, double crankMm, Angle trunk,
                      const Tables& tables)
{
    const Body& body = person.body;
    LegPosture leg;
    leg.kneeBottom = kneeAtBottom(body, tables.body, person.foothold, saddle, crankMm);
    leg.kneeBottomFootLevel =
        kneeAtBottomFootLevel(body, tables.body, person.foothold, saddle, crankMm);
    leg.kneeBottomStill = {leg.kneeBottom - tables.comfort.stillLess,
                           tables.comfort.stillHalfWidth};
    leg.kneeOverSpindleMm = kneeOverSpindle(body, tables.body, person.foothold, saddle, crankMm);
    const LegPoints top =
        legAt(body, tables.body, person.foothold, saddle.point(), crankMm, topDeadCentre);
    leg.kneeTop = top.kneeFlexion;
    leg.hipTop = trunk - angleOf(top.knee - top.hip);
    leg.ankleLeast = Angle::degrees(360.0);
    for (const TurnStep& step : legOverTurn(person, saddle, crankMm, trunk, tables)) {
        leg.ankleLeast = std::min(leg.ankleLeast, step.ankle);
        leg.ankleMost = std::max(leg.ankleMost, step.ankle);
    }
    return leg;
}

AdvisedSetup assess(const Choice& choice, SizeSearch& search, const Basis& basis,
                    const PreparedSize& size)
{
    const auto& [person, riding, prepared, tables] = basis;
    AdvisedSetup advised;
    advised.points = choice.points;
    advised.setup = search.setupOf(choice);

    const Bar& bar = prepared.stock.bars[advised.setup.cockpit.bar];
    const std::vector<Hold> holds = holdsOf(person, riding.mix, bar, tables);
    const Point hip = search.hip(choice.crank);
    advised.uses = usePostures(holds, bar.kind, hip, advised.setup.grip);
    advised.leg = legPosture(person, advised.setup.saddle, advised.setup.crankMm,
                             lowestTrunk(advised.uses), tables);

    const Point bestClamp = comfortableClamp(holds, hip);
    advised.leastPosturePoints = search.againstSizes()
                                 * tables.weights.points[indexOf(Consideration::Posture)]
                                 * postureCost(holds, hip, bestClamp);
    const PerConsideration<double> measures = search.measures(choice);
    advice::Weighed weighed{advised.setup, size, basis};
    weighed.comfortableGrip = bestClamp + (advised.setup.grip - advised.setup.clamp);
    weighed.toeOverlapMm = search.toeOverlapMm(choice.crank);
    for (std::size_t i = 0; i < considerationCount; ++i) {
        weighed.measure = measures[i];
        advised.ledger.push_back({static_cast<Consideration>(i), considerations[i].value(weighed),
                                  tables.weights.points[i] * measures[i]});
    }
    return advised;
}

Findings limitsOf(const Setup& setup, const PreparedSize& size, const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    const Bicycle& bicycle = prepared.bicycle;
    const Load load{person.body.massKg, riding.luggage.frontKg + riding.luggage.rearKg};
    Findings broken = brokenLimits(size.frame, size.skeleton, setup, bicycle.saddle, load,
                                   tables.frame, tables.parts);
    if (const auto clearance = standoverInShoes(size.skeleton, person, tables.parts);
        clearance && *clearance < tables.weights.leastStandoverMm)
        broken.push_back({FindingCode::NoStandover,
                          Severity::Limit,
                          {*clearance, tables.weights.leastStandoverMm},
                          {},
                          {}});
    const Angle lean =
        pedalStrikeLean(size.skeleton, setup.crankMm, pedalLateral(bicycle.pedal, tables),
                        tables.parts.pedalWidthMm);
    if (lean.deg() < tables.leastPedalLeanDeg)
        broken.push_back({FindingCode::PedalStrikes,
                          Severity::Limit,
                          {lean.deg(), tables.leastPedalLeanDeg},
                          {},
                          {}});
    if (const auto least = leastToeClearanceUnder(riding, tables.handling.toe))
        if (const auto toe = toeClearance(sweptWheel(size.skeleton), setup.crankMm,
                                          pedalLateral(bicycle.pedal, tables));
            toe && toe->clearanceMm < *least - roundingMm)
            broken.push_back({FindingCode::ToeUnderStandard,
                              Severity::Limit,
                              {toe->clearanceMm, *least},
                              std::string(keyOf(*riding.soldUnder)),
                              {}});
    return broken;
}

Findings postureFindings(const std::vector<UsePosture>& uses, const LegPosture& leg, const Mix& mix,
                         const Tables& tables)
{
    Findings findings;
    const auto outOf = [&findings](FindingCode code, Angle angle, const Window& window,
                                   std::optional<Use> use) {
        const Range range{window.low().deg(), window.high().deg()};
        if (outside(angle.deg(), range) >= leastDegreesMentioned)
            findings.push_back(
                {code, Severity::Caution, {angle.deg(), range.low, range.high}, {}, use});
    };
    for (const UsePosture& use : uses) {
        if (mix.of(use.use) < leastShareMentioned)
            continue;
        if (use.posture.beyondMm > 0.0) {
            findings.push_back({FindingCode::BarOutOfReach,
                                Severity::Caution,
                                {use.posture.beyondMm},
                                {},
                                use.use});
            continue;
        }
        outOf(FindingCode::TrunkOutOfRange, use.posture.trunk, use.windows.trunk, use.use);
        outOf(FindingCode::ArmTrunkOutOfRange, use.posture.armTrunk, use.windows.armTrunk, use.use);
    }
    outOf(FindingCode::KneeOutOfRange, leg.kneeBottom,
          {legTarget(tables.comfort, mix).knee, tables.comfort.kneeHalfWidth}, {});
    return findings;
}

Findings stemFindings(double lengthMm, const std::vector<UsePosture>& uses,
                      const PreparedSize& size, const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    Findings findings;
    for (const UsePosture& use : uses) {
        const Range natural =
            tables.weights.naturalStem.of(use.use, person.body.statureMm, size.frame.asSold.stemMm);
        if (riding.mix.of(use.use) >= leastShareMentioned
            && outside(lengthMm, natural) > roundingMm)
            findings.push_back({FindingCode::StemOutOfNaturalRange,
                                Severity::Note,
                                {lengthMm, natural.low, natural.high},
                                {},
                                use.use});
    }
    return findings;
}

Findings findingsOf(const AdvisedSetup& advised, double wantedSetbackMm, const PreparedSize& size,
                    const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    Findings findings = postureFindings(advised.uses, advised.leg, riding.mix, tables);
    const auto note = [&findings](FindingCode code, Severity severity,
                                  std::vector<double> numbers) {
        findings.push_back({code, severity, std::move(numbers), {}, {}});
    };
    const Setup& setup = advised.setup;
    const double setback = setup.saddle.setbackMm();
    if (std::abs(setback - wantedSetbackMm) > 0.5)
        note(FindingCode::SetbackOutOfRails, Severity::Caution, {wantedSetbackMm, setback});
    const double wantedRoom = riding.mix.mean(tables.weights.wantedStandoverMm);
    if (const auto clearance = standoverInShoes(size.skeleton, person, tables.parts);
        clearance && *clearance < wantedRoom)
        note(FindingCode::StandoverTight, Severity::Caution, {*clearance, wantedRoom});
    for (Finding& finding : stemFindings(setup.stem.lengthMm, advised.uses, size, basis))
        findings.push_back(std::move(finding));
    if (prepared.bicycle.crankMm && *prepared.bicycle.crankMm != setup.crankMm)
        note(FindingCode::CrankSwap, Severity::Note, {*prepared.bicycle.crankMm, setup.crankMm});
    const Bar& bar = prepared.stock.bars[setup.cockpit.bar];
    const Range widths = wantedBarWidth(person, bar.kind, Use::City, tables.weights);
    if (bar.kind != BarKind::Drop && bar.widthMm - widths.high >= tables.parts.leastBarCutMm)
        note(FindingCode::BarCutDown, Severity::Note, {bar.widthMm, widths.high});
    if (setup.stem.quillMm)
        note(FindingCode::QuillMark, Severity::Note,
             {setup.cockpit.spacersMm, mostSpacers(size.skeleton, setup.stem, tables.parts)});
    else
        note(FindingCode::LeaveSteererLong, Severity::Note,
             {setup.steererCutMm, tables.parts.leaveSteererLowMm, tables.parts.leaveSteererHighMm});
    if (const auto moved = movedFromSold(size.frame, size.skeleton, setup, tables.parts);
        moved && *moved > tables.parts.hosesShortBeyondMm)
        note(FindingCode::HosesShort, Severity::Note, {*moved});
    for (const Finding& finding : size.skeleton.findings)
        findings.push_back(finding);
    return findings;
}

} // namespace tripoise
