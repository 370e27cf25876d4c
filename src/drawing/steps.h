// SPDX-License-Identifier: MIT
#pragma once

#include <QFont>
#include <QSizeF>

#include <optional>

namespace tripoise {

/// Heights of letters and weights of lines, in the area's own unit, all from one size.
struct Steps {
    double title = 0.0;
    double body = 0.0;
    double small = 0.0;
    double hair = 0.0;
    double thin = 0.0;
    double medium = 0.0;
    double bold = 0.0;
};

/// Letters in proportion to the area, or given by the height of the small ones.
[[nodiscard]] Steps stepsFor(const QSizeF& area, std::optional<double> smallPx = {});

[[nodiscard]] QFont fontOf(double px, QFont::Weight weight = QFont::Normal);

} // namespace tripoise
