// SPDX-License-Identifier: MIT
#include "document/fields.h"

#include "base/day.h"

#include "base/units.h"
#include "document/nearest.h"

#include <algorithm>
#include <array>

namespace tripoise::document {
namespace {

constexpr std::size_t mostProblems = 500;
constexpr std::size_t longestPath = 300;

struct OtherUnit {
    std::string_view wanted;
    std::string_view name;
    double factor;
};
// Units that a shop's notes are in, and how many of ours one of them is (exact by definition).
constexpr std::array otherUnits{OtherUnit{"mm", "cm", factsOf(Unit::Centimetre).size},
                                OtherUnit{"mm", "in", factsOf(Unit::Inch).size},
                                OtherUnit{"mm", "m", factsOf(Unit::Metre).size},
                                OtherUnit{"kg", "lb", factsOf(Unit::Pound).size}};

bool within(double value, const Limits& limits)
{
    return value >= limits.low && value <= limits.high;
}

const Json::array_t noEntries;

/// Whether a document is only unfinished. Nothing that stands in it is passed over.
bool isUnfinished(const Problem& problem)
{
    switch (problem.code) {
    case ProblemCode::Missing:
    case ProblemCode::Contradiction:
    case ProblemCode::Duplicate:
    case ProblemCode::NothingFits:
    case ProblemCode::TooManySetups: return true;
    case ProblemCode::NotOneOf: // without a value: a word that is missing; a key may be empty,
                                // though
        return problem.value.empty() && !problem.path.ends_with('/');
    case ProblemCode::TooFew:
    case ProblemCode::SharesSum: return problem.value == "0";
    default: return false;
    }
}

} // namespace

void Report::add(Problem problem)
{
    if (full() || (m_demand == Demand::Draft && isUnfinished(problem)))
        return;
    problem.path = shortened(problem.path, longestPath);
    m_problems.push_back(std::move(problem));
}

bool Report::mentions(std::string_view path) const
{
    const auto holds = [](std::string_view whole, std::string_view part) {
        return part.starts_with(whole)
               && (part.size() == whole.size() || part[whole.size()] == '/');
    };
    return std::any_of(m_problems.begin(), m_problems.end(), [&](const Problem& problem) {
        return holds(problem.path, path) || holds(path, problem.path);
    });
}

bool Report::full() const
{
    return m_problems.size() >= mostProblems;
}

Problem problemAt(ProblemCode code, std::string path, std::string value)
{
    return {.code = code,
            .path = std::move(path),
            .value = std::move(value),
            .low = {},
            .high = {},
            .unit = "",
            .names = {}};
}

Problem missingAt(std::string path, const Limits& limits)
{
    Problem problem = problemAt(ProblemCode::Missing, std::move(path));
    problem.low = limits.low;
    problem.high = limits.high;
    problem.unit = limits.unit;
    return problem;
}

Problem wrongType(const Json& json, std::string path, std::string_view wanted)
{
    Problem problem = problemAt(ProblemCode::WrongType, std::move(path), shown(json));
    problem.names.emplace_back(wanted);
    return problem;
}

namespace {

void limit(Problem& problem, const Limits& limits)
{
    problem.low = limits.low;
    problem.high = limits.high;
    problem.unit = limits.unit;
}

bool checkShown(double value, const std::string& path, const Limits& limits, Report& report,
                const Json* written)
{
    if (within(value, limits))
        return true;
    Problem problem =
        problemAt(ProblemCode::OutOfRange, path, shown(written ? *written : tidy(value)));
    for (const OtherUnit& other : otherUnits)
        if (other.wanted == limits.unit && value > 0.0 && within(value * other.factor, limits))
            problem.names.emplace_back(other.name);
    if (!problem.names.empty())
        problem.code = ProblemCode::UnitSlip;
    limit(problem, limits);
    report.add(std::move(problem));
    return false;
}

} // namespace

bool checkNumber(double value, const std::string& path, const Limits& limits, Report& report)
{
    return checkShown(value, path, limits, report, nullptr);
}

bool checkRange(const Range& range, const std::string& path, const Limits& limits, Report& report)
{
    if (range.low == range.high)
        return checkNumber(range.low, path, limits, report);
    const std::string first = joined(path, std::size_t{0});
    const std::string second = joined(path, std::size_t{1});
    const bool low = checkNumber(range.low, first, limits, report);
    const bool high = checkNumber(range.high, second, limits, report);
    if (range.low < range.high || !low || !high)
        return low && high;
    Problem problem = problemAt(ProblemCode::Contradiction, second, compact(tidy(range.high)));
    problem.low = range.low;
    problem.unit = limits.unit;
    problem.names.push_back(first);
    report.add(std::move(problem));
    return false;
}

bool checkCount(std::size_t size, const std::string& path, const Count& count, Report& report)
{
    if (size >= count.least && size <= count.most)
        return true;
    Problem problem = problemAt(size < count.least ? ProblemCode::TooFew : ProblemCode::TooMany,
                                path, std::to_string(size));
    problem.low = static_cast<double>(count.least);
    problem.high = static_cast<double>(count.most);
    report.add(std::move(problem));
    return false;
}

bool checkDay(const std::string& text, const std::string& path, Report& report)
{
    if (text.empty() || isDay(text))
        return true;
    report.add(problemAt(ProblemCode::NotADay, path, shortened(text, 60)));
    return false;
}

bool checkLength(const std::string& text, const std::string& path, std::size_t longest,
                 Report& report)
{
    if (text.size() <= longest)
        return true;
    Problem problem = problemAt(ProblemCode::TooLarge, path, shown(text));
    problem.high = static_cast<double>(longest);
    problem.unit = "bytes";
    report.add(std::move(problem));
    return false;
}

std::optional<double> numberAt(const Json& json, const std::string& path, const Limits& limits,
                               Report& report)
{
    if (!json.is_number()) {
        Problem problem = wrongType(json, path, "number");
        limit(problem, limits);
        report.add(std::move(problem));
        return std::nullopt;
    }
    const double value = json.get<double>();
    return checkShown(value, path, limits, report, &json) ? std::optional(value) : std::nullopt;
}

Fields::Fields(const Json& json, std::string path, Report& report)
    : m_json(&json), m_path(std::move(path)), m_report(&report)
{
}

const Json::object_t& Fields::members() const
{
    return m_json->get_ref<const Json::object_t&>();
}

void Fields::knows(std::string_view key)
{
    if (!isKnown(key))
        m_known.push_back(key);
}

const Json* Fields::find(std::string_view key)
{
    knows(key);
    for (const auto& [name, value] : members())
        if (name == key)
            return value.is_null() ? nullptr : &value;
    return nullptr;
}

const Json* Fields::need(std::string_view key)
{
    const Json* json = find(key);
    if (!json)
        missing(key);
    return json;
}

void Fields::missing(std::string_view key)
{
    report().add(problemAt(ProblemCode::Missing, pathOf(key)));
}

void Fields::moved(std::string_view key, std::string_view to)
{
    const Json* json = find(key);
    if (!json)
        return;
    Problem problem = problemAt(ProblemCode::Moved, pathOf(key), shown(*json));
    problem.names.emplace_back(to);
    report().add(std::move(problem));
}

std::optional<double> Fields::number(std::string_view key, const Limits& limits)
{
    const Json* json = find(key);
    return json ? numberAt(*json, pathOf(key), limits, report()) : std::nullopt;
}

double Fields::needNumber(std::string_view key, const Limits& limits)
{
    if (!find(key)) {
        report().add(missingAt(pathOf(key), limits));
        return 0.0;
    }
    return number(key, limits).value_or(0.0);
}

namespace {

/// Empty where it is none or too long, which is reported.
std::string textAt(const Json& json, const std::string& path, std::size_t longest, Report& report)
{
    if (!json.is_string()) {
        report.add(wrongType(json, path, "text"));
        return {};
    }
    const std::string& text = json.get_ref<const std::string&>();
    return checkLength(text, path, longest, report) ? text : std::string();
}

} // namespace

std::string Fields::text(std::string_view key, std::size_t longest)
{
    const Json* json = find(key);
    return json ? textAt(*json, pathOf(key), longest, report()) : std::string();
}

std::optional<Range> Fields::range(std::string_view key, const Limits& limits)
{
    const Json* json = find(key);
    if (!json || !json->is_array()) {
        const auto one = number(key, limits);
        return one ? std::optional(Range{*one, *one}) : std::nullopt;
    }
    const auto ends = numbers(key, {2, 2}, limits);
    if (ends.size() != 2)
        return std::nullopt;
    const Range range{ends[0], ends[1]};
    return checkRange(range, pathOf(key), limits, report()) ? std::optional(range) : std::nullopt;
}

std::string Fields::needSize(std::string_view key)
{
    const Json* json = need(key);
    if (!json)
        return {};
    if (json->is_number())
        return compact(*json);
    std::string size = text(key, longestName);
    if (json->is_string() && json->get_ref<const std::string&>().empty())
        missing(key);
    return size;
}

bool Fields::flag(std::string_view key, bool otherwise)
{
    const Json* json = find(key);
    if (!json)
        return otherwise;
    if (!json->is_boolean()) {
        report().add(wrongType(*json, pathOf(key), "true or false"));
        return otherwise;
    }
    return json->get<bool>();
}

std::optional<Fields> Fields::object(std::string_view key)
{
    const Json* json = find(key);
    if (!json)
        return std::nullopt;
    if (!json->is_object()) {
        report().add(wrongType(*json, pathOf(key), "object"));
        return std::nullopt;
    }
    return Fields(*json, pathOf(key), report());
}

std::optional<Fields> Fields::needObject(std::string_view key)
{
    return need(key) ? object(key) : std::nullopt;
}

const Json::array_t& Fields::entriesOf(const Json* json, std::string_view key, const Count& count)
{
    if (!json)
        return noEntries;
    if (!json->is_array()) {
        report().add(wrongType(*json, pathOf(key), "list"));
        return noEntries;
    }
    const auto& entries = json->get_ref<const Json::array_t&>();
    return checkCount(entries.size(), pathOf(key), count, report()) ? entries : noEntries;
}

const Json::array_t& Fields::list(std::string_view key, const Count& count)
{
    return entriesOf(find(key), key, count);
}

const Json::array_t& Fields::needList(std::string_view key, const Count& count)
{
    return entriesOf(need(key), key, count);
}

std::vector<std::string> Fields::texts(std::string_view key, const Count& count,
                                       std::size_t longest)
{
    const std::string listPath = pathOf(key);
    std::vector<std::string> values;
    const auto& entries = list(key, count);
    for (std::size_t i = 0; i < entries.size(); ++i)
        if (std::string text = textAt(entries[i], joined(listPath, i), longest, report());
            !text.empty())
            values.push_back(std::move(text));
    return values;
}

std::vector<double> Fields::numbers(std::string_view key, const Count& count, const Limits& limits)
{
    const std::string listPath = pathOf(key);
    std::vector<double> values;
    const auto& entries = list(key, count);
    for (std::size_t i = 0; i < entries.size(); ++i)
        if (const auto value = numberAt(entries[i], joined(listPath, i), limits, report()))
            values.push_back(*value);
    return values;
}

bool Fields::isKnown(std::string_view key) const
{
    return std::find(m_known.begin(), m_known.end(), key) != m_known.end();
}

void Fields::refuseUnknown()
{
    for (const auto& [name, value] : members()) {
        if (isKnown(name))
            continue;
        if (report().full())
            return;
        Problem problem = problemAt(ProblemCode::UnknownKey, pathOf(name), shown(value));
        problem.names = nearestOf(name, m_known);
        report().add(std::move(problem));
    }
}

void Fields::keepUnknown(std::vector<KeptJson>& kept) const
{
    for (const auto& [name, value] : members())
        if (!isKnown(name))
            kept.push_back({pathOf(name), compact(value)});
}

} // namespace tripoise::document
