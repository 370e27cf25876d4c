// SPDX-License-Identifier: MIT
//
// The rider as a decision sees them, and where their contacts would be if parts did not matter.
#pragma once

#include "advice/riding.h"
#include "advice/tables.h"
#include "posture/leg.h"
#include "posture/upper_body.h"

#include <vector>

namespace tripoise {

/// A ridden position that is to be kept: the target, not evidence for one.
struct KeptPosition {
    SaddlePlace saddle;
    double crankMm = 0.0;        ///< it was ridden with
    std::optional<Point> toGrip; ///< from the saddle point to the hand at the bar's main place
};

/// One body with its ways; made from a posterior's mean, or from one of its samples.
struct Person {
    Body body;
    Flexibility flexibility = Flexibility::Ordinary;
    Foothold foothold;
    Angle kneeShift;             ///< what the position ridden today adds to the knee's centre
    std::optional<Sex> sex = {}; ///< for how the body's mass is spread
    std::optional<double> shoeLengthMm = {}; ///< where it was measured
    std::optional<double> soleMm = {};       ///< the same
    bool bendsFreely = true;
    double kneeOverSpindleShiftMm = 0.0; ///< of a kept position against the uses' own
    Point gripShift = Point::Zero();     ///< the same of the hands, from the saddle
    std::optional<KeptPosition> kept = {};
    std::optional<SaddlePlace> ridden = {}; ///< today's saddle, where it is known
    bool provisional = false; ///< the inseam is not told or doubted, or another entry is

    [[nodiscard]] bool keepsHands() const { return kept && kept->toGrip; }
};

struct LegTarget {
    Angle knee; ///< flexion at the bottom
    double kneeOverSpindleMm = 0.0;
};

/// One bicycle has one saddle: a mix asks for the mean of its uses' knees.
[[nodiscard]] LegTarget legTarget(const ComfortTable& comfort, const Mix& mix);
/// The same with what the person's own position adds.
[[nodiscard]] LegTarget legTarget(const ComfortTable& comfort, const Mix& mix,
                                  const Person& person);

/// The saddle a person's leg asks for.
[[nodiscard]] SaddlePlace saddleOf(const Person& person, const Mix& mix, double crankMm,
                                   const Tables& tables);

[[nodiscard]] CrankBand crankBandFor(const ComfortTable& comfort, const Person& person);

/// One use at one place of the hands, with its part in the mix.
struct Hold {
    Use use = {};
    GripPlace place = {};
    double share = 0.0; ///< of all riding
    Point fromClamp = Point::Zero();
    UpperLimbs limbs;
    UpperWindows windows;
    Ease ease;
};

/// Every way a bar is held in a mix; a drop bar at hoods, tops and drops by time. Where a position
/// is kept, the costs are those about the kept grip: `fromClamp` is shifted so that it is the best
/// one, and they weigh more.
[[nodiscard]] std::vector<Hold> holdsOf(const Person& person, const Mix& mix, const Bar& bar,
                                        const Tables& tables);

/// Mixed and eased window cost of a bar whose clamp is at `clamp`.
[[nodiscard]] double postureCost(const std::vector<Hold>& holds, const Point& hip,
                                 const Point& clamp);

/// The clamp position at which that cost is least, within 0.1 mm.
[[nodiscard]] Point comfortableClamp(const std::vector<Hold>& holds, const Point& hip);

} // namespace tripoise
