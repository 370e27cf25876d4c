// SPDX-License-Identifier: MIT
//
// How each quantity is taken: from where to where, and what to mind.
#pragma once

#include "rider/measurements.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString datumOf(Quantity quantity);   ///< "floor to crown, barefoot"
[[nodiscard]] QString howToTake(Quantity quantity); ///< one or two sentences

} // namespace tripoise
