// SPDX-License-Identifier: MIT
//
// Set-ups side by side, line by line, in the order a builder sets them.
#pragma once

#include "advice/advise.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace tripoise {

struct SetupRow {
    QString label;
    QString meaning;        ///< how it is measured or what it does; one or two sentences
    QStringList said;       ///< one value a column
    bool part = false;      ///< something to take out of the box, not a place or an angle
    bool essential = false; ///< told where there is room for little

    /// Whether the columns do not all say the same.
    [[nodiscard]] bool differs() const;
};

/// A null column is a size that carries no set-up; it says a dash.
using Columns = std::vector<const AdvisedSetup*>;

[[nodiscard]] std::vector<SetupRow> setupRows(const Columns& columns, const Advice& advice,
                                              const Prepared& prepared);
/// Whether the comfortable range is called that, or stands in brackets alone.
enum class Telling { InFull, Briefly };

/// "19 mm below", "22 mm above", "level".
[[nodiscard]] QString againstSaddle(double belowMm);

/// "58 mm behind", "12 mm ahead", "plumb": the saddle's nose, against the bottom bracket.
[[nodiscard]] QString behindBracket(double behindMm);

/// One line a use; for columns that were advised for the same mix.
[[nodiscard]] std::vector<SetupRow> backRows(const Columns& columns,
                                             Telling telling = Telling::InFull);
/// One line; for columns that were advised for one use each.
[[nodiscard]] SetupRow ownBackRow(const Columns& columns, Telling telling = Telling::InFull);

/// A whole line, for those who do not see it; the second title is empty with one column.
[[nodiscard]] QString setupSpoken(const SetupRow& row, const QString& firstTitle,
                                  const QString& secondTitle);

/// "Parts that differ: stem, spacers under it and bar."
[[nodiscard]] QString differencesSentence(const std::vector<SetupRow>& rows);

} // namespace tripoise
