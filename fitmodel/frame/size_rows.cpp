// SPDX-License-Identifier: MIT
#include "frame/size_rows.h"

#include <algorithm>
#include <cmath>

namespace tripoise::frame {
namespace {

bool isPlausible(Column column, double value, const ClosureTable& table)
{
    const Range& range = table.plausible[indexOf(column)];
    return value >= range.low && value <= range.high;
}

bool hasRow(Column column, const std::vector<Observation>& rows)
{
    return std::any_of(rows.begin(), rows.end(),
                       [&](const Observation& row) { return row.column == column; });
}

std::optional<Column> farEnd(Column column)
{
    if (column == Column::Chainstay)
        return Column::ChainstayLong;
    if (column == Column::Wheelbase)
        return Column::WheelbaseLong;
    return std::nullopt;
}

/// The wheel's radius by the tyre that is stated.
std::optional<Observation> wheelRow(const TableSize& size, const ClosureTable& table)
{
    const Entry* bead = entryOf(Column::BeadSeat, size);
    const Entry* tyre = entryOf(Column::Tyre, size);
    const auto wheel = indexOf(Unknown::WheelRadius);
    if (bead && tyre)
        return Observation{Column::WheelRadius, 0.5 * bead->value + tyre->value, table.tyreSdMm};
    if (bead)
        return Observation{Column::WheelRadius,
                           table.ordinary.mean(wheel)
                               + 0.5 * (bead->value - table.ordinaryBeadSeatMm),
                           table.ordinary.sd(wheel)};
    return std::nullopt;
}

SizeRows rowsOf(const TableSize& size, const ClosureTable& table, Rounding rounding)
{
    SizeRows rows;
    const auto add = [&](Column column, double value, double sd) {
        if (hasEquation(column) && isPlausible(column, value, table)
            && !hasRow(column, rows.claims))
            rows.claims.push_back({column, value, sd});
    };
    for (const Entry& entry : size.entries) {
        const double sd = sdOf(entry, table, rounding);
        add(entry.column, entry.value, sd);
        if (const auto far = farEnd(entry.column); far && entry.high)
            add(*far, *entry.high, sd);
    }
    return rows;
}

double medianOf(std::vector<double>& values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

double beadSeatOf(const TableSize& size)
{
    const Entry* bead = entryOf(Column::BeadSeat, size);
    return bead ? bead->value : 0.0;
}

/// What the sizes on one wheel agree on, where enough of them tell. Their roundings may all be the
/// same (a drop alike in all sizes), so many sizes are not surer than one.
std::optional<Observation> inCommon(Column column, const std::vector<std::size_t>& sizes,
                                    const std::vector<Adjustment>& adjusted,
                                    const ClosureTable& table)
{
    std::vector<double> values;
    std::vector<double> sds;
    for (const std::size_t size : sizes) {
        if (const Reckoned one = reckon(column, adjusted[size]); one.determined) {
            values.push_back(one.value);
            sds.push_back(one.sd);
        }
    }
    if (values.size() < table.sizesInCommon)
        return std::nullopt;
    return Observation{column, medianOf(values), medianOf(sds)};
}

} // namespace

std::vector<Observation> SizeRows::all() const
{
    std::vector<Observation> rows = claims;
    rows.insert(rows.end(), beyondDoubt.begin(), beyondDoubt.end());
    return rows;
}

double sdOf(const Entry& entry, const ClosureTable& table, Rounding rounding)
{
    const bool coarse = rounding == Rounding::Coarse && unitOf(entry.column) == Unit::Degree;
    const double step = coarse ? std::max(entry.step, table.coarseAngleDeg) : entry.step;
    return 0.5 * step / std::sqrt(3.0);
}

std::vector<SizeRows> rowsOf(const GeometryTable& geometry, const ClosureTable& table,
                             Rounding rounding)
{
    std::vector<SizeRows> all;
    all.reserve(geometry.sizes.size());
    for (const TableSize& size : geometry.sizes)
        all.push_back(rowsOf(size, table, rounding));

    const auto anyHas = [&](Column column) {
        return std::any_of(all.begin(), all.end(),
                           [&](const SizeRows& rows) { return hasRow(column, rows.claims); });
    };
    const bool tellsHeadset = anyHas(Column::HeadTube) && !anyHas(Column::LowerHeadset);
    const bool tellsWheel = anyHas(Column::Trail) || anyHas(Column::BbHeight);
    std::vector<Adjustment> adjusted;
    if (tellsHeadset || tellsWheel)
        for (const SizeRows& rows : all)
            adjusted.push_back(adjust(rows.claims, table.ordinary));

    std::vector<std::size_t> everySize;
    for (std::size_t i = 0; i < all.size(); ++i)
        everySize.push_back(i);
    if (tellsHeadset)
        if (const auto headset = inCommon(Column::LowerHeadset, everySize, adjusted, table))
            for (SizeRows& rows : all)
                rows.beyondDoubt.push_back(*headset);

    std::vector<double> beads;
    for (const TableSize& size : geometry.sizes)
        if (std::find(beads.begin(), beads.end(), beadSeatOf(size)) == beads.end())
            beads.push_back(beadSeatOf(size));
    for (const double bead : beads) {
        std::vector<std::size_t> onThisWheel;
        for (std::size_t i = 0; i < all.size(); ++i)
            if (beadSeatOf(geometry.sizes[i]) == bead)
                onThisWheel.push_back(i);
        const auto radius =
            tellsWheel ? inCommon(Column::WheelRadius, onThisWheel, adjusted, table) : std::nullopt;
        for (const std::size_t i : onThisWheel) {
            if (const auto row = radius ? radius : wheelRow(geometry.sizes[i], table))
                all[i].beyondDoubt.push_back(*row);
        }
    }
    return all;
}

} // namespace tripoise::frame
