// SPDX-License-Identifier: MIT
//
// Whether a size fits a rider at all, from that size alone.
//
// It is judged with the front end that is ordinary for a use, not with the most a box of parts can
// do: a missing part never hides a size that fits, nor does an odd one cure a size that does not.
// Height and seat post are looked at together, since a frame that is too small is too low at both
// ends; reach is looked at apart, since stems follow it further. Of height and post together,
// makers' middle riders lie within some 15 mm and those 15 cm taller or shorter 50 to 60 mm off
// (tests/study).
#pragma once

#include "advice/search.h"

namespace tripoise {

enum class FitState {
    Fits,
    WithParts, ///< with a part that is not in stock
    TooSmall,
    TooLarge,
    Barred, ///< a limit is broken
};

/// Sizes of a lower class come first; of one class by their points.
[[nodiscard]] constexpr int classOf(FitState state)
{
    switch (state) {
    case FitState::Fits:
    case FitState::WithParts: return 0; // what has to be ordered costs points
    case FitState::TooSmall:
    case FitState::TooLarge: return 1;
    case FitState::Barred: return 2;
    }
    return 2;
}

/// Sizes that can be named.
[[nodiscard]] constexpr bool fitsAtAll(FitState state)
{
    return classOf(state) == 0;
}

/// What a size fails by.
enum class FailsBy { Height, Reach, Post };

/// The ordinary front end of one use, against where a size that fits brings the bar for this rider.
struct UseFit {
    Use use = {};
    FitState state = FitState::Fits; ///< `Fits`, `TooSmall` or `TooLarge`
    FailsBy by = FailsBy::Height;    ///< where it does not fit
    double barAboveMm = 0.0;         ///< negative where the bar is lower
    double barBeyondMm = 0.0;        ///< negative where it is nearer
};

struct SizeFit {
    FitState state = FitState::Fits;
    std::vector<UseFit> byUse; ///< of the uses that have a say, the largest share first
    std::optional<double> postMm;
    // To be ordered.
    std::optional<Stem> stem;            ///< as mounted
    std::optional<double> postMmToOrder; ///< a seat post of this length at least
};

/// The uses that have a say, the largest share first; that one at least.
[[nodiscard]] std::vector<Use> usesThatCount(const Mix& mix, const FitTable& table);

/// The use a size fails in first; nothing where it fits all.
[[nodiscard]] const UseFit* failing(const SizeFit& fit);

/// Limits apart.
[[nodiscard]] SizeFit fitOf(const PreparedSize& size, const Basis& basis);

} // namespace tripoise
