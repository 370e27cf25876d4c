// SPDX-License-Identifier: MIT
//
// What is changed on a bicycle because of what its rider says of it: one thing at a time.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace tripoise {

enum class Change {
    BarUp,
    BarNearer,
    BarFurther,
    SaddleUp,
    SaddleDown,
    SaddleBack,
    SaddleAhead,
    SaddleTilt,
    OtherSaddle,
    Grips,  ///< others, or the bar's width and sweep
    Levers, ///< their reach and slope
    Shoes,
    FootBack, ///< on the pedal
    FootAhead,
    ShorterCrank,
    Headset,  ///< its play, the tyres' pressure, the load's place
    NextStep, ///< of a set-up that is too far for one visit
};

inline constexpr std::array allChanges{
    Change::BarUp,       Change::BarNearer,  Change::BarFurther,   Change::SaddleUp,
    Change::SaddleDown,  Change::SaddleBack, Change::SaddleAhead,  Change::SaddleTilt,
    Change::OtherSaddle, Change::Grips,      Change::Levers,       Change::Shoes,
    Change::FootBack,    Change::FootAhead,  Change::ShorterCrank, Change::Headset,
    Change::NextStep};

inline constexpr std::array<std::string_view, allChanges.size()> changeKeys{
    "bar_up",       "bar_nearer",  "bar_further",   "saddle_up", "saddle_down", "saddle_back",
    "saddle_ahead", "saddle_tilt", "other_saddle",  "grips",     "levers",      "shoes",
    "foot_back",    "foot_ahead",  "shorter_crank", "headset",   "next_step"};

[[nodiscard]] constexpr std::string_view keyOf(Change change)
{
    return changeKeys[static_cast<std::size_t>(change)];
}

/// One of several that help against the same, tried one after the other.
struct ChangeStep {
    Change change = {};
    double mm = 0.0;     ///< 0 of a part, or where nothing is measured
    bool taught = false; ///< clinically, rather than by common practice alone

    bool operator==(const ChangeStep&) const = default;
};

} // namespace tripoise
