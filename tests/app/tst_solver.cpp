// SPDX-License-Identifier: MIT
//
// The solver's thread: the latest question wins, and it ends when it is asked to, whatever waits.
#include "command/tables.h"
#include "rich_box.h"
#include "session/solver.h"

#include <QElapsedTimer>
#include <QTest>

#include <atomic>
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

    // A box so full that the decision takes a second or more. Generous for a busy machine.
    void shouldEndInTheMiddleOfALongDecision()
    {
        const Fitting fitting = withRichBox({10, 60, 20, 4, 3});
        std::atomic<int> answers = 0;
        auto solver =
            std::make_unique<Solver>(shippedTables(), [&](quint64, const Solution&) { ++answers; });
        (void)solver->ask(fitting);
        QTest::qSleep(50);
        QElapsedTimer timer;
        timer.start();
        solver.reset();
        const qint64 took = timer.elapsed();
        QCOMPARE(answers.load(), 0);
        QVERIFY2(took < 500, qPrintable(QString::number(took)));
    }
};

QTEST_GUILESS_MAIN(TestSolver)
#include "tst_solver.moc"
