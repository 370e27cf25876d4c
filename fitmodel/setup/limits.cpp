// SPDX-License-Identifier: MIT
#include "setup/limits.h"

namespace tripoise {
namespace {

constexpr double roundingMm = 1e-6; // a limit met exactly is met

} // namespace

Findings brokenLimits(const FrameSize& frame, const Skeleton& skeleton, const Setup& setup,
                      const Saddle& saddle, const Load& load, const FrameDefaults& frameDefaults,
                      const PartDefaults& partDefaults)
{
    Findings broken;
    const auto breaks = [&broken](FindingCode code, double found, double limit) {
        broken.push_back({code, Severity::Limit, {found, limit}, {}, {}});
    };

    const double spacers = setup.cockpit.spacersMm;
    if (!setup.stem.quillMm && spacers > skeleton.maxSpacersMm + roundingMm)
        breaks(FindingCode::SpacersOverLimit, spacers, skeleton.maxSpacersMm);
    if (skeleton.steererLengthMm && setup.steererCutMm > *skeleton.steererLengthMm + roundingMm)
        breaks(FindingCode::SteererTooShort, setup.steererCutMm, *skeleton.steererLengthMm);

    if (const auto exposed = exposedPost(skeleton, setup.saddle, saddle, partDefaults)) {
        if (*exposed < frameDefaults.leastExposedPostMm - roundingMm)
            breaks(FindingCode::SaddleCannotGoLow, *exposed, frameDefaults.leastExposedPostMm);
        const double inserted = skeleton.postLengthMm - *exposed;
        if (inserted < skeleton.postInsertionMm - roundingMm)
            breaks(FindingCode::PostTooShort, inserted, skeleton.postInsertionMm);
    }
    if (frame.wheel.maxTyreMm && skeleton.tyreMm > *frame.wheel.maxTyreMm + roundingMm)
        breaks(FindingCode::TyreTooWide, skeleton.tyreMm, *frame.wheel.maxTyreMm);
    const double system = load.riderKg + load.luggageKg + skeleton.bicycleMassKg;
    if (frame.maxSystemKg && system > *frame.maxSystemKg)
        breaks(FindingCode::OverSystemWeight, system, *frame.maxSystemKg);
    return broken;
}

} // namespace tripoise
