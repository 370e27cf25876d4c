// SPDX-License-Identifier: MIT
//
// What the position ridden today says of the one advised.
//
// A position that is liked, on the same kind of riding, is kept: saddle and hands as they are, to
// the millimetre where parts allow. Otherwise its saddle height is evidence beside the body
// measures, pooled by their variances; how long it was ridden says how good the evidence is. A
// saddle on which no knee can ride is neither. For another use or bar, the position moves by the
// difference between what the two would be advised.
#pragma once

#include "advice/prepare.h"
#include "advice/target.h"

namespace tripoise {

/// The same person with the evidence of the bicycle ridden today; without a wish, a position is
/// kept where it is comfortable and its use is the mix's largest or untold. Adds findings.
[[nodiscard]] Person withRidden(const Person& person, const CurrentBike& current,
                                std::optional<Position> wish, const Mix& mix,
                                const Prepared& prepared, const Tables& tables, Findings& findings);

/// The same person with a foot on the ground: the saddle lower, by what that may cost the knee.
[[nodiscard]] Person withFeetDown(const Person& person, FeetDown feetDown, const Mix& mix,
                                  double crankMm, const Tables& tables, Findings& findings);

/// What of a kept position a set-up does not meet: saddle higher and further back; from the saddle
/// point, hand further ahead and higher.
struct KeptMissed {
    double saddleHigherMm = 0.0;
    double saddleBackMm = 0.0;
    Point hand = Point::Zero();
};
[[nodiscard]] std::optional<KeptMissed> keptMissed(const Setup& setup, const Person& person,
                                                   const Mix& mix, const Prepared& prepared,
                                                   const Tables& tables);

/// What to do today where a set-up's saddle is too far from the ridden one for one visit: the
/// saddle as far as it may move, the hands with it. Empty where the set-up itself is the step.
struct FirstStep {
    SaddlePlace saddle;
    Point grip = Point::Zero();
};
[[nodiscard]] std::optional<FirstStep> firstStep(const Setup& setup, const Person& person,
                                                 const Tables& tables);

} // namespace tripoise
