// SPDX-License-Identifier: MIT
#include "drawing/rider_sketch.h"

#include "advice/assess.h"
#include "drawing/curve.h"
#include "drawing/proportions.h"

namespace tripoise::drawing {
namespace {

namespace draw = proportions;

// The neck follows the trunk half way from upright, the head a quarter.
constexpr double neckFollows = 0.5;
constexpr double headFollows = 0.25;
constexpr Angle upright = Angle::degrees(90.0);
constexpr Angle atTheBottom = Angle::degrees(1.0); // a crank this near to it is at the bottom
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

void angles(RiderSketch& rider, const UsePosture& posture, std::optional<Angle> kneeAtBottom,
            const Window& knee)
{
    const auto add = [&rider](Joint joint, const Point& at, Angle zero, double sense, Angle value,
                              const Window& window) {
        rider.angles.push_back({joint, at, zero, sense, value, window.low(), window.high(), {}});
    };
    const UpperPosture& upper = posture.posture;
    add(Joint::Trunk, rider.hip, Angle(), 1.0, upper.trunk, posture.windows.trunk);
    add(Joint::ArmTrunk, rider.shoulder, between(rider.shoulder, rider.hip), 1.0, upper.armTrunk,
        posture.windows.armTrunk);
    add(Joint::Elbow, rider.elbow, between(rider.shoulder, rider.elbow), 1.0, upper.elbow,
        posture.windows.elbow);
    add(Joint::Knee, rider.near.knee, between(rider.near.hip, rider.near.knee), -1.0,
        rider.near.kneeFlexion, knee);
    rider.angles.back().atBottom = kneeAtBottom;
}

} // namespace

RiderSketch sketchRider(const Person& person, const Seat& seat, Use use, std::optional<Angle> crank,
                        const Mix& mix, const Prepared& prepared, const Tables& tables)
{
    const Setup& setup = seat.setup;
    const Bar& bar = prepared.stock.bars[setup.cockpit.bar];
    const Point saddle = setup.saddle.point();
    UsePosture posture = seat.uses.front();
    for (const UsePosture& candidate : seat.uses)
        if (candidate.use == use)
            posture = candidate;

    RiderSketch rider;
    rider.use = posture.use;
    rider.place = mainPlace(bar.kind);
    const UpperLimbs limbs =
        upperLimbs(person.body, gripOn(bar, rider.place, tables.parts).halfWidthMm);
    const UpperPoints upper =
        upperPoints(limbs, midHip(saddle, person.body, tables.body), setup.grip, posture.posture);
    rider.hip = upper.hip;
    rider.shoulder = upper.shoulder;
    rider.elbow = upper.elbow;
    rider.grip = upper.grip;
    rider.wrist = rider.grip + draw::wristShare * (rider.elbow - rider.grip);
    rider.beyondMm = posture.posture.beyondMm;

    const auto leg = [&](Angle at) {
        return legAt(person.body, tables.body, person.foothold, saddle, setup.crankMm, at);
    };
    const Angle bottom = bottomOfTurn(saddle);
    const Angle nearCrank = crank.value_or(bottom);
    rider.near = leg(nearCrank);
    rider.far = leg(nearCrank + halfTurn);
    rider.turn = legOverTurn(person, setup.saddle, setup.crankMm, posture.posture.trunk, tables);
    rider.ankleHeightMm = person.body.ankleHeightMm;
    rider.statureMm = person.body.statureMm;
    rider.soleMm = person.foothold.stackMm
                   - prepared.bicycle.pedal.stackMm.value_or(tables.parts.pedalStackMm);
    rider.shoeBeyondFootMm = tables.parts.shoeBeyondFootMm;

    head(rider, person.body, tables.body, posture.posture.trunk);
    const bool away = along(nearCrank).dot(along(bottom)) < std::cos(atTheBottom.rad());
    angles(rider, posture, away ? std::optional(seat.leg.kneeBottom) : std::nullopt,
           {legTarget(tables.comfort, mix).knee, tables.comfort.kneeHalfWidth});
    return rider;
}

} // namespace tripoise::drawing
