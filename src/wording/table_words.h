// SPDX-License-Identifier: MIT
//
// What is said of a geometry table that was read and closed.
#pragma once

#include "frame/closure.h"
#include "table/read_table.h"

#include <QString>
#include <QStringList>

namespace tripoise {

[[nodiscard]] QString nameOf(Column column);
[[nodiscard]] QString nameOf(Purpose purpose); ///< "the length to cut the steerer to"
/// "585 mm", "71.5°": to the digit that a table prints.
[[nodiscard]] QString figureOf(Column column, double value);

/// What contradicts the rest of its size, what would agree, and what it could be as well.
[[nodiscard]] QString sentence(const Contradiction& contradiction, const ClosedTable& closed);
[[nodiscard]] QString sentence(const Mixup& one, const ClosedTable& closed);
[[nodiscard]] QString sentence(const UnusualValue& unusual, const ClosedTable& closed);
[[nodiscard]] QString sentence(const Redefinition& redefinition);
/// What a column that is missing prevents; empty where that is nothing.
[[nodiscard]] QString sentence(const UnknownColumn& unknown);

/// Once for all sizes that lack the same.
[[nodiscard]] QStringList missingOf(const ClosedTable& closed);
/// Of a value that follows from the others if this is as in ordinary frames.
[[nodiscard]] QString withOrdinaryText(Column column);
/// Of a definition that would agree and is not taken up.
[[nodiscard]] QString proposal(const Redefinition& redefinition);
[[nodiscard]] QString anglesRoundedText();
[[nodiscard]] QString lineUnknownText(const TableText& text);

/// In a cell, without a unit: as printed, "425–440"; "≈ 569" where it follows, "47 ?" where it is
/// assumed.
[[nodiscard]] QString entryText(const Entry& entry);
[[nodiscard]] QString standInFigure(const ClosedValue& value);
[[nodiscard]] QString correctedSentence(const std::string& size, Column column, double printed,
                                        double taken);

/// The table below its name, if it has one, with its sizes across, then all that is to be said
/// about it.
[[nodiscard]] QString closedTableText(const QString& name, const ReadTable& read,
                                      const ClosedTable& closed);

} // namespace tripoise
