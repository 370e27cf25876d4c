// SPDX-License-Identifier: MIT
//
// The handles of the board and what pulling at one does to the contacts: whole millimetres away
// from the advised set-up, spacers in the steps that the box can make.
#pragma once

#include "document/builders_choice.h"

#include <array>
#include <vector>

namespace tripoise {

enum class Handle { Grip, Saddle, Spacers };
inline constexpr std::array allHandles{Handle::Grip, Handle::Saddle, Handle::Spacers};

/// Nothing where the contacts are the advised ones.
[[nodiscard]] std::optional<Trial> trialOf(const Contacts& contacts, const Setup& advised,
                                           const FrameSize& frame);

/// What pulls are made on.
struct Bench {
    const Setup& advised;
    const Skeleton& skeleton;
    const Stock& stock;
    const PartDefaults& parts;
};

/// Where a handle is, on a set-up advised or tried.
[[nodiscard]] Point placeOf(Handle handle, const Contacts& contacts, const Bench& bench);

/// `from` with a handle moved by so much. Grip and saddle land on whole millimetres from where they
/// were advised, and on the advised place within `magnetMm`; spacers on the nearest total.
[[nodiscard]] Contacts pulled(const Contacts& from, Handle handle, const Point& by,
                              const Bench& bench, double magnetMm = 0.0);

/// One step by key: grip and saddle by so many millimetres, spacers to the next total up or down.
[[nodiscard]] Contacts nudged(const Contacts& from, Handle handle, const Point& by,
                              const Bench& bench);

/// Heights of spacers to step through: what the pieces make, or fives where there are none.
[[nodiscard]] std::vector<double> spacerSteps(const Stock& stock);

} // namespace tripoise
