// SPDX-License-Identifier: MIT
#include "brief/frame_entries.h"

#include "frame/skeleton.h"

#include <algorithm>
#include <array>

namespace tripoise {
namespace {

using Entry = EntryOf<FrameSize>;
using Number = std::optional<double>;
using StandIn = std::optional<Estimate>;

// An adjustable dropout has two ends; the far one is typed only where it differs.
Number readChainstay(const FrameSize& frame)
{
    const auto& stay = frame.geometry.chainstayMm;
    return stay ? Number(stay->low) : std::nullopt;
}
void writeChainstay(FrameSize& frame, Number value)
{
    auto& stay = frame.geometry.chainstayMm;
    if (!value)
        stay.reset();
    else if (stay && stay->low != stay->high)
        stay = Range{*value, std::max(*value, stay->high)};
    else
        stay = Range{*value, *value};
}
Number readChainstayEnd(const FrameSize& frame)
{
    const auto& stay = frame.geometry.chainstayMm;
    return stay && stay->low != stay->high ? Number(stay->high) : std::nullopt;
}
void writeChainstayEnd(FrameSize& frame, Number value)
{
    auto& stay = frame.geometry.chainstayMm;
    if (!value)
        stay = stay ? std::optional(Range{stay->low, stay->low}) : std::nullopt;
    else if (stay)
        stay = Range{std::min(stay->low, *value), *value};
    else
        stay = Range{*value, *value};
}

bool hasBasis(const FrameSize& frame)
{
    const Geometry& geometry = frame.geometry;
    return geometry.stackMm > 0.0 && geometry.reachMm > 0.0 && geometry.headAngleDeg > 0.0;
}

/// Of the skeleton, once there is enough for one.
template <auto part> StandIn ofSkeleton(const FrameSize& frame, const Tables& tables)
{
    if (!hasBasis(frame))
        return std::nullopt;
    return part(frame, skeletonOf(frame, tables.frame));
}

StandIn seatAngle(const FrameSize& frame, const Skeleton& skeleton)
{
    const bool derived = frame.geometry.topTubeEffectiveMm > frame.geometry.reachMm;
    return Estimate{skeleton.seatAngle.deg(), 0.0, derived ? Origin::Derived : Origin::Assumed};
}
StandIn headTube(const FrameSize&, const Skeleton& skeleton)
{
    return skeleton.headTubeMm;
}
StandIn topTube(const FrameSize& frame, const Skeleton& skeleton)
{
    if (!frame.geometry.seatAngleDeg)
        return std::nullopt;
    return Estimate{skeleton.headTop.x()
                        + skeleton.headTop.y() / std::tan(skeleton.seatAngle.rad()),
                    0.0, Origin::Derived};
}
StandIn chainstay(const FrameSize&, const Skeleton& skeleton)
{
    return skeleton.chainstayMm;
}
StandIn bbDrop(const FrameSize&, const Skeleton& skeleton)
{
    return skeleton.bbDropMm;
}
/// What follows from several parts is assumed as soon as one of them is.
Origin weakest(std::initializer_list<Estimate> parts)
{
    for (const Estimate& part : parts)
        if (part.origin == Origin::Assumed)
            return Origin::Assumed;
    return Origin::Derived;
}
StandIn wheelbase(const FrameSize&, const Skeleton& s)
{
    return Estimate{s.frontAxle.x() - s.rearAxle.x(), 0.0,
                    weakest({s.forkOffsetMm, s.chainstayMm, s.bbDropMm})};
}
StandIn frontCentre(const FrameSize&, const Skeleton& s)
{
    return Estimate{s.frontAxle.norm(), 0.0, weakest({s.forkOffsetMm, s.bbDropMm})};
}
StandIn forkLength(const FrameSize& frame, const Skeleton& s)
{
    const bool derived = frame.geometry.headTubeMm && frame.headset.lowerMm;
    return Estimate{(s.crown - s.frontAxle).norm(), 0.0,
                    derived ? weakest({s.forkOffsetMm, s.bbDropMm}) : Origin::Assumed};
}
StandIn forkOffset(const FrameSize&, const Skeleton& s)
{
    return s.forkOffsetMm;
}
StandIn standover(const FrameSize&, const Skeleton& s)
{
    return s.standoverMm;
}
StandIn insertion(const FrameSize& frame, const Tables& tables)
{
    const double diameter = frame.post.diameterMm.value_or(tables.frame.postDiameterMm);
    return Estimate{tables.frame.postInsertionDiameters * diameter, 0.0,
                    frame.post.diameterMm ? Origin::Derived : Origin::Assumed};
}
StandIn mostSpacersAllowed(const FrameSize& frame, const Tables& tables)
{
    return Estimate{skeletonOf(frame, tables.frame).maxSpacersMm, 0.0, Origin::Assumed};
}
template <auto member> StandIn usual(const FrameSize&, const Tables& tables)
{
    return Estimate{tables.frame.*member, 0.0, Origin::Assumed};
}

template <typename Value>
Entry drawn(const char* key, Value Geometry::*member, Entry::StandIn standIn = nullptr)
{
    return entryFor(key, &FrameSize::geometry, member, standIn);
}

} // namespace

std::span<const Entry> frameEntries(FrameGroup group)
{
    using G = Geometry;
    using F = FrameSize;
    using D = FrameDefaults;
    static const FieldFacts stay = factsOf(&G::chainstayMm);
    static const std::array first{drawn("stack", &G::stackMm), drawn("reach", &G::reachMm),
                                  drawn("head_angle", &G::headAngleDeg),
                                  drawn("seat_angle", &G::seatAngleDeg, ofSkeleton<seatAngle>),
                                  drawn("head_tube", &G::headTubeMm, ofSkeleton<headTube>)};
    static const std::array rest{
        drawn("top_tube", &G::topTubeEffectiveMm, ofSkeleton<topTube>),
        drawn("seat_tube", &G::seatTubeMm),
        Entry{"chainstay", stay, readChainstay, writeChainstay, ofSkeleton<chainstay>},
        Entry{"chainstay_end", stay, readChainstayEnd, writeChainstayEnd},
        drawn("bb_drop", &G::bbDropMm, ofSkeleton<bbDrop>),
        drawn("wheelbase", &G::wheelbaseMm, ofSkeleton<wheelbase>),
        drawn("front_centre", &G::frontCentreMm, ofSkeleton<frontCentre>),
        drawn("fork_length", &G::forkLengthMm, ofSkeleton<forkLength>),
        drawn("fork_offset", &G::forkOffsetMm, ofSkeleton<forkOffset>),
        drawn("standover", &G::standoverMm, ofSkeleton<standover>)};
    static const std::array wheel{
        entryFor("bead_seat", &F::wheel, &Wheel::beadSeatMm, usual<&D::beadSeatMm>),
        entryFor("max_tyre", &F::wheel, &Wheel::maxTyreMm)};
    static const std::array headset{
        entryFor("upper_headset", &F::headset, &Headset::upperMm, usual<&D::upperHeadsetMm>),
        entryFor("lower_headset", &F::headset, &Headset::lowerMm, usual<&D::lowerHeadsetMm>),
        entryFor("steerer", &F::headset, &Headset::steererMm, usual<&D::steererMm>),
        entryFor("headset_quill", &F::headset, &Headset::quillMm),
        entryFor("steerer_length", &F::headset, &Headset::steererLengthMm),
        entryFor("max_spacers", &F::headset, &Headset::maxSpacersMm, mostSpacersAllowed)};
    static const std::array post{
        entryFor("post_diameter", &F::post, &Post::diameterMm, usual<&D::postDiameterMm>),
        entryFor("post_length", &F::post, &Post::lengthMm, usual<&D::postLengthMm>),
        entryFor("post_offset", &F::post, &Post::offsetMm, usual<&D::postOffsetMm>),
        entryFor("post_insertion", &F::post, &Post::insertionMm, insertion),
        entryFor("frame_insertion", &F::post, &Post::frameInsertionMm,
                 usual<&D::frameInsertionMm>)};
    static const std::array sold{entryFor("sold_stem", &F::asSold, &AsSold::stemMm),
                                 entryFor("sold_bar", &F::asSold, &AsSold::barWidthMm),
                                 entryFor("sold_crank", &F::asSold, &AsSold::crankMm),
                                 entryFor("sold_tyre", &F::asSold, &AsSold::tyreMm)};
    static const std::array weights{entryFor("max_system", &F::maxSystemKg),
                                    entryFor("bicycle_mass", &F::massKg, usual<&D::bicycleMassKg>),
                                    entryFor("price", &F::price)};
    switch (group) {
    case FrameGroup::First: return first;
    case FrameGroup::Rest: return rest;
    case FrameGroup::Wheel: return wheel;
    case FrameGroup::Headset: return headset;
    case FrameGroup::Post: return post;
    case FrameGroup::Sold: return sold;
    case FrameGroup::Weights: return weights;
    }
    return {};
}

std::vector<FrameNeed> needsOf(const FrameSize& frame)
{
    const Geometry& geometry = frame.geometry;
    std::vector<FrameNeed> needs;
    if (frame.size.empty())
        needs.push_back(FrameNeed::Name);
    if (geometry.stackMm <= 0.0)
        needs.push_back(FrameNeed::Stack);
    if (geometry.reachMm <= 0.0)
        needs.push_back(FrameNeed::Reach);
    if (geometry.headAngleDeg <= 0.0)
        needs.push_back(FrameNeed::HeadAngle);
    if (!geometry.seatAngleDeg && !geometry.topTubeEffectiveMm)
        needs.push_back(FrameNeed::SeatAngle);
    return needs;
}

bool nameTaken(const std::vector<FrameSize>& frames, std::size_t besides, const std::string& model,
               const std::string& size)
{
    for (std::size_t i = 0; i < frames.size(); ++i)
        if (i != besides && frames[i].model == model && frames[i].size == size)
            return true;
    return false;
}

bool wheelbaseContradicts(const Geometry& geometry)
{
    return geometry.frontCentreMm && geometry.wheelbaseMm
           && *geometry.frontCentreMm >= *geometry.wheelbaseMm;
}

} // namespace tripoise
