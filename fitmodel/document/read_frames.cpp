// SPDX-License-Identifier: MIT
//
// Frames, one size each.
#include "document/plausible.h"
#include "document/sections.h"

#include <map>
#include <utility>

namespace tripoise::document {
namespace {

constexpr Count frameCount{1, mostFrames};

/// One length, or the two ends of an adjustable one.
std::optional<Range> lengthOrRange(Fields& fields, std::string_view key, const Limits& limits)
{
    const Json* json = fields.find(key);
    if (!json || !json->is_array()) {
        const auto one = fields.number(key, limits);
        return one ? std::optional(Range{*one, *one}) : std::nullopt;
    }
    const std::string path = fields.pathOf(key);
    const auto ends = fields.numbers(key, {2, 2}, limits);
    if (ends.size() != 2)
        return std::nullopt;
    if (ends[0] > ends[1]) {
        Problem problem =
            problemAt(ProblemCode::Contradiction, joined(path, std::size_t{1}), shown((*json)[1]));
        problem.low = ends[0];
        problem.unit = limits.unit;
        problem.names.push_back(joined(path, std::size_t{0}));
        fields.report().add(std::move(problem));
    }
    return Range{ends[0], ends[1]};
}

Geometry readGeometry(Fields fields)
{
    Geometry geometry;
    geometry.stackMm = fields.needNumber("stack_mm", plausible::stack);
    geometry.reachMm = fields.needNumber("reach_mm", plausible::reach);
    geometry.seatAngleDeg = fields.number("seat_angle_deg", plausible::seatAngle);
    geometry.headAngleDeg = fields.needNumber("head_angle_deg", plausible::headAngle);
    geometry.headTubeMm = fields.number("head_tube_mm", plausible::headTube);
    geometry.seatTubeMm = fields.number("seat_tube_mm", plausible::seatTube);
    geometry.topTubeEffectiveMm = fields.number("top_tube_effective_mm", plausible::topTube);
    geometry.chainstayMm = lengthOrRange(fields, "chainstay_mm", plausible::chainstay);
    geometry.bbDropMm = fields.number("bb_drop_mm", plausible::bbDrop);
    geometry.wheelbaseMm = fields.number("wheelbase_mm", plausible::wheelbase);
    geometry.frontCentreMm = fields.number("front_centre_mm", plausible::frontCentre);
    geometry.forkLengthMm = fields.number("fork_length_mm", plausible::forkLength);
    geometry.forkOffsetMm = fields.number("fork_offset_mm", plausible::forkOffset);
    geometry.standoverMm = fields.number("standover_mm", plausible::standover);
    fields.refuseUnknown();

    if (!fields.find("seat_angle_deg") && !fields.find("top_tube_effective_mm")) {
        Problem problem = problemAt(ProblemCode::Missing, fields.pathOf("seat_angle_deg"));
        problem.low = plausible::seatAngle.low;
        problem.high = plausible::seatAngle.high;
        problem.unit = plausible::seatAngle.unit;
        problem.names.emplace_back("top_tube_effective_mm"); // would do as well
        fields.report().add(std::move(problem));
    }
    if (geometry.frontCentreMm && geometry.wheelbaseMm
        && *geometry.frontCentreMm >= *geometry.wheelbaseMm) {
        Problem problem = problemAt(ProblemCode::Contradiction, fields.pathOf("front_centre_mm"),
                                    compact(tidy(*geometry.frontCentreMm)));
        problem.high = *geometry.wheelbaseMm;
        problem.unit = "mm";
        problem.names.push_back(fields.pathOf("wheelbase_mm"));
        fields.report().add(std::move(problem));
    }
    return geometry;
}

Wheel readWheel(Fields fields, Kept& kept)
{
    Wheel wheel;
    wheel.beadSeatMm = fields.number("bead_seat_mm", plausible::beadSeat);
    wheel.tyreMm = fields.number("tyre_mm", plausible::tyre);
    wheel.maxTyreMm = fields.number("max_tyre_mm", plausible::tyre);
    if (auto mudguard = fields.object("mudguard")) {
        wheel.mudguard = Mudguard{mudguard->number("gap_mm", plausible::mudguardGap),
                                  mudguard->number("width_mm", plausible::mudguardWidth)};
        mudguard->keepUnknown(kept);
    }
    fields.keepUnknown(kept);
    return wheel;
}

Headset readHeadset(Fields fields, Kept& kept)
{
    Headset headset;
    headset.upperMm = fields.number("upper_mm", plausible::headsetStack);
    headset.lowerMm = fields.number("lower_mm", plausible::headsetStack);
    headset.steererMm = fields.number("steerer_mm", plausible::diameter);
    headset.steererLengthMm = fields.number("steerer_length_mm", plausible::steererLength);
    headset.material = fields.word("material", materialWords);
    headset.maxSpacersMm = fields.number("max_spacers_mm", plausible::spacersLimit);
    headset.quillMm = fields.number("quill_mm", plausible::quill);
    fields.keepUnknown(kept);
    return headset;
}

Post readPost(Fields fields, Kept& kept)
{
    Post post;
    post.diameterMm = fields.number("diameter_mm", plausible::diameter);
    post.lengthMm = fields.number("length_mm", plausible::postLength);
    post.offsetMm = fields.number("offset_mm", plausible::postOffset);
    post.insertionMm = fields.number("insertion_mm", plausible::insertion);
    post.frameInsertionMm = fields.number("frame_insertion_mm", plausible::insertion);
    fields.keepUnknown(kept);
    return post;
}

AsSold readAsSold(Fields fields, Kept& kept)
{
    AsSold sold;
    sold.stemMm = fields.number("stem_mm", plausible::stemLength);
    sold.barWidthMm = fields.number("bar_mm", plausible::barWidth);
    sold.crankMm = fields.number("crank_mm", plausible::crank);
    sold.tyreMm = fields.number("tyre_mm", plausible::tyre);
    fields.keepUnknown(kept);
    return sold;
}

} // namespace

std::string readSize(Fields& fields)
{
    const Json* json = fields.need("size");
    if (!json)
        return {};
    if (json->is_number())
        return compact(*json);
    std::string size = fields.text("size", longestName);
    if (json->is_string() && json->get_ref<const std::string&>().empty())
        fields.missing("size");
    return size;
}

FrameSize readFrame(Fields fields, Kept& kept)
{
    FrameSize frame;
    frame.model = fields.text("model", longestName);
    frame.size = readSize(fields);
    if (auto geometry = fields.needObject("geometry"))
        frame.geometry = readGeometry(std::move(*geometry));
    if (auto wheel = fields.object("wheel"))
        frame.wheel = readWheel(std::move(*wheel), kept);
    if (auto headset = fields.object("headset"))
        frame.headset = readHeadset(std::move(*headset), kept);
    if (auto post = fields.object("post"))
        frame.post = readPost(std::move(*post), kept);
    frame.riderHeightMm = lengthOrRange(fields, "rider_height_mm", plausible::riderHeight);
    if (auto sold = fields.object("as_sold"))
        frame.asSold = readAsSold(std::move(*sold), kept);
    frame.maxSystemKg = fields.number("max_system_kg", plausible::systemMass);
    frame.massKg = fields.number("mass_kg", plausible::bicycleMass);
    frame.price = fields.number("price", plausible::price);
    fields.keepUnknown(kept);
    return frame;
}

std::vector<FrameSize> readFrames(Fields& fields, std::string_view key, Kept& kept)
{
    std::vector<FrameSize> frames;
    std::map<std::pair<std::string, std::string>, std::string> seen;
    const auto& entries = fields.needList(key, frameCount);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::string path = joined(fields.pathOf(key), i);
        if (!entries[i].is_object()) {
            fields.report().add(wrongType(entries[i], path, "object"));
            continue;
        }
        frames.push_back(readFrame(Fields(entries[i], path, fields.report()), kept));
        const FrameSize& frame = frames.back();
        if (frame.size.empty())
            continue;
        const auto [first, isNew] = seen.try_emplace({frame.model, frame.size}, path);
        if (isNew)
            continue;
        Problem problem =
            problemAt(ProblemCode::Duplicate, path, shortened(frame.model + ' ' + frame.size, 60));
        problem.names.push_back(first->second);
        fields.report().add(std::move(problem));
    }
    return frames;
}

} // namespace tripoise::document
