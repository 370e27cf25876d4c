// SPDX-License-Identifier: MIT
#pragma once

#include "base/problem.h"

#include <QString>

namespace tripoise {

/// What is there and what would be accepted, without the path.
[[nodiscard]] QString reasonOf(const Problem& problem);

/// One line: the path, what is there, what would be accepted.
[[nodiscard]] QString sentence(const Problem& problem);

} // namespace tripoise
