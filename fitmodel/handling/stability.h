// SPDX-License-Identifier: MIT
//
// Does the bicycle keep itself upright, and between which speeds?
//
// The linear Whipple-Carvallo model as given by Meijaard, Papadopoulos, Ruina & Schwab 2007, Proc R
// Soc A 463:1955, appendix A: two wheels, a rear frame that the rider is part of, a front assembly,
// rolling upright without slip. With q = (lean, steer) about straight running at speed v,
//
//     M q'' + v C1 q' + (g K0 + v^2 K2) q = 0,
//
// whose characteristic polynomial A s^4 + B s^3 + C s^2 + D s + E has coefficients that are
// polynomials of v. So both limits of the self-steady band are closed form: E = 0 gives the capsize
// speed, and B C D = A D^2 + E B^2 (Routh) the weave speed; each is linear or quadratic in v^2.
//
// Valid for hands off, small angles, rigid tyres and riders. A rider's hands and legs do more than
// this: the figures compare one bicycle with another and certify nothing. The published benchmark
// is met to the last printed digit (tests/reference/benchmark_*.csv).
#pragma once

#include "handling/rigid_body.h"

#include <Eigen/Core>

#include <array>
#include <complex>
#include <optional>
#include <vector>

namespace tripoise {

struct RollingWheel {
    double radiusMm = 0.0;
    double massKg = 0.0;
    double acrossKgMm2 = 0.0; ///< inertia about a diameter
    double spinKgMm2 = 0.0;   ///< inertia about the axle

    bool operator==(const RollingWheel&) const = default;
};

/// The bicycle of the model, standing upright with its rear contact at the origin.
struct WhippleBicycle {
    double wheelbaseMm = 0.0;
    double trailMm = 0.0;
    Angle headAngle;
    double gravityMmS2 = 0.0;
    RollingWheel rearWheel;
    RollingWheel frontWheel;
    RigidBody rear;  ///< frame, rider and what is fixed to it
    RigidBody front; ///< fork, stem, bar and what turns with them
};

/// Lengths in mm, so M is in kg mm^2, C1 and K0 in kg mm, K2 in kg.
struct WhippleModel {
    Eigen::Matrix2d mass = Eigen::Matrix2d::Zero();       ///< M
    Eigen::Matrix2d damping = Eigen::Matrix2d::Zero();    ///< C1
    Eigen::Matrix2d standing = Eigen::Matrix2d::Zero();   ///< K0
    Eigen::Matrix2d travelling = Eigen::Matrix2d::Zero(); ///< K2
    double gravityMmS2 = 0.0;
};

/// Empty where there is no such bicycle: no wheelbase, a wheel without radius, or masses that
/// cannot be (the mass matrix is not positive definite).
[[nodiscard]] std::optional<WhippleModel> whippleModel(const WhippleBicycle& bicycle);

/// The four roots at a speed, 1/s, by falling real part; a pair's positive imaginary part first.
using Roots = std::array<std::complex<double>, 4>;
[[nodiscard]] Roots rootsAt(const WhippleModel& model, double speedMmS);

struct RootsAtSpeed {
    double speedMmS = 0.0;
    Roots roots;
};
/// Even steps from standing to a speed, both included; for the picture.
[[nodiscard]] std::vector<RootsAtSpeed> rootsOver(const WhippleModel& model, double toSpeedMmS,
                                                  std::size_t steps);

/// Two real roots meet and begin to swing.
struct DoubleRoot {
    double speedMmS = 0.0;
    double root = 0.0; ///< 1/s
};

struct SelfStability {
    std::optional<DoubleRoot>
        swingBegins;                  ///< where weaving begins; below it the bicycle just falls
    std::optional<double> weaveMmS;   ///< weaving dies out above
    std::optional<double> capsizeMmS; ///< leans ever further above, slowly
    /// Whether there is a band in which the bicycle is steady by itself: from the weave speed to
    /// the capsize speed, or on without end where there is none.
    bool steady = false;
};
[[nodiscard]] SelfStability selfStability(const WhippleModel& model);

} // namespace tripoise
