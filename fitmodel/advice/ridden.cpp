// SPDX-License-Identifier: MIT
#include "advice/ridden.h"

#include "advice/today.h"
#include "base/root.h"
#include "cockpit/grips.h"

#include <algorithm>

namespace tripoise {
namespace {

// However far a ridden saddle is from the model's, the knee stays one a leg can ride with.
constexpr Angle leastKnee = Angle::degrees(12.0);
constexpr Angle mostKnee = Angle::degrees(75.0);
constexpr double kneeTolerance = 1e-6; // rad
constexpr double toldMm = 1.0;         // less of a kept position missed is not told

Use mainUse(const Mix& mix)
{
    return *std::max_element(allUses.begin(), allUses.end(),
                             [&mix](Use a, Use b) { return mix.of(a) < mix.of(b); });
}

/// The knee at which the saddle has a height, knee over spindle as the person's own.
Angle kneeForHeight(const Person& person, const Mix& mix, double crankMm, double heightMm,
                    const Tables& tables)
{
    const LegTarget target = legTarget(tables.comfort, mix, person);
    return Angle::radians(
        rootWithin(leastKnee.rad(), mostKnee.rad(), kneeTolerance, [&](double angle) {
            return saddleForKnee(person.body, tables.body, person.foothold, crankMm,
                                 Angle::radians(angle), target.kneeOverSpindleMm)
                       .heightMm
                   - heightMm;
        }));
}

/// Hand from the saddle point that a person would be advised on a bar.
Point advisedToGrip(const Person& person, const Mix& mix, const Bar& bar, const Tables& tables)
{
    const Grip grip = gripOn(bar, mainPlace(bar.kind), tables.parts);
    return comfortableClamp(holdsOf(person, mix, bar, tables),
                            midHip(Point::Zero(), person.body, tables.body))
           + grip.fromClamp;
}

/// The position ridden today, from the bottom bracket.
CurrentBike contactsOf(const CurrentBike& current, const Bar& bar, const Saddle& inStock,
                       const Tables& tables, Findings& findings)
{
    Saddle saddle = inStock;
    if (current.saddleLengthMm)
        saddle.lengthMm = current.saddleLengthMm;
    const TodayParts parts{noseAhead(saddle, tables.parts),
                           gripOn(bar, mainPlace(bar.kind), tables.parts).fromClamp};
    CurrentBike contacts = current;
    if (current.noseSetbackMm) {
        contacts.saddleSetbackMm = *current.noseSetbackMm + parts.noseAheadMm;
    } else if (current.saddleHeightMm && current.saddleSetbackMm
               && saddleFrom(*current.saddleHeightMm, *current.saddleSetbackMm).seatAxis
                      > tables.comfort.steepestRiddenAxis) {
        contacts.saddleSetbackMm = *current.saddleSetbackMm + parts.noseAheadMm;
        findings.push_back({FindingCode::NoseForSaddlePoint,
                            Severity::Caution,
                            {*current.saddleSetbackMm, *contacts.saddleSetbackMm},
                            {},
                            {}});
    }
    if (contacts.saddleSetbackMm && current.barBelowSaddleMm && current.noseToBarMm)
        contacts =
            withContacts(contacts,
                         {current.saddleHeightMm, *contacts.saddleSetbackMm - parts.noseAheadMm,
                          current.barBelowSaddleMm, current.noseToBarMm},
                         parts);
    return contacts;
}

double riddenSd(const ComfortTable& comfort, std::optional<Ridden> ridden)
{
    switch (ridden.value_or(Ridden::Years)) {
    case Ridden::Weeks: return comfort.weeksSaddleSdMm;
    case Ridden::Season: return comfort.seasonSaddleSdMm;
    case Ridden::Years: return comfort.yearsSaddleSdMm;
    }
    return comfort.yearsSaddleSdMm;
}

/// The strongest step of all complaints in one direction; none where they disagree.
double steppedBy(const std::vector<Complaint>& complaints, const ComfortTable& comfort,
                 double ComplaintStep::*way)
{
    double most = 0.0;
    double least = 0.0;
    for (const Complaint complaint : complaints) {
        const double step = comfort.complaintSteps[indexOf(complaint)].*way;
        most = std::max(most, step);
        least = std::min(least, step);
    }
    return most > 0.0 && least < 0.0 ? 0.0 : most + least;
}

/// How far a value must move to lie a step or more from today's, the step's way.
double missing(double value, double today, double step, double most)
{
    const double gap = today + step - value;
    if (step == 0.0 || gap * step <= 0.0)
        return 0.0;
    return std::clamp(gap, -most, most);
}

/// The position turned away from what is complained of.
struct Turned {
    Person person;
    double saddleUpMm = 0.0; ///< moved for the complaints
    Point hand = Point::Zero();
};

Turned turnedBy(const CurrentBike& contacts, const SaddlePlace& saddle, const Person& person,
                const Mix& mix, const Bar& bar, double crankMm, bool handsCount,
                const Tables& tables)
{
    const ComfortTable& comfort = tables.comfort;
    const auto step = [&](double ComplaintStep::*way) {
        return steppedBy(contacts.complaints, comfort, way);
    };
    Turned turned{person, 0.0, Point::Zero()};
    const double height = saddleOf(person, mix, crankMm, tables).heightMm;
    turned.saddleUpMm = missing(height, saddle.heightMm, step(&ComplaintStep::saddleUpMm),
                                comfort.mostSaddleForComplaintMm);
    if (turned.saddleUpMm != 0.0)
        turned.person.kneeShift =
            person.kneeShift
            + kneeForHeight(person, mix, crankMm, height + turned.saddleUpMm, tables)
            - legTarget(comfort, mix, person).knee;
    if (handsCount) {
        const Point today = Point(*contacts.gripReachMm, *contacts.gripHeightMm) - saddle.point();
        const Point advised = advisedToGrip(turned.person, mix, bar, tables);
        const double most = comfort.mostHandsForComplaintMm;
        turned.hand = {missing(advised.x(), today.x(), -step(&ComplaintStep::handBackMm), most),
                       missing(advised.y(), today.y(), step(&ComplaintStep::handUpMm), most)};
        turned.person.gripShift = person.gripShift + turned.hand;
    }
    return turned;
}

} // namespace

Person withRidden(const Person& person, const CurrentBike& current, std::optional<Position> wish,
                  const Mix& mix, const Prepared& prepared, const Tables& tables,
                  Findings& findings)
{
    const bool alike = !current.use || *current.use == mainUse(mix);
    const auto asksForMove = [&](Complaint complaint) {
        return tables.comfort.complaintSteps[indexOf(complaint)].moves();
    };
    const bool liked =
        current.comfortable
        && std::none_of(current.complaints.begin(), current.complaints.end(), asksForMove);
    const bool keep = wish ? *wish == Position::Keep : liked && alike;
    const Bar bar = barLike(current.barKind, prepared.stock, tables);
    const CurrentBike contacts =
        contactsOf(current, bar, prepared.bicycle.saddle, tables, findings);
    Person result = person;
    if (!contacts.saddleHeightMm)
        return result;

    const Mix riddenMix = alike ? mix : Mix::only(*current.use);
    const double crank = current.crankMm.value_or(prepared.cranksMm.front());
    const double height = *contacts.saddleHeightMm;
    const LegTarget usual = legTarget(tables.comfort, riddenMix, person);
    const SaddlePlace saddle = [&] {
        if (contacts.saddleSetbackMm)
            return saddleFrom(height, *contacts.saddleSetbackMm);
        return saddleFrom(height, saddleOf(person, riddenMix, crank, tables).setbackMm());
    }();
    result.ridden = saddle;
    const bool turns = !keep && !liked && !current.complaints.empty();
    std::vector<double> moved(6, 0.0);
    if (turns) {
        const bool handsCount = alike && contacts.gripReachMm && contacts.gripHeightMm;
        const Turned turned =
            turnedBy(contacts, saddle, result, riddenMix, bar, crank, handsCount, tables);
        const double up = saddleOf(turned.person, riddenMix, crank, tables).heightMm - height;
        Point hand = Point::Zero();
        if (handsCount)
            hand = advisedToGrip(turned.person, riddenMix, bar, tables) + saddle.point()
                   - Point(*contacts.gripReachMm, *contacts.gripHeightMm);
        moved = {hand.y(), -hand.x(), up, turned.hand.y(), -turned.hand.x(), turned.saddleUpMm};
        result = turned.person;
    }
    for (const Complaint complaint : current.complaints)
        if (turns || !asksForMove(complaint))
            findings.push_back({FindingCode::Complained,
                                Severity::Note,
                                moved,
                                std::string(keyOf(complaint)),
                                {}});
    if (!keep && !liked)
        return result;
    const double modelled = saddleOf(person, riddenMix, crank, tables).heightMm;
    const auto kneeOn = [&](const SaddlePlace& place) {
        return kneeAtBottom(person.body, tables.body, person.foothold, place, crank);
    };
    const Angle knee = kneeOn(saddle);
    // Doubted only where the error of a height from body measures does not explain it.
    const double bodySd = tables.comfort.ridingSaddleSdMm;
    const Angle atBest = kneeOn(
        saddleFrom(std::clamp(modelled, height - bodySd, height + bodySd), saddle.setbackMm()));
    if (atBest < tables.comfort.doubtedKneeBelow || atBest > tables.comfort.doubtedKneeAbove) {
        findings.push_back(
            {FindingCode::RiddenSaddleDoubtful, Severity::Caution, {height, knee.deg()}, {}, {}});
        return result;
    }
    if (!keep) {
        const double sd = riddenSd(tables.comfort, current.ridden);
        const double modelVariance = bodySd * bodySd;
        const double shift = (height - modelled) * modelVariance / (modelVariance + sd * sd);
        result.kneeShift = person.kneeShift
                           + kneeForHeight(person, riddenMix, crank, modelled + shift, tables)
                           - usual.knee;
        findings.push_back(
            {FindingCode::RiddenHeightCounts, Severity::Note, {height, modelled, shift}, {}, {}});
        if (!alike)
            findings.push_back({FindingCode::RiddenForAnotherUse, Severity::Note, {}, {}, {}});
        return result;
    }

    KeptPosition kept{saddle, crank, {}};
    if (contacts.saddleSetbackMm) {
        result.kneeShift = person.kneeShift + knee - usual.knee;
        result.kneeOverSpindleShiftMm =
            kneeOverSpindle(person.body, tables.body, person.foothold, saddle, crank)
            - usual.kneeOverSpindleMm;
    } else {
        result.kneeShift =
            person.kneeShift + kneeForHeight(person, riddenMix, crank, height, tables) - usual.knee;
        kept.saddle = saddleOf(result, riddenMix, crank, tables);
    }
    Finding told{FindingCode::PositionKept,
                 Severity::Note,
                 {kept.saddle.heightMm, kept.saddle.setbackMm()},
                 {},
                 {}};
    if (contacts.gripReachMm && contacts.gripHeightMm) {
        kept.toGrip = Point(*contacts.gripReachMm, *contacts.gripHeightMm) - kept.saddle.point();
        result.gripShift = *kept.toGrip - advisedToGrip(person, riddenMix, bar, tables);
        told.numbers.insert(told.numbers.end(), {kept.toGrip->x(), kept.toGrip->y()});
    }
    result.kept = kept;
    findings.push_back(std::move(told));
    return result;
}

Person withFeetDown(const Person& person, FeetDown feetDown, const Mix& mix, double crankMm,
                    const Tables& tables, Findings& findings)
{
    const ComfortTable& comfort = tables.comfort;
    const double wanted = feetDown == FeetDown::OneToe ? comfort.oneToeLowersMm
                          : feetDown == FeetDown::Toes ? comfort.toesLowerMm
                                                       : comfort.flatLowersMm;
    const Angle knee = legTarget(comfort, mix, person).knee;
    const double height = saddleOf(person, mix, crankMm, tables).heightMm;
    Person lowered = person;
    const Angle bent =
        std::max(knee, std::min(comfort.mostLoweredKnee,
                                kneeForHeight(person, mix, crankMm, height - wanted, tables)));
    lowered.kneeShift = person.kneeShift + bent - knee;
    findings.push_back(
        {FindingCode::FeetDownLowers,
         Severity::Note,
         {height - saddleOf(lowered, mix, crankMm, tables).heightMm, knee.deg(), bent.deg()},
         {},
         {}});
    return lowered;
}

std::optional<KeptMissed> keptMissed(const Setup& setup, const Person& person, const Mix& mix,
                                     const Prepared& prepared, const Tables& tables)
{
    if (!person.kept)
        return std::nullopt;
    const SaddlePlace wanted = saddleOf(person, mix, setup.crankMm, tables);
    KeptMissed missed{setup.saddle.heightMm - wanted.heightMm,
                      setup.saddle.setbackMm() - wanted.setbackMm(), Point::Zero()};
    if (person.kept->toGrip) {
        const Bar& bar = prepared.stock.bars[setup.cockpit.bar];
        missed.hand = setup.grip - setup.saddle.point() - advisedToGrip(person, mix, bar, tables);
    }
    const double most = std::max({std::abs(missed.saddleHigherMm), std::abs(missed.saddleBackMm),
                                  missed.hand.cwiseAbs().maxCoeff()});
    return most > toldMm ? std::optional(missed) : std::nullopt;
}

std::optional<FirstStep> firstStep(const Setup& setup, const Person& person, const Tables& tables)
{
    if (!person.ridden)
        return std::nullopt;
    const Point today = person.ridden->point();
    const Point way = setup.saddle.point() - today;
    const double most = tables.comfort.mostFirstStepMm;
    if (way.norm() <= most)
        return std::nullopt;
    const Point saddle = today + most / way.norm() * way;
    return FirstStep{saddleAt(saddle), setup.grip + saddle - setup.saddle.point()};
}

} // namespace tripoise
