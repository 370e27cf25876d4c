// SPDX-License-Identifier: MIT
//
// Numbers as people type them. Expected values are derived: the figure times the unit (an inch is
// 25.4 mm, a pound 0.45359237 kg, both exact by definition), worked in the row.
#include "entry/read_number.h"
#include "shipped/tables.h"
#include "wording/words.h"

#include <QElapsedTimer>
#include <QRandomGenerator>
#include <QTest>

#include <cmath>

using namespace tripoise;

namespace {

constexpr double inch = 25.4;
constexpr double foot = 12.0 * inch;
constexpr double pound = 0.45359237;
constexpr double stone = 14.0 * pound;
constexpr double exact = 1e-9;

const Question stature{NumberKind::Length, Unit::Millimetre, {1300.0, 2200.0}, u'.'};
const Question statureInches{NumberKind::Length, Unit::Inch, {1300.0, 2200.0}, u'.'};
const Question inseam{NumberKind::Length, Unit::Millimetre, {550.0, 1100.0}, u'.'};
const Question inseamComma{NumberKind::Length, Unit::Millimetre, {550.0, 1100.0}, u','};
const Question stem{NumberKind::Length, Unit::Millimetre, {20.0, 200.0}, u'.'};
const Question setback{NumberKind::Length, Unit::Millimetre, {-200.0, 500.0}, u'.'};
const Question spacer{NumberKind::Length, Unit::Millimetre, {0.5, 60.0}, u'.'};
const Question weight{NumberKind::Mass, Unit::Kilogram, {30.0, 220.0}, u'.'};
const Question weightPounds{NumberKind::Mass, Unit::Pound, {30.0, 220.0}, u'.'};
const Question headAngle{NumberKind::Angle, Unit::Degree, {55.0, 85.0}, u'.'};
const Question stemAngle{NumberKind::Angle, Unit::Degree, {-60.0, 60.0}, u'.'};
const Question price{NumberKind::Plain, Unit::None, {0.0, 1e9}, u'.'};
const Question priceComma{NumberKind::Plain, Unit::None, {0.0, 1e9}, u','};
const Question share{NumberKind::Percent, Unit::Percent, {0.0, 1.0}, u'.'};

NumberRead readNumber(QStringView typed, const Question& question)
{
    return tripoise::readNumber(typed, question, shippedNumberWords());
}

} // namespace

Q_DECLARE_METATYPE(tripoise::Question)

class TestReadNumber : public QObject {
    Q_OBJECT

private slots:
    void shouldReadWhatPeopleType_data();
    void shouldReadWhatPeopleType();
    void shouldSayWhatIsOdd_data();
    void shouldSayWhatIsOdd();
    void shouldOfferTheUnitThatWouldFit();
    void shouldNameBothReadingsOfAnAmbiguousFigure();
    void shouldReadBackWhatTheProgramWrites_data();
    void shouldReadBackWhatTheProgramWrites();
    void shouldTakeTheSameValueInEveryUnit();
    void shouldOutliveAnyText();
    void shouldBeLinearInTheLengthOfTheText();
};

void TestReadNumber::shouldReadWhatPeopleType_data()
{
    QTest::addColumn<Question>("question");
    QTest::addColumn<QString>("text");
    QTest::addColumn<double>("value");
    QTest::addColumn<bool>("guessed");
    const auto row = [](const Question& question, const char* text, double value,
                        bool guessed = false) {
        QTest::addRow("%s", text) << question << QString::fromUtf8(text) << value << guessed;
    };
    // lengths with a unit
    row(inseam, "842 mm", 842.0);
    row(inseam, "842mm", 842.0);
    row(inseam, "842 MM", 842.0);
    row(inseam, " 842  mm ", 842.0);
    row(inseam, "84.2 cm", 842.0);
    row(inseam, "84,2 cm", 842.0);
    row(inseam, "84,2cm.", 842.0);
    row(inseam, "0.842 m", 842.0);
    row(inseam, ",842 m", 842.0);
    row(inseam, "33.5in", 33.5 * inch);
    row(inseam, "33.5 in.", 33.5 * inch);
    row(inseam, "33.5\"", 33.5 * inch);
    row(inseam, "33 1/2 in", 33.5 * inch);
    row(inseam, "33-1/2\"", 33.5 * inch);
    row(inseam, "33½\"", 33.5 * inch);
    row(inseam, "33 ½ inches", 33.5 * inch);
    row(inseam, "33 1⁄2 in", 33.5 * inch);
    row(inseam, "33 3/16″", 33.1875 * inch);
    row(inseam, "33¼''", 33.25 * inch);
    row(inseam, "33⅞ in", 33.875 * inch);
    row(inseam, "33,5 Zoll", 33.5 * inch);
    row(inseam, "2 ft 9 in", 2 * foot + 9 * inch);
    row(inseam, "2' 9½”", 2 * foot + 9.5 * inch);
    row(inseam, "84 cm 2 mm", 842.0);
    row(inseam, "84cm2", 842.0);
    row(inseam, "84,2 Zentimeter", 842.0);
    row(inseam, "842 Millimetres", 842.0);
    row(stature, "1790 mm", 1790.0);
    row(stature, "1,790 mm", 1790.0);
    row(stature, "1.790 mm", 1790.0);
    row(stature, "1 790 mm", 1790.0);
    row(stature, "1'790 mm", 1790.0);
    row(stature, "1’790 mm", 1790.0);
    row(stature, "1_790", 1790.0);
    row(stature, "1 790,5 mm", 1790.5);
    row(stature, "1.790,5 mm", 1790.5);
    row(stature, "1,790.5 mm", 1790.5);
    row(stature, "1,79 m", 1790.0);
    row(stature, "1.79 m", 1790.0);
    row(stature, "1.795m", 1795.0);
    row(stature, "1m79", 1790.0);
    row(stature, "1 m 79", 1790.0);
    row(stature, "1m8", 1800.0);
    row(stature, "1m795", 1795.0);
    row(stature, "1m79,5", 1795.0);
    row(stature, "1 m 79 cm", 1790.0);
    row(stature, "1m 79cm 5mm", 1795.0);
    row(stature, "1m05.", 1050.0); // read, though nobody's height: see below
    row(stature, "179 cm", 1790.0);
    row(stature, "179,5 cm", 1795.0);
    row(stature, "5ft 10 1/2", 5 * foot + 10.5 * inch);
    row(stature, "5' 10½\"", 5 * foot + 10.5 * inch);
    row(stature, "5'10", 5 * foot + 10 * inch);
    row(stature, "5'10\"", 5 * foot + 10 * inch);
    row(stature, "5′ 10″", 5 * foot + 10 * inch);
    row(stature, "5’10”", 5 * foot + 10 * inch);
    row(stature, "5'-10\"", 5 * foot + 10 * inch);
    row(stature, "5´10´´", 5 * foot + 10 * inch);
    row(stature, "5`10", 5 * foot + 10 * inch);
    row(stature, "5 ft 10 in", 5 * foot + 10 * inch);
    row(stature, "5 ft. 10 in.", 5 * foot + 10 * inch);
    row(stature, "5 feet 10.25 inches", 5 * foot + 10.25 * inch);
    row(stature, "5ft10in", 5 * foot + 10 * inch);
    row(stature, "5 Fuß 10", 5 * foot + 10 * inch);
    row(stature, "5ft 0", 5 * foot);
    row(stature, "6'", 6 * foot);
    row(stature, "6 ft", 6 * foot);
    row(stature, "5.9 ft", 5.9 * foot);
    row(stature, "70 1/2 in", 70.5 * inch);
    row(stature, "70.5\"", 70.5 * inch);
    // bare lengths
    row(inseam, "842", 842.0);
    row(inseam, "842.5", 842.5);
    row(inseam, "842,5", 842.5);
    row(inseam, "842.", 842.0);
    row(inseam, "+842", 842.0);
    row(inseam, "≈ 842", 842.0);
    row(inseam, "~842", 842.0);
    row(inseam, "84,2", 842.0, true);
    row(inseam, "84.2", 842.0, true);
    row(inseam, "84", 840.0, true);
    row(inseam, "0,842", 842.0, true);
    row(inseam, ".842", 842.0, true);
    row(inseam, "33.5", 33.5 * inch, true);
    row(inseam, "33 1/2", 33.5 * inch, true);
    row(inseam, "33½", 33.5 * inch, true);
    row(inseam, "2 9", 2 * foot + 9 * inch, true);
    row(stature, "1790", 1790.0);
    row(stature, "1 790", 1790.0);
    row(stature, "1 790", 1790.0); // a narrow space that does not break
    row(stature, "179", 1790.0, true);
    row(stature, "1.79", 1790.0, true);
    row(stature, "1,79", 1790.0, true);
    row(stature, "70.5", 70.5 * inch, true);
    row(stature, "5 10", 5 * foot + 10 * inch, true);
    row(stature, "5 10 1/2", 5 * foot + 10.5 * inch, true);
    row(stature, "5 10½", 5 * foot + 10.5 * inch, true);
    row(statureInches, "70.5", 70.5 * inch);
    row(statureInches, "70,5", 70.5 * inch);
    row(statureInches, "70 1/2", 70.5 * inch);
    row(statureInches, "1790", 1790.0, true);
    row(statureInches, "179", 1790.0, true);
    row(statureInches, "1,79", 1790.0, true);
    row(stem, "100", 100.0);
    row(stem, "10", 100.0, true);
    row(stem, "10 cm", 100.0);
    row(stem, "3.5\"", 3.5 * inch);
    row(spacer, "2.5", 2.5);
    row(spacer, "2,5 mm", 2.5);
    row(spacer, "½", 0.5);
    row(setback, "-60", -60.0);
    row(setback, "−60 mm", -60.0);
    row(setback, "–60", -60.0);
    row(setback, "- 60", -60.0);
    row(setback, "-2 1/2\"", -2.5 * inch);
    row(setback, "-0", 0.0);
    // other figures and spaces
    row(inseam, "８４２", 842.0);
    row(inseam, "８４．２　ｃｍ", 842.0);
    row(inseam, "８４２㎜", 842.0);
    row(inseam, "84,2㎝", 842.0);
    row(inseam, "٨٤٢", 842.0);
    row(inseam, "\u200e842\u200f mm", 842.0);
    row(inseam, "8\u200b42", 842.0);
    row(inseam, "842\tmm", 842.0);
    row(inseam, "842\u2009mm", 842.0);
    // masses
    row(weight, "76", 76.0);
    row(weight, "76 kg", 76.0);
    row(weight, "76,5kg", 76.5);
    row(weight, "76 kilos", 76.0);
    row(weight, "76㎏", 76.0);
    row(weight, "76000 g", 76.0);
    row(weight, "168 lb", 168 * pound);
    row(weight, "168lbs", 168 * pound);
    row(weight, "168 pounds", 168 * pound);
    row(weight, "168 lb 8 oz", 168.5 * pound);
    row(weight, "12 st 3", 12 * stone + 3 * pound);
    row(weight, "12st 3lb", 12 * stone + 3 * pound);
    row(weight, "12 stone 3½", 12 * stone + 3.5 * pound);
    row(weight, "12 st", 12 * stone);
    row(weight, "250", 250 * pound, true);
    row(weightPounds, "168", 168 * pound);
    row(weightPounds, "30", 30.0, true);
    row(weightPounds, "76 kg", 76.0);
    // angles
    row(headAngle, "73.5", 73.5);
    row(headAngle, "73,5", 73.5);
    row(headAngle, "73½", 73.5);
    row(headAngle, "73.5°", 73.5);
    row(headAngle, "73,5 °", 73.5);
    row(headAngle, "73.5 deg", 73.5);
    row(headAngle, "73 Grad", 73.0);
    row(headAngle, "73°30'", 73.5);
    row(headAngle, "73° 30", 73.5);
    row(headAngle, "73°30′36″", 73.0 + 30.0 / 60.0 + 36.0 / 3600.0);
    row(headAngle, "73º", 73.0);
    row(headAngle, "73˚", 73.0);
    row(stemAngle, "-6", -6.0);
    row(stemAngle, "−6°", -6.0);
    row(stemAngle, "-6°30'", -6.5);
    row(stemAngle, "+17", 17.0);
    row(stemAngle, "0", 0.0);
    // plain numbers and shares
    row(price, "1234", 1234.0);
    row(price, "1234.50", 1234.5);
    row(price, "1.234", 1.234); // the point is the decimal sign here
    row(price, "1.234.567", 1234567.0);
    row(price, "1,234,567.8", 1234567.8);
    row(price, "1'234'567", 1234567.0);
    row(price, "12 345", 12345.0);
    row(priceComma, "1234,5", 1234.5);
    row(priceComma, "1,234", 1.234);
    row(priceComma, "12.5", 12.5);
    row(priceComma, "1.234,5", 1234.5);
    row(share, "80", 0.8);
    row(share, "80 %", 0.8);
    row(share, "12,5%", 0.125);
    row(share, "80 percent", 0.8);
    row(inseamComma, "84,2", 842.0, true);
    row(inseamComma, "842.5", 842.5);
}

void TestReadNumber::shouldReadWhatPeopleType()
{
    QFETCH(Question, question);
    QFETCH(QString, text);
    QFETCH(double, value);
    QFETCH(bool, guessed);
    const NumberRead read = readNumber(text, question);
    QVERIFY2(std::abs(read.value - value) <= exact * (1.0 + std::abs(value)),
             qPrintable(QString::number(read.value, 'g', 12)));
    QCOMPARE(read.sound(), value >= question.plausible.low && value <= question.plausible.high);
    QCOMPARE(read.unitGuessed, guessed);
}

void TestReadNumber::shouldSayWhatIsOdd_data()
{
    QTest::addColumn<Question>("question");
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("oddity");
    const auto row = [](const Question& question, const char* text, Oddity oddity) {
        QTest::addRow("%s", *text ? text : "(nothing)")
            << question << QString::fromUtf8(text) << static_cast<int>(oddity);
    };
    row(inseam, "", Oddity::Empty);
    row(inseam, "   ", Oddity::Empty);
    row(inseam, "\u200b", Oddity::Empty);
    row(inseam, "≈", Oddity::Empty);
    row(inseam, "abc", Oddity::NotANumber);
    row(inseam, "-", Oddity::NotANumber);
    row(inseam, ".", Oddity::NotANumber);
    row(inseam, "mm", Oddity::NotANumber);
    row(inseam, "--842", Oddity::NotANumber);
    row(inseam, "1.2.3", Oddity::NotANumber);
    row(inseam, "1,2,3", Oddity::NotANumber);
    row(inseam, "1,23,456", Oddity::NotANumber);
    row(inseam, "8 4 2", Oddity::NotANumber);
    row(inseam, "842-850", Oddity::NotANumber);
    row(inseam, "842/2", Oddity::NotANumber);
    row(inseam, "1/0", Oddity::NotANumber);
    row(inseam, "33 3/2", Oddity::NotANumber);
    row(inseam, "33.5 1/2", Oddity::NotANumber);
    row(inseam, "(842)", Oddity::NotANumber);
    row(inseam, "842 mm mm", Oddity::NotANumber);
    row(inseam, "9 in 2 ft", Oddity::NotANumber);
    row(inseam, "0x34A", Oddity::UnknownUnit);
    row(inseam, "842 furlongs", Oddity::UnknownUnit);
    row(inseam, "842 kg", Oddity::UnknownUnit);
    row(inseam, "842°", Oddity::UnknownUnit);
    row(inseam, "8e2", Oddity::UnknownUnit);
    row(inseam, "nan", Oddity::NotANumber);
    row(inseam, "inf", Oddity::NotANumber);
    row(stature, "5 ft 13", Oddity::TooManyParts);
    row(stature, "5'12\"", Oddity::TooManyParts);
    row(stature, "1 m 100 cm", Oddity::TooManyParts);
    row(weight, "12 st 14", Oddity::TooManyParts);
    row(headAngle, "73°60'", Oddity::TooManyParts);
    row(inseam, "12", Oddity::Below);
    row(inseam, "0", Oddity::Below);
    row(inseam, "-842", Oddity::Below);
    row(inseam, "4 ft", Oddity::Above);
    row(inseam, "8420", Oddity::Above);
    row(inseam, "99999999999999999999999999999999999999999", Oddity::Above);
    row(inseam, "842 cm", Oddity::FitsOtherUnit);
    row(inseam, "84 mm", Oddity::FitsOtherUnit);
    row(inseam, "33 cm", Oddity::FitsOtherUnit);
    row(weight, "250 kg", Oddity::FitsOtherUnit);
    row(headAngle, "7.3", Oddity::Below);
    row(headAngle, "735", Oddity::Above);
    row(weight, "76 mm", Oddity::UnknownUnit);
    row(price, "1234 mm", Oddity::UnknownUnit);
    row(price, "1,234", Oddity::Ambiguous); // the comma is not the decimal sign here
    row(priceComma, "1.234", Oddity::Ambiguous);
    row(price, "-1", Oddity::Below);
    row(share, "120", Oddity::Above);
}

void TestReadNumber::shouldSayWhatIsOdd()
{
    QFETCH(Question, question);
    QFETCH(QString, text);
    QFETCH(int, oddity);
    const NumberRead read = readNumber(text, question);
    QCOMPARE(static_cast<int>(read.oddity), oddity);
    QVERIFY(!read.sound());
}

void TestReadNumber::shouldOfferTheUnitThatWouldFit()
{
    const NumberRead read = readNumber(u"842 cm", inseam);
    QCOMPARE(read.oddity, Oddity::FitsOtherUnit);
    QCOMPARE(read.value, 8420.0);
    QCOMPARE(read.fitting, Unit::Millimetre);
    QCOMPARE(readNumber(u"33 cm", inseam).fitting, Unit::Inch);
    QCOMPARE(readNumber(u"250 kg", weight).fitting, Unit::Pound);
}

void TestReadNumber::shouldNameBothReadingsOfAnAmbiguousFigure()
{
    const NumberRead read = readNumber(u"1,234", price);
    QCOMPARE(read.value, 1234.0);
    QCOMPARE(read.other, 1.234);
}

void TestReadNumber::shouldReadBackWhatTheProgramWrites_data()
{
    QTest::addColumn<QChar>("decimalSign");
    QTest::newRow("point") << QChar(u'.');
    QTest::newRow("comma") << QChar(u',');
}

// What is written to a number of decimals is read back to half of the last one.
void TestReadNumber::shouldReadBackWhatTheProgramWrites()
{
    QFETCH(QChar, decimalSign);
    const auto check = [decimalSign](Question question, Unit unit, const QString& suffix,
                                     int decimals) {
        question.decimalSign = decimalSign;
        const double size = factsOf(unit).size;
        const double slack = 0.5 * std::pow(10.0, -decimals) * size;
        const Range inside{question.plausible.low + slack, question.plausible.high - slack};
        for (int i = 0; i <= 200; ++i) {
            const double value = inside.low + (inside.high - inside.low) * i / 200.0;
            QString text = plain(value / size, decimals) + suffix;
            text.replace(QLatin1Char('.'), decimalSign);
            const NumberRead read = readNumber(text, question);
            QVERIFY2(read.sound(), qPrintable(text));
            QVERIFY2(std::abs(read.value - value) <= slack * (1.0 + exact), qPrintable(text));
            QVERIFY2(!read.unitGuessed, qPrintable(text));
        }
    };
    for (const Question& question : {stature, inseam, stem, setback, spacer}) {
        for (const int decimals : {0, 1, 2}) {
            check(question, Unit::Millimetre, QString(), decimals);
            check(question, Unit::Millimetre, QStringLiteral(" mm"), decimals);
            check(question, Unit::Centimetre, QStringLiteral(" cm"), decimals);
            Question inches = question;
            inches.shown = Unit::Inch;
            check(inches, Unit::Inch, QString(), decimals);
            check(inches, Unit::Inch, QStringLiteral(" in"), decimals);
        }
    }
    check(weight, Unit::Kilogram, QString(), 1);
    check(weightPounds, Unit::Pound, QString(), 1);
    check(weightPounds, Unit::Pound, QStringLiteral(" lb"), 0);
    check(headAngle, Unit::Degree, QStringLiteral("°"), 2);
    check(stemAngle, Unit::Degree, QStringLiteral("°"), 1);
    check(share, Unit::Percent, QStringLiteral(" %"), 0);
    check(price, Unit::None, QString(), 2);
}

void TestReadNumber::shouldTakeTheSameValueInEveryUnit()
{
    // One height, written every way the program knows.
    const double value = 5 * foot + 10.5 * inch; // 1790.7
    for (const QString& text :
         {QStringLiteral("1790.7"), QStringLiteral("1790,7 mm"), QStringLiteral("179.07 cm"),
          QStringLiteral("1.7907 m"), QStringLiteral("70.5 in"), QStringLiteral("70½\""),
          QStringLiteral("5 ft 10½ in"), QStringLiteral("5′10.5″")})
        QVERIFY2(std::abs(readNumber(text, stature).value - value) < exact * value,
                 qPrintable(text));
}

void TestReadNumber::shouldOutliveAnyText()
{
    // Characters that mean something to the reader, and some that do not.
    const QString alphabet = QStringLiteral("0123456789.,'\" /-+°%½mcinftkglbsxé\u200b\u0000８㎜-");
    QRandomGenerator random(7);
    for (int i = 0; i < 20'000; ++i) {
        QString text;
        const int length = random.bounded(24);
        for (int k = 0; k < length; ++k)
            text += random.bounded(20) ? alphabet[random.bounded(alphabet.size())]
                                       : QChar(static_cast<char16_t>(random.bounded(0x10000)));
        for (const Question& question : {stature, weight, headAngle, price, share}) {
            const NumberRead read = readNumber(text, question);
            QVERIFY(std::isfinite(read.value));
            if (read.sound())
                QVERIFY(read.value >= question.plausible.low - 1e-6
                        && read.value <= question.plausible.high + 1e-6);
        }
    }
}

void TestReadNumber::shouldBeLinearInTheLengthOfTheText()
{
    // Far longer than any number: refused at once, whatever it is made of.
    for (const QString& piece : {QStringLiteral("1"), QStringLiteral(" "), QStringLiteral("1 234"),
                                 QStringLiteral("1'"), QStringLiteral("½"), QStringLiteral(".")}) {
        const QString text = QStringLiteral("8") + piece.repeated(500'000) + QStringLiteral("2");
        QElapsedTimer timer;
        timer.start();
        QVERIFY(!readNumber(text, inseam).sound());
        QVERIFY(timer.elapsed() < 1000);
    }
}

QTEST_GUILESS_MAIN(TestReadNumber)
#include "tst_read_number.moc"
