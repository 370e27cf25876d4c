// SPDX-License-Identifier: MIT
#include "handling/wheel_size.h"

#include <algorithm>
#include <cmath>

namespace tripoise {

const RimSize* rimOf(std::span<const RimSize> rims, double beadSeatMm)
{
    constexpr double sameMm = 0.5; // bead seats are whole millimetres
    for (const RimSize& rim : rims)
        if (std::abs(rim.beadSeatMm - beadSeatMm) < sameMm)
            return &rim;
    return nullptr;
}

std::optional<double> nextBelow(std::span<const double> values, double value)
{
    std::optional<double> next;
    for (const double one : values)
        if (one < value && (!next || one > *next))
            next = one;
    return next;
}

const RimSize* nextSmaller(std::span<const RimSize> rims, double beadSeatMm)
{
    const RimSize* next = nullptr;
    for (const RimSize& rim : rims)
        if (rim.common && rim.beadSeatMm < beadSeatMm
            && (!next || rim.beadSeatMm > next->beadSeatMm))
            next = &rim;
    return next;
}

FrameSize withWheel(FrameSize frame, double beadSeatMm, double tyreMm)
{
    if (!frame.mounting)
        frame.mounting.emplace();
    frame.mounting->beadSeatMm = beadSeatMm;
    frame.mounting->tyreMm = tyreMm;
    return frame;
}

FrameSize withoutMudguard(FrameSize frame)
{
    if (frame.mounting)
        frame.mounting->mudguard.reset();
    return frame;
}

std::optional<FrameSize> onNarrowerTyre(const FrameSize& frame, const Skeleton& skeleton,
                                        std::span<const double> tyresMm)
{
    const auto tyre = nextBelow(tyresMm, skeleton.tyreMm);
    return tyre ? std::optional(withWheel(frame, skeleton.beadSeatMm, *tyre)) : std::nullopt;
}

std::optional<FrameSize> onSmallerRim(const FrameSize& frame, const Skeleton& skeleton,
                                      std::span<const RimSize> rims)
{
    const RimSize* rim = nextSmaller(rims, skeleton.beadSeatMm);
    if (!rim)
        return std::nullopt;
    const double widest = frame.wheel.maxTyreMm.value_or(skeleton.tyreMm);
    return withWheel(frame, rim->beadSeatMm, std::min(skeleton.tyreMm, widest));
}

} // namespace tripoise
