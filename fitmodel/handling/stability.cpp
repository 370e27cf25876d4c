// SPDX-License-Identifier: MIT
//
//   paper       here                       unit
//   w, c        wheelbaseMm, trailMm       mm
//   lambda      tilt = 90 deg - head angle
//   r_R, r_F    radiusMm                   mm
//   B, H        rear, front                heights are positive here: y = -z
//   I_xz        Inertia::xy                kg mm^2; the paper's is -sum m x z = sum m x y
//   mu, S_*, u_A as in the paper's appendix A
#include "handling/stability.h"

#include "base/root.h"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

RigidBody bodyOf(const RollingWheel& wheel, double x)
{
    return {wheel.massKg,
            Point(x, wheel.radiusMm),
            {wheel.acrossKgMm2, wheel.acrossKgMm2, wheel.spinKgMm2, 0.0}};
}

/// A s^4 + v B s^3 + (C0 + C2 v^2) s^2 + v (D0 + D2 v^2) s + (E0 + E2 v^2), over A.
struct Characteristic {
    double b = 0.0;
    double c0 = 0.0, c2 = 0.0;
    double d0 = 0.0, d2 = 0.0;
    double e0 = 0.0, e2 = 0.0;
};

/// The mixed second-order term of det(P + Q): P11 Q22 + Q11 P22 - P12 Q21 - Q12 P21.
double mixed(const Eigen::Matrix2d& p, const Eigen::Matrix2d& q)
{
    return p(0, 0) * q(1, 1) + q(0, 0) * p(1, 1) - p(0, 1) * q(1, 0) - q(0, 1) * p(1, 0);
}

Characteristic characteristicOf(const WhippleModel& model)
{
    const Eigen::Matrix2d standing = model.gravityMmS2 * model.standing;
    const double a = model.mass.determinant();
    return {mixed(model.mass, model.damping) / a,
            mixed(model.mass, standing) / a,
            (mixed(model.mass, model.travelling) + model.damping.determinant()) / a,
            mixed(model.damping, standing) / a,
            mixed(model.damping, model.travelling) / a,
            standing.determinant() / a,
            mixed(standing, model.travelling) / a};
}

/// Coefficients of s^3, s^2, s, 1 at a speed; that of s^4 is 1.
std::array<double, 4> coefficients(const Characteristic& p, double speed)
{
    const double w = speed * speed;
    return {speed * p.b, p.c0 + w * p.c2, speed * (p.d0 + w * p.d2), p.e0 + w * p.e2};
}

/// Real roots of a w^2 + b w + c, ascending.
std::vector<double> quadraticRoots(double a, double b, double c)
{
    if (a == 0.0) {
        if (b == 0.0)
            return {};
        return {-c / b};
    }
    const double discriminant = b * b - 4.0 * a * c;
    if (discriminant < 0.0)
        return {};
    const double q = -0.5 * (b + std::copysign(std::sqrt(discriminant), b));
    if (q == 0.0)
        return {0.0};
    std::vector<double> roots{q / a, c / q};
    std::sort(roots.begin(), roots.end());
    return roots;
}

/// Over v^2: Routh's condition divided by v^2, positive where no pair swings ever wider.
struct Routh {
    double a = 0.0, b = 0.0, c = 0.0;
    [[nodiscard]] double at(double w) const { return (a * w + b) * w + c; }
    [[nodiscard]] double slope(double w) const { return 2.0 * a * w + b; }
};
Routh routhOf(const Characteristic& p)
{
    return {p.b * p.c2 * p.d2 - p.d2 * p.d2,
            p.b * (p.c0 * p.d2 + p.c2 * p.d0) - 2.0 * p.d0 * p.d2 - p.e2 * p.b * p.b,
            p.b * p.c0 * p.d0 - p.d0 * p.d0 - p.e0 * p.b * p.b};
}

/// Where a pair stops swinging wider as speed grows: its roots are imaginary there (s^2 = -D/B).
/// The condition is -b times the pair's sum times what is positive, so its sign is weighed with
/// b's.
std::optional<double> weaveSpeed(const Characteristic& p)
{
    const Routh routh = routhOf(p);
    for (const double w : quadraticRoots(routh.a, routh.b, routh.c))
        if (w > 0.0 && routh.slope(w) * p.b > 0.0 && (p.d0 + w * p.d2) * p.b > 0.0)
            return std::sqrt(w);
    return std::nullopt;
}

/// Where a real root passes zero upwards as speed grows: near there it is -E / D.
std::optional<double> capsizeSpeed(const Characteristic& p)
{
    if (p.e2 == 0.0)
        return std::nullopt;
    const double w = -p.e0 / p.e2;
    if (!(w > 0.0 && p.e2 * (p.d0 + w * p.d2) < 0.0))
        return std::nullopt;
    return std::sqrt(w);
}

bool steadyAt(const Characteristic& p, double speed)
{
    const auto [b, c, d, e] = coefficients(p, speed);
    return b > 0.0 && c > 0.0 && d > 0.0 && e > 0.0 && b * c * d > d * d + e * b * b;
}

/// Where the quartic is least on the right of its roots' middle: the greatest root of its
/// derivative. Newton's steps from beyond all roots only ever come nearer.
double lowestPlace(const std::array<double, 4>& of)
{
    const auto [b, c, d, e] = of;
    constexpr int mostSteps = 100;
    double s = 1.0 + std::max({std::abs(b), std::abs(c), std::abs(d)});
    for (int i = 0; i < mostSteps; ++i) {
        const double slope = ((4.0 * s + 3.0 * b) * s + 2.0 * c) * s + d;
        const double bend = (12.0 * s + 6.0 * b) * s + 2.0 * c;
        if (bend <= 0.0)
            break;
        const double next = s - slope / bend;
        if (!(next < s))
            break;
        s = next;
    }
    return s;
}

double valueAt(const std::array<double, 4>& of, double s)
{
    const auto [b, c, d, e] = of;
    return (((s + b) * s + c) * s + d) * s + e;
}

/// Where the two roots by which a standing bicycle falls have met. Bicycles that never become
/// steady may swing by another pair before that, or lose the valley between the two; nothing begins
/// there.
std::optional<DoubleRoot> doubleRootAt(const std::array<double, 4>& of, double speed)
{
    constexpr double met = 1e-9; // of the quartic's terms
    const auto [b, c, d, e] = of;
    const double s = lowestPlace(of);
    const double terms =
        (((s + std::abs(b)) * s + std::abs(c)) * s + std::abs(d)) * s + std::abs(e);
    if (!(s > 0.0 && std::abs(valueAt(of, s)) < met * terms))
        return std::nullopt;
    // The other two must die out: the signs of what is left when (x - s)^2 is divided out.
    const double sum = b + 2.0 * s;
    const double product = c + 2.0 * s * sum - s * s;
    if (!(sum > 0.0 && product > 0.0))
        return std::nullopt;
    return DoubleRoot{speed, s};
}

constexpr int speedsTried = 32;          // for the first pair
constexpr double speedTolerance = 1e-11; // mm/s

/// The two positive roots of a standing bicycle meet where the quartic's lowest value, negative
/// between them, comes up to zero.
std::optional<DoubleRoot> swingBeginning(const Characteristic& p, double upToSpeed)
{
    const auto lowest = [&p](double speed) {
        const auto of = coefficients(p, speed);
        return valueAt(of, lowestPlace(of));
    };
    double low = 0.0;
    if (p.e0 <= 0.0 || lowest(low) >= 0.0)
        return std::nullopt; // swings already when standing
    for (int i = 1; i <= speedsTried; ++i) {
        const double high = upToSpeed * i / speedsTried;
        if (lowest(high) >= 0.0) {
            const double speed = rootWithin(low, high, speedTolerance, lowest);
            return doubleRootAt(coefficients(p, speed), speed);
        }
        low = high;
    }
    return std::nullopt;
}

} // namespace

std::optional<WhippleModel> whippleModel(const WhippleBicycle& bicycle)
{
    const RollingWheel& rearWheel = bicycle.rearWheel;
    const RollingWheel& frontWheel = bicycle.frontWheel;
    const double w = bicycle.wheelbaseMm;
    if (!(w > 0.0 && rearWheel.radiusMm > 0.0 && frontWheel.radiusMm > 0.0))
        return std::nullopt;

    const RigidBody assembly = together(bicycle.front, bodyOf(frontWheel, w)); // the paper's A
    const RigidBody total = together(together(bodyOf(rearWheel, 0.0), bicycle.rear), assembly);
    const Inertia i = inertiaAbout(total, total.centre); // about the rear contact
    const double massHeight = total.massKg * total.centre.y();

    // The front assembly about the steering axis.
    const double sine = std::cos(bicycle.headAngle.rad()); // of the tilt
    const double cosine = std::sin(bicycle.headAngle.rad());
    const Inertia& a = assembly.inertia;
    const double m = assembly.massKg;
    const double ahead =
        (assembly.centre.x() - w - bicycle.trailMm) * cosine + assembly.centre.y() * sine; // u_A
    const double axisAxis = m * ahead * ahead + a.xx * sine * sine + 2.0 * a.xy * sine * cosine
                            + a.yy * cosine * cosine;
    const double axisRoll = m * ahead * assembly.centre.y() + a.xx * sine + a.xy * cosine;
    const double axisYaw = m * ahead * assembly.centre.x() + a.xy * sine + a.yy * cosine;

    const double mu = bicycle.trailMm / w * cosine;
    const double frontSpin = frontWheel.spinKgMm2 / frontWheel.radiusMm;
    const double spin = rearWheel.spinKgMm2 / rearWheel.radiusMm + frontSpin;
    const double tipping = m * ahead + mu * total.massKg * total.centre.x(); // S_A

    WhippleModel model;
    model.gravityMmS2 = bicycle.gravityMmS2;
    const double cross = axisRoll + mu * i.xy;
    model.mass << i.xx, cross, cross, axisAxis + 2.0 * mu * axisYaw + mu * mu * i.yy;
    model.standing << -massHeight, -tipping, -tipping, -tipping * sine;
    model.travelling << 0.0, (spin + massHeight) / w * cosine, 0.0,
        (tipping + frontSpin * sine) / w * cosine;
    const double gyro = mu * spin + frontSpin * cosine;
    model.damping << 0.0, gyro + i.xy / w * cosine + mu * massHeight, -gyro,
        axisYaw / w * cosine + mu * (tipping + i.yy / w * cosine);

    const bool possible = model.mass.allFinite() && model.damping.allFinite()
                          && model.standing.allFinite() && model.travelling.allFinite()
                          && model.mass(0, 0) > 0.0 && model.mass.determinant() > 0.0;
    return possible ? std::optional(model) : std::nullopt;
}

Roots rootsAt(const WhippleModel& model, double speedMmS)
{
    const Eigen::Matrix2d inverse = model.mass.inverse();
    Eigen::Matrix4d first = Eigen::Matrix4d::Zero();
    first.topRightCorner<2, 2>().setIdentity();
    first.bottomLeftCorner<2, 2>() =
        -inverse * (model.gravityMmS2 * model.standing + speedMmS * speedMmS * model.travelling);
    first.bottomRightCorner<2, 2>() = -speedMmS * (inverse * model.damping);

    const Eigen::EigenSolver<Eigen::Matrix4d> solver(first, false);
    Roots roots;
    for (std::size_t i = 0; i < roots.size(); ++i)
        roots[i] = solver.eigenvalues()(static_cast<Eigen::Index>(i));
    std::sort(roots.begin(), roots.end(), [](const auto& a, const auto& b) {
        return a.real() != b.real() ? a.real() > b.real() : a.imag() > b.imag();
    });
    return roots;
}

std::vector<RootsAtSpeed> rootsOver(const WhippleModel& model, double toSpeedMmS, std::size_t steps)
{
    std::vector<RootsAtSpeed> sweep;
    sweep.reserve(steps + 1);
    for (std::size_t i = 0; i <= steps; ++i) {
        const double speed =
            steps ? toSpeedMmS * static_cast<double>(i) / static_cast<double>(steps) : 0.0;
        sweep.push_back({speed, rootsAt(model, speed)});
    }
    return sweep;
}

SelfStability selfStability(const WhippleModel& model)
{
    constexpr double wellAbove = 1.5;   // weave speeds; where a band without upper end is tried
    constexpr double farMmS = 10'000.0; // how far swinging is looked for where weaving never dies
    const Characteristic p = characteristicOf(model);
    SelfStability found;
    found.weaveMmS = weaveSpeed(p);
    found.capsizeMmS = capsizeSpeed(p);
    found.swingBegins = swingBeginning(p, found.weaveMmS.value_or(farMmS));
    if (found.weaveMmS && (!found.capsizeMmS || *found.weaveMmS < *found.capsizeMmS))
        found.steady = steadyAt(p, found.capsizeMmS ? 0.5 * (*found.weaveMmS + *found.capsizeMmS)
                                                    : wellAbove * *found.weaveMmS);
    return found;
}

} // namespace tripoise
