// SPDX-License-Identifier: MIT
//
// A whole fitting: the head of the document, its fields (document/field_table.h), and what must
// hold between them.
#include "document/agreement.h"
#include "document/field_table.h"
#include "document/head.h"
#include "document/put_back.h"
#include "document/read.h"

namespace tripoise {

using namespace document;

namespace {

constexpr std::string_view formatName = "tripoise.fitting";
constexpr std::size_t mostKeptBytes = 2'000'000; // leaves room for the rest within `mostBytes`

/// Parts of the document that are carried along.
void checkKept(const Kept& kept, Report& report)
{
    std::size_t bytes = 0;
    for (const KeptJson& piece : kept)
        bytes += piece.path.size() + piece.text.size();
    if (bytes <= mostKeptBytes)
        return;
    Problem problem = problemAt(ProblemCode::TooLarge, "", std::to_string(bytes));
    problem.high = static_cast<double>(mostKeptBytes);
    problem.unit = "bytes";
    report.add(std::move(problem));
}

/// What must hold between the fields of a whole fitting.
void checkBetween(const Fitting& fitting, const Tables& tables, Report& report)
{
    checkDifferent(fitting.frames, "/frames", report);
    checkParts(fitting, tables, report);
    checkTrialsSize(fitting, report);
}

Fitting readSections(Fields& root, const Tables& tables)
{
    Report& report = root.report();
    Fitting fitting;
    Kept kept;
    readRows(root, fitting, kept);
    if (report.rules().version == 1)
        raise(fitting, kept);
    if (report.demand() == Demand::Whole)
        checkBetween(fitting, tables, report);
    checkKept(kept, report);
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
    Report report({fittingVersion, &tables.tape});
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

Problems validate(const Fitting& fitting, const Tables& tables)
{
    Report report({fittingVersion, &tables.tape});
    checkRows(fitting, "", report);
    checkBetween(fitting, tables, report);
    return report.take();
}

std::string writeFitting(const Fitting& fitting)
{
    Json json{{"format", formatName}, {"version", fittingVersion}};
    json.update(jsonOf(fitting));
    for (const KeptJson& piece : fitting.kept)
        putBack(json, piece);
    const std::string text = textOf(json);
    return text.size() <= mostBytes ? text : compact(json);
}

} // namespace tripoise
