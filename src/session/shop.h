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
/// A fitting with nothing but the box, an ordinary one at first; one of version 1 has the shop's
/// saddle and pedals too.
[[nodiscard]] Fitting box(KnownBox& known);
[[nodiscard]] Saving rememberBox(const Stock& box, KnownBox& known);

/// A fitting with nothing but frames, what was kept with them, and the bicycle but for what is
/// chosen for each rider.
[[nodiscard]] Fitting frames();
void rememberFrames(const Fitting& fitting);
[[nodiscard]] Fitting framesOf(const Fitting& fitting);

} // namespace tripoise::shop
