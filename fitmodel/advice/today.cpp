// SPDX-License-Identifier: MIT
#include "advice/today.h"

#include <cmath>

namespace tripoise {
namespace {

double tenth(double mm)
{
    return std::round(10.0 * mm) / 10.0;
}

/// Of the saddle point above the bottom bracket; nothing where the setback is longer than the
/// straight line.
std::optional<double> saddleUp(double heightMm, double setbackMm)
{
    const double square = heightMm * heightMm - setbackMm * setbackMm;
    return square > 0.0 ? std::optional(std::sqrt(square)) : std::nullopt;
}

} // namespace

Bar barLike(std::optional<BarKind> kind, const Stock& stock, const Tables& tables)
{
    const BarKind wanted =
        kind.value_or(stock.bars.empty() ? BarKind::Flat : stock.bars.front().kind);
    for (const Bar& one : stock.bars)
        if (one.kind == wanted)
            return one;
    Bar usual;
    usual.kind = wanted;
    const Range& beyond = tables.weights.flatBarBeyondShouldersMm;
    usual.widthMm = tables.populations.balanced.mean(static_cast<int>(Quantity::Biacromial))
                    + 0.5 * (beyond.low + beyond.high);
    return usual;
}

FromSaddle fromSaddle(const CurrentBike& bike, const TodayParts& parts)
{
    FromSaddle taken;
    taken.heightMm = bike.saddleHeightMm;
    taken.noseBehindMm = bike.noseSetbackMm;
    taken.barBelowMm = bike.barBelowSaddleMm;
    taken.noseToBarMm = bike.noseToBarMm;
    if (!bike.saddleSetbackMm)
        return taken;
    const double nose = *bike.saddleSetbackMm - parts.noseAheadMm; // behind the bottom bracket
    taken.noseBehindMm = tenth(nose);
    if (!bike.saddleHeightMm || !bike.gripReachMm || !bike.gripHeightMm)
        return taken;
    const auto up = saddleUp(*bike.saddleHeightMm, *bike.saddleSetbackMm);
    if (!up)
        return taken;
    const Point bar = Point(*bike.gripReachMm, *bike.gripHeightMm) - parts.gripFromBar;
    const double below = *up - bar.y();
    taken.barBelowMm = tenth(below);
    taken.noseToBarMm = tenth(std::hypot(bar.x() + nose, below));
    return taken;
}

CurrentBike withContacts(CurrentBike bike, const FromSaddle& taken, const TodayParts& parts)
{
    bike.saddleHeightMm = taken.heightMm;
    for (auto* asTaken :
         {&bike.saddleSetbackMm, &bike.noseSetbackMm, &bike.barBelowSaddleMm, &bike.noseToBarMm})
        asTaken->reset();
    if (taken.barBelowMm || taken.noseToBarMm) {
        bike.gripReachMm.reset();
        bike.gripHeightMm.reset();
    }
    if (!taken.noseBehindMm)
        return bike;
    const double setback = *taken.noseBehindMm + parts.noseAheadMm;
    bike.saddleSetbackMm = tenth(setback);
    if (!taken.heightMm || !taken.barBelowMm || !taken.noseToBarMm || tapeTooShort(taken))
        return bike;
    const auto up = saddleUp(*taken.heightMm, setback);
    if (!up)
        return bike;
    const double level =
        std::sqrt(*taken.noseToBarMm * *taken.noseToBarMm - *taken.barBelowMm * *taken.barBelowMm);
    const Point bar(level - *taken.noseBehindMm, *up - *taken.barBelowMm);
    const Point grip = bar + parts.gripFromBar;
    bike.gripReachMm = tenth(grip.x());
    bike.gripHeightMm = tenth(grip.y());
    return bike;
}

bool tapeTooShort(const FromSaddle& taken)
{
    return taken.barBelowMm && taken.noseToBarMm
           && *taken.noseToBarMm <= std::abs(*taken.barBelowMm);
}

} // namespace tripoise
