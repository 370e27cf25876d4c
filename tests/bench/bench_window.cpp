// SPDX-License-Identifier: MIT
//
// The real window in software at 1280 x 800: from an edit to the frame that shows its decision, and
// from a step of a drag to its frame; no pause between them. 16.7 ms is one frame at 60 Hz. Each
// counter is a percentile in milliseconds over all steps of the run.
#include "window/window_fixture.h"

#include "advice/mix.h"
#include "board/board.h"
#include "board/top_view.h"

#include <QElapsedTimer>
#include <QImage>
#include <QPainter>
#include <QtQml/QQmlExtensionPlugin>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;

namespace {

constexpr int stepCount = 1000;
constexpr int patienceMs = 1000;
constexpr int thereAndBack = 40; // steps of one kind of edit, half of them back again

/// What is edited, by a step up or down.
struct Kind {
    const char* name;
    void (*step)(Fitting& fitting, double by);
};
constexpr std::array kinds{
    Kind{"stature", [](Fitting& f, double by) { f.rider.measurements[0].readings.front() += by; }},
    Kind{"inseam",
         [](Fitting& f, double by) {
             for (double& reading : f.rider.measurements[1].readings)
                 reading += by;
         }},
    Kind{"mix",
         [](Fitting& f, double by) {
             f.riding.mix =
                 withShare(f.riding.mix, Use::Touring, f.riding.mix.of(Use::Touring) + 0.03 * by);
         }},
    Kind{"luggage", [](Fitting& f, double by) { f.riding.luggage.rearKg += 0.5 * by; }},
    Kind{"stack", [](Fitting& f, double by) { f.frames[1].geometry.stackMm += by; }},
    Kind{"stem", [](Fitting& f, double by) { f.stock.stems.back().lengthMm += by; }},
    Kind{"weight", [](Fitting& f, double by) { f.choices.weightFactor[0] += 0.05 * by; }},
    Kind{"today", [](Fitting& f, double by) { *f.current->saddleHeightMm += by; }}};

/// The milliseconds from `act` to the first frame for which `ready` holds.
template <typename Act, typename Ready>
double frameTime(QQuickWindow* window, const Act& act, const Ready& ready)
{
    bool shown = false;
    const QMetaObject::Connection connection = QObject::connect(
        window, &QQuickWindow::frameSwapped, window, [&] { shown = ready(); },
        Qt::DirectConnection);
    QElapsedTimer timer;
    timer.start();
    act();
    while (!shown && !timer.hasExpired(patienceMs))
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    QObject::disconnect(connection);
    return double(timer.nsecsElapsed()) * 1e-6;
}

bool stands(const OpenWindow& open)
{
    open.window()->resize(1280, 800);
    const bool settled = open.settle();
    QTest::qWait(200); // what is laid out at leisure
    return settled;
}

double percentile(const std::vector<double>& sorted, double share)
{
    return sorted[std::size_t(std::lround(share * double(sorted.size() - 1)))];
}

void report(benchmark::State& state, std::vector<double> times)
{
    std::sort(times.begin(), times.end());
    state.counters["p50"] = percentile(times, 0.5);
    state.counters["p90"] = percentile(times, 0.9);
    state.counters["p99"] = percentile(times, 0.99);
    state.counters["most"] = times.back();
}

/// A fixed amount of arithmetic, of about an edit's time: what this machine makes of it while
/// others use it too. Read the window's percentiles against these.
void onlyArithmetic(benchmark::State& state)
{
    std::vector<double> times;
    for (auto _ : state) {
        QElapsedTimer timer;
        timer.start();
        double value = 1.0;
        for (int i = 0; i < 2'000'000; ++i)
            benchmark::DoNotOptimize(value = value * 1.0000001 + 1e-9);
        times.push_back(double(timer.nsecsElapsed()) * 1e-6);
        state.SetIterationTime(times.back() * 1e-3);
    }
    report(state, times);
}
BENCHMARK(onlyArithmetic)->Iterations(stepCount)->UseManualTime()->Unit(benchmark::kMillisecond);

void edit(benchmark::State& state)
{
    const OpenWindow open(demoFile("between-two-sizes"));
    if (!stands(open))
        return state.SkipWithError("the window did not come up");
    std::vector<double> times;
    std::array<std::vector<double>, kinds.size()> timesOf;
    for (auto _ : state) {
        const std::size_t kind = times.size() % kinds.size();
        const std::size_t step = timesOf[kind].size() % thereAndBack;
        Fitting next = open.session()->fitting();
        kinds[kind].step(next, step < thereAndBack / 2 ? 1.0 : -1.0);
        const double took = frameTime(
            open.window(),
            [&] { open.session()->edit(std::move(next), QLatin1String(kinds[kind].name)); },
            [&] { return open.session()->settled(); });
        if (!open.session()->settled() || !open.session()->solution().advice.solved)
            return state.SkipWithError("an edit without a decision");
        times.push_back(took);
        timesOf[kind].push_back(took);
        state.SetIterationTime(took * 1e-3);
    }
    report(state, times);
    for (std::size_t kind = 0; kind < kinds.size(); ++kind) {
        std::sort(timesOf[kind].begin(), timesOf[kind].end());
        state.counters[std::string("half of ") + kinds[kind].name] = percentile(timesOf[kind], 0.5);
    }
}
BENCHMARK(edit)->Iterations(stepCount)->UseManualTime()->Unit(benchmark::kMillisecond);

void drag(benchmark::State& state)
{
    const OpenWindow open(demoFile("between-two-sizes"));
    if (!stands(open))
        return state.SkipWithError("the window did not come up");
    const auto* board = static_cast<Board*>(open.item("drawing"));
    const QPoint at = board->mapToScene(*board->placeOfHandle(Handle::Grip)).toPoint();
    std::vector<double> times;
    QTest::mousePress(open.window(), Qt::LeftButton, {}, at);
    for (auto _ : state) {
        const int pull = int(times.size()) % 40;
        const QPoint to = at - QPoint(pull < 20 ? pull : 40 - pull, 5);
        const double took = frameTime(
            open.window(), [&] { QTest::mouseMove(open.window(), to); },
            [&] { return board->isPulled(); });
        times.push_back(took);
        state.SetIterationTime(took * 1e-3);
    }
    QTest::mouseRelease(open.window(), Qt::LeftButton, {}, at);
    report(state, times);
}
BENCHMARK(drag)->Iterations(stepCount)->UseManualTime()->Unit(benchmark::kMillisecond);

/// The view from above at 1400 x 1000, steered step by step: measured anew and painted.
void steer(benchmark::State& state)
{
    const OpenWindow open(demoFile("between-two-sizes"));
    if (!stands(open))
        return state.SkipWithError("the window did not come up");
    TopView view;
    view.setSession(open.session());
    QImage picture(1400, 1000, QImage::Format_ARGB32_Premultiplied);
    view.setSize(QSizeF(picture.size()));
    int step = 0;
    for (auto _ : state) {
        view.setSteerDeg(-60.0 + step++ % 120);
        QPainter painter(&picture);
        view.paint(&painter);
    }
}
BENCHMARK(steer)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    qputenv("QT_QPA_UPDATE_IDLE_TIME", "0"); // as main() has it
    const OwnFolders folders;
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
