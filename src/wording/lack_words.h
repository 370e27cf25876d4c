// SPDX-License-Identifier: MIT
//
// What a decision still needs, as one would ask for it.
#pragma once

#include "document/lacks.h"

#include <QStringList>

namespace tripoise {

/// "Type height and inseam."; one sentence a place to look at, in the order of a visit.
[[nodiscard]] QStringList lackSentences(const std::vector<Lack>& lacks);

} // namespace tripoise
