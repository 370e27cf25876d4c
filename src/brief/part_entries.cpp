// SPDX-License-Identifier: MIT
#include "brief/part_entries.h"

#include <array>

namespace tripoise {
namespace {

using StandIn = std::optional<Estimate>;
using D = PartDefaults;

template <typename Whole, auto member> StandIn usual(const Whole&, const Tables& tables)
{
    return Estimate{tables.parts.*member, 0.0, Origin::Assumed};
}
StandIn levelBar(const Bar&, const Tables&)
{
    return Estimate{0.0, 0.0, Origin::Assumed};
}
/// Backsweep is not used where the grip was measured.
StandIn flatSweep(const Bar& bar, const Tables& tables)
{
    if (bar.gripBackMm)
        return std::nullopt;
    return Estimate{tables.parts.flatBacksweepDeg, 0.0, Origin::Assumed};
}
StandIn sweptGripBack(const Bar& bar, const Tables& tables)
{
    if (bar.backsweepDeg)
        return std::nullopt;
    return Estimate{tables.parts.sweptGripBackMm, 0.0, Origin::Assumed};
}
template <auto member> StandIn usualFrame(const Bicycle&, const Tables& tables)
{
    return Estimate{tables.frame.*member, 0.0, Origin::Assumed};
}
StandIn guardGap(const Bicycle&, const Tables& tables)
{
    return Estimate{tables.frame.mudguardGapMm, 0.0, Origin::Assumed};
}
/// Each size's own tyre counts where the bicycle's is not stated.
StandIn guardWidth(const Bicycle& bicycle, const Tables& tables)
{
    if (!bicycle.tyreMm)
        return std::nullopt;
    return Estimate{*bicycle.tyreMm + tables.frame.mudguardWidthMm, 0.0, Origin::Assumed};
}

EntryOf<double> piece(const char* key, std::vector<double> Stock::*list)
{
    return {key, pieceFacts(list), [](const double& piece) { return asTyped(piece); },
            [](double& piece, std::optional<double> typed) { take(piece, typed); }};
}

} // namespace

std::span<const EntryOf<Stem>> stemEntries()
{
    static const std::array entries{
        entryFor("stem_length", &Stem::lengthMm),
        entryFor("stem_angle", &Stem::angle),
        entryFor("stem_bar_clamp", &Stem::barClampMm, usual<Stem, &D::barClampMm>),
        entryFor("stem_steerer", &Stem::steererMm, usual<Stem, &D::stemSteererMm>),
        entryFor("stem_quill", &Stem::quillMm),
        entryFor("quill_raise", &Stem::raiseMm),
        entryFor("clamp_height", &Stem::clampHeightMm, usual<Stem, &D::clampHeightMm>)};
    return entries;
}

std::span<const EntryOf<Bar>> barEntries(BarKind kind)
{
    static const auto width = entryFor("bar_width", &Bar::widthMm);
    static const auto clamp = entryFor("bar_clamp", &Bar::barClampMm, usual<Bar, &D::barClampMm>);
    static const std::array flat{width, clamp, entryFor("backsweep", &Bar::backsweepDeg, flatSweep),
                                 entryFor("bar_rise", &Bar::riseMm, levelBar),
                                 entryFor("grip_back", &Bar::gripBackMm)};
    static const std::array swept{width, clamp, entryFor("backsweep", &Bar::backsweepDeg),
                                  entryFor("bar_rise", &Bar::riseMm, usual<Bar, &D::sweptRiseMm>),
                                  entryFor("grip_back", &Bar::gripBackMm, sweptGripBack)};
    static const std::array drop{
        width,
        clamp,
        entryFor("bar_reach", &Bar::reachMm, usual<Bar, &D::dropReachMm>),
        entryFor("bar_drop", &Bar::dropMm, usual<Bar, &D::dropDropMm>),
        entryFor("hood_forward", &Bar::hoodForwardMm, usual<Bar, &D::hoodForwardMm>),
        entryFor("hood_up", &Bar::hoodUpMm, usual<Bar, &D::hoodUpMm>)};
    switch (kind) {
    case BarKind::Flat: return flat;
    case BarKind::Swept: return swept;
    case BarKind::Drop: return drop;
    }
    return {};
}

std::span<const EntryOf<double>> spacerEntries()
{
    static const std::array entries{piece("spacer", &Stock::spacersMm)};
    return entries;
}

std::span<const EntryOf<double>> crankEntries()
{
    static const std::array entries{piece("crank", &Stock::cranksMm)};
    return entries;
}

std::span<const EntryOf<Bicycle>> bicycleEntries(BicycleGroup group)
{
    using B = Bicycle;
    static const std::array wheels{entryFor("tyre", &B::tyreMm, usualFrame<&FrameDefaults::tyreMm>),
                                   entryFor("other_rim", &B::beadSeatMm)};
    static const std::array guard{
        entryFor("mudguard_gap", &B::mudguard, &Mudguard::gapMm, guardGap),
        entryFor("mudguard_width", &B::mudguard, &Mudguard::widthMm, guardWidth)};
    static const std::array parts{
        entryFor("fitted_crank", &B::crankMm),
        entryFor("pedal_stack", &B::pedal, &Pedal::stackMm, usual<B, &D::pedalStackMm>),
        entryFor("pedal_lateral", &B::pedal, &Pedal::lateralMm, usual<B, &D::pedalLateralMm>),
        entryFor("saddle_length", &B::saddle, &Saddle::lengthMm, usual<B, &D::saddleLengthMm>),
        entryFor("saddle_stack", &B::saddle, &Saddle::stackMm, usual<B, &D::saddleStackMm>),
        entryFor("rail_travel", &B::saddle, &Saddle::railTravelMm, usual<B, &D::railTravelMm>)};
    switch (group) {
    case BicycleGroup::Wheels: return wheels;
    case BicycleGroup::Guard: return guard;
    case BicycleGroup::Parts: return parts;
    }
    return {};
}

} // namespace tripoise
