// SPDX-License-Identifier: MIT
#include "advice/next_change.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double wholeStep = 1e-6;  // of a step, that needs no step of its own
constexpr double leastStrain = 0.1; // more than this is worse

bool says(const Visit& visit, Complaint complaint)
{
    return std::find(visit.says.begin(), visit.says.end(), complaint) != visit.says.end();
}

/// Whether it was done at a visit where the same was said.
bool triedFor(Complaint complaint, Change change, std::span<const Visit> earlier)
{
    return std::any_of(earlier.begin(), earlier.end(), [&](const Visit& visit) {
        return says(visit, complaint) && visit.changed.step == change;
    });
}

/// Whether something was changed for it before, and it is said again. What the builder changed of
/// their own may have been for anything that was said.
bool lasts(Complaint complaint, const std::vector<ChangeStep>& steps,
           std::span<const Visit> earlier)
{
    const auto isFor = [&steps](const Moved& changed) {
        return changed.step ? std::any_of(
                   steps.begin(), steps.end(),
                   [&changed](const ChangeStep& step) { return step.change == changed.step; })
                            : changed != Moved();
    };
    return std::any_of(earlier.begin(), earlier.end(), [&](const Visit& visit) {
        return says(visit, complaint) && isFor(visit.changed);
    });
}

/// How far joints and reach are outside what is comfortable, degrees and millimetres together.
double strain(const Tried& tried)
{
    double sum = 0.0;
    for (const Finding& finding : tried.findings) {
        const std::vector<double>& numbers = finding.numbers;
        switch (finding.code) {
        case FindingCode::KneeOutOfRange:
        case FindingCode::TrunkOutOfRange:
        case FindingCode::ArmTrunkOutOfRange:
            sum += outside(numbers.at(0), {numbers.at(1), numbers.at(2)});
            break;
        case FindingCode::BarOutOfReach: sum += numbers.at(0); break;
        default: break;
        }
    }
    return sum;
}

/// Saddle and hands together, from where they are.
Moved movedAlong(const Point& way, const Contacts& from)
{
    const SaddlePlace saddle = saddleAt(from.saddle.point() + way);
    Moved moved;
    moved.saddleUpMm = saddle.heightMm - from.saddle.heightMm;
    moved.saddleBackMm = saddle.setbackMm() - from.saddle.setbackMm();
    moved.barUpMm = way.y();
    moved.barBackMm = -way.x();
    moved.step = Change::NextStep;
    return moved;
}

} // namespace

Contacts movedBy(Contacts contacts, const Moved& moved)
{
    contacts.saddle = saddleFrom(contacts.saddle.heightMm + moved.saddleUpMm,
                                 contacts.saddle.setbackMm() + moved.saddleBackMm);
    contacts.grip += Point(-moved.barBackMm, moved.barUpMm);
    return contacts;
}

Contacts contactsAfter(Contacts built, std::span<const Visit> visits)
{
    for (const Visit& visit : visits)
        built = movedBy(built, visit.changed);
    return built;
}

Moved movedOf(const ChangeStep& step)
{
    Moved moved;
    moved.step = step.change;
    switch (step.change) {
    case Change::BarUp: moved.barUpMm = step.mm; break;
    case Change::BarNearer: moved.barBackMm = step.mm; break;
    case Change::BarFurther: moved.barBackMm = -step.mm; break;
    case Change::SaddleUp: moved.saddleUpMm = step.mm; break;
    case Change::SaddleDown: moved.saddleUpMm = -step.mm; break;
    case Change::SaddleBack: moved.saddleBackMm = step.mm; break;
    case Change::SaddleAhead: moved.saddleBackMm = -step.mm; break;
    default: break; // a part, or what no contact moves by
    }
    return moved;
}

NextVisit nextVisit(const Contacts& built, std::span<const Visit> visits, const Point& toGo,
                    const AdvisedSetup& advised, const PreparedSize& size, const Basis& basis)
{
    const auto earlier = visits.first(visits.size() - 1);
    const Visit& last = visits.back();
    NextVisit next{contactsAfter(built, earlier), {}, {}, {}};
    next.rider = tryContacts(next.now, advised, size, basis);
    const ComfortTable& comfort = basis.tables.comfort;
    const double stepsToGo = std::ceil(toGo.norm() / comfort.mostFirstStepMm - wholeStep);
    const auto done = std::count_if(earlier.begin(), earlier.end(), [](const Visit& visit) {
        return visit.changed.step == Change::NextStep;
    });
    if (static_cast<double>(done) < stepsToGo) {
        const Moved moved = movedAlong(toGo / stepsToGo, next.now);
        next.changes.push_back({{},
                                {Change::NextStep, toGo.norm() / stepsToGo, false},
                                moved,
                                tryContacts(movedBy(next.now, moved), advised, size, basis)});
    }
    for (const Complaint complaint : last.says) {
        std::optional<NextChange> change;
        const auto& steps = comfort.changes[indexOf(complaint)];
        for (const ChangeStep& step : steps) {
            if (triedFor(complaint, step.change, earlier))
                continue;
            std::optional<Tried> then;
            if (step.mm != 0.0)
                then = tryContacts(movedBy(next.now, movedOf(step)), advised, size, basis);
            if (then && strain(*then) > strain(*next.rider) + leastStrain)
                continue;
            change = NextChange{complaint, step, movedOf(step), std::move(then)};
            break;
        }
        if (!change || lasts(complaint, steps, earlier))
            next.lasting.push_back(complaint);
        if (change)
            next.changes.push_back(std::move(*change));
    }
    return next;
}

} // namespace tripoise
