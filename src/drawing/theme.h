// SPDX-License-Identifier: MIT
//
// The two palettes of the drawing: ink on warm paper, chalk on slate. The other size is bluish
// green and a hazard is orange, both after Okabe & Ito (2008, "Color universal design", #009E73 and
// #E69F00) and tuned until their text keeps 4.5:1 on the paper; each colour is doubled by a line
// style or a label.
#pragma once

#include <QColor>

namespace tripoise {

struct Theme {
    QColor paper;
    QColor ink;  ///< lines of the chosen size, text
    QColor soft; ///< text of the second rank
    QColor hair; ///< ground, reference lines, rules
    QColor edge; ///< outline of a control, 3:1 on the paper
    QColor tube; ///< body of a tube
    QColor part; ///< body of stem, post, spacers, crank
    QColor tyre;
    QColor rubber;   ///< saddle, grips
    QColor rider;    ///< body of the figure
    QColor riderFar; ///< its far leg
    QColor riderLine;
    QColor sole;  ///< of the shoe
    QColor range; ///< sector of a comfortable range
    QColor other; ///< lines of the other size
    QColor otherText;
    QColor hazard;
    QColor hazardText;
    QColor hazardInk; ///< on the hazard's own colour

    bool operator==(const Theme&) const = default;

    [[nodiscard]] static Theme day()
    {
        return {.paper = QColor(0xf7, 0xf2, 0xe8),
                .ink = QColor(0x22, 0x26, 0x2b),
                .soft = QColor(0x5a, 0x5c, 0x5f),
                .hair = QColor(0xb4, 0xab, 0x9b),
                .edge = QColor(0x86, 0x7e, 0x70),
                .tube = QColor(0xfd, 0xfb, 0xf6),
                .part = QColor(0xcf, 0xc8, 0xbb),
                .tyre = QColor(0x77, 0x76, 0x73),
                .rubber = QColor(0x45, 0x48, 0x4d),
                .rider = QColor(0xe0, 0xd6, 0xc5),
                .riderFar = QColor(0xec, 0xe4, 0xd7),
                .riderLine = QColor(0x9c, 0x90, 0x7d),
                .sole = QColor(0x7d, 0x73, 0x64),
                .range = QColor(0x22, 0x26, 0x2b, 72),
                .other = QColor(0x00, 0x8a, 0x65),
                .otherText = QColor(0x00, 0x6b, 0x4e),
                .hazard = QColor(0xe6, 0x9f, 0x00),
                .hazardText = QColor(0x8a, 0x55, 0x00),
                .hazardInk = QColor(0x22, 0x26, 0x2b)};
    }

    /// For a printer: on white, told apart in grey as well.
    [[nodiscard]] static Theme print()
    {
        Theme theme = day();
        theme.paper = theme.tube = Qt::white;
        theme.ink = Qt::black;
        theme.soft = QColor(0x40, 0x40, 0x40);
        theme.hair = QColor(0x99, 0x99, 0x99);
        theme.part = QColor(0xd8, 0xd8, 0xd8);
        theme.rider = QColor(0xe6, 0xe6, 0xe6);
        theme.riderFar = QColor(0xf2, 0xf2, 0xf2);
        theme.riderLine = QColor(0x99, 0x99, 0x99);
        return theme;
    }

    [[nodiscard]] static Theme night()
    {
        return {.paper = QColor(0x1f, 0x27, 0x2d),
                .ink = QColor(0xed, 0xea, 0xe2),
                .soft = QColor(0xae, 0xb6, 0xba),
                .hair = QColor(0x55, 0x61, 0x69),
                .edge = QColor(0x82, 0x8f, 0x98),
                .tube = QColor(0x2a, 0x33, 0x3a),
                .part = QColor(0x53, 0x5f, 0x67),
                .tyre = QColor(0x66, 0x71, 0x78),
                .rubber = QColor(0xa3, 0xab, 0xaf),
                .rider = QColor(0x3b, 0x48, 0x51),
                .riderFar = QColor(0x2c, 0x37, 0x3f),
                .riderLine = QColor(0x74, 0x83, 0x8d),
                .sole = QColor(0x9b, 0xa8, 0xb0),
                .range = QColor(0xed, 0xea, 0xe2, 78),
                .other = QColor(0x22, 0xc5, 0x97),
                .otherText = QColor(0x4a, 0xd6, 0xae),
                .hazard = QColor(0xe6, 0x9f, 0x00),
                .hazardText = QColor(0xf2, 0xb5, 0x3a),
                .hazardInk = QColor(0x1f, 0x27, 0x2d)};
    }
};

} // namespace tripoise
