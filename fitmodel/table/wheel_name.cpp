// SPDX-License-Identifier: MIT
#include "table/wheel_name.h"

#include "text/plain.h"

#include <charconv>
#include <string>
#include <vector>

namespace tripoise::table {
namespace {

constexpr std::size_t longestName = 40;

/// Runs of figures with their decimal sign and letters behind, small: "700x40c" is "700", "40c".
std::vector<std::string> partsOf(std::string_view cell)
{
    std::vector<std::string> parts(1);
    for (std::size_t i = 0; i < cell.size(); ++i) {
        const char c = smallLetter(cell[i]);
        std::string& last = parts.back();
        const bool decimal = (c == '.' || c == ',') && !last.empty() && isFigure(last.back())
                             && i + 1 < cell.size() && isFigure(cell[i + 1]);
        const bool letter = isLetter(c) && c != 'x';
        if (decimal)
            last += '.';
        else if (isFigure(c) || letter)
            last += c;
        else if (!last.empty())
            parts.emplace_back();
    }
    if (parts.back().empty())
        parts.pop_back();
    return parts;
}

std::optional<double> widthOf(const std::string& part, const HeadingTable& table)
{
    double width = 0.0;
    const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), width);
    if (width < table.limits.widestTyreInches)
        width *= inchMm;
    const bool plausible = outside(width, table.plausible[indexOf(Column::Tyre)]) == 0.0;
    return error == std::errc() && plausible ? std::optional(width) : std::nullopt;
}

std::optional<double> rimOf(const std::string& part, const HeadingTable& table)
{
    const auto found = table.wheels.find(part);
    return found == table.wheels.end() ? std::nullopt : std::optional(found->second);
}

} // namespace

WheelName wheelNamed(std::string_view cell, bool tyreAsked, const HeadingTable& table)
{
    if (cell.size() > longestName)
        return {};
    std::vector<std::string> parts = partsOf(cell);
    std::erase_if(parts, [&](const std::string& part) {
        return isLength(unitNamed(part, table.numbers)) || part == "c" || part == "max";
    });
    if (parts.empty())
        return {};
    if (parts.size() == 1) {
        if (tyreAsked)
            return {std::nullopt, widthOf(parts[0], table)};
        return {rimOf(parts[0], table), std::nullopt};
    }
    // Width before rim as ISO 5775 writes it; rim before width as the trade does.
    const bool rimLast = parts[1].size() == 3 && rimOf(parts[1], table);
    return rimLast ? WheelName{rimOf(parts[1], table), widthOf(parts[0], table)}
                   : WheelName{rimOf(parts[0], table), widthOf(parts[1], table)};
}

} // namespace tripoise::table
