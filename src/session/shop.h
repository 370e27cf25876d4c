// SPDX-License-Identifier: MIT
//
// What a shop keeps from one fitting to the next: its box of parts, and the sizes it last had on
// the table. Each is a draft of a fitting in the program's own folder, with nothing else in it.
#pragma once

#include "document/fitting.h"

namespace tripoise::shop {

[[nodiscard]] Stock box(); ///< an ordinary one at first
void rememberBox(const Stock& box);

/// A fitting with nothing but frames and what was kept with them.
[[nodiscard]] Fitting frames();
void rememberFrames(const Fitting& fitting);
[[nodiscard]] Fitting framesOf(const Fitting& fitting);

} // namespace tripoise::shop
