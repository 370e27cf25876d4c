// SPDX-License-Identifier: MIT
//
// The view models of the decision: they hold what decide() returned, follow what is looked at, and
// pass Qt's model tester through every change.
#include "decision/checks_model.h"
#include "decision/decision_model.h"
#include "decision/ledger_model.h"
#include "decision/setup_model.h"
#include "decision/sizes_model.h"
#include "decision/uses_model.h"
#include "random_brief.h"
#include "rich_box.h"
#include "support.h"
#include "wording/advice_text.h"
#include "wording/consideration_words.h"
#include "wording/findings.h"
#include "wording/lack_words.h"
#include "wording/ledger_words.h"
#include "wording/words.h"

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QSignalSpy>
#include <QTest>

#include <cmath>
#include <random>

using namespace tripoise;
using namespace tripoise::test;

namespace {

using Tester = QAbstractItemModelTester;

/// The demo with a third size, between its two.
Fitting threeSizes()
{
    Fitting fitting = demoFitting();
    FrameSize between = fitting.frames[0];
    between.size = "ML";
    between.geometry.stackMm =
        0.5 * (fitting.frames[0].geometry.stackMm + fitting.frames[1].geometry.stackMm);
    between.geometry.reachMm =
        0.5 * (fitting.frames[0].geometry.reachMm + fitting.frames[1].geometry.reachMm);
    between.geometry.wheelbaseMm.reset();
    between.geometry.frontCentreMm.reset();
    between.geometry.topTubeEffectiveMm.reset();
    fitting.frames.insert(fitting.frames.begin() + 1, between);
    return fitting;
}

/// A fitting whose sizes all break a limit.
Fitting nothingSound()
{
    Fitting fitting = demoFitting();
    for (FrameSize& frame : fitting.frames)
        frame.geometry.standoverMm = 1000.0;
    return fitting;
}

/// A size that no stem fits.
Fitting oneBare()
{
    Fitting fitting = demoFitting();
    fitting.frames[1].headset.steererMm = 25.4;
    return fitting;
}

struct Worked {
    Session session;
    [[nodiscard]] bool start(const Fitting& fitting)
    {
        session.start(fitting);
        return settle();
    }
    [[nodiscard]] bool settle()
    {
        return QTest::qWaitFor([this] { return session.settled(); }, 10000);
    }
    [[nodiscard]] const Advice& advice() const { return session.solution().advice; }
    [[nodiscard]] const Prepared& prepared() const { return *session.solution().prepared; }
    [[nodiscard]] const Candidate& shown() const
    {
        return advice().candidates[*session.shownCandidate()];
    }
    [[nodiscard]] const Candidate& beside() const
    {
        return advice().candidates[*session.besideCandidate()];
    }
};

QVariant at(const QAbstractItemModel& model, int row, const char* role)
{
    return model.data(model.index(row, 0), model.roleNames().key(role, -1));
}

int rowOf(const QAbstractItemModel& model, const char* role, const QString& value)
{
    for (int row = 0; row < model.rowCount(); ++row)
        if (at(model, row, role).toString() == value)
            return row;
    return -1;
}

} // namespace

class TestDecisionModels : public QObject {
    Q_OBJECT

    static void demos()
    {
        QTest::addColumn<Fitting>("fitting");
        QTest::newRow("between two sizes") << demoFitting();
        QTest::newRow("one frame") << demoFitting("one-frame-two-bikes");
        QTest::newRow("short rider") << demoFitting("short-rider-large-wheels");
        QTest::newRow("three sizes") << threeSizes();
        QTest::newRow("nothing sound") << nothingSound();
        QTest::newRow("one bare") << oneBare();
    }

private slots:
    void init() { speak({}); }
    void cleanup() { speak({}); }

    void shouldSayTheVerdict_data() { demos(); }
    void shouldSayTheVerdict()
    {
        QFETCH(Fitting, fitting);
        Worked worked;
        DecisionModel model;
        model.setSession(&worked.session);
        QVERIFY(worked.start(fitting));
        QCOMPARE(model.state(), DecisionModel::Decided);
        QCOMPARE(model.sentence(),
                 verdictSentence(worked.advice(), worked.prepared(), fitting.riding));
        QVERIFY(!model.title().isEmpty());
        QCOMPARE(model.reasons().items().size(),
                 reasonSentences(worked.advice(), worked.prepared()).size());
        QCOMPARE(model.givenUp().items().size(),
                 givenUpSentences(worked.advice(), worked.prepared()).size());
        QCOMPARE(model.contrast().items().isEmpty(), !worked.advice().verdict.other);
        QCOMPARE(model.change().items().size(), qsizetype(worked.advice().verdict.tilts.size()));
        QCOMPARE(model.cranks().items().size(), qsizetype(worked.advice().otherCranks.size()));
        QCOMPARE(model.asked().items().size(), 1);
        QCOMPARE(model.toOrder().isEmpty(), !worked.advice().part);
        QCOMPARE(model.rules().items().size(), 1);
        QVERIFY(model.lacks().isEmpty());
        QVERIFY(!model.cautions().isEmpty());
        QVERIFY(model.canCopy());
        QCOMPARE(model.text(),
                 decisionText(fitting, worked.advice(), worked.prepared(), test::tables()));
        model.copy();
        QCOMPARE(QGuiApplication::clipboard()->text(), model.text());
    }

    void shouldTitleEveryKindOfVerdict()
    {
        Worked worked;
        QVERIFY(worked.start(demoFitting()));
        Advice advice = worked.advice();
        const Prepared& prepared = worked.prepared();
        const Riding& riding = worked.session.fitting().riding;
        const auto words = [&] { return verdictWords(advice, prepared, riding); };
        advice.verdict.kind = VerdictKind::Clear;
        QCOMPARE(words().title, QStringLiteral("The M"));
        advice.verdict.kind = VerdictKind::Slight;
        advice.verdict.tilts = {{Consideration::Spacers, 2.0, 1}};
        QCOMPARE(words().title, QStringLiteral("Slightly the M"));
        QVERIFY(words().kind.contains(QStringLiteral("the L")));
        advice.verdict.kind = VerdictKind::Either;
        QCOMPARE(words().title, QStringLiteral("Either will do"));
        QVERIFY(words().detail.contains(QStringLiteral("the L")));
        advice.candidates.resize(1);
        advice.verdict.other.reset();
        QCOMPARE(words().title, QStringLiteral("The M"));
        QCOMPARE(words().kind, QString());
        advice.candidates.front().limits = {
            {FindingCode::NoStandover, Severity::Limit, {-15.0, -10.0}, {}, {}}};
        advice.candidates.front().fit.state = FitState::Barred;
        advice.verdict.named.reset();
        advice.verdict.kind = VerdictKind::None;
        QCOMPARE(words().title, QStringLiteral("Not the M"));
        advice.solved = false;
        QCOMPARE(words().title, QStringLiteral("Nothing fits"));
    }

    void shouldAskForWhatIsLacking()
    {
        Worked worked;
        DecisionModel model;
        model.setSession(&worked.session);
        Fitting fitting = demoFitting();
        auto& measured = fitting.rider.measurements;
        measured.erase(std::remove_if(measured.begin(), measured.end(),
                                      [](const Measurement& each) {
                                          return each.quantity == Quantity::Stature
                                                 || each.quantity == Quantity::Inseam;
                                      }),
                       measured.end());
        QVERIFY(worked.start(fitting));
        QCOMPARE(model.state(), DecisionModel::Lacking);
        QCOMPARE(model.title(), QStringLiteral("Type height."));
        QVERIFY(!model.canCopy());
        QCOMPARE(model.text(), QString());
        QVERIFY(worked.start(Fitting()));
        QCOMPARE(model.lacks(), lackSentences(worked.session.solution().lacks));
        QVERIFY(model.lacks().size() > 2);
        QVERIFY(model.asked().items().isEmpty());
        QVERIFY(worked.start(demoFitting()));
        QCOMPARE(model.state(), DecisionModel::Decided);
    }

    void shouldSayWhichFrameToLookForBeforeThereIsOne()
    {
        Worked worked;
        DecisionModel model;
        model.setSession(&worked.session);
        Fitting fitting = demoFitting();
        fitting.frames.clear();
        QVERIFY(worked.start(fitting));
        QCOMPARE(model.state(), DecisionModel::Lacking);
        const Advice& first = *worked.session.solution().first;
        QCOMPARE(model.asked().items(), ToldSection(firstAnswerSection(first)).items());
        QVERIFY(model.asked().items()[0].contains(plain(first.asked.stackMm.low)));
        QVERIFY(model.asked().items()[1].contains(unbroken(mm(first.target.saddle.heightMm))));
        QCOMPARE(model.asked().items().size(), 2);
        auto& measured = fitting.rider.measurements;
        std::erase_if(measured,
                      [](const Measurement& each) { return each.quantity != Quantity::Stature; });
        QVERIFY(worked.start(fitting)); // by the height alone
        QVERIFY(model.asked().items().last().startsWith(QStringLiteral("Provisional")));
    }

    void shouldWordEveryLack()
    {
        for (int lack = 0; lack <= int(Lack::Agreement); ++lack) {
            const QStringList said = lackSentences({Lack(lack)});
            QCOMPARE(said.size(), 1);
            QVERIFY(!said[0].contains(QLatin1Char('%')));
        }
        QCOMPARE(lackSentences({Lack::Stem, Lack::Bar, Lack::Crank}).size(), 1);
    }

    void shouldSayWhatToThin()
    {
        Worked worked;
        DecisionModel model;
        model.setSession(&worked.session);
        QVERIFY(worked.start(withRichBox({2, 300, 100, 40, 20})));
        QCOMPARE(model.state(), DecisionModel::Lacking);
        QCOMPARE(model.title(),
                 QStringLiteral("Sizes and box make more set-ups than can be "
                                "compared: take out stems or bars that are not meant "
                                "for this rider."));
    }

    void shouldNotCopyWhatIsStale()
    {
        Worked worked;
        DecisionModel model;
        model.setSession(&worked.session);
        QVERIFY(worked.start(demoFitting()));
        QSignalSpy changed(&model, &DecisionModel::canCopyChanged);
        Fitting next = worked.session.fitting();
        next.riding.mix = Mix::only(Use::Touring);
        worked.session.edit(next, QStringLiteral("mix"));
        QVERIFY(!model.canCopy());
        QCOMPARE(model.text(), QString());
        QVERIFY(worked.settle());
        QVERIFY(model.canCopy());
        QVERIFY(!changed.isEmpty());
    }

    void shouldShowEverySizeInTheOrderOfItsTable()
    {
        Worked worked;
        SizesModel model;
        const Tester tester(&model, Tester::FailureReportingMode::QtTest);
        model.setSession(&worked.session);
        QVERIFY(worked.start(threeSizes()));
        QCOMPARE(model.rowCount({}), 3);
        QCOMPARE(at(model, 0, "name").toString(), QStringLiteral("M"));
        QCOMPARE(at(model, 1, "name").toString(), QStringLiteral("ML"));
        QCOMPARE(at(model, 2, "name").toString(), QStringLiteral("L"));
        for (const Candidate& candidate : worked.advice().candidates) {
            const int row = int(candidate.size);
            QCOMPARE(at(model, row, "rank").toInt(), candidate.rank);
            QCOMPARE(at(model, row, "broken").toBool(), !candidate.limits.empty());
            QCOMPARE(at(model, row, "shown").toBool(), &candidate == &worked.shown());
            QCOMPARE(at(model, row, "beside").toBool(), &candidate == &worked.beside());
        }
        QVERIFY(worked.start(nothingSound()));
        for (int row = 0; row < model.rowCount({}); ++row) {
            QVERIFY(at(model, row, "broken").toBool());
            QVERIFY(at(model, row, "spoken").toString().contains(QStringLiteral("limit")));
        }
    }

    void shouldLookAtAnyTwoSizes()
    {
        Worked worked;
        SizesModel model;
        model.setSession(&worked.session);
        QVERIFY(worked.start(threeSizes()));
        const Session& session = worked.session;
        for (int shown = 0; shown < 3; ++shown) {
            for (int beside = 0; beside < 3; ++beside) {
                if (beside == shown)
                    continue;
                model.show(shown);
                model.putBeside(beside);
                QCOMPARE(session.shownFrame(), shown);
                QCOMPARE(session.besideFrame(), beside);
                QVERIFY(at(model, shown, "shown").toBool());
                QVERIFY(at(model, beside, "beside").toBool());
            }
        }
        // Choosing one for the other's place makes them change places.
        model.show(0);
        model.putBeside(2);
        model.show(2);
        QCOMPARE(session.shownFrame(), 2);
        QCOMPARE(session.besideFrame(), 0);
        model.putBeside(2);
        QCOMPARE(session.shownFrame(), 0);
        QCOMPARE(session.besideFrame(), 2);
        model.show(7);
        model.show(-1);
        QCOMPARE(session.shownFrame(), 0);
        // One after the other, and never the one that is drawn.
        model.putNextBeside();
        QCOMPARE(session.besideFrame(), 1);
        model.putNextBeside();
        QCOMPARE(session.besideFrame(), 2);
        QCOMPARE(session.shownFrame(), 0);
    }

    // What shows it is made anew once, also where it names another size.
    void shouldTellEachAnswerOnce()
    {
        Worked worked;
        Session& session = worked.session;
        QVERIFY(worked.start(demoFitting()));
        QStringList told;
        connect(&session, &Session::answerArrived, this,
                [&] { told << QStringLiteral("arrived"); });
        connect(&session, &Session::answerChanged, this,
                [&] { told << QStringLiteral("changed"); });
        QSignalSpy looks(&session, &Session::lookChanged);
        const QStringList once{QStringLiteral("arrived"), QStringLiteral("changed")};
        const int before = session.shownFrame();
        Fitting next = session.fitting();
        next.frames[std::size_t(before)].geometry.standoverMm = 1000.0; // breaks a limit
        session.edit(next, QStringLiteral("standover"));
        QVERIFY(worked.settle());
        QVERIFY(session.shownFrame() != before);
        QCOMPARE(looks.count(), 1);
        QCOMPARE(std::exchange(told, {}), once);
        session.look(before, -1);
        QCOMPARE(std::exchange(told, {}), once);
        session.look(before, -1);
        QVERIFY(told.isEmpty());
        emit session.speechChanged();
        QCOMPARE(told, once);
    }

    // What is looked at is known by name, wherever an edit puts it.
    void shouldFollowASizeThatAnEditMoves()
    {
        Worked worked;
        Session& session = worked.session;
        QVERIFY(worked.start(demoFitting()));
        const auto shown = [&] {
            return worked.prepared().sizes[std::size_t(session.shownFrame())].frame.size;
        };
        const int advised = session.shownFrame();
        session.look(1 - advised, -1);
        const std::string asked = shown();
        Fitting swapped = session.fitting();
        std::swap(swapped.frames[0], swapped.frames[1]);
        session.edit(swapped, QStringLiteral("the other way round"));
        QVERIFY(worked.settle());
        QCOMPARE(shown(), asked);
        session.edit(threeSizes(), QStringLiteral("a size"));
        QVERIFY(worked.settle());
        QCOMPARE(shown(), asked);
    }

    // Of a size that is gone the advice is followed, until it is back.
    void shouldLookAtTheAdviceWhereASizeIsGone()
    {
        Worked worked;
        Session& session = worked.session;
        QVERIFY(worked.start(demoFitting()));
        const int asked = 1 - session.shownFrame();
        session.look(asked, session.shownFrame());
        QSignalSpy looks(&session, &Session::lookChanged);
        Fitting fewer = session.fitting();
        fewer.frames.erase(fewer.frames.begin() + asked);
        session.edit(fewer, QStringLiteral("a size less"));
        QVERIFY(worked.settle());
        QCOMPARE(session.askedShown(), -1);
        QVERIFY(!looks.isEmpty());
        QCOMPARE(session.shownFrame(), int(worked.advice().leading().size));
        session.undo();
        QVERIFY(worked.settle());
        QCOMPARE(session.shownFrame(), asked);
    }

    // What was not asked for follows the advice, whatever else was.
    void shouldPinNothingUnasked()
    {
        Worked worked;
        SizesModel model;
        model.setSession(&worked.session);
        QVERIFY(worked.start(threeSizes()));
        const Session& session = worked.session;
        const auto [advised, other, third] = [&] {
            const Advice& advice = worked.advice();
            const int first = int(advice.leading().size);
            const int second = int(advice.candidates[*advice.verdict.other].size);
            return std::tuple(first, second, 3 - first - second);
        }();
        model.show(other); // beside which the advised one stands
        QCOMPARE(session.besideFrame(), advised);
        QCOMPARE(session.askedBeside(), -1);
        model.show(third);
        QCOMPARE(session.besideFrame(), advised);
        model.show(advised);
        QCOMPARE(session.askedShown(), -1);
        QCOMPARE(session.askedBeside(), -1);
        QCOMPARE(session.besideFrame(), other);
        model.putBeside(third);
        QCOMPARE(session.askedShown(), -1);
        QCOMPARE(session.askedBeside(), third);
        model.show(other);
        QCOMPARE(session.besideFrame(), third); // as asked
        model.show(third);
        QCOMPARE(session.besideFrame(), other);
    }

    void shouldTellTheLedgerAsDecided_data() { demos(); }
    void shouldTellTheLedgerAsDecided()
    {
        QFETCH(Fitting, fitting);
        Worked worked;
        LedgerModel model;
        const Tester tester(&model, Tester::FailureReportingMode::QtTest);
        model.setSession(&worked.session);
        QVERIFY(worked.start(fitting));
        QCOMPARE(model.rowCount({}), int(considerationCount));
        const Candidate& shown = worked.shown();
        const bool paired = worked.advice().candidates.size() > 1 && worked.beside().best;

        // Derived: with two sizes the difference of their points; with one its own, less what no
        // grip avoids; over the largest of them all, 0.05 at least.
        const auto decides = [&](std::size_t i) {
            const double points = shown.best->ledger[i].points;
            return paired   ? worked.beside().best->ledger[i].points - points
                   : i == 0 ? std::max(0.0, points - shown.best->leastPosturePoints)
                            : points;
        };
        double largest = tables().weights.eitherBelow;
        for (std::size_t i = 0; i < considerationCount; ++i)
            largest = std::max(largest, std::abs(decides(i)));
        QCOMPARE(model.shownTitle().isEmpty(), !paired);
        QCOMPARE(model.besideTitle().isEmpty(), !paired);
        int quiet = 0;
        for (int row = 0; row < model.rowCount({}); ++row) {
            const std::size_t i = std::size_t(row);
            const LedgerEntry& entry = shown.best->ledger[i];
            const PreparedSize& size = worked.prepared().sizes[shown.size];
            QCOMPARE(at(model, row, "name").toString(), ledgerName(entry.consideration));
            QCOMPARE(at(model, row, "shownValue").toString(), unbroken(ledgerValue(entry, size)));
            const auto bar = [&](const char* role) {
                return at(model, row, role).toDouble() * largest;
            };
            const auto near = [](double one, double other) { return std::abs(one - other) < 1e-9; };
            const double decided = decides(i);
            const bool told = std::abs(decided) >= 0.01;
            const QString better = at(model, row, "better").toString();
            if (paired) {
                QVERIFY(near(bar("forShown"), told ? std::max(0.0, decided) : 0.0));
                QVERIFY(near(bar("forBeside"), told ? std::max(0.0, -decided) : 0.0));
                QCOMPARE(bar("against"), 0.0);
                QCOMPARE(better, !told           ? QStringLiteral("even")
                                 : decided > 0.0 ? QStringLiteral("shown")
                                                 : QStringLiteral("beside"));
            } else {
                QVERIFY(near(bar("against"), decided));
                QCOMPARE(bar("forShown") + bar("forBeside"), 0.0);
                QCOMPARE(better, QStringLiteral("even"));
                QCOMPARE(at(model, row, "besideValue").toString(), QString());
            }
            QCOMPARE(at(model, row, "quiet").toBool(), !told);
            QCOMPARE(at(model, row, "factor").toDouble(), 1.0);
            QVERIFY(!at(model, row, "about").toString().isEmpty());
            QVERIFY(at(model, row, "aboutWeighing")
                        .toString()
                        .startsWith(at(model, row, "about").toString()));
            QVERIFY(!at(model, row, "spoken").toString().contains(QStringLiteral("point")));
            quiet += at(model, row, "quiet").toBool() ? 1 : 0;
        }
        QCOMPARE(model.quietCount(), quiet);
        QVERIFY(!model.weightsChanged());
        QCOMPARE(model.weightsNote(), QString());
    }

    // A tick and a bar beside the worse looking value would mislead: where one alone tells which is
    // better, they agree; where it does not, a remark says why.
    void shouldAgreeWithTheValuesBesideIt()
    {
        RandomBriefs briefs(7);
        Worked worked;
        LedgerModel model;
        model.setSession(&worked.session);
        int compared = 0, remarked = 0;
        for (int step = 0; step < 40; ++step) {
            const Fitting fitting = test::fittingOf(briefs.next());
            QVERIFY(worked.start(fitting));
            if (!worked.advice().solved || model.besideTitle().isEmpty())
                continue;
            for (int row = 0; row < model.rowCount({}); ++row) {
                const QString better = at(model, row, "better").toString();
                if (better == QLatin1String("even"))
                    continue;
                const auto& one = worked.shown().best->ledger[std::size_t(row)];
                const auto& other = worked.beside().best->ledger[std::size_t(row)];
                const bool shown = better == QLatin1String("shown");
                const double gain = (shown ? other.value : one.value)
                                    - (shown ? one.value : other.value); // how much less it is
                const QString remark = at(model, row, "remark").toString();
                remarked += remark.isEmpty() ? 0 : 1;
                ++compared;
                switch (one.consideration) {
                case Consideration::Posture:
                    QCOMPARE(remark.isEmpty(), gain > -0.5);
                    QVERIFY(remark.isEmpty()
                            || at(model, row, "spoken").toString().contains(remark));
                    break;
                case Consideration::Setback:
                    QVERIFY(std::abs(shown ? one.value : other.value)
                            < std::abs(shown ? other.value : one.value));
                    break;
                case Consideration::Compactness: QVERIFY(gain > 0.0); break;
                case Consideration::Standover:
                case Consideration::Adjustment: QVERIFY(gain < 0.0); break;
                default: QVERIFY(remark.isEmpty()); // a length that may be too much or too little
                }
            }
        }
        QVERIFY(compared > 50);
        QVERIFY(remarked > 0);
    }

    void shouldLetWeightsBeMovedAndReset()
    {
        Worked worked;
        LedgerModel model;
        const Tester tester(&model, Tester::FailureReportingMode::QtTest);
        model.setSession(&worked.session);
        QVERIFY(worked.start(demoFitting()));
        const int row = int(indexOf(Consideration::Agility));
        const double before = worked.shown().best->ledger[std::size_t(row)].points;
        const auto factor = [&] {
            return worked.session.fitting().choices.weightFactor[indexOf(Consideration::Agility)];
        };
        QCOMPARE(model.weightSteps().size(), 5);
        model.setWeight(row, 2.0);
        QCOMPARE(factor(), 2.0);
        QVERIFY(worked.settle());
        QCOMPARE(worked.shown().size, std::size_t(0)); // so that the next line compares the same
        QVERIFY(std::abs(worked.shown().best->ledger[std::size_t(row)].points - 2.0 * before)
                < 1e-9);
        QVERIFY(model.weightsChanged());
        QCOMPARE(at(model, row, "factor").toDouble(), 2.0);
        QVERIFY(model.weightsNote().contains(QStringLiteral("counts twice")));
        QVERIFY(!at(model, row, "quiet").toBool());

        model.heavier(row);
        QCOMPARE(factor(), 4.0);
        model.heavier(row); // the last
        QCOMPARE(factor(), 4.0);
        for (const double next : {2.0, 1.0, 0.5, 0.0, 0.0}) {
            model.lighter(row);
            QCOMPARE(factor(), next);
        }
        QVERIFY(worked.settle());
        QCOMPARE(at(model, row, "forShown").toDouble(), 0.0);
        QCOMPARE(at(model, row, "forBeside").toDouble(), 0.0);
        QVERIFY(!at(model, row, "quiet").toBool()); // still there to be moved back

        model.setWeight(row, 100.0);
        QCOMPARE(factor(), weightFactorRange.high);
        model.setWeight(99, 2.0);
        model.setWeight(-1, 2.0);
        model.resetWeights();
        QCOMPARE(worked.session.fitting().choices.weightFactor, Choices::ordinary());
        QVERIFY(worked.settle());
        QVERIFY(!model.weightsChanged());
        worked.session.undo(); // the reset
        QCOMPARE(factor(), weightFactorRange.high);
        worked.session.undo(); // all moves of one weight are a step
        QCOMPARE(factor(), 1.0);
        QVERIFY(!worked.session.canUndo());
    }

    void shouldSetTwoSizesSideBySide_data() { demos(); }
    void shouldSetTwoSizesSideBySide()
    {
        QFETCH(Fitting, fitting);
        Worked worked;
        SetupModel model;
        const Tester tester(&model, Tester::FailureReportingMode::QtTest);
        model.setSession(&worked.session);
        QVERIFY(worked.start(fitting));
        const bool paired = worked.advice().candidates.size() > 1;
        QCOMPARE(model.secondTitle().isEmpty(), !paired);
        QCOMPARE(model.rowCount({}), int(11 + worked.shown().best->uses.size()));
        const int height = rowOf(model, "label", QStringLiteral("saddle height, BB to top"));
        QVERIFY(height >= 0);
        QCOMPARE(at(model, height, "first").toString(),
                 unbroken(mm(worked.shown().best->setup.saddle.heightMm)));
        for (int row = 0; row < model.rowCount({}); ++row) {
            const QString first = at(model, row, "first").toString();
            const QString second = at(model, row, "second").toString();
            QCOMPARE(at(model, row, "differs").toBool(), paired && first != second);
            QVERIFY(!at(model, row, "meaning").toString().isEmpty());
            QVERIFY(
                at(model, row, "spoken").toString().contains(at(model, row, "label").toString()));
        }
        if (paired && worked.beside().best)
            QCOMPARE(at(model, height, "second").toString(),
                     unbroken(mm(worked.beside().best->setup.saddle.heightMm)));
        if (paired && !worked.beside().best)
            QCOMPARE(at(model, height, "second").toString(), QStringLiteral("–"));
    }

    void shouldFollowWhatIsLookedAt()
    {
        Worked worked;
        SetupModel setup;
        LedgerModel ledger;
        DecisionModel decision;
        for (RowsModel* model : std::initializer_list<RowsModel*>{&setup, &ledger})
            model->setSession(&worked.session);
        decision.setSession(&worked.session);
        QVERIFY(worked.start(demoFitting()));
        const QString verdict = decision.sentence();
        const QStringList today = decision.today().items();
        worked.session.look(1, 0);
        QCOMPARE(setup.firstTitle(), QStringLiteral("L"));
        QCOMPARE(setup.secondTitle(), QStringLiteral("M"));
        const LedgerEntry& wheelbase = worked.shown().best->ledger[indexOf(Consideration::Agility)];
        QCOMPARE(at(ledger, int(indexOf(Consideration::Agility)), "shownValue").toString(),
                 unbroken(ledgerValue(wheelbase, worked.prepared().sizes[worked.shown().size])));
        QCOMPARE(decision.sentence(), verdict); // what is looked at does not change what is advised
        QVERIFY(decision.today().items() != today);
    }

    void shouldSayAllAnewInOtherUnits()
    {
        Worked worked;
        SetupModel model;
        model.setSession(&worked.session);
        QVERIFY(worked.start(demoFitting()));
        QVERIFY(at(model, 0, "first").toString().endsWith(QStringLiteral("mm")));
        speak({QLocale::c(), Units::Imperial});
        emit worked.session.speechChanged();
        QVERIFY(at(model, 0, "first").toString().endsWith(QStringLiteral("in")));
    }

    void shouldSetOneSizeUpForTwoUses()
    {
        Worked worked;
        UsesModel model;
        const Tester tester(&model, Tester::FailureReportingMode::QtTest);
        model.setSession(&worked.session);
        Fitting fitting = demoFitting();
        fitting.riding.mix = {};
        fitting.riding.mix.share[indexOf(Use::Commuting)] = 0.2;
        fitting.riding.mix.share[indexOf(Use::Touring)] = 0.5;
        fitting.riding.mix.share[indexOf(Use::Road)] = 0.3;
        QVERIFY(worked.start(fitting));
        QCOMPARE(model.uses(),
                 QStringList({nameOf(Use::Touring), nameOf(Use::Road), nameOf(Use::Commuting)}));
        QCOMPARE(model.firstUse(), 0);
        QCOMPARE(model.secondUse(), 1);
        const auto setupFor = [&](Use use) -> const Setup& {
            for (const UseSetup& each : worked.shown().byUse)
                if (each.use == use)
                    return each.advised.setup;
            throw std::runtime_error("no such use");
        };
        const auto check = [&](Use first, Use second) {
            const int row = rowOf(model, "label", QStringLiteral("grip from BB, ahead and up"));
            const auto said = [](const Setup& setup) {
                return unbroken(
                    QStringLiteral("%1, %2").arg(mm(setup.grip.x()), mm(setup.grip.y())));
            };
            QCOMPARE(at(model, row, "first").toString(), said(setupFor(first)));
            QCOMPARE(at(model, row, "second").toString(), said(setupFor(second)));
            const double up = setupFor(second).grip.y() - setupFor(first).grip.y();
            const double ahead = setupFor(second).grip.x() - setupFor(first).grip.x();
            if (std::abs(up) >= 0.5 || std::abs(ahead) >= 0.5)
                QVERIFY2(model.hand().contains(unbroken(mm(std::abs(up))))
                             || model.hand().contains(unbroken(mm(std::abs(ahead)))),
                         qPrintable(model.hand()));
        };
        check(Use::Touring, Use::Road);
        model.chooseSecond(2);
        check(Use::Touring, Use::Commuting);
        model.chooseFirst(2); // they change places
        QCOMPARE(model.firstUse(), 2);
        QCOMPARE(model.secondUse(), 0);
        check(Use::Commuting, Use::Touring);
        model.chooseFirst(9);
        model.chooseSecond(-1);
        QCOMPARE(model.firstUse(), 2);

        fitting.riding.mix = Mix::only(Use::City);
        QVERIFY(worked.start(fitting));
        QCOMPARE(model.rowCount({}), 0);
        QCOMPARE(model.secondUse(), -1);
        QVERIFY(!model.hand().isEmpty());
    }

    void shouldTellFindingsByTheirLevel_data() { demos(); }
    void shouldTellFindingsByTheirLevel()
    {
        QFETCH(Fitting, fitting);
        Worked worked;
        ChecksModel model;
        const Tester tester(&model, Tester::FailureReportingMode::QtTest);
        model.setSession(&worked.session);
        QVERIFY(worked.start(fitting));
        int limits = 0;
        for (const Candidate& candidate : worked.advice().candidates)
            for (const Finding& finding : candidate.limits) {
                ++limits;
                const int row = rowOf(model, "told", unbroken(sentence(finding)));
                QVERIFY(row >= 0);
                QCOMPARE(at(model, row, "level").toString(), QStringLiteral("limit"));
            }
        QCOMPARE(model.limitCount(), limits);
        for (const Finding& finding : worked.shown().findings)
            QVERIFY(rowOf(model, "told", unbroken(sentence(finding))) >= 0);
        QVERIFY(limits == 0 || !at(model, 0, "heading").toString().isEmpty());
    }

    // Whatever is edited, in whatever order: never a warning of the tester, never a stale row.
    void shouldLiveThroughAnyEdits()
    {
        Worked worked;
        SizesModel sizes;
        LedgerModel ledger;
        SetupModel setup;
        UsesModel uses;
        ChecksModel checks;
        DecisionModel decision;
        std::vector<std::unique_ptr<Tester>> testers;
        for (RowsModel* model :
             std::initializer_list<RowsModel*>{&sizes, &ledger, &setup, &uses, &checks}) {
            testers.push_back(
                std::make_unique<Tester>(model, Tester::FailureReportingMode::QtTest));
            model->setSession(&worked.session);
        }
        decision.setSession(&worked.session);
        std::mt19937 random(20240607);
        const std::vector<Fitting> fittings{demoFitting(), demoFitting("one-frame-two-bikes"),
                                            threeSizes(),  nothingSound(),
                                            oneBare(),     Fitting()};
        for (int step = 0; step < 60; ++step) {
            Fitting next = fittings[random() % fittings.size()];
            if (random() % 3 == 0 && !next.rider.measurements.empty())
                next.rider.measurements.pop_back();
            if (random() % 3 == 0)
                next.riding.mix = Mix::only(allUses[random() % allUses.size()]);
            worked.session.edit(next, QStringLiteral("step"));
            if (random() % 4)
                QVERIFY(worked.settle());
            sizes.show(int(random() % 4));
            sizes.putBeside(int(random() % 4));
            uses.chooseSecond(int(random() % 3));
        }
        QVERIFY(worked.settle());
        QCOMPARE(sizes.rowCount({}), int(worked.advice().candidates.size()));
    }
};

QTEST_MAIN(TestDecisionModels)
#include "tst_decision_models.moc"
