// SPDX-License-Identifier: MIT
//
// What gives the toe more room, in words.
#pragma once

#include "wording/sections.h"

namespace tripoise {

[[nodiscard]] QString keyOf(RemedyKind kind);

/// "165 mm cranks", "the L", "no mudguard"
[[nodiscard]] QString remedyName(const ToeRemedy& remedy, const Prepared& prepared);
/// "165 mm cranks: 16 mm overlap; leverage −3 %, pedal meets the ground at 27° of lean."
[[nodiscard]] QString remedySentence(const ToeRemedy& remedy, const Prepared& prepared);
/// Empty where no shoe may touch.
[[nodiscard]] Section remediesSection(const Candidate& candidate, const Prepared& prepared);

} // namespace tripoise
