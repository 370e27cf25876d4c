// SPDX-License-Identifier: MIT
//
// A visit after the bicycle was built. Directions are held against what is taught, each with its
// source: Holmes 1994 and Wanich et al. 2007 (JAAOS 15:748-756) for the knee, clinical teaching for
// the rest, all from memory; "practice" rows are common practice, no source.
#include "advice/next_change.h"

#include "document/handed_over.h"
#include "support.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace tripoise;

namespace {

constexpr double exact = 1e-9;

/// The demo's named size and set-up.
struct Bench {
    Fitting fitting = test::demoFitting();
    Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, test::tables());
    Advice advice =
        advise(fitting.rider, fitting.riding, fitting.current, prepared, test::tables());

    [[nodiscard]] const AdvisedSetup& advised() const { return *advice.leading().best; }
    [[nodiscard]] Contacts built() const { return contactsOf(advised().setup); }
    [[nodiscard]] NextVisit visit(const std::vector<Visit>& visits,
                                  const Point& toGo = Point::Zero()) const
    {
        return nextVisit(built(), visits, toGo, advised(), prepared.sizes[advice.leading().size],
                         {advice.person, fitting.riding, prepared, test::tables()});
    }
};

Visit saying(std::vector<Complaint> complaints, std::optional<ChangeStep> done = {})
{
    Visit visit;
    visit.says = std::move(complaints);
    if (done)
        visit.changed = movedOf(*done);
    return visit;
}

} // namespace

class TestNextChange : public QObject {
    Q_OBJECT

private slots:
    void shouldMoveTheWayThatIsTaught_data()
    {
        QTest::addColumn<int>("complaint");
        QTest::addColumn<int>("saddleUp"); // the way of every change that moves it; 0 for none
        QTest::addColumn<int>("saddleBack");
        QTest::addColumn<int>("barUp");
        QTest::addColumn<int>("barBack");
        const auto row = [](Complaint complaint, int saddleUp, int saddleBack, int barUp,
                            int barBack) {
            const std::string_view key = keyOf(complaint);
            QTest::newRow(std::string(key).c_str())
                << static_cast<int>(complaint) << saddleUp << saddleBack << barUp << barBack;
        };
        row(Complaint::Hands, 0, 0, 1, 1);      // taught
        row(Complaint::Neck, 0, 0, 1, 1);       // taught
        row(Complaint::LowerBack, -1, 0, 1, 1); // taught; the saddle's: practice
        row(Complaint::Saddle, -1, 0, 1, 0);    // taught
        row(Complaint::KneeFront, 1, 1, 0, 0);  // Holmes, Wanich: low or far forward
        row(Complaint::KneeBack, -1, -1, 0, 0); // the same: high or far back
        row(Complaint::Feet, 0, 0, 0, 0);       // practice
        row(Complaint::Stretched, 0, 0, 1, 1);  // practice
        row(Complaint::Cramped, 0, 1, 0, -1);   // practice
        row(Complaint::Nervous, 0, 0, 0, -1);   // practice
        row(Complaint::ToeTouches, 0, 0, 0, 0); // practice
    }
    void shouldMoveTheWayThatIsTaught()
    {
        QFETCH(int, complaint);
        QFETCH(int, saddleUp);
        QFETCH(int, saddleBack);
        QFETCH(int, barUp);
        QFETCH(int, barBack);
        const auto& steps = test::tables().comfort.changes[static_cast<std::size_t>(complaint)];
        QVERIFY(!steps.empty());
        const auto goes = [](double moved, int way) { return moved == 0.0 || moved * way > 0.0; };
        for (const ChangeStep& step : steps) {
            const Moved moved = movedOf(step);
            QVERIFY(goes(moved.saddleUpMm, saddleUp) && goes(moved.saddleBackMm, saddleBack)
                    && goes(moved.barUpMm, barUp) && goes(moved.barBackMm, barBack));
            // One thing, and no more than 5 mm of it, but for the bar of numb hands.
            const double most = step.change == Change::BarUp
                                        && static_cast<Complaint>(complaint) == Complaint::Hands
                                    ? 10.0
                                    : 5.0;
            const double all = std::abs(moved.saddleUpMm) + std::abs(moved.saddleBackMm)
                               + std::abs(moved.barUpMm) + std::abs(moved.barBackMm);
            QVERIFY(std::abs(all - step.mm) < exact && step.mm <= most);
        }
    }

    void shouldStartFromWhatWasChangedBefore()
    {
        const Bench bench;
        Visit first = saying({Complaint::Hands}, ChangeStep{Change::BarUp, 10.0, true});
        Visit second = saying({Complaint::KneeFront}, ChangeStep{Change::SaddleUp, 3.0, true});
        const NextVisit next = bench.visit({first, second, saying({})});
        QVERIFY((next.now.grip - bench.built().grip - Point(0.0, 10.0)).norm() < exact);
        QVERIFY(std::abs(next.now.saddle.heightMm - bench.built().saddle.heightMm - 3.0) < exact);
        QVERIFY(std::abs(next.now.saddle.setbackMm() - bench.built().saddle.setbackMm()) < exact);
        QVERIFY(next.changes.empty() && next.lasting.empty());
    }

    void shouldProposeWhatWasNotTried()
    {
        const Bench bench;
        const auto first = bench.visit({saying({Complaint::Hands})});
        QCOMPARE(first.changes.size(), 1UL);
        QCOMPARE(first.changes[0].step.change, Change::BarUp);
        QVERIFY(first.lasting.empty());
        std::vector<Visit> visits;
        const auto& steps = test::tables().comfort.changes[indexOf(Complaint::Hands)];
        for (const ChangeStep& step : steps) {
            visits.push_back(saying({Complaint::Hands}));
            const NextVisit next = bench.visit(visits);
            QCOMPARE(next.changes.size(), 1UL);
            QCOMPARE(next.changes[0].step, step);
            // Back after a change made for it.
            QCOMPARE(next.lasting.size(), visits.size() > 1 ? 1UL : 0UL);
            visits.back() = saying({Complaint::Hands}, step);
        }
        visits.push_back(saying({Complaint::Hands}));
        const NextVisit last = bench.visit(visits);
        QVERIFY(last.changes.empty());
        QCOMPARE(last.lasting, std::vector{Complaint::Hands});
        // What was changed for the knee says nothing of the hands.
        const NextVisit other = bench.visit({saying({Complaint::Hands, Complaint::KneeFront},
                                                    ChangeStep{Change::SaddleUp, 3.0, true}),
                                             saying({Complaint::Hands, Complaint::KneeFront})});
        QCOMPARE(other.lasting, std::vector{Complaint::KneeFront});
        QCOMPARE(other.changes[0].step.change, Change::BarUp);
        // Something else that was said at the same visits is another matter.
        visits.back() = saying({Complaint::KneeBack});
        QCOMPARE(bench.visit(visits).changes[0].step.change, Change::SaddleDown);
        QVERIFY(bench.visit(visits).lasting.empty());
    }

    /// A knee that is nearly straight already is not straightened further, whatever hurts.
    void shouldNotMoveAJointFurtherOutOfItsRange()
    {
        const Bench bench;
        Contacts high = bench.built();
        high.saddle = saddleFrom(high.saddle.heightMm + 20.0, high.saddle.setbackMm());
        const std::vector<Visit> visits{saying({Complaint::KneeFront})};
        const auto next =
            nextVisit(high, visits, Point::Zero(), bench.advised(),
                      bench.prepared.sizes[bench.advice.leading().size],
                      {bench.advice.person, bench.fitting.riding, bench.prepared, test::tables()});
        QVERIFY(next.rider->leg.kneeBottom.deg() < 30.0);
        QVERIFY(!next.changes.empty());
        for (const NextChange& change : next.changes)
            QVERIFY(!change.then || change.then->leg.kneeBottom >= next.rider->leg.kneeBottom);
        QCOMPARE(bench.visit(visits).changes[0].step.change, Change::SaddleUp);
    }

    /// A way of 50 mm that may go by 20 at a visit takes three steps, and none after the third.
    void shouldGoTheRestOfTheWayInSteps()
    {
        const Bench bench;
        const Point way(-30.0, 40.0);
        QCOMPARE(test::tables().comfort.mostFirstStepMm, 20.0);
        std::vector<Visit> visits{saying({Complaint::Hands})};
        Contacts there = bench.built();
        for (int step = 0; step < 3; ++step) {
            const NextVisit next = bench.visit(visits, way);
            QVERIFY(!next.changes[0].complaint);
            QCOMPARE(next.changes[0].step.change, Change::NextStep);
            QVERIFY(std::abs(next.changes[0].step.mm - 50.0 / 3.0) < exact);
            there = movedBy(next.now, next.changes[0].moved);
            visits.back().changed = next.changes[0].moved;
            visits.push_back(saying({Complaint::Hands}));
        }
        QVERIFY((there.saddle.point() - bench.built().saddle.point() - way).norm() < 1e-6);
        QVERIFY((there.grip - bench.built().grip - way).norm() < 1e-6);
        QVERIFY(bench.visit(visits, way).changes[0].complaint);
        QVERIFY(bench.visit({saying({})}).changes.empty()); // no way, no step
    }

    void shouldShowWhatItDoesToTheRider()
    {
        const Bench bench;
        const NextVisit next = bench.visit({saying(
            {Complaint::Hands, Complaint::KneeFront, Complaint::KneeBack, Complaint::Feet})});
        QCOMPARE(next.changes.size(), 4UL);
        const auto back = [](const Tried& tried) { return tried.uses.front().posture.trunk; };
        QVERIFY(back(*next.changes[0].then) > back(*next.rider)); // the bar higher
        QVERIFY(next.changes[1].then->leg.kneeBottom < next.rider->leg.kneeBottom); // saddle up
        QVERIFY(next.changes[2].then->leg.kneeBottom > next.rider->leg.kneeBottom); // and down
        QVERIFY(!next.changes[3].then); // shoes move no contact
    }
};

QTEST_GUILESS_MAIN(TestNextChange)
#include "tst_next_change.moc"
