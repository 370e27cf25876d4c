// SPDX-License-Identifier: MIT
//
// What the builder chose on top of what was measured: how much each consideration counts, a size
// and a set-up other than advised, a set-up pulled about by hand, and sizes that are still being
// typed.
#pragma once

#include "advice/riding.h"
#include "advice/tables.h"
#include "base/range.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

/// A size by its names, whether or not it is among the frames.
struct ChosenSize {
    std::string model;
    std::string size;

    [[nodiscard]] bool is(const FrameSize& frame) const
    {
        return model == frame.model && size == frame.size;
    }
    bool operator==(const ChosenSize&) const = default;
};

/// The contacts as they were dragged on one size, from the bottom bracket; the grip is at the bar's
/// main place.
struct Trial {
    std::string model;
    std::string size;
    double saddleHeightMm = 0.0;
    double saddleSetbackMm = 0.0;
    double gripReachMm = 0.0;
    double gripHeightMm = 0.0;
    bool chosen = false; ///< by the builder, in place of the advised set-up

    [[nodiscard]] ChosenSize on() const { return {model, size}; }
    bool operator==(const Trial&) const = default;
};

/// What a weight may be multiplied by: from not counted at all.
inline constexpr Range weightFactorRange{0.0, 8.0};

struct Choices {
    PerConsideration<double> weightFactor = ordinary();
    std::optional<Trial> trial;
    std::optional<ChosenSize> size;   ///< the builder's word on the size
    std::string reason;               ///< for what was chosen, in the builder's words
    std::optional<Position> position; ///< today's kept or not; by default where it is liked
    bool toeTold = false;             ///< the rider knows that a shoe may touch the front wheel
    std::vector<FrameSize>
        unfinished; ///< sizes that lack a number or a name, and so are no candidates

    bool operator==(const Choices&) const = default;

    [[nodiscard]] static constexpr PerConsideration<double> ordinary()
    {
        PerConsideration<double> factors{};
        factors.fill(1.0);
        return factors;
    }
};

/// The tables with each weight times its factor.
[[nodiscard]] inline Tables weighted(const Tables& tables, const Choices& choices)
{
    Tables result = tables;
    for (std::size_t i = 0; i < considerationCount; ++i)
        result.weights.points[i] *= choices.weightFactor[i];
    return result;
}

} // namespace tripoise
