// SPDX-License-Identifier: MIT
//
// What of a side view is painted, and how it is placed. The defaults are those of a picture file: a
// sheet with title and title block, everything fitted into it.
#pragma once

#include "drawing/fit.h"

#include <optional>
#include <vector>

namespace tripoise {

struct Layers {
    bool bike = true; ///< the chosen one
    bool rider = true;
    bool angles = true; ///< of the joints, with their ranges; need the rider
    bool dimensions = false;
    bool wheels = true;
    bool ground = true;
    bool other = true;  ///< the size beside
    bool ridden = true; ///< the bicycle of today

    bool operator==(const Layers&) const = default;
};

/// How much of a joint's label is written.
enum class LabelForm {
    Whole, ///< name, angle, and the range below
    Name,  ///< name and angle
    Value, ///< the angle alone
};

/// Where a joint's label stands: on one of a few rings round its joint, so many steps round it from
/// the middle of the angle; or, past the rings, in a margin and so many half rows lower.
struct LabelSpot {
    int ring = 0;
    int turn = 0;
    LabelForm form = LabelForm::Whole;

    bool operator==(const LabelSpot&) const = default;
};

struct DrawingOptions {
    Layers layers;
    bool furniture = true; ///< title, block and scale of a sheet; else a drafting board's few words
    bool words = true;     ///< false for the picture alone
    bool kneePath = false; ///< trace of the knee over the turn
    bool tape = false;     ///< dimensions as a workshop takes them
    std::optional<double> lettersPx;    ///< of small letters; in proportion to the area where empty
    std::optional<DrawingFit> viewport; ///< fitted where empty
    std::vector<LabelSpot> spots;       ///< where joint labels stood before, to stay if they can
    bool holdSpots = false;             ///< and to stay even if they could not

    bool operator==(const DrawingOptions&) const = default;
};

} // namespace tripoise
