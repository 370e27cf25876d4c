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

/// What its class comes from, a whole sentence; empty for one that simply fits.
[[nodiscard]] QString fitSentence(const Candidate& candidate, const Prepared& prepared);

} // namespace tripoise
