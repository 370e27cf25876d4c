// SPDX-License-Identifier: MIT
//
// What a number, or the length of a list, may be.
#pragma once

#include <cstddef>
#include <string_view>

namespace tripoise {

/// The unit is "mm", "kg", "deg" or empty.
struct Limits {
    double low = 0.0;
    double high = 0.0;
    std::string_view unit;
};

struct Count {
    std::size_t least = 0;
    std::size_t most = 0;
};

} // namespace tripoise
