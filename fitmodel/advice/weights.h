// SPDX-License-Identifier: MIT
//
// What the ledger of a decision weighs, and how much (assets/weights.json, the only such table).
// One point is one joint one half-width off its comfortable centre.
#pragma once

#include "base/range.h"
#include "base/use.h"

#include <array>
#include <string_view>

namespace tripoise {

enum class Consideration {
    Posture,    ///< how far the hands are from where they would be most comfortable
    Setback,    ///< knee over spindle that rails and post do not let be reached
    StemLength, ///< outside the use's natural range
    Spacers,
    StemAngle,   ///< steeper than ordinary
    ExposedPost, ///< outside its ordinary range
    Standover,   ///< less than wanted
    Agility,     ///< steady where agile is wanted, or the reverse
    Compactness, ///< larger where small is wanted
    Adjustment,  ///< room left to move the bar later
    Crank,       ///< off the rider's band
    BarWidth,    ///< off the rider's or the use's width
    ToeOverlap,  ///< shoe into the front wheel
};

inline constexpr std::array<std::string_view, 13> considerationKeys{
    "posture", "setback",     "stem_length", "spacers", "stem_angle", "exposed_post", "standover",
    "agility", "compactness", "adjustment",  "crank",   "bar_width",  "toe_overlap"};

inline constexpr std::size_t considerationCount = considerationKeys.size();

template <typename T> using PerConsideration = std::array<T, considerationCount>;

[[nodiscard]] constexpr std::size_t indexOf(Consideration consideration)
{
    return static_cast<std::size_t>(consideration);
}
[[nodiscard]] constexpr std::string_view keyOf(Consideration consideration)
{
    return considerationKeys[indexOf(consideration)];
}

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
