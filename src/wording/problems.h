// SPDX-License-Identifier: MIT
#pragma once

#include "base/problem.h"

#include <QString>

namespace tripoise {

/// One line: the path, what is there, what would be accepted.
[[nodiscard]] QString sentence(const Problem& problem);

} // namespace tripoise
