// SPDX-License-Identifier: MIT
//
// A drafting board: the legend in a line above, the scale under the ground, and in what remains the
// drawing, as large as it can be with its words beside it. From about 30 widths of a letter on,
// whatever the letters' size.
#pragma once

#include "drawing/layout.h"

namespace tripoise::drawing {

[[nodiscard]] DrawingLayout layOutBoard(const QRectF& area, const SideView& view,
                                        const DrawingOptions& options);

} // namespace tripoise::drawing
