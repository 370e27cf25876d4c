// SPDX-License-Identifier: MIT
//
// What a shop keeps from one fitting to the next: its box of parts, and the sizes it last had on
// the table. Each is a draft of a fitting in the program's own folder, with nothing else in it.
#pragma once

#include "document/fitting.h"
#include "session/saving.h"

namespace tripoise::shop {

/// What is known to stand in the box's file.
struct KnownBox {
    QByteArray bytes;
    bool written = false; ///< by this program: no copy of it need be kept
};
[[nodiscard]] Stock box(KnownBox& known); ///< an ordinary one at first
[[nodiscard]] Saving rememberBox(const Stock& box, KnownBox& known);

/// A fitting with nothing but frames and what was kept with them.
[[nodiscard]] Fitting frames();
void rememberFrames(const Fitting& fitting);
[[nodiscard]] Fitting framesOf(const Fitting& fitting);

} // namespace tripoise::shop
