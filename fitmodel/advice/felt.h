// SPDX-License-Identifier: MIT
//
// Which differences between two sizes a rider notices: only these are told as reasons.
#pragma once

#include "advice/advise.h"

namespace tripoise::advice {

/// The two of a reason.
struct Pair {
    const Candidate& named;
    const Candidate& other;
    const PreparedSize& namedSize;
    const PreparedSize& otherSize;
    double toeRoomMm = 0.0; ///< clear by this, no shoe touches
};

/// The length of a seat post and the width of a bar never are one: either can be exchanged.
[[nodiscard]] bool felt(const Reason& reason, const Pair& pair, const FeltTable& table);

} // namespace tripoise::advice
