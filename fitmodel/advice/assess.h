// SPDX-License-Identifier: MIT
//
// What a chosen set-up is worth and does: its ledger, its posture, its findings.
#pragma once

#include "advice/advise.h"

namespace tripoise {

[[nodiscard]] AdvisedSetup assess(const Choice& choice, SizeSearch& search, const Person& person,
                                  const Mix& mix, const PreparedSize& size,
                                  const Prepared& prepared, const Tables& tables);

/// The most bent back of the uses.
[[nodiscard]] Angle lowestTrunk(const std::vector<UsePosture>& uses);

/// The leg under a trunk.
[[nodiscard]] LegPosture legPosture(const Person& person, const SaddlePlace& saddle, double crankMm,
                                    Angle trunk, const Tables& tables);

/// Limits the set-up breaks.
[[nodiscard]] Findings limitsOf(const AdvisedSetup& advised, const PreparedSize& size,
                                const Person& person, const Riding& riding,
                                const Prepared& prepared, const Tables& tables);

/// What is worth telling about it, short of limits.
[[nodiscard]] Findings findingsOf(const AdvisedSetup& advised, double wantedSetbackMm,
                                  const PreparedSize& size, const Person& person,
                                  const Riding& riding, const Prepared& prepared,
                                  const Tables& tables);

} // namespace tripoise
