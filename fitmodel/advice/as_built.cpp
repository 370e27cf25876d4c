// SPDX-License-Identifier: MIT
#include "advice/as_built.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

/// The set-up that was read: the wanted one with the readings in its place.
Contacts contactsOf(const AsBuilt& built, const Setup& wanted, double noseAheadMm,
                    const Skeleton& skeleton, const PartDefaults& parts)
{
    const TapeMeasures tape = measuresOf(wanted, noseAheadMm);
    Stem stem = wanted.stem;
    stem.lengthMm = built.stemMm.value_or(stem.lengthMm);
    if (built.stemAngleDeg)
        stem.angle = Angle::degrees(*built.stemAngleDeg);
    const SaddlePlace saddle =
        built.saddleHeightMm || built.noseSetbackMm
            ? saddleFrom(built.saddleHeightMm.value_or(tape.saddleHeightMm),
                         built.noseSetbackMm.value_or(tape.noseSetbackMm) + noseAheadMm)
            : wanted.saddle;
    const Point fromBar = wanted.grip - wanted.clamp;
    Point clamp = wanted.clamp;
    if (built.barBelowSaddleMm || built.noseToBarMm) {
        const double below = built.barBelowSaddleMm.value_or(tape.barBelowSaddleMm);
        const double straight = std::max(built.noseToBarMm.value_or(tape.noseToBarMm),
                                         std::abs(below)); // a tape cannot be shorter
        const Point nose = saddle.point() + Point(noseAheadMm, 0.0);
        clamp = nose + Point(std::sqrt(straight * straight - below * below), -below);
    } else if (built.stemMm || built.stemAngleDeg || built.spacersMm) {
        clamp =
            clampCentre(skeleton, stem, built.spacersMm.value_or(wanted.cockpit.spacersMm), parts);
    }
    return {saddle, clamp + fromBar, built.crankMm};
}

} // namespace

TapeMeasures measuresOf(const Setup& setup, double noseAheadMm)
{
    const Point saddle = setup.saddle.point();
    const Point nose = saddle + Point(noseAheadMm, 0.0);
    return {
        setup.saddle.heightMm,        -saddle.x(),     -nose.x(),      (setup.clamp - nose).norm(),
        saddle.y() - setup.clamp.y(), setup.clamp.x(), setup.clamp.y()};
}

bool BuiltCheck::off() const
{
    return std::any_of(readings.begin(), readings.end(),
                       [](const BuiltReading& reading) { return reading.off; });
}

BuiltCheck checkBuilt(const AsBuilt& built, const Setup& wanted, const AdvisedSetup& advised,
                      double noseAheadMm, const PreparedSize& size, const Basis& basis)
{
    const PartDefaults& parts = basis.tables.parts;
    const TapeMeasures tape = measuresOf(wanted, noseAheadMm);
    BuiltCheck check;
    const auto hold = [&check](BuiltPlace place, std::optional<double> read, double against,
                               double tolerance) {
        if (read)
            check.readings.push_back(
                {place, against, *read, std::abs(*read - against) > tolerance});
    };
    hold(BuiltPlace::SaddleHeight, built.saddleHeightMm, tape.saddleHeightMm, parts.builtSaddleMm);
    hold(BuiltPlace::NoseSetback, built.noseSetbackMm, tape.noseSetbackMm, parts.builtSaddleMm);
    hold(BuiltPlace::BarBelowSaddle, built.barBelowSaddleMm, tape.barBelowSaddleMm,
         parts.builtBarMm);
    hold(BuiltPlace::NoseToBar, built.noseToBarMm, tape.noseToBarMm, parts.builtBarMm);
    hold(BuiltPlace::Stem, built.stemMm, wanted.stem.lengthMm, parts.builtPartMm);
    hold(BuiltPlace::StemAngle, built.stemAngleDeg, wanted.stem.angle.deg(), parts.builtStemDeg);
    hold(BuiltPlace::Spacers, built.spacersMm, wanted.cockpit.spacersMm, parts.builtPartMm);
    hold(BuiltPlace::Crank, built.crankMm, wanted.crankMm, parts.builtPartMm);
    check.contacts = contactsOf(built, wanted, noseAheadMm, size.skeleton, parts);
    if (check.off())
        check.rider = tryContacts(check.contacts, advised, size, basis);
    return check;
}

} // namespace tripoise
