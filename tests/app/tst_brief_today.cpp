// SPDX-License-Identifier: MIT
#include "brief/today_model.h"

#include <QTest>

using namespace tripoise;

namespace {

NumberField* field(const QList<QObject*>& fields, const char* key)
{
    for (QObject* one : fields)
        if (one->objectName() == QLatin1String(key))
            return qobject_cast<NumberField*>(one);
    return nullptr;
}

} // namespace

class TestBriefToday : public QObject {
    Q_OBJECT

private:
    /// A saddle of 270 mm with 0.55 of it ahead of its point: 148.5. A bar whose grip lies 28 mm
    /// behind and 10 mm above its middle.
    const TodayParts m_parts{148.5, Point(-28.0, 10.0)};

private slots:
    void shouldTurnNoseAndTapeIntoContacts()
    {
        // Derived. The saddle point stands 200 behind and, with the straight line 725:
        //     up = sqrt(725² - 200²) = sqrt(525625 - 40000) = sqrt(485625) = 696.868
        // Nose behind 51.5, so setback 51.5 + 148.5 = 200. The bar 60 below: 636.868 up.
        // Tape 500: level part sqrt(250000 - 3600) = 496.387; bar 496.387 - 51.5 = 444.887 ahead.
        // Grip: 444.887 - 28 = 416.887 and 636.868 + 10 = 646.868, kept to tenths.
        const CurrentBike bike = withContacts({}, FromSaddle{725.0, 51.5, 60.0, 500.0}, m_parts);
        QCOMPARE(bike.saddleHeightMm, 725.0);
        QCOMPARE(bike.saddleSetbackMm, 200.0);
        QCOMPARE(bike.gripReachMm, 416.9);
        QCOMPARE(bike.gripHeightMm, 646.9);
    }

    void shouldReadBackWhatWasTaken_data()
    {
        QTest::addColumn<double>("height");
        QTest::addColumn<double>("nose");
        QTest::addColumn<double>("below");
        QTest::addColumn<double>("tape");
        QTest::newRow("bar lower") << 725.0 << 51.5 << 60.0 << 500.0;
        QTest::newRow("bar higher") << 690.0 << 70.0 << -85.0 << 470.0;
        QTest::newRow("nose ahead") << 650.0 << -10.0 << 0.0 << 400.0;
    }
    void shouldReadBackWhatWasTaken()
    {
        QFETCH(double, height);
        QFETCH(double, nose);
        QFETCH(double, below);
        QFETCH(double, tape);
        const CurrentBike bike = withContacts({}, FromSaddle{height, nose, below, tape}, m_parts);
        const FromSaddle back = fromSaddle(bike, m_parts);
        // Contacts are kept to 0.05 mm either way, reading to another 0.05.
        QCOMPARE(back.heightMm, height);
        QVERIFY(back.noseBehindMm && std::abs(*back.noseBehindMm - nose) <= 0.11);
        QVERIFY(back.barBelowMm && std::abs(*back.barBelowMm - below) <= 0.16);
        QVERIFY(back.noseToBarMm && std::abs(*back.noseToBarMm - tape) <= 0.16);
    }

    void shouldSayNoMoreThanWasTaken()
    {
        const CurrentBike noNose =
            withContacts({}, FromSaddle{725.0, std::nullopt, 60.0, 500.0}, m_parts);
        QCOMPARE(noNose.saddleHeightMm, 725.0);
        QVERIFY(!noNose.saddleSetbackMm && !noNose.gripReachMm && !noNose.gripHeightMm);
        const CurrentBike noTape =
            withContacts({}, FromSaddle{725.0, 51.5, 60.0, std::nullopt}, m_parts);
        QCOMPARE(noTape.saddleSetbackMm, 200.0);
        QVERIFY(!noTape.gripReachMm && !noTape.gripHeightMm);
    }

    void shouldLeaveTheRestAlone()
    {
        CurrentBike bike;
        bike.crankMm = 170.0;
        bike.comfortable = true;
        bike.gripReachMm = 450.0;
        bike.gripHeightMm = 700.0;
        const CurrentBike taken =
            withContacts(bike, FromSaddle{700.0, 50.0, std::nullopt, std::nullopt}, m_parts);
        QCOMPARE(taken.crankMm, 170.0);
        QVERIFY(taken.comfortable);
        QCOMPARE(taken.gripReachMm, 450.0); // nothing was taken of the bar
        QCOMPARE(taken.gripHeightMm, 700.0);
    }

    void shouldRefuseATapeShorterThanTheDrop()
    {
        const FromSaddle taken{725.0, 51.5, -90.0, 80.0};
        QVERIFY(tapeTooShort(taken));
        QVERIFY(!withContacts({}, taken, m_parts).gripReachMm);
        QVERIFY(!tapeTooShort(FromSaddle{725.0, 51.5, 60.0, 500.0}));
    }

    void shouldRefuseASetbackLongerThanTheHeight()
    {
        const CurrentBike bike = withContacts({}, FromSaddle{150.0, 51.5, 0.0, 500.0}, m_parts);
        QVERIFY(!bike.gripReachMm); // 200 behind on a straight line of 150 is nowhere
    }

    void shouldTakeTheBicycleFromItsSaddle()
    {
        Session session;
        Fitting fitting;
        Bar straight; // 10 mm above its clamp (assets/parts.json), and as far behind as measured
        straight.widthMm = 620;
        straight.gripBackMm = 28;
        fitting.stock.bars = {straight};
        fitting.bicycle.saddle.lengthMm = 270; // 0.55 of it ahead of the saddle point: 148.5
        session.start(fitting);
        TodayModel today;
        today.setSession(&session);
        today.setBySaddle(true);
        const auto fields = today.fromTheSaddle();
        field(fields, "today_tape")->commit(QStringLiteral("500"));
        QVERIFY(!today.note().isEmpty()); // the grip wants the rest
        field(fields, "today_below")->commit(QStringLiteral("60"));
        field(fields, "today_height")->commit(QStringLiteral("725"));
        field(fields, "today_nose")->commit(QStringLiteral("51.5"));
        QVERIFY(today.note().isEmpty());
        // As derived above.
        const auto& bike = session.fitting().current;
        QVERIFY(bike.has_value());
        QCOMPARE(bike->saddleSetbackMm, 200.0);
        QCOMPARE(bike->gripReachMm, 416.9);
        QCOMPARE(bike->gripHeightMm, 646.9);
        // What was measured from the saddle stays when the saddle is corrected: the bar comes
        // along. up = sqrt(735² - 200²) = 707.266; grip 707.266 - 60 + 10 = 657.266
        field(fields, "today_height")->commit(QStringLiteral("735"));
        QCOMPARE(session.fitting().current->gripHeightMm, 657.3);
        QCOMPARE(session.fitting().current->gripReachMm, 416.9);
        session.undo();
        QCOMPARE(session.fitting().current->gripHeightMm, 646.9);
        QCOMPARE(field(fields, "today_height")->text(), QStringLiteral("725"));
    }

    void shouldShowContactsAsTakenFromTheSaddle()
    {
        Session session;
        TodayModel today;
        today.setSession(&session);
        field(today.contacts(), "today_setback")->commit(QStringLiteral("208.5"));
        // The usual saddle (assets/parts.json): 270 long, 0.55 ahead: 148.5; 208.5 - 148.5 = 60
        QCOMPARE(field(today.fromTheSaddle(), "today_nose")->text(), QStringLiteral("60"));
        today.clear();
        QVERIFY(!session.fitting().current);
        QCOMPARE(field(today.fromTheSaddle(), "today_nose")->text(), QString());
    }

    void shouldKeepABicycleThatHasMoreThanItKnows()
    {
        Session session;
        Fitting fitting;
        fitting.current = CurrentBike{};
        fitting.current->crankMm = 170.0;
        fitting.kept = {{"/current/lent", "\"to a friend\""}};
        session.start(fitting);
        TodayModel today;
        today.setSession(&session);
        today.clear();
        QVERIFY(session.fitting().current == CurrentBike{}); // or they would have no place
        QCOMPARE(session.fitting().kept.size(), 1u);
    }
};

QTEST_GUILESS_MAIN(TestBriefToday)
#include "tst_brief_today.moc"
