// SPDX-License-Identifier: MIT
//
// What is told about how a set-up rides: wheel, heel, knee, balance, steadiness.
#pragma once

#include "base/finding.h"

#include <QString>

namespace tripoise {

/// Of the codes about riding alone (base/finding.h); `sentence` asks here.
[[nodiscard]] QString rideSentence(const Finding& finding);

} // namespace tripoise
