// SPDX-License-Identifier: MIT
//
// What a drawing needs and neither a geometry table nor a measured body holds. Nothing is computed
// from these but the look of a line: diameters of an ordinary steel frame, the outline of ordinary
// parts, a figure of the same slimness for every rider. Common practice, no source.
#pragma once

#include "base/angle.h"

namespace tripoise::proportions {

// Frame, millimetres.
inline constexpr double topTubeDiameter = 30.0;
inline constexpr double downTubeDiameter = 36.0;
inline constexpr double seatTubeDiameter = 30.0;
inline constexpr double headTubeDiameter = 40.0;
inline constexpr double chainstayAtShell = 24.0;
inline constexpr double chainstayAtAxle = 15.0;
inline constexpr double seatstayDiameter = 15.0;
inline constexpr double forkAtCrown = 30.0;
inline constexpr double forkAtAxle = 16.0;
inline constexpr double forkStraightShare = 0.40; ///< of the blade, before it bends to the axle
inline constexpr double forkBendShare =
    0.66; ///< where the lines before and after the bend would meet
inline constexpr double shellDiameter = 44.0;
inline constexpr double seatTubeAboveTopTube = 28.0; ///< its top, above the top tube's centre line
inline constexpr double downTubeAboveHeadTubeEnd = 26.0;
inline constexpr double topTubeDropUnknown =
    45.0; ///< towards the saddle, where no seat tube is given
inline constexpr double leastPostDrawn = 60.0;

// Wheels.
inline constexpr double rimDepth = 22.0;
inline constexpr double rearHubDiameter = 46.0;
inline constexpr double frontHubDiameter = 32.0;
inline constexpr int spokes = 28;

// Post, saddle, stem, cranks.
inline constexpr double postDiameter = 27.0;
inline constexpr double stemDiameter = 30.0;
inline constexpr double stemClampDiameter = 42.0;
inline constexpr double steererClampBeyondSteerer = 9.0;
inline constexpr double spacerBeyondSteerer = 7.0;
inline constexpr double topCapHeight = 5.0;
inline constexpr double barDiameter = 24.0;
inline constexpr double barDiameterSwept = 22.0;
inline constexpr double gripDiameter = 33.0;
inline constexpr double tapeDiameter = 31.0;
inline constexpr double crankAtShell = 30.0;
inline constexpr double crankAtPedal = 20.0;
inline constexpr double chainringRadius = 80.0;
inline constexpr double cogRadius = 36.0;
inline constexpr double pedalLength = 92.0;
inline constexpr double saddleAhead = 150.0; ///< of a saddle of which nothing is known
inline constexpr double saddleBehind = 120.0;
inline constexpr Angle riddenCrankArc = Angle::degrees(28.0); ///< either way of the near pedal
inline constexpr double advisedMark = 18.0; ///< half of the cross where a contact would be

// Seen from above.
inline constexpr double crankOut = 75.0;       ///< of its middle from the bicycle's plane
inline constexpr double staysBehind = 210.0;   ///< as far as they are drawn
inline constexpr double staysOut = 62.0;       ///< and how far apart they are there, either way
inline constexpr double heelOfForefoot = 0.75; ///< breadth

// The figure, as shares of stature.
inline constexpr double headHeight = 0.132;
inline constexpr double headDepth = 0.108;
inline constexpr double neckUp = 0.012;   ///< root of the neck beyond the shoulder, along the trunk
inline constexpr double neckBack = 0.012; ///< and behind it
inline constexpr double kneeHalf = 0.031; ///< half of its thickness
inline constexpr double wristShare = 0.19; ///< of the forearm's link, from the grip

} // namespace tripoise::proportions
