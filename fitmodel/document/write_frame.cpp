// SPDX-License-Identifier: MIT
//
// Frames as JSON, and the file of a frame model.
#include "document/read.h"
#include "document/write_json.h"

namespace tripoise {

using namespace document;

namespace {

Json geometryJson(const Geometry& geometry)
{
    Json json = Json::object();
    putNeeded(json, "stack_mm", geometry.stackMm);
    putNeeded(json, "reach_mm", geometry.reachMm);
    put(json, "seat_angle_deg", geometry.seatAngleDeg);
    putNeeded(json, "head_angle_deg", geometry.headAngleDeg);
    put(json, "head_tube_mm", geometry.headTubeMm);
    put(json, "seat_tube_mm", geometry.seatTubeMm);
    put(json, "top_tube_effective_mm", geometry.topTubeEffectiveMm);
    if (const auto& chainstay = geometry.chainstayMm)
        json["chainstay_mm"] = chainstay->low == chainstay->high
                                   ? tidy(chainstay->low)
                                   : numbers({chainstay->low, chainstay->high});
    put(json, "bb_drop_mm", geometry.bbDropMm);
    put(json, "wheelbase_mm", geometry.wheelbaseMm);
    put(json, "front_centre_mm", geometry.frontCentreMm);
    put(json, "fork_length_mm", geometry.forkLengthMm);
    put(json, "fork_offset_mm", geometry.forkOffsetMm);
    put(json, "standover_mm", geometry.standoverMm);
    return json;
}

Json wheelJson(const Wheel& wheel)
{
    Json json = Json::object();
    put(json, "bead_seat_mm", wheel.beadSeatMm);
    put(json, "tyre_mm", wheel.tyreMm);
    put(json, "max_tyre_mm", wheel.maxTyreMm);
    if (wheel.mudguard) {
        Json mudguard = Json::object();
        put(mudguard, "gap_mm", wheel.mudguard->gapMm);
        put(mudguard, "width_mm", wheel.mudguard->widthMm);
        json["mudguard"] = std::move(mudguard); // one of unknown size is still one
    }
    return json;
}

Json headsetJson(const Headset& headset)
{
    Json json = Json::object();
    put(json, "upper_mm", headset.upperMm);
    put(json, "lower_mm", headset.lowerMm);
    put(json, "steerer_mm", headset.steererMm);
    put(json, "steerer_length_mm", headset.steererLengthMm);
    putWord(json, "material", headset.material, materialWords);
    put(json, "max_spacers_mm", headset.maxSpacersMm);
    put(json, "quill_mm", headset.quillMm);
    return json;
}

Json postJson(const Post& post)
{
    Json json = Json::object();
    put(json, "diameter_mm", post.diameterMm);
    put(json, "length_mm", post.lengthMm);
    put(json, "offset_mm", post.offsetMm);
    put(json, "insertion_mm", post.insertionMm);
    put(json, "frame_insertion_mm", post.frameInsertionMm);
    return json;
}

Json soldJson(const AsSold& sold)
{
    Json json = Json::object();
    put(json, "stem_mm", sold.stemMm);
    put(json, "bar_mm", sold.barWidthMm);
    put(json, "crank_mm", sold.crankMm);
    put(json, "tyre_mm", sold.tyreMm);
    return json;
}

} // namespace

Json document::frameJson(const FrameSize& frame)
{
    Json json = Json::object();
    putText(json, "model", frame.model);
    putText(json, "size", frame.size);
    json["geometry"] = geometryJson(frame.geometry);
    putFilled(json, "wheel", wheelJson(frame.wheel));
    putFilled(json, "headset", headsetJson(frame.headset));
    putFilled(json, "post", postJson(frame.post));
    if (const auto& heights = frame.riderHeightMm)
        json["rider_height_mm"] = numbers({heights->low, heights->high});
    putFilled(json, "as_sold", soldJson(frame.asSold));
    put(json, "max_system_kg", frame.maxSystemKg);
    put(json, "mass_kg", frame.massKg);
    put(json, "price", frame.price);
    return json;
}

std::string writeFrameModel(const std::string& model, const std::vector<FrameSize>& sizes)
{
    Json json = Json::object();
    json["format"] = "tripoise.frame";
    json["version"] = 1;
    putText(json, "model", model);
    Json list = Json::array();
    for (FrameSize size : sizes) {
        if (size.model == model)
            size.model.clear(); // as the file says
        list.push_back(frameJson(size));
    }
    json["sizes"] = std::move(list);
    return json.dump(indentOfDocuments, ' ', false, Json::error_handler_t::replace) + '\n';
}

} // namespace tripoise
