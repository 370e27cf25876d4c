// SPDX-License-Identifier: MIT
//
// Documents of version 1, as they were written, kept in tests/older: read to where things stand
// now, and every size on the wheels it had.
#include "support.h"

#include "advice/advise.h"
#include "document/frame_list.h"

#include <QTest>

using namespace tripoise;

namespace {

/// One size each, on the wheel that a document of version 1 gave it.
QByteArray onWheels(const QByteArray& first, const QByteArray& second)
{
    const auto size = [](const char* name, const QByteArray& wheel) {
        return QByteArray(R"({"size":")") + name + R"(","geometry":{"stack_mm":572,"reach_mm":388,)"
               + R"("head_angle_deg":72,"seat_angle_deg":73})"
               + (wheel.isEmpty() ? QByteArray() : R"(,"wheel":)" + wheel) + '}';
    };
    return R"({"format":"tripoise.fitting","version":1,
"rider":{"measurements":{"stature_mm":1756,"inseam_mm":846}},"riding":{"mix":{"touring":1}},
"frames":[)"
           + size("M", first) + ',' + size("L", second) + R"(],
"stock":{"stems":[{"length_mm":90,"angle_deg":6}],"bars":[{"kind":"flat","width_mm":620}],
"cranks_mm":[165],"fitted_crank_mm":170,"saddle":{"length_mm":265},"pedal":{"stack_mm":11}}})";
}

Fitting read(const QByteArray& text)
{
    auto result = readFitting(text.toStdString(), test::tables());
    if (const auto* problems = std::get_if<Problems>(&result))
        throw std::runtime_error(problems->front().path);
    return std::get<Fitting>(std::move(result));
}

Skeleton skeletonIn(const Fitting& fitting, std::size_t size)
{
    return skeletonOf(mountedOn(fitting.frames[size], fitting.bicycle), test::tables().frame);
}

} // namespace

class TestOlder : public QObject {
    Q_OBJECT

private slots:
    void shouldMoveUpWhatAllSizesHave()
    {
        const QByteArray wheel =
            R"({"bead_seat_mm":584,"tyre_mm":47,"max_tyre_mm":50,"mudguard":{"gap_mm":9}})";
        const Fitting fitting = read(onWheels(wheel, wheel));
        QCOMPARE(fitting.bicycle.tyreMm, 47.0);
        QCOMPARE(fitting.bicycle.mudguard, (Mudguard{9, {}}));
        QVERIFY(!fitting.bicycle.beadSeatMm);
        QCOMPARE(fitting.bicycle.crankMm, 170.0);
        QCOMPARE(fitting.bicycle.saddle.lengthMm, 265.0);
        QCOMPARE(fitting.bicycle.pedal.stackMm, 11.0);
        for (const FrameSize& frame : fitting.frames) {
            QVERIFY(!frame.mounting);
            QCOMPARE(frame.wheel, (Wheel{584, 50}));
        }
    }

    void shouldLeaveEachSizeOnTheWheelsItHad()
    {
        const Fitting fitting = read(onWheels(R"({"tyre_mm":47,"mudguard":{}})", {}));
        QCOMPARE(fitting.bicycle.tyreMm, std::nullopt);
        QCOMPARE(fitting.frames[0].mounting, (Mounting{47, {}, Mudguard{}}));
        QCOMPARE(fitting.frames[1].mounting, Mounting{});
        QCOMPARE(skeletonIn(fitting, 0).tyreMm, 47.0);
        QVERIFY(skeletonIn(fitting, 0).mudguard);
        QCOMPARE(skeletonIn(fitting, 1).tyreMm, test::tables().frame.tyreMm);
        QVERIFY(!skeletonIn(fitting, 1).mudguard);
        const Fitting again = read(QByteArray::fromStdString(writeFitting(fitting)));
        QVERIFY(again == fitting); // nothing was settled by loading and saving
    }

    void shouldSayThatWheelsDifferUntilThatIsAnswered()
    {
        Fitting fitting = read(onWheels(R"({"tyre_mm":47})", R"({"tyre_mm":32})"));
        const auto told = [&] {
            const Prepared prepared =
                prepare(fitting.frames, fitting.bicycle, fitting.stock, test::tables());
            for (const Finding& finding :
                 advise(fitting.rider, fitting.riding, {}, prepared, test::tables()).riderFindings)
                if (finding.code == FindingCode::WheelsDiffer)
                    return finding.numbers;
            return std::vector<double>{};
        };
        QCOMPARE(told(), (std::vector<double>{32, 47}));
        const auto mountings = mountingsOf(fitting);
        QCOMPARE(mountings.size(), 2UL);
        fitting = withOneMounting(std::move(fitting), mountings[1]);
        QVERIFY(told().empty());
        QCOMPARE(fitting.bicycle.tyreMm, 32.0);
        QCOMPARE(skeletonIn(fitting, 0).tyreMm, 32.0);
    }

    void shouldKeepWhatStoodInAMudguard()
    {
        const QByteArray black = R"({"mudguard":{"colour":"black"}})";
        const Fitting alike = read(onWheels(black, black));
        QVERIFY(writeFitting(alike).find("black") != std::string::npos);
        QVERIFY(read(QByteArray::fromStdString(writeFitting(alike))) == alike);
        const Fitting unlike = read(onWheels(black, {}));
        QVERIFY(writeFitting(unlike).find("black") != std::string::npos);
        QVERIFY(read(QByteArray::fromStdString(writeFitting(unlike))) == unlike);
    }

    void shouldReadTheSamples_data()
    {
        QTest::addColumn<double>("tyreMm");
        QTest::addColumn<bool>("mudguard");
        QTest::addColumn<double>("crankMm");
        QTest::newRow("between-two-sizes") << 40.0 << false << 170.0;
        QTest::newRow("short-rider-large-wheels") << 42.0 << true << 165.0;
    }
    void shouldReadTheSamples()
    {
        QFETCH(double, tyreMm);
        QFETCH(bool, mudguard);
        QFETCH(double, crankMm);
        const auto text = [](const char* folder) {
            return QByteArray::fromStdString(test::textOf(
                QStringLiteral("%1/%2.json")
                    .arg(QLatin1String(folder), QLatin1String(QTest::currentDataTag()))));
        };
        const Fitting older = read(text(TRIPOISE_REFERENCE "/../older"));
        QCOMPARE(older.bicycle.tyreMm, tyreMm);
        QCOMPARE(older.bicycle.mudguard.has_value(), mudguard);
        QCOMPARE(older.bicycle.crankMm, crankMm);
        QVERIFY(older == read(text(TRIPOISE_ASSETS "/demo"))); // the same case, in today's version
    }

    void shouldReadABoxWithItsSaddleAndPedals()
    {
        const auto result = readDraft(
            test::textOf(QStringLiteral(TRIPOISE_REFERENCE "/../older/box.json")), test::tables());
        const auto* box = std::get_if<Fitting>(&result);
        QVERIFY(box);
        QVERIFY(!box->stock.stems.empty());
        QCOMPARE(box->bicycle.saddle, (Saddle{270, 45, 50}));
        QCOMPARE(box->bicycle.pedal, (Pedal{15, 125}));
    }

    void shouldTakeTheTyreOfAFrameModelForTheOneItIsSoldWith()
    {
        const auto result = readFrameModel(
            R"({"format":"tripoise.frame","version":1,"model":"Weir","sizes":[
{"size":"S","geometry":{"stack_mm":560,"reach_mm":380,"head_angle_deg":71,"seat_angle_deg":74},
 "wheel":{"tyre_mm":38,"max_tyre_mm":42}},
{"size":"M","geometry":{"stack_mm":580,"reach_mm":390,"head_angle_deg":71,"seat_angle_deg":74},
 "wheel":{"tyre_mm":38,"mudguard":{"gap_mm":10}}}]})");
        const auto* sizes = std::get_if<std::vector<FrameSize>>(&result);
        QVERIFY(sizes);
        QCOMPARE((*sizes)[0].asSold.tyreMm, 38.0);
        QVERIFY(!(*sizes)[0].mounting);
        QCOMPARE((*sizes)[0].wheel.maxTyreMm, 42.0);
        QCOMPARE((*sizes)[1].mounting, (Mounting{38, {}, Mudguard{10, {}}})); // none is lost
        QCOMPARE(skeletonOf((*sizes)[0], test::tables().frame).tyreMm, 38.0);
    }
};

QTEST_APPLESS_MAIN(TestOlder)
#include "tst_older.moc"
