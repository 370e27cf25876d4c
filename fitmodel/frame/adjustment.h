// SPDX-License-Identifier: MIT
//
// One size brought to agreement: weighted least squares over all its columns at once.
//
// Gauss-Newton on the equations of `frame/equations.h`, each row divided by its sd, each unknown
// counted in ordinary spreads from its ordinary value. A complete orthogonal decomposition
// (rank-revealing QR; Golub & Van Loan, Matrix Computations, 5.5) tells which combinations of
// unknowns the columns determine better than ordinary frames do. Of the others the ordinary value
// nearest to agreement is taken, and its ordinary spread is their sd: the weak ones, of which the
// columns tell less than that, and the open ones, of which they tell nothing. Redundancy numbers
// and standardised residuals are those of Baarda (1968), A testing procedure for use in geodetic
// networks. Where everything is determined the solution is the plain least-squares one, to 1e-11 of
// a spread.
#pragma once

#include "frame/equations.h"

#include <span>

namespace tripoise {

/// What the unknowns of ordinary frames are, and how much they vary.
struct Ordinary {
    Unknowns mean = Unknowns::Zero();
    Unknowns sd = Unknowns::Ones();
};

struct Observation {
    Column column = Column::Stack;
    double value = 0.0;
    double sd = 1.0;
};

inline constexpr int mostObservations = 32;

struct Adjustment {
    using PerRow = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, mostObservations, 1>;
    using UnknownsBy =
        Eigen::Matrix<double, unknownCount, Eigen::Dynamic, 0, unknownCount, unknownCount>;

    bool converged = false;
    Unknowns at = Unknowns::Zero();
    PerRow residual;   ///< given less reading, in sd of the row
    PerRow redundancy; ///< share of an error in this row that shows in its own residual, 0 to 1
    double chiSquared = 0.0;
    int freedom = 0; ///< rows beyond what the determined unknowns take
    Unknowns scale = Unknowns::Ones();
    UnknownsBy known;    ///< root of the covariance of what is determined, in `scale`
    UnknownsBy ordinary; ///< orthonormal, what is taken as ordinary, in `scale`
    UnknownsBy open;     ///< orthonormal, the part of that of which the rows tell nothing

    /// What an error in this row would look like: its residual over its sd.
    [[nodiscard]] double standardised(int row) const;
};

/// At most `mostObservations` rows; the others are left out.
[[nodiscard]] Adjustment adjust(std::span<const Observation> rows, const Ordinary& ordinary);

/// A column worked out of an adjustment.
struct Reckoned {
    double value = 0.0;
    double sd = 0.0;
    bool determined = false; ///< follows from the rows; else what is ordinary decides
};

[[nodiscard]] Reckoned reckon(Column column, const Adjustment& adjustment);

} // namespace tripoise
