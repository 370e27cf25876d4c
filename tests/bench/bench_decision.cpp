// SPDX-License-Identifier: MIT
//
// How long a posture and a decision take, and the same optimum by a general-purpose optimiser in
// the same run: read the ratio, not the clock.
#include "support.h"

#include "advice/advise.h"

#include <benchmark/benchmark.h>
#include <nlopt.hpp>

#include <random>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Case {
    UpperLimbs limbs;
    Point hip;
    Point grip;
    UpperWindows windows;
};

/// Grips around the comfortable one, as a search meets them.
std::vector<Case> cases()
{
    std::mt19937 random(1);
    std::normal_distribution<double> away(0.0, 35.0);
    std::vector<Case> result;
    const UpperLimbs limbs = upperLimbs(averageMan(), 245.0);
    for (int i = 0; i < 1024; ++i) {
        const auto use = allUses[static_cast<std::size_t>(i) % allUses.size()];
        const UpperWindows windows =
            windowsFor(tables().comfort, use, GripPlace::Flat, Flexibility::Ordinary);
        const Point hip(-215.0, 780.0);
        const Point ideal = comfortableGrip(limbs, hip, windows);
        result.push_back({limbs, hip, ideal + Point(away(random), away(random)), windows});
    }
    return result;
}

void posture(benchmark::State& state)
{
    const auto all = cases();
    std::size_t i = 0;
    for (auto _ : state) {
        const Case& c = all[i++ % all.size()];
        benchmark::DoNotOptimize(solveUpperBody(c.limbs, c.hip, c.grip, c.windows));
    }
}
BENCHMARK(posture);

void postureByGeneralOptimiser(benchmark::State& state)
{
    const auto all = cases();
    std::size_t i = 0;
    for (auto _ : state) {
        const Case& c = all[i++ % all.size()];
        nlopt::opt optimiser(nlopt::LN_COBYLA, 1);
        optimiser.set_lower_bounds(0.0);
        optimiser.set_upper_bounds(Angle::degrees(90.0).rad());
        optimiser.set_xtol_abs(1e-6);
        optimiser.set_min_objective(
            [](const std::vector<double>& x, std::vector<double>&, void* data) {
                const Case& at = *static_cast<const Case*>(data);
                return costAtElbow(at.limbs, at.hip, at.grip, Angle::radians(x[0]), at.windows);
            },
            const_cast<Case*>(&c));
        std::vector<double> elbow{c.windows.elbow.centre.rad()};
        double least = 0.0;
        optimiser.optimize(elbow, least);
        benchmark::DoNotOptimize(least);
    }
}
BENCHMARK(postureByGeneralOptimiser);

/// The demo pair with a box of parts that makes over 5,000 cockpits a size.
Fitting fullBox()
{
    Fitting fitting = demoFitting("between-two-sizes");
    fitting.stock.stems.clear();
    for (int length = 40; length <= 130; length += 5)
        for (const double angle : {0.0, 6.0, 10.0, 17.0, 25.0}) {
            Stem stem;
            stem.lengthMm = length;
            stem.angle = Angle::degrees(angle);
            fitting.stock.stems.push_back(stem);
        }
    fitting.stock.spacersMm = {1.0, 2.0, 3.0, 5.0, 10.0, 20.0};
    return fitting;
}

void decideBetweenTwo(benchmark::State& state, const Fitting& fitting)
{
    const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
    for (auto _ : state)
        benchmark::DoNotOptimize(
            advise(fitting.rider, fitting.riding, fitting.current, prepared, tables()));
    state.counters["cockpits"] = static_cast<double>(prepared.sizes.front().count());
}
void decideFullBox(benchmark::State& state)
{
    decideBetweenTwo(state, fullBox());
}
BENCHMARK(decideFullBox)->Unit(benchmark::kMillisecond);
void decideDemo(benchmark::State& state)
{
    decideBetweenTwo(state, demoFitting("between-two-sizes"));
}
BENCHMARK(decideDemo)->Unit(benchmark::kMillisecond);
void decideDropBars(benchmark::State& state)
{
    decideBetweenTwo(state, demoFitting("short-rider-large-wheels"));
}
BENCHMARK(decideDropBars)->Unit(benchmark::kMillisecond);

void prepareFullBox(benchmark::State& state)
{
    const Fitting fitting = fullBox();
    for (auto _ : state)
        benchmark::DoNotOptimize(prepare(fitting.frames, fitting.bicycle, fitting.stock, tables()));
}
BENCHMARK(prepareFullBox)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
