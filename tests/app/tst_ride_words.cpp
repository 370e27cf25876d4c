// SPDX-License-Identifier: MIT
//
// What is said of riding: rows, cures and findings, in both systems of units.
#include "support.h"

#include "shipped/tables.h"
#include "wording/findings.h"
#include "wording/remedy_words.h"
#include "wording/ride_rows.h"
#include "wording/words.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

Ride ridden()
{
    Ride ride;
    ride.toe.emplace();
    ride.toe->overlapMm = -13.0;
    ride.stability.emplace();
    ride.stability->weaveMmS = 5000.0;
    ride.stability->capsizeMmS = 7800.0;
    ride.stability->steady = true;
    ride.balance = Balance{100.0, Point(400.0, 1050.0), 1000.0};
    ride.grades = Grades{0.62, 0.1, 0.52, 0.4, 0.2};
    ride.steering.trailMm = 56.4;
    return ride;
}

QString said(const std::vector<SetupRow>& rows, const QString& label)
{
    for (const SetupRow& row : rows)
        if (row.label == label)
            return row.said.value(0);
    return {};
}

} // namespace

class TestRideWords : public QObject {
    Q_OBJECT

private slots:
    void cleanup() { speak({}); }

    // Derived: 5 and 7.8 m/s are 18 and 28.08 km/h, 11.2 and 17.4 mph.
    void shouldSayWhatARiderFeels()
    {
        const Ride ride = ridden();
        const auto rows = rideRows({&ride});
        QCOMPARE(said(rows, QStringLiteral("shoe to front wheel")), QStringLiteral("13 mm clear"));
        QCOMPARE(said(rows, QStringLiteral("steady by itself")), QStringLiteral("18–28 km/h"));
        QCOMPARE(said(rows, QStringLiteral("front wheel carries")), QStringLiteral("40 %"));
        const auto figures = rideFigureRows({&ride});
        QCOMPARE(said(figures, QStringLiteral("over the bars at")), QStringLiteral("0.62 g"));
        QCOMPARE(said(figures, QStringLiteral("trail")), QStringLiteral("56 mm"));
        speak({QLocale::c(), Units::Imperial});
        QCOMPARE(steadySpeeds(*ride.stability), QStringLiteral("11–17 mph"));
    }

    void shouldTellFromWhereAShoeTouches()
    {
        Ride ride = ridden();
        QVERIFY(said(rideRows({&ride}), QStringLiteral("touches when steered")).isEmpty());
        ride.toe->overlapMm = 12.0;
        ride.toe->touches = TouchingSteer{Angle::degrees(21.0), Angle::degrees(40.0), {}};
        ride.touchingTurn = TightTurn{2900.0, 2500.0};
        QCOMPARE(said(rideRows({&ride}), QStringLiteral("shoe to front wheel")),
                 QStringLiteral("12 mm overlap"));
        QCOMPARE(said(rideRows({&ride}), QStringLiteral("touches when steered")),
                 QStringLiteral("from 21° on, below 9 km/h"));
        const Ride clear = ridden(); // the other size, in the same line
        const auto rows = rideRows({&ride, &clear, nullptr});
        QCOMPARE(rows[1].said, QStringList({QStringLiteral("from 21° on, below 9 km/h"),
                                            QStringLiteral("never"), QStringLiteral("–")}));
    }

    void shouldSayWhereNothingIsSteady()
    {
        SelfStability stability;
        QCOMPARE(steadySpeeds(stability), QStringLiteral("at no speed"));
        stability.steady = true;
        stability.weaveMmS = 5000.0;
        QCOMPARE(steadySpeeds(stability), QStringLiteral("from 18 km/h on"));
    }

    void shouldHaveAValueInEveryLine()
    {
        const Ride ride = ridden();
        for (const auto& rows : {rideRows({&ride}), rideFigureRows({&ride})})
            for (const SetupRow& row : rows) {
                QVERIFY2(!row.said.value(0).isEmpty(), qPrintable(row.label));
                QVERIFY2(!row.meaning.isEmpty(), qPrintable(row.label));
                QVERIFY2(!row.said.value(0).contains(QLatin1Char('%') + QLatin1String("1")),
                         qPrintable(row.label));
            }
    }

    void shouldSayWhatACureLeavesAndCosts()
    {
        ToeRemedy crank;
        crank.kind = RemedyKind::ShorterCrank;
        crank.to = 165.0;
        crank.overlapMm = 9.0;
        crank.leverage = 165.0 / 170.0;
        crank.pedalLean = Angle::degrees(27.0);
        QCOMPARE(remedySentence(crank, Prepared{}),
                 QStringLiteral("Cranks of 165 mm: 9 mm overlap; leverage −3 % and the pedal meets "
                                "the ground at 27° of lean."));
        ToeRemedy bare;
        bare.kind = RemedyKind::NoMudguard;
        bare.overlapMm = -4.0;
        QCOMPARE(remedySentence(bare, Prepared{}),
                 QStringLiteral("No front mudguard: 4 mm clear."));
    }

    void shouldSayEveryFinding_data()
    {
        QTest::addColumn<int>("code");
        QTest::addColumn<QList<double>>("numbers");
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("part"); // of what is said
        const auto row = [](const char* what, FindingCode code, const QList<double>& numbers,
                            const char* name, const char* part) {
            QTest::newRow(what) << int(code) << numbers << QString::fromLatin1(name)
                                << QString::fromUtf8(part);
        };
        row("US standard", FindingCode::ToeUnderStandard, {80.0, 89.0}, "16CFR1512",
            "at least 89 mm is required.");
        row("tyre", FindingCode::ToeOverlaps, {12.0, 21.0, 2900.0, 2500.0}, "tyre",
            "from 21° of steering on, in turns of 2.9 m and tighter, ridden below about 9 km/h");
        row("mudguard", FindingCode::ToeOverlaps, {12.0}, "mudguard", "stays must break away");
        row("by hand", FindingCode::ToeOverlaps, {12.0}, "tyre", "Sit the rider on");
        row("near", FindingCode::ToeNear, {6.0}, "tyre", "Only 6 mm");
        row("heel", FindingCode::HeelNearBag, {12.0, 20.0}, "", "12 mm; 20 mm is wanted");
        row("heel, adjustable dropouts", FindingCode::HeelNearBag, {-2.0, 20.0, 18.0}, "",
            "at the back of its dropouts it passes by 18 mm");
        row("heel strikes", FindingCode::HeelNearBag, {-12.0, 20.0}, "", "strikes");
        row("knee", FindingCode::KneeNearBar, {40.0, 50.0, 0.0}, "", "40 mm of the bar; 50 mm");
        row("knee, turned", FindingCode::KneeNearBar, {40.0, 50.0, 30.0}, "", "turned by 30°");
        row("knee meets", FindingCode::KneeNearBar, {-4.0, 50.0, 0.0}, "", "meets the bar");
        row("over the bars", FindingCode::PitchesEarly, {0.44, 0.5}, "",
            "sooner than one counts on");
        row("front light", FindingCode::FrontWheelLight, {0.22, 0.25}, "",
            "at least 25 % is asked for.");
        row("lifts", FindingCode::FrontLiftsClimbing, {0.12, 0.15}, "", "12 %");
        row("not steady", FindingCode::NoSteadySpeed, {}, "", "certifies nothing");
        row("no end", FindingCode::NoCapsizeSpeed, {5000.0}, "", "from 18 km/h on");
        row("advice", FindingCode::SteeringOutOfAdvice, {64.0, 65.0, 75.0, 0.7, 0.15, 0.6}, "",
            "65–75° and 15–60 %");
    }
    void shouldSayEveryFinding()
    {
        QFETCH(int, code);
        QFETCH(QList<double>, numbers);
        QFETCH(QString, name);
        QFETCH(QString, part);
        const Finding finding{static_cast<FindingCode>(code),
                              Severity::Caution,
                              {numbers.begin(), numbers.end()},
                              name.toStdString(),
                              {}};
        QVERIFY2(sentence(finding).contains(part), qPrintable(sentence(finding)));
        QVERIFY(!keyOf(finding.code).isEmpty());
        for (const char* source : {"CFR", "ISO", "memory"}) // those stand in a fold of their own
            QVERIFY2(!sentence(finding).contains(QLatin1String(source)),
                     qPrintable(sentence(finding)));
    }

    // In words: the figures behind it are in a fold.
    void shouldTellTheDifferenceInWords()
    {
        Ride ride = ridden();
        Candidate one, other;
        one.ride = ride;
        ride.steering.trailMm += 6.0;
        ride.grades->overTheBarsG += 0.05;
        other.ride = ride;
        other.size = 1;
        Prepared prepared;
        prepared.sizes.resize(2);
        prepared.sizes[0].frame.size = "M";
        prepared.sizes[1].frame.size = "L";
        QCOMPARE(rideDifference(one, other, prepared),
                 QStringLiteral("The M against the L: less trail (it turns in quicker) and "
                                "less braking before the rear wheel lifts."));
        QCOMPARE(rideDifference(other, one, prepared),
                 QStringLiteral("The L against the M: more trail (it holds its line) and "
                                "harder braking before the rear wheel lifts."));
        QCOMPARE(rideDifference(one, one, prepared),
                 QStringLiteral("The M rides like the M in all that is worked out here."));
    }
};

QTEST_GUILESS_MAIN(TestRideWords)
#include "tst_ride_words.moc"
