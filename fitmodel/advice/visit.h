// SPDX-License-Identifier: MIT
//
// A rider seen again on the bicycle that was built for them.
#pragma once

#include "base/change.h"
#include "base/complaint.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

/// What was changed at a visit, from where it was; mm.
struct Moved {
    double saddleUpMm = 0.0;    ///< along the line from the bottom bracket
    double saddleBackMm = 0.0;  ///< level
    double barUpMm = 0.0;       ///< plumb
    double barBackMm = 0.0;     ///< level, towards the rider
    std::optional<Change> step; ///< what of the proposals it was
    std::string part;           ///< changed, in the builder's words

    bool operator==(const Moved&) const = default;
};

struct Visit {
    std::string date; ///< base/day.h
    std::vector<Complaint> says;
    std::vector<std::string> otherSays; ///< in words of their own
    Moved changed;
    std::string notes;

    bool operator==(const Visit&) const = default;
};

} // namespace tripoise
