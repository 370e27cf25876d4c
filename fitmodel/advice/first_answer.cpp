// SPDX-License-Identifier: MIT
#include "advice/first_answer.h"

namespace tripoise {

Advice firstAnswer(const Rider& rider, const Posterior& posterior, const Riding& riding,
                   const std::optional<CurrentBike>& current, const Bicycle& bicycle,
                   const Stock& stock, const Tables& tables, const std::stop_token& stop,
                   std::optional<Position> position)
{
    const ReferenceFrame& reference = tables.weights.referenceFrame;
    const double stature = posterior.valueOf(Quantity::Stature);
    FrameSize frame;
    frame.geometry.stackMm = reference.stackPerStature * stature;
    frame.geometry.reachMm = reference.reachPerStature * stature;
    frame.geometry.headAngleDeg = reference.headAngleDeg;
    frame.geometry.seatAngleDeg = reference.seatAngleDeg;
    const Prepared prepared = prepare({&frame, 1}, bicycle, stock, tables, stop);
    return advise(rider, posterior, riding, current, prepared, tables, stop, position);
}

} // namespace tripoise
