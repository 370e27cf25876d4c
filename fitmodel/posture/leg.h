// SPDX-License-Identifier: MIT
//
// The leg on the crank: saddle height and setback from knee angles, and the reverse.
//
// Hip, knee and ankle are two links over a foot whose ball stands on the pedal. The hip centre lies
// a calibrated height above the saddle point (more where the body's own is higher above its
// crotch), so that the average man (1756 mm, inseam 846), crank 170, seat axis 73.5 degrees, sole
// and pedal 30, sits at 0.885 x inseam with 36 degrees at the bottom; that one constant agrees with
// the published saddle-height rules (tests/reference/saddle_height.csv). The bottom of the turn is
// where the crank points away from the saddle point. The ankle is rigid: riders take up about half
// of a change of saddle height in the ankle (Ferrer-Roca 2014, J Strength Cond Res 28:784), so
// across changes within one rider the knee moves less than here.
#pragma once

#include "base/axes.h"
#include "rider/body.h"

namespace tripoise {

/// How the foot stands on the pedal.
struct Foothold {
    double stackMm = 0.0; ///< sole and pedal, spindle to the sole of the foot
    Angle pitchBottom;    ///< heel above toe at the bottom of the turn (and at the top)
    Angle pitchForward;   ///< with the crank level forward
};

struct SaddlePlace {
    double heightMm = 0.0; ///< bottom bracket to saddle point, straight
    Angle seatAxis;        ///< slope of that line

    [[nodiscard]] Point point() const { return heightMm * upTube(seatAxis); }
    [[nodiscard]] double setbackMm() const { return heightMm * std::cos(seatAxis.rad()); }
};

/// The same place from figures taken with a tape, or from a point.
[[nodiscard]] SaddlePlace saddleFrom(double heightMm, double setbackMm);
[[nodiscard]] SaddlePlace saddleAt(const Point& point);

struct LegPoints {
    Point hip;
    Point knee;
    Point ankle;
    Point spindle;
    Point heel;
    Point toe;
    Angle kneeFlexion; ///< 0 = straight
};

/// The leg with the crank at an angle from the x axis (0 = level forward, 90 degrees = up).
[[nodiscard]] LegPoints legAt(const Body& body, const BodyModel& model, const Foothold& foothold,
                              const Point& saddle, double crankMm, Angle crank);

/// Heel above toe with the crank at an angle; one harmonic of the turn.
[[nodiscard]] Angle footPitch(const Foothold& foothold, const Point& saddle, Angle crank);

/// Where the leg is longest and, half a turn on, the other pedal: in line with the seat axis.
[[nodiscard]] Angle bottomOfTurn(const Point& saddle);
[[nodiscard]] Angle topOfTurn(const Point& saddle);
/// Where hip and knee are read at their most closed: crank upright.
inline constexpr Angle topDeadCentre = Angle::degrees(90.0);

/// Flexion at the bottom, the riding angle.
[[nodiscard]] Angle kneeAtBottom(const Body& body, const BodyModel& model, const Foothold& foothold,
                                 const SaddlePlace& saddle, double crankMm);
/// The same saddle read with a goniometer: foot level.
[[nodiscard]] Angle kneeAtBottomFootLevel(const Body& body, const BodyModel& model,
                                          const Foothold& foothold, const SaddlePlace& saddle,
                                          double crankMm);
/// Tibial tuberosity ahead of the spindle, crank level forward; mm, positive ahead.
[[nodiscard]] double kneeOverSpindle(const Body& body, const BodyModel& model,
                                     const Foothold& foothold, const SaddlePlace& saddle,
                                     double crankMm);

/// The saddle on a given seat axis that gives a knee angle at the bottom; closed form.
[[nodiscard]] SaddlePlace saddleOnAxis(const Body& body, const BodyModel& model,
                                       const Foothold& foothold, double crankMm, Angle knee,
                                       Angle seatAxis);
/// The saddle that gives a knee angle at the bottom and a knee over spindle.
[[nodiscard]] SaddlePlace saddleForKnee(const Body& body, const BodyModel& model,
                                        const Foothold& foothold, double crankMm, Angle knee,
                                        double kneeOverSpindleMm);
/// The saddle a given distance behind a seat tube's axis, level, that gives a knee angle at the
/// bottom.
[[nodiscard]] SaddlePlace saddleBehindTube(const Body& body, const BodyModel& model,
                                           const Foothold& foothold, double crankMm, Angle knee,
                                           Angle seatTube, double behindMm);

/// How far a saddle stands behind the axis of a seat tube through the bottom bracket, level; mm.
[[nodiscard]] double behindTube(const SaddlePlace& saddle, Angle seatTube);

} // namespace tripoise
