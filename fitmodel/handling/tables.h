// SPDX-License-Identifier: MIT
//
// The constants of this room as one value (assets/segments.json, assets/handling.json).
#pragma once

#include "handling/balance.h"
#include "handling/clearances.h"
#include "handling/steering.h"
#include "handling/toe.h"
#include "handling/wheel_size.h"

namespace tripoise {

struct HandlingTables {
    SegmentTable segments;
    BicycleTable bicycle;
    Carriers carriers;
    RearBag rearBag;
    BalanceTable balance;
    SteeringAdvice steering;
    ToeTable toe;
    ClearanceTable clearance;
    std::vector<RimSize> rims;   ///< by falling bead seat
    std::vector<double> tyresMm; ///< widths ordinarily made
};

} // namespace tripoise
