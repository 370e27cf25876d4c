// SPDX-License-Identifier: MIT
//
// The rider's shoe on the stock's pedal.
#pragma once

#include "advice/prepare.h"
#include "advice/target.h"

namespace tripoise {

[[nodiscard]] double pedalLateral(const Pedal& pedal, const Tables& tables);
[[nodiscard]] double shoeLength(const Person& person, const Tables& tables);
[[nodiscard]] double soleOf(const Person& person, const PartDefaults& parts);
/// Room over the frame, standing in shoes; empty where it is not known.
[[nodiscard]] std::optional<double> standoverInShoes(const Skeleton& skeleton, const Person& person,
                                                     const PartDefaults& parts);
/// `ballAheadMm` of the spindle where the foot is to stand so.
[[nodiscard]] ShoeOutline shoeOn(const Pedal& pedal, const Person& person, const Tables& tables,
                                 std::optional<double> ballAheadMm = std::nullopt);

} // namespace tripoise
