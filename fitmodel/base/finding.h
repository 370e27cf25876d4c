// SPDX-License-Identifier: MIT
//
// Something worth telling about a result: a code and its arguments. Sentences are made elsewhere.
#pragma once

#include "base/use.h"

#include <string>
#include <vector>

namespace tripoise {

enum class Severity { Note, Caution, Limit };

enum class FindingCode {
    // about the rider; `name` is the measurement's key
    SuspiciousMeasurement, ///< numbers: value, expected, odds against (one in so many)
    ReadingsDisagree,      ///< numbers: lowest, highest reading
    UnusualBody,           ///< numbers: odds against the set of measurements (one in so many)
    RiddenHeightCounts,    ///< numbers: ridden height, height without it, shift of the target
    SexNotStated,
    // about a size; `name` is the geometry key
    GeometryAssumed, ///< numbers: value assumed
    GeometryDerived, ///< numbers: value derived
    // about a set-up; limits first
    NoCockpitFits,         ///< nothing in stock fits this size's steerer
    PostTooShort,          ///< numbers: insertion left, insertion needed
    SaddleCannotGoLow,     ///< numbers: exposed post, least possible
    SpacersOverLimit,      ///< numbers: spacers, limit
    SteererTooShort,       ///< numbers: needed, there is
    TyreTooWide,           ///< numbers: tyre, maker's limit
    OverSystemWeight,      ///< numbers: system mass, limit
    NoStandover,           ///< numbers: clearance
    PedalStrikes,          ///< numbers: lean in degrees, least lean
    StandoverTight,        ///< numbers: clearance, wanted
    SetbackOutOfRails,     ///< numbers: setback wanted, setback reached
    StemOutOfNaturalRange, ///< numbers: length, low, high
    BarOutOfReach,         ///< no posture reaches the grip; `use` set
    TrunkOutOfRange,       ///< numbers: angle, low, high; `use` set
    ArmTrunkOutOfRange,    ///< numbers: angle, low, high; `use` set
    KneeOutOfRange,        ///< numbers: flexion, low, high
    CrankSwap,             ///< numbers: fitted, advised
    BarCutDown,            ///< numbers: width, width wanted
    LeaveSteererLong,      ///< numbers: cut, extra to leave at least, at most
    ToeNotChecked,         ///< toe clearance is not computed; check by hand
    // about contacts pulled about by hand
    SaddleBeyondRails, ///< numbers: setback tried, setback rails and post reach
    BarBelowStem,      ///< numbers: how far the bar is below a stem without spacers, along the axis
    StemNotMade,       ///< numbers: length, shortest and longest made
};

struct Finding {
    FindingCode code;
    Severity severity = Severity::Note;
    std::vector<double> numbers;
    std::string name;
    std::optional<Use> use;

    bool operator==(const Finding&) const = default;
};

using Findings = std::vector<Finding>;

} // namespace tripoise
