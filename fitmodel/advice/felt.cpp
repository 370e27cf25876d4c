// SPDX-License-Identifier: MIT
#include "advice/felt.h"

#include <cmath>

namespace tripoise::advice {
namespace {

constexpr double leastToldMm = 1.0; // what cannot be read off two figures is no reason

/// Where the shoe is against the turned wheel.
enum class Toe { Meets, Near, Clear };

Toe toeOf(const Candidate& candidate, double roomMm)
{
    const auto& toe = candidate.ride ? candidate.ride->toe : std::nullopt;
    if (!toe || toe->overlapMm <= -roomMm)
        return Toe::Clear;
    return toe->overlapMm > 0.0 ? Toe::Meets : Toe::Near;
}

/// Wheelbase and trail must not speak against each other.
bool feltHandling(const Pair& pair, const FeltTable& table)
{
    const double wheelbase =
        pair.namedSize.steering.wheelbaseMm - pair.otherSize.steering.wheelbaseMm;
    const double trail = pair.namedSize.steering.trailMm - pair.otherSize.steering.trailMm;
    return wheelbase * trail >= 0.0
           && (std::abs(wheelbase) >= table.wheelbaseMm || std::abs(trail) >= table.trailMm);
}

bool crosses(double from, double to, double limit)
{
    return (from < limit) != (to < limit);
}

} // namespace

bool felt(const Reason& reason, const Pair& pair, const FeltTable& table)
{
    const double apart = std::abs(reason.named - reason.other);
    switch (reason.consideration) {
    case Consideration::Posture: // not where what is easier lies further off
        return (pair.named.best->setup.grip - pair.other.best->setup.grip).norm() >= table.handMm
               && apart >= leastToldMm && (reason.named < reason.other) == (reason.gain > 0.0);
    case Consideration::Setback:
        return std::abs(std::abs(reason.named) - std::abs(reason.other)) >= table.kneeMm;
    case Consideration::StemLength: return apart >= table.stemMm;
    case Consideration::Spacers: return apart >= table.spacersMm;
    case Consideration::StemAngle: return apart >= table.stemAngleDeg;
    case Consideration::Standover:
        return pair.namedSize.skeleton.standoverMm && pair.otherSize.skeleton.standoverMm
               && (apart >= table.standoverMm || crosses(reason.named, reason.other, 0.0)
                   || crosses(reason.named, reason.other, table.easyStandoverMm));
    case Consideration::Agility: return feltHandling(pair, table);
    case Consideration::Compactness: return apart >= table.bulkMm;
    case Consideration::Adjustment: return apart >= table.directions;
    case Consideration::ToeOverlap: {
        const Toe named = toeOf(pair.named, pair.toeRoomMm);
        const Toe other = toeOf(pair.other, pair.toeRoomMm);
        return named != other || (named == Toe::Meets && apart >= table.toeMm);
    }
    case Consideration::Tidiness:
    case Consideration::ToOrder:
    case Consideration::Crank:
    case Consideration::RiderHeight: return true;
    case Consideration::ExposedPost:
    case Consideration::BarWidth: return false;
    }
    return false;
}

} // namespace tripoise::advice
