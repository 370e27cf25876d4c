// SPDX-License-Identifier: MIT
//
// What is said about the bicycle that the sizes have in common.
#pragma once

#include "setup/bicycle.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString mountingText(const Mounting& mounting);
[[nodiscard]] QString bicycleSummary(const Bicycle& bicycle);
[[nodiscard]] QString wheelsDifferText(std::span<const FrameSize> frames, const Bicycle& bicycle);
[[nodiscard]] QString wheelsDifferSummary();

// Names of steps that can be undone.
[[nodiscard]] QString mudguardStep();
[[nodiscard]] QString bicycleBarStep();
[[nodiscard]] QString oneMountingStep();

} // namespace tripoise
