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

/// The stem of an advised set-up that is not in stock, or one that would be worth ordering for it.
[[nodiscard]] std::optional<PartToOrder> partToOrder(const AdvisedSetup& advised,
                                                     const PreparedSize& size, SizeSearch& search,
                                                     const WeightTable& weights);

} // namespace tripoise::advice
