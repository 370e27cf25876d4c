// SPDX-License-Identifier: MIT
//
// How many cases a test draws. The environment's TRIPOISE_SAMPLES, in per cent of the usual count,
// makes them fewer where each takes long (under the sanitizers), or more in a run that may take
// long.
#pragma once

#include <algorithm>
#include <cstdlib>

namespace tripoise::test {

/// `usual` in an ordinary run, and at least one. A count that is asked of what was drawn takes it
/// too.
template <typename Integer> [[nodiscard]] Integer samples(Integer usual)
{
    static const double percent = [] {
        const char* given = std::getenv("TRIPOISE_SAMPLES");
        return given ? std::atof(given) : 100.0;
    }();
    return std::max(Integer{1}, static_cast<Integer>(static_cast<double>(usual) * percent / 100.0));
}

} // namespace tripoise::test
