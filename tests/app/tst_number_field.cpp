// SPDX-License-Identifier: MIT
//
// A number field as it is typed into: what counts while typing, what stays when the keys leave.
#include "entry/number_field.h"

#include "wording/speech.h"

#include <QRandomGenerator>
#include <QSignalSpy>
#include <QTest>

using namespace tripoise;

namespace {

FieldSpec inseam()
{
    return {QStringLiteral("inseam"),
            NumberKind::Length,
            {550, 1100},
            1.0,
            0,
            true,
            Marked::AsTheBody,
            false};
}

} // namespace

class TestNumberField : public QObject {
    Q_OBJECT

private slots:
    void init() { speak({}); }

    void shouldCountWhatIsPlausibleWhileItIsTyped()
    {
        NumberField field(inseam());
        QSignalSpy accepted(&field, &NumberField::accepted);
        field.type(QStringLiteral("8"));
        QCOMPARE(accepted.size(), 0);
        QCOMPARE(field.message(), QString());
        field.type(QStringLiteral("84"));
        QCOMPARE(field.value(), 840.0); // centimetres, so far
        field.type(QStringLiteral("842"));
        QCOMPARE(field.value(), 842.0);
        QCOMPARE(field.text(), QStringLiteral("842"));
        field.commit(QStringLiteral("842"));
        QCOMPARE(field.level(), QStringLiteral("fine"));
        QCOMPARE(accepted.size(), 2);
    }

    void shouldSayWhichUnitItGuessed()
    {
        NumberField field(inseam());
        field.commit(QStringLiteral("84,2"));
        QCOMPARE(field.value(), 842.0);
        QCOMPARE(field.text(), QStringLiteral("842"));
        QCOMPARE(field.level(), QStringLiteral("note"));
        QVERIFY(field.message().contains(QLatin1String("centimetres")));
    }

    void shouldKeepAMistakeAndTheNumberBeforeIt()
    {
        NumberField field(inseam());
        field.commit(QStringLiteral("842"));
        QSignalSpy accepted(&field, &NumberField::accepted);
        QSignalSpy cleared(&field, &NumberField::cleared);
        field.type(QStringLiteral("8420"));
        field.commit(QStringLiteral("8420"));
        QCOMPARE(field.text(), QStringLiteral("8420"));
        QCOMPARE(field.level(), QStringLiteral("wrong"));
        QVERIFY(field.message().contains(QLatin1String("550 to 1100 mm")));
        QCOMPARE(field.value(), 842.0);
        QCOMPARE(accepted.size() + cleared.size(), 0);
        field.revert();
        QCOMPARE(field.text(), QStringLiteral("842"));
        QCOMPARE(field.level(), QStringLiteral("fine"));
    }

    void shouldNotCountTheBeginningOfAMistake()
    {
        NumberField field(inseam());
        field.commit(QStringLiteral("842"));
        field.type(QStringLiteral("850"));
        QCOMPARE(field.value(), 850.0);
        field.type(QStringLiteral("8500"));
        QCOMPARE(field.value(), 842.0);
        field.commit(QStringLiteral("8500"));
        QCOMPARE(field.value(), 842.0);
        field.type(QStringLiteral("860"));
        field.revert();
        QCOMPARE(field.value(), 842.0);
    }

    void shouldNotBeEmptiedWhereItIsNeeded()
    {
        NumberField field(inseam());
        field.commit(QStringLiteral("842"));
        field.commit(QString());
        QCOMPARE(field.value(), 842.0);
        QCOMPARE(field.level(), QStringLiteral("wrong"));
        FieldSpec optional = inseam();
        optional.needed = false;
        NumberField other(optional);
        QSignalSpy cleared(&other, &NumberField::cleared);
        other.commit(QStringLiteral("842"));
        other.commit(QString());
        QCOMPARE(cleared.size(), 1);
        QVERIFY(!other.hasValue());
    }

    void shouldStepInTheUnitShown()
    {
        NumberField field(inseam());
        field.setValue(842.4);
        field.step(1);
        QCOMPARE(field.value(), 843.0);
        speak({QLocale::c(), Units::Imperial});
        field.speakAnew();
        field.setValue(33.0 * 25.4);
        field.step(-2);
        QCOMPARE(*field.value(), 31.0 * 25.4);
        QCOMPARE(field.text(), QStringLiteral("31"));
    }

    void shouldNotDisturbWhatIsBeingTyped()
    {
        NumberField field(inseam());
        field.type(QStringLiteral("84.20"));
        field.setValue(842.0); // the model answers with the same
        QCOMPARE(field.text(), QStringLiteral("84.20"));
        field.setValue(850.0); // undone, say
        QCOMPARE(field.text(), QStringLiteral("850"));
    }

    void shouldReadAgainWhatItShows()
    {
        QRandomGenerator random(7);
        for (const Units units : {Units::Metric, Units::Imperial})
            for (const QLocale& locale : {QLocale::c(), QLocale(QLocale::German)}) {
                speak({locale, units});
                FieldSpec spec = inseam();
                spec.stature = units == Units::Imperial;
                for (int i = 0; i < 2000; ++i) {
                    const double value = 560.0 + random.bounded(530.0);
                    NumberField shown(spec);
                    shown.setValue(value);
                    NumberField typed(spec);
                    typed.commit(shown.text());
                    QVERIFY2(typed.hasValue(), qPrintable(shown.text()));
                    // A millimetre, a hundredth or an eighth of an inch, halved.
                    QVERIFY(std::abs(*typed.value() - value) <= (spec.stature ? 1.6 : 0.501));
                }
            }
    }

    void shouldTakeAnyTextWithoutHarm()
    {
        QRandomGenerator random(11);
        const QString letters = QStringLiteral("0123456789.,'\"-+ /%°mcinftkgé½ \t\n٣𝟙∞");
        NumberField field(inseam());
        field.setValue(842.0);
        for (int i = 0; i < 1000; ++i) {
            QString text;
            for (int k = random.bounded(30); k > 0; --k)
                text += letters[random.bounded(letters.size())];
            field.type(text);
            field.commit(text);
            QVERIFY(field.hasValue());
            QVERIFY(*field.value() >= 550.0 - 1e-6 && *field.value() <= 1100.0 + 1e-6);
        }
    }
};

QTEST_APPLESS_MAIN(TestNumberField)

#include "tst_number_field.moc"
