// SPDX-License-Identifier: MIT
//
// Invented runs of sizes that agree exactly, and the tables a maker would print of them.
//
// How sizes step is common practice, no source: stack and reach grow with a scatter of a millimetre
// or two, angles drift by tenths, stays and drops are alike or change once. The figures that follow
// from these are worked here by vectors, from the points of the frame, not by the model's
// equations.
#pragma once

#include "frame/geometry_table.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

namespace tripoise::test {

/// One size without rounding; every figure of it by column.
struct TrueSize {
    PerColumn<double> figure{};

    [[nodiscard]] double of(Column column) const { return figure[indexOf(column)]; }
    double& at(Column column) { return figure[indexOf(column)]; }
};

/// The points of the frame, then what lies between them.
inline void measure(TrueSize& size)
{
    struct Point {
        double x;
        double y;
    };
    const auto degrees = [](double value) { return value * std::numbers::pi / 180.0; };
    const auto between = [](Point a, Point b) { return std::hypot(b.x - a.x, b.y - a.y); };
    const double drop = size.of(Column::BbDrop);
    const double headAngle = degrees(size.of(Column::HeadAngle));
    const double seatAngle = degrees(size.of(Column::SeatAngle));
    const double offset = size.of(Column::ForkOffset);
    const Point bb{0.0, 0.0};
    const Point headTop{size.of(Column::Reach), size.of(Column::Stack)};
    const Point down{std::cos(headAngle), -std::sin(headAngle)};
    const Point ahead{std::sin(headAngle), std::cos(headAngle)};
    // Down the axis until the point the offset ahead of it is as high as the axles.
    const double run = (headTop.y + offset * ahead.y - drop) / std::sin(headAngle);
    const Point foot{headTop.x + run * down.x, headTop.y + run * down.y};
    const Point axle{foot.x + offset * ahead.x, foot.y + offset * ahead.y};
    const double stay = size.of(Column::Chainstay);
    const Point rear{-std::sqrt(stay * stay - drop * drop), drop};
    const double fork = size.of(Column::ForkLength);
    const double crownToFoot = std::sqrt(fork * fork - offset * offset);
    const Point seatAtTop{-headTop.y / std::tan(seatAngle), headTop.y};
    const double ground = drop - size.of(Column::WheelRadius);
    // The steering axis meets the ground ahead of the contact by the trail.
    const double toGround = (headTop.y - ground) / std::sin(headAngle);

    size.at(Column::TopTube) = between(headTop, seatAtTop);
    size.at(Column::Wheelbase) = between(rear, axle);
    size.at(Column::FrontCentre) = between(bb, axle);
    size.at(Column::FrontCentreHorizontal) = axle.x;
    size.at(Column::ChainstayHorizontal) = -rear.x;
    size.at(Column::HeadTube) = run - crownToFoot - size.of(Column::LowerHeadset);
    size.at(Column::ForkLengthAxial) = crownToFoot;
    size.at(Column::BbHeight) = -ground;
    size.at(Column::BbRise) = -drop;
    size.at(Column::Trail) = headTop.x + toGround * down.x - axle.x;
}

using Random = std::mt19937;

inline double between(double low, double high, Random& random)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}

/// A model of so many sizes, from small to large.
inline std::vector<TrueSize> randomRun(std::size_t count, Random& random)
{
    const auto any = [&](double low, double high) { return between(low, high, random); };
    const auto chance = [&](double share) { return any(0.0, 1.0) < share; };
    double stack = any(520, 570);
    double reach = any(355, 390);
    double seatAngle = any(73.0, 75.5);
    double headAngle = any(69.0, 72.5);
    double drop = any(55, 80);
    double stay = any(415, 450);
    double offset = any(43, 52);
    const double fork = any(365, 395);
    const double headset = any(0, 14);
    const double radius = any(330, 365);
    const double stackStep = any(17, 27);
    const double reachStep = any(7, 13);
    const double seatStep = any(0.0, 0.5);
    const double headStep = any(0.0, 0.5);
    const bool staysGrow = chance(0.3);
    const bool dropsChange = chance(0.3);
    const bool offsetsChange = chance(0.2);
    const std::size_t changeAt = 1 + random() % std::max<std::size_t>(1, count - 1);
    std::vector<TrueSize> run;
    for (std::size_t i = 0; i < count; ++i) {
        TrueSize size;
        size.at(Column::Stack) = stack;
        size.at(Column::Reach) = reach;
        size.at(Column::SeatAngle) = seatAngle;
        size.at(Column::HeadAngle) = headAngle;
        size.at(Column::BbDrop) = drop;
        size.at(Column::Chainstay) = stay;
        size.at(Column::ForkOffset) = offset;
        size.at(Column::ForkLength) = fork;
        size.at(Column::LowerHeadset) = headset;
        size.at(Column::WheelRadius) = radius;
        measure(size);
        run.push_back(size);
        stack += stackStep + any(-1.5, 1.5);
        reach += reachStep + any(-1.0, 1.0);
        seatAngle -= seatStep + any(-0.05, 0.05);
        headAngle += headStep + any(-0.05, 0.05);
        if (i + 1 == changeAt) {
            stay += staysGrow ? 5.0 : 0.0;
            drop -= dropsChange ? 2.5 : 0.0;
            offset -= offsetsChange ? 3.0 : 0.0;
        }
    }
    return run;
}

inline double roundedTo(double value, double step)
{
    return std::round(value / step) * step;
}

/// The columns of a run as printed: whole millimetres, tenths of a degree.
inline GeometryTable printed(const std::vector<TrueSize>& run, const std::vector<Column>& columns,
                             double stepMm = 1.0, double stepDeg = 0.1)
{
    GeometryTable table;
    for (std::size_t i = 0; i < run.size(); ++i) {
        TableSize size{"S" + std::to_string(i + 1), {}};
        for (const Column column : columns) {
            const double step = unitOf(column) == Unit::Degree ? stepDeg : stepMm;
            size.entries.push_back({column, roundedTo(run[i].of(column), step), {}, step});
        }
        table.sizes.push_back(std::move(size));
    }
    return table;
}

/// The ten columns that stand in most tables and check each other.
inline const std::vector<Column>& tenColumns()
{
    static const std::vector<Column> columns{
        Column::Stack,       Column::Reach,     Column::SeatAngle, Column::HeadAngle,
        Column::TopTube,     Column::Chainstay, Column::BbDrop,    Column::Wheelbase,
        Column::FrontCentre, Column::ForkOffset};
    return columns;
}

} // namespace tripoise::test
