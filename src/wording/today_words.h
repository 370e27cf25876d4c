// SPDX-License-Identifier: MIT
//
// What is said about the bicycle ridden today.
#pragma once

#include "advice/riding.h"
#include "base/axes.h"
#include "cockpit/parts.h"

#include <QString>

#include <optional>
#include <string_view>
#include <vector>

namespace tripoise {

[[nodiscard]] QString todaySummary(const std::optional<CurrentBike>& bike);
/// What stands between what was taken from the saddle and the contacts.
[[nodiscard]] QString conversionText(double saddleLengthMm, bool saddleMeasured, double noseAheadMm,
                                     const Bar& bar, const Point& gripFromBar);
/// Of what is taken from the saddle, by the keys of its fields.
[[nodiscard]] QString neededForGripText(const std::vector<std::string_view>& keys);
[[nodiscard]] QString tapeTooShortText();
[[nodiscard]] QString notBelievableText();

// Names of steps that can be undone.
[[nodiscard]] QString todayStep(const QString& what);
[[nodiscard]] QString barKindStep();
[[nodiscard]] QString useStep();
[[nodiscard]] QString riddenStep();
[[nodiscard]] QString positionStep();
[[nodiscard]] QString comfortableStep();
[[nodiscard]] QString complaintStep();
[[nodiscard]] QString clearStep();

} // namespace tripoise
