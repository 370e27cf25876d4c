// SPDX-License-Identifier: MIT
#include "setup/setup.h"

#include <algorithm>

namespace tripoise {

ClampLine clampLine(const Skeleton& skeleton, const Stem& mounted, const PartDefaults& defaults)
{
    const Angle stem = Angle::degrees(90.0) - skeleton.headAngle + mounted.angle;
    return {skeleton.headTop, upTube(skeleton.headAngle), mounted.lengthMm * along(stem),
            skeleton.upperHeadsetMm, 0.5 * mounted.clampHeightMm.value_or(defaults.clampHeightMm)};
}

Point clampCentre(const Skeleton& skeleton, const Stem& mounted, double spacersMm,
                  const PartDefaults& defaults)
{
    return clampLine(skeleton, mounted, defaults).at(spacersMm);
}

StemAndSpacers stemCarrying(const Skeleton& skeleton, const Point& clamp, const Stem& mounted,
                            const PartDefaults& defaults)
{
    // Square to the steering axis there is only the stem, cos(angle) of its length; along it, the
    // parts under its middle, the spacers and sin(angle) of its length.
    const Point fromHead = clamp - skeleton.headTop;
    const double length =
        fromHead.dot(aheadOfTube(skeleton.headAngle)) / std::cos(mounted.angle.rad());
    const double up = fromHead.dot(upTube(skeleton.headAngle));
    return {length, up - length * std::sin(mounted.angle.rad()) - skeleton.upperHeadsetMm
                        - 0.5 * mounted.clampHeightMm.value_or(defaults.clampHeightMm)};
}

double steererCut(const Skeleton& skeleton, const Stem& mounted, double spacersMm,
                  const PartDefaults& defaults)
{
    if (mounted.quillMm)
        return 0.0;
    return skeleton.headTubeMm.value + skeleton.lowerHeadsetMm + skeleton.upperHeadsetMm + spacersMm
           + mounted.clampHeightMm.value_or(defaults.clampHeightMm)
           - defaults.steererBelowClampTopMm;
}

Steerer steererOf(const Skeleton& skeleton)
{
    return {skeleton.steererMm, skeleton.quillMm};
}

Steerer steererOf(const FrameSize& frame, const FrameDefaults& defaults)
{
    return {frame.headset.steererMm.value_or(defaults.steererMm), frame.headset.quillMm};
}

double mostSpacers(const Skeleton& skeleton, const Stem& mounted, const PartDefaults& defaults)
{
    if (mounted.quillMm)
        return mounted.raiseMm.value_or(defaults.quillRaiseMm);
    double most = skeleton.maxSpacersMm;
    if (skeleton.steererLengthMm)
        most = std::min(most,
                        *skeleton.steererLengthMm - steererCut(skeleton, mounted, 0.0, defaults));
    return most;
}

Setup makeSetup(const Skeleton& skeleton, const Stock& stock, const SaddlePlace& saddle,
                double crankMm, const Cockpit& cockpit, const PartDefaults& defaults)
{
    const Bar& bar = stock.bars[cockpit.bar];
    Setup setup;
    setup.saddle = saddle;
    setup.crankMm = crankMm;
    setup.cockpit = cockpit;
    setup.stem = stock.stems[cockpit.stem];
    setup.stem.angle = effectiveAngle(setup.stem, cockpit.flipped);
    setup.clamp = clampCentre(skeleton, setup.stem, cockpit.spacersMm, defaults);
    setup.grip = setup.clamp + gripOn(bar, mainPlace(bar.kind), defaults).fromClamp;
    setup.steererCutMm = steererCut(skeleton, setup.stem, cockpit.spacersMm, defaults);
    return setup;
}

Foothold footholdOf(const Rider& rider, const Pedal& pedal, const ComfortTable& comfort,
                    const PartDefaults& defaults)
{
    Angle habit;
    if (rider.heelHabit == HeelHabit::Low)
        habit = comfort.lowHeelShift;
    if (rider.heelHabit == HeelHabit::ToeDown)
        habit = comfort.toeDownShift;
    return {rider.shoe.soleMm.value_or(defaults.soleMm)
                + pedal.stackMm.value_or(defaults.pedalStackMm),
            comfort.pitchBottom + habit, comfort.pitchForward + habit};
}

double noseAhead(const Saddle& saddle, const PartDefaults& defaults)
{
    return defaults.noseAheadShare * saddle.lengthMm.value_or(defaults.saddleLengthMm);
}

Range saddleBehindRange(const Skeleton& skeleton, const Saddle& saddle,
                        const PartDefaults& defaults)
{
    const double half = 0.5 * saddle.railTravelMm.value_or(defaults.railTravelMm);
    return {skeleton.postOffsetMm - half, skeleton.postOffsetMm + half};
}

std::optional<double> exposedPost(const Skeleton& skeleton, const SaddlePlace& place,
                                  const Saddle& saddle, const PartDefaults& defaults)
{
    if (!skeleton.seatTubeMm)
        return std::nullopt;
    const Point rails = place.point() - Point(0.0, saddle.stackMm.value_or(defaults.saddleStackMm));
    return rails.dot(upTube(skeleton.seatAngle)) - skeleton.seatTubeMm->value;
}

std::optional<PostInside> postInside(const FrameSize& frame, const Skeleton& skeleton,
                                     const SaddlePlace& place, const Saddle& saddle,
                                     const FrameDefaults& frameDefaults,
                                     const PartDefaults& defaults)
{
    const auto exposed = exposedPost(skeleton, place, saddle, defaults);
    if (!exposed)
        return std::nullopt;
    return PostInside{skeleton.postLengthMm - *exposed, postLeast(frame.post, frameDefaults),
                      frame.post.frameInsertionMm.value_or(frameDefaults.frameInsertionMm)};
}

std::optional<double> movedFromSold(const FrameSize& frame, const Skeleton& skeleton,
                                    const Setup& setup, const PartDefaults& defaults)
{
    if (!frame.asSold.stemMm || setup.stem.quillMm)
        return std::nullopt;
    Stem sold = setup.stem;
    sold.lengthMm = *frame.asSold.stemMm;
    sold.angle = Angle::degrees(defaults.soldStemDeg);
    const double spacers = std::min(defaults.soldSpacersMm, skeleton.maxSpacersMm);
    return (setup.clamp - clampCentre(skeleton, sold, spacers, defaults)).norm();
}

std::optional<double> standoverClearance(const Skeleton& skeleton, double inseamMm)
{
    if (!skeleton.standoverMm)
        return std::nullopt;
    return inseamMm - skeleton.standoverMm->value;
}

} // namespace tripoise
