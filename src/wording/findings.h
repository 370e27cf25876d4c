// SPDX-License-Identifier: MIT
#pragma once

#include "base/finding.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString keyOf(FindingCode code);  ///< "post_too_short", for documents
[[nodiscard]] QString keyOf(Severity severity); ///< "caution"
[[nodiscard]] QString sentence(const Finding& finding);

} // namespace tripoise
