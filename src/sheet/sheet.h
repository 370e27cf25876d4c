// SPDX-License-Identifier: MIT
//
// The set-up sheet: a page for the workshop, with every number drawn on the bicycle, and a page for
// the rider, with why this size and what to change first. Drawn as lines and text, so that it can
// be searched and printed small, and told apart without colour.
#pragma once

#include "wording/sheet_words.h"

#include <QPageSize>
#include <QString>

#include <optional>

class QPainter;

namespace tripoise {

enum class SheetPage { Workshop, Rider };

/// Sheets are laid out in tenths of a millimetre.
inline constexpr double sheetUnitsPerMm = 10.0;

/// One page, into a painter in sheet units, its paper's corner at the origin. Letters and pictures
/// are as large as all of it goes onto the page with. `date` is printed as it is.
void paintSheetPage(QPainter& painter, SheetPage page, const QSizeF& paper, const Handing& handing,
                    const QString& date);

/// A PDF, written whole or not at all. Empty when it was written, else what the system said.
[[nodiscard]] std::optional<QString> writeSheet(const QString& path, const Handing& handing,
                                                const std::vector<SheetPage>& pages,
                                                QPageSize::PageSizeId paper, const QString& date);

} // namespace tripoise
