// SPDX-License-Identifier: MIT
//
// A frame model's file: one model, its sizes as they stand in a fitting.
#include "document/head.h"
#include "document/read.h"
#include "document/sections.h"

namespace tripoise {

using namespace document;

namespace {

constexpr std::string_view formatName = "tripoise.frame";
constexpr int newestVersion = 1;

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
    if (readHead(root, formatName, newestVersion) != Head::Readable)
        return report.take();
    const std::string model = root.text("model", longestName);
    Kept passedOver; // the file stays as it is, so nothing in it is lost
    std::vector<FrameSize> sizes = readFrames(root, "sizes", passedOver);
    if (!report.empty())
        return report.take();
    for (FrameSize& size : sizes)
        if (size.model.empty())
            size.model = model;
    return sizes;
}

} // namespace tripoise
