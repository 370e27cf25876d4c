// SPDX-License-Identifier: MIT
#include "document/agreement.h"

#include "advice/prepare.h"
#include "cockpit/cockpits.h"
#include "document/field_table.h"
#include "document/lacks.h"

#include <algorithm>
#include <map>
#include <set>

namespace tripoise::document {

// ---- one size

void FieldTable<Geometry>::agree(const Geometry& geometry, const std::string& path, Report& report)
{
    const std::string seatAngle = joined(path, "seat_angle_deg");
    const std::string topTube = joined(path, "top_tube_effective_mm");
    if (!geometry.seatAngleDeg && !geometry.topTubeEffectiveMm && !report.mentions(seatAngle)
        && !report.mentions(topTube)) {
        Problem problem = missingAt(seatAngle, rowOf(&Geometry::seatAngleDeg).limits);
        problem.names.emplace_back("top_tube_effective_mm"); // would do as well
        report.add(std::move(problem));
    }
    if (geometry.frontCentreMm && geometry.wheelbaseMm
        && *geometry.frontCentreMm >= *geometry.wheelbaseMm) {
        Problem problem = problemAt(ProblemCode::Contradiction, joined(path, "front_centre_mm"),
                                    compact(tidy(*geometry.frontCentreMm)));
        problem.high = *geometry.wheelbaseMm;
        problem.unit = "mm";
        problem.names.push_back(joined(path, "wheelbase_mm"));
        report.add(std::move(problem));
    }
}

void FieldTable<Geometry>::describe(Json& schema)
{
    Json either = Json::array();
    for (const char* key : {"seat_angle_deg", "top_tube_effective_mm"})
        either.push_back({{"required", {key}}, {"properties", {{key, {{"type", "number"}}}}}});
    schema["anyOf"] = std::move(either);
}

// ---- visits

/// Not before the one before it, nor before the bicycle was built.
void FieldTable<Fitting>::agree(const Fitting& fitting, const std::string& path, Report& report)
{
    std::string at = joined(joined(path, "as_built"), "date");
    std::string latest = fitting.asBuilt ? fitting.asBuilt->date : std::string();
    for (std::size_t i = 0; i < fitting.visits.size(); ++i) {
        const std::string& date = fitting.visits[i].date;
        const std::string here = joined(joined(joined(path, "visits"), i), "date");
        if (date.empty())
            continue;
        if (date < latest) {
            Problem problem = problemAt(ProblemCode::DayTooEarly, here, date);
            problem.names = {at, latest};
            report.add(std::move(problem));
        }
        latest = date;
        at = here;
    }
}

// ---- sizes

void checkDifferent(const std::vector<FrameSize>& frames, const std::string& path, Report& report)
{
    std::map<std::pair<std::string, std::string>, std::size_t> seen;
    for (std::size_t i = 0; i < frames.size(); ++i) {
        const FrameSize& frame = frames[i];
        if (frame.size.empty())
            continue;
        const auto [first, isNew] = seen.try_emplace({frame.model, frame.size}, i);
        if (isNew)
            continue;
        Problem problem = problemAt(ProblemCode::Duplicate, joined(path, i),
                                    shortened(frame.model + ' ' + frame.size, 60));
        problem.names.push_back(joined(path, first->second));
        report.add(std::move(problem));
    }
}

// ---- parts

namespace {

std::string listed(const std::set<double>& diameters)
{
    std::string result;
    for (const double mm : diameters)
        result += (result.empty() ? "" : ", ") + compact(tidy(mm));
    return shortened(result, 60);
}

/// Some stem in stock must join some frame's steerer to some bar, and not too many do.
void checkJoints(const Fitting& fitting, const Tables& tables, Report& report)
{
    const std::vector<Bar> bars = barsFor(fitting.stock, fitting.bicycle);
    std::set<double> steerersMm;
    for (const FrameSize& frame : fitting.frames) {
        const Steerer steerer = steererOf(frame, tables.frame);
        steerersMm.insert(steerer.quillMm.value_or(steerer.outsideMm));
    }
    std::set<double> clampsMm;
    for (const Bar& bar : bars)
        clampsMm.insert(bar.barClampMm.value_or(tables.parts.barClampMm));
    const auto fits = [&](const Stem& stem) {
        return std::any_of(fitting.frames.begin(), fitting.frames.end(),
                           [&](const FrameSize& frame) {
                               const Steerer steerer = steererOf(frame, tables.frame);
                               return steererMatches(stem, steerer, tables.parts)
                                      || adapted(stem, steerer, tables.parts);
                           })
               && std::any_of(bars.begin(), bars.end(),
                              [&](const Bar& bar) { return clampsMatch(stem, bar, tables.parts); });
    };
    std::set<std::string> stems;
    for (const Stem& stem : fitting.stock.stems) {
        if (!stem.inStock)
            continue;
        if (fits(stem)) {
            if (auto tooMany =
                    tooManySetups(fitting.frames, fitting.bicycle, fitting.stock, tables))
                report.add(std::move(*tooMany));
            return;
        }
        const double steererMm =
            stem.quillMm.value_or(stem.steererMm.value_or(tables.parts.stemSteererMm));
        stems.insert(compact(tidy(steererMm)) + "/"
                     + compact(tidy(stem.barClampMm.value_or(tables.parts.barClampMm))));
    }
    if (stems.empty()) {
        Problem problem = problemAt(ProblemCode::TooFew, "/stock/stems", "0");
        problem.low = 1.0;
        problem.names.emplace_back("in_stock");
        report.add(std::move(problem));
        return;
    }
    std::string found;
    for (const std::string& pair : stems)
        found += (found.empty() ? "" : ", ") + pair;
    Problem problem = problemAt(ProblemCode::NothingFits, "/stock/stems", shortened(found, 60));
    problem.unit = "mm";
    problem.names = {listed(steerersMm), listed(clampsMm)};
    report.add(std::move(problem));
}

} // namespace

void checkParts(const Fitting& fitting, const Tables& tables, Report& report)
{
    const Stock& stock = fitting.stock;
    const Limits& crank = rowOf(&Bicycle::crankMm).limits;
    const std::string cranks = "/stock/cranks_mm";
    if (!fitting.bicycle.crankMm && stock.cranksMm.empty() && !report.mentions(cranks)
        && !report.mentions("/bicycle/crank_mm"))
        report.add(missingAt(cranks, crank));
    if (!stock.bars.empty() && barsFor(stock, fitting.bicycle).empty()
        && !report.mentions("/stock/bars")) {
        Problem problem = problemAt(ProblemCode::TooFew, "/stock/bars", "0");
        problem.low = 1.0;
        problem.names.emplace_back(wordOf(barKindWords, *fitting.bicycle.barKind));
        report.add(std::move(problem));
    }
    if (!fitting.frames.empty() && !report.mentions("/frames") && !report.mentions("/stock"))
        checkJoints(fitting, tables, report);
}

// ---- choices

void checkTrialsSize(const Fitting& fitting, Report& report)
{
    const auto& trial = fitting.choices.trial;
    const auto& size = fitting.choices.size;
    if (!trial || fitting.frames.empty())
        return;
    if (trial->chosen ? !size || trial->on() == *size : trialFrame(fitting).has_value())
        return;
    const auto nameOf = [](const auto& frame) {
        return shortened(frame.model.empty() ? frame.size : frame.model + ' ' + frame.size, 60);
    };
    Problem problem = problemAt(
        ProblemCode::NotOneOf, trial->chosen ? "/choices/setup" : "/choices/trial", nameOf(*trial));
    if (trial->chosen)
        problem.names.push_back(nameOf(*size));
    else
        for (const FrameSize& frame : fitting.frames)
            problem.names.push_back(nameOf(frame));
    report.add(std::move(problem));
}

} // namespace tripoise::document
