// SPDX-License-Identifier: MIT
#include "frame/candidates.h"

#include <cmath>

namespace tripoise {
namespace {

/// Derived figures are not finer than a table prints.
double printed(double value, Column column)
{
    const double perUnit = unitOf(column) == Unit::Degree ? 100.0 : 10.0;
    return std::round(value * perUnit) / perUnit;
}

class Values {
public:
    Values(const TableSize& entries, const ClosedTable& closed, std::size_t size)
        : m_entries(entries), m_closed(closed), m_size(size)
    {
    }

    /// Given or derived.
    [[nodiscard]] std::optional<double> known(Column column) const
    {
        const ClosedValue* found = m_closed.valueOf(m_size, column);
        if (!found || found->value.origin == Origin::Assumed)
            return std::nullopt;
        return found->value.origin == Origin::Given ? found->value.value
                                                    : printed(found->value.value, column);
    }
    [[nodiscard]] std::optional<double> given(Column column) const
    {
        const Entry* entry = entryOf(column, m_entries);
        return entry ? std::optional(entry->value) : std::nullopt;
    }
    /// Both ends; the far one may be a column of its own.
    [[nodiscard]] std::optional<Range> range(Column near, Column far) const
    {
        const auto low = known(near);
        if (!low)
            return std::nullopt;
        const Entry* entry = entryOf(near, m_entries);
        const double high = entry && entry->high ? *entry->high : given(far).value_or(*low);
        return Range{*low, std::max(*low, high)};
    }

private:
    const TableSize& m_entries;
    const ClosedTable& m_closed;
    std::size_t m_size;
};

Geometry geometryOf(const Values& values)
{
    Geometry geometry;
    geometry.stackMm = *values.known(Column::Stack);
    geometry.reachMm = *values.known(Column::Reach);
    geometry.headAngleDeg = *values.known(Column::HeadAngle);
    geometry.seatAngleDeg = values.known(Column::SeatAngle);
    geometry.headTubeMm = values.known(Column::HeadTube);
    geometry.seatTubeMm = values.given(Column::SeatTube);
    geometry.topTubeEffectiveMm = values.given(Column::TopTube);
    geometry.chainstayMm = values.range(Column::Chainstay, Column::ChainstayLong);
    geometry.bbDropMm = values.known(Column::BbDrop);
    geometry.wheelbaseMm = values.given(Column::Wheelbase);
    geometry.frontCentreMm = values.known(Column::FrontCentre);
    geometry.forkLengthMm = values.known(Column::ForkLength);
    geometry.forkOffsetMm = values.known(Column::ForkOffset);
    geometry.standoverMm = values.given(Column::Standover);
    return geometry;
}

} // namespace

std::optional<FrameSize> frameOf(const GeometryTable& geometry, const ClosedTable& closed,
                                 std::size_t size)
{
    if (size >= geometry.sizes.size() || size >= closed.sizes.size())
        return std::nullopt;
    const Values values(geometry.sizes[size], closed, size);
    for (const Column column : {Column::Stack, Column::Reach, Column::HeadAngle, Column::SeatAngle})
        if (!values.known(column))
            return std::nullopt;
    FrameSize frame;
    frame.model = geometry.model;
    frame.size = geometry.sizes[size].size;
    frame.geometry = geometryOf(values);
    frame.wheel.beadSeatMm = values.given(Column::BeadSeat);
    frame.wheel.maxTyreMm = values.given(Column::MaxTyre);
    frame.headset.upperMm = values.given(Column::UpperHeadset);
    frame.headset.lowerMm = values.given(Column::LowerHeadset);
    frame.headset.steererMm = values.given(Column::SteererDiameter);
    frame.post.diameterMm = values.given(Column::PostDiameter);
    frame.post.lengthMm = values.given(Column::PostLength);
    frame.post.offsetMm = values.given(Column::PostOffset);
    if (const Entry* heights = entryOf(Column::RiderHeight, geometry.sizes[size]);
        heights && heights->high)
        frame.riderHeightMm = Range{heights->value, *heights->high};
    frame.asSold = {values.given(Column::StemLength), values.given(Column::BarWidth),
                    values.given(Column::CrankLength), values.given(Column::Tyre)};
    frame.maxSystemKg = values.given(Column::MaxSystem);
    frame.massKg = values.given(Column::Mass);
    frame.price = values.given(Column::Price);
    return frame;
}

std::vector<FrameSize> framesOf(const GeometryTable& geometry, const ClosedTable& closed)
{
    std::vector<FrameSize> frames;
    for (std::size_t size = 0; size < geometry.sizes.size(); ++size)
        if (auto frame = frameOf(geometry, closed, size))
            frames.push_back(std::move(*frame));
    return frames;
}

} // namespace tripoise
