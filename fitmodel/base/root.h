// SPDX-License-Identifier: MIT
//
// The root of a continuous function inside a bracket.
#pragma once

#include <cmath>

namespace tripoise {

/// False position with the Illinois step (Dowell & Jarratt 1971): keeps the bracket, converges
/// faster than linearly. Where both ends have the same sign there is no root to find: the end
/// nearer to zero is returned, which is what clamping to the bracket means.
template <typename Function>
[[nodiscard]] double rootWithin(double low, double high, double tolerance, Function&& f)
{
    double atLow = f(low);
    double atHigh = f(high);
    if (atLow * atHigh > 0.0)
        return std::abs(atLow) < std::abs(atHigh) ? low : high;
    double root = high;
    for (int step = 0; step < 60 && std::abs(high - low) > tolerance; ++step) {
        const double previous = root;
        root =
            atHigh == atLow ? 0.5 * (low + high) : (low * atHigh - high * atLow) / (atHigh - atLow);
        const double atRoot = f(root);
        if (atRoot * atHigh < 0.0) {
            low = high;
            atLow = atHigh;
        } else {
            atLow *= 0.5;
        }
        high = root;
        atHigh = atRoot;
        if (atRoot == 0.0 || std::abs(root - previous) < tolerance)
            break;
    }
    return root;
}

} // namespace tripoise
