// SPDX-License-Identifier: MIT
//
// What the numbers of frames, parts and the bicycle of today are called, and from where to where
// they are taken; and the lines that sum them up.
#pragma once

#include "base/estimate.h"
#include "cockpit/parts.h"
#include "frame/geometry.h"

#include <QString>
#include <QStringList>

#include <span>
#include <string_view>
#include <vector>

namespace tripoise {

[[nodiscard]] QString entryName(std::string_view key);  ///< "Head angle"
[[nodiscard]] QString entryDatum(std::string_view key); ///< from where to where; may be empty
/// The datum and what is plausible, in a line.
[[nodiscard]] QString datumText(const QString& datum, const QString& range);
/// What is used while nothing is given: "≈ 569" where it follows from the rest, "47 ?" where it is
/// assumed.
[[nodiscard]] QString standInText(const Estimate& standIn, int decimals);

[[nodiscard]] QString frameName(const FrameSize& frame); ///< "Millrace M"
/// "585 / 396 mm, 71.5°", with a dash for what is not typed yet.
[[nodiscard]] QString frameFigures(const Geometry& geometry);
[[nodiscard]] QString framesSummary(std::span<const FrameSize> frames);
[[nodiscard]] QString stillNeeded(const QStringList& names); ///< "Still needed: stack and reach"
[[nodiscard]] QString nameTakenText(const FrameSize& frame);
[[nodiscard]] QString frontCentreTooLong();

[[nodiscard]] QString stemText(const Stem& stem);                                 ///< "90 mm, 6°"
[[nodiscard]] QString stemClamps(const Stem& stem, const PartDefaults& defaults); ///< "31.8 / 28.6"
[[nodiscard]] QString barText(const Bar& bar);
[[nodiscard]] QString barClamps(const Bar& bar, const PartDefaults& defaults); ///< "31.8"
[[nodiscard]] QString pieceText(double millimetres);                           ///< "172.5 mm"
[[nodiscard]] QString noSteererText(const std::vector<Steerer>& steerers);
[[nodiscard]] QString noBarText(const Stem& stem, const PartDefaults& defaults);
[[nodiscard]] QString noStemText(const Bar& bar, const PartDefaults& defaults);
[[nodiscard]] QString otherKindText(); ///< of a bar that the bicycle is not to have
[[nodiscard]] QString boxSummary(const Stock& fitting);

} // namespace tripoise
