// SPDX-License-Identifier: MIT
//
// What can be believed of a number that stands in more than one place of the documents
// (document/field_table.h has the others).
#pragma once

#include "document/limits.h"

namespace tripoise::plausible {

inline constexpr Limits beadSeat{200, 700, "mm"};
inline constexpr Limits tyre{15, 120, "mm"};
inline constexpr Limits diameter{20, 45, "mm"};
inline constexpr Limits quill{20, 30, "mm"};
inline constexpr Limits stemLength{20, 200, "mm"};
inline constexpr Limits stemAngle{-60, 60, "deg"};
inline constexpr Limits barWidth{250, 1000, "mm"};
inline constexpr Limits crank{100, 220, "mm"};
inline constexpr Limits saddleLength{120, 400, "mm"};

// contacts, from the bottom bracket
inline constexpr Limits saddleHeight{400, 1000, "mm"};
inline constexpr Limits saddleSetback{-200, 500, "mm"};
inline constexpr Limits gripReach{50, 1000, "mm"};
inline constexpr Limits gripHeight{200, 1400, "mm"};

// and as a shop takes them, from the saddle
inline constexpr Limits noseSetback{-300, 400, "mm"};
inline constexpr Limits noseToBar{100, 900, "mm"};
inline constexpr Limits barBelowSaddle{-500, 400, "mm"};

} // namespace tripoise::plausible
