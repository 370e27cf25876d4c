// SPDX-License-Identifier: MIT
//
// Boxes of parts as full as one likes: every stem, bar, crank and spacer another one.
#pragma once

#include "support.h"

namespace tripoise::test {

struct BoxSize {
    int sizes = 2;
    int stems = 0;
    int bars = 0;
    int cranks = 0;
    int spacers = 0;
};

/// The demo's rider, with so many sizes a little apart and so many parts.
inline Fitting withRichBox(const BoxSize& box)
{
    Fitting fitting = demoFitting();
    const FrameSize first = fitting.frames.front();
    fitting.frames.clear();
    for (int i = 0; i < box.sizes; ++i) {
        FrameSize frame;
        frame.model = first.model;
        frame.size = std::to_string(i);
        frame.geometry.stackMm = first.geometry.stackMm + 8.0 * i;
        frame.geometry.reachMm = first.geometry.reachMm + 3.0 * i;
        frame.geometry.headAngleDeg = first.geometry.headAngleDeg;
        frame.geometry.seatAngleDeg = first.geometry.seatAngleDeg;
        fitting.frames.push_back(frame);
    }
    Stock& stock = fitting.stock;
    stock = {};
    for (int i = 0; i < box.stems; ++i) {
        Stem stem;
        stem.lengthMm = 40.0 + 90.0 * i / box.stems;
        stem.angle = Angle::degrees(1.0 + i * 7 % 17);
        stock.stems.push_back(stem);
    }
    for (int i = 0; i < box.bars; ++i) {
        Bar bar;
        bar.name = "bar " + std::to_string(i);
        bar.widthMm = 580.0 + i;
        bar.riseMm = 0.5 * (i * 13 % 80);
        stock.bars.push_back(bar);
    }
    for (int i = 0; i < box.cranks; ++i)
        stock.cranksMm.push_back(150.0 + 0.5 * i);
    for (int i = 0; i < box.spacers; ++i)
        stock.spacersMm.push_back(1.0 + 0.5 * i);
    return fitting;
}

} // namespace tripoise::test
