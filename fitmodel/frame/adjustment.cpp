// SPDX-License-Identifier: MIT
#include "frame/adjustment.h"

#include <Eigen/QR>

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

using Design =
    Eigen::Matrix<double, Eigen::Dynamic, unknownCount, 0, mostObservations, unknownCount>;
using Decomposition = Eigen::CompleteOrthogonalDecomposition<Design>;

constexpr double leastRedundancy = 1e-6;
constexpr double enough = 1e-11; // step, in spreads
constexpr int mostSteps = 40;
constexpr double nothing = 1e-6; // of the longest column: arithmetic
// What the open and the ordinary may add to the sd of a column that still counts as determined.
constexpr double openMost = 0.02; // mm or degrees
constexpr double ordinaryMostMm = 2.5;
constexpr double ordinaryMostDeg = 0.5;

/// Keeps angles where their equations exist and lengths finite, whatever was typed.
void hold(Unknowns& at)
{
    constexpr double lowestAngle = 20.0;
    constexpr double highestAngle = 89.0;
    constexpr double farthest = 1e5;
    for (int i = 0; i < unknownCount; ++i) {
        const auto unknown = static_cast<Unknown>(i);
        const bool angle = unknown == Unknown::SeatAngle || unknown == Unknown::HeadAngle;
        at(i) = std::clamp(at(i), angle ? lowestAngle : -farthest, angle ? highestAngle : farthest);
    }
}

/// The unknowns as far as columns read them directly.
Unknowns start(std::span<const Observation> rows, const Ordinary& ordinary)
{
    Unknowns at = ordinary.mean;
    for (const Observation& row : rows)
        for (int i = 0; i < unknownCount; ++i)
            if (columnOf(static_cast<Unknown>(i)) == row.column)
                at(i) = row.value;
    return at;
}

class Solver {
public:
    Solver(std::span<const Observation> rows, const Ordinary& ordinary)
        : m_rows(rows.first(std::min<std::size_t>(rows.size(), mostObservations))),
          m_ordinary(ordinary), m_design(m_rows.size(), unknownCount), m_residual(m_rows.size())
    {
        m_result.at = start(m_rows, ordinary);
        m_result.scale = ordinary.sd;
        hold(m_result.at);
        iterate();
        judge();
    }

    Adjustment take() { return std::move(m_result); }

private:
    void linearise()
    {
        for (int i = 0; i < m_design.rows(); ++i) {
            const Observation& row = m_rows[static_cast<std::size_t>(i)];
            const Reading reading = readingOf(row.column, m_result.at);
            m_residual(i) = (row.value - reading.value) / row.sd;
            m_design.row(i) = (reading.gradient.cwiseProduct(m_ordinary.sd) / row.sd).transpose();
        }
    }

    /// A direction that the columns tell less of than a spread is not determined by them.
    void decompose()
    {
        const double longest = m_design.colwise().norm().maxCoeff();
        m_decomposition.setThreshold(longest > 1.0 ? 1.0 / longest : 1.0);
        m_decomposition.compute(m_design);
    }

    [[nodiscard]] static Adjustment::UnknownsBy turned(const Decomposition& decomposition)
    {
        return decomposition.colsPermutation() * decomposition.matrixZ().transpose();
    }

    /// Of what is ordinary, the part that is so for want of any row.
    void findOpen()
    {
        m_decomposition.setThreshold(nothing);
        m_decomposition.compute(m_design);
        m_result.open = turned(m_decomposition).rightCols(unknownCount - m_decomposition.rank());
    }

    /// Solves for the unknowns themselves, not for the step, so that the shortest solution is the
    /// one nearest to ordinary.
    void iterate()
    {
        if (m_rows.empty()) {
            m_result.converged = true;
            return;
        }
        for (int step = 0; step < mostSteps && !m_result.converged; ++step) {
            linearise();
            decompose();
            const Unknowns away = (m_result.at - m_ordinary.mean).cwiseQuotient(m_ordinary.sd);
            const Adjustment::PerRow wanted = m_residual + m_design * away;
            const Unknowns solved = m_decomposition.solve(wanted);
            Unknowns next = m_ordinary.mean + solved.cwiseProduct(m_ordinary.sd);
            hold(next);
            const double moved =
                (next - m_result.at).cwiseQuotient(m_ordinary.sd).cwiseAbs().maxCoeff();
            m_result.at = next;
            m_result.converged = moved < enough;
        }
        linearise();
    }

    void judge()
    {
        Adjustment& result = m_result;
        const auto count = static_cast<int>(m_rows.size());
        result.residual = m_residual;
        result.redundancy.resize(count);
        if (count == 0) {
            result.open = Adjustment::UnknownsBy::Identity(unknownCount, unknownCount);
            result.ordinary = result.open;
            result.known.resize(unknownCount, 0);
            return;
        }
        decompose();
        const int rank = static_cast<int>(m_decomposition.rank());
        result.chiSquared = m_residual.squaredNorm();
        result.freedom = count - rank;

        // design = Q [T 0; 0 0] Z permuted: rows of Z beyond the rank are what is not determined.
        const Adjustment::UnknownsBy axes = turned(m_decomposition);
        result.ordinary = axes.rightCols(unknownCount - rank);
        Adjustment::UnknownsBy inverse = Adjustment::UnknownsBy::Identity(unknownCount, rank);
        const auto triangle = m_decomposition.matrixT()
                                  .topLeftCorner(rank, rank)
                                  .template triangularView<Eigen::Upper>();
        inverse.topRows(rank) = triangle.solve(
            Adjustment::UnknownsBy::Identity(unknownCount, rank).topRows(rank).eval());
        result.known = axes.leftCols(rank) * inverse.topRows(rank);

        const Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, mostObservations,
                            unknownCount>
            fitted = m_design * result.known; // orthonormal columns
        for (int i = 0; i < count; ++i)
            result.redundancy(i) = std::max(0.0, 1.0 - fitted.row(i).squaredNorm());
        findOpen();
    }

    std::span<const Observation> m_rows;
    const Ordinary& m_ordinary;
    Design m_design;
    Adjustment::PerRow m_residual;
    Decomposition m_decomposition;
    Adjustment m_result;
};

} // namespace

double Adjustment::standardised(int row) const
{
    return redundancy(row) > leastRedundancy ? residual(row) / std::sqrt(redundancy(row)) : 0.0;
}

Adjustment adjust(std::span<const Observation> rows, const Ordinary& ordinary)
{
    return Solver(rows, ordinary).take();
}

Reckoned reckon(Column column, const Adjustment& adjustment)
{
    const Reading reading = readingOf(column, adjustment.at);
    const Unknowns scaled = reading.gradient.cwiseProduct(adjustment.scale);
    const double known = (adjustment.known.transpose() * scaled).norm();
    const double ordinary = (adjustment.ordinary.transpose() * scaled).norm();
    const double open = (adjustment.open.transpose() * scaled).norm();
    const bool degrees = unitOf(column) == ColumnUnit::Degree;
    return {reading.value, std::hypot(known, ordinary),
            open <= openMost && ordinary <= (degrees ? ordinaryMostDeg : ordinaryMostMm)};
}

} // namespace tripoise
