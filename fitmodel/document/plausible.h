// SPDX-License-Identifier: MIT
//
// What can be believed of each dimension of a bicycle and its parts: wide enough for anything that
// is built for grown riders, narrow enough that a slip of the pen or of the unit falls outside.
// They refuse typing errors; they recommend nothing. Common practice, no source.
#pragma once

#include "document/limits.h"

namespace tripoise::plausible {

// frame
inline constexpr Limits stack{300, 900, "mm"};
inline constexpr Limits reach{200, 650, "mm"};
inline constexpr Limits headAngle{55, 85, "deg"};
inline constexpr Limits seatAngle{60, 85, "deg"};
inline constexpr Limits headTube{40, 400, "mm"};
inline constexpr Limits seatTube{200, 900, "mm"};
inline constexpr Limits topTube{350, 800, "mm"};
inline constexpr Limits chainstay{300, 700, "mm"};
inline constexpr Limits bbDrop{-100, 150, "mm"};
inline constexpr Limits wheelbase{700, 1500, "mm"};
inline constexpr Limits frontCentre{400, 900, "mm"};
inline constexpr Limits forkLength{250, 650, "mm"};
inline constexpr Limits forkOffset{0, 120, "mm"};
inline constexpr Limits standover{400, 1100, "mm"};
inline constexpr Limits beadSeat{200, 700, "mm"};
inline constexpr Limits tyre{15, 120, "mm"};
inline constexpr Limits mudguardGap{0, 80, "mm"};
inline constexpr Limits mudguardWidth{0, 150, "mm"};
inline constexpr Limits headsetStack{0, 80, "mm"};
inline constexpr Limits diameter{20, 45, "mm"};
inline constexpr Limits steererLength{80, 600, "mm"};
inline constexpr Limits spacersLimit{0, 150, "mm"};
inline constexpr Limits postLength{80, 600, "mm"};
inline constexpr Limits postOffset{-50, 80, "mm"};
inline constexpr Limits insertion{20, 300, "mm"};
inline constexpr Limits systemMass{40, 400, "kg"};
inline constexpr Limits bicycleMass{1, 80, "kg"};
inline constexpr Limits riderHeight{1200, 2300, "mm"};
inline constexpr Limits price{0, 1e9, ""};

// parts
inline constexpr Limits stemLength{20, 200, "mm"};
inline constexpr Limits stemAngle{-60, 60, "deg"};
inline constexpr Limits clampHeight{15, 100, "mm"};
inline constexpr Limits quill{20, 30, "mm"};
inline constexpr Limits quillRaise{0, 150, "mm"};
inline constexpr Limits spacer{0.5, 60, "mm"};
inline constexpr Limits crank{100, 220, "mm"};
inline constexpr Limits barWidth{250, 1000, "mm"};
inline constexpr Limits backsweep{-10, 90, "deg"};
inline constexpr Limits barRise{-100, 250, "mm"};
inline constexpr Limits gripBack{-100, 350, "mm"};
inline constexpr Limits barReach{0, 200, "mm"};
inline constexpr Limits barDrop{0, 250, "mm"};
inline constexpr Limits hoodForward{-30, 100, "mm"};
inline constexpr Limits hoodUp{-50, 120, "mm"};
inline constexpr Limits saddleLength{120, 400, "mm"};
inline constexpr Limits saddleStack{10, 200, "mm"};
inline constexpr Limits railTravel{0, 150, "mm"};
inline constexpr Limits pedalStack{-20, 60, "mm"};
inline constexpr Limits pedalLateral{60, 250, "mm"};

// rider and riding
inline constexpr Limits readingSd{1e-3, 200, ""};
inline constexpr Limits legRaise{20, 130, "deg"};
inline constexpr Limits sole{0, 60, "mm"};
inline constexpr Limits shoeLength{200, 400, "mm"};
inline constexpr Limits luggage{0, 100, "kg"};
inline constexpr Limits share{0, 1, ""};

// the bicycle ridden today, from the bottom bracket
inline constexpr Limits saddleHeight{400, 1000, "mm"};
inline constexpr Limits saddleSetback{-200, 500, "mm"};
inline constexpr Limits gripReach{50, 1000, "mm"};
inline constexpr Limits gripHeight{200, 1400, "mm"};
// and as a shop may take it, from its saddle
inline constexpr Limits noseBehind{-300, 400, "mm"};
inline constexpr Limits barBelow{-500, 400, "mm"};
inline constexpr Limits noseToBar{100, 900, "mm"};

} // namespace tripoise::plausible
