// SPDX-License-Identifier: MIT
#include "document/write_json.h"

#include <cmath>

namespace tripoise::document {

double degreesOf(Angle angle)
{
    constexpr double decimals = 1e9;
    constexpr int steps = 4; // the maker's two roundings lose fewer
    const double nearest = angle.deg();
    const double rounded = std::round(nearest * decimals) / decimals;
    if (Angle::degrees(rounded) == angle)
        return rounded;
    double below = nearest;
    double above = nearest;
    for (int step = 0; step <= steps; ++step) {
        if (Angle::degrees(below) == angle)
            return below;
        if (Angle::degrees(above) == angle)
            return above;
        below = std::nextafter(below, -HUGE_VAL);
        above = std::nextafter(above, HUGE_VAL);
    }
    return nearest;
}

Json numbers(const std::vector<double>& values)
{
    Json list = Json::array();
    for (const double value : values)
        list.push_back(tidy(value));
    return list;
}

std::string textOf(const Json& json)
{
    constexpr int indent = 2;
    return json.dump(indent, ' ', false, Json::error_handler_t::replace) + '\n';
}

} // namespace tripoise::document
