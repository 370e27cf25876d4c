// SPDX-License-Identifier: MIT
//
// Changes to a fitting's list of frames that take along what belongs to a frame: the keys kept for
// it, the trial on it, and the builder's word.
#pragma once

#include "document/fitting.h"

namespace tripoise {

/// A fitting without one of its sizes, or as it was when there is no such size.
[[nodiscard]] Fitting withoutFrame(Fitting fitting, std::size_t index);

/// A fitting with a size given another name; the trial on it and the builder's word follow.
[[nodiscard]] Fitting withFrameNamed(Fitting fitting, std::size_t index, std::string model,
                                     std::string size);

/// A fitting with these sizes: one that it has by that name gets what they state and keeps the
/// rest; the others come after its own. Nothing where that is more than it can hold.
[[nodiscard]] std::optional<Fitting> withFrames(Fitting fitting,
                                                const std::vector<FrameSize>& sizes);

/// How many of them such a fitting has by that name, of another geometry.
[[nodiscard]] std::size_t replacedBy(const std::vector<FrameSize>& sizes, const Fitting& fitting);

/// Tyres and mudguards that every size has alike are the bicycle's.
void unite(Fitting& fitting);

/// What the sizes have on their wheels, each once, in their order.
[[nodiscard]] std::vector<Mounting> mountingsOf(const Fitting& fitting);

/// A fitting whose sizes all ride on these tyres, rims and mudguards.
[[nodiscard]] Fitting withOneMounting(Fitting fitting, const Mounting& mounting);

} // namespace tripoise
