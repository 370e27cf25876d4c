// SPDX-License-Identifier: MIT
//
// How the sizes to choose from are told: by their rank, or that they break a limit.
#pragma once

#include <QString>

namespace tripoise {

[[nodiscard]] QString rankSign(int rank); ///< a figure in a ring, as far as there are such
/// "M, rank 1"; for those who do not see the sign.
[[nodiscard]] QString rankedSize(const QString& name, int rank);
[[nodiscard]] QString brokenSize(const QString& name); ///< "XL, breaks a limit"

} // namespace tripoise
