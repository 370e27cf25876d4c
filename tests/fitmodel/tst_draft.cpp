// SPDX-License-Identifier: MIT
//
// Fittings that are being filled in: whatever is there so far survives writing and reading, and
// what a decision still needs is told. Derived: a fitting lacks nothing when the strict reader
// takes it.
#include "random_brief.h"
#include "rich_box.h"
#include "support.h"

#include "document/frame_list.h"
#include "document/lacks.h"

#include <QTest>

#include <functional>

using namespace tripoise;

namespace {

Fitting whole()
{
    const std::string text =
        test::textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/between-two-sizes.json"));
    return std::get<Fitting>(readFitting(text, test::tables()));
}

using Edit = std::function<void(Fitting&)>;

struct Gap {
    const char* name;
    Lack lack;
    Edit edit;
};

const std::vector<Gap>& gaps()
{
    static const std::vector<Gap> all{
        {"no measurements", Lack::Stature, [](Fitting& f) { f.rider.measurements.clear(); }},
        {"no mix", Lack::Mix, [](Fitting& f) { f.riding.mix = {}; }},
        {"no frames", Lack::Frame, [](Fitting& f) { f.frames.clear(); }},
        {"a frame only named", Lack::Frame,
         [](Fitting& f) {
             f.frames[1] = {};
             f.frames[1].size = "XL";
         }},
        {"no stems", Lack::Stem, [](Fitting& f) { f.stock.stems.clear(); }},
        {"no stem in stock", Lack::Stem,
         [](Fitting& f) {
             for (Stem& stem : f.stock.stems)
                 stem.inStock = false;
         }},
        {"no bars", Lack::Bar, [](Fitting& f) { f.stock.bars.clear(); }},
        {"no cranks", Lack::Crank,
         [](Fitting& f) {
             f.stock.cranksMm.clear();
             f.bicycle.crankMm.reset();
         }},
        {"nothing fits", Lack::NothingFits,
         [](Fitting& f) {
             for (Stem& stem : f.stock.stems)
                 stem.steererMm = 25.4;
         }},
        {"the same size twice", Lack::Agreement, [](Fitting& f) { f.frames[1] = f.frames[0]; }},
    };
    return all;
}

} // namespace

class TestDraft : public QObject {
    Q_OBJECT

private slots:
    void shouldNameWhatIsLacking_data()
    {
        QTest::addColumn<int>("index");
        for (std::size_t i = 0; i < gaps().size(); ++i)
            QTest::newRow(gaps()[i].name) << int(i);
    }
    void shouldNameWhatIsLacking()
    {
        QFETCH(int, index);
        const Gap& gap = gaps()[std::size_t(index)];
        Fitting fitting = whole();
        QVERIFY(lacks(fitting, test::tables()).empty());
        gap.edit(fitting);
        const std::vector<Lack> found = lacks(fitting, test::tables());
        QVERIFY(std::find(found.begin(), found.end(), gap.lack) != found.end());
    }

    void shouldLackEverythingWhenNew()
    {
        const std::vector<Lack> expected{Lack::Stature, Lack::Mix, Lack::Frame,
                                         Lack::Stem,    Lack::Bar, Lack::Crank};
        QCOMPARE(lacks(Fitting(), test::tables()), expected);
    }

    // A draft may be too full, so that it can be thinned.
    void shouldLackAThinnerBox()
    {
        const Fitting full = test::withRichBox({2, 500, 100, 60, 40});
        QCOMPARE(lacks(full, test::tables()), std::vector{Lack::TooManySetups});
        const auto read = readDraft(writeFitting(full), test::tables());
        QVERIFY(std::get_if<Fitting>(&read));
    }

    void shouldReadAgainWhateverIsThereSoFar()
    {
        // Every subset of the gaps at once: 2^11.
        for (unsigned subset = 0; subset < (1U << gaps().size()); ++subset) {
            Fitting fitting = whole();
            fitting.kept = {};
            for (std::size_t i = gaps().size(); i-- > 0;)
                if ((subset >> i & 1U) != 0 && (fitting.frames.size() > 1 || i < 3 || i > 4)
                    && (i != 10 || fitting.frames.size() > 1))
                    gaps()[i].edit(fitting);
            const auto read = readDraft(writeFitting(fitting), test::tables());
            const auto* again = std::get_if<Fitting>(&read);
            QVERIFY2(again, qPrintable(QString::number(subset)));
            QVERIFY2(*again == fitting, qPrintable(QString::number(subset)));
        }
        const auto empty = readDraft(writeFitting(Fitting()), test::tables());
        QVERIFY(std::get_if<Fitting>(&empty));
        QVERIFY(std::get<Fitting>(empty) == Fitting());
    }

    void shouldStillRefuseWhatIsWrongInADraft()
    {
        std::string text = writeFitting(whole());
        const std::size_t at = text.find("1790");
        QVERIFY(at != std::string::npos);
        text.replace(at, 4, "179");
        const auto read = readDraft(text, test::tables());
        const auto* problems = std::get_if<Problems>(&read);
        QVERIFY(problems);
        QCOMPARE(problems->size(), 1UL);
        QCOMPARE(problems->front().path, std::string("/rider/measurements/stature_mm"));
    }

    void shouldMoveWhatBelongsToAFrameWithIt()
    {
        Fitting fitting = whole();
        fitting.frames.push_back(fitting.frames[1]);
        fitting.frames[2].size = "XL";
        fitting.kept = {{"/frames/0/colour", "\"red\""},
                        {"/frames/1/colour", "\"blue\""},
                        {"/frames/2/colour", "\"green\""}};
        fitting.choices.trial = Trial{"Millrace", "XL", 750, 200, 480, 700};
        const Fitting less = withoutFrame(fitting, 1);
        QCOMPARE(less.frames.size(), 2UL);
        const std::vector<KeptJson> expected{{"/frames/0/colour", "\"red\""},
                                             {"/frames/1/colour", "\"green\""}};
        QVERIFY(less.kept == expected);
        QVERIFY(trialFrame(less) == 1UL);
        QVERIFY(!withoutFrame(less, 1).choices.trial);
        QVERIFY(withoutFrame(less, 7) == less);
        const Fitting renamed = withFrameNamed(less, 1, "Millrace", "58");
        QCOMPARE(renamed.choices.trial->size, std::string("58"));
    }

    void shouldReadTheSizesOfAFrameModel()
    {
        const auto read = readFrameModel(
            R"({"format":"tripoise.frame","version":1,"model":"Weir","sizes":[
                {"size":"S","geometry":{"stack_mm":560,"reach_mm":380,"head_angle_deg":71,"seat_angle_deg":74}},
                {"size":"M","geometry":{"stack_mm":580,"reach_mm":390,"head_angle_deg":71,"seat_angle_deg":74}}]})");
        const auto* sizes = std::get_if<std::vector<FrameSize>>(&read);
        QVERIFY(sizes);
        QCOMPARE(sizes->size(), 2UL);
        QCOMPARE(sizes->at(1).model, std::string("Weir"));
        QCOMPARE(sizes->at(1).geometry.stackMm, 580.0);
        const auto other = readFrameModel(writeFitting(whole()));
        const auto* problems = std::get_if<Problems>(&other);
        QVERIFY(problems);
        QCOMPARE(int(problems->front().code), int(ProblemCode::WrongFormat));
    }
};

QTEST_APPLESS_MAIN(TestDraft)

#include "tst_draft.moc"
