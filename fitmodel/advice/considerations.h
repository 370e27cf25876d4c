// SPDX-License-Identifier: MIT
//
// What speaks for and against a set-up, one row a consideration: what it is called in documents, in
// which unit it is told, and what it then comes to. Points are a measure (advice/search.h) times a
// weight (advice/weights.h); words are made elsewhere.
#pragma once

#include <array>
#include <string_view>

namespace tripoise {

enum class Consideration {
    Posture,    ///< how far the hands are from where they would be most comfortable
    Setback,    ///< knee over spindle that rails and post do not let be reached
    StemLength, ///< outside the use's natural range
    Spacers,
    StemAngle,   ///< steeper than ordinary
    Tidiness,    ///< parts that undo each other
    ToOrder,     ///< a stem that is not in stock
    ExposedPost, ///< outside its ordinary range
    Standover,   ///< less than wanted
    Agility,     ///< steady where agile is wanted, or the reverse
    Compactness, ///< larger where small is wanted
    Adjustment,  ///< room left to move the bar later
    Crank,       ///< off the rider's band
    BarWidth,    ///< off the rider's or the use's width
    ToeOverlap,  ///< shoe into the front wheel
    RiderHeight, ///< outside what the size's maker says
};

inline constexpr std::size_t considerationCount = 16;

template <typename T> using PerConsideration = std::array<T, considerationCount>;

[[nodiscard]] constexpr std::size_t indexOf(Consideration consideration)
{
    return static_cast<std::size_t>(consideration);
}

namespace advice {
struct Weighed;
}

struct ConsiderationRow {
    std::string_view key;
    std::string_view unit;
    double (*value)(const advice::Weighed&) = nullptr;
};

extern const PerConsideration<ConsiderationRow> considerations;

[[nodiscard]] inline const ConsiderationRow& rowOf(Consideration consideration)
{
    return considerations[indexOf(consideration)];
}

} // namespace tripoise
