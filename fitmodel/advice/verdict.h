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

/// What a rider notices against a size other than the named one, strongest first.
[[nodiscard]] std::vector<Reason> costsOf(const Candidate& other, const Candidate& named,
                                          const Basis& basis);

} // namespace tripoise::advice
