// SPDX-License-Identifier: MIT
#include "advice/ride.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double leastSlackMm = 1.0; // less is no adjustment

void addToe(Findings& findings, const Ride& ride, const Skeleton& skeleton, const ToeTable& table)
{
    if (!ride.toe || ride.toe->overlapMm <= -table.checkRoomMm)
        return;
    const std::string wheel = skeleton.mudguard ? "mudguard" : "tyre";
    const double overlap = ride.toe->overlapMm;
    if (overlap <= 0.0) {
        findings.push_back({FindingCode::ToeNear, Severity::Note, {-overlap}, wheel, {}});
        return;
    }
    Finding touching{FindingCode::ToeOverlaps, Severity::Caution, {overlap}, wheel, {}};
    if (ride.toe->touches && ride.touchingTurn)
        touching.numbers.insert(touching.numbers.end(),
                                {ride.toe->touches->from.deg(), ride.touchingTurn->radiusMm,
                                 ride.touchingTurn->speedMmS});
    findings.push_back(std::move(touching));
}

/// How much further back the axle can go in its dropouts, level.
double axleSlack(const Skeleton& skeleton)
{
    const double drop = skeleton.rearAxle.y();
    const double longest = std::max(skeleton.chainstayEndMm, std::abs(drop));
    return std::sqrt(longest * longest - drop * drop) + skeleton.rearAxle.x();
}

void addRoom(Findings& findings, const Ride& ride, const Skeleton& skeleton,
             const ClearanceTable& table)
{
    const auto near = [&findings](FindingCode code, std::vector<double> numbers) {
        findings.push_back({code, Severity::Caution, std::move(numbers), {}, {}});
    };
    if (ride.heelToBag && ride.heelToBag->clearanceMm < table.wantedHeelMm) {
        const double room = ride.heelToBag->clearanceMm;
        std::vector<double> numbers{room, table.wantedHeelMm};
        if (const double slack = axleSlack(skeleton); slack >= leastSlackMm)
            numbers.push_back(room + slack);
        near(FindingCode::HeelNearBag, std::move(numbers));
    }
    if (ride.kneeToBar.clearanceMm < table.wantedKneeMm)
        near(FindingCode::KneeNearBar, {ride.kneeToBar.clearanceMm, table.wantedKneeMm, 0.0});
    else if (ride.kneeToTurnedBar.clearanceMm < table.wantedKneeMm)
        near(FindingCode::KneeNearBar,
             {ride.kneeToTurnedBar.clearanceMm, table.wantedKneeMm, table.turnedBarDeg});
}

void addBalance(Findings& findings, const Ride& ride, const BalanceTable& table)
{
    const auto tell = [&findings](FindingCode code, Severity severity, double found,
                                  double wanted) {
        findings.push_back({code, severity, {found, wanted}, {}, {}});
    };
    if (ride.frontShareFullyBack && *ride.frontShareFullyBack < table.leastFrontShare)
        tell(FindingCode::FrontWheelLight, Severity::Caution, *ride.frontShareFullyBack,
             table.leastFrontShare);
    if (!ride.grades)
        return;
    if (ride.grades->overTheBarsG < table.brakingToCountOnG)
        tell(FindingCode::PitchesEarly, Severity::Caution, ride.grades->overTheBarsG,
             table.brakingToCountOnG);
    if (ride.grades->liftsUnderPedalling < table.climbToCountOn)
        tell(FindingCode::FrontLiftsClimbing, Severity::Note, ride.grades->liftsUnderPedalling,
             table.climbToCountOn);
}

void addSteering(Findings& findings, const Ride& ride, const Skeleton& skeleton,
                 const SteeringAdvice& advice)
{
    const auto note = [&findings](FindingCode code, std::vector<double> numbers) {
        findings.push_back({code, Severity::Note, std::move(numbers), {}, {}});
    };
    if (ride.stability && !ride.stability->steady)
        note(FindingCode::NoSteadySpeed, {});
    else if (ride.stability && !ride.stability->capsizeMmS)
        note(FindingCode::NoCapsizeSpeed, {ride.stability->weaveMmS.value_or(0.0)});
    if (!withinAdvice(skeleton, advice))
        note(FindingCode::SteeringOutOfAdvice,
             {skeleton.headAngle.deg(), advice.headAngleDeg.low, advice.headAngleDeg.high,
              ride.steering.axisHeightShare, advice.axisHeightShare.low,
              advice.axisHeightShare.high});
}

} // namespace

Findings rideFindings(const Ride& ride, const Skeleton& skeleton, const HandlingTables& tables)
{
    Findings findings;
    addToe(findings, ride, skeleton, tables.toe);
    addRoom(findings, ride, skeleton, tables.clearance);
    addBalance(findings, ride, tables.balance);
    addSteering(findings, ride, skeleton, tables.steering);
    return findings;
}

} // namespace tripoise
