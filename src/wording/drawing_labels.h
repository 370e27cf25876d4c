// SPDX-License-Identifier: MIT
//
// What is written on the side view, apart from its title.
#pragma once

#include "drawing/side_view.h"

#include <QString>

#include <vector>

namespace tripoise {

[[nodiscard]] QString jointLabel(const JointAngle& angle); ///< "trunk 53°"
[[nodiscard]] QString jointRange(const JointAngle& angle); ///< "49–57°"
[[nodiscard]] QString leaderLabel(const Leader& leader);   ///< "bar 18 mm higher"
/// Stands over the leaders: which size they speak of.
[[nodiscard]] QString leadersHeading(const SideView& view);

/// "Millrace M", or "M" where both sizes are of one model.
[[nodiscard]] QString chosenName(const SideView& view);
[[nodiscard]] QString otherName(const SideView& view);

/// One line of the title block; `other` is empty where there is no other size.
struct BlockRow {
    QString label;
    QString chosen;
    QString other;
};
[[nodiscard]] QString blockTitle(const SideView& view);
[[nodiscard]] std::vector<BlockRow> blockRows(const SideView& view);
[[nodiscard]] QString
positionLine(const RiderSketch& rider); ///< "position: fast commuting, hands on the grips"
[[nodiscard]] QString rangeKey();       ///< what the shaded sectors are
[[nodiscard]] QString scaleLabel(double lengthMm);

/// The whole picture in words, for those who do not see it.
[[nodiscard]] QString drawingDescription(const SideView& view);

} // namespace tripoise
