// SPDX-License-Identifier: MIT
//
// What is done with all rows of an object (document/row_kinds.h): reading and writing it, checking
// its values, laying one over another, its schema.
#pragma once

#include "document/row_kinds.h"

namespace tripoise::document {

template <typename Whole> void readRows(Fields& fields, Whole& whole, Kept& kept)
{
    eachRow<Whole>([&](const auto& row) { row.read(fields, whole, kept); });
    if constexpr (FieldTable<Whole>::refusesUnknown)
        fields.refuseUnknown();
    else
        fields.keepUnknown(kept);
    if constexpr (requires { &FieldTable<Whole>::agree; })
        FieldTable<Whole>::agree(whole, fields.path(), fields.report());
}

template <typename Whole> Json jsonOf(const Whole& whole)
{
    Json json = Json::object();
    eachRow<Whole>([&](const auto& row) { row.write(whole, json); });
    return json;
}

template <typename Whole>
void checkRows(const Whole& whole, const std::string& path, Report& report)
{
    eachRow<Whole>([&](const auto& row) {
        if constexpr (requires { row.check(whole, path, report); })
            row.check(whole, path, report);
    });
    if constexpr (requires { &FieldTable<Whole>::agree; })
        FieldTable<Whole>::agree(whole, path, report);
}

template <typename Whole> void layRows(Whole& under, const Whole& over)
{
    eachRow<Whole>([&](const auto& row) {
        if constexpr (requires { row.lay(under, over); })
            row.lay(under, over);
    });
}

template <typename Whole> Json schemaOf(const TapeTable& tape, bool needed)
{
    Json json{{"type", needed ? Json("object") : Json::array({"object", "null"})},
              {"properties", Json::object()}};
    Json required = Json::array();
    eachRow<Whole>([&](const auto& row) {
        json["properties"][std::string(row.key)] = row.schema(tape);
        if (row.needed)
            required.push_back(row.key);
    });
    if (!required.empty())
        json["required"] = std::move(required);
    if (FieldTable<Whole>::refusesUnknown)
        json["additionalProperties"] = false;
    if constexpr (requires { &FieldTable<Whole>::describe; })
        FieldTable<Whole>::describe(json);
    return json;
}

/// The row of a number, by its member.
template <typename Whole, typename Value>
constexpr NumberRow<Whole, Value> rowOf(Value Whole::*member)
{
    NumberRow<Whole, Value> found{};
    std::apply(
        [&](const auto&... row) {
            const auto look = [&](const auto& one) {
                if constexpr (std::is_same_v<std::remove_cvref_t<decltype(one)>,
                                             NumberRow<Whole, Value>>)
                    if (one.member == member)
                        found = one;
            };
            (look(row), ...);
        },
        FieldTable<Whole>::rows);
    return found;
}

} // namespace tripoise::document
