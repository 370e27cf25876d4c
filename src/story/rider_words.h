// SPDX-License-Identifier: MIT
//
// What is said to the rider, who has never heard of a trunk angle: short, in millimetres or inches,
// no percentages.
#pragma once

#include "drawing/side_view.h"

#include <QString>

#include <array>
#include <optional>

namespace tripoise {

/// The bicycles a rider is shown: today's, the size looked at, the one beside it.
enum class WhichBike { Today, Shown, Beside };
inline constexpr std::array allRidden{WhichBike::Today, WhichBike::Shown, WhichBike::Beside};

[[nodiscard]] QString riddenName(WhichBike which, const SideView& view);  ///< "Today", "M"
[[nodiscard]] QString riddenTitle(WhichBike which, const SideView& view); ///< "Your bicycle today"
[[nodiscard]] QString riddenDescription(WhichBike which, const SideView& view);
/// "Your hands are 5 mm higher and 4 mm further away than on the M."; of one not looked at.
[[nodiscard]] QString changeWords(const SideView& view, const SideView& shown);

/// How the size looked at is set up: as advised, as just pulled about, as the builder chose.
enum class RiddenSetup { Advised, Tried, Chosen };
/// "Chosen with you. As we would set it up for you."
[[nodiscard]] QString setupWords(RiddenSetup setup, bool chosen);

/// "The M fits you best."; of the size looked at.
[[nodiscard]] QString fitsYou(const Advice& advice, std::size_t shown, const Prepared& prepared);

[[nodiscard]] QString standingTitle();
[[nodiscard]] QString wholeTitle();
[[nodiscard]] QString backTitle();
[[nodiscard]] QString kneeTitle();
[[nodiscard]] QString barTitle();
[[nodiscard]] QString kneeAndBarTitle();
[[nodiscard]] QString toeTitle();
/// Sentences that compare the size looked at with the one beside it, if there is one.
[[nodiscard]] QString backWords(const SideView& shown, const SideView* beside);
[[nodiscard]] QString kneeWords(const SideView& shown, const SideView* beside);
[[nodiscard]] QString kneeAndBarWords(const SideView& shown, const SideView* beside);
[[nodiscard]] QString barWords(const SideView& shown, const SideView* beside);
/// The room between shoe and wheel, negative where they meet, empty where they pass each other.
struct ToeRoom {
    QString size;
    std::optional<double> mm;
    double doubtMm = 0.0; ///< less than this may be none, as shoes differ
};
[[nodiscard]] QString toeWords(const ToeRoom& shown, const std::optional<ToeRoom>& beside);

/// "M: 33 mm" and "M: 33 mm below", beside a dimension in a picture.
[[nodiscard]] QString measuredOn(const SideView& view, double valueMm);
[[nodiscard]] QString barMeasuredOn(const SideView& view);

} // namespace tripoise
