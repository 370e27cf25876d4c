// SPDX-License-Identifier: MIT
//
// The numbers of the parts in the box, as forms.
#pragma once

#include "brief/entry_of.h"
#include "cockpit/parts.h"

#include <span>

namespace tripoise {

[[nodiscard]] std::span<const EntryOf<Stem>> stemEntries();
[[nodiscard]] std::span<const EntryOf<Bar>> barEntries(BarKind kind);
[[nodiscard]] std::span<const EntryOf<double>> spacerEntries();
[[nodiscard]] std::span<const EntryOf<double>> crankEntries();
/// The crank that is fitted, the saddle and the pedals.
[[nodiscard]] std::span<const EntryOf<Stock>> restEntries();

} // namespace tripoise
