// SPDX-License-Identifier: MIT
//
// Smooth lines as points.
#pragma once

#include "base/axes.h"

#include <vector>

namespace tripoise::drawing {

/// Unit vector a quarter turn to the left of a vector; the x axis for a vector without length.
[[nodiscard]] inline Point leftOf(const Point& vector)
{
    const double length = vector.norm();
    return length > 0.0 ? Point(-vector.y() / length, vector.x() / length) : Point(0.0, 1.0);
}

/// Adds a cubic from the line's last point over two controls to an end.
inline void curveTo(std::vector<Point>& line, const Point& first, const Point& second,
                    const Point& end, int steps = 12)
{
    const Point start = line.back();
    for (int i = 1; i <= steps; ++i) {
        const double t = static_cast<double>(i) / steps;
        const double u = 1.0 - t;
        line.push_back(u * u * u * start + 3.0 * u * u * t * first + 3.0 * u * t * t * second
                       + t * t * t * end);
    }
}

/// Catmull-Rom through all points; closed.
[[nodiscard]] inline std::vector<Point> smoothLoop(const std::vector<Point>& through, int steps = 6)
{
    std::vector<Point> loop;
    const std::size_t n = through.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point& a = through[(i + n - 1) % n];
        const Point& b = through[i];
        const Point& c = through[(i + 1) % n];
        const Point& d = through[(i + 2) % n];
        for (int k = 0; k < steps; ++k) {
            const double t = static_cast<double>(k) / steps;
            loop.push_back(0.5
                           * (2.0 * b + t * (c - a) + t * t * (2.0 * a - 5.0 * b + 4.0 * c - d)
                              + t * t * t * (3.0 * b - a - 3.0 * c + d)));
        }
    }
    return loop;
}

} // namespace tripoise::drawing
