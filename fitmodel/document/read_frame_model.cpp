// SPDX-License-Identifier: MIT
//
// A frame model's file: one model, its sizes as they stand in a fitting.
#include "document/agreement.h"
#include "document/field_table.h"
#include "document/head.h"
#include "document/read.h"

namespace tripoise {

namespace {

struct FrameModel {
    std::string model;
    std::vector<FrameSize> sizes;
};

} // namespace

template <> struct document::FieldTable<FrameModel> {
    static constexpr std::tuple rows{text("model", &FrameModel::model),
                                     list("sizes", &FrameModel::sizes, {1, mostFrames})};
    static constexpr bool refusesUnknown = false;
};

using namespace document;

namespace {

constexpr std::string_view formatName = "tripoise.frame";

} // namespace

std::variant<std::vector<FrameSize>, Problems> readFrameModel(std::string_view text)
{
    const auto parsed = parseJson(text);
    if (const auto* problems = std::get_if<Problems>(&parsed))
        return *problems;
    const Json& json = std::get<Json>(parsed);
    if (!json.is_object())
        return Problems{wrongType(json, "", "object")};
    Report report;
    Fields root(json, "", report);
    if (readHead(root, formatName, fittingVersion) != Head::Readable)
        return report.take();
    FrameModel read;
    Kept passedOver; // the file stays as it is, so nothing in it is lost
    readRows(root, read, passedOver);
    checkDifferent(read.sizes, "/sizes", report);
    if (!report.empty())
        return report.take();
    if (report.rules().version == 1)
        raise(read.sizes);
    for (FrameSize& size : read.sizes)
        if (size.model.empty())
            size.model = read.model;
    return std::move(read.sizes);
}

std::string writeFrameModel(const std::string& model, const std::vector<FrameSize>& sizes)
{
    FrameModel written{model, sizes};
    for (FrameSize& size : written.sizes)
        if (size.model == model)
            size.model.clear(); // as the file says
    Json json{{"format", formatName}, {"version", fittingVersion}};
    json.update(jsonOf(written));
    return textOf(json);
}

std::string frameModelSchema(const Tables& tables)
{
    return schemaText(formatName, "A frame model of Tripoise: one model, its sizes",
                      schemaOf<FrameModel>(tables.tape), tables.tape);
}

} // namespace tripoise
