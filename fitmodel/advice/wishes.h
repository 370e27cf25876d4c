// SPDX-License-Identifier: MIT
//
// What this rider would ask for beyond what is on the table: a frame, a part.
#pragma once

#include "advice/advise.h"

namespace tripoise::advice {

/// Back from the target grip over the stems and spacers one would rather use, on the head angle and
/// bar of an advised set-up.
[[nodiscard]] FrameAsked frameAsked(const ContactTarget& target, const Setup& setup, const Mix& mix,
                                    double statureMm, const Skeleton& skeleton,
                                    const Tables& tables);

/// The stem that can ordinarily be bought and would save most on a size, where that is worth it.
[[nodiscard]] std::optional<PartWorthBuying> partWorthBuying(const AdvisedSetup& advised,
                                                             const PreparedSize& size,
                                                             const Basis& basis,
                                                             const std::stop_token& stop = {});

} // namespace tripoise::advice
