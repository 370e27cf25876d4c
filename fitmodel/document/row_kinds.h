// SPDX-License-Identifier: MIT
//
// A document's objects in rows: one for each key, with the member it stands for and what can be
// believed of it. Reading, writing, checking values, what is known, the JSON schema and the forms
// of the window all come from these rows, so that a field is described once
// (document/field_table.h).
//
// A row of any kind has `key`, `needed`, and
//
//     read(Fields&, Whole&, Kept&)             out of a document's object
//     write(const Whole&, Json&)               into one; what is as by default is left out
//     schema(const TapeTable&)                 as JSON Schema (draft 7) says it
//
// and where there is something to do
//
//     check(const Whole&, path, Report&)       of a value: missing, outside its limits
//     lay(Whole& under, const Whole& over)     what is stated over what was there
#pragma once

#include "document/fields.h"
#include "document/schema.h"
#include "document/write_json.h"

#include <tuple>
#include <type_traits>

namespace tripoise::document {

/// Specialised for each object of a document: `rows`, a tuple; `refusesUnknown`; where its fields
/// must agree with each other `agree(const Whole&, path, Report&)`, and where that can be said in a
/// schema `describe(Json&)`.
template <typename Whole> struct FieldTable;

template <typename Whole> void readRows(Fields& fields, Whole& whole, Kept& kept);
template <typename Whole> [[nodiscard]] Json jsonOf(const Whole& whole);
template <typename Whole>
void checkRows(const Whole& whole, const std::string& path, Report& report);
template <typename Whole> void layRows(Whole& under, const Whole& over);
template <typename Whole> [[nodiscard]] Json schemaOf(const TapeTable& tape, bool needed = true);

template <typename Whole, typename Act> void eachRow(Act&& act)
{
    std::apply([&](const auto&... row) { (act(row), ...); }, FieldTable<Whole>::rows);
}

template <typename Value> inline constexpr bool isOptional = false;
template <typename Value> inline constexpr bool isOptional<std::optional<Value>> = true;

/// What is there where it is there.
template <typename Value> struct Inside {
    using Type = Value;
};
template <typename Value> struct Inside<std::optional<Value>> {
    using Type = Value;
};

/// How a number is typed into a field.
struct Typed {
    double step = 1.0;
    int decimals = 1;
};

/// A number, an angle in degrees, or one length and the two ends of an adjustable one. A plain
/// number that may not be 0 is missing while it is.
template <typename Whole, typename Value> struct NumberRow {
    std::string_view key;
    Value Whole::*member;
    Limits limits;
    Typed typed;
    std::string_view about;
    bool needed = !isOptional<Value>;

    static constexpr bool isRange = std::is_same_v<Value, std::optional<Range>>;

    [[nodiscard]] std::optional<double> get(const Whole& whole) const
    {
        const Value& value = whole.*member;
        if constexpr (std::is_same_v<Value, Angle>)
            return degreesOf(value);
        else if constexpr (std::is_same_v<Value, double>)
            return value != 0.0 || (limits.low <= 0.0 && limits.high >= 0.0) ? std::optional(value)
                                                                             : std::nullopt;
        else
            return value;
    }
    void set(Whole& whole, std::optional<double> value) const
    {
        if constexpr (std::is_same_v<Value, Angle>)
            whole.*member = Angle::degrees(value.value_or(0.0));
        else if constexpr (std::is_same_v<Value, double>)
            whole.*member = value.value_or(0.0);
        else
            whole.*member = value;
    }

    void read(Fields& fields, Whole& whole, Kept&) const
    {
        if constexpr (isRange)
            whole.*member = fields.range(key, limits);
        else if (needed)
            set(whole, fields.needNumber(key, limits));
        else
            set(whole, fields.number(key, limits));
    }
    void write(const Whole& whole, Json& json) const
    {
        if constexpr (isRange) {
            if (const auto& range = whole.*member)
                json[key] = range->low == range->high ? tidy(range->low)
                                                      : numbers({range->low, range->high});
        } else {
            if (const auto value = get(whole))
                json[key] = tidy(*value);
        }
    }
    void check(const Whole& whole, const std::string& path, Report& report) const
    {
        if constexpr (isRange) {
            if (const auto& range = whole.*member)
                checkRange(*range, joined(path, key), limits, report);
        } else if (const auto value = get(whole)) {
            checkNumber(*value, joined(path, key), limits, report);
        } else if (needed) {
            report.add(missingAt(joined(path, key), limits));
        }
    }
    void lay(Whole& under, const Whole& over) const
    {
        if constexpr (isRange) {
            if (over.*member)
                under.*member = over.*member;
        } else if (get(over)) {
            under.*member = over.*member;
        }
    }
    [[nodiscard]] Json schema(const TapeTable&) const
    {
        if constexpr (isRange)
            return {{"description", about},
                    {"anyOf",
                     {numberSchema(limits, false, {}),
                      listSchema(numberSchema(limits, true, {}), {2, 2}, true)}}};
        else
            return numberSchema(limits, needed, about);
    }
};

template <typename Whole, typename Value>
constexpr NumberRow<Whole, Value> number(std::string_view key, Value Whole::*member,
                                         const Limits& limits, Typed typed = {},
                                         std::string_view about = {})
{
    return {key, member, limits, typed, about};
}
/// 0 where it is not stated.
template <typename Whole>
constexpr NumberRow<Whole, double> numberOrZero(std::string_view key, double Whole::*member,
                                                const Limits& limits)
{
    return {key, member, limits, {}, {}, false};
}

/// One of some words. A value that is no std::optional is needed, or has a default.
template <typename Whole, typename Value, typename Words> struct WordRow {
    std::string_view key;
    Value Whole::*member;
    const Words* words;
    bool needed = false;

    void read(Fields& fields, Whole& whole, Kept&) const
    {
        const auto word = needed ? fields.needWord(key, *words) : fields.word(key, *words);
        if constexpr (isOptional<Value>)
            whole.*member = word;
        else
            whole.*member = word.value_or(Whole{}.*member);
    }
    void write(const Whole& whole, Json& json) const
    {
        if constexpr (isOptional<Value>) {
            if (whole.*member)
                json[key] = wordOf(*words, *(whole.*member));
        } else if (needed || whole.*member != Whole{}.*member) {
            json[key] = wordOf(*words, whole.*member);
        }
    }
    void lay(Whole& under, const Whole& over) const
    {
        if (over.*member != Whole{}.*member)
            under.*member = over.*member;
    }
    [[nodiscard]] Json schema(const TapeTable&) const
    {
        Json names = Json::array();
        for (const auto& entry : *words)
            names.push_back(entry.first);
        if (!needed)
            names.push_back(nullptr);
        return {{"enum", std::move(names)}};
    }
};
template <typename Whole, typename Value, typename Words>
constexpr WordRow<Whole, Value, Words> word(std::string_view key, Value Whole::*member,
                                            const Words& words, bool needed = false)
{
    return {key, member, &words, needed};
}

template <typename Whole> struct FlagRow {
    std::string_view key;
    bool Whole::*member;
    bool always = false; ///< written, even where it is as by default
    static constexpr bool needed = false;

    void read(Fields& fields, Whole& whole, Kept&) const
    {
        whole.*member = fields.flag(key, Whole{}.*member);
    }
    void write(const Whole& whole, Json& json) const
    {
        if (always || whole.*member != Whole{}.*member)
            json[key] = whole.*member;
    }
    [[nodiscard]] Json schema(const TapeTable&) const { return {{"type", {"boolean", "null"}}}; }
};
template <typename Whole>
constexpr FlagRow<Whole> flag(std::string_view key, bool Whole::*member, bool always = false)
{
    return {key, member, always};
}

template <typename Whole> struct TextRow {
    std::string_view key;
    std::string Whole::*member;
    std::size_t longest = longestName;
    static constexpr bool needed = false;

    void read(Fields& fields, Whole& whole, Kept&) const
    {
        whole.*member = fields.text(key, longest);
    }
    void write(const Whole& whole, Json& json) const
    {
        if (!(whole.*member).empty())
            json[key] = whole.*member;
    }
    void check(const Whole& whole, const std::string& path, Report& report) const
    {
        checkLength(whole.*member, joined(path, key), longest, report);
    }
    void lay(Whole& under, const Whole& over) const
    {
        if (!(over.*member).empty())
            under.*member = over.*member;
    }
    [[nodiscard]] Json schema(const TapeTable&) const
    {
        return {{"type", {"string", "null"}}, {"maxLength", longest}};
    }
};
template <typename Whole>
constexpr TextRow<Whole> text(std::string_view key, std::string Whole::*member,
                              std::size_t longest = longestName)
{
    return {key, member, longest};
}

/// A day, year-month-day; empty where it is not told.
template <typename Whole> struct DayRow {
    std::string_view key;
    std::string Whole::*member;
    static constexpr bool needed = false;

    void read(Fields& fields, Whole& whole, Kept&) const
    {
        whole.*member = fields.text(key, longestName);
        if (!checkDay(whole.*member, fields.pathOf(key), fields.report()))
            (whole.*member).clear();
    }
    void write(const Whole& whole, Json& json) const
    {
        if (!(whole.*member).empty())
            json[key] = whole.*member;
    }
    void check(const Whole& whole, const std::string& path, Report& report) const
    {
        checkDay(whole.*member, joined(path, key), report);
    }
    [[nodiscard]] Json schema(const TapeTable&) const
    {
        return {{"type", {"string", "null"}}, {"format", "date"}};
    }
};
template <typename Whole>
constexpr DayRow<Whole> day(std::string_view key, std::string Whole::*member)
{
    return {key, member};
}

/// A list of texts: those that are known words, and others as they were said, after them.
template <typename Whole, typename Value, typename Words> struct WordsRow {
    std::string_view key;
    std::vector<Value> Whole::*known;
    std::vector<std::string> Whole::*others;
    const Words* words;
    Count count;
    static constexpr bool needed = false;

    void read(Fields& fields, Whole& whole, Kept&) const
    {
        for (std::string& text : fields.texts(key, count, longestName)) {
            if (const auto value = valueOf(*words, text))
                (whole.*known).push_back(*value);
            else
                (whole.*others).push_back(std::move(text));
        }
    }
    void write(const Whole& whole, Json& json) const
    {
        Json texts = Json::array();
        for (const Value value : whole.*known)
            texts.push_back(std::string(wordOf(*words, value)));
        for (const std::string& other : whole.*others)
            texts.push_back(other);
        if (!texts.empty())
            json[key] = std::move(texts);
    }
    void check(const Whole& whole, const std::string& path, Report& report) const
    {
        const std::string at = joined(path, key);
        const std::size_t before = (whole.*known).size();
        checkCount(before + (whole.*others).size(), at, count, report);
        for (std::size_t i = 0; i < (whole.*others).size(); ++i)
            checkLength((whole.*others)[i], joined(at, before + i), longestName, report);
    }
    [[nodiscard]] Json schema(const TapeTable&) const
    {
        Json examples = Json::array();
        for (const auto& entry : *words)
            examples.push_back(entry.first);
        return listSchema(
            {{"type", "string"}, {"maxLength", longestName}, {"examples", std::move(examples)}},
            count, false);
    }
};
template <typename Whole, typename Value, typename Words>
constexpr WordsRow<Whole, Value, Words>
wordList(std::string_view key, std::vector<Value> Whole::*known,
         std::vector<std::string> Whole::*others, const Words& words, const Count& count)
{
    return {key, known, others, &words, count};
}

/// The name of a size: a word, or a number as it is written.
template <typename Whole> struct SizeRow {
    std::string_view key;
    std::string Whole::*member;
    static constexpr bool needed = true;

    void read(Fields& fields, Whole& whole, Kept&) const { whole.*member = fields.needSize(key); }
    void write(const Whole& whole, Json& json) const
    {
        if (!(whole.*member).empty())
            json[key] = whole.*member;
    }
    void check(const Whole& whole, const std::string& path, Report& report) const
    {
        checkLength(whole.*member, joined(path, key), longestName, report);
        if ((whole.*member).empty())
            report.add(problemAt(ProblemCode::Missing, joined(path, key)));
    }
    [[nodiscard]] Json schema(const TapeTable&) const
    {
        return {{"type", {"string", "number"}}, {"description", "a word or a number"}};
    }
};
template <typename Whole>
constexpr SizeRow<Whole> sizeName(std::string_view key, std::string Whole::*member)
{
    return {key, member};
}

/// An object within the object: one that is there or not, or one that is left out while it is as by
/// default. `older` reads what an earlier version kept in it and this one keeps elsewhere.
template <typename Whole, typename Value> struct ObjectRow {
    std::string_view key;
    Value Whole::*member;
    bool needed = false;
    void (*older)(Fields& inside, Whole& whole, Kept& kept) = nullptr;
    std::string_view about = {};

    void read(Fields& fields, Whole& whole, Kept& kept) const
    {
        auto inside = needed ? fields.needObject(key) : fields.object(key);
        if (!inside)
            return;
        if (older)
            older(*inside, whole, kept);
        if constexpr (isOptional<Value>)
            readRows(*inside, (whole.*member).emplace(), kept);
        else
            readRows(*inside, whole.*member, kept);
    }
    void write(const Whole& whole, Json& json) const
    {
        if constexpr (isOptional<Value>) {
            if (whole.*member)
                json[key] = jsonOf(*(whole.*member));
        } else if (needed || whole.*member != Value{}) {
            json[key] = jsonOf(whole.*member);
        }
    }
    void check(const Whole& whole, const std::string& path, Report& report) const
    {
        if constexpr (isOptional<Value>) {
            if (whole.*member)
                checkRows(*(whole.*member), joined(path, key), report);
        } else {
            checkRows(whole.*member, joined(path, key), report);
        }
    }
    void lay(Whole& under, const Whole& over) const
    {
        if constexpr (isOptional<Value>) {
            if (over.*member)
                under.*member = over.*member;
        } else {
            layRows(under.*member, over.*member);
        }
    }
    [[nodiscard]] Json schema(const TapeTable& tape) const
    {
        Json json = schemaOf<typename Inside<Value>::Type>(tape, needed);
        if (!about.empty())
            json["description"] = about;
        return json;
    }
};
template <typename Whole, typename Value>
constexpr ObjectRow<Whole, Value> object(std::string_view key, Value Whole::*member,
                                         std::string_view about = {})
{
    return {key, member, false, nullptr, about};
}
template <typename Whole, typename Value>
constexpr ObjectRow<Whole, Value> neededObject(std::string_view key, Value Whole::*member)
{
    return {key, member, true, nullptr, {}};
}

/// A list of objects. `draft`: its entries may lack what others need, and only this program writes
/// it, so that nothing unknown is kept of them.
template <typename Whole, typename Part> struct ListRow {
    std::string_view key;
    std::vector<Part> Whole::*member;
    Count count;
    bool draft = false;
    bool needed = true;

    void read(Fields& fields, Whole& whole, Kept& kept) const
    {
        Report& report = fields.report();
        const Demand demand = report.demand();
        if (draft)
            report.demand(Demand::Draft);
        const auto& entries = needed ? fields.needList(key, count) : fields.list(key, count);
        for (std::size_t i = 0; i < entries.size() && !report.full(); ++i) {
            const std::string path = joined(fields.pathOf(key), i);
            Part& part = (whole.*member).emplace_back();
            if (!entries[i].is_object()) {
                report.add(wrongType(entries[i], path, "object"));
                continue;
            }
            Fields inside(entries[i], path, report);
            Kept passedOver;
            readRows(inside, part, draft ? passedOver : kept);
        }
        report.demand(demand);
    }
    void write(const Whole& whole, Json& json) const
    {
        if (!needed && (whole.*member).empty())
            return;
        Json list = Json::array();
        for (const Part& part : whole.*member)
            list.push_back(jsonOf(part));
        json[key] = std::move(list);
    }
    void check(const Whole& whole, const std::string& path, Report& report) const
    {
        checkCount((whole.*member).size(), joined(path, key), count, report);
        const Demand demand = report.demand();
        if (draft)
            report.demand(Demand::Draft);
        for (std::size_t i = 0; i < (whole.*member).size(); ++i)
            checkRows((whole.*member)[i], joined(joined(path, key), i), report);
        report.demand(demand);
    }
    [[nodiscard]] Json schema(const TapeTable& tape) const
    {
        if constexpr (requires { FieldTable<Part>::definition; })
            return listSchema(
                {{"$ref", std::string("#/definitions/") + FieldTable<Part>::definition}}, count,
                needed);
        else
            return listSchema(schemaOf<Part>(tape), count, needed);
    }
};
template <typename Whole, typename Part>
constexpr ListRow<Whole, Part> list(std::string_view key, std::vector<Part> Whole::*member,
                                    const Count& count)
{
    return {key, member, count};
}
template <typename Whole, typename Part>
constexpr ListRow<Whole, Part> draftList(std::string_view key, std::vector<Part> Whole::*member,
                                         const Count& count)
{
    return {key, member, count, true, false};
}

template <typename Whole, typename Part>
constexpr ListRow<Whole, Part> optionalList(std::string_view key, std::vector<Part> Whole::*member,
                                            const Count& count)
{
    return {key, member, count, false, false};
}

/// A list of numbers.
template <typename Whole> struct NumbersRow {
    std::string_view key;
    std::vector<double> Whole::*member;
    Count count;
    Limits limits;
    Typed typed;
    static constexpr bool needed = false;

    void read(Fields& fields, Whole& whole, Kept&) const
    {
        whole.*member = fields.numbers(key, count, limits);
    }
    void write(const Whole& whole, Json& json) const
    {
        if (!(whole.*member).empty())
            json[key] = numbers(whole.*member);
    }
    void check(const Whole& whole, const std::string& path, Report& report) const
    {
        checkCount((whole.*member).size(), joined(path, key), count, report);
        for (std::size_t i = 0; i < (whole.*member).size(); ++i)
            checkNumber((whole.*member)[i], joined(joined(path, key), i), limits, report);
    }
    [[nodiscard]] Json schema(const TapeTable&) const
    {
        return listSchema(numberSchema(limits, true, {}), count, false);
    }
};
template <typename Whole>
constexpr NumbersRow<Whole> numberList(std::string_view key, std::vector<double> Whole::*member,
                                       const Count& count, const Limits& limits, Typed typed = {})
{
    return {key, member, count, limits, typed};
}

/// What no other kind of row can say.
template <typename Whole> struct OwnRow {
    std::string_view key;
    void (*read)(Fields& fields, Whole& whole, Kept& kept);
    void (*write)(const Whole& whole, Json& json);
    void (*check)(const Whole& whole, const std::string& path, Report& report);
    Json (*schema)(const TapeTable& tape);
    bool needed = false;
};

} // namespace tripoise::document
