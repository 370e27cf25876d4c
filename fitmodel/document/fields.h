// SPDX-License-Identifier: MIT
//
// Reading the members of a JSON object by name. What is wrong is reported and reading goes on, so
// that one pass finds every problem. Null counts as absent.
#pragma once

#include "document/fitting.h"
#include "document/json_text.h"
#include "document/limits.h"
#include "document/words.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tripoise::document {

/// How much a document must hold.
enum class Demand {
    Whole, ///< all that a decision needs
    Draft, ///< whatever there is so far; what stands there must still be valid by itself
};

using Kept = std::vector<KeptJson>;

/// What a document is read by.
struct Rules {
    int version = fittingVersion;
    const TapeTable* tape = nullptr; ///< what can be believed of each measurement
};

/// Where problems gather.
class Report {
public:
    Report() = default;
    explicit Report(const Rules& rules) : m_rules(rules) {}

    [[nodiscard]] const Rules& rules() const { return m_rules; }
    void version(int version) { m_rules.version = version; }
    /// From here on. Of a draft, what is not there yet and what does not agree yet is no problem.
    void demand(Demand demand) { m_demand = demand; }
    [[nodiscard]] Demand demand() const { return m_demand; }
    /// Whether something is wrong at this path, in it, or with what it is in.
    [[nodiscard]] bool mentions(std::string_view path) const;
    void add(Problem problem);
    [[nodiscard]] bool empty() const { return m_problems.empty(); }
    [[nodiscard]] std::size_t size() const { return m_problems.size(); }
    /// A document that is wrong throughout is not described to the end.
    [[nodiscard]] bool full() const;
    [[nodiscard]] Problems take() { return std::move(m_problems); }

private:
    Problems m_problems;
    Rules m_rules;
    Demand m_demand = Demand::Whole;
};

[[nodiscard]] Problem problemAt(ProblemCode code, std::string path, std::string value = {});
[[nodiscard]] Problem missingAt(std::string path, const Limits& limits);
[[nodiscard]] Problem wrongType(const Json& json, std::string path, std::string_view wanted);

/// The number at a path, when it is one and within its limits.
[[nodiscard]] std::optional<double> numberAt(const Json& json, const std::string& path,
                                             const Limits& limits, Report& report);

// The same of values. False where something is wrong.
bool checkNumber(double value, const std::string& path, const Limits& limits, Report& report);
bool checkRange(const Range& range, const std::string& path, const Limits& limits, Report& report);
bool checkCount(std::size_t size, const std::string& path, const Count& count, Report& report);
bool checkDay(const std::string& text, const std::string& path, Report& report);
bool checkLength(const std::string& text, const std::string& path, std::size_t longest,
                 Report& report);

class Fields {
public:
    /// `json` must be an object and outlive this.
    Fields(const Json& json, std::string path, Report& report);

    /// The member, or nothing when absent or null. Every name asked for is known from then on.
    [[nodiscard]] const Json* find(std::string_view key);
    [[nodiscard]] const Json* need(std::string_view key);

    [[nodiscard]] std::optional<double> number(std::string_view key, const Limits& limits);
    /// 0 where missing or wrong, which is reported.
    [[nodiscard]] double needNumber(std::string_view key, const Limits& limits);
    /// One length, or a list of the two ends of an adjustable one.
    [[nodiscard]] std::optional<Range> range(std::string_view key, const Limits& limits);
    [[nodiscard]] std::string text(std::string_view key, std::size_t longest);
    /// The name of a size: a word, or a number as it is written.
    [[nodiscard]] std::string needSize(std::string_view key);
    [[nodiscard]] bool flag(std::string_view key, bool otherwise);
    [[nodiscard]] std::optional<Fields> object(std::string_view key);
    [[nodiscard]] std::optional<Fields> needObject(std::string_view key);
    /// The entries of a list; none where it is absent, of another type, or too short or long.
    [[nodiscard]] const Json::array_t& list(std::string_view key, const Count& count);
    [[nodiscard]] const Json::array_t& needList(std::string_view key, const Count& count);
    /// A list of texts; those that are wrong are reported and left out, empty ones left out.
    [[nodiscard]] std::vector<std::string> texts(std::string_view key, const Count& count,
                                                 std::size_t longest);
    /// A list of numbers; those that are wrong are reported and left out.
    [[nodiscard]] std::vector<double> numbers(std::string_view key, const Count& count,
                                              const Limits& limits);

    template <typename Value, std::size_t size>
    [[nodiscard]] std::optional<Value> word(std::string_view key,
                                            const Vocabulary<Value, size>& words)
    {
        const Json* json = find(key);
        if (!json)
            return std::nullopt;
        if (!json->is_string()) {
            report().add(wrongType(*json, pathOf(key), "text"));
            return std::nullopt;
        }
        if (auto value = valueOf(words, json->template get_ref<const std::string&>()))
            return value;
        Problem problem = problemAt(ProblemCode::NotOneOf, pathOf(key), shown(*json));
        for (const auto& entry : words)
            problem.names.emplace_back(entry.first);
        report().add(std::move(problem));
        return std::nullopt;
    }
    template <typename Value, std::size_t size>
    [[nodiscard]] std::optional<Value> needWord(std::string_view key,
                                                const Vocabulary<Value, size>& words)
    {
        if (find(key))
            return word(key, words);
        Problem problem = problemAt(ProblemCode::NotOneOf, pathOf(key));
        for (const auto& entry : words)
            problem.names.emplace_back(entry.first);
        report().add(std::move(problem));
        return std::nullopt;
    }

    void knows(std::string_view key);
    void missing(std::string_view key);
    /// A member that an earlier version had here; where it is now.
    void moved(std::string_view key, std::string_view to);
    /// Members that nobody asked for: each a problem, with the nearest names that exist.
    void refuseUnknown();
    /// Members that nobody asked for: kept as they are.
    void keepUnknown(std::vector<KeptJson>& kept) const;

    [[nodiscard]] const std::string& path() const { return m_path; }
    [[nodiscard]] std::string pathOf(std::string_view key) const { return joined(m_path, key); }
    [[nodiscard]] const Json::object_t& members() const;
    [[nodiscard]] Report& report() { return *m_report; }

private:
    [[nodiscard]] bool isKnown(std::string_view key) const;
    [[nodiscard]] const Json::array_t& entriesOf(const Json* json, std::string_view key,
                                                 const Count& count);

    const Json* m_json;
    std::string m_path;
    Report* m_report;
    std::vector<std::string_view> m_known; // names in the source, so they last
};

} // namespace tripoise::document
