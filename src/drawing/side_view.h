// SPDX-License-Identifier: MIT
//
// The side view as plain points, before anything is painted: the advised bicycle whole, the rider
// on it, the other size beside it, and where the two differ. Millimetres, bike axes of the chosen
// size (base/axes.h), seen from the rider's right. Nothing is computed here that the model can
// compute; what a drawing needs and a geometry table does not hold (diameters, curves) stands in
// drawing/proportions.h.
//
// Both bicycles stand on the same ground with their rear wheels one behind the other.
#pragma once

#include "advice/advise.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

struct WheelSketch {
    Point axle = Point::Zero();
    double radiusMm = 0.0;         ///< outside of the tyre
    double beadSeatRadiusMm = 0.0; ///< outside of the rim
    std::optional<double> mudguardRadiusMm;
};

/// A tube's centre line.
struct TubeSketch {
    Point from = Point::Zero();
    Point to = Point::Zero();
};

struct SaddleSketch {
    Point point = Point::Zero(); ///< top of the saddle where it is 80 mm wide
    Point nose = Point::Zero();  ///< level with the point
    Point tail = Point::Zero();
    Point railClamp = Point::Zero();
    double railTravelMm = 0.0;
    TubeSketch post; ///< exposed, along the seat tube's axis
};

struct BarSketch {
    BarKind kind = BarKind::Flat;
    std::vector<Point> curve; ///< centre line from the clamp outwards, as projected
    std::vector<Point> held;  ///< the part that is wrapped, for the hands
    std::vector<Point> hood;  ///< outline of the lever's body on a drop bar
    std::vector<Point> lever; ///< brake lever, a line
    double reachMm = 0.0;
    double dropMm = 0.0;
};

struct CockpitSketch {
    std::vector<TubeSketch> spacers; ///< the pieces, lowest first
    TubeSketch steererClamp;         ///< along the steering axis, the stem's height
    TubeSketch stem;                 ///< from the steering axis to the bar's clamp
    Point grip = Point::Zero();      ///< centre of the palm at the bar's main place
    BarSketch bar;
};

struct CrankSketch {
    double lengthMm = 0.0;
    Point low = Point::Zero();  ///< spindle of the near pedal, at the bottom of the turn
    Point high = Point::Zero(); ///< of the far one, at the top
    Angle pedalPitch;           ///< heel above toe
    double pedalStackMm = 0.0;
};

/// The figures of a set-up that are told beside the drawing.
struct SetupFigures {
    double saddleHeightMm = 0.0;
    double setbackMm = 0.0;
    Stem stem; ///< as mounted
    bool stemFlipped = false;
    double spacersMm = 0.0;
    Bar bar;
    double crankMm = 0.0;
};

/// One bicycle in its own bike axes. Without a cockpit in stock it is a bare frame with wheels.
struct BikeSketch {
    std::string model;
    std::string size;

    TubeSketch headTube;  ///< from its top to its lower end
    TubeSketch seatTube;  ///< from the bottom bracket to its top
    TubeSketch topTube;   ///< from the seat tube to the head tube
    TubeSketch downTube;  ///< from the bottom bracket to the head tube
    TubeSketch chainstay; ///< from the bottom bracket to the rear axle
    TubeSketch seatstay;  ///< from the seat tube to the rear axle
    TubeSketch lowerHeadset;
    TubeSketch upperHeadset;
    TubeSketch fork; ///< from the crown to the front axle; its blades run down the steering axis
    Angle headAngle;
    Angle seatAngle;
    double steererMm = 0.0;

    WheelSketch rear;
    WheelSketch front;
    double groundY = 0.0;
    double tyreMm = 0.0;

    std::optional<SaddleSketch> saddle;
    std::optional<CockpitSketch> cockpit;
    std::optional<CrankSketch> crank;
    std::optional<SetupFigures> figures;
};

enum class Joint { Trunk, ArmTrunk, Elbow, Knee };

/// An angle shown where it is: from a line at the joint, in a sense, to the limb.
struct JointAngle {
    Joint joint = Joint::Trunk;
    Point at = Point::Zero();
    Angle zero;         ///< direction from which the angle is measured
    double sense = 1.0; ///< +1 counterclockwise, -1 clockwise
    Angle value;
    Angle low;
    Angle high;

    [[nodiscard]] Angle directionOf(Angle angle) const { return zero + sense * angle; }
    [[nodiscard]] bool comfortable() const { return value >= low && value <= high; }
};

struct RiderSketch {
    Use use = Use::City;               ///< whose position is drawn
    GripPlace place = GripPlace::Flat; ///< where the hands are
    Point hip = Point::Zero();         ///< lower end of the trunk
    Point shoulder = Point::Zero();
    Point elbow = Point::Zero();
    Point wrist = Point::Zero();
    Point grip = Point::Zero();
    Point neck = Point::Zero(); ///< upper end of the spine
    Point head = Point::Zero(); ///< centre of the head
    Angle gaze;                 ///< tilt of the head's upright axis from the x axis
    LegPoints near;             ///< crank at the bottom of the turn
    LegPoints far;              ///< crank at the top
    double ankleHeightMm = 0.0;
    double soleMm = 0.0;
    double shoeBeyondFootMm = 0.0;
    double statureMm = 0.0;
    std::vector<JointAngle> angles; ///< trunk, arm-trunk, elbow, knee
    double beyondMm = 0.0;          ///< how far the grip is out of reach
};

enum class LeaderKind {
    BarHigher,  ///< grip, from the ground
    BarFurther, ///< grip, from the bottom bracket
    StemLonger,
    SpacersMore,
    HeadTubeHigher,    ///< top of the head tube, from the ground
    TopTubeHigher,     ///< standover
    FrontWheelFurther, ///< from the rear wheel
    SaddleHigher,      ///< from the ground
    SaddleFurtherBack, ///< from the bottom bracket
    CrankLonger,
};

/// One difference between the two bicycles, pointed at on the other.
struct Leader {
    LeaderKind kind = LeaderKind::BarHigher;
    double valueMm = 0.0;     ///< other less chosen
    Point at = Point::Zero(); ///< in the chosen size's axes, offset applied
};

/// Differences smaller than this are not told.
inline constexpr double leastLeaderMm = 3.0;

struct SideView {
    bool drawn = false; ///< false where there is no candidate at all
    BikeSketch chosen;
    std::optional<RiderSketch> rider; ///< empty where no cockpit fits the chosen size
    std::optional<BikeSketch> other;
    Point otherOffset =
        Point::Zero();           ///< added to the other's points: same ground, rear wheels aligned
    std::vector<Leader> leaders; ///< highest first

    struct Bounds {
        Point low = Point::Zero();
        Point high = Point::Zero();
    };
    [[nodiscard]] Bounds bounds() const;
};

/// The size the verdict names, and its runner-up (or the next candidate, where there is no
/// runner-up). The position drawn is that of the use with the largest share of the mix.
[[nodiscard]] SideView makeSideView(const Advice& advice, const Mix& mix, const Prepared& prepared,
                                    const Tables& tables);

} // namespace tripoise
