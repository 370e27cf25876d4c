// SPDX-License-Identifier: MIT
//
// A day of the calendar as documents write it: year-month-day, "2026-03-05" (ISO 8601, extended
// form). Days in this form sort as text.
#pragma once

#include <chrono>
#include <string_view>

namespace tripoise {

/// Whether it is a day that there was or will be, written in full.
[[nodiscard]] constexpr bool isDay(std::string_view text)
{
    constexpr std::string_view form = "0000-00-00";
    if (text.size() != form.size())
        return false;
    for (std::size_t i = 0; i < form.size(); ++i)
        if (form[i] == '-' ? text[i] != '-' : text[i] < '0' || text[i] > '9')
            return false;
    const auto figures = [text](std::size_t at, std::size_t count) {
        int value = 0;
        for (std::size_t i = at; i < at + count; ++i)
            value = 10 * value + (text[i] - '0');
        return value;
    };
    return std::chrono::year_month_day(std::chrono::year(figures(0, 4)),
                                       std::chrono::month(static_cast<unsigned>(figures(5, 2))),
                                       std::chrono::day(static_cast<unsigned>(figures(8, 2))))
        .ok();
}

} // namespace tripoise
