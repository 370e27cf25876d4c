// SPDX-License-Identifier: MIT
//
// One size of a frame as its maker's table gives it. Absent is absent; what is not given is derived
// or assumed when the skeleton is made.
#pragma once

#include "base/range.h"

#include <optional>
#include <string>

namespace tripoise {

struct Geometry {
    double stackMm = 0.0;
    double reachMm = 0.0;
    double headAngleDeg = 0.0;
    std::optional<double> seatAngleDeg; ///< effective, at the rider's saddle height
    std::optional<double> headTubeMm;
    std::optional<double> seatTubeMm; ///< centre to the top of the tube
    std::optional<double> topTubeEffectiveMm;
    std::optional<Range> chainstayMm; ///< both ends of an adjustable dropout
    std::optional<double> bbDropMm;
    std::optional<double> wheelbaseMm;
    std::optional<double> frontCentreMm; ///< straight
    std::optional<double> forkLengthMm;  ///< crown seat to axle, straight
    std::optional<double> forkOffsetMm;  ///< perpendicular to the steering axis
    std::optional<double> standoverMm;

    bool operator==(const Geometry&) const = default;
};

struct Mudguard {
    std::optional<double> gapMm;
    std::optional<double> widthMm;

    bool operator==(const Mudguard&) const = default;
};

/// The wheels a size is made for.
struct Wheel {
    std::optional<double> beadSeatMm;
    std::optional<double> maxTyreMm;

    bool operator==(const Wheel&) const = default;
};

/// What is on its wheels.
struct Mounting {
    std::optional<double> tyreMm;
    std::optional<double> beadSeatMm; ///< of rims other than the size's own
    std::optional<Mudguard> mudguard;

    bool operator==(const Mounting&) const = default;
};

enum class SteererMaterial { Steel, Aluminium, Carbon };

struct Headset {
    std::optional<double> upperMm;
    std::optional<double> lowerMm;
    std::optional<double> steererMm;       ///< outside diameter
    std::optional<double> steererLengthMm; ///< from the crown seat
    std::optional<SteererMaterial> material;
    std::optional<double> maxSpacersMm;
    std::optional<double> quillMm = {}; ///< inside diameter of a threaded steerer

    bool operator==(const Headset&) const = default;
};

struct Post {
    std::optional<double> diameterMm;
    std::optional<double> lengthMm;         ///< whole, to the middle of the rail clamp
    std::optional<double> offsetMm;         ///< of the clamp behind the post's axis
    std::optional<double> insertionMm;      ///< least, by the post's mark
    std::optional<double> frameInsertionMm; ///< least, by the frame's maker

    bool operator==(const Post&) const = default;
};

/// What the maker puts on a size sold complete.
struct AsSold {
    std::optional<double> stemMm;
    std::optional<double> barWidthMm;
    std::optional<double> crankMm;
    std::optional<double> tyreMm;

    bool operator==(const AsSold&) const = default;
};

struct FrameSize {
    std::string model;
    std::string size;
    Geometry geometry;
    Wheel wheel;
    std::optional<Mounting> mounting; ///< of this size alone; otherwise the bicycle's
    Headset headset;
    Post post;
    std::optional<Range> riderHeightMm; ///< stature of its riders, by the maker
    AsSold asSold;
    std::optional<double> maxSystemKg;
    std::optional<double> massKg;
    std::optional<double> price;

    bool operator==(const FrameSize&) const = default;
};

} // namespace tripoise
