// SPDX-License-Identifier: MIT
#include "advice/ride.h"

#include "advice/advise.h"
#include "advice/shoes.h"

#include <algorithm>

namespace tripoise {
namespace {

SeatedRider seatedOn(const Setup& setup, const std::vector<UsePosture>& uses, const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    const Bar& bar = prepared.stock.bars[setup.cockpit.bar];
    SeatedRider rider;
    rider.body = person.body;
    rider.sex = person.sex;
    rider.foothold = person.foothold;
    rider.saddle = setup.saddle;
    rider.crankMm = setup.crankMm;
    rider.grip = setup.grip;
    rider.gripHalfWidthMm = gripOn(bar, mainPlace(bar.kind), tables.parts).halfWidthMm;
    rider.pedalLateralMm = pedalLateral(prepared.bicycle.pedal, tables);
    const auto main = std::max_element(
        uses.begin(), uses.end(), [&mix = riding.mix](const UsePosture& a, const UsePosture& b) {
            return mix.of(a.use) < mix.of(b.use);
        });
    if (main != uses.end())
        rider.windows = main->windows;
    return rider;
}

void addToe(Ride& ride, const Setup& setup, const PreparedSize& size, const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    const HandlingTables& handling = tables.handling;
    const SweptWheel wheel = sweptWheel(size.skeleton);
    const double lateral = pedalLateral(prepared.bicycle.pedal, tables);
    ride.toeClearance = toeClearance(wheel, setup.crankMm, lateral);
    ride.leastToeClearance = leastToeClearance(wheel, setup.crankMm, lateral);
    ride.toe = toeOverlap(wheel, shoeOn(prepared.bicycle.pedal, person, tables),
                          {person.foothold, setup.saddle.point(), setup.crankMm});
    if (ride.toe && ride.toe->touches)
        ride.touchingTurn =
            tightTurn(ride.toe->touches->from, size.skeleton.headAngle, ride.steering.wheelbaseMm,
                      handling.toe, handling.bicycle.gravityMmS2);
}

OverTurn kneeRoom(const SeatedRider& rider, const Setup& setup, const PreparedSize& size,
                  Angle steer, const Tables& tables)
{
    return kneeToBar(rider, tables.body, size.skeleton, setup.clamp, tables.parts.straightCentreMm,
                     steer, tables.handling.clearance);
}

void addRoom(Ride& ride, const SeatedRider& rider, const Setup& setup, const PreparedSize& size,
             const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    const HandlingTables& handling = tables.handling;
    if (riding.luggage.rearKg > 0.0)
        ride.heelToBag = heelToBag(rider, tables.body, size.skeleton, handling.rearBag,
                                   handling.clearance, handling.toe.ballAheadOfSpindleMm);
    const Angle turned = Angle::degrees(handling.clearance.turnedBarDeg);
    ride.kneeToBar = kneeRoom(rider, setup, size, Angle(), tables);
    ride.kneeToTurnedBar = kneeRoom(rider, setup, size, turned, tables);
    ride.foot = footToGround(rider, tables.body, size.skeleton, soleOf(person, tables.parts),
                             handling.clearance);
    ride.tyreLeftMm = tyreLeft(size.frame, size.skeleton);
}

WhippleBicycle loaded(const SeatedRider& rider, const Setup& setup, const PreparedSize& size,
                      const Basis& basis)
{
    const HandlingTables& handling = basis.tables.handling;
    return loadedBicycle(size.skeleton, setup, rider.gripHalfWidthMm,
                         riderMass(rider, basis.tables.body, handling.segments),
                         {basis.riding.luggage.frontKg, basis.riding.luggage.rearKg},
                         handling.bicycle, handling.carriers);
}

void addBalance(Ride& ride, const SeatedRider& rider, const Setup& setup, const PreparedSize& size,
                const Basis& basis)
{
    const Tables& tables = basis.tables;
    const HandlingTables& handling = tables.handling;
    const WhippleBicycle bicycle = loaded(rider, setup, size, basis);
    ride.balance = balanceOf(bicycle);
    const Range rails =
        saddleBehindRange(size.skeleton, basis.prepared.bicycle.saddle, tables.parts);
    const SeatedRider satBack = fullyBack(rider, rails, size.skeleton.seatAngle, handling.balance);
    if (const auto back = balanceOf(loaded(satBack, setup, size, basis)))
        ride.frontShareFullyBack = back->frontShare();
    ride.handsShareBound = handsShareBound(rider, tables.body, handling.segments);
    if (ride.balance) {
        ride.grades = gradesOf(*ride.balance, handling.balance);
        ride.weight = systemWeight(*ride.balance, size.frame.maxSystemKg);
    }
    ride.model = whippleModel(bicycle);
    if (ride.model)
        ride.stability = selfStability(*ride.model);
}

} // namespace

Ride rideOf(const AdvisedSetup& advised, const PreparedSize& size, const Basis& basis)
{
    const Tables& tables = basis.tables;
    const SeatedRider rider = seatedOn(advised.setup, advised.uses, basis);
    Ride ride;
    ride.steering = steeringOf(size.skeleton);
    ride.wheelMm = outsideDiameter(size.skeleton.beadSeatMm, size.skeleton.tyreMm);
    ride.grips = gripLever(size.skeleton, advised.setup.grip, rider.gripHalfWidthMm);
    ride.pedalLean = pedalStrikeLean(size.skeleton, advised.setup.crankMm,
                                     pedalLateral(basis.prepared.bicycle.pedal, tables),
                                     tables.parts.pedalWidthMm);
    ride.toeClearanceLimitMm = leastToeClearanceUnder(basis.riding, tables.handling.toe);
    addToe(ride, advised.setup, size, basis);
    addRoom(ride, rider, advised.setup, size, basis);
    addBalance(ride, rider, advised.setup, size, basis);
    return ride;
}

OverTurn kneeToBarOn(const Setup& setup, const std::vector<UsePosture>& uses,
                     const PreparedSize& size, const Basis& basis)
{
    return kneeRoom(seatedOn(setup, uses, basis), setup, size, Angle(), basis.tables);
}

std::optional<Balance> loadOn(const Setup& setup, const std::vector<UsePosture>& uses,
                              const PreparedSize& size, const Basis& basis)
{
    return balanceOf(loaded(seatedOn(setup, uses, basis), setup, size, basis));
}

std::optional<double> leastToeClearanceUnder(const Riding& riding, const ToeTable& table)
{
    if (!riding.soldUnder || (*riding.soldUnder == Standard::Cfr1512 && riding.footRetention))
        return std::nullopt; // 16 CFR 1512.17(d) is for feet that are not retained
    return table.leastClearanceMm[indexOf(*riding.soldUnder)];
}

std::vector<ToeRemedy> toeRemediesOf(const AdvisedSetup& advised, std::size_t index,
                                     const Basis& basis)
{
    const auto& [person, riding, prepared, tables] = basis;
    const HandlingTables& handling = tables.handling;
    // The run of the same model that this size belongs to, by stack and reach.
    const FrameSize& frame = prepared.sizes[index].frame;
    std::vector<std::size_t> run;
    for (std::size_t i = 0; i < prepared.sizes.size(); ++i)
        if (prepared.sizes[i].frame.model == frame.model)
            run.push_back(i);
    std::stable_sort(run.begin(), run.end(), [&all = prepared.sizes](std::size_t a, std::size_t b) {
        return all[a].bulkMm < all[b].bulkMm;
    });
    std::vector<FrameSize> sizes;
    for (const std::size_t i : run)
        sizes.push_back(prepared.sizes[i].frame);
    const auto at =
        static_cast<std::size_t>(std::find(run.begin(), run.end(), index) - run.begin());
    const ToeSituation situation{
        frame,
        person.body,
        shoeLength(person, tables),
        {person.foothold, advised.setup.saddle.point(), advised.setup.crankMm},
        pedalLateral(prepared.bicycle.pedal, tables),
        tables.parts.pedalWidthMm,
        handling.toe.ballAheadOfSpindleMm};
    std::vector<ToeRemedy> remedies =
        toeRemedies(situation, {sizes, at, prepared.cranksMm, handling.tyresMm, handling.rims},
                    tables.frame, handling.toe);
    for (ToeRemedy& remedy : remedies)
        if (remedy.kind == RemedyKind::NextSize)
            remedy.to = static_cast<double>(run[at + 1]);
    return remedies;
}

} // namespace tripoise
