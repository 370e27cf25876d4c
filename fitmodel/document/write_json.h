// SPDX-License-Identifier: MIT
//
// Values as a document writes them.
#pragma once

#include "base/angle.h"
#include "document/json_text.h"

#include <vector>

namespace tripoise::document {

/// Degrees that read back as exactly this angle; the shortest of those near by.
[[nodiscard]] double degreesOf(Angle angle);
[[nodiscard]] Json numbers(const std::vector<double>& values);
/// A document's text: UTF-8, indented; bytes that are none are replaced.
[[nodiscard]] std::string textOf(const Json& json);

} // namespace tripoise::document
