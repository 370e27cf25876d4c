// SPDX-License-Identifier: MIT
//
// What a fitting that is being filled in still needs. Defined by the strict reader: a fitting lacks
// nothing exactly when it could be written and read again as a whole one, so that the window and
// the command line decide on the same fittings.
#pragma once

#include "advice/tables.h"
#include "base/problem.h"
#include "document/fitting.h"

#include <optional>
#include <vector>

namespace tripoise {

enum class Lack {
    Stature,
    Mix,   ///< shares that sum to 1
    Frame, ///< one size at least, and each with stack, reach, head angle, seat angle or top tube
    Stem,  ///< one in stock at least, and each with its length
    Bar,   ///< one at least, and each with its width
    Crank,
    NothingFits, ///< no stem joins a steerer to a bar
    TooManySetups,
    Agreement, ///< figures contradict each other, or the same size stands twice
};

/// In the order of the list above, each once. Empty when a decision can be made.
[[nodiscard]] std::vector<Lack> lacks(const Fitting& fitting, const Tables& tables);

/// The same with paths and values: what the strict reader would say of the brief.
[[nodiscard]] Problems objections(const Fitting& fitting, const Tables& tables);

/// The size that the trial was pulled about on; nothing without a trial, or when it names no size
/// here.
[[nodiscard]] std::optional<std::size_t> trialFrame(const Fitting& fitting);

} // namespace tripoise
