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
    RiddenForAnotherUse,
    SexNotStated,
    InseamNotTold, ///< the size is provisional
    WheelsDiffer,  ///< numbers: narrowest and widest tyre; `name` "mudguard" where only some have
                   ///< one
    RiddenSaddleDoubtful, ///< numbers: ridden height, flexion of the knee on it
    NoseForSaddlePoint,   ///< numbers: setback as told, setback with it taken for the nose's
    PositionKept,         ///< numbers: saddle height, setback, then where known: grip ahead of the
                          ///< saddle point and above it
    Complained,     ///< numbers: hands up, hands back, saddle up against today, then how far the
                    ///< complaint moved each; hands 0 where today's are not known or another
                    ///< bike's; `name` is the complaint's key
    FeetDownLowers, ///< numbers: lowered by, knee without it, knee with it
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
    KeptPositionMissed, ///< numbers: saddle higher, further back, bar further ahead of the saddle
                        ///< and higher above it than in the kept position
    FirstStep,          ///< numbers: saddle height, setback, grip ahead of the bracket, above it
    FeetStayUp,         ///< numbers: how far what was to stand is above the ground
    CrankSwap,          ///< numbers: fitted, advised
    BarCutDown,         ///< numbers: width, width wanted
    LeaveSteererLong,   ///< numbers: cut, extra to leave at least, at most
    QuillMark,          ///< numbers: raised by, the most to the mark
    HosesShort,         ///< numbers: how far the bar is from where it would be as sold
    // about how it rides
    ToeUnderStandard,    ///< limit; numbers: clearance, least; `name` is the standard's key
    ToeOverlaps,         ///< numbers: overlap, then, where it touches: steering angle in degrees,
                         ///< radius of that turn, mm/s ridden in it; `name`: tyre or mudguard
    ToeNear,             ///< numbers: room; `name`: tyre or mudguard
    HeelNearBag,         ///< numbers: room, wanted, then in adjustable dropouts the room with the
                         ///< wheel at their back; negative room strikes
    KneeNearBar,         ///< numbers: room, wanted, steering angle in degrees
    PitchesEarly,        ///< numbers: deceleration in g that lifts the rear wheel, counted on
    FrontWheelLight,     ///< numbers: share it carries, rider fully back, least share
    FrontLiftsClimbing,  ///< numbers: gradient under pedalling, counted on; shares of one
    NoSteadySpeed,       ///< the bicycle never keeps itself upright
    NoCapsizeSpeed,      ///< numbers: mm/s from which it is steady, without an upper end
    SteeringOutOfAdvice, ///< numbers: head angle, low, high; height of the axis, low, high
    // about contacts pulled about by hand
    SaddleBeyondRails, ///< numbers: setback tried, setback rails and post reach
    BarBelowStem,      ///< numbers: how far the bar is below a stem without spacers, along the axis
    StemNotMade,       ///< numbers: length, shortest and longest made
};

struct Finding {
    FindingCode code = {};
    Severity severity = Severity::Note;
    std::vector<double> numbers;
    std::string name;
    std::optional<Use> use;

    bool operator==(const Finding&) const = default;
};

using Findings = std::vector<Finding>;

} // namespace tripoise
