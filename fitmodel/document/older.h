// SPDX-License-Identifier: MIT
//
// What version 1 kept elsewhere: tyre and mudguard on each size; crank, saddle and pedals in the
// box.
#pragma once

#include "document/fields.h"

namespace tripoise::document {

// Read out of an object that had them, to where they are now. In a document of today's version they
// are told to have moved.
void readOlderWheel(Fields& wheel, FrameSize& to, Kept& kept);
void readOlderStock(Fields& stock, Fitting& to, Kept& kept);

/// Of a fitting of version 1 as it was read: tyres and mudguards that are alike become the
/// bicycle's, others stay each size's own, and each size rides on what it had.
void raise(Fitting& fitting, Kept& kept);
/// Of a frame model of version 1: the tyre is the one it is sold with.
void raise(std::vector<FrameSize>& sizes);

} // namespace tripoise::document
