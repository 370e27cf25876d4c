// SPDX-License-Identifier: MIT
//
// The rider in the position of one use, as points to draw.
#pragma once

#include "drawing/side_view.h"

namespace tripoise {

/// `use` must be one the set-up was advised for.
[[nodiscard]] RiderSketch sketchRider(const Person& person, const AdvisedSetup& advised, Use use,
                                      const Mix& mix, const Prepared& prepared,
                                      const Tables& tables);

} // namespace tripoise
