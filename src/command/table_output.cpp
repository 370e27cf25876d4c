// SPDX-License-Identifier: MIT
#include "command/table_output.h"

#include "frame/closure.h"
#include "shipped/tables.h"
#include "wording/table_page_words.h"
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
    if (value.assuming)
        json["assuming"] = keyOf(*value.assuming);
    if (entry && entry->high) // an adjustable dropout
        json["high"] = told(*entry->high);
    return json;
}

Json sizeJson(const ClosedSize& size, const TableSize& entries)
{
    Json values = Json::object();
    for (const ClosedValue& value : size.values)
        if (!isOfTheSale(value.column))
            values[std::string(keyOf(value.column))] =
                valueJson(value, entryOf(value.column, entries));
    Json unknown = Json::array();
    for (const UnknownColumn& one : size.unknown) {
        Json prevents = Json::array();
        for (const Purpose purpose : one.prevents)
            prevents.push_back(purposeKey(purpose));
        unknown.push_back({{"column", keyOf(one.column)}, {"prevents", std::move(prevents)}});
    }
    Json json{{"size", size.size},
              {"closed", size.closed},
              {"values", std::move(values)},
              {"unknown", std::move(unknown)}};
    if (const Entry* heights = entryOf(Column::RiderHeight, entries); heights && heights->high)
        json["rider_height_mm"] = {told(heights->value), told(*heights->high)};
    for (const auto& [key, column] :
         std::initializer_list<std::pair<const char*, Column>>{{"stem_mm", Column::StemLength},
                                                               {"bar_mm", Column::BarWidth},
                                                               {"crank_mm", Column::CrankLength},
                                                               {"tyre_mm", Column::Tyre}})
        if (const Entry* entry = entryOf(column, entries))
            json["as_sold"][key] = told(entry->value);
    return json;
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

const char* fromKey(SizesFrom from)
{
    return from == SizesFrom::Named ? "named" : from == SizesFrom::Counted ? "counted" : "guessed";
}

const char* fromKey(ColumnFrom from)
{
    return from == ColumnFrom::Known ? "known" : from == ColumnFrom::Parts ? "parts" : "guessed";
}

Json columnsJson(const ReadTable& read)
{
    Json columns = Json::array();
    for (const ReadColumn& column : read.columns)
        if (column.meaning)
            columns.push_back({{"heading", column.heading},
                               {"column", keyOf(*column.meaning)},
                               {"from", fromKey(column.from)}});
    return columns;
}

using Models = std::vector<std::optional<std::string>>;

struct Closed {
    const ReadTable& read;
    GeometryTable geometry;
    ClosedTable closed;
};

Json jsonOf(const Closed& table)
{
    const auto& [read, geometry, closed] = table;
    Json json{{"model", read.model ? Json(*read.model) : Json()},
              {"sizes_from", fromKey(read.sizesFrom)},
              {"columns", columnsJson(read)},
              {"sizes", Json::array()}};
    for (std::size_t i = 0; i < closed.sizes.size(); ++i)
        json["sizes"].push_back(sizeJson(closed.sizes[i], geometry.sizes[i]));
    json["contradictions"] = Json::array();
    for (const Contradiction& one : closed.contradictions)
        json["contradictions"].push_back(contradictionJson(one, closed));
    json["mixups"] = Json::array();
    for (const Mixup& one : closed.mixups) {
        Json told{{"text", sentence(one, closed).toStdString()}};
        if (one.kind == Mixup::Kind::SizesAlike)
            told["sizes_alike"] = {closed.sizes[one.size].size, closed.sizes[one.otherSize].size};
        else if (one.kind == Mixup::Kind::ColumnShifted)
            told["column_shifted"] = keyOf(one.column);
        else
            told["columns_swapped"] = {keyOf(one.column), keyOf(one.otherColumn)};
        json["mixups"].push_back(std::move(told));
    }
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
    return json;
}

/// The first, the others in it.
std::string jsonOf(const std::vector<Closed>& tables)
{
    Json json = jsonOf(tables.front());
    json["other_models"] = Json::array();
    for (std::size_t i = 1; i < tables.size(); ++i)
        json["other_models"].push_back(jsonOf(tables[i]));
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
std::string csvOf(const std::vector<Closed>& tables, const Models& models)
{
    std::string csv = "model,size,column,value,sd,state\n";
    for (std::size_t i = 0; i < tables.size(); ++i)
        for (const ClosedSize& size : tables[i].closed.sizes)
            for (const ClosedValue& value : size.values) {
                csv += quoted(tableName(models, i).toStdString()) + ',' + quoted(size.size) + ','
                       + std::string(keyOf(value.column)) + ','
                       + Json(told(value.value.value)).dump() + ','
                       + Json(told(value.value.sd)).dump() + ',' + stateKey(value.value.origin)
                       + '\n';
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

std::string tablesText(const std::vector<ReadTable>& read, TableFormat format)
{
    std::vector<Closed> tables;
    Models models;
    for (const ReadTable& one : read) {
        GeometryTable geometry = geometryOf(one);
        ClosedTable closed = closeTable(geometry, shippedClosure());
        tables.push_back({one, std::move(geometry), std::move(closed)});
        models.push_back(one.model);
    }
    if (format == TableFormat::Json)
        return jsonOf(tables);
    if (format == TableFormat::Csv)
        return csvOf(tables, models);
    std::string text;
    for (std::size_t i = 0; i < tables.size(); ++i) {
        text += i > 0 ? "\n" : "";
        text +=
            closedTableText(tableName(models, i), tables[i].read, tables[i].closed).toStdString();
    }
    return text;
}

} // namespace tripoise::command
