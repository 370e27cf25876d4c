// SPDX-License-Identifier: MIT
//
// The numbers of one frame size, as a form: what a maker's table gives first, then the rest of it,
// wheels, headset, post, what it is sold with, weights and price.
#pragma once

#include "brief/entry_of.h"
#include "frame/geometry.h"

#include <array>
#include <span>
#include <vector>

namespace tripoise {

enum class FrameGroup { First, Rest, Wheel, Headset, Post, Sold, Weights };

inline constexpr std::array allFrameGroups{FrameGroup::First,   FrameGroup::Rest, FrameGroup::Wheel,
                                           FrameGroup::Headset, FrameGroup::Post, FrameGroup::Sold,
                                           FrameGroup::Weights};

[[nodiscard]] std::span<const EntryOf<FrameSize>> frameEntries(FrameGroup group);

/// What a size must have before anything can be made of it. Seat angle stands for itself or the
/// effective top tube, either of which will do.
enum class FrameNeed { Name, Stack, Reach, HeadAngle, SeatAngle };

/// In the order of the list above; empty for a size that is whole.
[[nodiscard]] std::vector<FrameNeed> needsOf(const FrameSize& frame);

/// Whether another of the sizes has the same model and name.
[[nodiscard]] bool nameTaken(const std::vector<FrameSize>& frames, std::size_t besides,
                             const std::string& model, const std::string& size);

/// Whether the front centre leaves no room for a rear wheel in the wheelbase.
[[nodiscard]] bool wheelbaseContradicts(const Geometry& geometry);

} // namespace tripoise
