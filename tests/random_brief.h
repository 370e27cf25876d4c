// SPDX-License-Identifier: MIT
//
// Riders, frames and boxes of parts of every plausible kind, from a seed.
#pragma once

#include "support.h"

#include <cmath>
#include <random>

namespace tripoise::test {

struct RandomBrief {
    Rider rider;
    Riding riding;
    std::vector<FrameSize> frames;
    Bicycle bicycle;
    Stock stock;
};

inline Fitting fittingOf(const RandomBrief& brief)
{
    Fitting fitting;
    fitting.rider = brief.rider;
    fitting.riding = brief.riding;
    fitting.frames = brief.frames;
    fitting.bicycle = brief.bicycle;
    fitting.stock = brief.stock;
    return fitting;
}

class RandomBriefs {
public:
    explicit RandomBriefs(unsigned seed) : m_random(seed) {}

    RandomBrief next()
    {
        RandomBrief brief;
        brief.rider.sex = chance(0.5) ? Sex::Male : Sex::Female;
        brief.rider.flexibility = static_cast<Flexibility>(m_random() % 3);
        brief.rider.heelHabit = static_cast<HeelHabit>(m_random() % 3);
        const double stature = between(1480, 2000);
        brief.rider.measurements = {{Quantity::Stature, {stature}, {}},
                                    {Quantity::Inseam, {stature * between(0.44, 0.51)}, {}}};
        if (chance(0.5))
            brief.rider.measurements.push_back(
                {Quantity::ArmToGrip, {stature * between(0.35, 0.41)}, {}});

        const Use first = allUses[m_random() % allUses.size()];
        const Use second = allUses[m_random() % allUses.size()];
        const double share = chance(0.3) ? 1.0 : between(0.0, 1.0);
        brief.riding.mix.share[indexOf(first)] += share;
        brief.riding.mix.share[indexOf(second)] += 1.0 - share;
        brief.riding.traffic = std::fmod(stature, 2.0) < 1.0;

        const double stack = between(490, 640);
        const double reach = between(340, 420);
        for (int i = 0; i < 2; ++i) {
            FrameSize frame;
            frame.model = "random";
            frame.size = i ? "larger" : "smaller";
            frame.geometry.stackMm = stack + 24.0 * i;
            frame.geometry.reachMm = reach + 11.0 * i;
            frame.geometry.headAngleDeg = between(69, 74);
            frame.geometry.seatAngleDeg = between(71, 76);
            if (chance(0.8))
                frame.geometry.seatTubeMm = between(380, 600);
            if (chance(0.8))
                frame.geometry.standoverMm = between(680, 880);
            if (chance(0.5))
                frame.headset.maxSpacersMm = between(0, 60);
            if (chance(0.3))
                frame.headset.steererLengthMm = between(200, 300);
            if (chance(0.1))
                frame.headset.steererMm = 25.4;
            brief.frames.push_back(frame);
        }
        for (int i = 0, count = 1 + static_cast<int>(m_random() % 8); i < count; ++i) {
            Stem stem;
            stem.lengthMm = 40.0 + 10.0 * static_cast<double>(m_random() % 9);
            stem.angle = Angle::degrees(std::array{0.0, 6.0, 10.0, 17.0, 30.0}[m_random() % 5]);
            stem.reversible = chance(0.8);
            if (chance(0.1))
                stem.barClampMm = 25.4;
            brief.stock.stems.push_back(stem);
        }
        for (int i = 0, count = 1 + static_cast<int>(m_random() % 3); i < count; ++i) {
            Bar bar;
            bar.kind = static_cast<BarKind>(m_random() % 3);
            bar.widthMm = bar.kind == BarKind::Drop ? between(380, 460) : between(540, 700);
            brief.stock.bars.push_back(bar);
        }
        for (int i = 0, count = static_cast<int>(m_random() % 5); i < count; ++i)
            brief.stock.spacersMm.push_back(std::array{2.5, 5.0, 10.0, 20.0}[m_random() % 4]);
        for (int i = 0, count = 1 + static_cast<int>(m_random() % 3); i < count; ++i)
            brief.stock.cranksMm.push_back(155.0 + 5.0 * static_cast<double>(m_random() % 5));
        return brief;
    }

    double between(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }
    bool chance(double probability) { return between(0.0, 1.0) < probability; }

private:
    std::mt19937 m_random;
};

} // namespace tripoise::test
