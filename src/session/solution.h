// SPDX-License-Identifier: MIT
//
// What the window shows: a fitting and its answer, as one value that is replaced as a whole.
#pragma once

#include "advice/advise.h"
#include "advice/first_answer.h"
#include "document/lacks.h"

#include <memory>

namespace tripoise {

struct Solution {
    Fitting fitting;                          ///< what it answers
    std::shared_ptr<const Prepared> prepared; ///< empty while a size is not whole
    std::shared_ptr<const Tables> tables;     ///< with the fitting's weights
    Posterior posterior;
    std::vector<Lack> lacks;     ///< what a decision still needs
    std::optional<Advice> first; ///< what can be said while only a frame is lacking
    Advice advice;               ///< not solved while something is lacking, or where nothing fits
};

/// Whether two fittings have the same answer: notes, names and what was pulled about do not count.
[[nodiscard]] bool sameQuestion(const Fitting& a, const Fitting& b);

/// Answers a fitting. What `before` prepared is used again where frames and parts are the same.
/// Stopped, it returns early and its result is not to be shown.
[[nodiscard]] Solution solve(const Fitting& fitting, const Tables& tables, const Solution& before,
                             std::stop_token stop = {});

} // namespace tripoise
