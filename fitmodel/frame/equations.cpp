// SPDX-License-Identifier: MIT
//
//   S, R    stack, reach            a, b    seat angle, head angle
//   d       bottom-bracket drop     c       chainstay
//   o, L    fork offset, length     h       lower headset
//   W       wheel radius            x       front axle ahead of the bottom bracket
//
//   x              = R + (S - d) / tan b + o / sin b
//   top tube       = R + S / tan a
//   rear           = sqrt(c^2 - d^2)
//   wheelbase      = rear + x
//   front centre   = sqrt(x^2 + d^2)
//   head tube      = (S - d) / sin b + o / tan b - sqrt(L^2 - o^2) - h
//   trail          = (W cos b - o) / sin b
#include "frame/equations.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tripoise {
namespace {

constexpr double radian = std::numbers::pi / 180.0;
constexpr double leastLegMm = 1.0; ///< of a right triangle that does not close

int at(Unknown unknown)
{
    return indexOf(unknown);
}

/// The other leg of a right triangle, with derivatives for hypotenuse and leg.
struct Leg {
    double value;
    double byHypotenuse;
    double byLeg;
};

Leg otherLeg(double hypotenuse, double leg)
{
    const double square = hypotenuse * hypotenuse - leg * leg;
    if (square <= leastLegMm * leastLegMm)
        return {leastLegMm, 0.0, 0.0};
    const double value = std::sqrt(square);
    return {value, hypotenuse / value, -leg / value};
}

/// A head or seat angle with what its equations need.
struct Slope {
    double sine;
    double cosine;
    double cotangent;
    double byDegree; ///< of the cotangent

    explicit Slope(double degrees)
        : sine(std::sin(degrees * radian)), cosine(std::cos(degrees * radian)),
          cotangent(cosine / sine), byDegree(-radian / (sine * sine))
    {
    }
};

Reading itself(Unknown unknown, const Unknowns& u)
{
    Reading reading{u(at(unknown)), Unknowns::Zero()};
    reading.gradient(at(unknown)) = 1.0;
    return reading;
}

/// Horizontal distance from the bottom bracket to the front axle.
Reading frontHorizontal(const Unknowns& u)
{
    const Slope head(u(at(Unknown::HeadAngle)));
    const double fall = u(at(Unknown::Stack)) - u(at(Unknown::BbDrop));
    const double offset = u(at(Unknown::ForkOffset));
    Reading reading;
    reading.value = u(at(Unknown::Reach)) + fall * head.cotangent + offset / head.sine;
    reading.gradient(at(Unknown::Reach)) = 1.0;
    reading.gradient(at(Unknown::Stack)) = head.cotangent;
    reading.gradient(at(Unknown::BbDrop)) = -head.cotangent;
    reading.gradient(at(Unknown::ForkOffset)) = 1.0 / head.sine;
    reading.gradient(at(Unknown::HeadAngle)) =
        fall * head.byDegree - offset * head.cotangent / head.sine * radian;
    return reading;
}

/// Horizontal distance from the rear axle to the bottom bracket.
Reading rearHorizontal(Unknown stay, const Unknowns& u)
{
    const Leg rear = otherLeg(u(at(stay)), u(at(Unknown::BbDrop)));
    Reading reading;
    reading.value = rear.value;
    reading.gradient(at(stay)) = rear.byHypotenuse;
    reading.gradient(at(Unknown::BbDrop)) = rear.byLeg;
    return reading;
}

Reading wheelbase(Unknown stay, const Unknowns& u)
{
    const Reading rear = rearHorizontal(stay, u);
    Reading reading = frontHorizontal(u);
    reading.value += rear.value;
    reading.gradient += rear.gradient;
    return reading;
}

Reading frontStraight(const Unknowns& u)
{
    const Reading across = frontHorizontal(u);
    const double drop = u(at(Unknown::BbDrop));
    Reading reading;
    reading.value = std::max(leastLegMm, std::hypot(across.value, drop));
    reading.gradient = across.gradient * (across.value / reading.value);
    reading.gradient(at(Unknown::BbDrop)) += drop / reading.value;
    return reading;
}

Reading topTube(const Unknowns& u)
{
    const Slope seat(u(at(Unknown::SeatAngle)));
    const double stack = u(at(Unknown::Stack));
    Reading reading;
    reading.value = u(at(Unknown::Reach)) + stack * seat.cotangent;
    reading.gradient(at(Unknown::Reach)) = 1.0;
    reading.gradient(at(Unknown::Stack)) = seat.cotangent;
    reading.gradient(at(Unknown::SeatAngle)) = stack * seat.byDegree;
    return reading;
}

Reading forkAxial(const Unknowns& u)
{
    const Leg fork = otherLeg(u(at(Unknown::ForkLength)), u(at(Unknown::ForkOffset)));
    Reading reading;
    reading.value = fork.value;
    reading.gradient(at(Unknown::ForkLength)) = fork.byHypotenuse;
    reading.gradient(at(Unknown::ForkOffset)) = fork.byLeg;
    return reading;
}

/// From the head-tube top down the axis to the foot of the perpendicular from the front axle, less
/// what fork and lower headset take.
Reading headTube(const Unknowns& u)
{
    const Slope head(u(at(Unknown::HeadAngle)));
    const double fall = u(at(Unknown::Stack)) - u(at(Unknown::BbDrop));
    const double offset = u(at(Unknown::ForkOffset));
    const Reading fork = forkAxial(u);
    Reading reading;
    reading.value =
        fall / head.sine + offset * head.cotangent - fork.value - u(at(Unknown::LowerHeadset));
    reading.gradient = -fork.gradient;
    reading.gradient(at(Unknown::Stack)) += 1.0 / head.sine;
    reading.gradient(at(Unknown::BbDrop)) -= 1.0 / head.sine;
    reading.gradient(at(Unknown::ForkOffset)) += head.cotangent;
    reading.gradient(at(Unknown::LowerHeadset)) -= 1.0;
    reading.gradient(at(Unknown::HeadAngle)) +=
        -fall * head.cotangent / head.sine * radian + offset * head.byDegree;
    return reading;
}

Reading trail(const Unknowns& u)
{
    const Slope head(u(at(Unknown::HeadAngle)));
    const double radius = u(at(Unknown::WheelRadius));
    const double offset = u(at(Unknown::ForkOffset));
    Reading reading;
    reading.value = radius * head.cotangent - offset / head.sine;
    reading.gradient(at(Unknown::WheelRadius)) = head.cotangent;
    reading.gradient(at(Unknown::ForkOffset)) = -1.0 / head.sine;
    reading.gradient(at(Unknown::HeadAngle)) =
        radius * head.byDegree + offset * head.cotangent / head.sine * radian;
    return reading;
}

Reading bbHeight(const Unknowns& u)
{
    Reading reading{u(at(Unknown::WheelRadius)) - u(at(Unknown::BbDrop)), Unknowns::Zero()};
    reading.gradient(at(Unknown::WheelRadius)) = 1.0;
    reading.gradient(at(Unknown::BbDrop)) = -1.0;
    return reading;
}

Reading bbRise(const Unknowns& u)
{
    Reading reading{-u(at(Unknown::BbDrop)), Unknowns::Zero()};
    reading.gradient(at(Unknown::BbDrop)) = -1.0;
    return reading;
}

} // namespace

Column columnOf(Unknown unknown)
{
    switch (unknown) {
    case Unknown::Stack: return Column::Stack;
    case Unknown::Reach: return Column::Reach;
    case Unknown::SeatAngle: return Column::SeatAngle;
    case Unknown::HeadAngle: return Column::HeadAngle;
    case Unknown::BbDrop: return Column::BbDrop;
    case Unknown::Chainstay: return Column::Chainstay;
    case Unknown::ChainstayLong: return Column::ChainstayLong;
    case Unknown::ForkOffset: return Column::ForkOffset;
    case Unknown::ForkLength: return Column::ForkLength;
    case Unknown::LowerHeadset: return Column::LowerHeadset;
    case Unknown::WheelRadius: return Column::WheelRadius;
    }
    return Column::Stack;
}

bool hasEquation(Column column)
{
    switch (column) {
    case Column::HeadTube:
    case Column::TopTube:
    case Column::Wheelbase:
    case Column::WheelbaseLong:
    case Column::FrontCentre:
    case Column::FrontCentreHorizontal:
    case Column::ChainstayHorizontal:
    case Column::BbHeight:
    case Column::BbRise:
    case Column::ForkLengthAxial:
    case Column::Trail: return true;
    default: break;
    }
    for (int i = 0; i < unknownCount; ++i)
        if (columnOf(static_cast<Unknown>(i)) == column)
            return true;
    return false;
}

Reading readingOf(Column column, const Unknowns& at)
{
    switch (column) {
    case Column::HeadTube: return headTube(at);
    case Column::TopTube: return topTube(at);
    case Column::Wheelbase: return wheelbase(Unknown::Chainstay, at);
    case Column::WheelbaseLong: return wheelbase(Unknown::ChainstayLong, at);
    case Column::FrontCentre: return frontStraight(at);
    case Column::FrontCentreHorizontal: return frontHorizontal(at);
    case Column::ChainstayHorizontal: return rearHorizontal(Unknown::Chainstay, at);
    case Column::BbHeight: return bbHeight(at);
    case Column::BbRise: return bbRise(at);
    case Column::ForkLengthAxial: return forkAxial(at);
    case Column::Trail: return trail(at);
    default: break;
    }
    for (int i = 0; i < unknownCount; ++i)
        if (columnOf(static_cast<Unknown>(i)) == column)
            return itself(static_cast<Unknown>(i), at);
    return {};
}

} // namespace tripoise
