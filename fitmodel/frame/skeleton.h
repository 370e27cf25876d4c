// SPDX-License-Identifier: MIT
//
// The points of one size in the plane, in the bike axes.
//
// The steering axis passes through the head-tube top (reach, stack) at the head angle, and the
// front axle lies the fork offset ahead of it at the height of the bottom-bracket drop; so the
// front centre needs neither head tube nor fork length, and where it (or the wheelbase) is given
// instead, the offset follows. Exact trigonometry throughout; what the table leaves undetermined is
// taken from the defaults and marked as assumed.
#pragma once

#include "base/axes.h"
#include "base/estimate.h"
#include "base/finding.h"
#include "frame/geometry.h"

#include <optional>

namespace tripoise {

/// Stand-ins for what a table leaves out (assets/parts.json).
struct FrameDefaults {
    double seatAngleDeg = 0.0;
    double bbDropMm = 0.0;
    double chainstayMm = 0.0;
    double forkOffsetMm = 0.0;
    double forkLengthMm = 0.0;
    double beadSeatMm = 0.0;
    double tyreMm = 0.0;
    double mudguardGapMm = 0.0;
    double mudguardWidthMm = 0.0;
    double upperHeadsetMm = 0.0;
    double lowerHeadsetMm = 0.0;
    double steererMm = 0.0;
    double carbonSpacersMm = 0.0; ///< most spacers under a stem on a carbon steerer
    double metalSpacersMm = 0.0;
    double postDiameterMm = 0.0;
    double postLengthMm = 0.0;
    double postOffsetMm = 0.0;
    double postInsertionDiameters = 0.0;
    double frameInsertionMm = 0.0;
    double leastExposedPostMm = 0.0; ///< room the rail clamp needs above the seat tube
    double bicycleMassKg = 0.0;
    double tubeTopBelowHeadTopMm = 0.0; ///< where the top tube meets the head tube, for standover
};

struct Skeleton {
    Point headTop;
    Point headBottom; ///< lower end of the head tube
    Point crown;      ///< crown seat of the fork
    Point frontAxle;
    Point rearAxle; ///< at the forward end of an adjustable dropout
    Angle headAngle;
    Angle seatAngle;

    Estimate forkOffsetMm;
    Estimate headTubeMm;
    Estimate bbDropMm;
    Estimate chainstayMm;        ///< shortest
    double chainstayEndMm = 0.0; ///< longest
    std::optional<Estimate> seatTubeMm;
    std::optional<Estimate> standoverMm; ///< from the ground

    double beadSeatMm = 0.0;
    double tyreMm = 0.0;
    std::optional<Mudguard> mudguard; ///< both figures filled in
    double wheelRadiusMm = 0.0;       ///< (bead seat + 2 x tyre) / 2, ISO 5775 nominal

    double upperHeadsetMm = 0.0;
    double lowerHeadsetMm = 0.0;
    double steererMm = 0.0;
    std::optional<double> quillMm; ///< inside, where it is threaded
    std::optional<double> steererLengthMm;
    double maxSpacersMm = 0.0;

    double postLengthMm = 0.0;
    double postOffsetMm = 0.0;
    double postInsertionMm = 0.0; ///< the greater of the post's and the frame's

    double bicycleMassKg = 0.0;
    Findings findings; ///< every derived or assumed dimension

    [[nodiscard]] double groundY() const { return bbDropMm.value - wheelRadiusMm; }
};

/// What of a post must be inside by its own mark, mm.
[[nodiscard]] inline double postLeast(const Post& post, const FrameDefaults& defaults)
{
    return post.insertionMm.value_or(defaults.postInsertionDiameters
                                     * post.diameterMm.value_or(defaults.postDiameterMm));
}

[[nodiscard]] Skeleton skeletonOf(const FrameSize& frame, const FrameDefaults& defaults);

} // namespace tripoise
