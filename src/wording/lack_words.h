// SPDX-License-Identifier: MIT
//
// What a decision still needs, as one would ask for it.
#pragma once

#include "document/lacks.h"

#include <QStringList>

namespace tripoise {

/// "Type height and inseam."; one sentence a place to look at, in the order of a visit.
/// `tooMany` says which lists are long, where sizes and box make too many set-ups.
[[nodiscard]] QStringList lackSentences(const std::vector<Lack>& lacks,
                                        const std::optional<Problem>& tooMany = {});

} // namespace tripoise
