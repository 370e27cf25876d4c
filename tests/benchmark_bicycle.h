// SPDX-License-Identifier: MIT
//
// The benchmark bicycle of Meijaard et al. 2007 out of tests/reference/benchmark_bicycle.csv, and
// the single conversion from its SI units to the model's.
#pragma once

#include "support.h"

#include "handling/stability.h"

namespace tripoise::test {

inline constexpr double mmPerM = 1e3;
inline constexpr double mm2PerM2 = 1e6;

inline QString benchmarkText(const char* name)
{
    for (const ReferenceRow& row : reference("benchmark_bicycle.csv"))
        if (row.text("name") == QLatin1String(name))
            return row.text("value");
    throw std::runtime_error(std::string("no row ") + name);
}
inline double benchmark(const char* name)
{
    return benchmarkText(name).toDouble();
}

inline WhippleBicycle benchmarkBicycle()
{
    const auto wheel = [](const std::string& which) {
        const auto of = [&which](const char* what) { return benchmark((which + what).c_str()); };
        return RollingWheel{mmPerM * of("_radius"), of("_mass"), mm2PerM2 * of("_across"),
                            mm2PerM2 * of("_spin")};
    };
    const auto body = [](const std::string& which) {
        const auto of = [&which](const char* what) { return benchmark((which + what).c_str()); };
        return RigidBody{of("_mass"),
                         mmPerM * Point(of("_x"), of("_y")),
                         {mm2PerM2 * of("_xx"), mm2PerM2 * of("_yy"), mm2PerM2 * of("_zz"),
                          mm2PerM2 * of("_xy")}};
    };
    WhippleBicycle bicycle;
    bicycle.wheelbaseMm = mmPerM * benchmark("wheelbase");
    bicycle.trailMm = mmPerM * benchmark("trail");
    bicycle.headAngle = Angle::degrees(benchmark("head_deg"));
    bicycle.gravityMmS2 = mmPerM * benchmark("g");
    bicycle.rearWheel = wheel("rear");
    bicycle.frontWheel = wheel("front");
    bicycle.rear = body("body");
    bicycle.front = body("fork");
    return bicycle;
}

} // namespace tripoise::test
