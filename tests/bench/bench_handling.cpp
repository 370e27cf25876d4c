// SPDX-License-Identifier: MIT
//
// How long toe clearance and self-stability of one size take, and the same overlap by brute force
// in the same run: read the ratio, not the clock.
#include "benchmark_bicycle.h"
#include "toe_cases.h"
#include "toe_cloud.h"

#include <benchmark/benchmark.h>

using namespace tripoise;
using namespace tripoise::test;

namespace {

std::vector<ToeCase> cases()
{
    RandomToes toes(3);
    std::vector<ToeCase> all;
    for (int i = 0; i < 64; ++i)
        all.push_back(toes.next(i % 2));
    return all;
}

/// What a size asks for: the standards' measure both ways, and the overlap with the steer that
/// touches.
void toeOfASize(benchmark::State& state)
{
    const auto all = cases();
    std::size_t i = 0;
    for (auto _ : state) {
        const ToeCase& one = all[i++ % all.size()];
        benchmark::DoNotOptimize(toeClearance(one.wheel, one.pedalling.crankMm, one.shoe.outMm));
        benchmark::DoNotOptimize(
            leastToeClearance(one.wheel, one.pedalling.crankMm, one.shoe.outMm));
        benchmark::DoNotOptimize(toeOverlap(one.wheel, one.shoe, one.pedalling));
    }
}
BENCHMARK(toeOfASize)->Unit(benchmark::kMicrosecond);

void toeOfASizeThatTouches(benchmark::State& state)
{
    std::vector<ToeCase> touching;
    for (const ToeCase& one : cases())
        if (const auto found = toeOverlap(one.wheel, one.shoe, one.pedalling);
            found && found->touches)
            touching.push_back(one);
    std::size_t i = 0;
    for (auto _ : state) {
        const ToeCase& one = touching[i++ % touching.size()];
        benchmark::DoNotOptimize(toeOverlap(one.wheel, one.shoe, one.pedalling));
    }
}
BENCHMARK(toeOfASizeThatTouches)->Unit(benchmark::kMicrosecond);

void toeByBruteForce(benchmark::State& state)
{
    const auto all = cases();
    std::size_t i = 0;
    for (auto _ : state) {
        const ToeCase& one = all[i++ % all.size()];
        benchmark::DoNotOptimize(ToeCloud(one.wheel, one.shoe, one.pedalling).worst());
    }
}
BENCHMARK(toeByBruteForce)->Unit(benchmark::kMicrosecond);

void stabilityLimits(benchmark::State& state)
{
    const WhippleBicycle bicycle = benchmarkBicycle();
    for (auto _ : state)
        benchmark::DoNotOptimize(selfStability(*whippleModel(bicycle)));
}
BENCHMARK(stabilityLimits)->Unit(benchmark::kMicrosecond);

/// The picture: 0 to 10 m/s in 41 speeds, and the limits.
void stabilitySweep(benchmark::State& state)
{
    const WhippleBicycle bicycle = benchmarkBicycle();
    for (auto _ : state) {
        const WhippleModel model = *whippleModel(bicycle);
        benchmark::DoNotOptimize(selfStability(model));
        benchmark::DoNotOptimize(rootsOver(model, 10'000.0, 40));
    }
}
BENCHMARK(stabilitySweep)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
