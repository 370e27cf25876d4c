// SPDX-License-Identifier: MIT
//
// Set-ups side by side and the sections of a decision: what is said is what was decided.
#include "support.h"

#include "wording/advice_text.h"
#include "wording/consideration_words.h"
#include "wording/findings.h"
#include "wording/ledger_words.h"
#include "wording/sections.h"
#include "wording/setup_rows.h"
#include "wording/words.h"

#include <QTest>

#include <algorithm>
#include <set>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Decided {
    Fitting fitting;
    Prepared prepared;
    Advice advice;

    [[nodiscard]] const Candidate& named() const { return advice.leading(); }
    [[nodiscard]] Columns firstTwo() const
    {
        return {&*advice.candidates[0].best, &*advice.candidates[1].best};
    }
};

Decided decided(const char* demo)
{
    const std::string text =
        textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/%1.json").arg(QLatin1String(demo)));
    Decided result{std::get<Fitting>(readFitting(text, tables())), {}, {}};
    result.prepared =
        prepare(result.fitting.frames, result.fitting.bicycle, result.fitting.stock, tables());
    result.advice = advise(result.fitting.rider, result.fitting.riding, result.fitting.current,
                           result.prepared, tables());
    return result;
}

const SetupRow& row(const std::vector<SetupRow>& rows, const char* label)
{
    const auto found = std::find_if(rows.begin(), rows.end(), [label](const SetupRow& candidate) {
        return candidate.label == QLatin1String(label);
    });
    if (found == rows.end())
        throw std::runtime_error(std::string("no row ") + label);
    return *found;
}

Finding finding(FindingCode code, std::vector<double> numbers)
{
    return {code, Severity::Limit, std::move(numbers), {}, {}};
}

} // namespace

class TestSetupRows : public QObject {
    Q_OBJECT

private slots:
    void init() { speak({}); }
    void cleanup() { speak({}); }

    void shouldSayWhatWasDecided()
    {
        const Decided d = decided("between-two-sizes");
        const Columns columns = d.firstTwo();
        const auto rows = setupRows(columns, d.advice, d.prepared);
        QCOMPARE(rows.size(), std::size_t(11));
        std::set<QString> labels;
        for (const SetupRow& each : rows) {
            QVERIFY2(!each.meaning.isEmpty(), qPrintable(each.label));
            QCOMPARE(each.said.size(), qsizetype(2));
            labels.insert(each.label);
        }
        QCOMPARE(labels.size(), rows.size());
        for (int i = 0; i < 2; ++i) {
            const Setup& setup = columns[std::size_t(i)]->setup;
            QCOMPARE(row(rows, "saddle height, BB to top").said[i], mm(setup.saddle.heightMm));
            QCOMPARE(row(rows, "saddle nose, behind BB").said[i],
                     mm(setup.saddle.setbackMm() - d.advice.saddleNoseAheadMm));
            QCOMPARE(row(rows, "stem").said[i], stemName(setup.stem, setup.cockpit.flipped));
            QCOMPARE(row(rows, "spacers under it").said[i], halfMm(setup.cockpit.spacersMm));
            QCOMPARE(row(rows, "bar").said[i], barName(d.fitting.stock.bars[setup.cockpit.bar]));
            QCOMPARE(row(rows, "cranks").said[i], halfMm(setup.crankMm));
            const double below = setup.saddle.point().y() - setup.grip.y();
            QCOMPARE(row(rows, "bar against saddle").said[i],
                     (below > 0.0 ? QStringLiteral("%1 below") : QStringLiteral("%1 above"))
                         .arg(mm(std::abs(below))));
            QCOMPARE(row(rows, "steerer, crown to top").said[i], partMm(setup.steererCutMm));
        }
    }

    void shouldMarkWhatDiffers()
    {
        const Decided d = decided("between-two-sizes");
        const Columns two = d.firstTwo();
        const auto same = setupRows({two[0], two[0]}, d.advice, d.prepared);
        for (const SetupRow& each : same)
            QVERIFY2(!each.differs(), qPrintable(each.label));
        QCOMPARE(differencesSentence(same), QStringLiteral("The same parts on both."));

        AdvisedSetup taller = *two[0];
        taller.setup.cockpit.spacersMm += 5.0;
        taller.setup.steererCutMm += 5.0;
        taller.setup.saddle.heightMm += 0.01; // less than is said
        const auto rows = setupRows({two[0], &taller}, d.advice, d.prepared);
        for (const SetupRow& each : rows)
            QCOMPARE(each.differs(), each.label == QLatin1String("spacers under it")
                                         || each.label == QLatin1String("steerer, crown to top"));
        QCOMPARE(differencesSentence(rows),
                 QStringLiteral("Parts that differ: spacers under it and steerer, crown to top."));
    }

    void shouldSayPlacesInInchesAndPartsInMillimetres()
    {
        const Decided d = decided("between-two-sizes");
        speak({QLocale::c(), Units::Imperial});
        for (const SetupRow& each : setupRows(d.firstTwo(), d.advice, d.prepared)) {
            for (const QString& said : each.said) {
                if (each.label == QLatin1String("bar") || said.contains(QStringLiteral("still")))
                    continue;
                QVERIFY2(said.contains(QStringLiteral(" in")) != each.part, qPrintable(said));
                QVERIFY2(said.contains(QStringLiteral(" mm")) == each.part, qPrintable(said));
            }
        }
    }

    void shouldTellTheBackOfEveryUse()
    {
        const Decided d = decided("between-two-sizes");
        const auto rows = backRows(d.firstTwo());
        QCOMPARE(rows.size(), d.named().best->uses.size());
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const UsePosture& use = d.advice.candidates[0].best->uses[i];
            QVERIFY(rows[i].label.contains(nameOf(use.use)));
            QVERIFY(rows[i].said[0].startsWith(degrees(use.posture.trunk.deg())));
        }
        QVERIFY(backRows({}).empty());
    }

    void shouldPutTheLargestUseFirst()
    {
        Decided d = decided("between-two-sizes");
        const auto uses = usesByShare(d.named(), d.fitting.riding.mix);
        QCOMPARE(uses.size(), std::size_t(2));
        QVERIFY(d.fitting.riding.mix.of(uses[0]->use) >= d.fitting.riding.mix.of(uses[1]->use));
        const auto other = usesByShare(d.named(), Mix::only(uses[1]->use));
        QCOMPARE(other[0]->use, uses[1]->use);
    }

    void shouldTellTheDifferenceAtTheHand_data()
    {
        QTest::addColumn<double>("x");
        QTest::addColumn<double>("y");
        QTest::addColumn<QString>("said");
        QTest::newRow("nearer, higher")
            << -26.0 << 50.0
            << QStringLiteral(
                   "At the hand, touring is 26 mm nearer and 50 mm higher than road riding.");
        QTest::newRow("further, lower")
            << 6.0 << -14.0
            << QStringLiteral(
                   "At the hand, touring is 6 mm further and 14 mm lower than road riding.");
        QTest::newRow("higher alone")
            << 0.4 << 10.0
            << QStringLiteral("At the hand, touring is 10 mm higher than road riding.");
        QTest::newRow("the same") << 0.3 << -0.4
                                  << QStringLiteral(
                                         "At the hand, road riding and touring are the same.");
    }
    void shouldTellTheDifferenceAtTheHand()
    {
        QFETCH(double, x);
        QFETCH(double, y);
        QFETCH(QString, said);
        UseSetup road{Use::Road, {}};
        road.advised.setup.grip = Point(400.0, 600.0);
        UseSetup touring{Use::Touring, {}};
        touring.advised.setup.grip = Point(400.0 + x, 600.0 + y);
        QCOMPARE(handSentence(road, touring), said);
    }

    void shouldTellWhatChangesAgainstTodaysBike()
    {
        Setup setup;
        setup.saddle.heightMm = 760.0;
        setup.grip = Point(450.0, 690.0);
        setup.crankMm = 170.0;
        QVERIFY(todaySection({}, setup).items.isEmpty());
        CurrentBike today;
        QVERIFY(todaySection(today, setup).items.isEmpty());
        today.saddleHeightMm = 752.0;
        today.gripReachMm = 459.0;
        today.gripHeightMm = 690.4; // within the tape
        today.crankMm = 172.5;
        QCOMPARE(todaySection(today, setup).items,
                 QStringList({"saddle 8 mm higher", "grips 9 mm nearer", "cranks 2.5 mm shorter"}));
    }

    void shouldTellEachCheckOnce()
    {
        Decided d = decided("between-two-sizes");
        Candidate candidate = d.named();
        d.advice.riderFindings = {candidate.findings.front()};
        const Findings checks = checksOf(d.advice, candidate);
        QCOMPARE(checks.size(), candidate.findings.size());
        QCOMPARE(checksSection(d.advice, candidate).items.size(), qsizetype(checks.size()));
    }

    // What was said awkwardly: lengths below nothing, and what is needed beside what is there.
    void shouldWordWhatIsTooShortOrTooHigh()
    {
        QCOMPARE(
            sentence(finding(FindingCode::SteererTooShort, {214.0, 100.0})),
            QStringLiteral("The steerer is too short: this set-up needs 214 mm of it, and it is "
                           "100 mm long."));
        for (const double exposed : {20.0, -12.0}) {
            const QString said = sentence(finding(FindingCode::SaddleCannotGoLow, {exposed, 30.0}));
            QVERIFY2(!said.contains(QStringLiteral("−")), qPrintable(said));
            QVERIFY2(said.contains(mm(30.0 - exposed)), qPrintable(said));
        }
        const QString post = sentence(finding(FindingCode::PostTooShort, {-15.0, 80.0}));
        QVERIFY2(post.contains(QStringLiteral("95 mm")) && !post.contains(QStringLiteral("−")),
                 qPrintable(post));
    }

    void shouldWordEveryConsideration()
    {
        const Decided d = decided("short-rider-large-wheels");
        std::set<QString> names, meanings, heavier;
        for (const LedgerEntry& entry : d.named().best->ledger) {
            names.insert(ledgerName(entry.consideration));
            meanings.insert(ledgerMeaning(entry.consideration));
            heavier.insert(ledgerHeavier(entry.consideration));
            const QString value = ledgerValue(entry, d.prepared.sizes[d.named().size]);
            QVERIFY2(!value.isEmpty() && !value.contains(QLatin1Char('%')), qPrintable(value));
        }
        for (const auto& texts : {names, meanings, heavier}) {
            QCOMPARE(texts.size(), considerationCount);
            QVERIFY(!texts.count(QString()));
        }
    }

    void shouldSayWhereTheTableDoesNotTell()
    {
        PreparedSize bare;
        const QString unknown = QStringLiteral("not known");
        QCOMPARE(ledgerValue({Consideration::Standover, 0.0, 0.0}, bare), unknown);
        QCOMPARE(ledgerValue({Consideration::ExposedPost, 0.0, 0.0}, bare), unknown);
        bare.skeleton.standoverMm = Estimate{};
        QCOMPARE(ledgerValue({Consideration::Standover, 0.0, 0.0}, bare), QStringLiteral("0 mm"));
    }

    // Derived: two stems alike but for their length give one of them room one way; 20 mm of spacers
    // to add and 10 to take away are all one wants (assets/weights.json).
    void shouldCountTheWaysABarCanStillMove()
    {
        QCOMPARE(ledgerValue({Consideration::Adjustment, 4.0, 0.0}, {}),
                 QStringLiteral("4 of 4 ways"));
        QCOMPARE(ledgerValue({Consideration::Adjustment, 2.5, 0.0}, {}),
                 QStringLiteral("2.5 of 4 ways"));
        const Decided d = decided("between-two-sizes");
        for (const Candidate& candidate : d.advice.candidates) {
            const LedgerEntry& entry = candidate.best->ledger[indexOf(Consideration::Adjustment)];
            const double measure =
                entry.points / tables().weights.points[indexOf(Consideration::Adjustment)];
            QVERIFY(std::abs(entry.value - 4.0 * (1.0 - measure)) < 1e-9);
        }
    }

    void shouldShowCautionsInEveryUnit()
    {
        const Cautions metric = cautionsOf(Fitting(), nullptr);
        QVERIFY(metric.first.size() + metric.others.size() >= 5);
        QVERIFY(metric.others.join(QString()).contains(QStringLiteral("health professional")));
        QVERIFY(metric.first.front().contains(QStringLiteral("5 mm")));
        speak({QLocale::c(), Units::Imperial}); // the step is one of parts: spacers, rails, stems
        QCOMPARE(cautionsOf(Fitting(), nullptr).first, metric.first);
        QCOMPARE(cautionsOf(Fitting(), nullptr).others, metric.others);
    }

    // What applies to this rider and this bicycle comes first; nothing is said twice, or not at
    // all.
    void shouldTellFirstTheCautionsThatApply()
    {
        const Cautions plain = cautionsOf(Fitting(), nullptr);
        QCOMPARE(plain.first.size(), 1);
        const auto first = [&](const Fitting& fitting, const Candidate* candidate) {
            const Cautions told = cautionsOf(fitting, candidate);
            const QStringList all = told.first + told.others;
            if (std::set<QString>(all.begin(), all.end()).size()
                != std::size_t(plain.first.size() + plain.others.size()))
                return QString();
            return told.first.join(QLatin1Char(' '));
        };
        Fitting stiff;
        stiff.rider.bendsFreely = false;
        QVERIFY(first(stiff, nullptr).contains(QStringLiteral("health professional")));
        Fitting sore;
        sore.current = CurrentBike{};
        QVERIFY(!first(sore, nullptr).contains(QStringLiteral("health professional")));
        sore.current->complaints = {Complaint::Hands};
        QVERIFY(first(sore, nullptr).contains(QStringLiteral("health professional")));
        Candidate candidate;
        QVERIFY(!first(Fitting(), &candidate).contains(QStringLiteral("A shoe that touches")));
        candidate.findings.push_back({FindingCode::ToeNear, Severity::Caution, {6.0}, "tyre", {}});
        QVERIFY(first(Fitting(), &candidate).contains(QStringLiteral("A shoe that touches")));
        // Fittings hold no e-bikes, so that nothing is said of them.
        QVERIFY(!(plain.first + plain.others).join(QString()).contains(QStringLiteral("e-bike")));
    }

    // Frames and parts are sold and drawn in millimetres; where the hands are is the rider's.
    void shouldSayFramesInMillimetresInAnyUnits()
    {
        Decided d = decided("between-two-sizes");
        Contrast& contrast = d.advice.verdict.contrast;
        contrast = {};
        contrast.wheelbaseMm = 14.0;
        contrast.standoverMm = -25.4;
        speak({QLocale::c(), Units::Imperial});
        QString said = contrastSentence(d.advice, d.prepared);
        QVERIFY2(said.contains(QStringLiteral("the wheels 14 mm further apart")), qPrintable(said));
        QVERIFY2(said.contains(QStringLiteral("the top tube 25 mm lower")), qPrintable(said));
        contrast.barHigherMm = 25.4;
        said = contrastSentence(d.advice, d.prepared);
        QVERIFY2(said.contains(QStringLiteral("the bar 1.00 in higher")), qPrintable(said));
        contrast = {};
        said = contrastSentence(d.advice, d.prepared);
        QVERIFY2(said.contains(QStringLiteral("less than 4 mm")), qPrintable(said));
    }

    void shouldSayWhyAHandFurtherOffCanBeTheBetterOne()
    {
        const LedgerEntry near{Consideration::Posture, 18.0, 0.4};
        const LedgerEntry far{Consideration::Posture, 30.0, 0.2};
        QVERIFY(!ledgerRemark(far, near).isEmpty());
        QCOMPARE(ledgerRemark(near, far), QString());
        QCOMPARE(ledgerRemark(near, near), QString());
        const LedgerEntry few{Consideration::Spacers, 5.0, 0.1},
            many{Consideration::Spacers, 40.0, 0.0};
        QCOMPARE(ledgerRemark(many, few), QString());
    }
};

QTEST_APPLESS_MAIN(TestSetupRows)
#include "tst_setup_rows.moc"
