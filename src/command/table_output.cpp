// SPDX-License-Identifier: MIT
#include "command/table_output.h"

#include "command/tables.h"
#include "frame/closure.h"
#include "wording/table_words.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cmath>

namespace tripoise::command {
namespace {

using Json = nlohmann::ordered_json;

double told(double value)
{
    const double rounded = std::round(value * 1000.0) / 1000.0;
    return rounded == 0.0 ? 0.0 : rounded;
}

const char* stateKey(Origin origin)
{
    switch (origin) {
    case Origin::Given: return "given";
    case Origin::Derived: return "derived";
    case Origin::Assumed: return "assumed";
    }
    return "";
}

const char* purposeKey(Purpose purpose)
{
    static constexpr std::array keys{"candidate", "saddle_place", "heights",
                                     "wheelbase", "trail",        "toe_clearance",
                                     "steerer",   "post",         "standover"};
    return keys[static_cast<std::size_t>(purpose)];
}

Json valueJson(const ClosedValue& value, const Entry* entry)
{
    Json json{{"value", told(value.value.value)},
              {"sd", told(value.value.sd)},
              {"state", stateKey(value.value.origin)}};
    if (entry && entry->high) // an adjustable dropout
        json["high"] = told(*entry->high);
    return json;
}

Json sizeJson(const ClosedSize& size, const TableSize& entries)
{
    Json values = Json::object();
    for (const ClosedValue& value : size.values)
        values[std::string(keyOf(value.column))] = valueJson(value, entryOf(value.column, entries));
    Json unknown = Json::array();
    for (const UnknownColumn& one : size.unknown) {
        Json prevents = Json::array();
        for (const Purpose purpose : one.prevents)
            prevents.push_back(purposeKey(purpose));
        unknown.push_back({{"column", keyOf(one.column)}, {"prevents", std::move(prevents)}});
    }
    return {{"size", size.size},
            {"closed", size.closed},
            {"values", std::move(values)},
            {"unknown", std::move(unknown)}};
}

Json contradictionJson(const Contradiction& one, const ClosedTable& closed)
{
    Json ties = Json::array();
    for (const Column column : one.indistinguishableFrom)
        ties.push_back(keyOf(column));
    return {{"size", closed.sizes[one.size].size},
            {"column", keyOf(one.column)},
            {"given", told(one.given)},
            {"agrees_with_rest", told(one.agreesWithRest)},
            {"sd", told(one.sd)},
            {"indistinguishable_from", std::move(ties)},
            {"text", sentence(one, closed).toStdString()}};
}

std::string jsonOf(const ReadTable& read, const GeometryTable& geometry, const ClosedTable& closed)
{
    Json json{{"model", read.model ? Json(*read.model) : Json()}, {"sizes", Json::array()}};
    for (std::size_t i = 0; i < closed.sizes.size(); ++i)
        json["sizes"].push_back(sizeJson(closed.sizes[i], geometry.sizes[i]));
    json["contradictions"] = Json::array();
    for (const Contradiction& one : closed.contradictions)
        json["contradictions"].push_back(contradictionJson(one, closed));
    json["unusual"] = Json::array();
    for (const UnusualValue& one : closed.unusual)
        json["unusual"].push_back({{"size", closed.sizes[one.size].size},
                                   {"column", keyOf(one.column)},
                                   {"given", told(one.given)},
                                   {"expected", told(one.expected)},
                                   {"text", sentence(one, closed).toStdString()}});
    json["definitions"] = Json::array();
    for (const Redefinition& one : closed.redefinitions)
        json["definitions"].push_back({{"column", keyOf(one.column)},
                                       {"taken_as", keyOf(one.takenAs)},
                                       {"contradicted", one.contradicted},
                                       {"contradicted_still", one.contradictedStill},
                                       {"of", one.of},
                                       {"text", sentence(one).toStdString()}});
    json["not_understood"] = Json::array();
    for (const TableText& one : read.notUnderstood)
        json["not_understood"].push_back({{"text", one.text}, {"line", one.line}});
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

std::string quoted(const std::string& cell)
{
    if (cell.find_first_of(",\"\n\r") == std::string::npos)
        return cell;
    std::string result = "\"";
    for (const char c : cell)
        result += c == '"' ? std::string("\"\"") : std::string(1, c);
    return result + '"';
}

/// One value a line, so that its state stands beside it.
std::string csvOf(const ClosedTable& closed)
{
    std::string csv = "size,column,value,sd,state\n";
    for (const ClosedSize& size : closed.sizes)
        for (const ClosedValue& value : size.values) {
            csv += quoted(size.size) + ',' + std::string(keyOf(value.column)) + ',';
            csv += Json(told(value.value.value)).dump() + ',' + Json(told(value.value.sd)).dump();
            csv += std::string(",") + stateKey(value.value.origin) + '\n';
        }
    return csv;
}

} // namespace

std::optional<TableFormat> tableFormat(const QString& name)
{
    if (name.isEmpty() || name == QLatin1String("text"))
        return TableFormat::Text;
    if (name == QLatin1String("json"))
        return TableFormat::Json;
    if (name == QLatin1String("csv"))
        return TableFormat::Csv;
    return std::nullopt;
}

std::string tableText(const ReadTable& read, TableFormat format)
{
    const GeometryTable geometry = geometryOf(read);
    const ClosedTable closed = closeTable(geometry, shippedClosure());
    switch (format) {
    case TableFormat::Json: return jsonOf(read, geometry, closed);
    case TableFormat::Csv: return csvOf(closed);
    case TableFormat::Text: break;
    }
    return closedTableText(read, closed).toStdString();
}

} // namespace tripoise::command
