// SPDX-License-Identifier: MIT
//
// Numbers as they are said in two unit systems and two languages' figures.
#include "wording/speech.h"
#include "wording/words.h"

#include <QTest>

using namespace tripoise;

class TestSpeech : public QObject {
    Q_OBJECT

    static void imperial() { speak({QLocale::c(), Units::Imperial}); }
    static void german(Units units = Units::Metric) { speak({QLocale(QLocale::German), units}); }

private slots:
    void init() { speak({}); }
    void cleanupTestCase() { speak({}); }

    void shouldSayMillimetresUnlessTold()
    {
        QCOMPARE(mm(742.4), QStringLiteral("742 mm"));
        QCOMPARE(mm(-3.2), QStringLiteral("−3 mm"));
        QCOMPARE(mm(-0.2), QStringLiteral("0 mm"));
        QCOMPARE(bodyLength(1790.0), QStringLiteral("1790 mm"));
        QCOMPARE(mass(82.4), QStringLiteral("82 kg"));
    }

    // Derived: 25.4 mm an inch; 742 / 25.4 = 29.213, 18 / 25.4 = 0.709, 50.7 / 25.4 = 1.996 and
    // 50.8 / 25.4 = 2 exactly.
    void shouldSayInchesWhereTheyAreWanted()
    {
        imperial();
        QCOMPARE(mm(742.0), QStringLiteral("29.2 in"));
        QCOMPARE(mm(18.0), QStringLiteral("0.71 in"));
        QCOMPARE(mm(-18.0), QStringLiteral("−0.71 in"));
        QCOMPARE(mm(50.7), QStringLiteral("2.00 in"));
        QCOMPARE(mm(50.8), QStringLiteral("2.0 in"));
        QCOMPARE(mm(0.0), QStringLiteral("0.00 in"));
        QCOMPARE(mm(-0.1), QStringLiteral("0.00 in"));
    }

    // Derived: 82 / 0.45359237 = 180.78.
    void shouldSayPounds()
    {
        imperial();
        QCOMPARE(mass(82.0), QStringLiteral("181 lb"));
    }

    // Derived: 5 ft 10½ in = 70.5 x 25.4 = 1790.7 mm; 6 ft = 1828.8; an eighth is 3.175 mm, so that
    // 1827.3 is within half an eighth of six feet and 1827.1 is not.
    void shouldSayStatureInFeet_data()
    {
        QTest::addColumn<double>("valueMm");
        QTest::addColumn<QString>("said");
        QTest::newRow("a half") << 1790.7 << QStringLiteral("5 ft 10½ in");
        QTest::newRow("no fraction") << 1778.0 << QStringLiteral("5 ft 10 in");
        QTest::newRow("no inches") << 1828.8 << QStringLiteral("6 ft 0 in");
        QTest::newRow("up to the next foot") << 1827.3 << QStringLiteral("6 ft 0 in");
        QTest::newRow("short of it") << 1827.1 << QStringLiteral("5 ft 11⅞ in");
    }
    void shouldSayStatureInFeet()
    {
        QFETCH(double, valueMm);
        QFETCH(QString, said);
        imperial();
        QCOMPARE(bodyLength(valueMm), said);
    }

    void shouldKeepPartsInMillimetres()
    {
        for (const Units units : {Units::Metric, Units::Imperial}) {
            speak({QLocale::c(), units});
            QCOMPARE(partMm(100.0), QStringLiteral("100 mm"));
            QCOMPARE(halfMm(172.5), QStringLiteral("172.5 mm"));
            QCOMPARE(halfMm(170.0), QStringLiteral("170 mm"));
            Stem stem;
            stem.lengthMm = 100.0;
            stem.angle = Angle::degrees(-6.0);
            QCOMPARE(stemName(stem, true), QStringLiteral("100 mm, −6°, flipped"));
            Bar bar;
            bar.kind = BarKind::Swept;
            bar.widthMm = 640.0;
            QCOMPARE(barName(bar), QStringLiteral("swept, 640 mm"));
        }
    }

    void shouldUseTheLanguagesDecimalSign()
    {
        german();
        QCOMPARE(plain(172.5, 1), QStringLiteral("172,5"));
        QCOMPARE(halfMm(172.5), QStringLiteral("172,5 mm"));
        QCOMPARE(signedPlain(1.24, 1), QStringLiteral("+1,2"));
        QCOMPARE(plain(-1.5, 1), QStringLiteral("−1,5"));
        QCOMPARE(signedPlain(-0.04, 1), QStringLiteral("0,0"));
        german(Units::Imperial);
        QCOMPARE(mm(742.0), QStringLiteral("29,2 in"));
    }

    void shouldNeverGroupDigits()
    {
        german();
        QCOMPARE(plain(20000.0), QStringLiteral("20000"));
        speak({QLocale(QLocale::English, QLocale::UnitedStates), Units::Metric});
        QCOMPARE(mm(1790.0), QStringLiteral("1790 mm"));
        QCOMPARE(oneIn(20100.0), QStringLiteral("1 in 20000"));
    }

    void shouldSayAnglesAndShares()
    {
        QCOMPARE(degrees(53.4), QStringLiteral("53°"));
        QCOMPARE(degrees(73.25, 1).size(), qsizetype(5));
        QCOMPARE(signedDegrees(6.0), QStringLiteral("+6°"));
        QCOMPARE(signedDegrees(0.0), QStringLiteral("0°"));
        QCOMPARE(percent(0.7), QStringLiteral("70 %"));
        QCOMPARE(range(49.2, 57.4), QStringLiteral("49–57"));
        QCOMPARE(range(49.2, 49.4), QStringLiteral("49"));
    }

    void shouldKeepAFigureAndItsUnitOnOneLine()
    {
        QCOMPARE(unbroken(QStringLiteral("from 18 km/h on, 2.9 m, 0.62 g")),
                 QStringLiteral("from 18 km/\u2060h on, 2.9\u00a0m, 0.62\u00a0g"));
        QCOMPARE(unbroken(QStringLiteral("742 mm, 5 ft 10½ in and 80 % in 2 minutes")),
                 QStringLiteral("742\u00A0mm, 5\u00A0ft 10½\u00A0in and 80\u00A0% in 2 minutes"));
        QCOMPARE(unbroken(QStringLiteral("49–57° – or")), QStringLiteral("49–\u206057° – or"));
        QCOMPARE(unbroken(QStringLiteral("2 inner tubes")), QStringLiteral("2 inner tubes"));
    }
};

QTEST_APPLESS_MAIN(TestSpeech)
#include "tst_speech.moc"
