// SPDX-License-Identifier: MIT
#include "frame/adjustment.h"

#include <Eigen/QR>

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise {
namespace {

using Design =
    Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, mostObservations, unknownCount>;
using Square = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, unknownCount, unknownCount>;
using Active = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, unknownCount, 1>;

constexpr double leastRedundancy = 1e-6;
constexpr double enough = 1e-7; // step, in spreads; the next would be a thousandth of it
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
          m_ordinary(ordinary), m_residual(m_rows.size())
    {
        m_result.at = start(m_rows, ordinary);
        m_result.scale = ordinary.sd;
        hold(m_result.at);
        findActive();
        m_design.resize(static_cast<Eigen::Index>(m_rows.size()), m_active.size());
        iterate();
        judge();
    }

    Adjustment take() { return std::move(m_result); }

private:
    /// The unknowns that any row depends on; the others stay as they are.
    void findActive()
    {
        Unknowns touched = Unknowns::Zero();
        for (const Observation& row : m_rows)
            touched += readingOf(row.column, m_ordinary.mean).gradient.cwiseAbs()
                       + readingOf(row.column, m_result.at).gradient.cwiseAbs();
        for (int i = 0; i < unknownCount; ++i)
            (touched(i) > 0.0 ? m_active : m_idle).push_back(i);
    }

    void linearise()
    {
        for (int i = 0; i < m_design.rows(); ++i) {
            const Observation& row = m_rows[static_cast<std::size_t>(i)];
            const Reading reading = readingOf(row.column, m_result.at);
            m_residual(i) = (row.value - reading.value) / row.sd;
            for (int j = 0; j < m_active.size(); ++j)
                m_design(i, j) =
                    reading.gradient(m_active[j]) * m_ordinary.sd(m_active[j]) / row.sd;
        }
    }

    /// A direction that the columns tell less of than a spread is not determined by them.
    void decompose()
    {
        const double longest = m_design.colwise().norm().maxCoeff();
        m_decomposition.setThreshold(longest > 1.0 ? 1.0 / longest : 1.0);
        m_decomposition.compute(m_design);
    }

    /// Solves for the unknowns themselves, not for the step, so that the shortest solution is the
    /// one nearest to ordinary.
    void iterate()
    {
        m_result.converged = m_rows.empty();
        for (int step = 0; step < mostSteps && !m_result.converged; ++step) {
            linearise();
            decompose();
            Active away(m_active.size());
            for (int j = 0; j < m_active.size(); ++j)
                away(j) = (m_result.at(m_active[j]) - m_ordinary.mean(m_active[j]))
                          / m_ordinary.sd(m_active[j]);
            const Adjustment::PerRow wanted = m_residual + m_design * away;
            const Active solved = m_decomposition.solve(wanted);
            Unknowns next = m_result.at;
            for (int j = 0; j < m_active.size(); ++j)
                next(m_active[j]) =
                    m_ordinary.mean(m_active[j]) + solved(j) * m_ordinary.sd(m_active[j]);
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
            result.open = result.ordinary = embedded({}, true);
            result.known.resize(unknownCount, 0);
            return;
        }
        if (!result.converged) // else it is that of the last step
            decompose();
        const auto rank = m_decomposition.rank();
        result.chiSquared = m_residual.squaredNorm();
        result.freedom = count - static_cast<int>(rank);

        // design = Q [T 0; 0 0] Z permuted: rows of Z beyond the rank are what is not determined.
        const Square axes = turned();
        Square inverse = Square::Identity(rank, rank);
        m_decomposition.matrixT()
            .topLeftCorner(rank, rank)
            .template triangularView<Eigen::Upper>()
            .solveInPlace(inverse);
        const Square known = axes.leftCols(rank) * inverse;
        result.known = embedded(known, false);
        result.ordinary = embedded(axes.rightCols(m_active.size() - rank), true);

        const Design fitted = m_design * known; // orthonormal columns
        for (int i = 0; i < count; ++i)
            result.redundancy(i) = std::max(0.0, 1.0 - fitted.row(i).squaredNorm());
        result.open = rank == m_active.size() ? result.ordinary : open();
    }

    /// Of what is ordinary, the part that is so for want of any row.
    [[nodiscard]] Adjustment::UnknownsBy open()
    {
        m_decomposition.setThreshold(nothing);
        m_decomposition.compute(m_design);
        return embedded(turned().rightCols(m_active.size() - m_decomposition.rank()), true);
    }

    /// Z is not made where nothing is left to turn (Eigen 3.4).
    [[nodiscard]] Square turned() const
    {
        Square axes = m_decomposition.colsPermutation();
        if (m_decomposition.rank() < m_active.size())
            axes = axes * m_decomposition.matrixZ().transpose();
        return axes;
    }

    /// Directions among the active unknowns as directions among all; the idle ones may join.
    [[nodiscard]] Adjustment::UnknownsBy embedded(const Square& directions, bool withIdle) const
    {
        const auto own = directions.cols();
        Adjustment::UnknownsBy all =
            Adjustment::UnknownsBy::Zero(unknownCount, own + (withIdle ? m_idle.size() : 0));
        for (int i = 0; i < directions.rows(); ++i)
            all.row(m_active[i]).head(own) = directions.row(i);
        if (withIdle)
            for (int i = 0; i < m_idle.size(); ++i)
                all(m_idle[i], own + i) = 1.0;
        return all;
    }

    /// A few numbers of unknowns, without the heap.
    struct Few {
        std::array<int, unknownCount> numbers{};
        int count = 0;

        void push_back(int number) { numbers[static_cast<std::size_t>(count++)] = number; }
        [[nodiscard]] int size() const { return count; }
        int operator[](int i) const { return numbers[static_cast<std::size_t>(i)]; }
    };

    std::span<const Observation> m_rows;
    const Ordinary& m_ordinary;
    Few m_active;
    Few m_idle;
    Design m_design;
    Adjustment::PerRow m_residual;
    Eigen::CompleteOrthogonalDecomposition<Design> m_decomposition;
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
    const bool degrees = unitOf(column) == Unit::Degree;
    return {reading.value, std::hypot(known, ordinary),
            open <= openMost && ordinary <= (degrees ? ordinaryMostDeg : ordinaryMostMm)};
}

} // namespace tripoise
