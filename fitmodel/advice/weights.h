// SPDX-License-Identifier: MIT
//
// What the ledger of a decision weighs, and how much (assets/weights.json, the only such table).
// One point is one joint one half-width off its comfortable centre, outside the comfortable range.
#pragma once

#include "advice/considerations.h"
#include "base/range.h"
#include "base/use.h"

#include <algorithm>
#include <optional>

namespace tripoise {

/// The stem a rider is ordinarily seen with: it grows with the rider, and is another for each use.
struct NaturalStem {
    double statureMm = 0.0; ///< of a rider with `lengthMm` on the road
    double lengthMm = 0.0;
    double perStature = 0.0;
    Range lengthsMm; ///< shorter or longer is natural for nobody
    PerUse<double> offsetMm{};
    double halfRangeMm = 0.0;
    double soldHalfRangeMm = 0.0; ///< about the stem a size is sold with, where that is known

    [[nodiscard]] double middle(Use use, double riderMm) const;
    [[nodiscard]] Range of(Use use, double riderMm, const std::optional<double>& soldMm) const;
};

/// The spacers a rider is ordinarily seen with; none leave nothing to lower.
struct OrdinarySpacers {
    double statureMm = 0.0; ///< of a rider with `mm`
    double mm = 0.0;
    double perStature = 0.0;
    Range betweenMm;

    [[nodiscard]] double of(double riderMm) const
    {
        return std::clamp(mm + perStature * (riderMm - statureMm), betweenMm.low, betweenMm.high);
    }
};

/// Parts that undo each other count from the first figure of a pair, and in full from the second.
struct Untidy {
    Range downDeg;          ///< a stem that points down
    Range steepDeg;         ///< and one that does so steeply
    Range riseMm;           ///< of the bar above a stem that points down
    Range spacersMm;        ///< under a stem that points down
    Range steepSpacersMm;   ///< under a steep one
    Range uprightSpacersMm; ///< under a stem that points down, for upright riding
    PerUse<double> upright{};
    PerUse<double> plain{}; ///< a bar that rises, where a plain one is wanted
};

/// A frame that nobody sells, for a rider without one to choose.
struct ReferenceFrame {
    double stackPerStature = 0.0;
    double reachPerStature = 0.0;
    double headAngleDeg = 0.0;
    double seatAngleDeg = 0.0;
};

/// When a size fits a rider at all, with the front end that is ordinary for a use.
struct FitTable {
    double leastShare = 0.0; ///< a use with less has no say
    PerUse<double> stemAngleDeg{};
    /// Where makers' sizes have the hands of their middle riders, above and beyond the best place.
    PerUse<double> barAboveMm{}, barBeyondMm{};
    double heightUnitMm = 0.0;
    double statureMm = 0.0; ///< of a rider with `ordinaryPostMm`
    double ordinaryPostMm = 0.0;
    double postPerStature = 0.0;
    double postUnitMm = 0.0;
    double most = 0.0; ///< of height and post together, in their units
    double mostHeightMm = 0.0;
    double mostReachMm = 0.0;
};

/// Differences between two sizes that a rider notices.
struct FeltTable {
    double handMm = 0.0; ///< between the hands on one and on the other
    double kneeMm = 0.0;
    double stemMm = 0.0;
    double spacersMm = 0.0;
    double stemAngleDeg = 0.0;
    double standoverMm = 0.0;
    double easyStandoverMm = 0.0; ///< more or less than this is noticed as well, as any at all is
    double wheelbaseMm = 0.0;
    double trailMm = 0.0;
    double bulkMm = 0.0;     ///< stack and reach
    double directions = 0.0; ///< in which the bar can still be moved
    double toeMm = 0.0;      ///< between two shoes that meet the wheel
};

struct WeightTable {
    /// Points for one unit of each consideration's measure; the unit is the matching figure below.
    PerConsideration<double> points{};
    /// Whether a weight is a judgement, to be halved and doubled before a size is named.
    PerConsideration<bool> unsourced{};
    double postureWithinSize = 1.0; ///< posture's points count this often among a size's set-ups

    NaturalStem naturalStem;
    double stemUnitMm = 0.0; ///< outside the natural range; grows with the square
    OrdinarySpacers ordinarySpacers;
    double spacerUnitMm = 0.0;         ///< off the ordinary; grows with the square
    double ordinaryStemAngleDeg = 0.0; ///< either way; beyond it the full points
    Untidy untidy;
    Range ordinaryPostMm;
    double postUnitMm = 0.0; ///< outside the ordinary range
    /// Points grow from none at the wanted clearance to all at the least.
    PerUse<double> wantedStandoverMm{};
    double leastStandoverMm = 0.0;
    /// -1 asks for an agile bicycle, +1 for a steady one.
    PerUse<double> steadinessWanted{};
    double trailInWheelbase = 0.0; ///< millimetres of wheelbase that feel like one of trail
    Range steadinessMm;            ///< wheelbase and trail of the most agile and the steadiest
    double steadinessUnitMm = 0.0;
    PerUse<double> compactnessWanted{};
    double leastBulkMm = 0.0; ///< stack + reach of the smallest
    double bulkUnitMm = 0.0;
    double raiseRoomMm = 0.0; ///< of spacers still to be added, that counts as all one wants
    double lowerRoomMm = 0.0;
    double stemRoomMm = 0.0; ///< a stem this much shorter or longer is at hand
    double crankUnitMm = 0.0;
    double barUnitMm = 0.0;
    Range dropBarBeyondShouldersMm;
    Range gravelBarBeyondShouldersMm;
    Range flatBarBeyondShouldersMm;
    Range sweptBarBeyondShouldersMm;
    double toeUnitMm = 0.0;     ///< of overlap to be expected
    double toeRoomMm = 0.0;     ///< clear by this, no shoe touches
    double toeRoomFlatMm = 0.0; ///< the same where the foot is not held
    Range toeSteerDeg;          ///< touching at less counts in full, at more as `toeFar`
    double toeFar = 0.0;
    double toeInTraffic = 0.0; ///< times as much there, where one turns at walking pace
    /// A touching shoe counts as after the cure that leaves least, and this for having to do it.
    double footBack = 0.0, narrowerTyre = 0.0, smallerRim = 0.0;
    double riderHeightUnitMm = 0.0; ///< outside a maker's range; in full from here on
    Range proportionSds; ///< a leg further from what goes with the stature makes heights count less

    ReferenceFrame referenceFrame;
    FitTable fit;
    FeltTable felt;
    double eitherBelow = 0.0;   ///< a lead in points too small to name a size
    double clearFrom = 0.0;     ///< a lead that names one clearly
    double worthOrdering = 0.0; ///< points a stem must save to be worth ordering
};

} // namespace tripoise
