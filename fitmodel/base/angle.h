// SPDX-License-Identifier: MIT
//
// An angle, made only from degrees or radians by name. Lengths have one unit in the model, so their
// names carry it; angles honestly have two, so they get a type.
#pragma once

#include <compare>
#include <numbers>

namespace tripoise {

class Angle {
public:
    constexpr Angle() = default;

    [[nodiscard]] static constexpr Angle degrees(double value)
    {
        return Angle(value * std::numbers::pi / 180.0);
    }
    [[nodiscard]] static constexpr Angle radians(double value) { return Angle(value); }

    [[nodiscard]] constexpr double deg() const { return m_radians * 180.0 / std::numbers::pi; }
    [[nodiscard]] constexpr double rad() const { return m_radians; }

    constexpr auto operator<=>(const Angle&) const = default;

    friend constexpr Angle operator+(Angle a, Angle b) { return Angle(a.m_radians + b.m_radians); }
    friend constexpr Angle operator-(Angle a, Angle b) { return Angle(a.m_radians - b.m_radians); }
    friend constexpr Angle operator-(Angle a) { return Angle(-a.m_radians); }
    friend constexpr Angle operator*(double factor, Angle a) { return Angle(factor * a.m_radians); }

private:
    explicit constexpr Angle(double radians) : m_radians(radians) {}

    double m_radians = 0.0;
};

} // namespace tripoise
