// SPDX-License-Identifier: MIT
//
// Which size is named, how surely, and why.
#pragma once

#include "advice/advise.h"

namespace tripoise::advice {

/// `candidates` in rank order, the first with a set-up; `searches` one a size of `prepared`, asked
/// again under other weights.
[[nodiscard]] Verdict verdictOf(const std::vector<Candidate>& candidates,
                                std::vector<SizeSearch>& searches, const Basis& basis);

} // namespace tripoise::advice
