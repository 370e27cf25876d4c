// SPDX-License-Identifier: MIT
//
// The solver's thread: the latest question wins, and it ends when it is asked to, whatever waits.
#include "rich_box.h"
#include "session/solver.h"
#include "shipped/tables.h"

#include <QElapsedTimer>
#include <QTest>
#include <QThread>

#include <atomic>
#include <ctime>
#include <future>
#include <memory>

using namespace tripoise;
using namespace tripoise::test;

class TestSolver : public QObject {
    Q_OBJECT

private slots:
    // While an answer is delivered, another question is asked, and then the end.
    void shouldDropAQuestionThatWaitsAtTheEnd()
    {
        std::promise<void> delivering, closing;
        std::atomic<int> answers = 0;
        auto solver = std::make_unique<Solver>(
            shippedTables(), [&, closed = closing.get_future().share()](quint64, const Solution&) {
                if (++answers > 1)
                    return;
                delivering.set_value();
                closed.wait();
                QTest::qSleep(100); // by then the end is asked for
            });
        (void)solver->ask(demoFitting());
        delivering.get_future().wait();
        (void)solver->ask(demoFitting("one-frame-two-bikes"));
        closing.set_value();
        solver.reset();
        QCOMPARE(answers.load(), 1);
    }

    // In a small part of the time that the decision takes. Both in processor time, which a busy
    // machine does not lengthen much.
    void shouldEndInTheMiddleOfALongDecision()
    {
        const Fitting fitting = withRichBox({40, 20, 8, 4, 6});
        QElapsedTimer clock;
        clock.start();
        const std::clock_t begun = std::clock();
        QVERIFY(solve(fitting, shippedTables(), {}, {}).advice.solved);
        const std::clock_t whole = std::clock() - begun;
        const auto tookUs = static_cast<unsigned long>(clock.nsecsElapsed() / 1000);
        std::atomic<int> answers = 0;
        auto solver =
            std::make_unique<Solver>(shippedTables(), [&](quint64, const Solution&) { ++answers; });
        (void)solver->ask(fitting);
        QThread::usleep(tookUs / 4);
        const std::clock_t asked = std::clock();
        solver.reset();
        const std::clock_t ended = std::clock() - asked;
        QCOMPARE(answers.load(), 0);
        QVERIFY2(ended < whole / 4, qPrintable(QStringLiteral("%1 of %2").arg(ended).arg(whole)));
    }
};

QTEST_GUILESS_MAIN(TestSolver)
#include "tst_solver.moc"
