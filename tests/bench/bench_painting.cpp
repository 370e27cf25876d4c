// SPDX-License-Identifier: MIT
//
// How long the drawing takes to be worked out and painted in software, at the sizes a window's
// centre pane has. 16.7 ms is one frame at 60 Hz; a drag must leave most of it to others.
#include "support.h"

#include "advice/trial.h"
#include "drawing/canvas.h"
#include "drawing/painter.h"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <benchmark/benchmark.h>

#include <cmath>

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
        loaded.prepared =
            prepare(loaded.fitting.frames, loaded.fitting.bicycle, loaded.fitting.stock, tables());
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

/// What a drag does in each frame: the trial, its sketch, the layout with labels held, the paint
/// over what is kept as a picture.
void drag(benchmark::State& state)
{
    const Case& made = demo();
    const Candidate& named = made.advice.leading();
    const PreparedSize& size = made.prepared.sizes[named.size];
    const QRectF area = areaOf(state);
    DrawingOptions options;
    options.furniture = false;
    options.lettersPx = 11.0;
    options.kneePath = true;
    Shown shown = asAdvised(made.advice);
    shown.ridden = &*made.fitting.current;
    const SideView before =
        makeSideView(made.advice, shown, made.fitting.riding.mix, made.prepared, tables());
    const DrawingLayout at = layOut(area, before, {}, options);
    options.viewport = at.fit;
    options.spots = spotsOf(at);
    options.holdSpots = true;
    QImage behind(area.size().toSize(), QImage::Format_ARGB32_Premultiplied);
    {
        QPainter painter(&behind);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.fillRect(area, Theme::day().paper);
        paintBehind({painter, Theme::day(), at.fit, at.steps}, before, at, options);
    }
    QImage image(behind.size(), QImage::Format_ARGB32_Premultiplied);
    double pull = 0.0;
    for (auto _ : state) {
        pull = std::fmod(pull + 1.0, 60.0);
        Contacts contacts = contactsOf(named.best->setup);
        contacts.grip += Point(-pull, 0.4 * pull);
        const Tried tried =
            tryContacts(contacts, *named.best, size,
                        {made.advice.person, made.fitting.riding, made.prepared, tables()});
        shown.tried = &tried;
        const SideView view =
            makeSideView(made.advice, shown, made.fitting.riding.mix, made.prepared, tables());
        const DrawingLayout layout = layOut(area, view, {}, options);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.drawImage(0, 0, behind);
        paintBefore({painter, Theme::day(), layout.fit, layout.steps}, view, layout, options);
    }
}
BENCHMARK(drag)->Apply(sizes);

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
