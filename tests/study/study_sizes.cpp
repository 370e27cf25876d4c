// SPDX-License-Identifier: MIT
//
// Which sizes are named over real people, held against the makers' rider heights of invented runs.
//
//     study_sizes PEOPLE.csv [EVERY]
//
// PEOPLE.csv as in people.h; of its people, shuffled, every EVERYth counts. The runs were fixed
// before anything was tuned on them, and stay as they are.
#include "people.h"
#include "properties.h"
#include "study_runs.h"

#include <array>
#include <cstdio>

using namespace tripoise;
using namespace tripoise::test;

namespace {

enum class Told { StatureAndInseam, AllLengths };

Rider riderOf(const Someone& someone, Told told)
{
    Rider rider;
    rider.sex = someone.sex;
    for (int v = 0; v < baseVariableCount; ++v) {
        const auto quantity = static_cast<Quantity>(v);
        const bool both = quantity == Quantity::Stature || quantity == Quantity::Inseam;
        if (both || (told == Told::AllLengths && quantity != Quantity::Mass))
            rider.measurements.push_back({quantity, {someone.base(v)}, {}});
    }
    return rider;
}

struct Counts {
    int inside = 0, outside = 0, none = 0, outsideNone = 0, own = 0, ownOrNext = 0, either = 0;
    int middle = 0, eitherMiddle = 0;
    double lean = 0.0;
    int leanCount = 0;
    double sumStature = 0.0, sumSize = 0.0, sumSquares = 0.0, sumProducts = 0.0;

    [[nodiscard]] double slopePerCm() const
    {
        const double n = leanCount;
        return 10.0 * (sumProducts - sumStature * sumSize / n)
               / (sumSquares - sumStature * sumStature / n);
    }
};

void count(Counts& counts, const StudyRun& run, double stature, const Advice& advice)
{
    const auto named = namedSize(advice);
    if (!run.inside(stature)) {
        ++counts.outside;
        counts.outsideNone += named ? 0 : 1;
        return;
    }
    ++counts.inside;
    if (!named) {
        ++counts.none;
        return;
    }
    const int off = run.sizesOff(*named, stature);
    counts.own += off == 0 ? 1 : 0;
    counts.ownOrNext += off <= 1 ? 1 : 0;
    const bool either = advice.verdict.kind == VerdictKind::Either;
    counts.either += either ? 1 : 0;
    for (const Range& range : run.heights) {
        const double quarter = 0.25 * (range.high - range.low);
        if (stature < range.low + quarter || stature > range.high - quarter)
            continue;
        ++counts.middle;
        counts.eitherMiddle += either ? 1 : 0;
        break;
    }
    // Beyond the middle of the first and last size nothing smaller or larger could be named.
    if (stature < run.middle(0) || stature > run.middle(run.count() - 1))
        return;
    ++counts.leanCount;
    counts.lean += *named - run.asked(stature);
    counts.sumStature += stature;
    counts.sumSize += *named;
    counts.sumSquares += stature * stature;
    counts.sumProducts += stature * *named;
}

double share(int part, int whole)
{
    return whole ? 100.0 * part / whole : 0.0;
}

void sizes(const std::vector<Someone>& people, const std::vector<StudyRun>& runs, Told told,
           Heights heights)
{
    std::printf("\n**%s, makers' heights %s**\n\n",
                told == Told::AllLengths ? "All lengths" : "Stature and inseam",
                heights == Heights::Told ? "told" : "not told");
    std::puts("| run | sizes a cm | own size | own or next | mean lean | either, middle half | "
              "either | none | outside the run, of these none |");
    std::puts("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (const StudyRun& run : runs) {
        const Ready ready(fittingJson(run, run.frames, heights));
        Counts counts;
        for (const Someone& someone : people)
            count(counts, run, someone.base(0), ready.advice(riderOf(someone, told)));
        const int named = counts.inside - counts.none;
        std::printf("| %s | %.3f | %.0f %% | %.1f %% | %+.2f | %.0f %% | %.0f %% | %.1f %% | %d, "
                    "%.0f %% |\n",
                    run.name.c_str(), counts.slopePerCm(), share(counts.own, named),
                    share(counts.ownOrNext, named), counts.lean / counts.leanCount,
                    share(counts.eitherMiddle, counts.middle), share(counts.either, named),
                    share(counts.none, counts.inside), counts.outside,
                    share(counts.outsideNone, counts.outside));
        std::fflush(stdout);
    }
}

/// Equal stature, legs 1.5 sd shorter and longer: how often another size is named, and which way.
void proportions(const std::vector<StudyRun>& runs)
{
    std::puts("\n**Equal stature, inseam 1.5 sd shorter and longer**\n");
    std::puts("| run | another size | larger for the longer legs | smaller |");
    std::puts("| --- | --- | --- | --- |");
    for (const StudyRun& run : runs) {
        const Ready ready(fittingJson(run, run.frames, Heights::Untold));
        int tried = 0, larger = 0, smaller = 0;
        for (const Sex sex : {Sex::Female, Sex::Male})
            for (double stature = run.middle(0); stature <= run.middle(run.count() - 1);
                 stature += 10.0) {
                const auto shorter = namedSize(ready.advice(test::riderOf(sex, stature, -1.5)));
                const auto longer = namedSize(ready.advice(test::riderOf(sex, stature, 1.5)));
                if (!shorter || !longer)
                    continue;
                ++tried;
                larger += *longer > *shorter ? 1 : 0;
                smaller += *longer < *shorter ? 1 : 0;
            }
        std::printf("| %s | %.0f %% of %d | %.0f %% | %.0f %% |\n", run.name.c_str(),
                    share(larger + smaller, tried), tried, share(larger, tried),
                    share(smaller, tried));
    }
}

/// What 40 mm of leg or arm do to the set-up of the middle size, its own rider on it.
void moves(const std::vector<StudyRun>& runs)
{
    std::puts("\n**Set-up of the middle size, its own rider with 40 mm more leg, more arm**\n");
    std::puts("| run | leg: saddle | leg: grip up | leg: saddle to grip | arm: saddle | arm: grip "
              "up | arm: saddle to grip |");
    std::puts("| --- | --- | --- | --- | --- | --- | --- |");
    for (const StudyRun& run : runs) {
        const int middle = run.count() / 2;
        const Ready ready(fittingJson(run, Json::array({run.frames[middle]}), Heights::Untold));
        const auto setupOf = [&](double leg, double arm) {
            Rider rider = test::riderOf(Sex::Male, run.middle(middle), 0.0);
            const double ordinary =
                rowOf(Quantity::ArmToGrip)
                    .dot(infer(rider.measurements, rider.sex, tables().populations, tables().tape)
                             .mean);
            rider.measurements[1].readings[0] += leg;
            rider.measurements.push_back({Quantity::ArmToGrip, {ordinary + arm}, {}});
            return ready.advice(rider).candidates.front().best->setup;
        };
        std::printf("| %s ", run.name.c_str());
        for (const auto& [leg, arm] : {std::pair{20.0, 0.0}, std::pair{0.0, 20.0}}) {
            const Setup more = setupOf(leg, arm);
            const Setup less = setupOf(-leg, -arm);
            const auto reach = [](const Setup& setup) {
                return setup.grip.x() - setup.saddle.point().x();
            };
            std::printf("| %+.0f | %+.0f | %+.0f ", more.saddle.heightMm - less.saddle.heightMm,
                        more.grip.y() - less.grip.y(), reach(more) - reach(less));
        }
        std::puts("|");
    }
}

/// How well a single size's class follows the makers' heights.
void classes(const std::vector<Someone>& people, const std::vector<StudyRun>& runs)
{
    constexpr std::array centimetres{9, 12, 15, 18};
    std::puts("\n**One size alone: share of riders it is said to fit**\n");
    std::puts("| run | middle half | its heights | too short by 9, 12, 15, 18 cm | too tall by 9, "
              "12, 15, 18 cm |");
    std::puts("| --- | --- | --- | --- | --- |");
    for (const StudyRun& run : runs) {
        std::array<std::array<int, 2>, 2> in{};
        std::array<std::array<std::array<int, 2>, centimetres.size()>, 2> out{};
        for (int size = 0; size < run.count(); ++size) {
            const Range& range = run.heights[static_cast<std::size_t>(size)];
            const double quarter = 0.25 * (range.high - range.low);
            const Ready ready(fittingJson(run, Json::array({run.frames[size]}), Heights::Untold));
            for (const Someone& someone : people) {
                const double stature = someone.base(0);
                const double beyond = run.beyond(size, stature);
                const bool fits =
                    namedSize(ready.advice(riderOf(someone, Told::StatureAndInseam))).has_value();
                const auto add = [fits](std::array<int, 2>& tally) {
                    ++tally[0];
                    tally[1] += fits ? 1 : 0;
                };
                if (beyond == 0.0)
                    add(in[1]);
                if (stature >= range.low + quarter && stature <= range.high - quarter)
                    add(in[0]);
                for (std::size_t i = 0; i < centimetres.size(); ++i)
                    if (std::abs(std::abs(beyond) - 10.0 * centimetres[i]) <= 10.0)
                        add(out[beyond < 0.0 ? 0 : 1][i]);
            }
        }
        std::printf("| %s | %.0f %% | %.0f %% ", run.name.c_str(), share(in[0][1], in[0][0]),
                    share(in[1][1], in[1][0]));
        for (const auto& side : out) {
            std::fputs("|", stdout);
            for (const auto& tally : side)
                std::printf(" %.0f %%", share(tally[1], tally[0]));
            std::fputs(" ", stdout);
        }
        std::puts("|");
        std::fflush(stdout);
    }
}

void tell(const char* name, const Tally& tally)
{
    std::printf("| %s | %d of %d | %.1f | %s |\n", name, tally.failed, tally.tried, tally.worst,
                tally.first.c_str());
    std::fflush(stdout);
}

void properties(const std::vector<StudyRun>& runs)
{
    std::puts("\n**Properties**\n\n| | fails in | worst | first |\n| --- | --- | --- | --- |");
    tell("a size 15 cm off is named, alone", wrongSizeNamed(runs, 1000, 1, Offered::Alone));
    tell("a size 15 cm off is named, in its run", wrongSizeNamed(runs, 1000, 2, Offered::Run));
    tell("mass moves a contact (mm)", massMoves(runs, 200, 3));
    tell("a third candidate turns the order of two", thirdTurnsOrder(runs, 10000, 4));
    const Kept kept = keptMoved(runs, 1000, 5);
    tell("a kept saddle is moved (mm)", kept.saddle);
    tell("kept saddle to grip is changed (mm)", kept.reach);
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2 && argc != 3) {
        std::fputs("usage: study_sizes PEOPLE.csv [EVERY]\n", stderr);
        return 2;
    }
    const auto all = peopleOf(QString::fromLocal8Bit(argv[1]));
    const std::size_t every = argc == 3 ? std::max(1UL, std::stoul(argv[2])) : 1;
    std::vector<Someone> people;
    for (std::size_t i = 0; i < all.size(); i += every)
        people.push_back(all[i]);
    std::printf("%zu people\n", people.size());

    const std::vector<StudyRun> runs = studyRuns();
    sizes(people, runs, Told::StatureAndInseam, Heights::Untold);
    sizes(people, runs, Told::StatureAndInseam, Heights::Told);
    sizes(people, runs, Told::AllLengths, Heights::Untold);
    classes(people, runs);
    proportions(runs);
    moves(runs);
    properties(runs);
    return 0;
}
