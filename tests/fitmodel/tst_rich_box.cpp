// SPDX-License-Identifier: MIT
//
// A full box of parts: decided in little memory, given up when asked, refused where it is too full.
#include "rich_box.h"

#include "advice/advise.h"

#include <QTest>

#include <algorithm>
#include <atomic>
#include <cstdlib>
#include <new>
#include <thread>

#include <malloc.h>

// Every allocation of the program is counted by what it takes of the heap.
namespace {
std::atomic<std::size_t> heapNow = 0;
std::atomic<std::size_t> heapMost = 0;

void* counted(std::size_t bytes)
{
    void* memory = std::malloc(bytes);
    if (!memory)
        throw std::bad_alloc();
    const std::size_t now = heapNow += malloc_usable_size(memory);
    std::size_t most = heapMost;
    while (now > most && !heapMost.compare_exchange_weak(most, now))
        ;
    return memory;
}
void released(void* memory)
{
    if (memory)
        heapNow -= malloc_usable_size(memory);
    std::free(memory);
}
} // namespace

void* operator new(std::size_t bytes)
{
    return counted(bytes);
}
void* operator new(std::size_t bytes, const std::nothrow_t&) noexcept
{
    try {
        return counted(bytes);
    } catch (const std::bad_alloc&) {
        return nullptr;
    }
}
void operator delete(void* memory) noexcept
{
    released(memory);
}
void operator delete(void* memory, std::size_t) noexcept
{
    released(memory);
}

using namespace tripoise;
using namespace tripoise::test;

namespace {

constexpr double megabyte = 1e6;

/// Most of the heap that something takes beyond what is taken before.
template <typename Work> double heapOf(Work&& work)
{
    const std::size_t before = heapNow;
    heapMost = before;
    work();
    return static_cast<double>(heapMost - before);
}

Advice decided(const Fitting& fitting, const std::stop_token& stop = {})
{
    const Prepared prepared =
        prepare(fitting.frames, fitting.bicycle, fitting.stock, tables(), stop);
    return advise(fitting.rider, fitting.riding, {}, prepared, tables(), stop);
}

/// Cockpits of the box alone; those with a stem to order stand beside them.
std::size_t inStock(const PreparedSize& size, const Prepared& prepared)
{
    std::size_t count = 0;
    for (std::size_t row = 0; row < size.count(); ++row)
        count += prepared.stock.stems[size.cockpitAt(row).stem].inStock ? 1 : 0;
    return count;
}

/// As many set-ups as are let in, and a stem more is not.
Fitting fullest()
{
    BoxSize box{2, 1, 40, 1, 12};
    Fitting fitting = withRichBox(box);
    while (true) {
        ++box.stems;
        Fitting fuller = withRichBox(box);
        if (box.stems > int(mostStems)
            || tooManySetups(fuller.frames, fuller.bicycle, fuller.stock, tables()))
            return fitting;
        fitting = fuller;
    }
}

} // namespace

class TestRichBox : public QObject {
    Q_OBJECT

private slots:
    void shouldLetInWhatAShopHas()
    {
        const Fitting fitting = withRichBox({6, 40, 10, 5, 8});
        QVERIFY(!tooManySetups(fitting.frames, fitting.bicycle, fitting.stock, tables()));
    }

    // Each count is within what a document may list; together they are not.
    void shouldRefuseByCountingAlone()
    {
        const Fitting fitting = withRichBox({2, 500, 100, 60, 40});
        std::optional<Problem> problem;
        const double heap = heapOf([&] {
            problem = tooManySetups(fitting.frames, fitting.bicycle, fitting.stock, tables());
        });
        QVERIFY(problem);
        QCOMPARE(problem->code, ProblemCode::TooManySetups);
        QCOMPARE(problem->path, std::string("/stock/stems"));
        QCOMPARE(problem->names, std::vector<std::string>{"/stock/bars"});
        QVERIFY(std::stod(problem->value) > mostSetups);
        QCOMPARE(problem->high, std::optional(mostSetups));
        QVERIFY2(heap < 1.0 * megabyte, qPrintable(QString::number(heap)));
    }

    // Derived: sizes times cranks times stems both ways times bars times totals of the spacers.
    void shouldCountEverySetup()
    {
        Fitting fitting = withRichBox({3, 7, 5, 4, 0});
        const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
        for (const PreparedSize& size : prepared.sizes)
            QCOMPARE(inStock(size, prepared), std::size_t(7 * 2 * 5));
        fitting.stock.spacersMm = {5.0, 10.0, 10.0}; // 0, 5, 10, 15, 20, 25
        const Prepared spaced = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
        QCOMPARE(inStock(spaced.sizes[0], spaced), std::size_t(7 * 2 * 5 * 6));
    }

    void shouldDecideOnTheFullestInLittleMemory()
    {
        const Fitting fitting = fullest();
        Advice advice;
        const double heap = heapOf([&] { advice = decided(fitting); });
        QVERIFY(advice.solved);
        QVERIFY2(heap < 100.0 * megabyte, qPrintable(QString::number(heap / megabyte)));
    }

    void shouldGiveUpBeforeItBegins()
    {
        const Fitting fitting = withRichBox({2, 20, 4, 2, 5});
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(prepare(fitting.frames, fitting.bicycle, fitting.stock, tables(), stop.get_token())
                    .sizes.empty());
        const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
        const Person person{averageMan(), Flexibility::Ordinary, calibrationFoothold(), {}};
        SizeSearch search({person, fitting.riding, prepared, tables()}, prepared.sizes[0],
                          stop.get_token());
        QVERIFY(!search.best(tables().weights.points));
        QCOMPARE(search.solved(), std::size_t(0));
    }

    // Stopped at any time the answer is a whole one or none.
    void shouldGiveUpInBetween()
    {
        const Fitting fitting = withRichBox({4, 40, 10, 5, 8});
        const Advice whole = decided(fitting);
        int stopped = 0;
        for (int i = 0; i < 40; ++i) {
            std::stop_source stop;
            std::jthread asking([&stop, i] {
                std::this_thread::sleep_for(std::chrono::microseconds(500 * i));
                stop.request_stop();
            });
            const Advice advice = decided(fitting, stop.get_token());
            stopped += advice.solved ? 0 : 1;
            if (advice.solved)
                QCOMPARE(advice.verdict.lead, whole.verdict.lead);
            else
                QVERIFY(stop.stop_requested());
        }
        QVERIFY(stopped > 0);
    }
};

QTEST_APPLESS_MAIN(TestRichBox)
#include "tst_rich_box.moc"
