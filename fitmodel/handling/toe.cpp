// SPDX-License-Identifier: MIT
#include "handling/toe.h"

#include "base/least.h"
#include "base/root.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tripoise {
namespace {

// A shoe is near the wheel only on the forward part of the turn.
constexpr Angle lowestCrank = Angle::degrees(-75.0);
constexpr Angle highestCrank = Angle::degrees(75.0);
constexpr Angle mostSteer = Angle::degrees(90.0);
// The wheel is deepest in the shoe, and first comes to it, near the worst spot's steer and crank.
constexpr Angle besideWorstSteer = Angle::degrees(10.0);
constexpr Angle besideWorstCrank = Angle::degrees(45.0);
// In radians; a minimum is flat, so the first two are worth 0.0001 and 0.001 mm.
constexpr double angleTolerance = 1e-3;
constexpr double gapTolerance = 4e-3;
constexpr double steerTolerance = 1e-4;
constexpr double clearMm = 1e6; // stands for "passes beside" inside a search

/// Foot and shoe at one crank angle.
struct ShoeAt {
    Spot ball;
    Spot along; ///< towards the tip, as long as the outline is
    Spot across;

    [[nodiscard]] Spot at(double round) const
    {
        return ball + std::cos(round) * along + std::sin(round) * across;
    }
};

ShoeAt shoeAt(const ShoeOutline& shoe, const Pedalling& pedalling, Angle crank)
{
    const Point toToe = along(-footPitch(pedalling.foothold, pedalling.saddle, crank));
    const Point up(-toToe.y(), toToe.x());
    const Point ball =
        pedalling.crankMm * along(crank) + shoe.ballAheadMm * toToe + shoe.aboveMm * up;
    const Point tip = shoe.tipAheadOfBallMm * toToe;
    return {Spot(ball.x(), ball.y(), shoe.outMm), Spot(tip.x(), tip.y(), 0.0),
            Spot(0.0, 0.0, shoe.halfBreadthMm)};
}

struct NearestSpot {
    Spot at;
    Touch touch;
};

/// The spot of the outline that has least room ahead. There the outline runs along the swept body,
/// so its place follows from the body's normal; the body is much flatter than the toe, and the
/// repeated step settles in a few rounds; `round` is where to begin, and where it ended.
std::optional<NearestSpot> nearestSpot(const SweptWheel& wheel, const ShoeAt& shoe, double& round)
{
    constexpr int mostRounds = 30;
    std::optional<NearestSpot> nearest;
    for (int i = 0; i < mostRounds; ++i) {
        const Spot spot = shoe.at(round);
        const auto touch = touchAhead(wheel, spot);
        if (!touch)
            return nearest;
        nearest = NearestSpot{spot, *touch};
        const double towards = -touch->normal.dot(shoe.along);
        if (towards <= 0.0)
            return nearest;
        const double next = -std::atan(touch->normal.dot(shoe.across) / towards);
        if (std::abs(next - round) < angleTolerance)
            break;
        round = next;
    }
    return nearest;
}

/// How near the shoe comes to a held wheel with the crank held as well.
double gapTo(const HeldWheel& held, const ShoeOutline& shoe, const Pedalling& pedalling,
             Angle crank)
{
    constexpr double half = 0.5 * std::numbers::pi;
    const ShoeAt at = shoeAt(shoe, pedalling, crank);
    return leastWithin(-half, half, gapTolerance,
                       [&](double round) { return held.distanceTo(at.at(round)); })
        .value;
}

/// How near the shoe comes to a wheel held at one angle, over outline and crank.
struct SteeredGap {
    double gapMm = 0.0;
    double crank = 0.0;
};
SteeredGap steeredGap(const SweptWheel& wheel, const ShoeOutline& shoe, const Pedalling& pedalling,
                      double steer, Angle aboutCrank)
{
    const HeldWheel held(wheel, Angle::radians(steer));
    const auto gapAt = [&](double crank) {
        return gapTo(held, shoe, pedalling, Angle::radians(crank));
    };
    const Least least = leastWithin((aboutCrank - besideWorstCrank).rad(),
                                    (aboutCrank + besideWorstCrank).rad(), gapTolerance, gapAt);
    return {least.value, least.at};
}

std::optional<TouchingSteer> touchingSteer(const SweptWheel& wheel, const ShoeOutline& shoe,
                                           const Pedalling& pedalling, Angle about,
                                           Angle aboutCrank)
{
    const auto near = [&](double steer) {
        return steeredGap(wheel, shoe, pedalling, steer, aboutCrank);
    };
    const auto gap = [&](double steer) { return near(steer).gapMm; };
    Least inside{about.rad(), gap(about.rad())};
    if (inside.value > 0.0) // under the edge of a mudguard, or grazing
        inside = leastWithin(std::max(0.0, (about - besideWorstSteer).rad()),
                             (about + 2.0 * besideWorstSteer).rad(), angleTolerance, gap);
    if (inside.value > 0.0)
        return std::nullopt;
    const double from = gap(0.0) <= 0.0 ? 0.0 : rootWithin(0.0, inside.at, steerTolerance, gap);
    const double to = gap(mostSteer.rad()) <= 0.0
                          ? mostSteer.rad()
                          : rootWithin(inside.at, mostSteer.rad(), steerTolerance, gap);
    return TouchingSteer{Angle::radians(from), Angle::radians(to),
                         Angle::radians(near(from).crank)};
}

} // namespace

std::optional<ToeClearance> toeClearance(const SweptWheel& wheel, double crankMm,
                                         double pedalLateralMm)
{
    const auto touch = touchAhead(wheel, Spot(crankMm, 0.0, pedalLateralMm));
    if (!touch)
        return std::nullopt;
    return ToeClearance{touch->forwardMm, touch->steer, {}};
}

std::optional<ToeClearance> leastToeClearance(const SweptWheel& wheel, double crankMm,
                                              double pedalLateralMm)
{
    const auto spindle = [&](double crank) {
        const Point at = crankMm * along(Angle::radians(crank));
        return Spot(at.x(), at.y(), pedalLateralMm);
    };
    const Least least =
        leastWithin(lowestCrank.rad(), highestCrank.rad(), angleTolerance, [&](double crank) {
            const auto touch = touchAhead(wheel, spindle(crank));
            return touch ? touch->forwardMm : clearMm;
        });
    const auto touch = touchAhead(wheel, spindle(least.at));
    if (!touch)
        return std::nullopt;
    return ToeClearance{touch->forwardMm, touch->steer, Angle::radians(least.at)};
}

ShoeOutline shoeOutline(const Body& body, double shoeLengthMm, const Foothold& foothold,
                        double pedalLateralMm, const ToeTable& table,
                        std::optional<double> ballAheadMm)
{
    // What the shoe is longer than the foot is ahead of the toes.
    return {ballAheadMm.value_or(table.ballAheadOfSpindleMm),
            std::max(shoeLengthMm, body.footMm) - body.ballMm,
            0.5 * table.breadthOfLength * shoeLengthMm, foothold.stackMm + table.boxAboveSoleMm,
            pedalLateralMm};
}

Spot shoeSpot(const ShoeOutline& shoe, const Pedalling& pedalling, Angle crank, Angle round)
{
    return shoeAt(shoe, pedalling, crank).at(round.rad());
}

std::optional<ToeOverlap> worstToe(const SweptWheel& wheel, const ShoeOutline& shoe,
                                   const Pedalling& pedalling)
{
    double round = 0.0;
    const auto nearestAt = [&](double crank) {
        return nearestSpot(wheel, shoeAt(shoe, pedalling, Angle::radians(crank)), round);
    };
    const Least least =
        leastWithin(lowestCrank.rad(), highestCrank.rad(), angleTolerance, [&](double crank) {
            const auto nearest = nearestAt(crank);
            return nearest ? nearest->touch.forwardMm : clearMm;
        });
    const auto nearest = nearestAt(least.at);
    if (!nearest)
        return std::nullopt;
    ToeOverlap overlap;
    overlap.overlapMm = -nearest->touch.forwardMm;
    overlap.steer = nearest->touch.steer;
    overlap.crank = Angle::radians(least.at);
    overlap.at = nearest->at;
    return overlap;
}

std::optional<ToeOverlap> toeOverlap(const SweptWheel& wheel, const ShoeOutline& shoe,
                                     const Pedalling& pedalling)
{
    std::optional<ToeOverlap> overlap = worstToe(wheel, shoe, pedalling);
    if (overlap && overlap->overlapMm > 0.0)
        overlap->touches = touchingSteer(wheel, shoe, pedalling, overlap->steer, overlap->crank);
    return overlap;
}

double shoeGap(const SweptWheel& wheel, const ShoeOutline& shoe, const Pedalling& pedalling,
               Angle steer, Angle crank)
{
    return gapTo(HeldWheel(wheel, steer), shoe, pedalling, crank);
}

std::optional<TightTurn> tightTurn(Angle steer, Angle headAngle, double wheelbaseMm,
                                   const ToeTable& table, double gravityMmS2)
{
    const double onGround = std::tan(std::abs(steer.rad())) * std::sin(headAngle.rad());
    if (!(onGround > 0.0))
        return std::nullopt;
    const double radius = wheelbaseMm / onGround;
    const double lean = std::tan(Angle::degrees(table.leanInTightTurnDeg).rad());
    return TightTurn{radius, std::sqrt(gravityMmS2 * radius * lean)};
}

} // namespace tripoise
