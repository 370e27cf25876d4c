// SPDX-License-Identifier: MIT
//
// Pieces of JSON Schema (draft 7) that rows of fields are described with.
#pragma once

#include "document/json_text.h"
#include "document/limits.h"
#include "rider/measurements.h"

namespace tripoise::document {

[[nodiscard]] Json numberSchema(const Limits& limits, bool needed, std::string_view about);
[[nodiscard]] Json listSchema(Json items, const Count& count, bool needed);

/// The schema of a document whose own fields are these.
[[nodiscard]] std::string schemaText(std::string_view format, std::string_view title,
                                     const Json& fields, const TapeTable& tape);

} // namespace tripoise::document
