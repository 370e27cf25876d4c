// SPDX-License-Identifier: MIT
#pragma once

#include "advice/tables.h"

namespace tripoise {

/// The constant tables built into the program. That they can be read is tested; a program without them
/// cannot go on and stops.
[[nodiscard]] const Tables& shippedTables();

} // namespace tripoise
