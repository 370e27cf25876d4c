// SPDX-License-Identifier: MIT
//
// Invented runs of sizes with their makers' rider heights (tests/study/runs), and the advice on
// them. What a maker says of riders is read here, so that it can be held against the advice whether
// or not the advice was told it.
#pragma once

#include "support.h"

#include "advice/advise.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <random>
#include <vector>

namespace tripoise::test {

using Json = nlohmann::json;

inline Json jsonOf(const QString& path)
{
    return Json::parse(textOf(QStringLiteral(TRIPOISE_TEST_FOLDER "/%1").arg(path)));
}

/// A run of sizes as it is ridden: one use, a box of parts as shops keep for it.
struct StudyRun {
    std::string name;
    Use use;
    Json frames; ///< as in a fitting
    Json stock;
    std::vector<Range> heights; ///< stature of each size's riders, by the maker

    [[nodiscard]] int count() const { return static_cast<int>(heights.size()); }
    /// Stature of the middle of a size's riders.
    [[nodiscard]] double middle(int size) const
    {
        const Range& range = heights[static_cast<std::size_t>(size)];
        return 0.5 * (range.low + range.high);
    }
    /// How far a stature lies outside a size's riders, negative where they are taller; 0 inside.
    [[nodiscard]] double beyond(int size, double stature) const
    {
        const Range& range = heights[static_cast<std::size_t>(size)];
        return stature < range.low ? stature - range.low : std::max(0.0, stature - range.high);
    }
    [[nodiscard]] bool holds(int size, double stature) const { return beyond(size, stature) == 0; }
    /// The size a stature asks for, between the middles of the makers' ranges.
    [[nodiscard]] double asked(double stature) const
    {
        int i = 0;
        while (i + 2 < count() && stature > middle(i + 1))
            ++i;
        const double place = i + (stature - middle(i)) / (middle(i + 1) - middle(i));
        return std::clamp(place, 0.0, static_cast<double>(count() - 1));
    }
    [[nodiscard]] bool inside(double stature) const
    {
        return stature >= heights.front().low && stature <= heights.back().high;
    }
    /// Sizes between a named one and the nearest whose riders have this stature.
    [[nodiscard]] int sizesOff(int named, double stature) const
    {
        int off = count();
        for (int i = 0; i < count(); ++i)
            if (holds(i, stature))
                off = std::min(off, std::abs(named - i));
        return off;
    }
};

inline std::vector<StudyRun> studyRuns()
{
    struct Row {
        const char* file;
        Use use;
        const char* box;
    };
    const Json boxes = jsonOf(QStringLiteral("practice/boxes.json"));
    std::vector<StudyRun> runs;
    for (const Row& row :
         {Row{"osierbank", Use::Road, "road"}, Row{"chalkrigg", Use::Gravel, "gravel"},
          Row{"farrowmere", Use::Touring, "touring"}, Row{"tallowgate", Use::FastCommuting, "flat"},
          Row{"almsbridge", Use::Commuting, "upright flat"},
          Row{"almsbridge", Use::City, "upright"}}) {
        const Json model =
            jsonOf(QStringLiteral("study/runs/%1.json").arg(QLatin1String(row.file)));
        StudyRun run{std::string(keyOf(row.use)), row.use, model["sizes"], boxes[row.box], {}};
        for (Json& frame : run.frames) {
            frame["model"] = model["model"];
            run.heights.push_back({frame["rider_height_mm"][0], frame["rider_height_mm"][1]});
        }
        runs.push_back(std::move(run));
    }
    return runs;
}

enum class Heights { Told, Untold };

/// A fitting of some sizes of a run; the rider is whoever is put into it.
inline Json fittingJson(const StudyRun& run, Json frames, Heights heights)
{
    if (heights == Heights::Untold)
        for (Json& frame : frames)
            frame.erase("rider_height_mm");
    return {{"format", "tripoise.fitting"},
            {"version", 1},
            {"rider", {{"measurements", {{"stature_mm", 1750}, {"inseam_mm", 835}}}}},
            {"riding", {{"mix", {{keyOf(run.use), 1}}}}},
            {"frames", std::move(frames)},
            {"stock", run.stock}};
}

/// A fitting made ready to be decided for any number of riders.
struct Ready {
    Fitting fitting;
    Prepared prepared;

    explicit Ready(const Json& json)
    {
        auto read = readFitting(json.dump(), tables());
        if (const auto* problems = std::get_if<Problems>(&read))
            throw std::runtime_error("fitting: " + problems->front().path);
        fitting = std::get<Fitting>(std::move(read));
        prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables());
    }

    [[nodiscard]] Advice advice(const Rider& rider) const
    {
        return advise(rider, fitting.riding, fitting.current, prepared, tables(), {},
                      fitting.choices.position);
    }
};

/// The size that is named, as an index into the fitting's frames; nothing where none is.
inline std::optional<int> namedSize(const Advice& advice)
{
    if (!advice.solved || !advice.anyFits())
        return std::nullopt;
    return static_cast<int>(advice.leading().size);
}

/// A rider of whom stature and inseam are told; the inseam so many standard deviations from what
/// goes with the stature.
inline Rider riderOf(Sex sex, double stature, double inseamSds)
{
    const Posterior body = infer(std::vector<Measurement>{{Quantity::Stature, {stature}, {}}}, sex,
                                 tables().populations, tables().tape);
    const double inseam =
        body.valueOf(Quantity::Inseam) + inseamSds * body.sdOf(rowOf(Quantity::Inseam));
    Rider rider;
    rider.sex = sex;
    rider.measurements = {{Quantity::Stature, {stature}, {}}, {Quantity::Inseam, {inseam}, {}}};
    return rider;
}

} // namespace tripoise::test
