// SPDX-License-Identifier: MIT
//
// A number with its uncertainty and where it comes from.
#pragma once

namespace tripoise {

enum class Origin {
    Given,   ///< measured or read off the maker's table
    Derived, ///< follows from given numbers
    Assumed, ///< a default, because nothing given determines it
};

struct Estimate {
    double value = 0.0;
    double sd = 0.0;
    Origin origin = Origin::Assumed;

    bool operator==(const Estimate&) const = default;
};

} // namespace tripoise
