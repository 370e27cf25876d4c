// SPDX-License-Identifier: MIT
#include "support.h"

#include "brief/bicycle_model.h"

#include <QTest>

using namespace tripoise;

namespace {

FrameSize sizeNamed(const char* name)
{
    FrameSize frame;
    frame.model = "Millrace";
    frame.size = name;
    frame.geometry.stackMm = 600;
    frame.geometry.reachMm = 400;
    frame.geometry.headAngleDeg = 72;
    frame.geometry.seatAngleDeg = 73;
    return frame;
}

struct Opened {
    explicit Opened(std::optional<Mounting> first = {}, std::optional<Mounting> second = {})
    {
        Fitting fitting;
        fitting.frames = {sizeNamed("M"), sizeNamed("L")};
        fitting.frames[0].mounting = first;
        fitting.frames[1].mounting = second;
        session.start(fitting);
        model.setSession(&session);
    }
    [[nodiscard]] const Bicycle& bicycle() const { return session.fitting().bicycle; }
    [[nodiscard]] NumberField* field(const char* key)
    {
        return model.findChild<NumberField*>(QString::fromLatin1(key));
    }
    Session session;
    BicycleModel model;
};

} // namespace

class TestBriefBicycle : public QObject {
    Q_OBJECT

private slots:
    void shouldKeepTheStandardItIsSoldUnder()
    {
        Opened opened;
        QVERIFY(opened.model.standards().size() > 1);
        for (const QString& standard : opened.model.standards()) {
            opened.model.setSoldUnder(standard);
            QCOMPARE(opened.model.soldUnder(), standard);
        }
        QVERIFY(opened.session.fitting().riding.soldUnder);
        opened.model.setSoldUnder(QString());
        QVERIFY(!opened.session.fitting().riding.soldUnder);
    }

    void shouldTakeWhatTheSizesHaveInCommon()
    {
        Opened opened;
        opened.field("tyre")->commit(QStringLiteral("47"));
        opened.field("fitted_crank")->commit(QStringLiteral("172.5"));
        opened.field("saddle_length")->commit(QStringLiteral("265"));
        opened.field("pedal_stack")->commit(QStringLiteral("11"));
        opened.model.setMudguard(true);
        // assets/parts.json: 10 mm wider than the tyre
        QVERIFY(opened.field("mudguard_width")->placeholder().contains(QStringLiteral("57")));
        opened.field("mudguard_gap")->commit(QStringLiteral("15"));
        opened.model.setBarKind(QStringLiteral("swept"));
        QCOMPARE(
            opened.bicycle(),
            (Bicycle{47, {}, Mudguard{15, {}}, BarKind::Swept, 172.5, {265, {}, {}}, {11, {}}}));
        QVERIFY(opened.model.summary().contains(QStringLiteral("47 mm")));
        opened.model.setBarKind(QStringLiteral("swept")); // again: any
        QVERIFY(!opened.bicycle().barKind);
        opened.model.setMudguard(false);
        QVERIFY(!opened.bicycle().mudguard);
        opened.session.undo();
        QVERIFY(opened.bicycle().mudguard);
    }

    void shouldAskWhichWheelsWhereSizesHaveTheirOwn()
    {
        Opened opened(Mounting{47, {}, Mudguard{}}, Mounting{32, {}, {}});
        QVERIFY(opened.model.wheelsDiffer().contains(QStringLiteral("32 mm")));
        QCOMPARE(opened.model.answers().size(), 2);
        QCOMPARE(opened.bicycle(), Bicycle{}); // nothing is settled unasked
        opened.model.answer(0);
        QCOMPARE(opened.bicycle().tyreMm, 47.0);
        QVERIFY(opened.bicycle().mudguard);
        for (const FrameSize& frame : opened.session.fitting().frames)
            QVERIFY(!frame.mounting);
        QVERIFY(opened.model.wheelsDiffer().isEmpty());
        QVERIFY(opened.model.answers().isEmpty());
        opened.session.undo();
        QVERIFY(!opened.model.wheelsDiffer().isEmpty());
    }

    void shouldTakeATypedTyreForAnAnswer()
    {
        Opened opened(Mounting{47, {}, {}}, Mounting{32, {}, {}});
        opened.field("tyre")->commit(QStringLiteral("40"));
        QCOMPARE(opened.bicycle().tyreMm, 40.0);
        QVERIFY(opened.model.wheelsDiffer().isEmpty());
    }

    void shouldOfferTheBicyclesOwnWheelsToo()
    {
        Opened opened;
        Fitting next = opened.session.fitting();
        next.bicycle.tyreMm = 40;
        next.frames[1].mounting = Mounting{32, {}, {}};
        opened.session.edit(next, QString());
        QCOMPARE(opened.model.answers().size(), 2);
        opened.model.answer(0);
        QCOMPARE(opened.bicycle().tyreMm, 40.0);
        QVERIFY(!opened.session.fitting().frames[1].mounting);
    }

    void shouldNotTellTheUsualTyreWhereSizesAreSoldWithOne()
    {
        Opened opened;
        QVERIFY(!opened.field("tyre")->placeholder().isEmpty());
        Fitting next = opened.session.fitting();
        next.frames[0].asSold.tyreMm = 45;
        opened.session.edit(next, QString());
        QVERIFY(opened.field("tyre")->placeholder().isEmpty());
    }

    void shouldLeaveTheWheelsWhenSomethingElseIsTyped()
    {
        Opened opened(Mounting{47, {}, {}}, Mounting{32, {}, {}});
        opened.field("pedal_stack")->commit(QStringLiteral("11"));
        QVERIFY(!opened.model.wheelsDiffer().isEmpty());
    }
};

QTEST_GUILESS_MAIN(TestBriefBicycle)
#include "tst_brief_bicycle.moc"
