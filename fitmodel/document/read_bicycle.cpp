// SPDX-License-Identifier: MIT
//
// Frames and the box of parts.
#include "document/plausible.h"
#include "document/sections.h"

namespace tripoise {
namespace {

constexpr Count stemCount{1, 500};
constexpr Count barCount{1, 100};
constexpr Count spacerCount{0, 40};
constexpr Count crankCount{0, 60};

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

/// A size's name is a word or a number.
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

Stem readStem(Fields fields)
{
    Stem stem;
    stem.lengthMm = fields.needNumber("length_mm", plausible::stemLength);
    stem.angle = Angle::degrees(fields.needNumber("angle_deg", plausible::stemAngle));
    stem.reversible = fields.flag("reversible", true);
    stem.barClampMm = fields.number("bar_clamp_mm", plausible::diameter);
    stem.steererMm = fields.number("steerer_mm", plausible::diameter);
    stem.clampHeightMm = fields.number("clamp_height_mm", plausible::clampHeight);
    stem.inStock = fields.flag("in_stock", true);
    fields.refuseUnknown();
    return stem;
}

Bar readBar(Fields fields)
{
    Bar bar;
    bar.name = fields.text("name", longestName);
    bar.kind = fields.needWord("kind", barKindWords).value_or(BarKind::Flat);
    bar.widthMm = fields.needNumber("width_mm", plausible::barWidth);
    bar.backsweepDeg = fields.number("backsweep_deg", plausible::backsweep);
    bar.riseMm = fields.number("rise_mm", plausible::barRise);
    bar.gripBackMm = fields.number("grip_back_mm", plausible::gripBack);
    bar.reachMm = fields.number("reach_mm", plausible::barReach);
    bar.dropMm = fields.number("drop_mm", plausible::barDrop);
    bar.hoodForwardMm = fields.number("hood_forward_mm", plausible::hoodForward);
    bar.hoodUpMm = fields.number("hood_up_mm", plausible::hoodUp);
    bar.barClampMm = fields.number("bar_clamp_mm", plausible::diameter);
    fields.refuseUnknown();
    return bar;
}

template <typename Part, typename Read>
std::vector<Part> readParts(Fields& fields, std::string_view key, const Count& count, Read&& read)
{
    std::vector<Part> parts;
    const auto& entries = fields.needList(key, count);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::string path = joined(fields.pathOf(key), i);
        if (entries[i].is_object())
            parts.push_back(read(Fields(entries[i], path, fields.report())));
        else
            fields.report().add(wrongType(entries[i], path, "object"));
    }
    return parts;
}

} // namespace

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
    frame.maxSystemKg = fields.number("max_system_kg", plausible::systemMass);
    frame.massKg = fields.number("mass_kg", plausible::bicycleMass);
    frame.price = fields.number("price", plausible::price);
    fields.keepUnknown(kept);
    return frame;
}

Stock readStock(Fields fields)
{
    Stock stock;
    stock.stems = readParts<Stem>(fields, "stems", stemCount, readStem);
    stock.spacersMm = fields.numbers("spacers_mm", spacerCount, plausible::spacer);
    stock.cranksMm = fields.numbers("cranks_mm", crankCount, plausible::crank);
    stock.fittedCrankMm = fields.number("fitted_crank_mm", plausible::crank);
    stock.bars = readParts<Bar>(fields, "bars", barCount, readBar);
    if (auto saddle = fields.object("saddle")) {
        stock.saddle.lengthMm = saddle->number("length_mm", plausible::saddleLength);
        stock.saddle.stackMm = saddle->number("stack_mm", plausible::saddleStack);
        stock.saddle.railTravelMm = saddle->number("rail_travel_mm", plausible::railTravel);
        saddle->refuseUnknown();
    }
    if (auto pedal = fields.object("pedal")) {
        stock.pedal.stackMm = pedal->number("stack_mm", plausible::pedalStack);
        stock.pedal.lateralMm = pedal->number("lateral_mm", plausible::pedalLateral);
        pedal->refuseUnknown();
    }
    if (!fields.find("fitted_crank_mm")) {
        const Json* cranks = fields.find("cranks_mm");
        if (!cranks)
            fields.missing("cranks_mm", plausible::crank);
        if (cranks && cranks->is_array() && cranks->empty()) {
            Problem problem = problemAt(ProblemCode::TooFew, fields.pathOf("cranks_mm"), "0");
            problem.low = 1.0;
            problem.high = static_cast<double>(crankCount.most);
            fields.report().add(std::move(problem));
        }
    }
    fields.refuseUnknown();
    return stock;
}

} // namespace tripoise
