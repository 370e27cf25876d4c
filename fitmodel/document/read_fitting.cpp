// SPDX-License-Identifier: MIT
//
// A whole fitting: the head of the document, its sections, and what only holds between them.
#include "advice/prepare.h"
#include "cockpit/cockpits.h"
#include "document/head.h"
#include "document/lacks.h"
#include "document/read.h"
#include "document/sections.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace tripoise {

using namespace document;

namespace {

constexpr std::string_view formatName = "tripoise.fitting";
constexpr std::size_t mostKeptBytes = 2'000'000; // leaves room for the rest within `mostBytes`

std::string diameter(double mm)
{
    return compact(tidy(mm));
}

std::string listed(const std::set<double>& diameters)
{
    std::string result;
    for (const double mm : diameters)
        result += (result.empty() ? "" : ", ") + diameter(mm);
    return shortened(result, 60);
}

/// Some stem in stock must join some frame's steerer to some bar, and not too many do.
void checkParts(const Fitting& fitting, const Tables& tables, Report& report)
{
    const Stock& stock = fitting.stock;
    const auto fits = [&](const Stem& stem) {
        return std::any_of(fitting.frames.begin(), fitting.frames.end(),
                           [&](const FrameSize& frame) {
                               const Steerer steerer = steererOf(frame, tables.frame);
                               return steererMatches(stem, steerer, tables.parts)
                                      || adapted(stem, steerer, tables.parts);
                           })
               && std::any_of(stock.bars.begin(), stock.bars.end(),
                              [&](const Bar& bar) { return clampsMatch(stem, bar, tables.parts); });
    };
    std::set<std::string> stems;
    for (const Stem& stem : stock.stems) {
        if (!stem.inStock)
            continue;
        if (fits(stem)) {
            if (auto tooMany = tooManySetups(fitting.frames, stock, tables))
                report.add(std::move(*tooMany));
            return;
        }
        stems.insert(
            diameter(stem.quillMm.value_or(stem.steererMm.value_or(tables.parts.stemSteererMm)))
            + "/" + diameter(stem.barClampMm.value_or(tables.parts.barClampMm)));
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
    std::set<double> steerers;
    for (const FrameSize& frame : fitting.frames) {
        const Steerer steerer = steererOf(frame, tables.frame);
        steerers.insert(steerer.quillMm.value_or(steerer.outsideMm));
    }
    std::set<double> clamps;
    for (const Bar& bar : stock.bars)
        clamps.insert(bar.barClampMm.value_or(tables.parts.barClampMm));
    Problem problem = problemAt(ProblemCode::NothingFits, "/stock/stems", shortened(found, 60));
    problem.unit = "mm";
    problem.names = {listed(steerers), listed(clamps)};
    report.add(std::move(problem));
}

/// A trial is of a size that is there, a set-up that was chosen of the size that was chosen.
void checkTrial(const Fitting& fitting, Report& report)
{
    const auto& [trial, size] = std::tie(fitting.choices.trial, fitting.choices.size);
    if (!trial || fitting.frames.empty())
        return;
    if (trial->chosen ? !size || trial->on() == *size : trialFrame(fitting).has_value())
        return;
    const auto nameOf = [](const auto& frame) {
        return frame.model.empty() ? frame.size : frame.model + ' ' + frame.size;
    };
    Problem problem =
        problemAt(ProblemCode::NotOneOf, trial->chosen ? "/choices/setup" : "/choices/trial",
                  shortened(nameOf(*trial), 60));
    if (trial->chosen)
        problem.names.push_back(shortened(nameOf(*size), 60));
    else
        for (const FrameSize& frame : fitting.frames)
            problem.names.push_back(shortened(nameOf(frame), 60));
    report.add(std::move(problem));
}

/// Parts of the document that are carried along.
void keepWhole(Fields& root, Kept& kept)
{
    const Json* visits = root.find("visits");
    if (visits && visits->is_array())
        kept.push_back({root.pathOf("visits"), compact(*visits)});
    else if (visits)
        root.report().add(wrongType(*visits, root.pathOf("visits"), "list"));
    root.keepUnknown(kept);

    std::size_t bytes = 0;
    for (const KeptJson& piece : kept)
        bytes += piece.path.size() + piece.text.size();
    if (bytes > mostKeptBytes) {
        Problem problem = problemAt(ProblemCode::TooLarge, "", std::to_string(bytes));
        problem.high = static_cast<double>(mostKeptBytes);
        problem.unit = "bytes";
        root.report().add(std::move(problem));
    }
}

Fitting readSections(Fields& root, const Tables& tables)
{
    Report& report = root.report();
    Fitting fitting;
    Kept kept;
    if (auto rider = root.needObject("rider"))
        fitting.rider = readRider(std::move(*rider), tables.tape, kept);
    if (auto riding = root.needObject("riding"))
        fitting.riding = readRiding(std::move(*riding), kept);
    const std::size_t before = report.size();
    fitting.frames = readFrames(root, "frames", kept);
    if (auto stock = root.needObject("stock"))
        fitting.stock = readStock(std::move(*stock));
    if (report.size() == before && !fitting.frames.empty())
        checkParts(fitting, tables, report);
    if (auto current = root.object("current"))
        fitting.current = readCurrent(std::move(*current), kept);
    if (auto choices = root.object("choices"))
        fitting.choices = readChoices(std::move(*choices), kept);
    if (report.demand() == Demand::Whole)
        checkTrial(fitting, report);
    keepWhole(root, kept);
    fitting.kept = std::move(kept);
    return fitting;
}

struct Outcome {
    Fitting fitting;
    Problems problems;
    std::optional<Head> head; ///< nothing where the text is no JSON object
};

Outcome readAs(std::string_view text, const Tables& tables, Demand demand, bool newerToo)
{
    auto parsed = parseJson(text);
    if (auto* problems = std::get_if<Problems>(&parsed))
        return {{}, std::move(*problems), {}};
    const Json& json = std::get<Json>(parsed);
    if (!json.is_object())
        return {{}, {wrongType(json, "", "object")}, {}};
    Report report;
    Fields root(json, "", report);
    Outcome outcome;
    outcome.head = readHead(root, formatName, fittingVersion);
    if (outcome.head == Head::Readable || (newerToo && outcome.head == Head::Newer)) {
        report.demand(demand);
        outcome.fitting = readSections(root, tables);
    }
    outcome.problems = report.take();
    return outcome;
}

std::variant<Fitting, Problems> wholeOf(Outcome outcome)
{
    if (outcome.problems.empty())
        return std::move(outcome.fitting);
    return std::move(outcome.problems);
}

} // namespace

std::variant<Fitting, Problems> readFitting(std::string_view text, const Tables& tables)
{
    return wholeOf(readAs(text, tables, Demand::Whole, false));
}

std::variant<Fitting, Problems> readDraft(std::string_view text, const Tables& tables)
{
    return wholeOf(readAs(text, tables, Demand::Draft, false));
}

std::optional<Fitting> readNewer(std::string_view text, const Tables& tables)
{
    Outcome outcome = readAs(text, tables, Demand::Draft, true);
    if (outcome.head != Head::Newer)
        return std::nullopt;
    return std::move(outcome.fitting);
}

} // namespace tripoise
