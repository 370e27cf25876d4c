// SPDX-License-Identifier: MIT
//
// A whole fitting: the head of the document, its sections, and what only holds between them.
#include "cockpit/cockpits.h"
#include "document/read.h"
#include "document/sections.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace tripoise {
namespace {

constexpr std::string_view formatName = "tripoise.fitting";
constexpr Count frameCount{1, 60};
constexpr std::size_t mostKeptBytes = 2'000'000; // leaves room for the rest within `mostBytes`

/// Whether the document is a fitting of a version that can be read. Reports why not.
bool readHead(Fields& root)
{
    const Json* format = root.find("format");
    if (!format) {
        Problem problem = problemAt(ProblemCode::NotOneOf, root.pathOf("format"));
        problem.names.emplace_back(formatName);
        root.report().add(std::move(problem));
    } else if (!format->is_string()) {
        root.report().add(wrongType(*format, root.pathOf("format"), "text"));
    } else if (format->get_ref<const std::string&>() != formatName) {
        Problem problem =
            problemAt(ProblemCode::WrongFormat, root.pathOf("format"), shown(*format));
        problem.names.emplace_back(formatName);
        root.report().add(std::move(problem));
        return false; // the rest follows other rules
    }
    const Json* version = root.find("version");
    if (!version) {
        root.missing("version", {1.0, fittingVersion, {}});
        return true;
    }
    const double number = version->is_number() ? version->get<double>() : 0.5;
    const std::string path = root.pathOf("version");
    Problem problem;
    if (number != std::floor(number))
        problem = wrongType(*version, path, "integer");
    else if (number > fittingVersion)
        problem = problemAt(ProblemCode::NewerVersion, path, shown(*version));
    else if (number < 1.0)
        problem = problemAt(ProblemCode::OutOfRange, path, shown(*version));
    else
        return true;
    problem.low = 1.0;
    problem.high = fittingVersion;
    const bool newer = problem.code == ProblemCode::NewerVersion;
    root.report().add(std::move(problem));
    return !newer;
}

std::vector<FrameSize> readFrames(Fields& root, Kept& kept)
{
    std::vector<FrameSize> frames;
    std::map<std::pair<std::string, std::string>, std::string> seen;
    const auto& entries = root.needList("frames", frameCount);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::string path = joined(root.pathOf("frames"), i);
        if (!entries[i].is_object()) {
            root.report().add(wrongType(entries[i], path, "object"));
            continue;
        }
        frames.push_back(readFrame(Fields(entries[i], path, root.report()), kept));
        const FrameSize& frame = frames.back();
        if (frame.size.empty())
            continue;
        const auto [first, isNew] = seen.try_emplace({frame.model, frame.size}, path);
        if (isNew)
            continue;
        Problem problem =
            problemAt(ProblemCode::Duplicate, path, shortened(frame.model + ' ' + frame.size, 60));
        problem.names.push_back(first->second);
        root.report().add(std::move(problem));
    }
    return frames;
}

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

/// Some stem in stock must join some frame's steerer to some bar.
void checkParts(const Fitting& fitting, const Tables& tables, Report& report)
{
    const Stock& stock = fitting.stock;
    const auto steererOf = [&](const FrameSize& frame) {
        return frame.headset.steererMm.value_or(tables.frame.steererMm);
    };
    const auto fits = [&](const Stem& stem) {
        return std::any_of(fitting.frames.begin(), fitting.frames.end(),
                           [&](const FrameSize& frame) {
                               return steererMatches(stem, steererOf(frame), tables.parts);
                           })
               && std::any_of(stock.bars.begin(), stock.bars.end(),
                              [&](const Bar& bar) { return clampsMatch(stem, bar, tables.parts); });
    };
    std::set<std::string> stems;
    for (const Stem& stem : stock.stems) {
        if (!stem.inStock)
            continue;
        if (fits(stem))
            return;
        stems.insert(diameter(stem.steererMm.value_or(tables.parts.stemSteererMm)) + "/"
                     + diameter(stem.barClampMm.value_or(tables.parts.barClampMm)));
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
    for (const FrameSize& frame : fitting.frames)
        steerers.insert(steererOf(frame));
    std::set<double> clamps;
    for (const Bar& bar : stock.bars)
        clamps.insert(bar.barClampMm.value_or(tables.parts.barClampMm));
    Problem problem = problemAt(ProblemCode::NothingFits, "/stock/stems", shortened(found, 60));
    problem.unit = "mm";
    problem.names = {listed(steerers), listed(clamps)};
    report.add(std::move(problem));
}

/// Parts of the document that are carried along.
void keepWhole(Fields& root, Kept& kept)
{
    if (const auto choices = root.object("choices"))
        kept.push_back({root.pathOf("choices"), compact(*root.find("choices"))});
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

} // namespace

std::variant<Fitting, Problems> readFitting(std::string_view text, const Tables& tables)
{
    const auto parsed = parseJson(text);
    if (const auto* problems = std::get_if<Problems>(&parsed))
        return *problems;
    const Json& json = std::get<Json>(parsed);
    if (!json.is_object())
        return Problems{wrongType(json, "", "object")};

    Report report;
    Fields root(json, "", report);
    if (!readHead(root))
        return report.take();
    Fitting fitting;
    if (auto rider = root.needObject("rider"))
        fitting.rider = readRider(std::move(*rider), tables.tape, fitting.kept);
    if (auto riding = root.needObject("riding"))
        fitting.riding = readRiding(std::move(*riding), fitting.kept);
    const std::size_t before = report.size();
    fitting.frames = readFrames(root, fitting.kept);
    if (auto stock = root.needObject("stock"))
        fitting.stock = readStock(std::move(*stock));
    if (report.size() == before && !fitting.frames.empty())
        checkParts(fitting, tables, report);
    if (auto current = root.object("current"))
        fitting.current = readCurrent(std::move(*current), fitting.kept);
    keepWhole(root, fitting.kept);
    if (!report.empty())
        return report.take();
    return fitting;
}

} // namespace tripoise
