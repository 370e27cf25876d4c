// SPDX-License-Identifier: MIT
#include "brief/part_entries.h"

#include "document/plausible.h"

#include <array>
#include <cmath>

namespace tripoise {
namespace {

using Number = std::optional<double>;
using StandIn = std::optional<Estimate>;
namespace p = plausible;

template <typename Whole, auto member> Number readOwn(const Whole& whole)
{
    return whole.*member;
}
template <typename Whole, auto member> void writeOwn(Whole& whole, Number value)
{
    whole.*member = value;
}
/// 0 while it is not typed.
template <typename Whole, auto member> Number readNeeded(const Whole& whole)
{
    return whole.*member > 0.0 ? Number(whole.*member) : std::nullopt;
}
template <typename Whole, auto member> void writeNeeded(Whole& whole, Number value)
{
    whole.*member = value.value_or(0.0);
}
template <auto part, auto member> Number readIn(const Stock& stock)
{
    return stock.*part.*member;
}
template <auto part, auto member> void writeIn(Stock& stock, Number value)
{
    stock.*part.*member = value;
}

/// Angles are typed to a tenth; a value made from degrees reads back as it was typed.
Number readStemAngle(const Stem& stem)
{
    constexpr double fine = 1e6;
    return std::round(stem.angle.deg() * fine) / fine;
}
void writeStemAngle(Stem& stem, Number value)
{
    stem.angle = Angle::degrees(value.value_or(0.0));
}
Number readPiece(const double& piece)
{
    return piece > 0.0 ? Number(piece) : std::nullopt;
}
void writePiece(double& piece, Number value)
{
    piece = value.value_or(0.0);
}

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

template <auto member>
EntryOf<Bar> barEntry(const char* key, const Limits& limits,
                      StandIn (*standIn)(const Bar&, const Tables&))
{
    return {key, limits, 1, 0, false, readOwn<Bar, member>, writeOwn<Bar, member>, standIn};
}
template <auto part, auto member>
EntryOf<Stock> restEntry(const char* key, const Limits& limits,
                         StandIn (*standIn)(const Stock&, const Tables&))
{
    return {key, limits, 1, 1, false, readIn<part, member>, writeIn<part, member>, standIn};
}

const EntryOf<Bar> barWidth{"bar_width",
                            p::barWidth,
                            10,
                            0,
                            true,
                            readNeeded<Bar, &Bar::widthMm>,
                            writeNeeded<Bar, &Bar::widthMm>,
                            nullptr};
const EntryOf<Bar> barClamp{"bar_clamp",
                            p::diameter,
                            0.1,
                            1,
                            false,
                            readOwn<Bar, &Bar::barClampMm>,
                            writeOwn<Bar, &Bar::barClampMm>,
                            usual<Bar, &PartDefaults::barClampMm>};

} // namespace

std::span<const EntryOf<Stem>> stemEntries()
{
    static const std::array entries{
        EntryOf<Stem>{"stem_length", p::stemLength, 10, 0, true, readNeeded<Stem, &Stem::lengthMm>,
                      writeNeeded<Stem, &Stem::lengthMm>, nullptr},
        EntryOf<Stem>{"stem_angle", p::stemAngle, 1, 1, true, readStemAngle, writeStemAngle,
                      nullptr},
        EntryOf<Stem>{"stem_bar_clamp", p::diameter, 0.1, 1, false,
                      readOwn<Stem, &Stem::barClampMm>, writeOwn<Stem, &Stem::barClampMm>,
                      usual<Stem, &PartDefaults::barClampMm>},
        EntryOf<Stem>{"stem_steerer", p::diameter, 0.1, 1, false, readOwn<Stem, &Stem::steererMm>,
                      writeOwn<Stem, &Stem::steererMm>, usual<Stem, &PartDefaults::stemSteererMm>},
        EntryOf<Stem>{"stem_quill", p::quill, 0.1, 1, false, readOwn<Stem, &Stem::quillMm>,
                      writeOwn<Stem, &Stem::quillMm>, nullptr},
        EntryOf<Stem>{"quill_raise", p::quillRaise, 5, 0, false, readOwn<Stem, &Stem::raiseMm>,
                      writeOwn<Stem, &Stem::raiseMm>, nullptr},
        EntryOf<Stem>{"clamp_height", p::clampHeight, 1, 0, false,
                      readOwn<Stem, &Stem::clampHeightMm>, writeOwn<Stem, &Stem::clampHeightMm>,
                      usual<Stem, &PartDefaults::clampHeightMm>}};
    return entries;
}

std::span<const EntryOf<Bar>> barEntries(BarKind kind)
{
    static const std::array flat{barWidth, barClamp,
                                 barEntry<&Bar::backsweepDeg>("backsweep", p::backsweep, flatSweep),
                                 barEntry<&Bar::riseMm>("bar_rise", p::barRise, levelBar),
                                 barEntry<&Bar::gripBackMm>("grip_back", p::gripBack, nullptr)};
    static const std::array swept{
        barWidth, barClamp, barEntry<&Bar::backsweepDeg>("backsweep", p::backsweep, nullptr),
        barEntry<&Bar::riseMm>("bar_rise", p::barRise, usual<Bar, &PartDefaults::sweptRiseMm>),
        barEntry<&Bar::gripBackMm>("grip_back", p::gripBack, sweptGripBack)};
    static const std::array drop{
        barWidth,
        barClamp,
        barEntry<&Bar::reachMm>("bar_reach", p::barReach, usual<Bar, &PartDefaults::dropReachMm>),
        barEntry<&Bar::dropMm>("bar_drop", p::barDrop, usual<Bar, &PartDefaults::dropDropMm>),
        barEntry<&Bar::hoodForwardMm>("hood_forward", p::hoodForward,
                                      usual<Bar, &PartDefaults::hoodForwardMm>),
        barEntry<&Bar::hoodUpMm>("hood_up", p::hoodUp, usual<Bar, &PartDefaults::hoodUpMm>)};
    switch (kind) {
    case BarKind::Flat: return flat;
    case BarKind::Swept: return swept;
    case BarKind::Drop: return drop;
    }
    return {};
}

std::span<const EntryOf<double>> spacerEntries()
{
    static const std::array entries{
        EntryOf<double>{"spacer", p::spacer, 1, 1, true, readPiece, writePiece, nullptr}};
    return entries;
}

std::span<const EntryOf<double>> crankEntries()
{
    static const std::array entries{
        EntryOf<double>{"crank", p::crank, 2.5, 1, true, readPiece, writePiece, nullptr}};
    return entries;
}

std::span<const EntryOf<Stock>> restEntries()
{
    static const std::array entries{
        EntryOf<Stock>{"fitted_crank", p::crank, 2.5, 1, false,
                       readOwn<Stock, &Stock::fittedCrankMm>,
                       writeOwn<Stock, &Stock::fittedCrankMm>, nullptr},
        restEntry<&Stock::saddle, &Saddle::lengthMm>("saddle_length", p::saddleLength,
                                                     usual<Stock, &PartDefaults::saddleLengthMm>),
        restEntry<&Stock::saddle, &Saddle::stackMm>("saddle_stack", p::saddleStack,
                                                    usual<Stock, &PartDefaults::saddleStackMm>),
        restEntry<&Stock::saddle, &Saddle::railTravelMm>("rail_travel", p::railTravel,
                                                         usual<Stock, &PartDefaults::railTravelMm>),
        restEntry<&Stock::pedal, &Pedal::stackMm>("pedal_stack", p::pedalStack,
                                                  usual<Stock, &PartDefaults::pedalStackMm>),
        restEntry<&Stock::pedal, &Pedal::lateralMm>("pedal_lateral", p::pedalLateral,
                                                    usual<Stock, &PartDefaults::pedalLateralMm>)};
    return entries;
}

} // namespace tripoise
