// SPDX-License-Identifier: MIT
//
// A rigid body that is alike on both sides of the bicycle's plane: its mass, its centre in the
// plane, and its inertia about that centre. Bodies are put together by the parallel-axis theorem
// (Huygens-Steiner).
#pragma once

#include "base/axes.h"

namespace tripoise {

/// About the centre, along the bike axes; kg mm^2. The sides cancel in the other two products.
struct Inertia {
    double xx = 0.0; ///< against rolling, about the forward axis
    double yy = 0.0; ///< against turning, about the upward axis
    double zz = 0.0; ///< against pitching, about the sideways axis
    double xy = 0.0; ///< sum of m x y: positive where what is higher is also further forward

    bool operator==(const Inertia&) const = default;
};

struct RigidBody {
    double massKg = 0.0;
    Point centre = Point::Zero();
    Inertia inertia;

    bool operator==(const RigidBody&) const = default;
};

/// The inertia about another point; `fromCentre` leads there.
[[nodiscard]] inline Inertia inertiaAbout(const RigidBody& body, const Point& fromCentre)
{
    const double m = body.massKg;
    const double x = fromCentre.x();
    const double y = fromCentre.y();
    return {body.inertia.xx + m * y * y, body.inertia.yy + m * x * x,
            body.inertia.zz + m * (x * x + y * y), body.inertia.xy + m * x * y};
}

/// Two bodies fixed to each other; one without mass changes nothing.
[[nodiscard]] inline RigidBody together(const RigidBody& one, const RigidBody& other)
{
    const double mass = one.massKg + other.massKg;
    if (mass <= 0.0)
        return one;
    RigidBody whole;
    whole.massKg = mass;
    whole.centre = (one.massKg * one.centre + other.massKg * other.centre) / mass;
    const Inertia a = inertiaAbout(one, whole.centre - one.centre);
    const Inertia b = inertiaAbout(other, whole.centre - other.centre);
    whole.inertia = {a.xx + b.xx, a.yy + b.yy, a.zz + b.zz, a.xy + b.xy};
    return whole;
}

} // namespace tripoise
