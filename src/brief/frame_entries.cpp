// SPDX-License-Identifier: MIT
#include "brief/frame_entries.h"

#include "document/plausible.h"
#include "frame/skeleton.h"

#include <algorithm>
#include <array>

namespace tripoise {
namespace {

using Entry = EntryOf<FrameSize>;
using Number = std::optional<double>;
using StandIn = std::optional<Estimate>;

template <auto part, auto member> Number readAt(const FrameSize& frame)
{
    return frame.*part.*member;
}
template <auto part, auto member> void writeAt(FrameSize& frame, Number value)
{
    frame.*part.*member = value;
}

/// The three that a size cannot be without; 0 while they are not typed.
template <double Geometry::*member> Number readNeeded(const FrameSize& frame)
{
    const double value = frame.geometry.*member;
    return value > 0.0 ? Number(value) : std::nullopt;
}
template <double Geometry::*member> void writeNeeded(FrameSize& frame, Number value)
{
    frame.geometry.*member = value.value_or(0.0);
}

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

template <std::optional<double> Mudguard::*member> Number readGuard(const FrameSize& frame)
{
    return frame.wheel.mudguard ? *frame.wheel.mudguard.*member : std::nullopt;
}
template <std::optional<double> Mudguard::*member> void writeGuard(FrameSize& frame, Number value)
{
    if (frame.wheel.mudguard)
        *frame.wheel.mudguard.*member = value;
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
StandIn guardGap(const FrameSize&, const Tables& tables)
{
    return Estimate{tables.frame.mudguardGapMm, 0.0, Origin::Assumed};
}
StandIn guardWidth(const FrameSize& frame, const Tables& tables)
{
    return Estimate{frame.wheel.tyreMm.value_or(tables.frame.tyreMm) + tables.frame.mudguardWidthMm,
                    0.0, Origin::Assumed};
}
template <auto member> StandIn usual(const FrameSize&, const Tables& tables)
{
    return Estimate{tables.frame.*member, 0.0, Origin::Assumed};
}

template <auto member>
Entry geometryEntry(const char* key, const Limits& limits, double step, int decimals,
                    StandIn (*standIn)(const FrameSize&, const Tables&))
{
    return {key,
            limits,
            step,
            decimals,
            false,
            readAt<&FrameSize::geometry, member>,
            writeAt<&FrameSize::geometry, member>,
            standIn};
}
template <auto part, auto member>
Entry partEntry(const char* key, const Limits& limits, double step, int decimals,
                StandIn (*standIn)(const FrameSize&, const Tables&))
{
    return {key,    limits, step, decimals, false, readAt<part, member>, writeAt<part, member>,
            standIn};
}
template <double Geometry::*member>
Entry neededEntry(const char* key, const Limits& limits, double step, int decimals)
{
    return {key, limits, step, decimals, true, readNeeded<member>, writeNeeded<member>, nullptr};
}

template <auto member> Number readOwn(const FrameSize& frame)
{
    return frame.*member;
}
template <auto member> void writeOwn(FrameSize& frame, Number value)
{
    frame.*member = value;
}

} // namespace

std::span<const Entry> frameEntries(FrameGroup group)
{
    using G = Geometry;
    using F = FrameSize;
    namespace p = plausible;
    static const std::array first{
        neededEntry<&G::stackMm>("stack", p::stack, 1, 1),
        neededEntry<&G::reachMm>("reach", p::reach, 1, 1),
        neededEntry<&G::headAngleDeg>("head_angle", p::headAngle, 0.5, 2),
        geometryEntry<&G::seatAngleDeg>("seat_angle", p::seatAngle, 0.5, 2, ofSkeleton<seatAngle>),
        geometryEntry<&G::headTubeMm>("head_tube", p::headTube, 1, 1, ofSkeleton<headTube>)};
    static const std::array rest{
        geometryEntry<&G::topTubeEffectiveMm>("top_tube", p::topTube, 1, 1, ofSkeleton<topTube>),
        geometryEntry<&G::seatTubeMm>("seat_tube", p::seatTube, 1, 1, nullptr),
        Entry{"chainstay", p::chainstay, 1, 1, false, readChainstay, writeChainstay,
              ofSkeleton<chainstay>},
        Entry{"chainstay_end", p::chainstay, 1, 1, false, readChainstayEnd, writeChainstayEnd,
              nullptr},
        geometryEntry<&G::bbDropMm>("bb_drop", p::bbDrop, 1, 1, ofSkeleton<bbDrop>),
        geometryEntry<&G::wheelbaseMm>("wheelbase", p::wheelbase, 1, 1, ofSkeleton<wheelbase>),
        geometryEntry<&G::frontCentreMm>("front_centre", p::frontCentre, 1, 1,
                                         ofSkeleton<frontCentre>),
        geometryEntry<&G::forkLengthMm>("fork_length", p::forkLength, 1, 1, ofSkeleton<forkLength>),
        geometryEntry<&G::forkOffsetMm>("fork_offset", p::forkOffset, 1, 1, ofSkeleton<forkOffset>),
        geometryEntry<&G::standoverMm>("standover", p::standover, 1, 1, ofSkeleton<standover>)};
    static const std::array wheel{
        partEntry<&F::wheel, &Wheel::beadSeatMm>("bead_seat", p::beadSeat, 1, 0,
                                                 usual<&FrameDefaults::beadSeatMm>),
        partEntry<&F::wheel, &Wheel::tyreMm>("tyre", p::tyre, 1, 1, usual<&FrameDefaults::tyreMm>),
        partEntry<&F::wheel, &Wheel::maxTyreMm>("max_tyre", p::tyre, 1, 1, nullptr)};
    static const std::array guard{
        Entry{"mudguard_gap", p::mudguardGap, 1, 0, false, readGuard<&Mudguard::gapMm>,
              writeGuard<&Mudguard::gapMm>, guardGap},
        Entry{"mudguard_width", p::mudguardWidth, 1, 0, false, readGuard<&Mudguard::widthMm>,
              writeGuard<&Mudguard::widthMm>, guardWidth}};
    static const std::array headset{
        partEntry<&F::headset, &Headset::upperMm>("upper_headset", p::headsetStack, 1, 1,
                                                  usual<&FrameDefaults::upperHeadsetMm>),
        partEntry<&F::headset, &Headset::lowerMm>("lower_headset", p::headsetStack, 1, 1,
                                                  usual<&FrameDefaults::lowerHeadsetMm>),
        partEntry<&F::headset, &Headset::steererMm>("steerer", p::diameter, 0.1, 1,
                                                    usual<&FrameDefaults::steererMm>),
        partEntry<&F::headset, &Headset::quillMm>("headset_quill", p::quill, 0.1, 1, nullptr),
        partEntry<&F::headset, &Headset::steererLengthMm>("steerer_length", p::steererLength, 1, 0,
                                                          nullptr),
        partEntry<&F::headset, &Headset::maxSpacersMm>("max_spacers", p::spacersLimit, 1, 0,
                                                       mostSpacersAllowed)};
    static const std::array post{
        partEntry<&F::post, &Post::diameterMm>("post_diameter", p::diameter, 0.1, 1,
                                               usual<&FrameDefaults::postDiameterMm>),
        partEntry<&F::post, &Post::lengthMm>("post_length", p::postLength, 10, 0,
                                             usual<&FrameDefaults::postLengthMm>),
        partEntry<&F::post, &Post::offsetMm>("post_offset", p::postOffset, 1, 0,
                                             usual<&FrameDefaults::postOffsetMm>),
        partEntry<&F::post, &Post::insertionMm>("post_insertion", p::insertion, 1, 0, insertion),
        partEntry<&F::post, &Post::frameInsertionMm>("frame_insertion", p::insertion, 1, 0,
                                                     usual<&FrameDefaults::frameInsertionMm>)};
    static const std::array weights{
        Entry{"max_system", p::systemMass, 1, 0, false, readOwn<&F::maxSystemKg>,
              writeOwn<&F::maxSystemKg>, nullptr},
        Entry{"bicycle_mass", p::bicycleMass, 0.5, 1, false, readOwn<&F::massKg>,
              writeOwn<&F::massKg>, usual<&FrameDefaults::bicycleMassKg>},
        Entry{"price", p::price, 10, 2, false, readOwn<&F::price>, writeOwn<&F::price>, nullptr}};
    switch (group) {
    case FrameGroup::First: return first;
    case FrameGroup::Rest: return rest;
    case FrameGroup::Wheel: return wheel;
    case FrameGroup::Guard: return guard;
    case FrameGroup::Headset: return headset;
    case FrameGroup::Post: return post;
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
