// SPDX-License-Identifier: MIT
//
// What is written on and around the drawing.
#pragma once

#include "drawing/layout.h"

namespace tripoise {

/// Arc, comfortable range and tick at every joint, with its label.
void paintAngles(const Canvas& canvas, const SideView& view, const Layout& layout);
void paintLeaders(const Canvas& canvas, const SideView& view, const Layout& layout);
void paintTitle(const Canvas& canvas, const DrawingText& text, const Layout& layout);
void paintBlock(const Canvas& canvas, const SideView& view, const Layout& layout);
void paintGround(const Canvas& canvas, const SideView& view, const Layout& layout);
void paintScaleBar(const Canvas& canvas, const SideView& view, const Layout& layout);

} // namespace tripoise
