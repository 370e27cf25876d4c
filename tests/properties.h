// SPDX-License-Identifier: MIT
//
// What must hold of the advice for any rider, counted over random ones: in how many of the tried
// cases it does not, the worst of them, and the first in words.
#pragma once

#include "random_brief.h"
#include "study_runs.h"

#include <sstream>

namespace tripoise::test {

struct Tally {
    int tried = 0;
    int failed = 0;
    double worst = 0.0;
    std::string first;

    void add(double off, double allowed, const std::string& which)
    {
        ++tried;
        worst = std::max(worst, off);
        if (off <= allowed)
            return;
        if (failed++ == 0)
            first = which;
    }
};

/// Riders of every stature, and a random choice of runs.
class RandomRiders {
public:
    explicit RandomRiders(unsigned seed) : m_random(seed) {}

    double between(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }
    std::size_t below(std::size_t count) { return m_random() % count; }
    Rider rider(double stature)
    {
        const double sds = std::clamp(std::normal_distribution<double>()(m_random), -2.0, 2.0);
        return riderOf(below(2) ? Sex::Male : Sex::Female, stature, sds);
    }

private:
    std::mt19937 m_random;
};

inline double toldOf(const Rider& rider, Quantity quantity)
{
    for (const Measurement& measurement : rider.measurements)
        if (measurement.quantity == quantity)
            return measurement.readings.front();
    return 0.0;
}

inline std::string wordsOf(const Rider& rider, const std::string& run)
{
    std::ostringstream words;
    words << run << ", " << (rider.sex == Sex::Male ? "man" : "woman") << " of "
          << std::lround(toldOf(rider, Quantity::Stature)) << "/"
          << std::lround(toldOf(rider, Quantity::Inseam));
    return words.str();
}

enum class Offered { Alone, Run };

/// A size whose riders are 15 cm shorter or taller by its maker's heights is named: alone, or in
/// the whole run where one of the right size stands beside it. The worst is in mm of stature.
inline Tally wrongSizeNamed(const std::vector<StudyRun>& runs, int bodies, unsigned seed,
                            Offered offered)
{
    constexpr double farMm = 150.0;
    RandomRiders random(seed);
    std::vector<std::vector<Ready>> alone(runs.size());
    std::vector<Ready> whole;
    for (std::size_t r = 0; r < runs.size(); ++r) {
        whole.emplace_back(fittingJson(runs[r], runs[r].frames, Heights::Untold));
        for (const Json& frame : runs[r].frames)
            alone[r].emplace_back(fittingJson(runs[r], Json::array({frame}), Heights::Untold));
    }
    Tally tally;
    for (int body = 0; body < bodies; ++body) {
        const std::size_t r = random.below(runs.size());
        const StudyRun& run = runs[r];
        const double stature = random.between(run.heights.front().low, run.heights.back().high);
        const Rider rider = random.rider(stature);
        const auto check = [&](int size, bool named) {
            const double off = std::abs(run.beyond(size, stature));
            if (offered == Offered::Run || off >= farMm)
                tally.add(named ? off : 0.0, farMm - 1e-9, wordsOf(rider, run.name));
        };
        if (offered == Offered::Run) {
            if (const auto named = namedSize(whole[r].advice(rider)))
                check(*named, true);
            continue;
        }
        for (int size = 0; size < run.count(); ++size)
            if (std::abs(run.beyond(size, stature)) >= farMm)
                check(
                    size,
                    namedSize(alone[r][static_cast<std::size_t>(size)].advice(rider)).has_value());
    }
    return tally;
}

/// Contacts differ between riders who differ in mass alone, 45 to 130 kg.
inline Tally massMoves(const std::vector<StudyRun>& runs, int bodies, unsigned seed)
{
    constexpr double allowedMm = 0.5;
    RandomRiders random(seed);
    Tally tally;
    for (int body = 0; body < bodies; ++body) {
        const StudyRun& run = runs[random.below(runs.size())];
        const auto size = static_cast<int>(random.below(static_cast<std::size_t>(run.count())));
        const Ready ready(fittingJson(run, Json::array({run.frames[size]}), Heights::Untold));
        Rider rider = random.rider(run.middle(size));
        rider.measurements.push_back({Quantity::Mass, {75.0}, {}});
        std::vector<Setup> setups;
        for (const double mass : {45.0, 75.0, 130.0}) {
            rider.measurements.back().readings = {mass};
            setups.push_back(ready.advice(rider).candidates.front().best->setup);
        }
        double off = 0.0;
        for (const Setup& setup : setups)
            off = std::max({off, (setup.saddle.point() - setups[0].saddle.point()).norm(),
                            (setup.grip - setups[0].grip).norm(),
                            std::abs(setup.crankMm - setups[0].crankMm)});
        tally.add(off, allowedMm, wordsOf(rider, run.name));
    }
    return tally;
}

/// Whether the first of two frames comes before the second.
inline bool firstLeads(const Advice& advice)
{
    for (const Candidate& candidate : advice.candidates)
        if (candidate.size < 2)
            return candidate.size == 0;
    return false;
}

/// A third candidate turns the order of two: neighbours in a run with a rider between them, a third
/// out of any run; and random frames with random parts.
inline Tally thirdTurnsOrder(const std::vector<StudyRun>& runs, int pairs, unsigned seed)
{
    RandomRiders random(seed);
    RandomBriefs briefs(seed);
    Tally tally;
    for (int pair = 0; pair < pairs; ++pair) {
        Rider rider;
        Riding riding;
        Stock stock;
        std::vector<FrameSize> frames;
        std::string name = "random frames";
        if (pair % 2 == 0) {
            const StudyRun& run = runs[random.below(runs.size())];
            const StudyRun& other = runs[random.below(runs.size())];
            const auto i =
                static_cast<int>(random.below(static_cast<std::size_t>(run.count() - 1)));
            Json third = other.frames[random.below(static_cast<std::size_t>(other.count()))];
            third["model"] = "Third";
            const Ready ready(fittingJson(
                run, Json::array({run.frames[i], run.frames[i + 1], third}), Heights::Untold));
            rider = random.rider(random.between(run.middle(i), run.middle(i + 1)));
            riding = ready.fitting.riding;
            stock = ready.fitting.stock;
            frames = ready.fitting.frames;
            name = run.name;
        } else {
            RandomBrief brief = briefs.next();
            rider = brief.rider;
            riding = brief.riding;
            stock = brief.stock;
            frames = brief.frames;
            frames.push_back(briefs.next().frames.front());
            frames.back().model = "third";
        }
        const auto leads = [&](std::size_t count) {
            return firstLeads(advise(rider, riding, {},
                                     prepare(std::span(frames).first(count), {}, stock, tables()),
                                     tables()));
        };
        tally.add(leads(2) == leads(3) ? 0.0 : 1.0, 0.0, wordsOf(rider, name));
    }
    return tally;
}

struct Kept {
    Tally saddle;
    Tally reach;
};

/// A position ridden for years and liked, on a size of the rider's own with parts of the box, is
/// asked to be kept on that size with that box: what the advice changes of it.
inline Kept keptMoved(const std::vector<StudyRun>& runs, int bikes, unsigned seed)
{
    constexpr double saddleMm = 3.0, reachMm = 8.0;
    constexpr double leastKneeDeg = 26.0, mostKneeDeg = 48.0; // else it is doubted, and not kept
    RandomRiders random(seed);
    Kept kept;
    while (kept.saddle.tried < bikes) {
        const StudyRun& run = runs[random.below(runs.size())];
        const auto size = static_cast<int>(random.below(static_cast<std::size_t>(run.count())));
        Json json = fittingJson(run, Json::array({run.frames[size]}), Heights::Untold);
        const Ready ready(json);
        const Rider rider =
            random.rider(random.between(run.middle(size) - 50.0, run.middle(size) + 50.0));
        Rider another = rider; // what others like lies about what this body would be advised
        another.measurements[0].readings[0] += random.between(-30.0, 30.0);
        another.measurements[1].readings[0] += random.between(-15.0, 15.0);
        another.flexibility = static_cast<Flexibility>(random.below(3));
        const Setup ridden = ready.advice(another).candidates.front().best->setup;
        const Advice own = ready.advice(rider);
        const Angle knee = kneeAtBottom(own.person.body, tables().body, own.person.foothold,
                                        ridden.saddle, ridden.crankMm);
        if (knee.deg() < leastKneeDeg || knee.deg() > mostKneeDeg)
            continue;

        const std::string bar(std::array{
            "flat", "swept",
            "drop"}[static_cast<std::size_t>(ready.fitting.stock.bars[ridden.cockpit.bar].kind)]);
        json["stock"]["cranks_mm"] = Json::array({ridden.crankMm});
        json["stock"]["bars"] = Json::array({run.stock["bars"][ridden.cockpit.bar]});
        json["current"] = {{"use", keyOf(run.use)},
                           {"bar_kind", bar},
                           {"saddle_height_mm", ridden.saddle.heightMm},
                           {"saddle_setback_mm", ridden.saddle.setbackMm()},
                           {"grip_reach_mm", ridden.grip.x()},
                           {"grip_height_mm", ridden.grip.y()},
                           {"crank_mm", ridden.crankMm},
                           {"ridden", "years"},
                           {"comfortable", true}};
        json["choices"] = {{"position", "keep"}};
        const Setup given = Ready(json).advice(rider).candidates.front().best->setup;
        const auto reach = [](const Setup& setup) -> Point {
            return setup.grip - setup.saddle.point();
        };
        const std::string words = wordsOf(rider, run.name);
        kept.saddle.add((given.saddle.point() - ridden.saddle.point()).norm(), saddleMm, words);
        kept.reach.add((reach(given) - reach(ridden)).norm(), reachMm, words);
    }
    return kept;
}

} // namespace tripoise::test
