// SPDX-License-Identifier: MIT
//
// How the sizes to choose from are told: by their rank, or that they do not fit.
#pragma once

#include "advice/fit.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString rankSign(int rank); ///< a figure in a ring, as far as there are such
/// "M, rank 1"; for those who do not see the sign.
[[nodiscard]] QString rankedSize(const QString& name, int rank);
[[nodiscard]] QString unfitSize(const QString& name, FitState state); ///< "XL, too large"

} // namespace tripoise
