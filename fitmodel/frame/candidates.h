// SPDX-License-Identifier: MIT
//
// Candidates out of a closed table.
#pragma once

#include "frame/closure.h"
#include "frame/geometry.h"

namespace tripoise {

/// The size as a frame: what the table gives, and what follows from it where a frame cannot do
/// without. What would have to be assumed is left out, as the skeleton assumes it and says so.
/// Nothing where stack, reach, head angle or seat angle is unknown. A contradiction does not
/// hinder: the table's own figure is taken, since which one is wrong is for a person to say.
[[nodiscard]] std::optional<FrameSize> frameOf(const GeometryTable& geometry,
                                               const ClosedTable& closed, std::size_t size);

/// All sizes of which a frame can be made.
[[nodiscard]] std::vector<FrameSize> framesOf(const GeometryTable& geometry,
                                              const ClosedTable& closed);

} // namespace tripoise
