// SPDX-License-Identifier: MIT
//
// The makers' limits that a set-up keeps or breaks. They stand apart from costs: a size that breaks
// one is listed last, however well it would fit.
#pragma once

#include "setup/setup.h"

namespace tripoise {

/// What stands on the bicycle besides its own parts, kg.
struct Load {
    double riderKg = 0.0;
    double luggageKg = 0.0;
};

/// Findings of severity Limit, one for each limit broken; empty when all are kept. `frame` gives
/// the makers' limits, `skeleton` must be its own.
[[nodiscard]] Findings brokenLimits(const FrameSize& frame, const Skeleton& skeleton,
                                    const Setup& setup, const Saddle& saddle, const Load& load,
                                    const FrameDefaults& frameDefaults,
                                    const PartDefaults& partDefaults);

} // namespace tripoise
