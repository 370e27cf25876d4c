// SPDX-License-Identifier: MIT
//
// The side view as plain points, before anything is painted: the advised bicycle whole, the rider
// on it, the other size beside it, and where the two differ. Millimetres, bike axes of the chosen
// size (base/axes.h), seen from the rider's right. Nothing is computed here that the model can
// compute; what a drawing needs and a geometry table does not hold (diameters, curves) stands in
// drawing/proportions.h.
//
// Both bicycles stand on the same ground with their rear wheels one behind the other, or on the
// rider's contacts, their bottom brackets together.
#pragma once

#include "advice/assess.h"
#include "advice/trial.h"

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

struct WheelSketch {
    Point axle = Point::Zero();
    double radiusMm = 0.0;         ///< outside of the tyre
    double beadSeatRadiusMm = 0.0; ///< outside of the rim
    std::optional<double> mudguardRadiusMm;

    bool operator==(const WheelSketch&) const = default;
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
    Point near = Point::Zero(); ///< spindle of the near pedal, at the bottom unless turned
    Point far = Point::Zero();  ///< of the far one, half a turn on
    Angle nearPitch;            ///< of the pedal, heel above toe
    Angle farPitch;
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
    bool byBuilder = false; ///< chosen by the builder

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
    std::optional<double> standoverMm; ///< top tube over the ground, where the table tells it
    double tyreMm = 0.0;

    std::optional<SaddleSketch> saddle;
    std::optional<CockpitSketch> cockpit;
    std::optional<CrankSketch> crank;
    std::optional<SetupFigures> figures;
};

enum class Joint { Trunk, ArmTrunk, Elbow, Knee };

/// Where an angle lies in its comfortable range.
enum class RangePlace { Inside, NearEdge, Outside };

/// An angle shown where it is: from a line at the joint, in a sense, to the limb.
struct JointAngle {
    Joint joint = Joint::Trunk;
    Point at = Point::Zero();
    Angle zero;         ///< direction from which the angle is measured
    double sense = 1.0; ///< +1 counterclockwise, -1 clockwise
    Angle value;
    Angle low;
    Angle high;
    /// Of a knee whose crank is turned away from the bottom, of which alone the range speaks.
    std::optional<Angle> atBottom;

    [[nodiscard]] Angle directionOf(Angle angle) const { return zero + sense * angle; }
    [[nodiscard]] RangePlace place() const;
    [[nodiscard]] bool comfortable() const { return place() != RangePlace::Outside; }
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
    LegPoints near;             ///< crank at the bottom of the turn, unless turned
    LegPoints far;              ///< half a turn on
    std::vector<TurnStep> turn; ///< of the near leg, once round
    double ankleHeightMm = 0.0;
    double soleMm = 0.0;
    double shoeBeyondFootMm = 0.0;
    double statureMm = 0.0;
    std::vector<JointAngle> angles; ///< trunk, arm-trunk, elbow, knee
    double beyondMm = 0.0;          ///< how far the grip is out of reach
    double kneeToBarMm = 0.0;       ///< over a turn of the crank; less than nothing where they meet
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

/// The bicycle ridden today, of which only contacts are known; from the bottom bracket.
struct RiddenSketch {
    std::optional<Point> saddle;
    std::optional<Point> grip;
    std::optional<double> crankMm;
};

/// Where the contacts would be as advised, while they are pulled about.
struct AdvisedMarks {
    Point saddle = Point::Zero();
    Point grip = Point::Zero();
};

enum class Registration {
    Ground,   ///< on one ground, rear wheels aligned
    Contacts, ///< bottom brackets together
};

struct SideView {
    bool drawn = false; ///< false where there is no candidate at all
    BikeSketch chosen;
    std::optional<RiderSketch> rider; ///< empty where no cockpit fits the chosen size
    std::optional<BikeSketch> other;
    Registration registration = Registration::Ground;
    Point otherOffset = Point::Zero(); ///< added to the other's points
    std::vector<Leader> leaders;       ///< highest first
    std::optional<RiddenSketch> ridden;
    std::optional<AdvisedMarks> advised; ///< set while rider and bicycle are as tried

    struct Bounds {
        Point low = Point::Zero();
        Point high = Point::Zero();
    };
    [[nodiscard]] Bounds bounds() const;
};

/// What of an advice is drawn, and how.
struct Shown {
    std::size_t chosen = 0; ///< index into Advice::candidates
    std::optional<std::size_t> other;
    Registration registration = Registration::Ground;
    std::optional<Use> use;     ///< whose position; the most ridden one's where empty
    std::optional<Angle> crank; ///< of the near pedal, from the x axis; the bottom where empty
    const CurrentBike* ridden = nullptr;
    const Tried* tried = nullptr; ///< on the chosen size
};

/// The size the verdict names, and its runner-up (or the next candidate, where there is no
/// runner-up).
[[nodiscard]] Shown asAdvised(const Advice& advice);

[[nodiscard]] SideView makeSideView(const Advice& advice, const Shown& shown, const Mix& mix,
                                    const Prepared& prepared, const Tables& tables);
[[nodiscard]] SideView makeSideView(const Advice& advice, const Mix& mix, const Prepared& prepared,
                                    const Tables& tables);

} // namespace tripoise
