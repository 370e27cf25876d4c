// SPDX-License-Identifier: MIT
//
// What can be said of a rider before there is a frame to choose: an advice on a frame of ordinary
// angles (`reference_frame` in assets/weights.json). With one bar and one angle of the stem, its
// target and the frame it asks for hardly depend on the frame that they are worked out on; the rest
// of it is not to be told.
#pragma once

#include "advice/advise.h"

namespace tripoise {

/// Not solved where the box carries no cockpit on it.
[[nodiscard]] Advice firstAnswer(const Rider& rider, const Posterior& posterior,
                                 const Riding& riding, const std::optional<CurrentBike>& current,
                                 const Bicycle& bicycle, const Stock& stock, const Tables& tables,
                                 const std::stop_token& stop = {},
                                 std::optional<Position> position = {});

} // namespace tripoise
