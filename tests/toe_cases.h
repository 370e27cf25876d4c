// SPDX-License-Identifier: MIT
//
// Bicycles, shoes and cranks that may or may not touch, from a seed.
#pragma once

#include "support.h"

#include "handling/toe.h"

#include <random>

namespace tripoise::test {

struct ToeCase {
    Skeleton skeleton;
    SweptWheel wheel;
    ShoeOutline shoe;
    Pedalling pedalling;
};

inline ToeCase toeCase(const FrameSize& frame, const Body& body, double crankMm,
                       const Foothold& foothold = calibrationFoothold())
{
    ToeCase made;
    made.skeleton = skeletonOf(frame, tables().frame);
    made.wheel = sweptWheel(made.skeleton);
    made.shoe = shoeOutline(body, body.footMm + tables().parts.shoeBeyondFootMm, foothold,
                            tables().parts.pedalLateralMm, tables().handling.toe);
    made.pedalling = {foothold, 750.0 * upTube(Angle::degrees(73.5)), crankMm};
    return made;
}

class RandomToes {
public:
    explicit RandomToes(unsigned seed) : m_random(seed) {}

    ToeCase next(bool mudguard)
    {
        FrameSize frame;
        Geometry& geometry = frame.geometry;
        geometry.headAngleDeg = between(67.0, 75.5);
        geometry.forkOffsetMm = between(28.0, 68.0);
        geometry.bbDropMm = between(25.0, 80.0);
        geometry.seatAngleDeg = 73.5;
        geometry.stackMm = between(500.0, 640.0);
        // A front centre from the shortest made to long ones.
        const double angle = Angle::degrees(geometry.headAngleDeg).rad();
        geometry.reachMm = between(550.0, 660.0) - *geometry.forkOffsetMm / std::sin(angle)
                           - (geometry.stackMm - *geometry.bbDropMm) / std::tan(angle);
        frame.wheel.beadSeatMm = std::array{622.0, 584.0, 559.0}[m_random() % 3];
        test::mountingOn(frame).tyreMm = between(25.0, 57.0);
        if (mudguard)
            test::mountingOn(frame).mudguard =
                Mudguard{between(5.0, 25.0), *test::mountingOn(frame).tyreMm + between(4.0, 16.0)};
        const double stature = between(1500.0, 2000.0);
        const Body body =
            bodyOf(m_random() % 2 ? Sex::Male : Sex::Female, {{Quantity::Stature, {stature}, {}}});
        const Angle habit = Angle::degrees(between(-10.0, 10.0));
        Foothold foothold = calibrationFoothold();
        foothold.stackMm = between(15.0, 45.0);
        foothold.pitchBottom = foothold.pitchBottom + habit;
        foothold.pitchForward = foothold.pitchForward + habit;
        return toeCase(frame, body, between(150.0, 180.0), foothold);
    }
    double between(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }

private:
    std::mt19937 m_random;
};

} // namespace tripoise::test
