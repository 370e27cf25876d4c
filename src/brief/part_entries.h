// SPDX-License-Identifier: MIT
//
// The numbers of the bicycle and of the parts in the box, as forms.
#pragma once

#include "brief/entry_of.h"
#include "setup/bicycle.h"

#include <span>

namespace tripoise {

[[nodiscard]] std::span<const EntryOf<Stem>> stemEntries();
[[nodiscard]] std::span<const EntryOf<Bar>> barEntries(BarKind kind);
[[nodiscard]] std::span<const EntryOf<double>> spacerEntries();
[[nodiscard]] std::span<const EntryOf<double>> crankEntries();

enum class BicycleGroup { Wheels, Guard, Parts };
[[nodiscard]] std::span<const EntryOf<Bicycle>> bicycleEntries(BicycleGroup group);

} // namespace tripoise
