// SPDX-License-Identifier: MIT
//
// Why this size, to the rider: a few reasons, each with its picture.
#pragma once

#include "story/reason_picture.h"

#include <vector>

namespace tripoise {

struct PicturedReason {
    ReasonPicture picture = {};
    QString title;
    QString words;
};

/// What the decision says, in its words; then what may hurt; then what is as it should be. At most
/// three, no picture twice; none where no size is looked at.
[[nodiscard]] std::vector<PicturedReason> reasonsOf(const RiderStory& story);

} // namespace tripoise
