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

namespace {

/// One measurement as a row of the base variables.
struct Entry {
    const Measurement* measurement;
    BaseVector row;
    PooledReading reading;
    double residual = 0.0;
};

/// A population given some entries.
struct Conditioned {
    BaseVector mean;
    BaseMatrix covariance;
    Eigen::VectorXd explained;
    Eigen::MatrixXd inverse;
    double squares = 0.0;
};

Conditioned conditioned(const Population& population, const std::vector<Entry>& entries)
{
    Conditioned result{population.mean, population.covariance, {}, {}, 0.0};
    const auto count = static_cast<Eigen::Index>(entries.size());
    if (count == 0)
        return result;
    Eigen::MatrixXd rows(count, baseVariableCount);
    Eigen::VectorXd residual(count);
    for (Eigen::Index i = 0; i < count; ++i) {
        rows.row(i) = entries[static_cast<std::size_t>(i)].row.transpose();
        residual(i) = entries[static_cast<std::size_t>(i)].residual;
    }
    const Eigen::MatrixXd cross = rows * population.covariance;
    Eigen::MatrixXd seen = cross * rows.transpose();
    for (Eigen::Index i = 0; i < count; ++i)
        seen(i, i) += entries[static_cast<std::size_t>(i)].reading.variance;
    result.inverse = seen.ldlt().solve(Eigen::MatrixXd::Identity(count, count));
    result.explained = result.inverse * residual;
    result.squares = residual.dot(result.explained);
    result.mean += cross.transpose() * result.explained;
    result.covariance -= cross.transpose() * result.inverse * cross;
    result.covariance = (0.5 * (result.covariance + result.covariance.transpose())).eval();
    return result;
}

/// The entry that is most probably a slip, and what the others foretell in its place.
struct Slip {
    std::size_t entry = 0;
    double odds = 0.0;
    double expected = 0.0;
};

std::optional<Slip> likeliestSlip(const std::vector<Entry>& entries, const Conditioned& given,
                                  const Populations& populations)
{
    std::optional<Slip> likeliest;
    double most = 0.0;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const auto at = static_cast<Eigen::Index>(i);
        const double z = given.explained(at) / std::sqrt(given.inverse(at, at));
        const Measurement& measurement = *entries[i].measurement;
        const bool stature = measurement.quantity == Quantity::Stature;
        if (stature && entries.size() < 3) // one other against it doubts itself
            continue;
        const double share = stature ? populations.statureSlips : 1.0;
        const double twice = measurement.readings.size() > 1 ? populations.unusualOdds : 1.0;
        const double odds = oddsAgainst(z);
        if (odds < populations.unusualOdds * twice / share)
            continue;
        const double evidence = z * z + 2.0 * std::log(share);
        if (likeliest && evidence <= most)
            continue;
        most = evidence;
        likeliest = {i, odds,
                     entries[i].reading.mean - given.explained(at) / given.inverse(at, at)};
    }
    return likeliest;
}

/// A weight that was taken is that weight, and says nothing of lengths.
void takeMass(const PooledReading& reading, Posterior& posterior)
{
    const int mass = static_cast<int>(Quantity::Mass);
    posterior.mean(mass) = reading.mean;
    posterior.covariance.row(mass).setZero();
    posterior.covariance.col(mass).setZero();
    posterior.covariance(mass, mass) = reading.variance;
}

} // namespace

Posterior infer(std::span<const Measurement> measurements, std::optional<Sex> sex,
                const Populations& populations, const TapeTable& tape)
{
    const Population& population = populationOf(sex, populations);
    Posterior result;
    std::vector<Entry> entries;
    std::optional<PooledReading> mass;
    for (const Measurement& measurement : measurements) {
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
        if (measurement.quantity == Quantity::Mass) {
            mass = reading;
            continue;
        }
        const BaseVector row = rowOf(measurement.quantity);
        entries.push_back({&measurement, row, reading, reading.mean - row.dot(population.mean)});
    }

    Conditioned given = conditioned(population, entries);
    const double bodyOdds =
        entries.empty() ? 0.0 : oddsAgainstSquares(given.squares, static_cast<int>(entries.size()));
    if (bodyOdds >= populations.unusualOdds)
        result.findings.push_back(
            {FindingCode::UnusualBody, Severity::Caution, {bodyOdds}, {}, {}});
    while (entries.size() > 1) {
        const auto slip = likeliestSlip(entries, given, populations);
        if (!slip)
            break;
        const Entry& entry = entries[slip->entry];
        const Quantity quantity = entry.measurement->quantity;
        result.doubted.push_back(quantity);
        result.findings.push_back({FindingCode::SuspiciousMeasurement,
                                   Severity::Caution,
                                   {entry.reading.mean, slip->expected, slip->odds},
                                   std::string(keyOf(quantity)),
                                   {}});
        entries.erase(entries.begin() + static_cast<std::ptrdiff_t>(slip->entry));
        given = conditioned(population, entries);
    }
    result.mean = given.mean;
    result.covariance = given.covariance;
    if (mass)
        takeMass(*mass, result);

    // Rounding leaves the covariance slightly indefinite where a variable is measured exactly, so
    // the factor comes from its eigenvalues with the negative ones taken as zero.
    const Eigen::SelfAdjointEigenSolver<BaseMatrix> eigen(result.covariance);
    result.factor =
        eigen.eigenvectors() * eigen.eigenvalues().cwiseMax(0.0).cwiseSqrt().asDiagonal();
    return result;
}

} // namespace tripoise
