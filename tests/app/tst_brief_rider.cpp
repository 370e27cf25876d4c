// SPDX-License-Identifier: MIT
//
// The brief's rider and riding: what is typed becomes the fitting, what is undone comes back.
// Expected numbers are derived: the figure typed, in its unit.
#include "brief/measurements_model.h"
#include "brief/rider_model.h"
#include "brief/riding_model.h"
#include "document/read.h"
#include "support.h"
#include "wording/brief_words.h"
#include "wording/measuring.h"
#include "wording/speech.h"

#include <QAbstractItemModelTester>
#include <QRandomGenerator>
#include <QSet>
#include <QSignalSpy>
#include <QTest>

#include <numeric>

using namespace tripoise;

namespace {

/// A session with its models, each under Qt's model tester.
struct Brief {
    Session session;
    MeasurementsModel measurements;
    RiderModel rider;
    RidingModel riding;
    QAbstractItemModelTester first{&measurements,
                                   QAbstractItemModelTester::FailureReportingMode::QtTest};
    QAbstractItemModelTester second{&riding,
                                    QAbstractItemModelTester::FailureReportingMode::QtTest};

    Brief()
    {
        measurements.setSession(&session);
        rider.setSession(&session);
        riding.setSession(&session);
        measurements.setAll(true);
    }

    [[nodiscard]] int rowOf(Quantity quantity) const
    {
        for (int row = 0; row < measurements.rowCount(); ++row)
            if (text(row, MeasurementsModel::QuantityRole).toStdString() == keyOf(quantity))
                return row;
        throw std::runtime_error("no row");
    }
    [[nodiscard]] QString text(int row, int role) const
    {
        return measurements.index(row).data(role).toString();
    }
    [[nodiscard]] NumberField& field(Quantity quantity) const
    {
        const QModelIndex at = measurements.index(rowOf(quantity));
        return *at.data(MeasurementsModel::FieldRole).value<NumberField*>();
    }
    [[nodiscard]] QString certainty(Quantity quantity) const
    {
        return text(rowOf(quantity), MeasurementsModel::CertaintyRole);
    }
    [[nodiscard]] std::vector<double> readings(Quantity quantity) const
    {
        for (const Measurement& measurement : session.fitting().rider.measurements)
            if (measurement.quantity == quantity)
                return measurement.readings;
        return {};
    }
    [[nodiscard]] std::optional<double> sd(Quantity quantity) const
    {
        for (const Measurement& measurement : session.fitting().rider.measurements)
            if (measurement.quantity == quantity)
                return measurement.sd;
        return {};
    }
    [[nodiscard]] bool settle() const
    {
        return QTest::qWaitFor([this] { return session.settled(); }, 20000);
    }
    [[nodiscard]] QList<NumberField*> fields()
    {
        QList<NumberField*> all{rider.sole(), rider.shoeLength(), riding.luggageFront(),
                                riding.luggageRear()};
        for (int row = 0; row < measurements.rowCount(); ++row)
            all << measurements.index(row).data(MeasurementsModel::FieldRole).value<NumberField*>();
        return all;
    }
};

using Readings = std::vector<double>;

} // namespace

class TestBriefRider : public QObject {
    Q_OBJECT

private slots:
    void init() { speak({}); }

    void shouldPutWhatIsTypedIntoTheFitting()
    {
        Brief brief;
        brief.field(Quantity::Stature).commit(QStringLiteral("5ft 10 1/2"));
        brief.field(Quantity::Inseam).commit(QStringLiteral("84,2 cm"));
        brief.field(Quantity::Mass).commit(QStringLiteral("168 lb"));
        QVERIFY(std::abs(brief.readings(Quantity::Stature).at(0) - 70.5 * 25.4) < 1e-9);
        QVERIFY(std::abs(brief.readings(Quantity::Inseam).at(0) - 842.0) < 1e-9);
        QVERIFY(std::abs(brief.readings(Quantity::Mass).at(0) - 168 * 0.45359237) < 1e-9);
        QCOMPARE(brief.measurements.missing(), QString());
        brief.field(Quantity::Inseam).commit(QString());
        QVERIFY(brief.readings(Quantity::Inseam).empty());
        QCOMPARE(brief.measurements.missing(), QString()); // a size is then provisional
        brief.field(Quantity::Stature).commit(QString());
        QVERIFY(!brief.measurements.missing().isEmpty());
    }

    void shouldListWhatTellsMostFirst()
    {
        Brief brief;
        brief.measurements.setAll(false);
        QCOMPARE(brief.rowOf(Quantity::Stature), 0);
        QCOMPARE(brief.rowOf(Quantity::Inseam), 1);
        QCOMPARE(brief.measurements.rowCount(), 7);
        brief.measurements.setAll(true);
        QCOMPARE(brief.measurements.rowCount(), quantityCount);
    }

    void shouldSayHowEachQuantityIsTaken()
    {
        QSet<QString> data;
        QSet<QString> ways;
        for (int i = 0; i < quantityCount; ++i) {
            const auto quantity = static_cast<Quantity>(i);
            data << datumOf(quantity);
            ways << howToTake(quantity);
        }
        QCOMPARE(data.size(), quantityCount); // none empty twice, none alike
        QCOMPARE(ways.size(), quantityCount);
        QVERIFY(!data.contains(QString()) && !ways.contains(QString()));
    }

    void shouldPoolASecondReading()
    {
        Brief brief;
        NumberField& inseam = brief.field(Quantity::Inseam);
        const QString typed = QStringLiteral("842; 848");
        for (qsizetype length = 1; length <= typed.size(); ++length)
            inseam.type(typed.first(length));
        QCOMPARE(brief.readings(Quantity::Inseam), (Readings{842.0, 848.0})); // before it is left
        QCOMPARE(inseam.text(), typed);
        inseam.commit(typed);
        QCOMPARE(brief.readings(Quantity::Inseam), (Readings{842.0, 848.0}));
        QCOMPARE(inseam.text(), typed);
        QCOMPARE(brief.certainty(Quantity::Inseam), QStringLiteral("twice"));
        brief.measurements.setCertainty(brief.rowOf(Quantity::Inseam), QStringLiteral("once"));
        QCOMPARE(brief.readings(Quantity::Inseam), Readings{842.0});
        QCOMPARE(inseam.text(), QStringLiteral("842"));
        brief.session.undo();
        QCOMPARE(brief.readings(Quantity::Inseam), (Readings{842.0, 848.0}));
        QCOMPARE(brief.certainty(Quantity::Inseam), QStringLiteral("twice"));
        QCOMPARE(inseam.text(), typed);
        brief.session.undo(); // both readings were one entry
        QVERIFY(brief.readings(Quantity::Inseam).empty());
        QVERIFY(!brief.session.canUndo());
    }

    /// Expected: what a builder means who is in a hurry.
    void shouldLoseNoDigitOfTwoReadings()
    {
        struct Case {
            const char* typed;
            Readings read;
            const char* shown;
            const char* level;
        };
        for (const Case& c :
             {Case{"842;846", {842.0, 846.0}, "842; 846", "fine"},
              Case{"84.2 cm; 84.6 cm", {842.0, 846.0}, "842; 846", "fine"},
              Case{"842;", {842.0}, "842", "fine"}, Case{"; 846", {846.0}, "846", "fine"},
              Case{"842; 8x6", {842.0}, "842; 8x6", "wrong"},
              Case{"842; 8460", {842.0}, "842; 8460", "wrong"},
              Case{"8x2; 846", {}, "8x2; 846", "wrong"},
              Case{"842; 846; 844", {842.0}, "842; 846; 844", "wrong"}}) {
            Brief brief;
            NumberField& inseam = brief.field(Quantity::Inseam);
            inseam.commit(QLatin1String(c.typed));
            QVERIFY2(brief.readings(Quantity::Inseam) == c.read, c.typed);
            QCOMPARE(inseam.text(), QLatin1String(c.shown));
            QCOMPARE(inseam.level(), QLatin1String(c.level));
        }
    }

    void shouldKeepTheSecondReadingWhereTheNextIsASlip()
    {
        Brief brief;
        NumberField& inseam = brief.field(Quantity::Inseam);
        inseam.commit(QStringLiteral("842; 846"));
        inseam.commit(QStringLiteral("842; 84y"));
        QCOMPARE(brief.readings(Quantity::Inseam), (Readings{842.0, 846.0}));
        QCOMPARE(inseam.text(), QStringLiteral("842; 84y"));
        QVERIFY(inseam.takeBack());
        QCOMPARE(inseam.text(), QStringLiteral("842; 846"));
        QVERIFY(!inseam.takeBack());
    }

    void shouldKeepReadingsThatHaveNoField()
    {
        Brief brief;
        Fitting fitting;
        fitting.rider.measurements = {{Quantity::Inseam, {840.0, 842.0, 845.0}, {}}};
        brief.session.start(fitting);
        QCOMPARE(brief.certainty(Quantity::Inseam), QStringLiteral("twice"));
        brief.field(Quantity::Inseam).commit(QStringLiteral("840; 843"));
        QCOMPARE(brief.readings(Quantity::Inseam), (Readings{840.0, 843.0, 845.0}));
    }

    void shouldTakeAQuestionMarkForAGuess()
    {
        Brief brief;
        const int row = brief.rowOf(Quantity::Inseam);
        QVERIFY(brief.measurements.pressKey(row, QStringLiteral("?"))); // nothing to be guessed yet
        QVERIFY(!brief.session.canUndo());
        QVERIFY(!brief.measurements.pressKey(row, QStringLiteral("8")));
        brief.field(Quantity::Inseam).type(QStringLiteral("842"));
        QVERIFY(brief.measurements.pressKey(row, QStringLiteral("?")));
        QCOMPARE(brief.certainty(Quantity::Inseam), QStringLiteral("guess"));
        QCOMPARE(brief.field(Quantity::Inseam).text(), QStringLiteral("842"));
        brief.field(Quantity::Inseam).commit(QStringLiteral("842"));
        QCOMPARE(brief.sd(Quantity::Inseam), std::optional(25.0)); // assets/tape.json
        QVERIFY(brief.measurements.pressKey(row, QStringLiteral("?")));
        QCOMPARE(brief.certainty(Quantity::Inseam), QStringLiteral("once"));
        QVERIFY(!brief.sd(Quantity::Inseam));
        // Two readings are no guess.
        QVERIFY(brief.measurements.pressKey(row, QStringLiteral("?")));
        brief.field(Quantity::Inseam).commit(QStringLiteral("842; 846"));
        QCOMPARE(brief.certainty(Quantity::Inseam), QStringLiteral("twice"));
        QVERIFY(!brief.sd(Quantity::Inseam));
    }

    void shouldBelieveAGuessLess()
    {
        Brief brief;
        brief.field(Quantity::Inseam).commit(QStringLiteral("842"));
        QVERIFY(!brief.sd(Quantity::Inseam));
        brief.measurements.setCertainty(brief.rowOf(Quantity::Inseam), QStringLiteral("guess"));
        QCOMPARE(brief.sd(Quantity::Inseam), std::optional(25.0)); // assets/tape.json
        brief.field(Quantity::Inseam).commit(QStringLiteral("840"));
        QCOMPARE(brief.sd(Quantity::Inseam), std::optional(25.0));
        brief.session.undo();
        brief.session.undo();
        QCOMPARE(brief.certainty(Quantity::Inseam), QStringLiteral("once"));
        for (int i = 0; i < quantityCount; ++i) {
            const TapeRow& row = test::tables().tape.of(static_cast<Quantity>(i));
            QVERIFY(row.guessSd > row.sd);
        }
    }

    void shouldShowWhatIsInferredInPencil()
    {
        Brief brief;
        QVERIFY(brief.settle());
        QCOMPARE(brief.field(Quantity::ArmToGrip).placeholder(), QString()); // nothing known yet
        brief.session.start(test::demoFitting());
        QVERIFY(brief.settle());
        const Posterior& posterior = brief.session.solution().posterior;
        const BaseVector arm = rowOf(Quantity::ArmToGrip);
        const NumberField& hand = brief.field(Quantity::Hand);
        QVERIFY(!hand.hasValue());
        QCOMPARE(hand.placeholder(), QStringLiteral("≈ %1 ± %2")
                                         .arg(plain(posterior.valueOf(Quantity::Hand)),
                                              plain(posterior.sdOf(rowOf(Quantity::Hand)))));
        QVERIFY(posterior.sdOf(arm) > 0.0);
    }

    void shouldSayBesideARowWhatIsOddAboutIt()
    {
        Brief brief;
        brief.field(Quantity::Stature).commit(QStringLiteral("1700"));
        brief.field(Quantity::Inseam).commit(QStringLiteral("980"));
        QVERIFY(brief.settle());
        QCOMPARE(brief.field(Quantity::Inseam).level(), QStringLiteral("odd"));
        QVERIFY(brief.field(Quantity::Inseam).message().contains(QLatin1String("980 mm")));
        brief.field(Quantity::Inseam).commit(QStringLiteral("800"));
        QVERIFY(brief.settle());
        QCOMPARE(brief.field(Quantity::Inseam).level(), QStringLiteral("fine"));

        brief.field(Quantity::Inseam).commit(QStringLiteral("800; 850"));
        QVERIFY(brief.settle());
        QCOMPARE(brief.field(Quantity::Inseam).level(), QStringLiteral("odd"));
        QVERIFY(brief.field(Quantity::Inseam).message().contains(QLatin1String("850 mm")));
    }

    void shouldMakeOneStepOfOneEntry()
    {
        Brief brief;
        NumberField& inseam = brief.field(Quantity::Inseam);
        for (const char* text : {"8", "84", "842"})
            inseam.type(QLatin1String(text));
        inseam.commit(QStringLiteral("842"));
        inseam.type(QStringLiteral("850"));
        inseam.commit(QStringLiteral("850"));
        brief.session.undo();
        QCOMPARE(inseam.text(), QStringLiteral("842"));
        brief.session.undo();
        QCOMPARE(inseam.text(), QString());
        QVERIFY(!brief.session.canUndo());
        brief.session.redo();
        brief.session.redo();
        QCOMPARE(inseam.text(), QStringLiteral("850"));
    }

    void shouldLeaveNothingOfAnotherFitting()
    {
        Brief brief;
        brief.field(Quantity::Stature).commit(QStringLiteral("very tall"));
        brief.field(Quantity::Inseam).commit(QStringLiteral("842"));
        brief.field(Quantity::Inseam).type(QStringLiteral("850"));
        brief.rider.sole()->commit(QStringLiteral("thick"));
        brief.riding.luggageRear()->commit(QStringLiteral("much"));
        brief.field(Quantity::Foot).commit(QStringLiteral("265"));
        brief.measurements.setCertainty(brief.rowOf(Quantity::Foot), QStringLiteral("guess"));
        QSignalSpy told(&brief.measurements, &QAbstractItemModel::dataChanged);
        brief.session.start({});
        QVERIFY(brief.session.fitting() == Fitting{});
        QCOMPARE(brief.field(Quantity::Inseam).text(), QString());
        QCOMPARE(brief.field(Quantity::Stature).text(), QString());
        QCOMPARE(brief.field(Quantity::Stature).level(), QStringLiteral("fine"));
        QCOMPARE(brief.rider.sole()->text(), QString());
        QCOMPARE(brief.riding.luggageRear()->text(), QStringLiteral("0"));
        QCOMPARE(brief.certainty(Quantity::Foot), QStringLiteral("once"));
        QVERIFY(!told.isEmpty());
    }

    void shouldSayEverythingAnewInOtherUnits()
    {
        Brief brief;
        brief.field(Quantity::Stature).commit(QStringLiteral("1790.7"));
        brief.field(Quantity::Inseam).commit(QStringLiteral("2"));
        brief.riding.luggageRear()->commit(QStringLiteral("9"));
        speak({QLocale::c(), Units::Imperial});
        emit brief.session.speechChanged();
        QCOMPARE(brief.field(Quantity::Stature).text(), QStringLiteral("5 ft 10½ in"));
        QCOMPARE(brief.field(Quantity::Inseam).text(), QStringLiteral("2")); // still the mistake
        QVERIFY(brief.field(Quantity::Inseam).message().contains(QLatin1String(" in.")));
        QCOMPARE(brief.riding.luggageRear()->unitLabel(), QStringLiteral("lb"));
        QCOMPARE(brief.riding.luggageRear()->text(), QStringLiteral("19.8")); // 9 / 0.45359237
        QVERIFY(std::abs(brief.readings(Quantity::Stature).at(0) - 1790.7) < 1e-9);
    }

    void shouldKeepWhoAndHow()
    {
        Brief brief;
        brief.rider.setLabel(QStringLiteral("Ada"));
        brief.rider.setSex(QStringLiteral("female"));
        brief.rider.setFlexibility(QStringLiteral("stiff"));
        brief.rider.setHeelHabit(QStringLiteral("toe_down"));
        brief.rider.sole()->commit(QStringLiteral("12"));
        brief.rider.shoeLength()->commit(QStringLiteral("28,5 cm"));
        brief.rider.setNotes(QStringLiteral("left knee"));
        const Rider& rider = brief.session.fitting().rider;
        QCOMPARE(rider.label, std::string("Ada"));
        QVERIFY(rider.sex == Sex::Female && rider.flexibility == Flexibility::Stiff
                && rider.heelHabit == HeelHabit::ToeDown);
        QCOMPARE(rider.shoe.soleMm, std::optional(12.0));
        QCOMPARE(rider.shoe.lengthMm, std::optional(285.0));
        QCOMPARE(rider.notes, std::string("left knee"));
        brief.rider.setSex(QString());
        QVERIFY(!brief.session.fitting().rider.sex);
        brief.rider.setHeelHabit(QStringLiteral("no such habit"));
        QVERIFY(brief.session.fitting().rider.heelHabit == HeelHabit::ToeDown);
        while (brief.session.canUndo())
            brief.session.undo();
        QVERIFY(brief.session.fitting() == Fitting{});
        QCOMPARE(brief.rider.label(), QString());
        QCOMPARE(brief.rider.sole()->text(), QString());
    }

    void shouldKeepTheSharesTogether()
    {
        Brief brief;
        QRandomGenerator random(5);
        brief.riding.applyPreset(3);
        for (int i = 0; i < 3000; ++i) {
            const int row = random.bounded(brief.riding.rowCount());
            const double share = random.bounded(1.0);
            brief.riding.setShare(row, share);
            const Mix& mix = brief.session.fitting().riding.mix;
            int percents = 0;
            for (const double part : mix.share) {
                const double hundredfold = 100.0 * part;
                QVERIFY(part >= 0.0 && std::abs(hundredfold - std::round(hundredfold)) < 1e-9);
                percents += int(std::lround(hundredfold));
            }
            QCOMPARE(percents, 100);
            QCOMPARE(mix.share[std::size_t(row)], std::round(100.0 * share) / 100.0);
        }
    }

    void shouldGiveBackWhatAShareTook()
    {
        Brief brief;
        brief.riding.applyPreset(3); // two uses, 70 and 30
        const Mix before = brief.session.fitting().riding.mix;
        const int city = int(indexOf(Use::City));
        for (const double share : {0.3, 0.9, 1.0, 0.4, 0.0})
            brief.riding.setShare(city, share);
        QVERIFY(brief.session.fitting().riding.mix == before);
        brief.session.undo();
        QVERIFY(brief.session.fitting().riding.mix == before);
    }

    void shouldTakeFiguresForTensOfPerCent()
    {
        Brief brief;
        brief.riding.applyPreset(0);
        const int touring = int(indexOf(Use::Touring));
        QVERIFY(brief.riding.pressKey(touring, QStringLiteral("4")));
        QCOMPARE(brief.session.fitting().riding.mix.of(Use::Touring), 0.4);
        QVERIFY(brief.riding.pressKey(touring, QStringLiteral("0")));
        QCOMPARE(brief.session.fitting().riding.mix.of(Use::City), 1.0);
        for (const char* other : {"", "x", "12", "-", " "})
            QVERIFY(!brief.riding.pressKey(touring, QLatin1String(other)));
        brief.session.undo(); // each figure a step
        QCOMPARE(brief.session.fitting().riding.mix.of(Use::Touring), 0.4);
    }

    void shouldApplyEveryPreset()
    {
        Brief brief;
        QCOMPARE(brief.riding.preset(), -1);
        const auto presetCount = int(brief.riding.presets().size());
        QVERIFY(presetCount > 1);
        QSet<QString> names;
        for (int i = 0; i < presetCount; ++i) {
            brief.riding.applyPreset(i);
            QCOMPARE(brief.riding.preset(), i);
            const Mix& mix = brief.session.fitting().riding.mix;
            QCOMPARE(std::accumulate(mix.share.begin(), mix.share.end(), 0.0), 1.0);
            QVERIFY(!brief.riding.summary().isEmpty());
            names << brief.riding.presets().at(i);
        }
        QCOMPARE(names.size(), presetCount);
        brief.riding.applyPreset(presetCount);
        brief.riding.applyPreset(-1);
        brief.riding.setShare(-1, 0.5);
        brief.riding.setShare(99, 0.5);
        QCOMPARE(brief.riding.preset(), presetCount - 1);
    }

    void shouldKeepWhatRidesAlong()
    {
        Brief brief;
        brief.riding.setTraffic(true);
        brief.riding.setFootRetention(true);
        brief.riding.luggageRear()->commit(QStringLiteral("12,5 kg"));
        brief.riding.luggageFront()->commit(QStringLiteral("4"));
        brief.riding.setBendsFreely(false);
        QVERIFY(!brief.session.fitting().rider.bendsFreely);
        const Riding& riding = brief.session.fitting().riding;
        QVERIFY(riding.traffic && riding.footRetention);
        QCOMPARE(riding.luggage.rearKg, 12.5);
        QVERIFY(brief.riding.hasLuggage());
        brief.riding.leaveLuggage();
        QVERIFY(!brief.riding.hasLuggage());
        QCOMPARE(brief.riding.luggageRear()->text(), QStringLiteral("0"));
        brief.session.undo();
        QCOMPARE(riding.luggage.frontKg, 4.0);
        brief.riding.luggageRear()->commit(QString());
        QCOMPARE(brief.session.fitting().riding.luggage.rearKg, 0.0);
        while (brief.session.canUndo())
            brief.session.undo();
        QVERIFY(brief.session.fitting() == Fitting{});
    }

    void shouldOutliveAnyTextInEveryField()
    {
        Brief brief;
        brief.session.start(test::demoFitting());
        QRandomGenerator random(13);
        const QString letters = QStringLiteral("0123456789.,;'\" -+/%°½mcinftkglbsté\t٣∞");
        const QList<NumberField*> fields = brief.fields();
        QCOMPARE(fields.size(), quantityCount + 4);
        for (int i = 0; i < 2000; ++i) {
            NumberField& field = *fields[random.bounded(fields.size())];
            QString text;
            for (int k = random.bounded(12); k > 0; --k)
                text += letters[random.bounded(letters.size())];
            const Fitting before = brief.session.fitting();
            const auto value = field.value();
            const auto second = field.second();
            field.type(text);
            field.commit(text);
            if (field.level() == QLatin1String("wrong")) {
                QCOMPARE(field.text(), text); // it stays as typed
                QVERIFY(!field.message().isEmpty());
                field.type(QStringLiteral("?"));
                field.commit(QStringLiteral("?"));
                QVERIFY(field.takeBack());
            }
            QVERIFY(!field.takeBack()); // what stands there counts
            if (field.value() == value && field.second() == second)
                QVERIFY2(brief.session.fitting() == before,
                         qPrintable(field.label() + QLatin1Char(' ') + text));
            // Every number in the fitting is one that the document takes back.
            for (const Measurement& measurement : brief.session.fitting().rider.measurements) {
                const TapeRow& row = test::tables().tape.of(measurement.quantity);
                QVERIFY(!measurement.readings.empty());
                for (const double reading : measurement.readings)
                    QVERIFY(outside(reading, {row.low, row.high}) < 1e-6);
            }
        }
        auto reread = readDraft(writeFitting(brief.session.fitting()), test::tables());
        QVERIFY(std::holds_alternative<Fitting>(reread));
        // Turned writing direction, a letter of two halves, one half alone, nothing.
        const QString strange =
            QStringLiteral("\u202e𝟙“…") + QChar(char16_t(0xd800)) + QChar(char16_t(0));
        brief.rider.setLabel(strange.repeated(1000));
        brief.rider.setNotes(strange.repeated(100000));
        reread = readDraft(writeFitting(brief.session.fitting()), test::tables());
        QVERIFY(std::holds_alternative<Fitting>(reread));
        while (brief.session.canUndo())
            brief.session.undo();
    }
};

QTEST_GUILESS_MAIN(TestBriefRider)

#include "tst_brief_rider.moc"
