// SPDX-License-Identifier: MIT
#include "setup/bicycle.h"

#include <algorithm>

namespace tripoise {

Mounting mountingOf(const Bicycle& bicycle)
{
    return {bicycle.tyreMm, bicycle.beadSeatMm, bicycle.mudguard};
}

FrameSize mountedOn(FrameSize frame, const Bicycle& bicycle)
{
    if (!frame.mounting)
        frame.mounting = mountingOf(bicycle);
    return frame;
}

std::vector<Bar> barsFor(const Stock& stock, const Bicycle& bicycle)
{
    std::vector<Bar> bars = stock.bars;
    if (bicycle.barKind)
        std::erase_if(bars, [&](const Bar& bar) { return bar.kind != *bicycle.barKind; });
    return bars;
}

} // namespace tripoise
