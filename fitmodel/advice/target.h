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

/// One body with its ways; made from a posterior's mean, or from one of its samples.
struct Person {
    Body body;
    Flexibility flexibility = Flexibility::Ordinary;
    Foothold foothold;
    Angle kneeShift; ///< what a saddle height ridden without complaint adds to the knee's centre
    std::optional<Sex> sex = {};             ///< for how the body's mass is spread
    std::optional<double> shoeLengthMm = {}; ///< where it was measured
    std::optional<double> soleMm = {};       ///< the same
};

struct LegTarget {
    Angle knee; ///< flexion at the bottom
    double kneeOverSpindleMm = 0.0;
};

/// One bicycle has one saddle: a mix asks for the mean of its uses' knees.
[[nodiscard]] LegTarget legTarget(const ComfortTable& comfort, const Mix& mix, Angle kneeShift);

/// The same person with the evidence of the bicycle ridden today: the saddle height is pooled with
/// the model's by their variances, and the knee's centre moves to what meets it. Adds a finding.
[[nodiscard]] Person withRiddenHeight(const Person& person, const CurrentBike& current,
                                      const Mix& mix, double crankMm, const Tables& tables,
                                      Findings& findings);

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

/// Every way a bar is held in a mix; a drop bar at hoods, tops and drops by time.
[[nodiscard]] std::vector<Hold> holdsOf(const Person& person, const Mix& mix, const Bar& bar,
                                        const Tables& tables);

/// Mixed and eased window cost of a bar whose clamp is at `clamp`.
[[nodiscard]] double postureCost(const std::vector<Hold>& holds, const Point& hip,
                                 const Point& clamp);

/// The clamp position at which that cost is least, within 0.1 mm.
[[nodiscard]] Point comfortableClamp(const std::vector<Hold>& holds, const Point& hip);

} // namespace tripoise
