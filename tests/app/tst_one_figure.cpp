// SPDX-License-Identifier: MIT
//
// One thing has one figure, wherever it is told: on the board, in the rider's view, in the text, in
// the window's lists. Held on random fittings, in millimetres and in inches.
#include "random_brief.h"
#include "samples.h"
#include "support.h"

#include "advice/shoes.h"
#include "advice/trial.h"
#include "drawing/dimensions.h"
#include "drawing/labels.h"
#include "drawing/plan_view.h"
#include "drawing/side_view.h"
#include "story/rider_words.h"
#include "wording/advice_text.h"
#include "wording/board_words.h"
#include "wording/consideration_words.h"
#include "wording/findings.h"
#include "wording/ride_rows.h"
#include "wording/setup_rows.h"
#include "wording/trial_words.h"
#include "wording/words.h"

#include <QRegularExpression>
#include <QTest>

#include <cmath>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Case {
    RandomBrief brief;
    Prepared prepared;
    Advice advice;

    [[nodiscard]] const PreparedSize& sizeOf(const Candidate& candidate) const
    {
        return prepared.sizes[candidate.size];
    }
    [[nodiscard]] SideView view(std::size_t candidate, std::optional<std::size_t> other = {}) const
    {
        Shown shown;
        shown.chosen = candidate;
        shown.other = other;
        return makeSideView(advice, shown, brief.riding.mix, prepared, tables());
    }
};

/// What a line of the ride says of one size; empty without the line.
QString said(const std::vector<SetupRow>& rows, const QString& label)
{
    for (const SetupRow& row : rows)
        if (row.label == label)
            return row.said.front();
    return {};
}

/// The first length in a text: "23 mm", "0.91 in".
QString lengthIn(const QString& text)
{
    static const QRegularExpression length(QStringLiteral("−?\\d+(\\.\\d+)? (mm|in)\\b"));
    return length.match(text).captured();
}

template <typename Check> void overRandomCases(const Check& check)
{
    RandomBriefs briefs(91);
    for (int i = 0; i < samples(120); ++i) {
        Case one{briefs.next(), {}, {}};
        one.prepared = prepare(one.brief.frames, one.brief.bicycle, one.brief.stock, tables());
        one.advice = advise(one.brief.rider, one.brief.riding, {}, one.prepared, tables());
        if (one.advice.solved)
            check(one);
    }
}

} // namespace

class OneFigureTest : public QObject {
    Q_OBJECT

private slots:
    void init() { speak({}); }
    void cleanup() { speak({}); }

    void shouldTellTheTopTubeAlike()
    {
        int told = 0;
        overRandomCases([&](const Case& one) {
            const Verdict& verdict = one.advice.verdict;
            if (!verdict.named || !verdict.other || !verdict.contrast.standoverMm)
                return;
            const QString sentence = contrastSentence(one.advice, one.prepared);
            const auto at = sentence.indexOf(QStringLiteral("the top tube"));
            const SideView view = one.view(*verdict.named, verdict.other);
            for (const Leader& leader : view.leaders) {
                if (leader.kind != LeaderKind::TopTubeHigher || at < 0)
                    continue;
                QCOMPARE(lengthIn(leaderLabel(leader)), lengthIn(sentence.mid(at)));
                ++told;
            }
        });
        QVERIFY(told > samples(10));
    }

    void shouldTellTheKneesRoomAlike()
    {
        int told = 0;
        overRandomCases([&](const Case& one) {
            for (std::size_t i = 0; i < one.advice.candidates.size(); ++i) {
                const Candidate& candidate = one.advice.candidates[i];
                if (!candidate.ride)
                    continue;
                const QString line =
                    said(rideRows({&*candidate.ride}), QStringLiteral("knee to bar"));
                const QString words = kneeAndBarWords(one.view(i), nullptr);
                if (candidate.ride->kneeToBar.clearanceMm <= 0.0)
                    continue; // they meet
                QCOMPARE(lengthIn(words), lengthIn(line));
                ++told;
                for (const Finding& finding : candidate.findings)
                    if (finding.code == FindingCode::KneeNearBar && finding.numbers.at(2) == 0.0)
                        QCOMPARE(lengthIn(sentence(finding)), lengthIn(line));
            }
        });
        QVERIFY(told > samples(50));
    }

    // Whatever is tried, as on the advised contacts.
    void shouldTellTheKneesRoomOfATrialAsOfTheAdvisedSetup()
    {
        overRandomCases([](const Case& one) {
            for (const Candidate& candidate : one.advice.candidates) {
                if (!candidate.best)
                    continue;
                const Tried tried = tryContacts(
                    contactsOf(candidate.best->setup), *candidate.best, one.sizeOf(candidate),
                    {one.advice.person, one.brief.riding, one.prepared, tables()});
                QVERIFY(std::abs(tried.kneeToBarMm - candidate.ride->kneeToBar.clearanceMm) < 1e-6);
                const QString words = roomSentence(tried, *candidate.ride);
                QVERIFY(words.contains(toeRoom(candidate.ride->toe)));
                if (tried.kneeToBarMm > 0.0)
                    QCOMPARE(lengthIn(words), lengthIn(said(rideRows({&*candidate.ride}),
                                                            QStringLiteral("knee to bar"))));
            }
        });
    }

    void shouldTellStandoverAlike()
    {
        int told = 0;
        overRandomCases([&](const Case& one) {
            for (const Candidate& candidate : one.advice.candidates) {
                const PreparedSize& size = one.sizeOf(candidate);
                if (!candidate.ride || !size.skeleton.standoverMm)
                    continue;
                const QString ledger =
                    ledgerValue(candidate.best->ledger[indexOf(Consideration::Standover)], size);
                QCOMPARE(
                    said(rideFigureRows({&*candidate.ride}), QStringLiteral("standover clearance")),
                    ledger);
                const auto inShoes =
                    standoverInShoes(size.skeleton, one.advice.person, tables().parts);
                QVERIFY(inShoes);
                QCOMPARE(mm(*inShoes), ledger); // the rider's view
                for (const Finding& finding : candidate.findings)
                    if (finding.code == FindingCode::StandoverTight && finding.numbers[0] > 0.0)
                        QCOMPARE(lengthIn(sentence(finding)), ledger);
                ++told;
            }
        });
        QVERIFY(told > samples(50));
    }

    void shouldTellTheToesRoomAlike()
    {
        int clear = 0, overlap = 0;
        overRandomCases([&](const Case& one) {
            for (const Candidate& candidate : one.advice.candidates) {
                if (!candidate.ride || !candidate.ride->toe)
                    continue;
                const PreparedSize& size = one.sizeOf(candidate);
                const QString line =
                    said(rideRows({&*candidate.ride}), QStringLiteral("shoe to front wheel"));
                const PlanView plan =
                    makePlanView(candidate, one.advice.person, one.prepared, tables());
                QVERIFY(plan.roomMm);
                const QString ledger =
                    ledgerValue(candidate.best->ledger[indexOf(Consideration::ToeOverlap)], size);
                if (*plan.roomMm >= leastToldMm) {
                    QVERIFY(line.contains(QStringLiteral("clear")));
                    QCOMPARE(lengthIn(toeWords({QStringLiteral("M"), plan.roomMm, 0.0}, {})),
                             lengthIn(line));
                    QCOMPARE(ledger, QStringLiteral("none"));
                    ++clear;
                } else if (*plan.roomMm <= -leastToldMm) {
                    QVERIFY(line.contains(QStringLiteral("overlap")));
                    QCOMPARE(ledger, lengthIn(line));
                    ++overlap;
                }
                for (const Finding& finding : candidate.findings)
                    if ((finding.code == FindingCode::ToeOverlaps
                         || finding.code == FindingCode::ToeNear)
                        && std::abs(*plan.roomMm) >= leastToldMm)
                        QCOMPARE(lengthIn(sentence(finding)), lengthIn(line));
            }
        });
        QVERIFY(clear > samples(20) && overlap > samples(5));
    }

    // A bar above the saddle is told as that, wherever it is told.
    void shouldNeverTellTheBarWithAMinus()
    {
        int above = 0;
        overRandomCases([&](const Case& one) {
            for (std::size_t i = 0; i < one.advice.candidates.size(); ++i) {
                if (!one.advice.candidates[i].best)
                    continue;
                const SideView view = one.view(i);
                const Setup& setup = one.advice.candidates[i].best->setup;
                const double belowMm = setup.saddle.point().y() - setup.grip.y();
                above += belowMm < -1.0;
                for (const Dimension& dimension : dimensionsOf(view)) {
                    if (dimension.kind != DimensionKind::SaddleToBarDrop)
                        continue;
                    QCOMPARE(dimensionValue(dimension), againstSaddle(belowMm));
                    QVERIFY(!dimensionLabel(dimension).contains(QChar(u'−')));
                }
                QVERIFY(barMeasuredOn(view).endsWith(againstSaddle(belowMm)));
            }
        });
        QVERIFY(above > samples(5));
    }

    void shouldSayAnEightyAndAHundred()
    {
        QCOMPARE(articled(QStringLiteral("A 80 mm stem, a 100 mm one")),
                 QStringLiteral("An 80 mm stem, a 100 mm one"));
        QCOMPARE(articled(QStringLiteral("a 118 mm stem, a 180 mm, a 87.5 mm, a 11 mm, a 18 mm")),
                 QStringLiteral("a 118 mm stem, a 180 mm, an 87.5 mm, an 11 mm, an 18 mm"));
        const Tried tried = [] {
            Tried made;
            made.setup.stem.lengthMm = 80.0;
            made.setup.cockpit.spacersMm = 10.0;
            return made;
        }();
        QCOMPARE(wouldCarrySentence(tried),
                 QStringLiteral("An 80 mm stem on 10 mm of spacers would put it there."));
    }

    void shouldRaiseAQuillInsteadOfStackingSpacers()
    {
        Tried tried;
        tried.setup.stem.lengthMm = 80.0;
        tried.setup.stem.quillMm = 22.2;
        tried.setup.cockpit.spacersMm = 25.0;
        QCOMPARE(wouldCarrySentence(tried),
                 QStringLiteral("An 80 mm stem with its quill raised 25 mm would put it there."));
        QCOMPARE(spacersHandleWords(tried.setup), QStringLiteral("quill raised 25 mm"));
        tried.setup.cockpit.spacersMm = -5.0;
        QCOMPARE(wouldCarrySentence(tried),
                 QStringLiteral("An 80 mm stem would have to sit 5 mm lower than its quill goes."));
    }

    // In whole degrees a back of 56.7 seems to lie within 57 to 65.
    void shouldShowThatAnAngleIsOutside()
    {
        const auto told = [](double value) {
            return sentence(Finding{FindingCode::TrunkOutOfRange,
                                    Severity::Caution,
                                    {value, 57.0, 65.0},
                                    {},
                                    Use::Touring});
        };
        QVERIFY(told(56.7).contains(QStringLiteral("at 56.7° from the horizontal, is outside the "
                                                   "57.0–65.0°")));
        QVERIFY(told(54.2).contains(QStringLiteral("at 54° from the horizontal, is outside the "
                                                   "57–65°")));
    }
};

QTEST_APPLESS_MAIN(OneFigureTest)
#include "tst_one_figure.moc"
