// SPDX-License-Identifier: MIT
//
// The real window in software at 1280 x 800: from an edit to the frame that shows its decision, and
// from a step of a drag to its frame. 16.7 ms is one frame at 60 Hz. Each counter is a percentile
// in milliseconds over all steps of the run.
#include "window/window_fixture.h"

#include "board/board.h"

#include <QElapsedTimer>
#include <QtQml/QQmlExtensionPlugin>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <vector>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;

namespace {

constexpr int stepCount = 1000;
constexpr int patienceMs = 1000;

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

void report(benchmark::State& state, std::vector<double> times)
{
    std::sort(times.begin(), times.end());
    const auto at = [&](double share) {
        return times[std::size_t(std::lround(share * double(times.size() - 1)))];
    };
    state.counters["p50"] = at(0.5);
    state.counters["p90"] = at(0.9);
    state.counters["p99"] = at(0.99);
    state.counters["most"] = times.back();
}

void edit(benchmark::State& state)
{
    const OpenWindow open(demoFile("between-two-sizes"));
    if (!stands(open))
        return state.SkipWithError("the window did not come up");
    std::vector<double> times;
    for (auto _ : state) {
        Fitting next = open.session()->fitting();
        double& inseam = next.rider.measurements.front().readings.front();
        inseam += times.size() % 40 < 20 ? 1.0 : -1.0;
        const double took = frameTime(
            open.window(), [&] { open.session()->edit(std::move(next), QStringLiteral("tape")); },
            [&] { return open.session()->settled(); });
        times.push_back(took);
        state.SetIterationTime(took * 1e-3);
    }
    report(state, times);
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
            open.window(), [&] { QTest::mouseMove(open.window(), to); }, [] { return true; });
        times.push_back(took);
        state.SetIterationTime(took * 1e-3);
    }
    QTest::mouseRelease(open.window(), Qt::LeftButton, {}, at);
    report(state, times);
}
BENCHMARK(drag)->Iterations(stepCount)->UseManualTime()->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    qputenv("QT_QPA_UPDATE_IDLE_TIME", "1"); // as main() has it
    const OwnFolders folders;
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
