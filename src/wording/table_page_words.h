// SPDX-License-Identifier: MIT
//
// What the page of a geometry table says beside the table's own findings.
#pragma once

#include "frame/closure.h"
#include "table/read_table.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

// What to think of a figure, for who hovers over it.
[[nodiscard]] QString followsText();
[[nodiscard]] QString assumedText(const ClosedValue& value);
[[nodiscard]] QString notUnderstoodText();
[[nodiscard]] QString correctedText(Column column, double printed, double taken);
[[nodiscard]] QString takesText(Column column, double value); ///< what a click does about it
/// "M, stack: 585", for who does not see the table.
[[nodiscard]] QString figureSpoken(const QString& size, const QString& line, const QString& figure);

// On buttons.
[[nodiscard]] QString takeFigureText(Column column, double value); ///< "Take 585 mm"
[[nodiscard]] QString asHeadedText();
[[nodiscard]] QString takeDefinitionText();
[[nodiscard]] QString confirmText(); ///< of a guess
[[nodiscard]] QString sayMeaningText();
[[nodiscard]] QString tooManySizes(std::size_t most);
/// `replaced` of them take the place of others of their name.
[[nodiscard]] QString addSizesText(int count, bool keep, int replaced);

/// What the reader found, by the line it stands on.
[[nodiscard]] QString lineSentence(const Problem& problem);
[[nodiscard]] QString backText(Column column, double printed); ///< "Back to 585 mm"
[[nodiscard]] QString headingUnknownText(const std::string& heading);
[[nodiscard]] QString moreUnknownText(std::size_t count);
/// "5 sizes, 14 columns", or why there is nothing.
[[nodiscard]] QString tableSummary(const ReadTable& read);
/// The model; of several in one text "table 2" where it has none, "Weir, table 2" where another has
/// that name.
[[nodiscard]] QString tableName(const std::vector<std::optional<std::string>>& models,
                                std::size_t table);
/// Why no candidate can be made of a size; empty where one can.
[[nodiscard]] QString whyNoCandidate(const ClosedSize& size);

[[nodiscard]] QString leaveOutText(); ///< instead of a meaning

// Steps to undo.
[[nodiscard]] QString addedStep(int count, const QString& model);
[[nodiscard]] QString keptAddedStep(int count, const QStringList& models);

} // namespace tripoise
