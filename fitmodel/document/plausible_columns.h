// SPDX-License-Identifier: MIT
#pragma once

#include "base/range.h"
#include "frame/columns.h"

namespace tripoise::document {

/// What can be believed of a column, by `plausible.h`.
[[nodiscard]] Range plausibleOf(Column column);

} // namespace tripoise::document
