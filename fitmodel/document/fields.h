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

/// Where problems gather.
class Report {
public:
    /// From here on. Of a draft, what is not there yet and what does not agree yet is no problem.
    void demand(Demand demand) { m_demand = demand; }
    [[nodiscard]] Demand demand() const { return m_demand; }
    void add(Problem problem);
    [[nodiscard]] bool empty() const { return m_problems.empty(); }
    [[nodiscard]] std::size_t size() const { return m_problems.size(); }
    /// A document that is wrong throughout is not described to the end.
    [[nodiscard]] bool full() const;
    [[nodiscard]] Problems take() { return std::move(m_problems); }

private:
    Problems m_problems;
    Demand m_demand = Demand::Whole;
};

[[nodiscard]] Problem problemAt(ProblemCode code, std::string path, std::string value = {});
[[nodiscard]] Problem wrongType(const Json& json, std::string path, std::string_view wanted);

/// The number at a path, when it is one and within its limits.
[[nodiscard]] std::optional<double> numberAt(const Json& json, const std::string& path,
                                             const Limits& limits, Report& report);

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
    [[nodiscard]] std::string text(std::string_view key, std::size_t longest);
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
    void missing(std::string_view key, const Limits& limits);
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
