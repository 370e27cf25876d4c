// SPDX-License-Identifier: MIT
//
// The same written number means the same in a field and in a cell of a table. Expected values are
// derived: the figure times the unit (an inch is 25.4 mm, a pound 0.45359237 kg, both exact by
// definition), worked in the row.
#include "entry/read_number.h"
#include "shipped/tables.h"
#include "table/cell_number.h"
#include "text/plain.h"

#include <QTest>

#include <cmath>

using namespace tripoise;

namespace {

constexpr double inch = 25.4;
constexpr double foot = 12.0 * inch;
constexpr double pound = 0.45359237;
constexpr double exact = 1e-9;

/// What is asked for, so wide that the place tells nothing but of thousands.
Question asked(NumberKind kind)
{
    switch (kind) {
    case NumberKind::Mass: return {kind, Unit::Kilogram, {-900.0, 900.0}, u'.'};
    case NumberKind::Angle: return {kind, Unit::Degree, {-90.0, 90.0}, u'.'};
    default: return {kind, Unit::Millimetre, {-3000.0, 3000.0}, u'.'};
    }
}

std::optional<double> inField(const QString& text, const Question& question)
{
    const NumberRead read = readNumber(text, question, shippedNumberWords());
    return read.sound() ? std::optional(read.value) : std::nullopt;
}

std::optional<CellNumber> cell(const QString& text)
{
    return cellNumber(plainSigns(text.toStdString()), shippedNumberWords());
}

/// By whichever of its readings is plausible, as a table's column tells.
std::optional<double> inCell(const QString& text, const Question& question)
{
    const auto number = cell(text);
    if (!number || number->high)
        return std::nullopt;
    const Unit unit = number->unit == Unit::None ? question.shown : number->unit;
    if (factsOf(unit).kind != question.kind)
        return std::nullopt;
    for (const auto reading : {std::optional(number->value), number->grouped})
        if (reading && outside(*reading * factsOf(unit).size, question.plausible) == 0.0)
            return *reading * factsOf(unit).size;
    return std::nullopt;
}

bool same(const std::optional<double>& a, double b)
{
    return a && std::abs(*a - b) <= exact * (1.0 + std::abs(b));
}

QString told(const std::optional<double>& value)
{
    return value ? QString::number(*value, 'g', 12) : QStringLiteral("none");
}

} // namespace

class TestFieldAndCell : public QObject {
    Q_OBJECT

private slots:
    void shouldMeanTheSame_data();
    void shouldMeanTheSame();
    void shouldMeanTheSameInEveryDress();
    void shouldTellThousandsAlike();
    void shouldKnowEveryWordOfAUnit();
    void shouldBeNoNumberInEither_data();
    void shouldBeNoNumberInEither();
    void shouldDifferWhereThePlaceTells();
};

void TestFieldAndCell::shouldMeanTheSame_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("kind");
    QTest::addColumn<double>("value");
    const auto row = [](const char* text, double value, NumberKind kind = NumberKind::Length) {
        QTest::addRow("%s", text) << QString::fromUtf8(text) << static_cast<int>(kind) << value;
    };
    row("437", 437.0);
    row("437.", 437.0);
    row(".437", 0.437);
    row("0437", 437.0);
    row("437,25", 437.25);
    row("+437", 437.0);
    row("-37", -37.0);
    row("- 37", -37.0);
    row("−37", -37.0);
    row("–37,5", -37.5); // typed with the dash of a range
    row("﹣37", -37.0);
    row("ca. 437 mm", 437.0);
    row("Approx 437", 437.0);
    row("≈437", 437.0);
    row("~ 437", 437.0);
    row("437mm", 437.0);
    row("437 mm.", 437.0);
    row("437 Mm", 437.0);
    row("437\u00a0mm", 437.0);
    row("437\tmm", 437.0);
    row("43.7cm", 437.0);
    row("43,7 CM", 437.0);
    row("43 cm 7 mm", 437.0);
    row("43 cm 7", 437.0);
    row("0.437 m", 437.0);
    row("1,043 m", 1043.0);
    row("1m04", 1040.0);
    row("1 m 04", 1040.0);
    row("1 m 4 cm", 1040.0);
    row("1m043", 1043.0);
    row("1 m 4 cm 3 mm", 1043.0);
    row("17in", 17 * inch);
    row("17 in.", 17 * inch);
    row("17.25 inches", 17.25 * inch);
    row("17\"", 17 * inch);
    row("17''", 17 * inch);
    row("17″", 17 * inch);
    row("17”", 17 * inch);
    row("17 3/8\"", 17.375 * inch);
    row("17-3/8 in", 17.375 * inch);
    row("17⅜ in", 17.375 * inch);
    row("17 3⁄8″", 17.375 * inch);
    row("17 2/5 in", 17.4 * inch);
    row("17⅖ in", 17.4 * inch);
    row("17 11/64 in", (17 + 11.0 / 64) * inch);
    row("-17 3/8\"", -17.375 * inch);
    row("¾ in", 0.75 * inch);
    row("3/4\"", 0.75 * inch);
    row("5/16\"", 0.3125 * inch);
    row("17,5 Zoll", 17.5 * inch);
    row("6 ft", 6 * foot);
    row("6'", 6 * foot);
    row("5' 7\"", 5 * foot + 7 * inch);
    row("5'7", 5 * foot + 7 * inch);
    row("5′7½″", 5 * foot + 7.5 * inch);
    row("5'-7\"", 5 * foot + 7 * inch);
    row("5 ft 7 1/4 in", 5 * foot + 7.25 * inch);
    row("5 ft. 7 in.", 5 * foot + 7 * inch);
    row("5 Fuß 7", 5 * foot + 7 * inch);
    row("5.5 ft", 5.5 * foot);
    row("1 043", 1043.0);
    row("1\u202f043 mm", 1043.0);
    row("1'043 mm", 1043.0);
    row("1’043", 1043.0);
    row("1_043", 1043.0);
    row("1 043,5", 1043.5);
    row("1.043,5", 1043.5);
    row("1,043.5 mm", 1043.5);
    row("1'043.5", 1043.5);
    row("４３７", 437.0);
    row("４３．７　ｃｍ", 437.0);
    row("437㎜", 437.0);
    row("٤٣٧", 437.0);
    row("۴۳٫۷ cm", 437.0);
    row("४३७ mm", 437.0);
    row("๔๓๗", 437.0);
    row("43\u200b7", 437.0);
    row("\u200e437\u200f", 437.0);
    row("437¹", 437.0); // a footnote's
    row("71", 71.0, NumberKind::Angle);
    row("71,5°", 71.5, NumberKind::Angle);
    row("71.5 º", 71.5, NumberKind::Angle);
    row("71½°", 71.5, NumberKind::Angle);
    row("71.5 deg.", 71.5, NumberKind::Angle);
    row("71 Grad", 71.0, NumberKind::Angle);
    row("71°15'", 71.25, NumberKind::Angle);
    row("71° 15′", 71.25, NumberKind::Angle);
    row("71° 15", 71.25, NumberKind::Angle);
    row("71°15'18\"", 71.0 + 15.0 / 60 + 18.0 / 3600, NumberKind::Angle);
    row("-6°30'", -6.5, NumberKind::Angle);
    row("1.85 kg", 1.85, NumberKind::Mass);
    row("1850 g", 1.85, NumberKind::Mass);
    row("1'850 g", 1.85, NumberKind::Mass);
    row("1 kg 850 g", 1.85, NumberKind::Mass);
    row("4 lb", 4 * pound, NumberKind::Mass);
    row("4 lbs 3 oz", (4 + 3.0 / 16) * pound, NumberKind::Mass);
    row("12 st 3", (12 * 14 + 3) * pound, NumberKind::Mass);
    row("12 stone 3½ lb", (12 * 14 + 3.5) * pound, NumberKind::Mass);
}

void TestFieldAndCell::shouldMeanTheSame()
{
    QFETCH(QString, text);
    QFETCH(int, kind);
    QFETCH(double, value);
    const Question question = asked(static_cast<NumberKind>(kind));
    const auto typed = inField(text, question);
    const auto printed = inCell(text, question);
    QVERIFY2(same(typed, value), qPrintable(told(typed)));
    QVERIFY2(same(printed, value), qPrintable(told(printed)));
}

// Every combination of script, decimal sign, sign, blank and unit.
void TestFieldAndCell::shouldMeanTheSameInEveryDress()
{
    const Question question = asked(NumberKind::Length);
    const std::vector<std::pair<QString, double>> units{{QString(), 1.0},
                                                        {QStringLiteral("mm"), 1.0},
                                                        {QStringLiteral("cm"), 10.0},
                                                        {QStringLiteral("in"), inch},
                                                        {QStringLiteral("″"), inch},
                                                        {QStringLiteral("ft"), foot}};
    int count = 0;
    for (const char16_t nought : {u'0', u'٠', u'۰', u'०', u'０', u'꘠'})
        for (const QString& decimalSign :
             {QStringLiteral("."), QStringLiteral(","), QStringLiteral("．"), QStringLiteral("٫")})
            for (const QString& sign : {QString(), QStringLiteral("-"), QStringLiteral("−"),
                                        QStringLiteral("–"), QStringLiteral("+")})
                for (const QString& blank :
                     {QString(), QStringLiteral(" "), QStringLiteral("\u00a0"),
                      QStringLiteral("\u2009"), QStringLiteral("\u3000"), QStringLiteral("\t")})
                    for (const auto& unit : units)
                        for (const QString& figures :
                             {QStringLiteral("6.75"), QStringLiteral("6"), QStringLiteral("5.0")}) {
                            QString text;
                            for (const QChar c : figures)
                                text += c == u'.'
                                            ? decimalSign
                                            : QString(QChar(char16_t(nought + c.digitValue())));
                            text = sign + text + blank + unit.first;
                            const bool minus = !sign.isEmpty() && sign != u"+";
                            const double value =
                                (minus ? -1.0 : 1.0) * figures.toDouble() * unit.second;
                            QVERIFY2(same(inField(text, question), value), qPrintable(text));
                            QVERIFY2(same(inCell(text, question), value), qPrintable(text));
                            ++count;
                        }
    QCOMPARE(count, 6 * 4 * 5 * 6 * 6 * 3);
}

void TestFieldAndCell::shouldTellThousandsAlike()
{
    Question wheelbase = asked(NumberKind::Length);
    wheelbase.plausible = {800.0, 1300.0};
    for (const char* text :
         {"1.043", "1,043", "1.043 mm", "1,043mm", "104.3 cm", "1 043", "1'043"}) {
        QVERIFY2(same(inField(QString::fromUtf8(text), wheelbase), 1043.0), text);
        QVERIFY2(same(inCell(QString::fromUtf8(text), wheelbase), 1043.0), text);
    }
}

void TestFieldAndCell::shouldKnowEveryWordOfAUnit()
{
    const NumberWords& words = shippedNumberWords();
    for (const auto* list : {&words.units, &words.behindFigures})
        for (const auto& [word, unit] : *list) {
            const UnitFacts& facts = factsOf(unit);
            if (facts.kind == NumberKind::Percent)
                continue;
            const QString text = QStringLiteral("2 ") + QString::fromStdString(word);
            const Question question = asked(facts.kind);
            QVERIFY2(same(inField(text, question), 2 * facts.size), qPrintable(text));
            QVERIFY2(same(inCell(text, question), 2 * facts.size), qPrintable(text));
        }
}

void TestFieldAndCell::shouldBeNoNumberInEither_data()
{
    QTest::addColumn<QString>("text");
    for (const char* text :
         {"",          " ",           "-",        "mm",        "blue",
          "437 blue",  "437 kg 5 mm", "1.2.3",    "1,2,3",     "1,04,3",
          "4 3 7",     "437 mm mm",   "437 mm 5",

          "17 3/2",    "17.5 1/2",    "437 / ",   "(437",      "437€",
          "4e2",       "0x437",       "--437",    "1 in 3 mm", "2 ft 9 cm",
          "7 in 2 ft", "5 ft 13 in",  "71° 75",   "nan",       "437 5",
          "1.043.2,5", "437..",       "437 mm-",  "437:5",     "437\u200b mm mm"}) {
        QTest::addRow("%s", *text ? text : "(nothing)") << QString::fromUtf8(text);
    }
}

void TestFieldAndCell::shouldBeNoNumberInEither()
{
    QFETCH(QString, text);
    for (const NumberKind kind : {NumberKind::Length, NumberKind::Angle, NumberKind::Mass})
        QVERIFY2(!inField(text, asked(kind)), qPrintable(told(inField(text, asked(kind)))));
    QVERIFY2(!cell(text),
             qPrintable(told(cell(text) ? std::optional(cell(text)->value) : std::nullopt)));
}

void TestFieldAndCell::shouldDifferWhereThePlaceTells()
{
    const Question length = asked(NumberKind::Length);
    // Ranges, footnote marks and the same in another unit stand in cells alone.
    for (const char* text : {"425-440", "425 bis 440", "585 1)", "585*", "560 mm (22\")"}) {
        QVERIFY2(!inField(QString::fromUtf8(text), length), text);
        QVERIFY2(cell(QString::fromUtf8(text)), text);
    }
    // Two figures side by side may be two cells; in a field they group, or are feet and inches.
    for (const char* text : {"12 345", "5 10"})
        QVERIFY2(!cell(QString::fromUtf8(text)), text);
    QVERIFY(same(inField(QStringLiteral("5 10"), length), 5 * foot + 10 * inch));
    const Question plain{NumberKind::Plain, Unit::None, {0.0, 1e9}, u'.'};
    QVERIFY(same(inField(QStringLiteral("12 345"), plain), 12345.0));
    // A size's name, a wheel's inches.
    QVERIFY(!cell(QStringLiteral("54 M")));
    QVERIFY(!cell(QStringLiteral("29'")));
    QVERIFY(same(inField(QStringLiteral("1 M"), length), 1000.0));
    // Primes without a degree before them are feet, unless an angle is asked for.
    QVERIFY(same(inField(QStringLiteral("30'"), asked(NumberKind::Angle)), 0.5));
    // No column is a share.
    QVERIFY(!cell(QStringLiteral("25 %")));
    QVERIFY(same(
        inField(QStringLiteral("25 %"), {NumberKind::Percent, Unit::Percent, {0.0, 1.0}, u'.'}),
        0.25));
}

QTEST_GUILESS_MAIN(TestFieldAndCell)
#include "tst_field_and_cell.moc"
