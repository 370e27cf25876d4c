// SPDX-License-Identifier: MIT
//
// What is written on the side view, apart from its title.
#pragma once

#include "drawing/dimensions.h"
#include "drawing/options.h"
#include "drawing/side_view.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace tripoise {

[[nodiscard]] QString jointName(Joint joint);              ///< "trunk"
[[nodiscard]] QString jointLabel(const JointAngle& angle); ///< "trunk 53°"
[[nodiscard]] QString jointValue(const JointAngle& angle); ///< "53°"
[[nodiscard]] QString jointRange(const JointAngle& angle); ///< "49–57°"
/// "inside", "near the edge", "outside": what a sign beside the angle says.
[[nodiscard]] QString rangePlaceName(RangePlace place);
[[nodiscard]] QString leaderLabel(const Leader& leader); ///< "bar 18 mm higher"
[[nodiscard]] QString leadersLeftOut(std::size_t count); ///< "… and 3 more"
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

[[nodiscard]] QString dimensionLabel(const Dimension& dimension); ///< "saddle height 742 mm"
[[nodiscard]] QString dimensionValue(const Dimension& dimension); ///< "742 mm"
/// What the size beside has more, "+18"; empty where it is alike or alone.
[[nodiscard]] QString dimensionMore(const Dimension& dimension);

/// What the lines of the drawing are.
enum class LegendLine { Whole, Dashed, Dotted };
struct LegendRow {
    LegendLine line = LegendLine::Whole;
    QStringList texts; ///< whole, then shorter ones for want of room
};
[[nodiscard]] std::vector<LegendRow> legendRows(const SideView& view, const Layers& layers);

/// The whole picture in words, for those who do not see it.
[[nodiscard]] QString drawingDescription(const SideView& view);

} // namespace tripoise
