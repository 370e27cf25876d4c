// SPDX-License-Identifier: MIT
//
// What the four lists of the box have each of their own: how a part is called, what it clamps, what
// is typed about it, and what the next one begins with.
#pragma once

#include "brief/box_lines.h"
#include "brief/part_entries.h"
#include "brief/parts_model.h"
#include "shipped/tables.h"
#include "wording/entry_words.h"
#include "wording/words.h"

namespace tripoise {

[[nodiscard]] inline const PartDefaults& usual()
{
    return shippedTables().parts;
}

[[nodiscard]] inline std::span<const EntryOf<Stem>> entriesOf(Stems, const Stem&)
{
    return stemEntries();
}
[[nodiscard]] inline std::span<const EntryOf<Bar>> entriesOf(Bars, const Bar& bar)
{
    return barEntries(bar.kind);
}
[[nodiscard]] inline std::span<const EntryOf<double>> entriesOf(Spacers, double)
{
    return spacerEntries();
}
[[nodiscard]] inline std::span<const EntryOf<double>> entriesOf(Cranks, double)
{
    return crankEntries();
}

[[nodiscard]] inline QString textOf(const Stem& stem)
{
    return stemText(stem);
}
[[nodiscard]] inline QString textOf(const Bar& bar)
{
    return barText(bar);
}
[[nodiscard]] inline QString textOf(double piece)
{
    return pieceText(piece);
}

[[nodiscard]] inline QString clampsOf(const Stem& stem)
{
    return stemClamps(stem, usual());
}
[[nodiscard]] inline QString clampsOf(const Bar& bar)
{
    return barClamps(bar, usual());
}
[[nodiscard]] inline QString clampsOf(double)
{
    return {};
}

[[nodiscard]] inline QString noteOf(const Stem& stem, const PartsModel::Bench& bench)
{
    if (fitsNoSteerer(stem, bench.steerers(), usual()))
        return noSteererText(bench.steerers());
    return clampsNoBar(stem, bench.fitting(), usual()) ? noBarText(stem, usual()) : QString();
}
[[nodiscard]] inline QString noteOf(const Bar& bar, const PartsModel::Bench& bench)
{
    if (bench.barKind().value_or(bar.kind) != bar.kind)
        return otherKindText();
    return clampedByNone(bar, bench.fitting(), usual()) ? noStemText(bar, usual()) : QString();
}
[[nodiscard]] inline QString noteOf(double, const PartsModel::Bench&)
{
    return {};
}

[[nodiscard]] inline QString stepName(Stems)
{
    return Words::tr("Stems in the box");
}
[[nodiscard]] inline QString stepName(Bars)
{
    return Words::tr("Bars in the box");
}
[[nodiscard]] inline QString stepName(Spacers)
{
    return Words::tr("Spacers in the box");
}
[[nodiscard]] inline QString stepName(Cranks)
{
    return Words::tr("Cranks in the box");
}

// The next new part is like the last, but for what tells it apart.
[[nodiscard]] inline Stem nextAfter(Stem stem)
{
    stem.lengthMm = 0.0;
    return stem;
}
[[nodiscard]] inline Bar nextAfter(const Bar& bar)
{
    Bar next;
    next.kind = bar.kind;
    next.barClampMm = bar.barClampMm;
    return next;
}
[[nodiscard]] inline double nextAfter(double)
{
    return 0.0;
}

} // namespace tripoise
