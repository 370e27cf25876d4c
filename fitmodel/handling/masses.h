// SPDX-License-Identifier: MIT
//
// Where the masses of rider, bicycle and luggage lie. All of it is estimated: segments are rods as
// thick as their mass asks for at one density, the bicycle's parts are shares of its mass along the
// skeleton's lines (common practice, no source), bags are where carriers ordinarily hold them.
// Trust differences between sizes and set-ups before the figures themselves.
//
// The rider is rigid, seated with the cranks level, hands on the bar's main place; the arms count
// to the rear frame, as in Meijaard et al. 2007 (Proc R Soc A 463:1955).
#pragma once

#include "handling/segments.h"
#include "handling/stability.h"
#include "posture/upper_body.h"
#include "setup/setup.h"

namespace tripoise {

/// A rider on the contacts of a set-up.
struct SeatedRider {
    Body body;
    std::optional<Sex> sex;
    Foothold foothold;
    SaddlePlace saddle;
    double crankMm = 0.0;
    Point grip = Point::Zero();
    double gripHalfWidthMm = 0.0;
    double pedalLateralMm = 0.0;
    UpperWindows windows; ///< of the use whose posture counts
};

/// Head, trunk, arms and hands; in the bike axes. The upper body is solved for the rider's windows.
[[nodiscard]] RigidBody upperBodyOf(const SeatedRider& rider, const BodyModel& model,
                                    const SegmentTable& table);
/// Both legs, the right one's crank at an angle from the x axis and the left one's opposite.
[[nodiscard]] RigidBody legsOf(const SeatedRider& rider, const BodyModel& model,
                               const SegmentTable& table, Angle crank);
/// The whole rider, cranks level.
[[nodiscard]] RigidBody riderMass(const SeatedRider& rider, const BodyModel& model,
                                  const SegmentTable& table);

/// How a bicycle's mass is spread over its parts, shares that sum to 1.
enum class BicyclePart { FrontWheel, RearWheel, Fork, Cockpit, Frame, Cranks, Saddle, Fittings };
inline constexpr std::array<std::string_view, 8> bicyclePartKeys{
    "front_wheel", "rear_wheel", "fork", "cockpit", "frame", "cranks", "saddle", "fittings"};

struct BicycleTable {
    std::array<double, bicyclePartKeys.size()> share{};
    double frontGyration = 0.0; ///< about the axle, share of the wheel's radius
    double rearGyration = 0.0;
    double fittingsAboveAxleMm = 0.0; ///< rack, mudguards, lights over the rear wheel
    double gravityMmS2 = 0.0;

    [[nodiscard]] double of(BicyclePart part) const
    {
        return share[static_cast<std::size_t>(part)];
    }
};

/// Where a carrier holds its bags, from the axle of its wheel.
struct Carrier {
    double aheadMm = 0.0;
    double aboveMm = 0.0;
    double outMm = 0.0;      ///< middle of a bag from the bicycle's plane
    double gyrationMm = 0.0; ///< how far a bag's mass is spread about its middle
    bool steered = false;    ///< turns with the fork
};
struct Carriers {
    Carrier front;
    Carrier rear;
};
struct Bags {
    double frontKg = 0.0;
    double rearKg = 0.0;
};

/// All of it as the stability model wants it: from the rear contact, at the forward end of an
/// adjustable dropout.
[[nodiscard]] WhippleBicycle loadedBicycle(const Skeleton& skeleton, const Setup& setup,
                                           double gripHalfWidthMm, const RigidBody& rider,
                                           const Bags& bags, const BicycleTable& table,
                                           const Carriers& carriers);

} // namespace tripoise
