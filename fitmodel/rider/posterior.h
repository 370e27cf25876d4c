// SPDX-License-Identifier: MIT
//
// From any subset of measurements to the whole body, as a distribution.
//
// Each measurement is a row H x of the base variables with its own variance; the body is the
// conditional Gaussian given all rows, by sex, over the survey's means and covariances
// (ANSUR II, Gordon et al. 2014, NATICK/TR-15/007; figures in assets/anthropometry.json). Only the
// block of measured rows is ever inverted. Valid for grown riders; the survey's people were fit
// soldiers of 17 to 58, not cyclists.
//
// Body mass conditions nothing but itself: given stature and inseam it lowers no error worth having
// (trochanter, women, 15.0 to 14.7 mm; men not at all), and at 118 kg it would raise a saddle by
// 25 mm. An entry that the others make too unlikely is a slip, and left out: the rest of the body
// says what would be expected in its place. Two readings that agree are believed as far as one slip
// twice is unlikely; a stature is doubted last, and never against one other entry alone.
#pragma once

#include "base/finding.h"
#include "rider/measurements.h"

#include <Eigen/Core>

#include <span>

namespace tripoise {

using BaseVector = Eigen::Matrix<double, baseVariableCount, 1>;
using BaseMatrix = Eigen::Matrix<double, baseVariableCount, baseVariableCount>;

struct Population {
    BaseVector mean = BaseVector::Zero();
    BaseMatrix covariance = BaseMatrix::Zero();
};

struct Populations {
    Population female;
    Population male;
    Population balanced;       ///< both sexes at equal weight, when sex is not stated
    double unusualOdds = 0.0;  ///< one in so many, from which an entry or a body is worth a word
    double statureSlips = 0.0; ///< how often a stature is told wrongly, a share of other entries
};

struct Posterior {
    BaseVector mean = BaseVector::Zero();
    BaseMatrix covariance = BaseMatrix::Zero();
    /// A factor L with L L' = covariance, for sampling bodies as mean + L z.
    BaseMatrix factor = BaseMatrix::Zero();
    Findings findings;             ///< entries left out with the odds against them, an unusual body
    std::vector<Quantity> doubted; ///< entries left out

    [[nodiscard]] double valueOf(Quantity base) const { return mean(static_cast<int>(base)); }
    /// Standard deviation of a linear combination of base variables.
    [[nodiscard]] double sdOf(const BaseVector& row) const;
};

/// The base variables a quantity sums, as a row.
[[nodiscard]] BaseVector rowOf(Quantity quantity);

/// How many standard deviations an inseam lies from what goes with a stature.
[[nodiscard]] double inseamSds(double statureMm, double inseamMm, std::optional<Sex> sex,
                               const Populations& populations);

/// `sex` empty stands for the balanced population. Never fails: what is odd is found and named, not
/// refused.
[[nodiscard]] Posterior infer(std::span<const Measurement> measurements, std::optional<Sex> sex,
                              const Populations& populations, const TapeTable& tape);

} // namespace tripoise
