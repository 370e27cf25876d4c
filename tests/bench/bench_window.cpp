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

QElapsedTimer g_clock;
std::vector<std::pair<const char*, double>> g_marks;
void mark(const char* what) { g_marks.emplace_back(what, double(g_clock.nsecsElapsed()) * 1e-6); }
std::vector<std::vector<std::pair<const char*, double>>> g_all;
int g_gc = 0;
void handler(QtMsgType, const QMessageLogContext&, const QString& m)
{
    if (m.contains(QLatin1String("GC"))) { ++g_gc; }
    if (qEnvironmentVariableIsSet("GCLOG")) fprintf(stderr, "%s\n", qPrintable(m));
}

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
    auto* w = open.window();
    QObject::connect(open.session(), &Session::settledChanged, w, [&] { mark(open.session()->settled() ? "settled" : "unsettled"); }, Qt::DirectConnection);
    QObject::connect(open.session(), &Session::solutionChanged, w, [&] { mark("answered"); }, Qt::DirectConnection);
    QObject::connect(w, &QQuickWindow::beforeFrameBegin, w, [&] { mark("framebegin"); }, Qt::DirectConnection);
    QObject::connect(w, &QQuickWindow::afterAnimating, w, [&] { mark("afterAnimating"); }, Qt::DirectConnection);
    QObject::connect(w, &QQuickWindow::beforeSynchronizing, w, [&] { mark("beforeSync"); }, Qt::DirectConnection);
    QObject::connect(w, &QQuickWindow::afterSynchronizing, w, [&] { mark("afterSync"); }, Qt::DirectConnection);
    QObject::connect(w, &QQuickWindow::beforeRendering, w, [&] { mark("beforeRender"); }, Qt::DirectConnection);
    QObject::connect(w, &QQuickWindow::afterRendering, w, [&] { mark("afterRender"); }, Qt::DirectConnection);
    QObject::connect(w, &QQuickWindow::frameSwapped, w, [&] { mark("swapped"); }, Qt::DirectConnection);
    std::vector<double> times;
    qInstallMessageHandler(handler);
    for (auto _ : state) {
        g_clock.start(); g_marks.clear(); const int gcBefore = g_gc;
        Fitting next = open.session()->fitting();
        double& inseam = next.rider.measurements.front().readings.front();
        inseam += times.size() % 40 < 20 ? 1.0 : -1.0;
        const double took = frameTime(
            open.window(), [&] { open.session()->edit(std::move(next), QStringLiteral("tape")); mark("edited"); },
            [&] { return open.session()->settled(); });
        times.push_back(took);
        if (g_gc != gcBefore) mark("GC!");
        g_all.push_back(g_marks);
        state.SetIterationTime(took * 1e-3);
    }
    for (std::size_t i = 0; i < times.size(); ++i) {
        printf("%6.2f #%zu:", times[i], i % 40);
        for (auto& [n, t] : g_all[i]) printf(" %s %.2f", n, t);
        printf("\n");
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
    qputenv("QT_QPA_UPDATE_IDLE_TIME", "0"); // as main() has it
    const OwnFolders folders;
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
