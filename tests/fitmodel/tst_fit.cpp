// SPDX-License-Identifier: MIT
//
// Whether a size fits at all, held against the makers' rider heights of invented runs.
#include "advice/fit.h"
#include "study_runs.h"

#include <QTest>

#include <array>
#include <numeric>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Judged {
    Ready ready;

    explicit Judged(const StudyRun& run, int size)
        : ready(fittingJson(run, Json::array({run.frames[static_cast<std::size_t>(size)]}),
                            Heights::Untold))
    {
    }

    [[nodiscard]] SizeFit fit(const Rider& rider) const
    {
        Findings findings;
        const Person person = personOf(
            rider, infer(rider.measurements, rider.sex, tables().populations, tables().tape), {},
            ready.fitting.riding, ready.prepared, tables(), findings);
        return fitOf(ready.prepared.sizes.front(),
                     {person, ready.fitting.riding, ready.prepared, tables()});
    }
};

/// What is said of riders a stature beyond a size's heights, or in the middle of them.
std::array<int, 5> states(double beyondMm, double inseamSds)
{
    std::array<int, 5> counts{};
    for (const StudyRun& run : studyRuns())
        for (int size = 0; size < run.count(); ++size) {
            const Range& heights = run.heights[static_cast<std::size_t>(size)];
            const double stature = beyondMm < 0.0   ? heights.low + beyondMm
                                   : beyondMm > 0.0 ? heights.high + beyondMm
                                                    : run.middle(size);
            if (stature < 1450.0 || stature > 2050.0)
                continue;
            const Judged judged(run, size);
            for (const Sex sex : {Sex::Female, Sex::Male})
                ++counts[static_cast<std::size_t>(
                    judged.fit(riderOf(sex, stature, inseamSds)).state)];
        }
    return counts;
}

int of(const std::array<int, 5>& counts, FitState state)
{
    return counts[static_cast<std::size_t>(state)];
}

int sum(const std::array<int, 5>& counts)
{
    return std::accumulate(counts.begin(), counts.end(), 0);
}

} // namespace

class TestFit : public QObject {
    Q_OBJECT

private slots:
    // Asked of it: at least 92 in 100 riders in the middle of a maker's range are let in, and at
    // least 90 in 100 who are 15 cm too short or too tall are kept out, by the right name.
    void shouldLetInTheMakersRiders()
    {
        int in = 0, all = 0;
        for (const double sds : {-1.0, 0.0, 1.0}) {
            const auto counts = states(0.0, sds);
            in += of(counts, FitState::Fits);
            all += sum(counts);
        }
        QVERIFY(all >= 120);
        QVERIFY2(100 * in >= 92 * all, qPrintable(QStringLiteral("%1 of %2").arg(in).arg(all)));
    }

    void shouldKeepOutThoseFarOff_data()
    {
        QTest::addColumn<double>("beyondMm");
        QTest::addColumn<int>("state");
        QTest::newRow("too short") << -150.0 << int(FitState::TooLarge);
        QTest::newRow("too tall") << 150.0 << int(FitState::TooSmall);
    }
    void shouldKeepOutThoseFarOff()
    {
        QFETCH(double, beyondMm);
        QFETCH(int, state);
        for (const double sds : {-1.0, 0.0, 1.0}) {
            const auto counts = states(beyondMm, sds);
            QVERIFY(sum(counts) >= 20);
            QVERIFY2(100 * of(counts, static_cast<FitState>(state)) >= 90 * sum(counts),
                     qPrintable(QStringLiteral("%1 of %2")
                                    .arg(of(counts, static_cast<FitState>(state)))
                                    .arg(sum(counts))));
        }
    }

    // The box has no say: neither riser bars and steep stems nor their lack.
    void shouldNotMindTheBox()
    {
        for (const StudyRun& run : studyRuns()) {
            StudyRun bare = run;
            bare.stock["stems"] = Json::array({{{"length_mm", 150}, {"angle_deg", 40}}});
            for (const double stature : {1550.0, 1750.0, 1950.0}) {
                const Rider rider = riderOf(Sex::Male, stature, 0.0);
                QCOMPARE(Judged(bare, 1).fit(rider).state, Judged(run, 1).fit(rider).state);
            }
        }
    }

    void shouldAskOnlyUsesWithAShare()
    {
        Mix mix;
        mix.share[indexOf(Use::Road)] = 0.85;
        mix.share[indexOf(Use::City)] = 0.15;
        QCOMPARE(usesThatCount(mix, tables().weights.fit), std::vector<Use>{Use::Road});
        Mix even; // the first of the largest, where all are small
        even.share.fill(1.0 / 6.0);
        QCOMPARE(usesThatCount(even, tables().weights.fit).size(), std::size_t(1));
        mix.share[indexOf(Use::Road)] = 0.4;
        mix.share[indexOf(Use::City)] = 0.6;
        QCOMPARE(usesThatCount(mix, tables().weights.fit),
                 (std::vector<Use>{Use::City, Use::Road}));
    }
};

QTEST_APPLESS_MAIN(TestFit)
#include "tst_fit.moc"
