// SPDX-License-Identifier: MIT
//
// Puts back what a document held and this program does not use.
#pragma once

#include "document/fitting.h"
#include "document/json_text.h"

namespace tripoise::document {

/// Adds a kept piece at its place; one whose place is gone is dropped.
void putBack(Json& root, const KeptJson& piece);

} // namespace tripoise::document
