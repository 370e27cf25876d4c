// SPDX-License-Identifier: MIT
#include "advice/advise.h"

#include "advice/assess.h"
#include "advice/verdict.h"
#include "advice/wishes.h"

#include <algorithm>

namespace tripoise {

using namespace advice;

namespace {

/// As if the bicycle were for one use alone; empty where it was stopped.
std::optional<UseSetup> forUse(Use use, const PreparedSize& size, const Basis& basis,
                               const std::stop_token& stop)
{
    Riding alone = basis.riding;
    alone.mix = Mix::only(use);
    const Basis only{basis.person, alone, basis.prepared, basis.tables};
    SizeSearch search(only, size, stop);
    const auto choice = search.best(basis.tables.weights.points);
    if (!choice)
        return std::nullopt;
    return UseSetup{use, assess(*choice, search, only, size)};
}

Candidate candidateOf(SizeAnswer answer, SizeSearch& search, const Basis& basis,
                      const std::stop_token& stop)
{
    const PreparedSize& size = basis.prepared.sizes[answer.size];
    Candidate candidate;
    candidate.size = answer.size;
    candidate.fit = std::move(answer.fit);
    candidate.limits = std::move(answer.limits);
    if (!answer.choice)
        return candidate;
    const AdvisedSetup& best = candidate.best.emplace(assess(*answer.choice, search, basis, size));
    candidate.findings =
        findingsOf(best, search.wantedSetbackMm(answer.choice->crank), size, basis);

    if (const auto& postMm = candidate.fit.postMmToOrder) {
        const double least = size.skeleton.postInsertionMm;
        candidate.findings.push_back({FindingCode::PostTooShort,
                                      Severity::Caution,
                                      {least - (*postMm - size.skeleton.postLengthMm), least},
                                      {},
                                      {}});
    }

    const HandlingTables& handling = basis.tables.handling;
    candidate.ride = rideOf(best, size, basis);
    for (Finding& finding : rideFindings(*candidate.ride, size.skeleton, handling))
        candidate.findings.push_back(std::move(finding));
    candidate.firstStep = firstStep(best.setup, basis.person, basis.tables);
    if (const auto& step = candidate.firstStep)
        candidate.findings.push_back(
            {FindingCode::FirstStep,
             Severity::Note,
             {step->saddle.heightMm, step->saddle.setbackMm(), step->grip.x(), step->grip.y()},
             {},
             {}});
    const FootToGround& foot = candidate.ride->foot;
    if (const auto feet = basis.riding.feetDown)
        if (const double up = *feet == FeetDown::Flat ? foot.flatMm : foot.tiptoeMm;
            *feet != FeetDown::OneToe && up > 0.0)
            candidate.findings.push_back(
                {FindingCode::FeetStayUp, Severity::Caution, {up}, {}, {}});
    if (const auto missed =
            keptMissed(best.setup, basis.person, basis.riding.mix, basis.prepared, basis.tables))
        candidate.findings.push_back(
            {FindingCode::KeptPositionMissed,
             Severity::Note,
             {missed->saddleHigherMm, missed->saddleBackMm, missed->hand.x(), missed->hand.y()},
             {},
             {}});
    const auto& toe = candidate.ride->toe;
    if (toe && toe->overlapMm > -handling.toe.checkRoomMm)
        candidate.toeRemedies = toeRemediesOf(best, candidate.size, basis);
    for (ToeRemedy& remedy : candidate.toeRemedies)
        remedy.counted = remedy.kind == search.toeCure(answer.choice->crank);
    for (const UsePosture& posture : best.uses)
        if (auto alone = forUse(posture.use, size, basis, stop))
            candidate.byUse.push_back(std::move(*alone));
    return candidate;
}

/// On the saddle the knee asks for with the named size's crank, and its bar.
ContactTarget targetOf(const Setup& setup, const LegTarget& leg, const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    ContactTarget target;
    target.saddle = saddleForKnee(person.body, tables.body, person.foothold, setup.crankMm,
                                  leg.knee, leg.kneeOverSpindleMm);
    target.grip = comfortableClamp(
                      holdsOf(person, riding.mix, prepared.stock.bars[setup.cockpit.bar], tables),
                      midHip(target.saddle.point(), person.body, tables.body))
                  + (setup.grip - setup.clamp);
    return target;
}

std::vector<CrankChoice> otherCranks(const AdvisedSetup& named, const SizeSearch& search,
                                     const Basis& basis)
{
    const Angle trunk = lowestTrunk(named.uses);
    const double fitted = named.setup.crankMm;
    std::vector<CrankChoice> others;
    for (std::size_t i = 0; i < basis.prepared.cranksMm.size(); ++i)
        if (const double crankMm = basis.prepared.cranksMm[i]; crankMm != fitted)
            others.push_back(
                {crankMm, crankMm / fitted,
                 legPosture(basis.person, search.saddle(i), crankMm, trunk, basis.tables),
                 fitted - crankMm});
    return others;
}

} // namespace

Advice explain(Naming naming, const Basis& basis, const std::stop_token& stop)
{
    const auto& [person, riding, prepared, tables] = basis;
    Advice advice;
    advice.person = person;
    for (SizeAnswer& answer : naming.sizes) {
        if (stop.stop_requested())
            return advice;
        SizeSearch& search = naming.searches[answer.size];
        advice.candidates.push_back(candidateOf(std::move(answer), search, basis, stop));
        advice.candidates.back().rank = static_cast<int>(advice.candidates.size());
    }
    if (advice.candidates.empty() || !advice.candidates.front().best)
        return advice;
    const Candidate& first = advice.candidates.front();
    const PreparedSize& size = prepared.sizes[first.size];
    const Setup& setup = first.best->setup;
    const LegTarget leg = legTarget(tables.comfort, riding.mix, person);
    advice.verdict = verdictOf(advice.candidates, naming.searches, basis);
    for (std::size_t i = 0; advice.verdict.named && i < advice.candidates.size(); ++i)
        if (i != *advice.verdict.named)
            advice.candidates[i].costs = costsOf(advice.candidates[i], advice.leading(), basis);
    if (person.provisional && advice.verdict.kind == VerdictKind::Clear)
        advice.verdict.kind = VerdictKind::Slight;
    advice.target = targetOf(setup, leg, basis);
    advice.saddleNoseAheadMm = noseAhead(prepared.bicycle.saddle, tables.parts);
    for (const SaddleRule& rule : tables.comfort.saddleRules)
        advice.publishedHeights.push_back(
            {rule.name, heightByRule(rule, person.body.inseamMm, leg.knee,
                                     advice.target.saddle.seatAxis, setup.crankMm)});
    advice.asked =
        frameAsked(advice.target, setup, riding.mix, person.body.statureMm, size.skeleton, tables);
    advice.part = partToOrder(*first.best, size, naming.searches[first.size], tables.weights);
    advice.otherCranks = otherCranks(*first.best, naming.searches[first.size], basis);
    advice.solved = !stop.stop_requested();
    return advice;
}

Person personOf(const Rider& rider, const Posterior& posterior,
                const std::optional<CurrentBike>& current, const Riding& riding,
                const Prepared& prepared, const Tables& tables, Findings& findings,
                std::optional<Position> position)
{
    Person person;
    person.body = bodyFrom(posterior.mean, tables.body);
    person.flexibility = flexibilityOf(tables.comfort, rider);
    person.bendsFreely = rider.bendsFreely;
    person.foothold = footholdOf(rider, prepared.bicycle.pedal, tables.comfort, tables.parts);
    person.sex = rider.sex;
    person.shoeLengthMm = rider.shoe.lengthMm;
    person.soleMm = rider.shoe.soleMm;
    const bool inseamTold =
        std::any_of(rider.measurements.begin(), rider.measurements.end(),
                    [](const Measurement& told) { return told.quantity == Quantity::Inseam; });
    if (!inseamTold)
        findings.push_back({FindingCode::InseamNotTold, Severity::Caution, {}, {}, {}});
    person.provisional = !inseamTold || !posterior.doubted.empty();
    if (current)
        person = withRidden(person, *current, position, riding.mix, prepared, tables, findings);
    if (riding.feetDown)
        person = withFeetDown(person, *riding.feetDown, riding.mix, prepared.cranksMm.front(),
                              tables, findings);
    return person;
}

namespace {

/// Sizes on different tyres are compared as they would not be built.
std::optional<Finding> wheelsDiffer(const Prepared& prepared)
{
    if (prepared.sizes.empty())
        return std::nullopt;
    const auto [narrowest, widest] = std::minmax_element(
        prepared.sizes.begin(), prepared.sizes.end(),
        [](const auto& a, const auto& b) { return a.skeleton.tyreMm < b.skeleton.tyreMm; });
    const auto guards =
        std::count_if(prepared.sizes.begin(), prepared.sizes.end(),
                      [](const auto& size) { return size.skeleton.mudguard.has_value(); });
    const bool someGuards = guards > 0 && static_cast<std::size_t>(guards) < prepared.sizes.size();
    if (narrowest->skeleton.tyreMm == widest->skeleton.tyreMm && !someGuards)
        return std::nullopt;
    return Finding{FindingCode::WheelsDiffer,
                   Severity::Caution,
                   {narrowest->skeleton.tyreMm, widest->skeleton.tyreMm},
                   someGuards ? "mudguard" : "",
                   {}};
}

} // namespace

Advice advise(const Rider& rider, const Riding& riding, const std::optional<CurrentBike>& current,
              const Prepared& prepared, const Tables& tables, const std::stop_token& stop,
              std::optional<Position> position)
{
    return advise(rider, infer(rider.measurements, rider.sex, tables.populations, tables.tape),
                  riding, current, prepared, tables, stop, position);
}

Advice advise(const Rider& rider, const Posterior& posterior, const Riding& riding,
              const std::optional<CurrentBike>& current, const Prepared& prepared,
              const Tables& tables, const std::stop_token& stop, std::optional<Position> position)
{
    Findings findings = posterior.findings;
    if (!rider.sex)
        findings.push_back({FindingCode::SexNotStated, Severity::Note, {}, {}, {}});
    if (auto differ = wheelsDiffer(prepared))
        findings.push_back(std::move(*differ));
    const Person person =
        personOf(rider, posterior, current, riding, prepared, tables, findings, position);
    const Basis basis{person, riding, prepared, tables};
    Advice advice = explain(nameSize(basis, stop), basis, stop);
    advice.riderFindings = std::move(findings);
    return advice;
}

} // namespace tripoise
