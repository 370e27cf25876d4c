// SPDX-License-Identifier: MIT
//
// Toe overlap by brute force, as an oracle and as what the bench compares with: the wheel is turned
// by steps about its axis as a row of spheres (tyre) or a drum (mudguard), the shoe stands at steps
// of the crank and of its outline, and every pair is looked at; then once more, finely, about the
// worst.
#pragma once

#include "handling/toe.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace tripoise::test {

class ToeCloud {
public:
    ToeCloud(const SweptWheel& wheel, const ShoeOutline& shoe, const Pedalling& pedalling)
        : m_wheel(wheel), m_shoe(shoe), m_pedalling(pedalling),
          m_axis(Eigen::Vector3d(-std::cos(wheel.headAngle.rad()), std::sin(wheel.headAngle.rad()),
                                 0.0)),
          m_ahead(std::sin(wheel.headAngle.rad()), std::cos(wheel.headAngle.rad()), 0.0),
          m_axle(wheel.axle.x(), wheel.axle.y(), 0.0), m_onAxis(m_axle - wheel.offsetMm * m_ahead)
    {
    }

    struct Worst {
        double forwardMm = std::numeric_limits<double>::infinity();
        double crank = 0.0;
        double round = 0.0;
        double steer = 0.0;
        double ring = 0.0;
    };

    [[nodiscard]] Worst worst() const
    {
        const Worst coarse =
            scan({0.0, 60.0, 2.5}, {0.0, 90.0, 10.0}, {35.0, 35.0, 2.0}, {0.0, 60.0, 1.5});
        return scan({coarse.crank, 4.0, 0.5}, {coarse.round, 15.0, 1.0}, {coarse.steer, 4.0, 0.25},
                    {coarse.ring, 3.0, 0.25});
    }

    /// Whether any spot of the shoe, at any crank angle, is inside the wheel held at one angle.
    [[nodiscard]] bool touchesAt(double steerDeg) const
    {
        for (double crank = -60.0; crank <= 60.0; crank += 1.0)
            for (double round = -90.0; round <= 90.0; round += 1.5)
                if (inside(spot(crank, round), steerDeg))
                    return true;
        return false;
    }

private:
    struct Steps {
        double about, beside, step; ///< degrees
    };

    [[nodiscard]] Spot spot(double crankDeg, double roundDeg) const
    {
        return shoeSpot(m_shoe, m_pedalling, Angle::degrees(crankDeg), Angle::degrees(roundDeg));
    }
    [[nodiscard]] Eigen::AngleAxisd turn(double steerDeg) const
    {
        // The back of the wheel goes to the right.
        return {Angle::degrees(steerDeg).rad(), m_axis};
    }

    template <typename Visit> static void over(const Steps& steps, Visit&& visit)
    {
        for (double at = steps.about - steps.beside; at <= steps.about + steps.beside + 1e-9;
             at += steps.step)
            visit(at);
    }

    [[nodiscard]] Worst scan(const Steps& cranks, const Steps& rounds, const Steps& steers,
                             const Steps& rings) const
    {
        std::vector<std::pair<Worst, Spot>> spots;
        over(cranks, [&](double crank) {
            over(rounds, [&](double round) {
                spots.push_back({{0.0, crank, round, 0.0, 0.0}, spot(crank, round)});
            });
        });
        Worst worst;
        over(steers, [&](double steer) {
            const Eigen::Matrix3d turned = turn(steer).toRotationMatrix();
            if (m_wheel.halfWidthMm > 0.0) {
                for (const auto& [place, at] : spots)
                    take(worst, place, steer, 0.0, toDrum(at, turned));
                return;
            }
            over(rings, [&](double ring) {
                const double angle = Angle::degrees(ring).rad();
                const double radius = m_wheel.radiusMm - m_wheel.sectionMm;
                const Spot straight =
                    m_axle + radius * (-std::cos(angle) * m_ahead + std::sin(angle) * m_axis);
                const Spot centre = m_onAxis + turned * (straight - m_onAxis);
                for (const auto& [place, at] : spots) {
                    const double beside =
                        std::pow(centre.y() - at.y(), 2) + std::pow(centre.z() - at.z(), 2);
                    const double square = m_wheel.sectionMm * m_wheel.sectionMm - beside;
                    if (square >= 0.0)
                        take(worst, place, steer, ring, centre.x() - std::sqrt(square) - at.x());
                }
            });
        });
        return worst;
    }

    static void take(Worst& worst, const Worst& place, double steer, double ring, double forward)
    {
        if (forward < worst.forwardMm)
            worst = {forward, place.crank, place.round, steer, ring};
    }

    /// Straight ahead from a spot to a drum of the mudguard's radius and width, through its tread
    /// or its side.
    [[nodiscard]] double toDrum(const Spot& at, const Eigen::Matrix3d& turned) const
    {
        const Spot from = turned.transpose() * (at - m_onAxis) + m_onAxis - m_axle;
        const Spot forward = turned.transpose() * Spot::UnitX();
        const double radius = m_wheel.radiusMm;
        const double half = m_wheel.halfWidthMm;
        double first = std::numeric_limits<double>::infinity();
        const double a = forward.head<2>().squaredNorm();
        const double b = from.head<2>().dot(forward.head<2>());
        const double c = from.head<2>().squaredNorm() - radius * radius;
        if (const double square = b * b - a * c; square >= 0.0) {
            const double x = (-b - std::sqrt(square)) / a;
            if (std::abs(from.z() + x * forward.z()) <= half)
                first = x;
        }
        for (const double side : {-half, half}) {
            const double x = (side - from.z()) / forward.z();
            if ((from + x * forward).head<2>().norm() <= radius)
                first = std::min(first, x);
        }
        return first;
    }

    [[nodiscard]] bool inside(const Spot& at, double steerDeg) const
    {
        const Spot from = turn(steerDeg).inverse() * (at - m_onAxis) + m_onAxis - m_axle;
        const double radial = from.head<2>().norm();
        if (m_wheel.halfWidthMm > 0.0)
            return radial <= m_wheel.radiusMm && std::abs(from.z()) <= m_wheel.halfWidthMm;
        const double ring = m_wheel.radiusMm - m_wheel.sectionMm;
        return std::hypot(std::max(0.0, radial - ring), from.z()) <= m_wheel.sectionMm;
    }

    SweptWheel m_wheel;
    ShoeOutline m_shoe;
    Pedalling m_pedalling;
    Eigen::Vector3d m_axis, m_ahead, m_axle, m_onAxis;
};

} // namespace tripoise::test
