// SPDX-License-Identifier: MIT
//
// The documents as JSON Schema, draft 7, out of their fields.
#include "document/schema.h"

#include "document/field_table.h"
#include "document/read.h"

namespace tripoise::document {

Json numberSchema(const Limits& limits, bool needed, std::string_view about)
{
    Json json = Json::object();
    if (needed)
        json["type"] = "number";
    else
        json["type"] = {"number", "null"};
    json["minimum"] = tidy(limits.low);
    json["maximum"] = tidy(limits.high);
    if (!about.empty())
        json["description"] = about;
    return json;
}

Json listSchema(Json items, const Count& count, bool needed)
{
    Json json = Json::object();
    if (needed)
        json["type"] = "array";
    else
        json["type"] = {"array", "null"};
    if (count.least > 0)
        json["minItems"] = count.least;
    json["maxItems"] = count.most;
    json["items"] = std::move(items);
    return json;
}

std::string schemaText(std::string_view format, std::string_view title, const Json& fields,
                       const TapeTable& tape)
{
    Json json{
        {"$schema", "http://json-schema.org/draft-07/schema#"},
        {"title", title},
        {"description",
         "Names that are not listed are refused in measurements, geometry, stock and bicycle, "
         "and kept elsewhere. A file that is still being filled in may lack what is required "
         "here."}};
    json.update(fields);
    Json properties{{"format", {{"const", format}}}, {"version", {{"const", fittingVersion}}}};
    properties.update(fields["properties"]);
    json["properties"] = std::move(properties);
    for (const char* key : {"version", "format"})
        json["required"].insert(json["required"].begin(), key);
    json["definitions"] = {{"size", schemaOf<FrameSize>(tape)}};
    return textOf(json);
}

} // namespace tripoise::document

std::string tripoise::fittingSchema(const Tables& tables)
{
    using namespace document;
    Json fields = schemaOf<Fitting>(tables.tape);
    return schemaText("tripoise.fitting", "A fitting of Tripoise: one rider's file", fields,
                      tables.tape);
}
