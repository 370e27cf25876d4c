// SPDX-License-Identifier: MIT
//
// Which size: for each its class, its one number and its best set-up, in the order in which they
// are advised. What they mean is worked out apart from it (advice/advise.h, explain), for what is
// shown; so any number of bodies can be asked.
#pragma once

#include "advice/fit.h"

namespace tripoise {

struct SizeAnswer {
    std::size_t size = 0; ///< index into Prepared::sizes
    SizeFit fit;
    Findings limits;              ///< broken; empty for a sound size
    std::optional<Choice> choice; ///< with its points; empty where no cockpit fits
    std::optional<Setup> setup;   ///< of `choice`
};

struct Naming {
    std::vector<SizeAnswer> sizes;    ///< by class, then by points; the first is named if it fits
    std::vector<SizeSearch> searches; ///< in the order of Prepared::sizes, to be asked further
};

/// Stopped, it returns early and its result is not to be used.
[[nodiscard]] Naming nameSize(const Basis& basis, const std::stop_token& stop = {});

} // namespace tripoise
