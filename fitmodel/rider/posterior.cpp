// SPDX-License-Identifier: MIT
//
//   x    base variables          mean m, covariance S (population)
//   y    measured values         y = H x + noise of variance R
//   V    H S H' + R              covariance of what can be measured
//   K    S H' V^-1               gain;  posterior mean m + K (y - H m), covariance S - K H S
//   e_i  (V^-1 r)_i, r = y - H m: e_i / sqrt((V^-1)_ii) is entry i's departure from what all other
//        entries foretell, in its own standard deviations (conditional z-score).
#include "rider/posterior.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

/// Odds against a departure this large on either side, one in so many.
double oddsAgainst(double zScore)
{
    return 1.0 / std::max(std::erfc(std::abs(zScore) / std::sqrt(2.0)), 1e-12);
}

/// Upper tail of chi-squared with k degrees of freedom, by the Wilson-Hilferty cube-root
/// approximation (1931; within a few per cent of the tail probability from 1 in 10 to 1 in 1000).
double oddsAgainstSquares(double chiSquared, int k)
{
    const double spread = 2.0 / (9.0 * k);
    const double z = (std::cbrt(chiSquared / k) - (1.0 - spread)) / std::sqrt(spread);
    return 1.0 / std::max(0.5 * std::erfc(z / std::sqrt(2.0)), 1e-12);
}

const Population& populationOf(std::optional<Sex> sex, const Populations& populations)
{
    if (!sex)
        return populations.balanced;
    return *sex == Sex::Female ? populations.female : populations.male;
}

} // namespace

double Posterior::sdOf(const BaseVector& row) const
{
    return std::sqrt(std::max(0.0, row.dot(covariance * row)));
}

BaseVector rowOf(Quantity quantity)
{
    BaseVector row = BaseVector::Zero();
    if (quantity == Quantity::ArmToGrip) {
        for (const Quantity part : {Quantity::UpperArm, Quantity::Forearm, Quantity::WristToGrip})
            row(static_cast<int>(part)) = 1.0;
    } else {
        row(static_cast<int>(quantity)) = 1.0;
    }
    return row;
}

double inseamSds(double statureMm, double inseamMm, std::optional<Sex> sex,
                 const Populations& populations)
{
    const Population& people = populationOf(sex, populations);
    const auto stature = static_cast<int>(Quantity::Stature);
    const auto inseam = static_cast<int>(Quantity::Inseam);
    const double slope = people.covariance(inseam, stature) / people.covariance(stature, stature);
    const double expected = people.mean(inseam) + slope * (statureMm - people.mean(stature));
    const double variance =
        people.covariance(inseam, inseam) - slope * people.covariance(inseam, stature);
    return (inseamMm - expected) / std::sqrt(variance);
}

Posterior infer(std::span<const Measurement> measurements, std::optional<Sex> sex,
                const Populations& populations, const TapeTable& tape)
{
    const Population& population = populationOf(sex, populations);
    Posterior result;
    result.mean = population.mean;
    result.covariance = population.covariance;

    const auto count = static_cast<Eigen::Index>(measurements.size());
    if (count > 0) {
        Eigen::MatrixXd rows(count, baseVariableCount);
        Eigen::VectorXd residual(count);
        Eigen::VectorXd variance(count);
        for (Eigen::Index i = 0; i < count; ++i) {
            const Measurement& measurement = measurements[static_cast<std::size_t>(i)];
            const PooledReading reading = pooled(measurement, tape);
            if (readingsDisagree(measurement, tape)) {
                const auto [lowest, highest] =
                    std::minmax_element(measurement.readings.begin(), measurement.readings.end());
                result.findings.push_back({FindingCode::ReadingsDisagree,
                                           Severity::Caution,
                                           {*lowest, *highest},
                                           std::string(keyOf(measurement.quantity)),
                                           {}});
            }
            rows.row(i) = rowOf(measurement.quantity).transpose();
            residual(i) = reading.mean - rows.row(i).dot(population.mean);
            variance(i) = reading.variance;
        }
        const Eigen::MatrixXd cross = rows * population.covariance;
        Eigen::MatrixXd seen = cross * rows.transpose();
        seen.diagonal() += variance;
        const Eigen::MatrixXd inverse = seen.ldlt().solve(Eigen::MatrixXd::Identity(count, count));
        const Eigen::VectorXd explained = inverse * residual;

        result.mean += cross.transpose() * explained;
        result.covariance -= cross.transpose() * inverse * cross;
        result.covariance = (0.5 * (result.covariance + result.covariance.transpose())).eval();

        const double bodyOdds =
            oddsAgainstSquares(residual.dot(explained), static_cast<int>(count));
        if (bodyOdds >= populations.unusualOdds)
            result.findings.push_back(
                {FindingCode::UnusualBody, Severity::Caution, {bodyOdds}, {}, {}});
        for (Eigen::Index i = 0; i < count; ++i) {
            const double z = explained(i) / std::sqrt(inverse(i, i));
            const double odds = oddsAgainst(z);
            if (odds < populations.unusualOdds)
                continue;
            const double found = residual(i) + rows.row(i).dot(population.mean);
            const double expected = found - explained(i) / inverse(i, i);
            const Quantity quantity = measurements[static_cast<std::size_t>(i)].quantity;
            result.findings.push_back({FindingCode::SuspiciousMeasurement,
                                       Severity::Caution,
                                       {found, expected, odds},
                                       std::string(keyOf(quantity)),
                                       {}});
        }
    }

    // Rounding leaves the covariance slightly indefinite where a variable is measured exactly, so
    // the factor comes from its eigenvalues with the negative ones taken as zero.
    const Eigen::SelfAdjointEigenSolver<BaseMatrix> eigen(result.covariance);
    result.factor =
        eigen.eigenvectors() * eigen.eigenvalues().cwiseMax(0.0).cwiseSqrt().asDiagonal();
    return result;
}

} // namespace tripoise
