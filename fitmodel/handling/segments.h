// SPDX-License-Identifier: MIT
//
// Masses and centres of the body's segments, shares of the whole and of each length
// (assets/segments.json): de Leva 1996, J Biomech 29:1223, adjusted Zatsiorsky-Seluyanov. A centre
// belongs to its own two endpoints. Means of young, fit people; another table (Dempster) moves the
// centre of a seated rider by centimetres, so this one is used throughout.
#pragma once

#include "rider/measurements.h"

#include <array>
#include <optional>

namespace tripoise {

enum class Segment { Head, Trunk, UpperArm, Forearm, Hand, Thigh, Shank, Foot };
inline constexpr std::array<std::string_view, 8> segmentKeys{
    "head", "trunk", "upper_arm", "forearm", "hand", "thigh", "shank", "foot"};

/// Head and trunk are one each; of the others there are two.
[[nodiscard]] constexpr double countOf(Segment segment)
{
    return segment == Segment::Head || segment == Segment::Trunk ? 1.0 : 2.0;
}

struct SegmentShare {
    double mass = 0.0;   ///< of one, a share of the body's
    double centre = 0.0; ///< share of the length from the end nearer to the trunk (head: crown)
};

struct SegmentRows {
    std::array<SegmentShare, segmentKeys.size()> rows;
    double headOfStature = 0.0;     ///< crown to C7, share of the stature
    double wristAlongForearm = 0.0; ///< elbow to wrist, share of elbow to grip

    [[nodiscard]] const SegmentShare& of(Segment segment) const
    {
        return rows[static_cast<std::size_t>(segment)];
    }
    [[nodiscard]] double sum() const
    {
        double sum = 0.0;
        for (std::size_t i = 0; i < rows.size(); ++i)
            sum += countOf(static_cast<Segment>(i)) * rows[i].mass;
        return sum;
    }
};

struct SegmentTable {
    SegmentRows female;
    SegmentRows male;
    double densityKgPerMm3 = 0.0; ///< of every segment, for how thick it is
    double hipJointHalfMm = 0.0;  ///< hip joint from the bicycle's plane
    double headLeansBack = 0.0;   ///< 0 = on the trunk's line, 1 = upright
};

/// The rows of a rider whose masses sum to 1; the mean of both where sex is not stated.
[[nodiscard]] SegmentRows rowsFor(const SegmentTable& table, std::optional<Sex> sex);

} // namespace tripoise
