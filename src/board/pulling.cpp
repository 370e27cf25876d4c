// SPDX-License-Identifier: MIT
#include "board/pulling.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double alikeMm = 0.05; // nearer than that to the advised contacts, they are those
constexpr double plainStepMm = 5.0;
constexpr double plainMostMm = 60.0;
// A saddle stays above the axle and within any leg; a grip within any arm.
constexpr double leastSaddleMm = 250.0;
constexpr double mostSaddleMm = 1200.0;
constexpr double mostAwayMm = 1500.0;

Point whole(const Point& mm)
{
    return {std::round(mm.x()), std::round(mm.y())};
}

/// A place in whole millimetres from another, and that other one itself when near enough.
Point landing(const Point& at, const Point& advised, double magnetMm)
{
    const Point away = at - advised;
    return away.norm() < magnetMm ? advised : advised + whole(away);
}

SaddlePlace kept(const Point& point)
{
    const Point above(point.x(), std::max(point.y(), 1.0));
    SaddlePlace saddle = saddleAt(above);
    saddle.heightMm = std::clamp(saddle.heightMm, leastSaddleMm, mostSaddleMm);
    return saddle;
}

Point keptGrip(const Point& point)
{
    return point.cwiseMax(-mostAwayMm).cwiseMin(mostAwayMm);
}

StemAndSpacers carrying(const Contacts& contacts, const Bench& bench)
{
    const Point clamp = contacts.grip - (bench.advised.grip - bench.advised.clamp);
    return stemCarrying(bench.skeleton, clamp, bench.advised.stem, bench.parts);
}

/// The bar moved along the steering axis to another height of spacers.
Contacts onSpacers(const Contacts& from, double spacersMm, const Bench& bench)
{
    Contacts moved = from;
    moved.grip += (spacersMm - carrying(from, bench).spacersMm) * upTube(bench.skeleton.headAngle);
    return moved;
}

} // namespace

std::optional<Trial> trialOf(const Contacts& contacts, const Setup& advised, const FrameSize& frame)
{
    if ((contacts.grip - advised.grip).norm() < alikeMm
        && (contacts.saddle.point() - advised.saddle.point()).norm() < alikeMm)
        return std::nullopt;
    return Trial{
        frame.model,       frame.size,       contacts.saddle.heightMm, contacts.saddle.setbackMm(),
        contacts.grip.x(), contacts.grip.y()};
}

Point placeOf(Handle handle, const Contacts& contacts, const Bench& bench)
{
    switch (handle) {
    case Handle::Grip: return contacts.grip;
    case Handle::Saddle: return contacts.saddle.point();
    case Handle::Spacers: break;
    }
    // On the steering axis, where the stem holds it.
    const double up = bench.skeleton.upperHeadsetMm + carrying(contacts, bench).spacersMm;
    return bench.skeleton.headTop + up * upTube(bench.skeleton.headAngle);
}

Contacts pulled(const Contacts& from, Handle handle, const Point& by, const Bench& bench,
                double magnetMm)
{
    Contacts moved = from;
    switch (handle) {
    case Handle::Grip:
        moved.grip = landing(keptGrip(from.grip + by), bench.advised.grip, magnetMm);
        break;
    case Handle::Saddle:
        moved.saddle =
            kept(landing(from.saddle.point() + by, bench.advised.saddle.point(), magnetMm));
        break;
    case Handle::Spacers: {
        const double wanted =
            carrying(from, bench).spacersMm + by.dot(upTube(bench.skeleton.headAngle));
        const std::vector<double> steps = spacerSteps(bench.stock);
        const auto nearest =
            std::min_element(steps.begin(), steps.end(), [wanted](double a, double b) {
                return std::abs(a - wanted) < std::abs(b - wanted);
            });
        moved = onSpacers(from, *nearest, bench);
        break;
    }
    }
    return moved;
}

Contacts nudged(const Contacts& from, Handle handle, const Point& by, const Bench& bench)
{
    if (handle != Handle::Spacers)
        return pulled(from, handle, by, bench);
    const double now = carrying(from, bench).spacersMm;
    const bool up = by.y() > 0.0 || (by.y() == 0.0 && by.x() > 0.0);
    const std::vector<double> steps = spacerSteps(bench.stock);
    double next = now;
    if (up) {
        const auto above = std::upper_bound(steps.begin(), steps.end(), now + alikeMm);
        next = above == steps.end() ? std::max(now, steps.back()) : *above;
    } else {
        const auto above = std::lower_bound(steps.begin(), steps.end(), now - alikeMm);
        next = above == steps.begin() ? std::min(now, steps.front()) : *std::prev(above);
    }
    return onSpacers(from, next, bench);
}

std::vector<double> spacerSteps(const Stock& stock)
{
    double sum = 0.0;
    for (const double piece : stock.spacersMm)
        sum += piece;
    std::vector<double> steps = spacerTotals(stock.spacersMm, sum);
    if (steps.size() > 1)
        return steps;
    steps.clear();
    for (double step = 0.0; step <= plainMostMm; step += plainStepMm)
        steps.push_back(step);
    return steps;
}

} // namespace tripoise
