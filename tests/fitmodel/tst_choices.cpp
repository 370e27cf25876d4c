// SPDX-License-Identifier: MIT
//
// What the builder chose: weights moved, a set-up pulled about; read, refused, written, and heeded.
#include "support.h"

#include "advice/advise.h"
#include "document/builders_choice.h"
#include "document/frame_list.h"
#include "document/lacks.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace tripoise;

namespace {

std::string with(const std::string& choices)
{
    std::string text = test::textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/between-two-sizes.json"));
    text.erase(text.find_last_of('}'));
    return text + R"(,"choices":)" + choices + "}";
}

std::variant<Fitting, Problems> read(const std::string& choices)
{
    return readFitting(with(choices), test::tables());
}

} // namespace

class TestChoices : public QObject {
    Q_OBJECT

private slots:
    void shouldReadSizesThatAreStillBeingTyped()
    {
        const auto result = read(R"({"unfinished_frames":[{"model":"Millrace","geometry":
            {"stack_mm":640}},{"size":"XS"}]})");
        const auto* fitting = std::get_if<Fitting>(&result);
        QVERIFY(fitting);
        const auto& unfinished = fitting->choices.unfinished;
        QCOMPARE(unfinished.size(), 2u);
        QCOMPARE(unfinished[0].geometry.stackMm, 640.0);
        QCOMPARE(unfinished[1].size, std::string("XS"));
        QVERIFY(lacks(*fitting, test::tables()).empty());
        const auto again = readFitting(writeFitting(*fitting), test::tables());
        QVERIFY(std::get<Fitting>(again) == *fitting);
    }

    void shouldRefuseWhatNoSizeBeingTypedCouldHold()
    {
        const auto result = read(R"({"unfinished_frames":[{"geometry":{"stack_mm":64}}]})");
        const auto* problems = std::get_if<Problems>(&result);
        QVERIFY(problems);
        QCOMPARE(problems->front().path,
                 std::string("/choices/unfinished_frames/0/geometry/stack_mm"));
        // but what a whole document lacks elsewhere is still missed
        QVERIFY(std::holds_alternative<Problems>(read(R"({"unfinished_frames":[{}],"trial":{}})")));
    }

    void shouldReadWhatItWrote()
    {
        const auto result = read(R"({"weights":{"spacers":2,"posture":0.5,"remark":"soft back"},
            "trial":{"model":"Millrace","size":"L","saddle_height_mm":750,"saddle_setback_mm":200,
                     "grip_reach_mm":470,"grip_height_mm":690,"by":"hand"},"other":[1],
            "toe_overlap_told":true})");
        const auto* fitting = std::get_if<Fitting>(&result);
        QVERIFY(fitting);
        QCOMPARE(fitting->choices.weightFactor[indexOf(Consideration::Spacers)], 2.0);
        QCOMPARE(fitting->choices.weightFactor[indexOf(Consideration::Posture)], 0.5);
        QCOMPARE(fitting->choices.weightFactor[indexOf(Consideration::Crank)], 1.0);
        QVERIFY(fitting->choices.toeTold);
        const Trial expected{"Millrace", "L", 750, 200, 470, 690};
        QVERIFY(fitting->choices.trial == expected);
        const auto again = readFitting(writeFitting(*fitting), test::tables());
        QVERIFY(std::get_if<Fitting>(&again));
        QVERIFY(std::get<Fitting>(again) == *fitting);
        QVERIFY(writeFitting(*fitting).find("soft back") != std::string::npos);
    }

    void shouldReadTheBuildersWord()
    {
        const auto result = read(R"({"size":{"model":"Millrace","size":"L","by":"J"},
            "reason":"wants “room”","setup":{"model":"Millrace","size":"L","saddle_height_mm":750,
            "saddle_setback_mm":200,"grip_reach_mm":470,"grip_height_mm":690,"by":"hand"}})");
        const auto* fitting = std::get_if<Fitting>(&result);
        QVERIFY(fitting);
        QVERIFY(fitting->choices.size == (ChosenSize{"Millrace", "L"}));
        QCOMPARE(fitting->choices.reason, std::string("wants “room”"));
        QVERIFY(fitting->choices.trial && fitting->choices.trial->chosen);
        QCOMPARE(fitting->choices.trial->gripReachMm, 470.0);
        const std::string written = writeFitting(*fitting);
        QVERIFY(written.find("\"trial\"") == std::string::npos);
        const auto again = readFitting(written, test::tables());
        QVERIFY(std::get<Fitting>(again) == *fitting);
        // Taken back, it leaves nothing behind.
        Fitting open = *fitting;
        open.choices = {};
        QVERIFY(writeFitting(open).find("\"by\"") == std::string::npos);
    }

    void shouldHaveNoPartInTheDecision()
    {
        const Fitting fitting = std::get<Fitting>(
            read(R"({"size":{"model":"Millrace","size":"XXL"},"reason":"asked for"})"));
        QVERIFY(lacks(fitting, test::tables()).empty());
        QVERIFY(fitting.choices.size == (ChosenSize{"Millrace", "XXL"})); // gone, and not lost
        Fitting most = fitting;
        most.choices.reason.assign(longestName, 'x');
        QVERIFY(std::holds_alternative<Fitting>(readFitting(writeFitting(most), test::tables())));
        most.choices.reason += 'x';
        QVERIFY(std::holds_alternative<Problems>(readFitting(writeFitting(most), test::tables())));
    }

    void shouldFollowTheSizeThatWasChosen()
    {
        Fitting fitting = test::demoFitting();
        const FrameSize last = fitting.frames.back();
        const std::size_t at = fitting.frames.size() - 1;
        chooseSize(fitting.choices, ChosenSize{last.model, last.size});
        fitting.choices.reason = "why";
        const Fitting renamed = withFrameNamed(fitting, at, "Millrace", "58");
        QVERIFY(renamed.choices.size == (ChosenSize{"Millrace", "58"}));
        QVERIFY(withFrameNamed(fitting, 0, "A", "B").choices == fitting.choices);
        QVERIFY(withoutFrame(fitting, at).choices == fitting.choices);
        // So does a set-up that was chosen, and one that was not goes with its size.
        fitting.choices.trial = Trial{last.model, last.size, 750, 200, 470, 690};
        QVERIFY(!withoutFrame(fitting, at).choices.trial);
        chooseSetup(fitting.choices, true);
        const Fitting gone = withoutFrame(fitting, at);
        QVERIFY(gone.choices == fitting.choices);
        QVERIFY(std::holds_alternative<Fitting>(readFitting(writeFitting(gone), test::tables())));
    }

    void shouldKeepWordsThatGoTogether()
    {
        const Trial trial{"Millrace", "L", 750, 200, 470, 690};
        Choices choices;
        chooseSetup(choices, true); // there is none
        QVERIFY(choices == Choices());
        pull(choices, trial);
        QVERIFY(!ownSetup(choices));
        chooseSetup(choices, true);
        QVERIFY(ownSetup(choices));
        QVERIFY(choices.size == (ChosenSize{"Millrace", "L"}));
        choices.reason = "why";
        Trial further = trial;
        further.gripReachMm += 1.0;
        pull(choices, further); // pulled on, it stays chosen
        QVERIFY(ownSetup(choices));
        QCOMPARE(choices.trial->gripReachMm, 471.0);
        chooseSize(choices, ChosenSize{"Millrace", "M"}); // it is of another size
        QVERIFY(choices.trial && !ownSetup(choices));
        QCOMPARE(choices.reason, std::string("why"));
        chooseSize(choices, {});
        QCOMPARE(choices.reason, std::string());
        chooseSetup(choices, true);
        pull(choices, {}); // the size stays chosen
        QVERIFY(!choices.trial && choices.size);
        pull(choices, trial);
        chooseSetup(choices, true);
        further.size = "M";
        pull(choices, further); // on another size it is only tried
        QVERIFY(!ownSetup(choices) && choices.size == (ChosenSize{"Millrace", "L"}));
    }

    // What a size costs is what is said for the named one: of the second, the verdict's reasons; of
    // each, nothing but what the named one is better in.
    void shouldHoldTheChoiceAgainstTheAdvice()
    {
        Fitting fitting = test::demoFitting();
        FrameSize third = fitting.frames.back();
        third.size = "XL";
        third.geometry.stackMm += 30.0;
        third.geometry.reachMm += 12.0;
        third.geometry.wheelbaseMm.reset();
        third.geometry.frontCentreMm.reset();
        third.geometry.topTubeEffectiveMm.reset();
        fitting.frames.push_back(third);
        const Tables& tables = test::tables();
        const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables);
        const Advice advice =
            advise(fitting.rider, fitting.riding, fitting.current, prepared, tables);
        QVERIFY(advice.verdict.named && advice.verdict.other && advice.candidates.size() == 3);
        const auto same = [](const Reason& a, const Reason& b) {
            return a.consideration == b.consideration && a.gain == b.gain && a.named == b.named
                   && a.other == b.other;
        };
        QVERIFY(std::ranges::equal(advice.candidates[*advice.verdict.other].costs,
                                   advice.verdict.reasons, same));
        QVERIFY(advice.leading().costs.empty());
        const auto choiceOn = [&](const Choices& choices) {
            return buildersChoice(choices, fitting.riding, advice, prepared, tables);
        };
        QVERIFY(!choiceOn({}));
        for (std::size_t i = 0; i < advice.candidates.size(); ++i) {
            const Candidate& one = advice.candidates[i];
            for (const Reason& cost : one.costs) {
                const std::size_t at = indexOf(cost.consideration);
                QVERIFY(cost.gain > 0.0);
                QCOMPARE(cost.gain,
                         one.best->ledger[at].points - advice.leading().best->ledger[at].points);
            }
            Choices choices;
            const FrameSize& frame = prepared.sizes[one.size].frame;
            chooseSize(choices, ChosenSize{frame.model, frame.size});
            QVERIFY(choiceOn(choices)->candidate == i);
            QVERIFY(!choiceOn(choices)->setup);
            const Setup& setup = one.best->setup;
            pull(choices, Trial{frame.model, frame.size, setup.saddle.heightMm,
                                setup.saddle.setbackMm(), setup.grip.x() + 7.0, setup.grip.y()});
            QVERIFY(!choiceOn(choices)->setup); // only tried
            chooseSetup(choices, true);
            QVERIFY(choiceOn(choices)->setup);
            QVERIFY(std::abs(choiceOn(choices)->setup->setup.grip.x() - setup.grip.x() - 7.0)
                    < 1e-9);
        }
        QVERIFY(!advice.candidates[2].costs.empty());
        Choices gone;
        chooseSize(gone, ChosenSize{"Millrace", "XXS"});
        QVERIFY(choiceOn(gone) && !choiceOn(gone)->candidate);
        QVERIFY(!chosenCandidate(gone, advice, prepared));
    }

    void shouldSayWhatIsWrong_data()
    {
        QTest::addColumn<QByteArray>("choices");
        QTest::addColumn<int>("code");
        QTest::addColumn<QByteArray>("path");
        const auto row = [](const char* name, const char* text, ProblemCode code,
                            const char* path) {
            QTest::newRow(name) << QByteArray(text) << int(code) << QByteArray(path);
        };
        row("misspelt", R"({"weights":{"spacer":2}})", ProblemCode::UnknownKey,
            "/choices/weights/spacer");
        row("negative", R"({"weights":{"spacers":-1}})", ProblemCode::OutOfRange,
            "/choices/weights/spacers");
        row("too heavy", R"({"weights":{"spacers":8.5}})", ProblemCode::OutOfRange,
            "/choices/weights/spacers");
        row("text", R"({"weights":{"spacers":"2"}})", ProblemCode::WrongType,
            "/choices/weights/spacers");
        row("no such size",
            R"({"trial":{"model":"Millrace","size":"XXL","saddle_height_mm":750,
            "saddle_setback_mm":200,"grip_reach_mm":470,"grip_height_mm":690}})",
            ProblemCode::NotOneOf, "/choices/trial");
        row("no saddle height",
            R"({"trial":{"model":"Millrace","size":"L",
            "saddle_setback_mm":200,"grip_reach_mm":470,"grip_height_mm":690}})",
            ProblemCode::Missing, "/choices/trial/saddle_height_mm");
        row("size without its name", R"({"size":{"model":"Millrace"}})", ProblemCode::Missing,
            "/choices/size/size");
        row("size as a word", R"({"size":"L"})", ProblemCode::WrongType, "/choices/size");
        row("reason that is no text", R"({"reason":1})", ProblemCode::WrongType, "/choices/reason");
        row("set-up of another size",
            R"({"size":{"model":"Millrace","size":"M"},"setup":{"model":"Millrace","size":"L",
            "saddle_height_mm":750,"saddle_setback_mm":200,"grip_reach_mm":470,
            "grip_height_mm":690}})",
            ProblemCode::NotOneOf, "/choices/setup");
        row("set-up out of range", R"({"setup":{"model":"Millrace","size":"L",
            "saddle_height_mm":399,"saddle_setback_mm":200,"grip_reach_mm":470,
            "grip_height_mm":690}})",
            ProblemCode::OutOfRange, "/choices/setup/saddle_height_mm");
        row("tried and chosen at once", R"({"setup":{"model":"Millrace","size":"L",
            "saddle_height_mm":750,"saddle_setback_mm":200,"grip_reach_mm":470,
            "grip_height_mm":690},"trial":{"model":"Millrace","size":"L",
            "saddle_height_mm":750,"saddle_setback_mm":200,"grip_reach_mm":470,
            "grip_height_mm":690}})",
            ProblemCode::Duplicate, "/choices/trial");
    }
    void shouldSayWhatIsWrong()
    {
        QFETCH(QByteArray, choices);
        QFETCH(int, code);
        QFETCH(QByteArray, path);
        const auto result = read(choices.toStdString());
        const auto* problems = std::get_if<Problems>(&result);
        QVERIFY(problems);
        QCOMPARE(problems->size(), 1UL);
        QCOMPARE(int(problems->front().code), code);
        QCOMPARE(QByteArray::fromStdString(problems->front().path), path);
    }

    void shouldWeighAsChosen()
    {
        const Fitting fitting = std::get<Fitting>(read(R"({"weights":{"spacers":0}})"));
        const Tables tables = weighted(test::tables(), fitting.choices);
        const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables);
        const Advice advice =
            advise(fitting.rider, fitting.riding, fitting.current, prepared, tables);
        QVERIFY(advice.solved);
        for (const LedgerEntry& entry : advice.candidates.front().best->ledger)
            if (entry.consideration == Consideration::Spacers)
                QCOMPARE(entry.points, 0.0);
    }

    void shouldSayWhatWouldBeAccepted()
    {
        const auto result = read(R"({"weights":{"stemlength":2,"posture":9}})");
        const auto* problems = std::get_if<Problems>(&result);
        QVERIFY(problems);
        QCOMPARE(problems->size(), 2UL);
        const Problem& heavy = problems->at(0);
        QCOMPARE(heavy.value, std::string("9"));
        QCOMPARE(heavy.low, 0.0);
        QCOMPARE(heavy.high, 8.0);
        const Problem& misspelt = problems->at(1);
        QCOMPARE(misspelt.value, std::string("2"));
        QCOMPARE(misspelt.names.at(0), std::string("stem_length"));
    }

    void shouldNameTheSizesThereAreForATrial()
    {
        const std::string lost =
            R"({"trial":{"model":"Millrace","size":"XXL","saddle_height_mm":750,
            "saddle_setback_mm":200,"grip_reach_mm":470,"grip_height_mm":690}})";
        const auto result = read(lost);
        const auto* problems = std::get_if<Problems>(&result);
        QVERIFY(problems);
        QCOMPARE(problems->front().value, std::string("Millrace XXL"));
        QCOMPARE(problems->front().names, (std::vector<std::string>{"Millrace M", "Millrace L"}));
        // A draft may have lost the size it was tried on; the trial is not lost with it.
        const auto draft = readDraft(with(lost), test::tables());
        const auto* fitting = std::get_if<Fitting>(&draft);
        QVERIFY(fitting && fitting->choices.trial);
        QVERIFY(!trialFrame(*fitting));
        QVERIFY(lacks(*fitting, test::tables()).empty()); // it has no part in the decision
    }

    void shouldDropWhatWasKeptWithATrialThatIsGone()
    {
        auto result = read(R"({"trial":{"model":"Millrace","size":"L","saddle_height_mm":750,
            "saddle_setback_mm":0,"grip_reach_mm":470,"grip_height_mm":690,"by":"hand"},"why":"cold"})");
        auto* fitting = std::get_if<Fitting>(&result);
        QVERIFY(fitting);
        fitting->choices.trial.reset();
        const std::string written = writeFitting(*fitting);
        QVERIFY(written.find("trial") == std::string::npos);
        QVERIFY(written.find("\"by\"") == std::string::npos);
        QVERIFY(written.find("cold") != std::string::npos);
        QVERIFY(std::holds_alternative<Fitting>(readFitting(written, test::tables())));
    }

    void shouldDecideWhateverTheWeights()
    {
        std::vector<Choices> all(1 + 2 * considerationCount);
        all[0].weightFactor.fill(0.0);
        for (std::size_t i = 0; i < considerationCount; ++i) {
            all[1 + 2 * i].weightFactor[i] = weightFactorRange.low;
            all[2 + 2 * i].weightFactor[i] = weightFactorRange.high;
        }
        const Fitting fitting = std::get<Fitting>(read("{}"));
        const Prepared prepared =
            prepare(fitting.frames, fitting.bicycle, fitting.stock, test::tables());
        for (const Choices& choices : all) {
            const Tables tables = weighted(test::tables(), choices);
            const Advice advice =
                advise(fitting.rider, fitting.riding, fitting.current, prepared, tables);
            QVERIFY(advice.solved);
            for (const Candidate& candidate : advice.candidates) {
                QVERIFY(candidate.best);
                double sum = 0.0; // the ledger's lines are the points
                for (const LedgerEntry& entry : candidate.best->ledger)
                    sum += entry.points;
                QVERIFY(std::abs(sum - candidate.best->points) < 1e-9);
            }
        }
    }
};

QTEST_APPLESS_MAIN(TestChoices)

#include "tst_choices.moc"
