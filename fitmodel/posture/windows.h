// SPDX-License-Identifier: MIT
//
// The comfortable ranges: which joint angles suit a use, and where the knee should be
// (assets/comfort.json, each row with its origin).
//
// No peer-reviewed norm of trunk angle by use exists, so the trunk and arm centres are calibrated:
// what the average rider has on a set-up the trade would call ordinary.
#pragma once

#include "base/angle.h"
#include "base/change.h"
#include "base/complaint.h"
#include "base/grip_place.h"
#include "base/use.h"
#include "posture/saddle_rules.h"
#include "rider/measurements.h"

#include <vector>

namespace tripoise {

struct Window {
    Angle centre;
    Angle halfWidth;

    [[nodiscard]] Angle low() const { return centre - halfWidth; }
    [[nodiscard]] Angle high() const { return centre + halfWidth; }
};

struct UpperWindows {
    Window trunk;
    Window armTrunk;
    Window elbow;
};

/// What a window cost counts: little inside the comfortable range, in full beyond it; convex, so
/// that a cost with one least place keeps it.
struct Ease {
    double within = 1.0; ///< of each point of cost up to `from`
    double from = 0.0;
    double full = 0.0; ///< from here on a point counts as one

    [[nodiscard]] double of(double cost) const
    {
        if (cost <= from)
            return within * cost;
        const double beyond = cost < full ? 0.5 * (cost - from) * (cost - from) / (full - from)
                                          : cost - 0.5 * (from + full);
        return within * cost + (1.0 - within) * beyond;
    }
    [[nodiscard]] double slope(double cost) const
    {
        if (cost <= from)
            return within;
        return cost < full ? within + (1.0 - within) * (cost - from) / (full - from) : 1.0;
    }
};

/// What a complaint asks for against today, at least; 0 asks for nothing.
struct ComplaintStep {
    double handUpMm = 0.0;
    double handBackMm = 0.0;
    double saddleUpMm = 0.0;

    [[nodiscard]] bool moves() const
    {
        return handUpMm != 0.0 || handBackMm != 0.0 || saddleUpMm != 0.0;
    }
};

/// Centres for one use at one place of the hands.
struct UpperCentre {
    Angle trunk;
    Angle armTrunk;
};

/// Arm-trunk centre for a pair that has no calibrated row: a line over the trunk centre.
struct ArmTrunkLine {
    Angle at; ///< arm-trunk centre where the trunk is `trunk`
    Angle trunk;
    double slope = 0.0;
};

struct CrankBand {
    double belowInseamMm = 0.0; ///< riders with a shorter inseam than this
    double lowMm = 0.0;
    double highMm = 0.0;
};

struct ComfortTable {
    PerUse<PerGripPlace<std::optional<UpperCentre>>> calibrated;
    PerGripPlace<ArmTrunkLine> fallback;
    /// What hands on the tops or in the drops change against the hoods, for uses without a row.
    PerGripPlace<UpperCentre> awayFromHoods;
    Angle trunkHalfWidth, armTrunkHalfWidth, elbowCentre, elbowHalfWidth;
    Ease ease;
    Angle stiffShift, suppleShift; ///< of the trunk centre
    double averageStatureMm = 0.0; ///< of a rider with the calibrated centres
    Angle lowerPerStature;         ///< trunk centre, for each millimetre above it
    Angle stiffBelow, suppleAbove; ///< straight-leg raise
    PerUse<Angle> kneeCentre;
    Angle kneeHalfWidth;
    Angle stillLess, stillHalfWidth; ///< a goniometer's reading, held still, under the riding angle
    std::vector<SaddleRule> saddleRules; ///< published, to show beside the solution
    PerUse<double> kneeOverSpindleMm{};
    double kneeOverSpindleHalfWidthMm = 0.0;
    Angle pitchBottom, pitchForward; ///< foot, heel level habit
    Angle lowHeelShift, toeDownShift;
    PerUse<PerGripPlace<double>> dropBarTime{}; ///< share of time at hoods, tops, drops
    std::vector<CrankBand> cranks;              ///< ascending; the last has no upper end
    double ridingSaddleSdMm = 0.0;              ///< of a saddle height from body measures alone
    double weeksSaddleSdMm = 0.0;               ///< of one ridden without complaint, by how long
    double seasonSaddleSdMm = 0.0;
    double yearsSaddleSdMm = 0.0;
    Angle doubtedKneeBelow, doubtedKneeAbove; ///< of a ridden saddle, flexion at the bottom
    Angle steepestRiddenAxis;                 ///< a steeper one was measured to the saddle's nose
    double keptWeight = 0.0;                  ///< of the hands' place, where it is kept
    double keptAgainstSizes = 0.0;            ///< the same, where sizes are compared
    PerComplaint<ComplaintStep> complaintSteps{};
    double mostHandsForComplaintMm = 0.0;  ///< from where the body has them
    double mostSaddleForComplaintMm = 0.0; ///< the same
    PerComplaint<std::vector<ChangeStep>>
        changes;                  ///< on a bicycle that was built, first ones first
    double mostFirstStepMm = 0.0; ///< of the saddle in one visit
    double oneToeLowersMm = 0.0, toesLowerMm = 0.0, flatLowersMm = 0.0;
    Angle mostLoweredKnee;
    Angle notBendingShift;          ///< of the trunk centre, where belly or thighs are in the way
    double notBendingCrankMm = 0.0; ///< the same of the crank band

    [[nodiscard]] Window knee(Use use) const { return {kneeCentre[indexOf(use)], kneeHalfWidth}; }
};

/// Without a stature, of the average rider.
[[nodiscard]] UpperWindows windowsFor(const ComfortTable& table, Use use, GripPlace place,
                                      Flexibility flexibility,
                                      std::optional<double> statureMm = {});

[[nodiscard]] Flexibility flexibilityOf(const ComfortTable& table, const Rider& rider);

[[nodiscard]] CrankBand crankBandFor(const ComfortTable& table, double inseamMm);

} // namespace tripoise
