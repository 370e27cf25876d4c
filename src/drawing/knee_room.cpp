// SPDX-License-Identifier: MIT
#include "drawing/knee_room.h"

#include "drawing/proportions.h"

#include <limits>

namespace tripoise {

KneeRoom roomAtTheKnee(const SideView& view)
{
    const RiderSketch& rider = *view.rider;
    const double knee = proportions::kneeHalf * rider.statureMm;
    std::vector<Point> bar = view.chosen.cockpit->bar.curve;
    bar.push_back(rider.grip);
    KneeRoom room;
    room.mm = rider.kneeToBarMm;
    double least = std::numeric_limits<double>::infinity();
    for (const TurnStep& step : rider.turn) {
        for (const Point& point : bar) {
            const Point way = point - step.kneeAt;
            const double away = way.norm();
            if (away >= least)
                continue;
            least = away;
            room = {rider.kneeToBarMm, step.crank, step.kneeAt, point};
            if (away > 0.0)
                room.front += knee / away * way;
        }
    }
    return room;
}

} // namespace tripoise
