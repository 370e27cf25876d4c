// SPDX-License-Identifier: MIT
#include "posture/saddle_rules.h"

#include <algorithm>

namespace tripoise {

double heightByRule(const SaddleRule& rule, double inseamMm, Angle knee, Angle seatAxis,
                    double crankMm)
{
    const double held = std::max(inseamMm, rule.leastInseamMm);
    const double height = rule.constantMm + rule.perInseam * held + rule.perKneeMm * knee.deg()
                          + rule.perInseamSeatAngle * held * seatAxis.deg();
    return height * inseamMm / held - (rule.fromPedal ? crankMm : 0.0);
}

} // namespace tripoise
