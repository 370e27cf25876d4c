// SPDX-License-Identifier: MIT
//
// How long the drawing takes to be worked out and painted in software, at the sizes a window's
// centre pane has. 16.7 ms is one frame at 60 Hz; a drag must leave most of it to others.
#include "support.h"

#include "drawing/layout.h"
#include "drawing/painter.h"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <benchmark/benchmark.h>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Case {
    Fitting fitting;
    Prepared prepared;
    Advice advice;
};

const Case& demo()
{
    static const Case made = [] {
        Case loaded;
        loaded.fitting = std::get<Fitting>(readFitting(
            textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/between-two-sizes.json")), tables()));
        loaded.prepared = prepare(loaded.fitting.frames, loaded.fitting.stock, tables());
        loaded.advice = advise(loaded.fitting.rider, loaded.fitting.riding, loaded.fitting.current,
                               loaded.prepared, tables());
        return loaded;
    }();
    return made;
}

void sizes(benchmark::internal::Benchmark* bench)
{
    bench->Args({640, 740})->Args({1280, 800})->Unit(benchmark::kMillisecond);
}

QRectF areaOf(const benchmark::State& state)
{
    return {0.0, 0.0, static_cast<double>(state.range(0)), static_cast<double>(state.range(1))};
}

void sketch(benchmark::State& state)
{
    for (auto _ : state)
        benchmark::DoNotOptimize(
            makeSideView(demo().advice, demo().fitting.riding.mix, demo().prepared, tables()));
}
BENCHMARK(sketch)->Unit(benchmark::kMillisecond);

void layout(benchmark::State& state)
{
    const SideView view =
        makeSideView(demo().advice, demo().fitting.riding.mix, demo().prepared, tables());
    for (auto _ : state)
        benchmark::DoNotOptimize(layOut(areaOf(state), view, {}));
}
BENCHMARK(layout)->Apply(sizes);

void file(benchmark::State& state)
{
    const SideView view =
        makeSideView(demo().advice, demo().fitting.riding.mix, demo().prepared, tables());
    const QRectF area = areaOf(state);
    QImage image(area.size().toSize(), QImage::Format_ARGB32_Premultiplied);
    for (auto _ : state) {
        QPainter painter(&image);
        paintSideView(painter, area, view, Theme::day(), {});
    }
}
BENCHMARK(file)->Apply(sizes);

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
