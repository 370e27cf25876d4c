// SPDX-License-Identifier: MIT
//
// What the ledger of a decision weighs, and how much (assets/weights.json, the only such table).
// One point is one joint one half-width off its comfortable centre.
#pragma once

#include "advice/considerations.h"
#include "base/range.h"
#include "base/use.h"

namespace tripoise {

struct WeightTable {
    /// Points for one unit of each consideration's measure; the unit is the matching figure below.
    PerConsideration<double> points{};
    /// Whether a weight is a judgement, to be halved and doubled before a size is named.
    PerConsideration<bool> unsourced{};

    PerUse<Range> naturalStemMm{};
    double stemUnitMm = 0.0;           ///< outside the natural range; grows with the square
    double spacerUnitMm = 0.0;         ///< grows with the square
    double ordinaryStemAngleDeg = 0.0; ///< either way; beyond it the full points
    Range ordinaryPostMm;
    double postUnitMm = 0.0;        ///< outside the ordinary range
    double wantedStandoverMm = 0.0; ///< points grow from none here to all at no clearance
    /// -1 asks for an agile bicycle, +1 for a steady one; full points at the far end of the spread.
    PerUse<double> steadinessWanted{};
    double trailInWheelbase = 0.0; ///< millimetres of wheelbase that feel like one of trail
    double agilitySpreadMm = 0.0;  ///< least spread of candidates that counts in full
    PerUse<double> compactnessWanted{};
    double compactnessSpreadMm = 0.0;
    double raiseRoomMm = 0.0; ///< of spacers still to be added, that counts as all one wants
    double lowerRoomMm = 0.0;
    double stemRoomMm = 0.0; ///< a stem this much shorter or longer is at hand
    double crankUnitMm = 0.0;
    double barUnitMm = 0.0;
    Range dropBarBeyondShouldersMm;
    Range gravelBarBeyondShouldersMm;
    Range flatBarMm;
    Range sweptBarMm;
    double toeUnitMm = 0.0;    ///< of overlap
    double toeInTraffic = 0.0; ///< times as much there, where one turns at walking pace

    double eitherBelow = 0.0; ///< a lead in points too small to name a size
    double worthBuying = 0.0; ///< points a part must save to be worth buying
};

} // namespace tripoise
