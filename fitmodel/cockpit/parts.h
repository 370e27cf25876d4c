// SPDX-License-Identifier: MIT
//
// The shop's box of parts.
#pragma once

#include "base/angle.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

/// How a stem comes to sit on a steerer.
enum class StemJoint { Direct, Shim, QuillAdaptor };

struct Stem {
    double lengthMm = 0.0;
    Angle angle; ///< to the normal of the steerer, rise positive
    bool reversible = true;
    std::optional<double> barClampMm;
    std::optional<double> steererMm;
    std::optional<double> clampHeightMm;
    bool inStock = true;
    std::optional<double> quillMm = {};  ///< that goes inside a threaded steerer
    std::optional<double> raiseMm = {};  ///< of a quill, from its lowest place to its mark
    StemJoint joint = StemJoint::Direct; ///< of no document: set where an adaptor is wanted
    std::string id = {};                 ///< the same for as long as the part is known

    bool operator==(const Stem&) const = default;
};

/// The same stem turned over.
[[nodiscard]] inline Stem flipped(Stem stem)
{
    stem.angle = -stem.angle;
    return stem;
}

/// What a fork has for a stem.
struct Steerer {
    double outsideMm = 0.0;
    std::optional<double> quillMm; ///< inside, where it is threaded

    bool operator==(const Steerer&) const = default;
};

/// A shim or a quill adaptor: a stem for one diameter on a steerer of another.
struct SteererAdaptor {
    Steerer on;
    double clampMm = 0.0;
};

enum class BarKind { Flat, Swept, Drop };

struct Bar {
    std::string name;
    BarKind kind = BarKind::Flat;
    double widthMm = 0.0;
    std::optional<double> backsweepDeg;
    std::optional<double> riseMm;
    std::optional<double> gripBackMm; ///< palm behind the clamp
    std::optional<double> reachMm;
    std::optional<double> dropMm;
    std::optional<double> hoodForwardMm; ///< of the palm, beyond the bar's reach
    std::optional<double> hoodUpMm;      ///< of the palm, above the clamp
    std::optional<double> barClampMm;
    std::string id = {}; ///< the same for as long as the part is known

    bool operator==(const Bar&) const = default;
};

struct Saddle {
    std::optional<double> lengthMm;
    std::optional<double> stackMm;      ///< rails to the saddle point
    std::optional<double> railTravelMm; ///< in all

    bool operator==(const Saddle&) const = default;
};

struct Pedal {
    std::optional<double> stackMm;   ///< spindle to tread
    std::optional<double> lateralMm; ///< middle of the pedal from the bicycle's plane

    bool operator==(const Pedal&) const = default;
};

struct Stock {
    std::vector<Stem> stems;
    std::vector<double> spacersMm; ///< the pieces, each usable once
    std::vector<Bar> bars;
    std::vector<double> cranksMm;

    bool operator==(const Stock&) const = default;
};

/// Stand-ins for what the box does not state (assets/parts.json).
struct PartDefaults {
    double barClampMm = 0.0;
    double stemSteererMm = 0.0;
    double clampHeightMm = 0.0;
    double steererBelowClampTopMm = 0.0; ///< gap between steerer end and stem top
    double palmFromBarEndMm = 0.0;
    double straightCentreMm = 0.0; ///< half of the bar's unswept middle
    double flatBacksweepDeg = 0.0;
    double flatPalmUpMm = 0.0; ///< palm above the clamp on a bar without rise
    double sweptGripBackMm = 0.0;
    double sweptRiseMm = 0.0;
    double dropReachMm = 0.0;
    double dropDropMm = 0.0;
    double hoodForwardMm = 0.0;
    double hoodUpMm = 0.0;
    double topsForwardMm = 0.0;
    double topsUpMm = 0.0;
    double topsHalfWidthMm = 0.0;
    double dropsForwardShare = 0.0; ///< of the bar's reach
    double dropsUpMm = 0.0;         ///< palm above the bar's lowest line
    double saddleLengthMm = 0.0;
    double saddleStackMm = 0.0;
    double railTravelMm = 0.0;
    double noseAheadShare = 0.0; ///< saddle point to nose, share of the saddle's length
    double pedalStackMm = 0.0;
    double pedalLateralMm = 0.0;
    double pedalWidthMm = 0.0;
    double soleMm = 0.0;
    double shoeBeyondFootMm = 0.0;
    double quillRaiseMm = 0.0;
    double quillStepMm = 0.0; ///< of the heights that are compared
    std::vector<SteererAdaptor> adaptors;
    double leaveSteererLowMm = 0.0; ///< uncut steerer to leave on a first build
    double leaveSteererHighMm = 0.0;
    double leastBarCutMm = 0.0; ///< less is not cut
    // How a stem is mounted on a bicycle as sold, and what hoses and cables bear from there.
    double soldStemDeg = 0.0;
    double soldSpacersMm = 0.0;
    double hosesShortBeyondMm = 0.0;
    // What a finished bicycle may be off by.
    double builtSaddleMm = 0.0;
    double builtBarMm = 0.0;
    double builtPartMm = 0.0;
    double builtStemDeg = 0.0;
};

} // namespace tripoise
