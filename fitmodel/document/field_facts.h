// SPDX-License-Identifier: MIT
//
// What a form needs to know of a document's number, by its member (document/field_table.h).
#pragma once

#include "cockpit/parts.h"
#include "document/limits.h"

namespace tripoise {

struct FieldFacts {
    Limits limits;
    double step = 1.0;
    int decimals = 1;
    bool needed = false; ///< a document cannot be without it
};

template <typename Whole, typename Value> [[nodiscard]] FieldFacts factsOf(Value Whole::*member);

/// Of the pieces in a list of the box.
[[nodiscard]] FieldFacts pieceFacts(std::vector<double> Stock::*member);

} // namespace tripoise
