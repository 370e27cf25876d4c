// SPDX-License-Identifier: MIT
#include "advice/target.h"

#include "cockpit/grips.h"

#include <algorithm>

namespace tripoise {
namespace {

constexpr int mostSteps = 60;
constexpr double widestStepMm = 60.0;
constexpr double fallbackStepMm = 10.0;
constexpr double finestStepMm = 0.02;
constexpr double probeMm = 0.5;
constexpr double leastSlope = 1e-6; // points a millimetre

/// Slope of the mixed cost as the clamp moves.
Point postureSlope(const std::vector<Hold>& holds, const Point& hip, const Point& clamp)
{
    Point slope = Point::Zero();
    for (const Hold& hold : holds) {
        const Point grip = clamp + hold.fromClamp;
        const UpperPosture posture = solveUpperBody(hold.limbs, hip, grip, hold.windows);
        if (posture.beyondMm == 0.0)
            slope += hold.share * hold.ease.slope(posture.cost)
                     * costSlope(hold.limbs, hip, grip, posture, hold.windows);
    }
    return slope;
}

} // namespace

LegTarget legTarget(const ComfortTable& comfort, const Mix& mix)
{
    LegTarget target;
    for (const Use use : allUses)
        target.knee = target.knee + mix.of(use) * comfort.kneeCentre[indexOf(use)];
    target.kneeOverSpindleMm = mix.mean(comfort.kneeOverSpindleMm);
    return target;
}

LegTarget legTarget(const ComfortTable& comfort, const Mix& mix, const Person& person)
{
    const LegTarget usual = legTarget(comfort, mix);
    return {usual.knee + person.kneeShift, usual.kneeOverSpindleMm + person.kneeOverSpindleShiftMm};
}

SaddlePlace saddleOf(const Person& person, const Mix& mix, double crankMm, const Tables& tables)
{
    const LegTarget target = legTarget(tables.comfort, mix, person);
    return saddleForKnee(person.body, tables.body, person.foothold, crankMm, target.knee,
                         target.kneeOverSpindleMm);
}

CrankBand crankBandFor(const ComfortTable& comfort, const Person& person)
{
    CrankBand band = crankBandFor(comfort, person.body.inseamMm);
    if (!person.bendsFreely) {
        band.lowMm += comfort.notBendingCrankMm;
        band.highMm += comfort.notBendingCrankMm;
    }
    return band;
}

std::vector<Hold> holdsOf(const Person& person, const Mix& mix, const Bar& bar,
                          const Tables& tables)
{
    std::vector<Hold> holds;
    const auto add = [&](Use use, GripPlace place, double share) {
        if (share <= 0.0)
            return;
        const Grip grip = gripOn(bar, place, tables.parts);
        const bool kept = person.keepsHands();
        UpperWindows windows =
            windowsFor(tables.comfort, use, place, person.flexibility, person.body.statureMm);
        if (!person.bendsFreely)
            windows.trunk.centre = windows.trunk.centre + tables.comfort.notBendingShift;
        holds.push_back(
            {use, place, share, grip.fromClamp - person.gripShift,
             upperLimbs(person.body, grip.halfWidthMm), windows,
             kept ? Ease{} : tables.comfort.ease}); // no millimetre of a kept grip is free
    };
    for (const Use use : allUses) {
        if (bar.kind != BarKind::Drop) {
            add(use, mainPlace(bar.kind), mix.of(use));
            continue;
        }
        for (const GripPlace place : {GripPlace::Hoods, GripPlace::Tops, GripPlace::Drops})
            add(use, place, mix.of(use) * tables.comfort.dropBarTime[indexOf(use)][indexOf(place)]);
    }
    return holds;
}

double postureCost(const std::vector<Hold>& holds, const Point& hip, const Point& clamp)
{
    double cost = 0.0;
    for (const Hold& hold : holds)
        cost += hold.share
                * hold.ease.of(
                    solveUpperBody(hold.limbs, hip, clamp + hold.fromClamp, hold.windows).cost);
    return cost;
}

Point comfortableClamp(const std::vector<Hold>& holds, const Point& hip)
{
    Point best = Point::Zero();
    double share = 0.0;
    for (const Hold& hold : holds) {
        best += hold.share * (comfortableGrip(hold.limbs, hip, hold.windows) - hold.fromClamp);
        share += hold.share;
    }
    best /= share;

    if (holds.size() == 1)
        return best;

    // The mix's optimum lies among its holds' own; Newton's steps from their mean, with the
    // curvature from differences of slopes, halved while they do not descend.
    double least = postureCost(holds, hip, best);
    const auto descend = [&](Point move) {
        for (; move.norm() > finestStepMm; move *= 0.5)
            if (const double cost = postureCost(holds, hip, best + move); cost < least) {
                best += move;
                least = cost;
                return true;
            }
        return false;
    };
    for (int step = 0; step < mostSteps; ++step) {
        const Point slope = postureSlope(holds, hip, best);
        const Point alongX = postureSlope(holds, hip, best + Point(probeMm, 0.0)) - slope;
        const Point alongY = postureSlope(holds, hip, best + Point(0.0, probeMm)) - slope;
        const double cross = 0.5 * (alongX.y() + alongY.x());
        const double determinant = alongX.x() * alongY.y() - cross * cross;
        Point move = Point::Zero();
        if (alongX.x() > 0.0 && determinant > 0.0)
            move = -probeMm / determinant
                   * Point(alongY.y() * slope.x() - cross * slope.y(),
                           alongX.x() * slope.y() - cross * slope.x());
        if (move.norm() > widestStepMm)
            move *= widestStepMm / move.norm();
        const Point steepest = -slope / std::max(1e-9, slope.norm()) * fallbackStepMm;
        if (descend(move) || descend(steepest))
            continue;
        // The slope knows nothing of a hold that is out of reach: then all ways are tried.
        bool around = false;
        for (int way = 0; way < 8 && slope.norm() > leastSlope && !around; ++way)
            around = descend(fallbackStepMm * along(Angle::degrees(45.0 * way)));
        if (!around)
            break;
    }
    return best;
}

} // namespace tripoise
