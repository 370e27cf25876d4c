// SPDX-License-Identifier: MIT
//
// Whether a size fits, in words.
#pragma once

#include "advice/advise.h"

#include <QString>

namespace tripoise {

[[nodiscard]] const char* keyOf(FitState state);

/// "Fits", "Too small", to stand beside a size's name.
[[nodiscard]] QString fitName(FitState state);

/// "To order: a 100 mm stem of −6°. Nothing in the box …"
[[nodiscard]] QString toOrderSentence(const PartToOrder& part);

/// What its class comes from, a whole sentence; empty for one that simply fits.
[[nodiscard]] QString fitSentence(const Candidate& candidate, const Prepared& prepared);

} // namespace tripoise
