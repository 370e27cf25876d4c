// SPDX-License-Identifier: MIT
//
// A mix of riding as it is set: one share moved at a time, or one of the usual mixes to start from.
#pragma once

#include "base/use.h"

#include <array>
#include <cstdint>

namespace tripoise {

/// The mix with one share changed (held within 0 and 1), in whole per cent that sum to 100: the
/// others keep their proportions; where nothing else is ridden, everyday riding takes the rest.
[[nodiscard]] Mix withShare(const Mix& mix, Use use, double share);

/// Mixes to start from.
enum class UsualMix : std::uint8_t { Errands, ToWork, FastToWork, WorkAndAway, LongTrips, Sport };
inline constexpr std::array allUsualMixes{UsualMix::Errands,    UsualMix::ToWork,
                                          UsualMix::FastToWork, UsualMix::WorkAndAway,
                                          UsualMix::LongTrips,  UsualMix::Sport};

/// What each comes to: common practice, no source.
[[nodiscard]] Mix mixOf(UsualMix usual);

} // namespace tripoise
