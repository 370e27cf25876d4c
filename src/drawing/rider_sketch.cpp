// SPDX-License-Identifier: MIT
#include "drawing/rider_sketch.h"

#include "drawing/curve.h"
#include "drawing/proportions.h"

namespace tripoise {
namespace {

namespace draw = proportions;

// The neck follows the trunk half way from upright, the head a quarter.
constexpr double neckFollows = 0.5;
constexpr double headFollows = 0.25;
constexpr Angle upright = Angle::degrees(90.0);
constexpr Angle halfTurn = Angle::degrees(180.0);

Angle between(const Point& from, const Point& to)
{
    return angleOf(to - from);
}

void head(RiderSketch& rider, const Body& body, const BodyModel& model, Angle trunk)
{
    const Angle lean = upright - trunk;
    const double acromionUp =
        body.upperArmMm * model.shoulderBelowAcromion / (1.0 - model.shoulderBelowAcromion);
    const double reach = body.headMm + acromionUp - 0.5 * draw::headHeight * body.statureMm;
    const Point alongTrunk = along(trunk);
    rider.neck = rider.shoulder + body.statureMm * draw::neckUp * alongTrunk
                 + body.statureMm * draw::neckBack * leftOf(alongTrunk);
    rider.head = rider.shoulder + reach * along(upright - neckFollows * lean);
    rider.gaze = upright - headFollows * lean;
}

void angles(RiderSketch& rider, const UsePosture& posture, const LegPosture& leg,
            const Window& knee)
{
    const auto add = [&rider](Joint joint, const Point& at, Angle zero, double sense, Angle value,
                              const Window& window) {
        rider.angles.push_back({joint, at, zero, sense, value, window.low(), window.high()});
    };
    const UpperPosture& upper = posture.posture;
    add(Joint::Trunk, rider.hip, Angle(), 1.0, upper.trunk, posture.windows.trunk);
    add(Joint::ArmTrunk, rider.shoulder, between(rider.shoulder, rider.hip), 1.0, upper.armTrunk,
        posture.windows.armTrunk);
    add(Joint::Elbow, rider.elbow, between(rider.shoulder, rider.elbow), 1.0, upper.elbow,
        posture.windows.elbow);
    add(Joint::Knee, rider.near.knee, between(rider.near.hip, rider.near.knee), -1.0,
        leg.kneeBottom, knee);
}

} // namespace

RiderSketch sketchRider(const Person& person, const AdvisedSetup& advised, Use use, const Mix& mix,
                        const Prepared& prepared, const Tables& tables)
{
    const Setup& setup = advised.setup;
    const Bar& bar = prepared.stock.bars[setup.cockpit.bar];
    const Point saddle = setup.saddle.point();
    UsePosture posture = advised.uses.front();
    for (const UsePosture& candidate : advised.uses)
        if (candidate.use == use)
            posture = candidate;

    RiderSketch rider;
    rider.use = posture.use;
    rider.place = mainPlace(bar.kind);
    const UpperLimbs limbs =
        upperLimbs(person.body, gripOn(bar, rider.place, tables.parts).halfWidthMm);
    const UpperPoints upper =
        upperPoints(limbs, midHip(saddle, tables.body), setup.grip, posture.posture);
    rider.hip = upper.hip;
    rider.shoulder = upper.shoulder;
    rider.elbow = upper.elbow;
    rider.grip = upper.grip;
    rider.wrist = rider.grip + draw::wristShare * (rider.elbow - rider.grip);
    rider.beyondMm = posture.posture.beyondMm;

    const auto leg = [&](Angle crank) {
        return legAt(person.body, tables.body, person.foothold, saddle, setup.crankMm, crank);
    };
    rider.near = leg(bottomOfTurn(saddle));
    rider.far = leg(topOfTurn(saddle));
    rider.ankleHeightMm = person.body.ankleHeightMm;
    rider.statureMm = person.body.statureMm;
    rider.soleMm =
        person.foothold.stackMm - prepared.stock.pedal.stackMm.value_or(tables.parts.pedalStackMm);
    rider.shoeBeyondFootMm = tables.parts.shoeBeyondFootMm;

    head(rider, person.body, tables.body, posture.posture.trunk);
    angles(rider, posture, advised.leg,
           {legTarget(tables.comfort, mix, Angle()).knee, tables.comfort.kneeHalfWidth});
    return rider;
}

} // namespace tripoise
