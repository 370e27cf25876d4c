// SPDX-License-Identifier: MIT
//
// The view from above: shoes on their pedals, the front wheel steered, before anything is painted.
// Millimetres; x forward, and y to the rider's left, so that the rider's right is below as the
// bicycle faces to the right. How near shoe and wheel come is the model's (handling/toe.h).
#pragma once

#include "advice/advise.h"

#include <array>
#include <optional>
#include <vector>

namespace tripoise {

/// What can be turned.
struct PlanPose {
    Angle steer; ///< to the left, so that the wheel's back comes to the right shoe
    Angle crank; ///< of the right pedal, above level forward

    bool operator==(const PlanPose&) const = default;
};

struct PlanView {
    bool drawn = false;
    SweptWheel wheel;
    ShoeOutline shoe; ///< of the right foot; the left is its mirror
    Pedalling pedalling;
    double heelBehindBallMm = 0.0;
    double pedalWidthMm = 0.0;
    Spot headTop = Spot::Zero(); ///< upper end of the steering axis
    Spot clamp = Spot::Zero();
    Spot grip = Spot::Zero(); ///< right
    double barBeyondPalmMm = 0.0;
    bool mudguard = false;
    PlanPose nearest; ///< where shoe and wheel come nearest, or straight and level
    /// There, straight ahead, negative where they meet; empty where the shoe passes beside the
    /// wheel.
    std::optional<double> roomMm;

    struct Bounds {
        Point low = Point::Zero();
        Point high = Point::Zero();
    };
    [[nodiscard]] Bounds bounds() const;
};

[[nodiscard]] PlanView makePlanView(const Candidate& candidate, const Person& person,
                                    const Prepared& prepared, const Tables& tables);

enum class Side { Right, Left };

/// How near one shoe comes to the wheel; negative when they meet.
[[nodiscard]] double gapMm(const PlanView& view, const PlanPose& pose, Side side);
/// The nearer of both.
[[nodiscard]] double gapMm(const PlanView& view, const PlanPose& pose);

/// Lines of one pose, in the plan.
[[nodiscard]] std::vector<Point> shoeLine(const PlanView& view, const PlanPose& pose, Side side);
[[nodiscard]] Point pedalAt(const PlanView& view, const PlanPose& pose, Side side);
/// The middle of the wheel's section, all round.
[[nodiscard]] std::vector<Point> wheelLine(const PlanView& view, const PlanPose& pose);
/// The wheel at the height of a shoe's toe: from its back to its front.
[[nodiscard]] std::optional<std::array<Point, 2>> wheelAtShoe(const PlanView& view,
                                                              const PlanPose& pose, Side side);
/// The back of the room it takes when steered either way, at the height of a shoe's toe.
[[nodiscard]] std::vector<Point> sweptLine(const PlanView& view, const PlanPose& pose, Side side);
/// From end to end of the bar.
[[nodiscard]] std::vector<Point> barLine(const PlanView& view, const PlanPose& pose);

} // namespace tripoise
