// SPDX-License-Identifier: MIT
//
// What the builder chose: weights moved, a set-up pulled about; read, refused, written, and heeded.
#include "support.h"

#include "advice/advise.h"

#include <QTest>

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
    void shouldReadWhatItWrote()
    {
        const auto result = read(R"({"weights":{"spacers":2,"posture":0.5,"remark":"soft back"},
            "trial":{"model":"Millrace","size":"L","saddle_height_mm":750,"saddle_setback_mm":200,
                     "grip_reach_mm":470,"grip_height_mm":690,"by":"hand"},"other":[1]})");
        const auto* fitting = std::get_if<Fitting>(&result);
        QVERIFY(fitting);
        QCOMPARE(fitting->choices.weightFactor[indexOf(Consideration::Spacers)], 2.0);
        QCOMPARE(fitting->choices.weightFactor[indexOf(Consideration::Posture)], 0.5);
        QCOMPARE(fitting->choices.weightFactor[indexOf(Consideration::Crank)], 1.0);
        const Trial expected{"Millrace", "L", 750, 200, 470, 690};
        QVERIFY(fitting->choices.trial == expected);
        const auto again = readFitting(writeFitting(*fitting), test::tables());
        QVERIFY(std::get_if<Fitting>(&again));
        QVERIFY(std::get<Fitting>(again) == *fitting);
        QVERIFY(writeFitting(*fitting).find("soft back") != std::string::npos);
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
        const Prepared prepared = prepare(fitting.frames, fitting.stock, tables);
        const Advice advice =
            advise(fitting.rider, fitting.riding, fitting.current, prepared, tables);
        QVERIFY(advice.solved);
        for (const LedgerEntry& entry : advice.candidates.front().best->ledger)
            if (entry.consideration == Consideration::Spacers)
                QCOMPARE(entry.points, 0.0);
    }
};

QTEST_APPLESS_MAIN(TestChoices)

#include "tst_choices.moc"
