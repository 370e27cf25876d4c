// SPDX-License-Identifier: MIT
//
// What is said of a geometry table that was read and closed.
#pragma once

#include "frame/closure.h"
#include "table/read_table.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString nameOf(Column column);
[[nodiscard]] QString nameOf(Purpose purpose); ///< "the length to cut the steerer to"
/// "585 mm", "71.5°": to the digit that a table prints.
[[nodiscard]] QString figureOf(Column column, double value);

/// What contradicts the rest of its size, what would agree, and what it could be as well.
[[nodiscard]] QString sentence(const Contradiction& contradiction, const ClosedTable& closed);
[[nodiscard]] QString sentence(const UnusualValue& unusual, const ClosedTable& closed);
[[nodiscard]] QString sentence(const Redefinition& redefinition);
/// What a column that is missing prevents; empty where that is nothing.
[[nodiscard]] QString sentence(const UnknownColumn& unknown);

/// The table with its sizes across, then all that is to be said about it.
[[nodiscard]] QString closedTableText(const ReadTable& read, const ClosedTable& closed);

} // namespace tripoise
