// SPDX-License-Identifier: MIT
//
// Everything adjustable on one size, and where it puts the rider's three contacts.
#pragma once

#include "cockpit/cockpits.h"
#include "cockpit/grips.h"
#include "frame/skeleton.h"
#include "posture/leg.h"
#include "posture/windows.h"

namespace tripoise {

struct Setup {
    SaddlePlace saddle;
    double crankMm = 0.0;
    Cockpit cockpit;

    // What follows from them on one size.
    Stem stem; ///< as mounted: its angle is the effective one
    Point clamp = Point::Zero();
    Point grip = Point::Zero(); ///< at the bar's main place
    double steererCutMm = 0.0;
};

/// Where a stem puts the centre of the bar clamp: up the steering axis by the upper headset, the
/// spacers and half the stem's clamp, then along the stem. Spacers move it along a straight line.
struct ClampLine {
    Point headTop = Point::Zero();
    Point up = Point::Zero(); ///< unit vector of the steering axis
    Point stem = Point::Zero();
    double belowSpacersMm = 0.0;
    double aboveSpacersMm = 0.0;

    [[nodiscard]] Point at(double spacersMm) const
    {
        return headTop + (belowSpacersMm + spacersMm + aboveSpacersMm) * up + stem;
    }
};
[[nodiscard]] ClampLine clampLine(const Skeleton& skeleton, const Stem& mounted,
                                  const PartDefaults& defaults);
[[nodiscard]] Point clampCentre(const Skeleton& skeleton, const Stem& mounted, double spacersMm,
                                const PartDefaults& defaults);

/// The reverse: how long a stem and how tall its spacers would have to be for its clamp to come to
/// a point, at its angle and clamp height. Neither need be sold, or even be positive.
struct StemAndSpacers {
    double stemLengthMm = 0.0;
    double spacersMm = 0.0;
};
[[nodiscard]] StemAndSpacers stemCarrying(const Skeleton& skeleton, const Point& clamp,
                                          const Stem& mounted, const PartDefaults& defaults);

/// Head tube, both headset stacks, spacers and clamp, less the gap under the stem's top; 0 where a
/// quill goes into the steerer.
[[nodiscard]] double steererCut(const Skeleton& skeleton, const Stem& mounted, double spacersMm,
                                const PartDefaults& defaults);

[[nodiscard]] Steerer steererOf(const Skeleton& skeleton);
[[nodiscard]] Steerer steererOf(const FrameSize& frame, const FrameDefaults& defaults);

/// The tallest spacers the maker's limit and the steerer's length allow with a stem; of a quill,
/// how far it may be raised.
[[nodiscard]] double mostSpacers(const Skeleton& skeleton, const Stem& mounted,
                                 const PartDefaults& defaults);

[[nodiscard]] Setup makeSetup(const Skeleton& skeleton, const Stock& stock,
                              const SaddlePlace& saddle, double crankMm, const Cockpit& cockpit,
                              const PartDefaults& defaults);

/// Foot on the pedal: the rider's shoe and habit, the stock's pedal.
[[nodiscard]] Foothold footholdOf(const Rider& rider, const Pedal& pedal,
                                  const ComfortTable& comfort, const PartDefaults& defaults);

/// Nose of the saddle ahead of the saddle point, mm.
[[nodiscard]] double noseAhead(const Saddle& saddle, const PartDefaults& defaults);

/// Where rails and post let the saddle go, behind the seat tube's axis; level, mm.
[[nodiscard]] Range saddleBehindRange(const Skeleton& skeleton, const Saddle& saddle,
                                      const PartDefaults& defaults);

/// Post between the top of the seat tube and the rail clamp; empty where the seat tube is not
/// known.
[[nodiscard]] std::optional<double> exposedPost(const Skeleton& skeleton, const SaddlePlace& place,
                                                const Saddle& saddle, const PartDefaults& defaults);

/// What of the post is inside the frame, against what the post's mark and the frame want; empty
/// where the seat tube is not known.
struct PostInside {
    double insideMm = 0.0;
    double postLeastMm = 0.0;
    double frameLeastMm = 0.0;
};
[[nodiscard]] std::optional<PostInside> postInside(const FrameSize& frame, const Skeleton& skeleton,
                                                   const SaddlePlace& place, const Saddle& saddle,
                                                   const FrameDefaults& frameDefaults,
                                                   const PartDefaults& defaults);

/// How far the bar's clamp is from where the stem that a size is sold with would carry it, at its
/// usual angle and spacers; empty where that stem is not known, and for a quill.
[[nodiscard]] std::optional<double> movedFromSold(const FrameSize& frame, const Skeleton& skeleton,
                                                  const Setup& setup, const PartDefaults& defaults);

/// Inseam less standover height; empty where neither is known.
[[nodiscard]] std::optional<double> standoverClearance(const Skeleton& skeleton, double inseamMm);

} // namespace tripoise
