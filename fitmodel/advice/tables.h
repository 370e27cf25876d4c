// SPDX-License-Identifier: MIT
//
// The constant tables, as one value that is handed in.
#pragma once

#include "advice/weights.h"
#include "cockpit/parts.h"
#include "frame/skeleton.h"
#include "handling/tables.h"
#include "posture/windows.h"
#include "rider/body.h"

namespace tripoise {

struct Tables {
    Populations populations;
    TapeTable tape;
    BodyModel body;
    ComfortTable comfort;
    FrameDefaults frame;
    PartDefaults parts;
    WeightTable weights;
    HandlingTables handling;
    double leastPedalLeanDeg = 0.0; ///< 16 CFR 1512.17(c)
    std::vector<Stem> marketStems;  ///< lengths and angles that can ordinarily be bought
};

} // namespace tripoise
