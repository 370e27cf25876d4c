// SPDX-License-Identifier: MIT
//
// How long a geometry table takes to be read and closed, fault search included; and one size
// brought to agreement, beside a generic solver on the same numbers in the same run: read the
// ratio, not the clock.
#include "generic_solver.h"
#include "table_support.h"

#include "frame/closure.h"
#include "table/read_table.h"

#include <benchmark/benchmark.h>

using namespace tripoise;
using namespace tripoise::test;

namespace {

/// A table of so many sizes with thirteen columns and one wrong entry, as a page prints it.
std::string tableText(std::size_t sizes)
{
    const std::vector<std::pair<Column, const char*>> headings{
        {Column::Stack, "Stack (mm)"},
        {Column::Reach, "Reach (mm)"},
        {Column::SeatAngle, "Seat angle"},
        {Column::HeadAngle, "Head angle"},
        {Column::HeadTube, "Head tube"},
        {Column::TopTube, "Effective top tube"},
        {Column::Chainstay, "Chainstay"},
        {Column::BbDrop, "BB drop"},
        {Column::Wheelbase, "Wheelbase"},
        {Column::FrontCentre, "Front centre"},
        {Column::ForkLength, "Fork length"},
        {Column::ForkOffset, "Fork offset"},
        {Column::Trail, "Trail"}};
    Random random(2);
    auto run = randomRun(5, random);
    while (run.size() < sizes) // sizes beyond a run's, so that the cost alone grows
        run.push_back(run[run.size() - 5]);
    std::string text = "Size";
    for (std::size_t i = 0; i < sizes; ++i)
        text += "\tS" + std::to_string(i);
    for (const auto& [column, heading] : headings) {
        text += std::string("\n") + heading;
        for (std::size_t i = 0; i < sizes; ++i) {
            const double step = unitOf(column) == Unit::Degree ? 0.1 : 1.0;
            const double wrong = column == Column::Wheelbase && i == 2 ? 20.0 : 0.0;
            const double value = roundedTo(run[i].of(column) + wrong, step);
            text += '\t' + QString::number(value, 'f', step < 1.0 ? 1 : 0).toStdString();
        }
    }
    return text;
}

void readAndClose(benchmark::State& state)
{
    const std::string text = tableText(static_cast<std::size_t>(state.range(0)));
    std::size_t contradictions = 0;
    for (auto _ : state) {
        const ReadTable read = readGeometryTable(text, headingTable());
        const ClosedTable closed = closeTable(geometryOf(read), closureTable());
        contradictions = closed.contradictions.size();
        benchmark::DoNotOptimize(contradictions);
    }
    state.counters["contradictions"] = static_cast<double>(contradictions);
    state.SetComplexityN(state.range(0));
}
BENCHMARK(readAndClose)
    ->Arg(3)
    ->Arg(6)
    ->Arg(12)
    ->Arg(24)
    ->Arg(48)
    ->Unit(benchmark::kMicrosecond)
    ->Complexity(benchmark::oN);

void readAlone(benchmark::State& state)
{
    const std::string text = tableText(12);
    for (auto _ : state)
        benchmark::DoNotOptimize(readGeometryTable(text, headingTable()));
}
BENCHMARK(readAlone)->Unit(benchmark::kMicrosecond);

std::vector<TenColumns> problems()
{
    Random random(3);
    std::vector<TenColumns> all(64);
    for (TenColumns& one : all) {
        const GeometryTable table = printed(randomRun(1, random), tenColumns());
        for (const Entry& entry : table.sizes.front().entries)
            one.rows.push_back({entry.column, entry.value, entry.step / std::sqrt(12.0)});
    }
    return all;
}

void oneSize(benchmark::State& state)
{
    const auto all = problems();
    std::size_t i = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(adjust(all[i++ % all.size()].rows, closureTable().ordinary));
}
BENCHMARK(oneSize)->Unit(benchmark::kMicrosecond);

void oneSizeByGenericSolver(benchmark::State& state)
{
    const auto all = problems();
    std::size_t i = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(solvedGenerically(all[i++ % all.size()]));
}
BENCHMARK(oneSizeByGenericSolver)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
