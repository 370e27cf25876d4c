// SPDX-License-Identifier: MIT
//
// One size of a table by a generic least-squares solver: Levenberg-Marquardt of Eigen's unsupported
// modules, with numerical derivatives.
#pragma once

#include "random_table.h"

#include "frame/adjustment.h"

#include <unsupported/Eigen/NonLinearOptimization>
#include <unsupported/Eigen/NumericalDiff>

namespace tripoise::test {

/// The seven unknowns that ten columns determine, for a generic solver. What the columns read is
/// worked from the points of the frame (random_table.h), not by the equations under test.
struct TenColumns {
    using Scalar = double;
    using InputType = Eigen::VectorXd;
    using ValueType = Eigen::VectorXd;
    using JacobianType = Eigen::MatrixXd;
    enum { InputsAtCompileTime = Eigen::Dynamic, ValuesAtCompileTime = Eigen::Dynamic };

    static constexpr std::array unknowns{Column::Stack,     Column::Reach,  Column::SeatAngle,
                                         Column::HeadAngle, Column::BbDrop, Column::Chainstay,
                                         Column::ForkOffset};
    std::vector<Observation> rows;

    [[nodiscard]] int inputs() const { return static_cast<int>(unknowns.size()); }
    [[nodiscard]] int values() const { return static_cast<int>(rows.size()); }

    static TrueSize sizeAt(const Eigen::VectorXd& x)
    {
        TrueSize size;
        for (std::size_t i = 0; i < unknowns.size(); ++i)
            size.at(unknowns[i]) = x(static_cast<Eigen::Index>(i));
        size.at(Column::ForkLength) = 400.0; // plays no part in these columns
        size.at(Column::WheelRadius) = 350.0;
        measure(size);
        return size;
    }
    int operator()(const Eigen::VectorXd& x, Eigen::VectorXd& residual) const
    {
        const TrueSize size = sizeAt(x);
        for (std::size_t i = 0; i < rows.size(); ++i)
            residual(static_cast<Eigen::Index>(i)) =
                (rows[i].value - size.of(rows[i].column)) / rows[i].sd;
        return 0;
    }
};

inline TrueSize solvedGenerically(const TenColumns& problem)
{
    Eigen::VectorXd x(problem.inputs());
    for (int i = 0; i < problem.inputs(); ++i)
        for (const Observation& row : problem.rows)
            if (row.column == TenColumns::unknowns[static_cast<std::size_t>(i)])
                x(i) = row.value;
    Eigen::NumericalDiff<TenColumns, Eigen::Central> differentiated(problem);
    Eigen::LevenbergMarquardt<decltype(differentiated)> solver(differentiated);
    solver.parameters.ftol = solver.parameters.xtol = 1e-15;
    solver.parameters.maxfev = 10000;
    solver.minimize(x);
    return TenColumns::sizeAt(x);
}

} // namespace tripoise::test
