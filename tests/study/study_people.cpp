// SPDX-License-Identifier: MIT
//
// Runs the model over real people: how well it infers what was not measured, and which sizes it
// names.
//
//     study_people PEOPLE.csv
//
// PEOPLE.csv as in people.h. The figures it printed stand in DEVELOPERS.md.
#include "people.h"

#include "advice/advise.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <map>

using namespace tripoise;
using namespace tripoise::test;

namespace {

std::vector<Measurement> measured(const Someone& someone)
{
    return {{Quantity::Stature, {someone.base(0)}, {}}, {Quantity::Inseam, {someone.base(1)}, {}}};
}

void inference(const std::vector<Someone>& people)
{
    const std::array<std::pair<const char*, BaseVector>, 5> lengths{{
        {"thigh", rowOf(Quantity::TrochanterionHeight) - rowOf(Quantity::KneeHeight)},
        {"shank", rowOf(Quantity::KneeHeight) - rowOf(Quantity::AnkleHeight)},
        {"trunk", rowOf(Quantity::AcromialHeight) - rowOf(Quantity::TrochanterionHeight)},
        {"upper arm", rowOf(Quantity::UpperArm)},
        {"forearm", rowOf(Quantity::Forearm)},
    }};
    std::puts(
        "inferred from stature and inseam: RMSE mm women / men, share within the 90 % interval");
    for (const auto& [name, row] : lengths) {
        std::array<double, 2> squares{};
        std::array<double, 2> count{};
        std::array<double, 2> within{};
        for (const Someone& someone : people) {
            const auto i = static_cast<std::size_t>(someone.sex);
            const Posterior posterior =
                infer(measured(someone), someone.sex, tables().populations, tables().tape);
            const double off = row.dot(someone.base - posterior.mean);
            squares[i] += off * off;
            within[i] += std::abs(off) <= 1.645 * posterior.sdOf(row) ? 1.0 : 0.0;
            count[i] += 1.0;
        }
        std::printf("  %-10s %5.1f / %5.1f   %4.1f %% / %4.1f %%\n", name,
                    std::sqrt(squares[0] / count[0]), std::sqrt(squares[1] / count[1]),
                    100.0 * within[0] / count[0], 100.0 * within[1] / count[1]);
    }
}

/// A run of five sizes, each frame as the demo's with the stack, reach and angles of a makers'
/// chart.
std::vector<FrameSize> fiveSizes(const Fitting& demo)
{
    struct Row {
        const char* size;
        double stack, reach, head, seat, seatTube, standover;
    };
    std::vector<FrameSize> sizes;
    for (const Row& row :
         {Row{"XS", 540, 370, 70.5, 74.5, 430, 720}, Row{"S", 562, 384, 71.0, 74.0, 460, 745},
          Row{"M", 585, 396, 71.5, 73.5, 490, 770}, Row{"L", 610, 408, 72.0, 73.0, 525, 797},
          Row{"XL", 636, 420, 72.0, 73.0, 560, 824}}) {
        FrameSize frame = demo.frames.front();
        frame.size = row.size;
        frame.geometry = {};
        frame.geometry.stackMm = row.stack;
        frame.geometry.reachMm = row.reach;
        frame.geometry.headAngleDeg = row.head;
        frame.geometry.seatAngleDeg = row.seat;
        frame.geometry.seatTubeMm = row.seatTube;
        frame.geometry.standoverMm = row.standover;
        frame.geometry.chainstayMm = Range{435, 435};
        frame.geometry.bbDropMm = 70;
        frame.geometry.forkOffsetMm = 47;
        frame.geometry.forkLengthMm = 395;
        sizes.push_back(frame);
    }
    return sizes;
}

void sizes(const std::vector<Someone>& people, const Fitting& demo, const char* name,
           const Mix& mix)
{
    Stock stock = demo.stock;
    stock.cranksMm = {155, 160, 165, 170, 175};
    Bicycle bicycle = demo.bicycle;
    bicycle.crankMm.reset();
    const Prepared prepared = prepare(fiveSizes(demo), bicycle, stock, tables());
    Riding riding = demo.riding;
    riding.mix = mix;

    constexpr int firstBand = 1500;
    constexpr int bandWidth = 50;
    std::map<int, std::array<int, 5>> named;
    std::map<int, std::map<int, int>> stems;
    std::array<int, 3> kinds{};
    int decided = 0;
    double meanStature = 0.0, meanSize = 0.0;
    std::vector<std::pair<double, double>> pairs;
    for (const Someone& someone : people) {
        Rider rider;
        rider.sex = someone.sex;
        rider.measurements = measured(someone);
        const Advice advice = advise(rider, riding, {}, prepared, tables());
        if (!advice.solved || !advice.anyFits())
            continue;
        const Candidate& best = advice.leading();
        const int band =
            std::clamp(static_cast<int>(someone.base(0)), firstBand, 1949) / bandWidth * bandWidth;
        ++named[band][best.size];
        ++stems[band][static_cast<int>(best.best->setup.stem.lengthMm)];
        ++kinds[static_cast<std::size_t>(advice.verdict.kind)];
        ++decided;
        pairs.emplace_back(someone.base(0), static_cast<double>(best.size));
        meanStature += someone.base(0);
        meanSize += static_cast<double>(best.size);
    }
    meanStature /= decided;
    meanSize /= decided;
    double both = 0.0, stature = 0.0, size = 0.0;
    for (const auto& [s, z] : pairs) {
        both += (s - meanStature) * (z - meanSize);
        stature += (s - meanStature) * (s - meanStature);
        size += (z - meanSize) * (z - meanSize);
    }
    std::printf("\n%s: %d of %zu decided without breaking a limit; clear %.0f %%, slight %.0f %%, "
                "either %.0f %%; correlation of size with stature %.2f\n",
                name, decided, people.size(), 100.0 * kinds[0] / decided,
                100.0 * kinds[1] / decided, 100.0 * kinds[2] / decided,
                both / std::sqrt(stature * size));
    std::puts("  stature      XS     S     M     L    XL   commonest stem");
    for (const auto& [band, counts] : named) {
        int all = 0;
        for (const int count : counts)
            all += count;
        std::printf("  %d-%d ", band, band + bandWidth - 1);
        for (const int count : counts)
            std::printf("%5.0f%%", 100.0 * count / all);
        const auto commonest =
            std::max_element(stems[band].begin(), stems[band].end(),
                             [](const auto& a, const auto& b) { return a.second < b.second; });
        std::printf("   %d mm  (n %d)\n", commonest->first, all);
    }
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::fputs("usage: study_people PEOPLE.csv\n", stderr);
        return 2;
    }
    const auto people = peopleOf(QString::fromLocal8Bit(argv[1]));
    inference(people);
    const Fitting demo = std::get<Fitting>(readFitting(
        textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/between-two-sizes.json")), tables()));
    sizes(people, demo, "fast commuting", Mix::only(Use::FastCommuting));
    sizes(people, demo, "touring", Mix::only(Use::Touring));
    sizes(people, demo, "fast commuting 80 %, touring 20 %", demo.riding.mix);
    return 0;
}
